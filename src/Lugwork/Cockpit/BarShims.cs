using System.Collections.Immutable;

namespace Lugwork.Cockpit;

/// <summary>What spans a gap between handlebar and stem: the shims that are sold.</summary>
internal static class BarShims
{
    public static ImmutableArray<Bridge> Table { get; } =
    [
        Row(BarClamp.Mm25Point4, BarClamp.Mm31Point8, BridgeKind.Shim, Verdict.NeedsPart, "bar shim 25.4 to 31.8", Sources.BarSizes),
        Row(BarClamp.Mm26, BarClamp.Mm31Point8, BridgeKind.Shim, Verdict.NeedsPart, "bar shim 26.0 to 31.8", Sources.BarSizes),
        Row(BarClamp.Mm22Point2, BarClamp.Mm25Point4, BridgeKind.Shim, Verdict.NeedsPart, "bar shim 22.2 to 25.4", Sources.StemSizes),
        Row(BarClamp.Mm31Point8, BarClamp.Mm35, BridgeKind.Shim, Verdict.NeedsMeasuring, "bar shim 31.8 to 35.0, for metal bars only", Sources.Memory),
        Row(BarClamp.Mm25Point8, BarClamp.Mm26, BridgeKind.Adapter, Verdict.NeedsMeasuring, "a stem with a removable faceplate; a single-bolt clamp is refused", Sources.BarAndStemTable, Sources.BarSizes),
        Row(BarClamp.Mm25Point8, BarClamp.Mm25Point4, BridgeKind.Adapter, Verdict.NeedsMeasuring, "a stem with a removable faceplate; a single-bolt clamp is refused", Sources.BarAndStemTable, Sources.BarSizes),
    ];

    private static Bridge Row(BarClamp from, BarClamp to, BridgeKind kind, Verdict result, string what, params ImmutableArray<Source> sources) => new()
    {
        Id = $"bar-{from.FitKey}-in-{to.FitKey}",
        Kind = kind,
        Result = result,
        What = what,
        From = from.FitCode,
        To = to.FitCode,
        Caution = Cautions.BarClampCare,
        Sources = sources,
    };
}
