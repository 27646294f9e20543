using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Rules of thumb for the length of a crank, as published: that they are computed as printed, not that they are right.</summary>
public sealed class CrankLengthExamples : WorkedExample
{
    private const string Topic = "crank-length";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 6);


    private static double Computed(WorkedRow row) =>
        (row.Quantity.StartsWith("5.48", StringComparison.Ordinal) ? CrankLengthRule.Proportion : CrankLengthRule.Steps).For(Length.FromInches(row["inseam_in"])).Millimeters;
}
