using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>Bottom bracket in the shell, crank in the bottom bracket, crank across the shell, pedal in the crank.</summary>
internal static class BottomBracketRelations
{
    private const string OwnUnit = "a bottom bracket made for the frame's own shell";

    private const string OwnThread = "a unit with the shell's own thread";

    private static readonly Bridge ItalianInserts = ShopWork("italian-shell-with-inserts", ShellFamily.Bsa, ShellFamily.Italian, "steel thread inserts to BSA in the Italian shell (leave it to a shop)", Sources.ShellThreads, Sources.UnthreadedShells);

    private static readonly Bridge Expanding = ShopWork("threadless-expanding-unit", ShellFamily.Bsa, ShellFamily.French, "a threadless expanding unit, on ends that are faced square or bevelled (leave it to a shop)", Sources.UnthreadedShells);

    private static readonly Bridge Tapping = ShopWork("pf30-shell-tapped-to-t47", ShellFamily.T47, ShellFamily.Pf30, "tapping to M47 x 1, in a metal shell with enough wall only, and for good (leave it to a shop)", Sources.T47Width, Sources.T47Woes);

    private static readonly Bridge CrankTapping = new()
    {
        Id = "french-crank-tapped-to-9-16",
        Kind = BridgeKind.ShopWork,
        Result = Verdict.NeedsPart,
        What = "tapping the crank to 9/16 in (leave it to a shop)",
        From = PedalThread.NineSixteenths.FitCode,
        To = PedalThread.French.FitCode,
        Caution = Cautions.PedalThreads,
        Sources = [Sources.PedalThreadList, Sources.PedalAttachment],
    };

    private static readonly Reason SameShell = new("same-shell-family", "{1} bottom bracket goes in {0} shell.", Cautions.ShellThreads) { Sources = [Sources.ShellThreads, Sources.ThreadConcepts, Sources.BracketStandards] };

    /// <summary>Inputs: shell family of the frame, family that the bottom bracket is made for.</summary>
    public static Relation InShell { get; } = new SameKey(
        0, 1, SameShell, OtherFamily,
        () => ShellSleeves.Table,
        ShellFamily.Osbb.FitCode, ShellFamily.Thompson.FitCode, ShellFamily.Insert.FitCode)
    {
        Offered = [ItalianInserts, Expanding, Tapping],
    };

    /// <summary>Inputs: width of the shell, narrowest and widest that the bottom bracket is made for; nanometres.</summary>
    public static Relation Width { get; } = new ShellWidth();

    /// <summary>Inputs: spindle seat of the bottom bracket, spindle seat of the crank.</summary>
    public static Relation SpindleIn => SpindleInBracket.Relation;

    /// <summary>Inputs: shell, spindle.</summary>
    public static Relation Across => SpindleAcrossShell.Table;

    private static readonly Reason SamePedal = new("same-pedal-thread", "{1} pedal screws into {0} crank.", Cautions.PedalThreads) { Sources = [Sources.PedalAttachment, Sources.OnePiecePedals] };

    private static readonly Reason OwnSides = new("pedal-sides", "{2}: each pedal on its own side.", Cautions.PedalThreads) { Sources = [Sources.PedalAttachment] };

    private static readonly Reason WrongSide = new("pedal-on-wrong-side", "{2}: one would have to go in the other crank, whose thread turns the other way, and destroys the arm.", Cautions.PedalThreads)
    {
        Mend = "a left and a right pedal",
        Sources = [Sources.PedalAttachment],
    };

    /// <summary>Inputs: pedal thread of the crank, thread of the pedal.</summary>
    public static Relation Pedals { get; } = new Matrix(0, 1, Pedal, [CrankTapping], [Sources.PedalAttachment, Sources.OnePiecePedals, Sources.PedalThreadList]);

    /// <summary>Inputs: pedal thread of the crank, thread of the pedals, their sides.</summary>
    public static Relation PairOfPedals { get; } = new AllOf(
        Pedals,
        new Matrix(0, 2, (_, sides) => sides == PedalSides.Pair.FitCode ? new(Verdict.Fits, OwnSides) : new(Verdict.Unsafe, WrongSide), [], [Sources.PedalAttachment]));

    private static Reason OtherFamily(long shell, long bracket)
    {
        (ShellFamily into, ShellFamily unit) = (ShellFamily.OfFitCode(shell), ShellFamily.OfFitCode(bracket));
        bool sameBore = into.IsThreaded ? into.Thread == unit.Thread : into.BoreMicrometres > 0 && into.BoreMicrometres == unit.BoreMicrometres;
        return sameBore && (into.IsAsymmetric || unit.IsAsymmetric) ? Misfits.OtherCentre
            : into.IsThreaded && unit.IsThreaded ? OtherThreads(into, unit)
            : into == ShellFamily.Italian ? Misfits.ItalianShell
            : into == ShellFamily.Pf30 && unit == ShellFamily.T47 ? Misfits.Tap
            : into.BoreMicrometres == 0 || unit.BoreMicrometres == 0 || sameBore ? Misfits.OtherShell
            : unit.BoreMicrometres > into.BoreMicrometres ? Misfits.BoreTooSmall
            : Misfits.BoreTooLarge;
    }

