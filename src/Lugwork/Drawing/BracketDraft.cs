using Lugwork.BottomBrackets;

namespace Lugwork.Drawing;

/// <summary>Shell, bottom bracket, spacers and spindle in section. x = 0 is the middle of the shell, the drive side is to the right.</summary>
internal static class BracketDraft
{
    /// <summary>Length of a cup outside the shell; no joint reads it, and it is not dimensioned.</summary>
    private const double Flange = 10;

    /// <summary>A spindle of which no page tells what it measures in its bearings, such as a square one, is drawn about this thick, dashed.</summary>
    private const double OlderSpindle = 17;

    private const string ShellPart = "shell of the frame";
    private const string Unit = "bottom bracket";
    private const string SpindlePart = "spindle of the crank";

    public static LineDrawing Of(Build build)
    {
        Frame frame = build.Frame;
        BottomBracket bracket = build[Slot.BottomBracket] as BottomBracket ?? new();
        Crankset crank = build[Slot.Crankset] as Crankset ?? new();
        DraftSize width = DraftSize.Of(frame.Shell, s => s.WidthNanometres / (double)Nanometres.PerMillimetre, "shell width", JointInputs.ShellWidthOfFrame, 70);
        DraftSize bore = frame.ShellBore.State is KnownState.Value or KnownState.Measured
            ? DraftSize.Of(frame.ShellBore, "shell bore", JointInputs.ShellBore, 36)
            : Printed(DraftSize.Of(frame.Shell, s => Bore(s.Family), "shell bore", JointInputs.ShellFamilyOfFrame, 36), frame.Shell.State == KnownState.Value ? ShellDimensions.Bore(frame.Shell.Value.Family) : default);
        bool hasCups = bracket.Family.State == KnownState.Value && ShellDimensions.Cups(bracket.Family.Value).Least > 0;
        DraftSize cup = Printed(
            DraftSize.Of(bracket.Family, Cup, hasCups ? "cups of the bottom bracket" : "bottom bracket, made for a bore of", JointInputs.BracketFamily, bore.Drawn),
            bracket.Family.State != KnownState.Value ? default : hasCups ? ShellDimensions.Cups(bracket.Family.Value) : ShellDimensions.Bore(bracket.Family.Value));
        DraftSize narrowest = DraftSize.Of(bracket.NarrowestShell, "narrowest shell it is made for", JointInputs.Narrowest, width.Drawn);
        DraftSize widest = DraftSize.Of(bracket.WidestShell, "widest shell it is made for", JointInputs.Widest, width.Drawn);
        DraftSize spacer = DraftSize.Of(bracket.DriveSpacer, "spacers under the drive-side cup", JointInputs.DriveSpacer, 2.5);
        DraftSize spindle = DraftSize.Of(crank.Spindle, s => s.Seat.DriveMicrometres / 1_000d, "spindle", JointInputs.CrankSpindle, crank.Spindle.State == KnownState.Value && crank.Spindle.Value.Seat.DriveMicrometres == 0 ? OlderSpindle : 24);
        DraftSize takes = DraftSize.Of(bracket.Takes, s => s.DriveMicrometres / 1_000d, "bearings for a spindle of", JointInputs.BracketTakes, spindle.Drawn);

        double half = width.Drawn / 2;
        bool isOutside = IsOutside(frame, bracket);
        bool hasSpacer = !spacer.IsNone && (spacer.IsKnown || isOutside || frame.Shell.State != KnownState.Value);
        double gap = hasSpacer ? spacer.Drawn : 0;
        double reach = half + gap + Flange + 8;
        double tall = Math.Max(bore.Drawn, cup.Drawn) + 20;
        DraftSheet sheet = new("Bottom bracket in the shell", "Section along the axle, seen from above, the drive side to the right. Walls, flanges and bearings are drawn without figures.", DraftScale.For(2 * reach, tall, 150, 120));
        double outer = (Math.Max(bore.Drawn, cup.Drawn) / 2) + 3.5;
        foreach (int side in new[] { -1, 1 })
        {
            sheet.Box(ShellPart, DraftTone.Base, -half, side * bore.Drawn / 2, half, side * outer, !width.IsKnown || !bore.IsKnown);
        }

        Cups(sheet, frame, isOutside, cup, spacer, spindle.Drawn, half, gap);
        sheet.Box(SpindlePart, DraftTone.Between, -reach, -spindle.Drawn / 2, reach, spindle.Drawn / 2, !spindle.IsKnown);
        sheet.Path("", DraftLine.Axis, false, (-reach - 4, 0), (reach + 4, 0));
        sheet.Path("middle of the shell", DraftLine.Axis, false, (0, -outer - 4), (0, outer + 4));
        Clashes(sheet, bore, cup, spindle, takes, width, narrowest, widest, half, outer);

        sheet.Measure(width, -half, -outer, half, -outer, DraftSide.Top);
        if (!narrowest.IsNone)
        {
            sheet.Measure(narrowest, -narrowest.Drawn / 2, outer, narrowest.Drawn / 2, outer, DraftSide.Bottom);
        }

        if (!widest.IsNone)
        {
            sheet.Measure(widest, -widest.Drawn / 2, outer, widest.Drawn / 2, outer, DraftSide.Bottom);
        }

        sheet.Measure(bore, -half, -bore.Drawn / 2, -half, bore.Drawn / 2, DraftSide.Left);
        sheet.Measure(cup, -half, -cup.Drawn / 2, -half, cup.Drawn / 2, DraftSide.Left);
        sheet.Measure(spindle, reach, -spindle.Drawn / 2, reach, spindle.Drawn / 2, DraftSide.Right);
        sheet.Measure(takes, half, -takes.Drawn / 2, half, takes.Drawn / 2, DraftSide.Right);
        if (hasSpacer)
        {
            sheet.Measure(spacer, half, outer, half + gap, outer, DraftSide.Bottom);
        }

        sheet.Note(DraftTone.Base, frame.Shell.State == KnownState.Value ? $"shell {frame.Shell.Value.TradeName}" : "shell", -half * 0.6, -outer + 1.2, DraftSide.Left);
        sheet.Note(DraftTone.Fitted, bracket.Family.State == KnownState.Value ? $"bottom bracket {bracket.Family.Value.TradeName}" : "bottom bracket", half - 4, -(cup.Drawn / 2) + 1.2, DraftSide.Right);
        sheet.Note(DraftTone.Between, crank.Spindle.State == KnownState.Value ? $"spindle {crank.Spindle.Value.TradeName}" : "spindle", reach - 4, 0, DraftSide.Right);
        if (frame.Shell.State == KnownState.Value && frame.Shell.Value.Family.IsThreaded)
        {
            sheet.Say($"Thread of the shell: {frame.Shell.Value.Family.Thread}, the drive side turns {(frame.Shell.Value.Family.IsDriveCupLeftHand ? "left" : "right")}-handed.");
        }

        sheet.Called(build, Slot.Frame, Slot.BottomBracket, Slot.Crankset);
        sheet.Tell(build, "bottom-bracket-in-shell", "bottom-bracket-width", "pressed-unit-in-measured-bore", "spindle-in-bottom-bracket", "crank-across-shell", "bottom-bracket-spacers", "bottom-bracket-spacers-with-guide", "bottom-bracket-spacers-with-front-derailleur");
        return sheet.Finish();
    }

