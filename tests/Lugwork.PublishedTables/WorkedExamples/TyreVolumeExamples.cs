using Lugwork.Tyres;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Air in a tyre.</summary>
public sealed class TyreVolumeExamples : WorkedExample
{
    private const string Topic = "tyre-volume";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_volume_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, MountedTyre.OnMeasuringRim(TyreSize.Of((int)row["section"], BeadSeat.OfFitCode((long)row["seat"]))).AirVolume.Liters);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 2);
}
