using Lugwork.Steering;

namespace Lugwork.Drawing;

/// <summary>Head tube and headset in section. Down the middle of the sheet runs the steering axis; y = 0 is the upper face of the head tube.</summary>
internal static class HeadTubeDraft
{
    /// <summary>Wall, flange and race thickness: no joint reads them, and none of them is dimensioned.</summary>
    private const double Wall = 2.5;

    private const string Tube = "head tube of the frame";
    private const string Cups = "headset";
    private const string ForkPart = "fork and its steerer";

    public static LineDrawing Of(Build build)
    {
        Frame frame = build.Frame;
        Headset headset = build[Slot.Headset] as Headset ?? new();
        Fork fork = build[Slot.Fork] as Fork ?? new();
        Stem stem = build[Slot.Stem] as Stem ?? new();

        DraftSize length = DraftSize.Of(frame.HeadTubeLength, "head tube", JointInputs.HeadTubeLength, 120);
        DraftSize steerer = DraftSize.Of(fork.Steerer, s => s.Hundredths / 100d, "steerer", JointInputs.Steerer, 28.6);
        DraftSize seat = DraftSize.Of(fork.CrownSeat, s => s.Diameter.Millimeters, "crown-race seat", JointInputs.CrownSeatOfFork, Math.Max(30, steerer.Drawn));
        double foot = fork.CrownSeat.State == KnownState.Value ? (double)CrownFigures.Steerer(fork.CrownSeat.Value.FitCode) : steerer.Drawn;
        DraftHalf upper = new(headset.UpperCup, frame.HeadTubeUpper, headset.UpperSkirtOrNone, frame.UpperBoreDepth, headset.UpperStackOrOpen, steerer.Drawn, isUpper: true);
        DraftHalf lower = new(headset.LowerCup, frame.HeadTubeLower, headset.LowerSkirtOrNone, frame.LowerBoreDepth, headset.LowerStackOrOpen, foot, isUpper: false);

        double crown = length.Drawn + lower.Height;
        DraftSize cut = DraftSize.Of(fork.SteererLength, "steerer, from the race seat", JointInputs.LengthOfSteerer, crown + upper.Height + 45);
        double top = crown - cut.Drawn;
        double tall = Math.Max(crown - top, crown + upper.Height) + 22;
        double wide = Math.Max(Math.Max(upper.Bore.Drawn, lower.Bore.Drawn) + 20, 64);
        DraftSheet sheet = new("Head tube and headset", "Section along the steering axis, seen from the front. Walls, bearings and covers are drawn without figures.", DraftScale.For(wide, tall, 110, 190));

        double outerTop = (Math.Max(upper.Bore.Drawn, upper.Cup.Drawn) / 2) + Wall;
        double outerFoot = (Math.Max(lower.Bore.Drawn, lower.Cup.Drawn) / 2) + Wall;
        Wallside(sheet, upper, lower, length, outerTop, outerFoot, -1);
        Wallside(sheet, upper, lower, length, outerTop, outerFoot, 1);
        Steerer(sheet, steerer, cut, foot, top, crown, length.Drawn, outerFoot);
        upper.Draw(sheet, 0, -1);
        lower.Draw(sheet, length.Drawn, 1);
        Stack(sheet, stem, steerer.Drawn, -upper.Height);
        sheet.Path("", DraftLine.Axis, false, (0, top - 4), (0, crown + 22));

        sheet.Measure(upper.Bore, -upper.Bore.Drawn / 2, 0, upper.Bore.Drawn / 2, 0, DraftSide.Top);
        sheet.Measure(upper.Cup, -upper.Cup.Drawn / 2, 0, upper.Cup.Drawn / 2, 0, DraftSide.Top);
        sheet.Measure(steerer, -steerer.Drawn / 2, top, steerer.Drawn / 2, top, DraftSide.Top);
        sheet.Measure(lower.Bore, -lower.Bore.Drawn / 2, length.Drawn, lower.Bore.Drawn / 2, length.Drawn, DraftSide.Bottom);
        sheet.Measure(lower.Cup, -lower.Cup.Drawn / 2, length.Drawn, lower.Cup.Drawn / 2, length.Drawn, DraftSide.Bottom);
        sheet.Measure(seat, -seat.Drawn / 2, crown, seat.Drawn / 2, crown, DraftSide.Bottom);
        sheet.Measure(length, outerTop, 0, outerFoot, length.Drawn, DraftSide.Right);
        sheet.Measure(upper.StackSize, outerTop, -upper.Height, outerTop, 0, DraftSide.Right);
        if (!lower.StackSize.IsNone)
        {
            sheet.Measure(lower.StackSize, outerFoot, length.Drawn, outerFoot, crown, DraftSide.Right);
        }

        upper.MeasureDepth(sheet, -outerTop, 0, 1);
        lower.MeasureDepth(sheet, -outerFoot, length.Drawn, -1);
        if (cut.IsKnown)
        {
            sheet.Measure(cut, -steerer.Drawn / 2, top, -seat.Drawn / 2, crown, DraftSide.Left);
        }

        sheet.Note(DraftTone.Base, "head tube", outerTop - 1, length.Drawn * 0.45, DraftSide.Right);
        sheet.Note(DraftTone.Fitted, upper.Called, (upper.Cup.Drawn / 2) - 1, -Math.Min(3, upper.Height / 2), DraftSide.Right);
        sheet.Note(DraftTone.Fitted, lower.Called, (lower.Cup.Drawn / 2) - 1, length.Drawn + Math.Min(3, lower.Height / 2), DraftSide.Right);
        sheet.Note(DraftTone.Between, "steerer of the fork", -(steerer.Drawn / 2) + 1, length.Drawn * 0.3, DraftSide.Left);
        sheet.Called(build, Slot.Frame, Slot.Headset, Slot.Fork);
        sheet.Tell(build, "headset-upper-in-head-tube", "headset-lower-in-head-tube", "headset-on-steerer", "headset-on-crown", "headset-kind", "steerer-through-head-tube", "fork-in-head-tube", "upper-cup-depth-in-head-tube", "lower-cup-depth-in-head-tube", "steerer-reaches-stem", "gap-under-cap");
        return sheet.Finish();
    }