    /// <summary>The drive side has a cup outside the shell, and so a place for spacers. A square spindle turns in a cartridge within it.</summary>
    private static bool IsOutside(Frame frame, BottomBracket bracket) =>
        Place(frame) is BearingPlace.Outboard or BearingPlace.OutboardOnDriveSide or BearingPlace.InCupsOutside
        || (Place(frame) == BearingPlace.InsideOrOutboard && bracket.Takes.State == KnownState.Value && bracket.Takes.Value.DriveMicrometres > 0);

    private static BearingPlace Place(Frame frame) => frame.Shell.State == KnownState.Value ? frame.Shell.Value.Bearings : BearingPlace.Unknown;

    private static void Cups(DraftSheet sheet, Frame frame, bool drive, DraftSize cup, DraftSize spacer, double spindle, double half, double gap)
    {
        bool other = drive && Place(frame) != BearingPlace.OutboardOnDriveSide;
        double inner = Math.Min(spindle / 2, (cup.Drawn / 2) - 2);
        foreach (int side in new[] { -1, 1 })
        {
            double off = side > 0 ? gap : 0;
            bool outside = side > 0 ? drive : other;
            foreach (int up in new[] { -1, 1 })
            {
                sheet.Box(Unit, DraftTone.Fitted, side * (half - 12), up * inner, side * (half + off), up * cup.Drawn / 2, !cup.IsKnown);
                if (outside)
                {
                    sheet.Box(Unit, DraftTone.Fitted, side * (half + off), up * inner, side * (half + off + Flange), up * ((cup.Drawn / 2) + 3), !cup.IsKnown);
                }

                if (side > 0 && gap > 0)
                {
                    sheet.Box("spacers", DraftTone.Between, half, up * cup.Drawn / 2, half + gap, up * ((cup.Drawn / 2) + 3), !spacer.IsKnown);
                }
            }
        }
    }

