using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;

namespace Lugwork.Workshop;

/// <summary>Figures, tool and torque of the bottom bracket, from shell, unit and spindle.</summary>
internal static class ShellFigures
{
    private static Known<ShellFamily> FamilyOf(Build build) =>
        build.As<BottomBracket>(Slot.BottomBracket)?.Family is { State: KnownState.Value } family ? family
        : build.Has(Slot.ShellAdapter) ? default : FamilyOfFrame(build);

    /// <summary>The one family of all that the shell can be: a width that is not known leaves it known.</summary>
    private static Known<ShellFamily> FamilyOfFrame(Build build)
    {
        ShellFamily[] families = [.. build.Frame.Shell.Values.Select(s => s.Family).Distinct()];
        return families is [var only] ? Known<ShellFamily>.Of(only) : default;
    }

    public static WorkFigure? Bore(Build build) =>
        FamilyOfFrame(build) is not { State: KnownState.Value } family || family.Value is not { LeastBore: { } least, MostBore: { } most } ? null
        : WorkFigure.Told("shell-bore", "bore of the shell", FormattableString.Invariant($"{least.Millimeters:0.###} to {most.Millimeters:0.###} mm ({family.Value.TradeName})"), family.Value.Source);

    public static WorkFigure? Thread(Build build) => FamilyOf(build) is { State: KnownState.Value } family ? Thread([family.Value]) : build.Has(Slot.ShellAdapter) ? Thread([]) : FrameThread(build);

    /// <summary>Of the shell itself, whatever an adapter makes of it: of all families that it can be, where they share thread and hand.</summary>
    public static WorkFigure? FrameThread(Build build) => Thread([.. build.Frame.Shell.Values.Select(s => s.Family).Distinct()]);

    private static WorkFigure? Thread(ShellFamily[] families) =>
        families.Length > 0 && families.All(f => !f.IsThreaded) ? null
        : families.DistinctBy(f => (f.Thread, f.IsDriveCupLeftHand)).Take(2).ToArray() is not [var family] ? WorkFigure.Lacks("shell-thread", "thread of the shell", "the family of the shell")
        : WorkFigure.Told("shell-thread", "thread of the shell", $"{family.Thread}; drive-side cup {(family.IsDriveCupLeftHand ? "left-hand, tightens anticlockwise" : "right-hand, tightens clockwise")}", [.. families.Select(f => f.Source).Distinct()]);

    /// <summary>What the table of cranks and shells says of this pair, spacers included.</summary>
    public static WorkFigure? Spacers(FitReport report)
    {
        Fit fit = report.Findings.FirstOrDefault(f => f.Joint!.Id.StartsWith("bottom-bracket-spacers", StringComparison.Ordinal));
        fit = fit.Joint is null ? report.Findings.FirstOrDefault(f => f.Joint!.Id == "crank-across-shell") : fit;
        return fit.Joint is null ? null : WorkFigure.Told("bracket-spacers", "crank, shell and spacers", $"{fit.Sentence} ({Verdicts.InWords(fit.Verdict)})", [.. fit.Sources]);
    }

    /// <summary>Spacers of each side: what is stated of the drive side, else what a page counts for this crank across this shell.</summary>
    public static WorkFigure?[] SideSpacers(Build build)
    {
        if (build.As<BottomBracket>(Slot.BottomBracket) is not { } bracket)
        {
            return [];
        }

        (Shell Shell, Spindle Spindle)? pair = PairOf(build);
        SpacerCount? count = pair is { } p ? SpacerCount.Of(p.Shell, p.Spindle) : null;
        if (count is null && build.IsShellThreaded() == false && !(pair is { } q && SpacerCount.IsByChart(q.Shell, q.Spindle)))
        {
            return [];
        }

        FigureInputs given = new();
        decimal stated = given.Millimetres("the spacers under the drive-side cup, by the crank maker's chart", bracket.DriveSpacer, noneIsZero: true);
        WorkFigure drive = given.Figure(DriveId, DriveName, Millimetre, () => (double)stated);
        drive = drive.IsKnown || count is null ? drive : Counted(build, count);
        WorkFigure other = count is null ? WorkFigure.Lacks(OtherId, OtherName, "the spacers under the other cup, by the crank maker's chart") with { Unit = Millimetre }
            : Of(OtherId, OtherName, count.OtherNanometres, count);
        return [drive.Into(Slot.BottomBracket, "driveSpacer", mayBeNone: true), other];
    }

    private const string DriveId = "drive-spacer";
    private const string DriveName = "spacers under the drive-side cup";
    private const string OtherId = "other-spacer";
    private const string OtherName = "spacers under the other cup";
    private const string Millimetre = "mm";

