using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>Which bolt circle measured holes can lie on. Made when something is first identified.</summary>
internal static class BoltCircleMeasured
{
    private static readonly ImmutableArray<MeasuredDimension> Dimensions =
    [
        new("adjacent holes", "caliper between the middles of neighbouring holes"),
        new("diameter", "twice from the middle of the ring to the middle of a hole"),
    ];

    private static readonly ImmutableArray<DimensionRow<BoltCircle>> Rows = Fill();

    public static Identification<BoltCircle> Identify(MeasuredLength? adjacentHoles, MeasuredLength? diameter, int? arms) =>
        CountedTable.Identify(Dimensions, Rows, "number of arms", c => c.Arms, arms, adjacentHoles, diameter);

    private static ImmutableArray<DimensionRow<BoltCircle>> Fill()
    {
        DimensionRow<BoltCircle>[] rows = new DimensionRow<BoltCircle>[BoltCircle.All.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            BoltCircle circle = BoltCircle.All[i];
            string holes = circle.IsEven ? "evenly spaced" : "holes not evenly spaced: measure two neighbouring pairs, they differ";
            rows[i] = new(circle, [circle.IsEven ? (circle.Chord, circle.Chord) : null, (circle.Millimetres, circle.Millimetres)], $"{circle.Arms} arms, {holes}");
        }

        return ImmutableArray.Create(rows);
    }
}
