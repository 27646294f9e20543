using System.Collections.Immutable;

namespace Lugwork.Steering;

/// <summary>Cup depth, bearings and covers of a headset, and how deep a quill sits.</summary>
internal static class HeadsetPieces
{
    private static readonly Reason DeepEnough = new("bore-deep-enough", "The cup goes {0} mm in and the bore is {1} mm deep.") { Sources = [Sources.StraightInTapered] };

    private static readonly Reason CupLong = new("cup-longer-than-bore", "The cup goes {0} mm in, but the bore is only {1} mm deep: it bottoms before its collar sits.", Cautions.SteeringCare)
    {
        Mend = "a cup with a shorter skirt; or a shop deepens a metal bore or shortens the skirt, where both makers allow it",
        Sources = [Sources.StraightInTapered],
    };

    /// <summary>Inputs: how far the cup goes in, depth of the bore.</summary>
    public static Relation CupDepth { get; } = new AtMost(0, 1, DeepEnough, CupLong, Verdict.DoesNotFit, new Outcome(Verdict.Fits, DeepEnough));

    private static readonly Reason SameBearing = new("same-bearing", "{1} is the bearing that is asked for.") { Sources = [Sources.BearingMeasure, Sources.BearingAngles] };

    /// <summary>Inputs: the bearing that is asked for, the bearing.</summary>
    public static Relation Bearing { get; } = new Matrix(0, 1, BearingCell, [], [Sources.BearingMeasure, Sources.BearingAngles]);

    private static readonly Reason PlainCover = new("plain-cover", "Cables run past the headset and the cover is plain.") { Sources = [Sources.CableHeadsets] };

    /// <summary>Inputs: frame, cover.</summary>
    public static Relation Cover { get; } = new Matrix(0, 1, CoverCell, [], [Sources.CableHeadsets]);

    /// <summary>Inputs: how deep the quill sits, its mark, stem fixing.</summary>
    public static Relation Quill { get; } = new QuillDepth();

    private static Outcome BearingCell(long asked, long bought)
    {
        HeadsetBearing seat = HeadsetBearing.OfFitCode(asked);
        HeadsetBearing bearing = HeadsetBearing.OfFitCode(bought);
        int across = Math.Max(Math.Abs(seat.Outside - bearing.Outside), Math.Abs(seat.Inside - bearing.Inside));
        return seat == bearing ? new(Verdict.Fits, SameBearing)
            : across > 20 ? new(Verdict.DoesNotFit, Misfits.OtherDiameter)
            : seat.Inner != bearing.Inner || seat.Outer != bearing.Outer ? new(Verdict.DoesNotFit, Misfits.OtherAngle)
            : across > 0 ? new(Verdict.NeedsMeasuring, Misfits.NearBearing)
            : new(Verdict.NeedsMeasuring, Misfits.OtherHeight);
    }

    private static Outcome CoverCell(long frame, long cover)
    {
        bool through = frame == CableWay.Through.FitCode;
        bool open = cover == CableWay.Through.FitCode;
        return through ? (open ? new(Verdict.NeedsMeasuring, Misfits.OneSystem) : new(Verdict.DoesNotFit, Misfits.NoWayIn))
            : open ? new(Verdict.NeedsMeasuring, Misfits.SpareWay) : new(Verdict.Fits, PlainCover);
    }

    private sealed class QuillDepth : Relation, ICutsLengths
    {
        private static readonly Reason NoQuill = new("no-quill", "The stem is a {2}: nothing has to be put in.") { Sources = [Sources.HeadsetArticle] };

        private static readonly Reason Deep = new("quill-below-its-mark", "The quill sits {0} mm deep and its mark asks for {1} mm.") { Sources = [Sources.QuillArticle] };

        private static readonly Reason AboveMark = new("quill-above-its-mark", "The quill sits {0} mm deep, but its mark asks for {1} mm.", Cautions.QuillInsertion)
        {
            Mend = "push the quill in to its mark, or take a stem with a longer quill",
            Sources = [Sources.QuillArticle],
        };

        private static readonly Reason ByRule = new("quill-by-rule", "A {2} without a mark sits {0} mm deep: at least two and a half diameters.", Cautions.QuillInsertion) { Sources = [Sources.QuillArticle] };

        private static readonly Reason AboveRule = new("quill-above-rule", "A {2} without a mark sits {0} mm deep: less than two and a half diameters.", Cautions.QuillInsertion)
        {
            Mend = "push the quill in to two and a half diameters, or take a stem with a longer quill",
            Sources = [Sources.QuillArticle],
        };