    private static WorkFigure Counted(Build build, SpacerCount count) => HasPlate(build) switch
    {
        true => Of(DriveId, DriveName, count.DriveBesidePlateNanometres, count),
        null when count.DriveNanometres != count.DriveBesidePlateNanometres => WorkFigure.Lacks(DriveId, DriveName, FormattableString.Invariant($"whether a plate of derailleur or guide sits under that cup: with one {InMillimetres(count.DriveBesidePlateNanometres):0.#} mm of spacers, without {InMillimetres(count.DriveNanometres):0.#} mm")) with { Unit = Millimetre },
        _ => Of(DriveId, DriveName, count.DriveNanometres, count),
    };

    private static WorkFigure Of(string id, string name, long nanometres, SpacerCount count) =>
        WorkFigure.Of(id, name, InMillimetres(nanometres), Millimetre, count.Sources) with { Words = nanometres == 0 ? "none, by the pages that list this crank and shell" : "in rings of 2.5 mm, by the pages that count them for this crank and shell" };

    private static double InMillimetres(long nanometres) => nanometres / (double)Nanometres.PerMillimetre;

    /// <summary>Shell of the frame and spindle of the crank, both known, with no adapter between them.</summary>
    private static (Shell Shell, Spindle Spindle)? PairOf(Build build) =>
        !build.Has(Slot.ShellAdapter) && build.Frame.Shell is { State: KnownState.Value } shell && build.As<Crankset>(Slot.Crankset)?.Spindle is { State: KnownState.Value } spindle ? (shell.Value, spindle.Value) : null;

    /// <summary>A plate of front derailleur or guide sits under the drive-side cup, none does, or null where a mount is not known.</summary>
    private static bool? HasPlate(Build build)
    {
        bool? derailleur = build.As<FrontDerailleur>(Slot.FrontDerailleur) is { } front ? BuildLook.Common(front.Mount, m => m == FrontDerailleurMount.EType) : false;
        bool? guide = build.As<ChainGuide>(Slot.ChainGuide) is { } held ? BuildLook.Common(held.Mount, m => m == ChainGuideMount.Bracket) : false;
        return derailleur | guide;
    }

    public static WorkTool Tool(Build build)
    {
        Known<ShellFamily> family = FamilyOf(build);
        return family.State != KnownState.Value ? new("bracket-tool", "cup tool or press: by what the shell turns out to be", true)
            : !family.Value.IsThreaded ? new("bearing-press", $"bearing press with seats for {family.Value.TradeName}, or the tool of its maker where both halves screw together", true)
            : family.Value == ShellFamily.T47 || family.Value == ShellFamily.T47Asymmetric ? new("cup-tool", "cup tool of the bottom bracket's maker: those of T47 cups do not interchange") { Source = Sources.T47Woes }
            : build.As<BottomBracket>(Slot.BottomBracket)?.Takes is not { State: KnownState.Value } seat ? new("cup-tool", $"cup tool of the maker of this {family.Value.TradeName} bottom bracket")
            : seat.Value == SpindleSeat.Mm24 || seat.Value == SpindleSeat.Stepped24 ? new("cup-tool", "tool for outboard cups: 16 notches of the 44 mm class, or the cup maker's own where the cup is smaller") { Source = Sources.LockringExchange }
            : seat.Value == SpindleSeat.SquareJis || seat.Value == SpindleSeat.SquareIso || seat.Value == SpindleSeat.EightSplineShort || seat.Value == SpindleSeat.EightSplineLong ? new("cup-tool", "cartridge tool: 20 splines or 8 notches, by the cup; loose cups take the spanners of their maker") { Source = Sources.CartridgeTools }
            : new("cup-tool", $"cup tool of the maker of this {family.Value.TradeName} bottom bracket");
    }

    /// <summary>By the spindle that is known to go in; of an unknown one no row is shown.</summary>
    public static TorqueFigure? CupTorque(Build build)
    {
        Known<SpindleSeat> seat = build.As<BottomBracket>(Slot.BottomBracket)?.Takes ?? default;
        return build.IsShellThreaded() != true || seat.State != KnownState.Value || seat.Is(SpindleSeat.Cottered) ? null
            : seat.Is(SpindleSeat.SquareJis) || seat.Is(SpindleSeat.SquareIso) ? TorqueTable.DriveTorques.BracketSquare
            : seat.Is(SpindleSeat.EightSplineShort) || seat.Is(SpindleSeat.EightSplineLong) ? TorqueTable.DriveTorques.BracketEight
            : seat.Is(SpindleSeat.Mm24) ? TorqueTable.DriveTorques.BracketOutboard
            : seat.Is(SpindleSeat.Stepped24) ? TorqueTable.DriveTorques.BracketStepped
            : TorqueTable.DriveTorques.BracketCups;
    }