    private static void Wallside(DraftSheet sheet, DraftHalf upper, DraftHalf lower, DraftSize length, double outerTop, double outerFoot, int side)
    {
        bool open = !length.IsKnown || !upper.Bore.IsKnown || !lower.Bore.IsKnown;
        double up = upper.Bore.Drawn / 2;
        double low = lower.Bore.Drawn / 2;
        double bored = upper.BoreDepth is { IsKnown: true } above ? Math.Min(above.Drawn, length.Drawn / 2) : 0;
        double boredBelow = lower.BoreDepth is { IsKnown: true } below ? Math.Min(below.Drawn, length.Drawn / 2) : 0;
        List<(double X, double Y)> points = [(side * outerTop, 0), (side * up, 0)];
        if (bored > 0)
        {
            points.AddRange([(side * up, bored), (side * (up - 1.5), bored)]);
        }

        if (boredBelow > 0)
        {
            points.AddRange([(side * (low - 1.5), length.Drawn - boredBelow), (side * low, length.Drawn - boredBelow)]);
        }

        points.AddRange([(side * low, length.Drawn), (side * outerFoot, length.Drawn)]);
        sheet.Area(Tube, DraftTone.Base, open, [.. points]);
    }

    private static void Steerer(DraftSheet sheet, DraftSize steerer, DraftSize cut, double foot, double top, double crown, double length, double outerFoot)
    {
        double thin = steerer.Drawn / 2;
        double thick = Math.Max(foot, steerer.Drawn) / 2;
        double from = Math.Max(0, length * 0.5);
        double swell = Math.Max(from, crown - 30);
        foreach (int side in new[] { -1, 1 })
        {
            sheet.Area(ForkPart, DraftTone.Between, !steerer.IsKnown || !cut.IsKnown, (side * thin, top), (side * thin, from), (side * thick, swell), (side * thick, crown), (side * (thick - Wall), crown), (side * (thick - Wall), swell), (side * (thin - Wall), from), (side * (thin - Wall), top));
        }

        // A crown is about as wide as the head tube above it, or wider.
        double beside = Math.Max(28, outerFoot);
        sheet.Box(ForkPart, DraftTone.Between, -beside, crown, beside, crown + 18, open: true);
    }