        private static readonly Reason LowMark = new("quill-mark-low", "The quill sits {0} mm deep, below its mark of {1} mm, and less than two and a half diameters: a mark so low may mean a quill that was cut. Ask the stem's maker.", Cautions.QuillInsertion)
        {
            Mend = "a stem whose mark stands at two and a half diameters or more",
            Sources = [Sources.QuillArticle, Sources.CommonPractice],
        };

        private static readonly Reason TwoDiameters = new("quill-less-than-two-diameters", "The quill sits {0} mm deep, less than two diameters: a quill whose mark allows that was cut.", Cautions.QuillInsertion)
        {
            Mend = "a stem whose mark stands at two and a half diameters or more",
            Sources = [Sources.QuillArticle, Sources.CommonPractice],
        };

        public override string Kind => "at least its mark and two and a half diameters, for quills only";

        public override ImmutableArray<Source> RestsOn => [Sources.QuillArticle, Sources.HeadsetArticle, Sources.CommonPractice];

        public ImmutableArray<long> Cuts { get; } = EveryLeast();

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long depth, long mark, long fixing) = (values[0], values[1], values[2]);
            if (fixing == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            StemFixing foot = StemFixing.OfFitCode(fixing);
            return !foot.IsQuill ? new(Verdict.Fits, NoQuill)
                : mark != 0 && depth < mark ? new(Verdict.Unsafe, AboveMark)
                : mark != 0 && depth < Least(foot) ? (depth < Floor(foot) ? new(Verdict.Unsafe, TwoDiameters) : new(Verdict.NeedsMeasuring, LowMark))
                : mark != 0 ? new(Verdict.Fits, Deep)
                : depth >= Least(foot) ? new(Verdict.Fits, ByRule)
                : new(Verdict.Unsafe, AboveRule);
        }

        private static long Least(StemFixing foot) => foot.Hundredths * (Nanometres.PerMillimetre / 100) * 5 / 2;

        private static long Floor(StemFixing foot) => foot.Hundredths * (Nanometres.PerMillimetre / 100) * 2;

        private static ImmutableArray<long> EveryLeast()
        {
            ImmutableArray<long>.Builder cuts = ImmutableArray.CreateBuilder<long>();
            foreach (StemFixing foot in StemFixing.All)
            {
                if (foot.IsQuill)
                {
                    cuts.Add(Least(foot));
                    cuts.Add(Floor(foot));
                }
            }

            return cuts.ToImmutable();
        }
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason OtherAngle = new("bearing-angle", "{1} has other angles than {0}: it runs rough and works loose, whatever its diameters.", Cautions.SteeringCare)
        {
            Mend = "a bearing of all four sizes of the seat: inside, outside, height and both angles",
            Sources = [Sources.BearingMeasure, Sources.BearingAngles],
        };

        public static readonly Reason OtherDiameter = new("bearing-diameter", "{1} and {0} differ in diameter.", Cautions.SteeringCare)
        {
            Mend = "a bearing of all four sizes of the seat: inside, outside, height and both angles",
            Sources = [Sources.BearingMeasure, Sources.BearingSeller],
        };

        public static readonly Reason NearBearing = new("bearing-nearly-the-same", "{1} and {0} differ by 0.2 mm or less across: two bearings. Measure the seat and the old bearing.", Cautions.SteeringCare)
        {
            Mend = "a bearing of all four sizes of the seat: inside, outside, height and both angles",
            Sources = [Sources.Memory],
        };

        public static readonly Reason OtherHeight = new("bearing-height", "{1} and {0} differ in height alone: cover and spacers decide whether it is taken up. Ask the headset's maker.", Cautions.SteeringCare)
        {
            Mend = "a bearing of the same height",
            Sources = [Sources.BearingMeasure, Sources.Memory],
        };

        public static readonly Reason NoWayIn = new("cover-without-a-way", "The frame takes its cables through the headset, and this cover lets none in.", Cautions.SteeringCare)
        {
            Mend = "cover, centring ring and spacers of the frame's own cable system",
            Sources = [Sources.CableHeadsets],
        };

        public static readonly Reason OneSystem = new("cover-system", "Both are for cables through the headset, but cover, centring ring, spacers and stem are one system: their heights differ by some 3 mm. Ask whether this set belongs to frame and stem.", Cautions.SteeringCare)
        {
            Mend = "cover, centring ring and spacers of the frame's own cable system",
            Sources = [Sources.CableHeadsets],
        };

        public static readonly Reason SpareWay = new("cover-with-a-spare-way", "The cover is for cables through the headset and the frame runs them outside: look whether it seals and clears the stem.")
        {
            Mend = "a plain cover",
            Sources = [Sources.CableHeadsets],
        };
    }
}
