using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>Which crank goes across which shell, with a bottom bracket that exists: a cell for every pair. Listed rows as they stand, arithmetic where it settles the matter, else the crank maker's chart.</summary>
internal static class SpindleAcrossShell
{
    /// <summary>What outboard cups add to the width of a shell, both sides together.</summary>
    private const int OutboardMicrometres = 18_500;

    /// <summary>The least by which a spindle has to be short before arithmetic refuses it: cups and spacers of two makers differ by less.</summary>
    private const int ShortMicrometres = 4_000;

    /// <summary>Room between spindle and bore in which no bearing goes; a millimetre and a half more is a thin one.</summary>
    private const int NoRoomMicrometres = 4_010;

    /// <summary>Reason of a pair that goes with the spacers of a chart.</summary>
    public const string Spaced = "spindle-across-spaced";

    /// <summary>Reason of a pair that goes with one spacer.</summary>
    public const string OneSpacer = "spindle-across-one-spacer";

    /// <summary>Reason of a pair that goes with cups which are spaced by a chart.</summary>
    public const string PartSpaced = "spindle-across-with-spaced";

    private const string ByChart = ", spaced by the maker's chart";

    private const string AnotherCrank = "a crank with a spindle for this shell";

    private static readonly Reason Goes = new("spindle-across", "{1} crank goes across {0} shell in the bottom bracket that is sold for this pair.");

    private static readonly Reason GoesSpaced = new(Spaced, "{1} crank goes across {0} shell in the bottom bracket that is sold for this pair, with the spacers of the maker's chart; left out, the arm clamps with side play or a chainring meets the frame.") { IsNote = true };

    private static readonly Reason GoesOneSpacer = new(OneSpacer, "{1} crank goes across {0} shell in the bottom bracket that is sold for this pair, with one of its 2.5 mm spacers, on the drive side.");

    private static readonly Reason WithPart = new("spindle-across-with", "{1} crank goes across {0} shell with [bridge].");

    private static readonly Reason WithPartSpaced = WithPart with { Id = PartSpaced };

    private static readonly Reason Short = new("spindle-too-short", "{1} spindle is too short for {0} shell: it ends inside the bearings.") { Mend = AnotherCrank };

    private static readonly Reason NoRoom = new("no-radial-room", "Between {1} spindle and the bore of {0} shell there is no room for a bearing.") { Mend = AnotherCrank };

    private static readonly Reason OnePieceOnly = new("one-piece-shell-only", "{1} crank goes in an unthreaded shell of 51.3 mm only, not in {0}.") { Mend = AnotherCrank };