    /// <summary>Spacers and stem above the headset, where their heights are known.</summary>
    private static void Stack(DraftSheet sheet, Stem stem, double steerer, double at)
    {
        foreach ((Known<Dimension> height, string name, JointInput input, double wall) in new[]
        {
            (stem.SpacersBelow, "spacers below the stem", JointInputs.SpacersBelow, 3.5), (stem.ClampHeight, "stem at the steerer", JointInputs.StemHeight, 6.0), (stem.SpacersAbove, "spacers above the stem", JointInputs.SpacersAbove, 3.5),
        })
        {
            DraftSize size = DraftSize.Of(height, name, input, 0);
            if (size.IsKnown)
            {
                sheet.Pair("stem and spacers", DraftTone.Fitted, steerer / 2, at - size.Drawn, (steerer / 2) + wall, at);
                sheet.Measure(size, (steerer / 2) + wall, at - size.Drawn, (steerer / 2) + wall, at, DraftSide.Right);
                at -= size.Drawn;
            }
        }
    }

    /// <summary>One half of the headset in its end of the head tube.</summary>
    private sealed class DraftHalf
    {
        private readonly HeadsetStyle? _style;
        private readonly bool _isUpper;
        private readonly double _steerer;
        private readonly DraftSize _skirt;

        public DraftHalf(Known<HeadsetCup> cup, Known<HeadTubeBore> bore, Known<Dimension> skirt, Known<Dimension> depth, Known<Dimension> stack, double steerer, bool isUpper)
        {
            string end = isUpper ? "upper" : "lower";
            _isUpper = isUpper;
            _steerer = steerer;
            _style = cup.State == KnownState.Value ? cup.Value.Style : null;
            Bore = DraftSize.Of(bore, b => HeadTubeFigures.Nominal(b.FitCode) / 100d, $"{end} bore", isUpper ? JointInputs.UpperEnd : JointInputs.LowerEnd, cup.State == KnownState.Value ? CupFigures.Of(cup.Value.FitCode).Diameter / 100d : isUpper ? 44 : 50);
            Cup = DraftSize.Of(cup, c => CupFigures.Of(c.FitCode).Diameter / 100d, _style == HeadsetStyle.Integrated ? $"{end} bearing" : $"{end} cup", isUpper ? JointInputs.UpperCup : JointInputs.LowerCup, Bore.Drawn);
            Called = $"{end} half{(cup.State == KnownState.Value ? " " + cup.Value.TradeName : "")}";
            _skirt = DraftSize.Of(skirt, $"{end} cup in the tube", isUpper ? JointInputs.UpperSkirt : JointInputs.LowerSkirt, 10);
            DraftSize bored = DraftSize.Of(depth, $"{end} bore, depth", isUpper ? JointInputs.UpperBoreDepth : JointInputs.LowerBoreDepth, 0);
            BoreDepth = bored.IsKnown ? bored : null;
            DraftSize stated = DraftSize.Of(stack, $"{end} stack", isUpper ? JointInputs.UpperStack : JointInputs.LowerStack, isUpper ? 12 : 6);
            StackSize = stated.IsKnown || stated.IsNone || cup.State != KnownState.Value ? stated : Usual(stated, cup.Value, isUpper);
            Height = StackSize.IsNone ? 0 : StackSize.Drawn;
        }

        public DraftSize Bore { get; }

        public DraftSize Cup { get; }

        public DraftSize? BoreDepth { get; }

