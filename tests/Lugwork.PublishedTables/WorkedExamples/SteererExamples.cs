using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Where a steerer is cut, as published.</summary>
public sealed class SteererExamples : WorkedExample
{
    private const string Topic = "steerer";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 1);


    private static double Computed(WorkedRow row)
    {
        SteererCut cut = SteererCut.Of(SteererLength.OfMillimetres((decimal)row["head tube"], (decimal)row["lower"], (decimal)row["upper"], (decimal)row["spacers"], (decimal)row["stem"]), Length.FromMillimeters(300));
        Assert.Equal(row["gap"], cut.GapUnderCap.Millimeters, 9);
        return cut.After.Millimeters;
    }
}
