using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>Which front-derailleur mount measured dimensions can be.</summary>
internal static class FrontMountMeasured
{
    /// <summary>S1 and S2 have none; a ruler cannot tell less than half a millimetre from none.</summary>
    private const decimal InOnePlane = 0.5m;

    private const decimal Step = 5m;

    public static Identification<FrontDerailleurMount> Identify(MeasuredLength? tube, MeasuredLength? boltSpacing, MeasuredLength? boltStep)
    {
        bool bolts = boltSpacing is not null || boltStep is not null;
        ImmutableArray<DimensionRow<FrontDerailleurMount>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<FrontDerailleurMount>>();
        foreach (FrontDerailleurMount mount in FrontDerailleurMount.All)
        {
            // A mount without that feature has no unknown dimension: the feature was there to be measured.
            if ((tube is null || mount.TubeMicrometres > 0) && (!bolts || mount.BoltMicrometres > 0))
            {
                rows.Add(Row(mount));
            }
        }

        return new IdentificationTable<FrontDerailleurMount>(
            [
                new("seat tube", "caliper outside, where the band would sit"),
                new("bolt spacing", "caliper between the middles of the holes"),
                new("bolt step", "straight edge across both holes: how far one stands back"),
            ],
            rows.ToImmutable(),
            m => m.FitKey).Identify(tube, boltSpacing, boltStep);
    }

    private static DimensionRow<FrontDerailleurMount> Row(FrontDerailleurMount mount)
    {
        decimal tube = mount.TubeMicrometres / 1_000m;
        decimal bolts = mount.BoltMicrometres / 1_000m;
        (decimal Least, decimal Most)? step = bolts == 0 ? null : mount == FrontDerailleurMount.LowDirect3 ? (Step, Step) : (0, InOnePlane);
        return new(mount, [tube == 0 ? null : (tube, tube), bolts == 0 ? null : (bolts, bolts), step], bolts == 0 ? "a plain round tube" : mount == FrontDerailleurMount.LowDirect3 ? "one hole 5 mm further out" : "both holes in one plane");
    }
}