        public DraftSize StackSize { get; }

        public double Height { get; }

        public string Called { get; }

        /// <summary>The half at the face of the tube; out is -1 above and 1 below.</summary>
        public void Draw(DraftSheet sheet, double face, int outward)
        {
            double inner = _steerer / 2;
            double outer = Cup.Drawn / 2;
            double skirt = _skirt.IsNone ? 7 : _skirt.Drawn;
            bool open = !Cup.IsKnown;
            if (_style == HeadsetStyle.ExternalCup)
            {
                sheet.Pair(Cups, DraftTone.Fitted, outer - 2.5, face, outer, face - (outward * skirt), open || !_skirt.IsKnown);
                sheet.Pair(Cups, DraftTone.Fitted, inner + 0.6, face + (outward * Height), outer + 4, face, open || !StackSize.IsKnown);
            }
            else
            {
                sheet.Pair(Cups, DraftTone.Fitted, Math.Min(inner + 0.6, outer - 2), face, outer, face - (outward * skirt), open || (!_skirt.IsKnown && !_skirt.IsNone));
                Cover(sheet, face, outward, inner + 0.6, outer + 2, open || !StackSize.IsKnown);
            }

            if (Bore.IsKnown && Cup.IsKnown && Cup.Drawn - Bore.Drawn > Tight)
            {
                sheet.Pair("cup larger than bore", DraftTone.Clash, Bore.Drawn / 2, face, outer, face - (outward * skirt));
                sheet.Note(DraftTone.Clash, $"{DraftText.Number(Cup.Drawn - Bore.Drawn, 2)} mm larger than the bore", -outer, face - (outward * skirt / 2), DraftSide.Left);
            }
            else if (Bore.IsKnown && Cup.IsKnown && Bore.Drawn - Cup.Drawn > Loose)
            {
                sheet.Note(null, $"gap: the bore is {DraftText.Number(Bore.Drawn - Cup.Drawn, 2)} mm larger", -outer, face - (outward * skirt / 2), DraftSide.Left);
            }

            if (Bore.IsKnown && _steerer > Bore.Drawn)
            {
                sheet.Pair("steerer larger than bore", DraftTone.Clash, Bore.Drawn / 2, face, _steerer / 2, face - (outward * 20));
            }
        }

        public void MeasureDepth(DraftSheet sheet, double x, double face, int inward)
        {
            if (!_skirt.IsNone)
            {
                sheet.Measure(_skirt, x, face, x, face + (inward * _skirt.Drawn), DraftSide.Left);
            }

            if (BoreDepth is { } depth)
            {
                sheet.Measure(depth, x, face, x, face + (inward * depth.Drawn), DraftSide.Left);
            }
        }

        /// <summary>A press fit is up to this much larger than its bore.</summary>
        private const double Tight = 0.3;

        /// <summary>A bearing lies in its seat with up to this much air.</summary>
        private const double Loose = 0.5;

        private void Cover(DraftSheet sheet, double face, int outward, double inner, double outer, bool open)
        {
            if (Height <= 0)
            {
                return;
            }

            foreach (int side in new[] { -1, 1 })
            {
                sheet.Area(Cups, DraftTone.Fitted, open, (side * inner, face), (side * outer, face), (side * (_isUpper ? inner + 5 : outer - 1), face + (outward * Height)), (side * inner, face + (outward * Height)));
            }
        }

        private static DraftSize Usual(DraftSize stated, HeadsetCup cup, bool isUpper)
        {
            CupFigures figures = CupFigures.Of(cup.FitCode);
            if ((isUpper ? figures.Upper : figures.Lower) is not var (least, most))
            {
                return stated;
            }

            string basis = figures.StackSource == Sources.Memory ? "from memory" : "one published example";
            return DraftSize.Open(stated.Name, (least + most) / 200d, $"usually {(least == most ? "" : DraftText.Number(least / 100d) + " to ")}{DraftText.Number(most / 100d)} mm, {basis}", stated.Ask);
        }
    }
}
