using Lugwork.Tyres;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Published circumferences; one is worked with 3.14 for pi, so diameters are compared times the pi of the print.</summary>
public sealed class CircumferenceExamples : WorkedExample
{
    private const string Topic = "circumference";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_circumference_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        MountedTyre tyre = MountedTyre.OnMeasuringRim(TyreSize.Of((int)row["section"], BeadSeat.OfFitCode((long)row["seat"])));
        Agrees(row, tyre.UnloadedCircumference(SectionHeight.EqualToWidth).Millimeters * row["pi"] / Math.PI);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 3);
}