    private static Reason OtherThreads(ShellFamily into, ShellFamily unit)
    {
        bool wide = into.Thread == ShellFamily.T47.Thread;
        return unit.Thread == ShellFamily.T47.Thread && !wide ? Misfits.OutOfBounds
            : wide ? Misfits.BoreTooLarge
            : into == ShellFamily.Italian ? Misfits.ItalianShell
            : into == ShellFamily.Tpi26 || unit == ShellFamily.Tpi26 ? Misfits.OldEnglish
            : Misfits.OtherThread;
    }

    private static Outcome Pedal(long crank, long pedal)
    {
        long hole = PedalThread.OfFitCode(crank).DiameterNanometres;
        long thread = PedalThread.OfFitCode(pedal).DiameterNanometres;
        return crank == pedal ? new(Verdict.Fits, SamePedal)
            : crank == PedalThread.French.FitCode && pedal == PedalThread.NineSixteenths.FitCode ? new(Verdict.Unsafe, Misfits.FrenchCrank)
            : new(Verdict.DoesNotFit, thread > hole ? Misfits.PedalTooLarge : Misfits.PedalTooSmall);
    }

    private static Bridge ShopWork(string id, ShellFamily unit, ShellFamily shell, string what, params ImmutableArray<Source> sources) => new()
    {
        Id = id,
        Kind = BridgeKind.ShopWork,
        Result = Verdict.NeedsPart,
        What = what,
        From = unit.FitCode,
        To = shell.FitCode,
        Caution = Cautions.ShellThreads,
        Sources = sources,
    };

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason ItalianShell = new("italian-shell", "An Italian shell is tapped 36 mm x 24 tpi; {1} unit does not hold in it.", Cautions.ShellThreads)
        {
            Mend = "an Italian unit",
            Offers = [ItalianInserts, Expanding],
            Sources = [Sources.ShellThreads, Sources.UnthreadedShells],
        };

        public static readonly Reason OtherThread = new("other-thread", "{0} and {1} differ in pitch, diameter or hand: the cup goes in a few turns and binds, or not at all.", Cautions.ShellThreads) { Mend = OwnThread, Offers = [Expanding], Sources = [Sources.ShellThreads, Sources.UnthreadedShells] };

        public static readonly Reason OldEnglish = new("26-against-24-tpi", "{0} and {1}: 26 threads to the inch against another pitch binds after a few turns.", Cautions.ShellThreads)
        {
            Mend = "cups of the shell's own thread; else leave it to a shop: a new thread",
            Offers = [Expanding],
            Sources = [Sources.CycleThreads, Sources.UnthreadedShells],
        };

        public static readonly Reason OutOfBounds = new("shell-far-too-small", "{1} unit is over 10 mm thicker than {0} shell is inside.") { Mend = OwnUnit, Sources = [Sources.Derived] };

        public static readonly Reason Tap = new("tap-46-to-t47", "{0} shell has no thread for {1} unit.")
        {
            Mend = "a unit pressed in the 46 mm bore",
            Offers = [Tapping],
            Sources = [Sources.T47Width, Sources.T47Woes],
        };

        public static readonly Reason OtherCentre = new("other-centre", "{0} and {1} share thread or bore, but not the middle: the crank would sit off centre.") { Mend = OwnUnit, Sources = [Sources.BracketTable, Sources.BracketGuide, Sources.Memory] };

        public static readonly Reason BoreTooSmall = new("bore-too-small", "{1} unit is made for a larger bore than {0} has; nothing makes a shell larger.") { Mend = OwnUnit, Sources = [Sources.BracketMisconceptions, Sources.Derived] };

        public static readonly Reason BoreTooLarge = new("bore-too-large", "{1} unit is loose in {0}, and no sleeve is listed for this pair.") { Mend = OwnUnit, Sources = [Sources.BracketMisconceptions, Sources.Derived] };

        public static readonly Reason OtherShell = new("other-shell", "{1} unit and {0} shell are of two kinds, and no adapter is listed for this pair.") { Mend = OwnUnit, Sources = [Sources.BracketTable, Sources.Derived] };

        public static readonly Reason FrenchCrank = new("french-crank", "{1} pedal enters {0} crank, whose pitch is nearly its own and whose hole is 0.28 mm smaller, and binds after a few turns.", Cautions.PedalThreads)
        {
            Mend = "pedals threaded 14 x 1.25",
            Offers = [CrankTapping],
            Sources = [Sources.PedalThreadList, Sources.PedalAttachment],
        };

        public static readonly Reason PedalTooLarge = new("pedal-too-large", "{1} pedal is larger than the {0} hole of the crank.", Cautions.PedalThreads)
        {
            Mend = "pedals with the crank's own thread",
            Sources = [Sources.OnePiecePedals],
        };

        public static readonly Reason PedalTooSmall = new("pedal-too-small", "{1} pedal is smaller than the {0} hole of the crank and pulls out.", Cautions.PedalThreads)
        {
            Mend = "pedals with the crank's own thread",
            Sources = [Sources.Derived, Sources.PedalAttachment],
        };
    }
}
