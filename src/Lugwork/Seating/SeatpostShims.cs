using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork.Seating;

/// <summary>Shims that exist, from post to bore. A shim never makes a hole larger, and two are never stacked.</summary>
internal static class SeatpostShims
{
    public static ImmutableArray<Bridge> Table { get; } =
    [
        Shim(2220, 2540), Shim(2500, 2720), Shim(2540, 2720), Shim(2540, 2860), Shim(2600, 2720),
        Shim(2680, 2720, Cautions.Stopgap), Shim(2720, 2860), Shim(2720, 3000), Shim(2720, 3090), Shim(2720, 3160),
        Shim(2720, 3180), Shim(3000, 3090), Shim(3090, 3160), Shim(3090, 3390), Shim(3090, 3490),
        Shim(3160, 3490), Shim(3160, 3390), Shim(2720, 3490), Shim(2540, 3160),
    ];

    private static Bridge Shim(int post, int bore, Caution? caution = null)
    {
        string from = SeatDiameters.Exact(post).ToString();
        string to = SeatDiameters.Exact(bore).ToString();
        string wall = ((bore - post) / 200m).ToString("0.###", CultureInfo.InvariantCulture);
        return new Bridge
        {
            Id = $"seatpost-shim-{from}-to-{to}",
            Kind = BridgeKind.Shim,
            Result = Verdict.NeedsPart,
            What = $"seatpost shim {from} to {to} mm, wall {wall} mm, 80 to 100 mm long and at least as long as the post must be in",
            Caution = caution,
            From = SeatDiameters.Exact(post).Value,
            To = SeatDiameters.Exact(bore).Value,
            Sources = [Sources.Derived, Sources.CommonPractice],
        };
    }
}
