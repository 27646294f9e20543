using System.Collections.Immutable;

namespace Lugwork.Hubs;

/// <summary>The measurable dimensions of hub standards, made when a hub is first identified.</summary>
internal static class HubIdentification
{
    private static readonly ImmutableArray<MeasuredDimension> Dimensions =
    [
        new("width over locknuts", "caliper over the locknuts or end caps of the wheel"),
        new("inner gap", "inside caliper between the inner faces of the ends, wheel out"),
        new("axle", "caliper on the axle, or in the bore that it goes through"),
        new("end cap", "caliper on the outside of the end that goes into the recess"),
    ];

    private static readonly IdentificationTable<HubStandard> Every = Make(null);

    private static readonly IdentificationTable<HubStandard> Front = Make(false);

    private static readonly IdentificationTable<HubStandard> Rear = Make(true);

    public static IdentificationTable<HubStandard> Of(bool? rear) => rear is null ? Every : rear.Value ? Rear : Front;

    private static IdentificationTable<HubStandard> Make(bool? rear)
    {
        ImmutableArray<DimensionRow<HubStandard>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<HubStandard>>();
        foreach (HubStandard standard in HubStandard.All)
        {
            // A maker's own fork end has no dimensions: the fork shows what it is.
            // Nor has a name that stands for several axles any but theirs.
            if (standard.OldMicrometres == 0 || !standard.Sizes.IsEmpty || (rear is { } asked && asked != standard.IsRear))
            {
                continue;
            }

            HubDetails details = HubDetails.Of(standard);
            foreach (int axle in standard.Axles)
            {
                foreach ((decimal, decimal)? width in Widths(standard))
                {
                    (decimal, decimal)? gap = standard.GapMicrometres == standard.OldMicrometres ? width : Exactly(standard.GapMicrometres);
                    rows.Add(new(standard, [width, gap, AxleRange(axle), Exactly(details.Ends)], details.TellsApart));
                }
            }
        }

        return new(Dimensions, rows.ToImmutable(), h => h.FitKey);
    }

    /// <summary>Two standards are seen in more than one width.</summary>
    private static ImmutableArray<(decimal, decimal)?> Widths(HubStandard standard) => standard.FitKey switch
    {
        "F091-096" => [(90m, 96m)],
        "R140-145t" => [(145m, 145m), (140m, 140m)],
        _ => [Exactly(standard.OldMicrometres)],
    };

    /// <summary>The thread of a 12 mm axle measures 11.85 mm and more; of other axles only the name is known. Fractions of an inch are exact here.</summary>
    private static (decimal, decimal)? AxleRange(int micrometres) => micrometres switch
    {
        12_000 => (11.85m, 12m),
        7_940 => (7.9375m, 7.94m),
        9_530 => (9.525m, 9.53m),
        _ => Exactly(micrometres),
    };

    private static (decimal, decimal)? Exactly(int micrometres) => micrometres == 0 ? null : (micrometres / 1000m, micrometres / 1000m);
}