    public static WorkFigure? CupLacks(Build build) =>
        build.IsShellThreaded() == false || CupTorque(build) is not null ? null
        : WorkFigure.LacksTorque("bracket-torque", "torque of the bottom bracket", build.IsShellThreaded() is null ? "whether it is screwed in or pressed" : build.As<BottomBracket>(Slot.BottomBracket)!.Takes.Is(SpindleSeat.Cottered) ? "whether it has loose cups or is a cartridge, and its maker's figure" : "which spindle it takes, and the maker's figure");

    /// <summary>Of these units there are cartridges and ones with loose cups, and no field tells them apart.</summary>
    public static bool MayHaveLooseCups(Build build) =>
        build.As<BottomBracket>(Slot.BottomBracket)?.Takes is { } seat && (seat.MayBe(SpindleSeat.SquareJis) || seat.MayBe(SpindleSeat.SquareIso) || seat.MayBe(SpindleSeat.Cottered));

    /// <summary>Hand of the thread that holds a one-piece crank; null for others.</summary>
    public static WorkFigure? ConeThread(Build build) =>
        build.Takes(SpindleSeat.OnePiece) ? WorkFigure.Told("cone-thread", "thread of cone and locknut on the left", "left-hand, tightens anticlockwise", Sources.BracketTable) : null;

    /// <summary>No row was read for a spindle of two halves, for a stepped one of 30 mm, for the locknut of a one-piece crank, nor for the nuts of cotters.</summary>
    public static WorkFigure? CrankLacks(Build build) =>
        build.As<Crankset>(Slot.Crankset) is not { Spindle.State: KnownState.Value } ? WorkFigure.LacksTorque("crank-torque", "torque of the crank", "the spindle of the crank")
        : build.Takes(SpindleSeat.OnePiece) ? WorkFigure.LacksTorque("locknut-torque", "torque of the locknut of the crank", "the crank maker's figure: no page was read that prints one")
        : build.Takes(SpindleSeat.Cottered) ? WorkFigure.LacksTorque("cotter-torque", "torque of the nuts of the cotters", "the crank maker's figure: no page was read that prints one")
        : CrankTorque(build).Length == 0 ? WorkFigure.LacksTorque("crank-torque", "torque of the crank", "the crank maker's figure: no page was read that prints one for this spindle") : null;

    public static TorqueFigure?[] CrankTorque(Build build) =>
        build.Takes(SpindleSeat.SquareJis, SpindleSeat.SquareIso) ? [TorqueTable.DriveTorques.CrankSquare]
        : build.Takes(SpindleSeat.EightSplineShort, SpindleSeat.EightSplineLong) ? [TorqueTable.DriveTorques.CrankEight]
        : build.Takes(SpindleSeat.TenSpline) ? [TorqueTable.DriveTorques.CrankTen]
        : build.Takes(SpindleSeat.Mm24) ? [TorqueTable.DriveTorques.PreloadCap, TorqueTable.DriveTorques.CrankPinch]
        : build.Takes(SpindleSeat.Stepped24) ? [TorqueTable.DriveTorques.CrankStepped]
        : build.Takes(SpindleSeat.Mm2899, SpindleSeat.Mm30) ? [TorqueTable.DriveTorques.CrankThirty]
        : build.Takes(SpindleSeat.Bmx19, SpindleSeat.Bmx22, SpindleSeat.Bmx24) ? [TorqueTable.DriveTorques.CrankGeneric] : [];
}

/// <summary>What has to be measured on this build.</summary>
internal static class FrameFigures
{
    private const int Most = 12;

    /// <summary>What settles most, save the condition of used parts, which has a step of its own.</summary>
    public static WorkFigure?[] Asked(FitReport report)
    {
        Measurement[] all = [.. report.ToMeasure.Where(m => m.What.Field != "condition").Select(m => m.What)];
        return
        [
            .. all.Take(Most).Select(m => Asked(report.Build, m)),
            all.Length > Most ? WorkFigure.Told("measure-more", "more to measure", FormattableString.Invariant($"{all.Length - Most} more; check the build again once these are known")) : null,
        ];
    }

    private static WorkFigure Asked(Build build, Measurement what)
    {
        WorkFigure figure = WorkFigure.Lacks($"measure-{what.Slot.Key}-{what.Field}", $"{what.Slot.Name}, {what.Called}", what.How);
        IPartField? field = PartForms.Of(what.Slot).Fields.FirstOrDefault(f => f.Key == what.Field);
        if (field is null || !build.Has(what.Slot))
        {
            return figure;
        }

        return figure.Into(what.Slot, what.Field, mayBeNone: false) with { Unit = field.Expected.StartsWith("millimetres", StringComparison.Ordinal) ? "mm" : field.Key == "pitches" ? "pitches" : field.Type?.Name == nameof(ToothCount) ? "teeth" : "" };
    }
}