    private static readonly Reason AskMaker = new("ask-chart", "No source lists {1} crank across {0} shell: ask the crank maker's chart.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason MeasureShell = new("measure-shell", "What is called {0} comes in several bores or threads: measure it before choosing a bottom bracket for {1}.") { Sources = [Sources.OsbbGuide, Sources.UnthreadedShells, Sources.BracketGuide] };

    private static readonly Reason OnePieceByKind = OnePieceOnly with { Sources = [Sources.UnthreadedShells, Sources.BracketTable] };

    private static readonly Reason NoRoomByArithmetic = NoRoom with { Sources = [Sources.Derived, Sources.SpindleOptions] };

    private static readonly Reason ShortByArithmetic = Short with { Sources = [Sources.Derived, Sources.BracketSense, Sources.CranksAndBrackets] };

    private static readonly Cells Said = Fill();

    /// <summary>Inputs: shell, spindle.</summary>
    public static Relation Table { get; } = new Matrix(
        0, 1,
        (shell, spindle) => Said.Find(shell, spindle) is { Verdict: not Verdict.NotJudged } said ? said : Unlisted(Shell.OfFitCode(shell), Spindle.OfFitCode(spindle)),
        Said.Bridges,
        [Sources.SpacerChart24, Sources.SpacerChart30, Sources.Overview2899, Sources.Derived]);

    private static Cells Fill()
    {
        Cells cells = new(Shell.All.Length, Spindle.All.Length);

        void Say(string shell, Verdict verdict, Reason reason, ImmutableArray<Spindle> spindles, params ImmutableArray<Source> sources)
        {
            Outcome said = new(verdict, reason with { Sources = sources });
            foreach (Spindle spindle in spindles)
            {
                cells[Of(shell), spindle.FitCode] = said;
            }
        }

        void Fits(string shell, ImmutableArray<Spindle> spindles, params ImmutableArray<Source> sources) => Say(shell, Verdict.Fits, Goes, spindles, sources);

        void Part(string shell, Spindle spindle, BridgeKind kind, string what, Caution? caution, params ImmutableArray<Source> sources) =>
            cells[Of(shell), spindle.FitCode] = new(Verdict.NeedsPart, what.EndsWith(ByChart, StringComparison.Ordinal) ? WithPartSpaced : WithPart, Sold(shell, spindle, kind, what, caution, sources));

        foreach (string shell in new[] { "BSA-68", "BSA-73", "BSA-83", "BSA-100", "BSA-120" })
        {
            Fits(shell, [Spindle.SquareJis, Spindle.SquareIso, Spindle.EightSplineShort, Spindle.EightSplineLong, Spindle.TenSpline], Sources.BracketGuide);
        }

        Fits("BSA-68", [Spindle.Road24], Sources.SpacerChart24, Sources.BracketSense);
        Part("BSA-68", Spindle.OffRoad24, BridgeKind.Spacers, "three 2.5 mm bottom-bracket spacers, two on the drive side (one where a front derailleur or guide is mounted there) and one on the other", null, Sources.CupSpacers, Sources.SpacerPost, Sources.SpacerUpgrades);
        Say("BSA-73", Verdict.Fits, GoesOneSpacer, [Spindle.OffRoad24], Sources.SpacerPost, Sources.SpacerUpgrades);
        Fits("BSA-68", [Spindle.Mm2899], Sources.Overview2899);
        Fits("BSA-83", [Spindle.Mm2899], Sources.Overview2899);
        Fits("BSA-100", [Spindle.Mm2899], Sources.Overview2899);
        Say("BSA-68", Verdict.Fits, GoesSpaced, [Spindle.Long30], Sources.SpacerChart30, Sources.SpindleLaunch);
        Fits("Italian-70", [Spindle.Road24], Sources.SpacerChart24);
        Fits("Italian-70", [Spindle.Long30], Sources.SpacerChart30);

        Fits("BB30-68", [Spindle.Short30], Sources.BracketMisconceptions, Sources.CranksAndBrackets);
        Part("BB30-68", Spindle.Long30, BridgeKind.Adapter, "a conversion unit or spacer kit for a long spindle, wide spacers on both sides", null, Sources.SpacerChart30);
        Part("BB30-68", Spindle.Road24, BridgeKind.Adapter, "24 mm reducer cups or a thread-together unit for the 42 mm bore, which makes up the 9.25 mm a side", null, Sources.SpacerChart24, Sources.BracketSense, Sources.Derived);
        Say("BB30-73", Verdict.DoesNotFit, Short, [Spindle.Road24], Sources.SpacerChart24);
        Say("BB30A-83", Verdict.DoesNotFit, Short, [Spindle.Road24], Sources.SpacerChart24);

        Part("PF30-68", Spindle.Road24, BridgeKind.Adapter, "46-to-24 mm cups for a 68 mm shell", null, Sources.SpacerChart24);
        Fits("PF30-68", [Spindle.Short30], Sources.SpacerChart30);
        Say("PF30-68", Verdict.Fits, GoesSpaced, [Spindle.Long30], Sources.SpacerChart30);
        Fits("PF30-73", [Spindle.Mm2899], Sources.Overview2899);
        Fits("PF30A-83", [Spindle.Mm2899], Sources.Overview2899);
        Part("PF30-86.5", Spindle.Road24, BridgeKind.Adapter, "46-to-24 mm cups for an 86.5 mm shell" + ByChart, null, Sources.SpacerChart24);
        Fits("PF30-86.5", [Spindle.Long30], Sources.SpacerChart30);
        Part("BBright-press-79", Spindle.Road24, BridgeKind.Adapter, "46-to-24 mm cups for this asymmetric shell" + ByChart, null, Sources.SpacerChart24);
        Say("BBright-press-79", Verdict.Fits, GoesSpaced, [Spindle.Long30], Sources.SpacerChart30);
        Say("BBright-press-79", Verdict.DoesNotFit, Short, [Spindle.Short30], Sources.BracketStandards);
        Say("BBright-direct-79", Verdict.DoesNotFit, Short, [Spindle.Short30], Sources.BracketStandards);

        Fits("PF41-86.5", [Spindle.Road24], Sources.SpacerChart24, Sources.BracketStandards, Sources.BracketSense);
        Say("PF41-86.5", Verdict.Fits, Goes with { Caution = Cautions.ThinBearings }, [Spindle.Long30], Sources.SpacerChart30);
        Fits("PF41-86.5", [Spindle.Mm2899], Sources.SpindleLaunch);
        Say("PF41-89.5", Verdict.Fits, GoesSpaced, [Spindle.Mm2899], Sources.Overview2899);
        Fits("PF41-92", [Spindle.Mm2899], Sources.Overview2899);
        Fits("PF41-92", [Spindle.OffRoad24], Sources.BracketStandards, Sources.BracketSense);
        Part("PF41-92", Spindle.Long30, BridgeKind.Adapter, "41-to-30 mm cups for a 92 mm shell", Cautions.ThinBearings, Sources.CranksAndBrackets, Sources.SpindleLaunch);
        Fits("PF41-121", [Spindle.Mm2899], Sources.Overview2899);

        Fits("BB90-90", [Spindle.Road24, Spindle.Stepped24], Sources.SpacerChart24, Sources.SpindleOptions);
        Say("BB90-90", Verdict.DoesNotFit, NoRoom, [Spindle.Short30, Spindle.Asymmetric30, Spindle.Long30], Sources.SpacerChart30, Sources.SpindleOptions);
        Say("BB90-90", Verdict.DoesNotFit, NoRoom, [Spindle.Mm2899], Sources.Memory, Sources.Derived);

        foreach (string shell in new[] { "T47-85.5", "T47-86.5" })
        {
            // The chart is of 24 mm spindles; no page names the wider ones in this thread.
            Say(shell, Verdict.Fits, GoesSpaced, [Spindle.Road24], Sources.SpacerChart24, Sources.T47Width);
        }

        Fits("T47-68", [Spindle.Road24], Sources.SpacerChart24);
        Fits("T47A-77", [Spindle.Road24], Sources.SpacerChart24, Sources.T47Asymmetric);

        Fits("American-65", [Spindle.OnePiece], Sources.UnthreadedShells, Sources.BracketTable);
        Fits("American-68", [Spindle.OnePiece], Sources.UnthreadedShells, Sources.BracketTable);
        foreach (string shell in new[] { "American-65", "American-68", "Mid-73", "Spanish-68" })
        {
            Fits(shell, [Spindle.Bmx19, Spindle.Bmx22, Spindle.Bmx24], Sources.BmxBrackets);
        }

        return cells;
    }

    /// <summary>What no row lists: refused by family, by room or by length; else open.</summary>
    private static Outcome Unlisted(Shell shell, Spindle spindle)
    {
        if (spindle == Spindle.OnePiece && shell.Family != ShellFamily.SmallOnePiece)
        {
            return new(Verdict.DoesNotFit, OnePieceByKind);
        }

        if (shell.Family.IsLoose)
        {
            return new(Verdict.NeedsMeasuring, MeasureShell);
        }

        if (spindle.Seat.IsRound && shell.Family.BoreMicrometres > 0 && (shell.Family.BoreMicrometres - spindle.Seat.DriveMicrometres) / 2 <= NoRoomMicrometres)
        {
            return new(Verdict.DoesNotFit, NoRoomByArithmetic);
        }

        return spindle.ReachMicrometres > 0 && Over(shell) - spindle.ReachMicrometres > ShortMicrometres
            ? new(Verdict.DoesNotFit, ShortByArithmetic)
            : new(Verdict.NeedsMeasuring, AskMaker);
    }

    /// <summary>The distance over the bearings, as far as it is known: cups of threaded road and off-road shells stand outside, the seats of BB90 inside.</summary>
    private static long Over(Shell shell)
    {
        long width = shell.WidthNanometres / 1_000;
        bool outboard = shell.Family == ShellFamily.Bsa || shell.Family == ShellFamily.Italian || (shell.Family == ShellFamily.T47 && width < 80_000);
        return shell.Family == ShellFamily.Bb90 ? 0 : outboard ? width + OutboardMicrometres : width;
    }

    private static long Of(string key)
    {
        foreach (Shell shell in Shell.All)
        {
            if (shell.FitKey == key)
            {
                return shell.FitCode;
            }
        }

        throw new ArgumentException($"no shell {key}", nameof(key));
    }

    private static Bridge Sold(string shell, Spindle spindle, BridgeKind kind, string what, Caution? caution, ImmutableArray<Source> sources) => new()
    {
        Id = $"crank-{spindle.FitKey}-across-{shell}".Replace('/', '-').ToLowerInvariant(),
        Kind = kind,
        Result = Verdict.NeedsPart,
        What = what,
        Caution = caution,
        From = spindle.FitCode,
        To = Of(shell),
        Sources = sources,
    };
}