    private static void Clashes(DraftSheet sheet, DraftSize bore, DraftSize cup, DraftSize spindle, DraftSize takes, DraftSize width, DraftSize narrowest, DraftSize widest, double half, double outer)
    {
        if (bore.IsKnown && cup.IsKnown && cup.Drawn - bore.Drawn > Thread)
        {
            foreach (int up in new[] { -1, 1 })
            {
                sheet.Box("unit larger than shell", DraftTone.Clash, half - 12, up * bore.Drawn / 2, half, up * cup.Drawn / 2);
                sheet.Box("unit larger than shell", DraftTone.Clash, -half, up * bore.Drawn / 2, -half + 12, up * cup.Drawn / 2);
            }

            sheet.Note(DraftTone.Clash, $"{DraftText.Number(cup.Drawn - bore.Drawn, 2)} mm larger than the shell is inside", -half + 6, -cup.Drawn / 2, DraftSide.Left);
        }

        if (spindle.IsKnown && takes.IsKnown && spindle.Drawn > takes.Drawn)
        {
            foreach (int up in new[] { -1, 1 })
            {
                sheet.Box("spindle larger than bearings", DraftTone.Clash, half - 9, up * takes.Drawn / 2, half, up * spindle.Drawn / 2);
            }

            sheet.Note(DraftTone.Clash, $"the spindle is {DraftText.Number(spindle.Drawn - takes.Drawn, 2)} mm larger than the bearings", half - 4, spindle.Drawn / 2, DraftSide.Right);
        }

        if (width.IsKnown && widest.IsKnown && width.Drawn > widest.Drawn)
        {
            foreach (int side in new[] { -1, 1 })
            {
                sheet.Box("shell wider than the unit takes", DraftTone.Clash, side * widest.Drawn / 2, outer - 3.5, side * half, outer);
            }
        }
        else if (width.IsKnown && narrowest.IsKnown && width.Drawn < narrowest.Drawn)
        {
            sheet.Note(null, $"the shell is {DraftText.Number(narrowest.Drawn - width.Drawn, 2)} mm narrower than the unit is made for", half, outer, DraftSide.Right);
        }
    }

    /// <summary>The middle of a printed range is drawn, and the range is said.</summary>
    private static DraftSize Printed(DraftSize size, (int Least, int Most) range) =>
        size.IsKnown && range.Least < range.Most ? size with { Said = $"{DraftText.Number(range.Least / 1_000d)} to {DraftText.Number(range.Most / 1_000d)} mm" } : size;

    /// <summary>Depth of a thread on both sides, and what a pressed cup is larger: no clash.</summary>
    private const double Thread = 1.4;

    /// <summary>Inside of a shell, the middle of what is printed; 0 where nothing is.</summary>
    private static double Bore(ShellFamily family) => ShellDimensions.Bore(family) is { Least: > 0 } bore ? (bore.Least + bore.Most) / 2_000d : 0;

    /// <summary>What of a unit goes into the shell: the cups where they are known, else the bore that it is made for; 0 where nothing is.</summary>
    private static double Cup(ShellFamily family) => ShellDimensions.Cups(family) is { Least: > 0 } cups ? (cups.Least + cups.Most) / 2_000d : Bore(family);
}
