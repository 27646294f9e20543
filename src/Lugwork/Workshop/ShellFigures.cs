using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;

namespace Lugwork;

/// <summary>Figures, tool and torque of the bottom bracket, from shell, unit and spindle.</summary>
internal static class ShellFigures
{
    private static Known<ShellFamily> FamilyOf(Build build) =>
        build.As<BottomBracket>(Slot.BottomBracket)?.Family is { State: KnownState.Value } family ? family
        : build.Frame.Shell is { State: KnownState.Value } shell ? Known<ShellFamily>.Of(shell.Value.Family) : default;

    public static WorkFigure? Bore(Build build) =>
        FamilyOf(build) is not { State: KnownState.Value } family || family.Value is not { LeastBore: { } least, MostBore: { } most } ? null
        : WorkFigure.Told("shell-bore", "bore of the shell", FormattableString.Invariant($"{least.Millimeters:0.###} to {most.Millimeters:0.###} mm ({family.Value.TradeName})"), family.Value.Source);

    public static WorkFigure? Thread(Build build)
    {
        Known<ShellFamily> family = FamilyOf(build);
        return family.State != KnownState.Value ? WorkFigure.Lacks("shell-thread", "thread of the shell", "the family of the shell")
            : !family.Value.IsThreaded ? null
            : WorkFigure.Told("shell-thread", "thread of the shell", $"{family.Value.Thread}; drive-side cup {(family.Value.IsDriveCupLeftHand ? "left-hand, tightens anticlockwise" : "right-hand, tightens clockwise")}", family.Value.Source);
    }

    /// <summary>What the table of cranks and shells says of this pair, spacers included.</summary>
    public static WorkFigure? Spacers(FitReport report)
    {
        Fit fit = report.Fits.FirstOrDefault(f => f.Joint!.Id == "bottom-bracket-spacers");
        fit = fit.Joint is null ? report.Fits.FirstOrDefault(f => f.Joint!.Id == "crank-across-shell") : fit;
        return fit.Joint is null ? null : WorkFigure.Told("bracket-spacers", "crank, shell and spacers", $"{fit.Sentence} ({Verdicts.InWords(fit.Verdict)})", [.. fit.Sources]);
    }

    public static WorkFigure? DriveSpacer(Build build)
    {
        FigureInputs given = new();
        return build.As<BottomBracket>(Slot.BottomBracket) is not { } bracket || build.IsShellThreaded() == false ? null
            : given.Millimetres("the spacers under the drive-side cup, by the crank maker's chart", bracket.DriveSpacer, noneIsZero: true) is var spacer
                ? given.Figure("drive-spacer", "spacers under the drive-side cup", "mm", () => (double)spacer) : null;
    }

    public static WorkTool Tool(Build build)
    {
        Known<ShellFamily> family = FamilyOf(build);
        return family.State != KnownState.Value ? new("bracket-tool", "cup tool or press: by what the shell turns out to be", true)
            : family.Value.IsThreaded ? new("cup-tool", $"cup tool for this {family.Value.TradeName} bottom bracket")
            : new("bearing-press", $"bearing press with seats for {family.Value.TradeName}", true);
    }

    public static TorqueFigure CupTorque(Build build)
    {
        Known<SpindleSeat> seat = build.As<BottomBracket>(Slot.BottomBracket)?.Takes ?? default;
        return seat.Is(SpindleSeat.SquareJis) || seat.Is(SpindleSeat.SquareIso) ? TorqueTable.DriveTorques.BracketSquare
            : seat.Is(SpindleSeat.EightShort) || seat.Is(SpindleSeat.EightLong) ? TorqueTable.DriveTorques.BracketEight
            : seat.Is(SpindleSeat.Mm24) ? TorqueTable.DriveTorques.BracketOutboard
            : seat.Is(SpindleSeat.Stepped24) ? TorqueTable.DriveTorques.BracketStepped
            : TorqueTable.DriveTorques.BracketCups;
    }

    public static TorqueFigure?[] CrankTorque(Build build) =>
        build.Takes(SpindleSeat.SquareJis, SpindleSeat.SquareIso) ? [TorqueTable.DriveTorques.CrankSquare]
        : build.Takes(SpindleSeat.EightShort, SpindleSeat.EightLong) ? [TorqueTable.DriveTorques.CrankEight]
        : build.Takes(SpindleSeat.Ten) ? [TorqueTable.DriveTorques.CrankTen]
        : build.Takes(SpindleSeat.Mm24) ? [TorqueTable.DriveTorques.PreloadCap, TorqueTable.DriveTorques.CrankPinch]
        : build.Takes(SpindleSeat.Stepped24) ? [TorqueTable.DriveTorques.CrankStepped]
        : build.Takes(SpindleSeat.Mm2899, SpindleSeat.Mm30) ? [TorqueTable.DriveTorques.CrankThirty]
        : build.Takes(SpindleSeat.OnePiece, SpindleSeat.Cottered) ? []
        : build.As<Crankset>(Slot.Crankset) is { Spindle.State: KnownState.Value } ? [TorqueTable.DriveTorques.CrankGeneric] : [];
}

/// <summary>What has to be measured on this build.</summary>
internal static class FrameFigures
{
    private const int Most = 12;

    public static WorkFigure?[] Asked(FitReport report) =>
        [.. report.ToMeasure.Take(Most).Select(m => WorkFigure.Lacks($"measure-{m.What.Slot.Key}-{m.What.Field}", $"{m.What.Slot.Name}, {m.What.Field}", m.What.ToString()))];
}
