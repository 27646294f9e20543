using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>What lets a spindle into a bottom bracket that is made for another seat.</summary>
internal static class SpindleSleeves
{
    public static ImmutableArray<Bridge> Table { get; } =
    [
        Reducer(SpindleSeat.Mm24, SpindleSeat.Mm30, "24-in-30 mm reducer sleeves, only ones sold for that bearing", Sources.SpindleSystem, Sources.BracketDetail),
        Reducer(SpindleSeat.Mm24, SpindleSeat.Mm2899, "24-in-28.99 mm reducer sleeves, only ones sold for that bearing", Sources.SpindleSystem, Sources.CommonPractice),
        Reducer(SpindleSeat.Stepped24, SpindleSeat.Mm30, "24/22-in-30 mm reducer sleeves, only ones sold for that bearing", Sources.BracketDetail),
        Check(SpindleSeat.SquareJis, SpindleSeat.SquareIso, "the arm further in, 4.5 mm by two sources and 1.8 mm by one, if it does not bottom on the spindle", Cautions.Tapers, Sources.TaperMeasured, Sources.TaperSums),
        Check(SpindleSeat.SquareIso, SpindleSeat.SquareJis, "the arm further out, 4.5 mm by two sources and 1.8 mm by one, if enough of the taper holds it and the chainline is right", Cautions.Tapers, Sources.TaperMeasured, Sources.TaperSums, Sources.TaperExchange),
        Check(SpindleSeat.Bmx24, SpindleSeat.Mm24, "the same 24 mm bore, if the bearings stand where the crank needs them", null, Sources.BmxBrackets, Sources.Derived),
        Check(SpindleSeat.Mm24, SpindleSeat.Bmx24, "the same 24 mm bore, if the bearings stand where the crank needs them", null, Sources.BmxBrackets, Sources.Derived),
    ];

    private static Bridge Reducer(SpindleSeat crank, SpindleSeat bracket, string what, params ImmutableArray<Source> sources) =>
        Check(crank, bracket, what, Cautions.NeverSleeve, sources) with { Kind = BridgeKind.Adapter };

    private static Bridge Check(SpindleSeat crank, SpindleSeat bracket, string what, Caution? caution, params ImmutableArray<Source> sources) => new()
    {
        Id = $"spindle-{crank.FitKey}-in-{bracket.FitKey}".Replace('/', '-').ToLowerInvariant(),
        Kind = BridgeKind.MadeForBoth,
        Result = Verdict.NeedsMeasuring,
        What = what,
        Caution = caution,
        From = crank.FitCode,
        To = bracket.FitCode,
        Sources = sources,
    };
}
