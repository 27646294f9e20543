using Lugwork.Seating;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>Rules of thumb for the height of a saddle, as published: that they are computed as printed, not that they are right.</summary>
public sealed class SaddleHeightExamples : WorkedExample
{
    private const string Topic = "saddle-height";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_row_agrees(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, Computed(row));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 7);


    private static double Computed(WorkedRow row)
    {
        SaddleHeightRule rule = row.Quantity switch
        {
            "0.875 rule" => SaddleHeightRule.Inseam875,
            "0.883 rule" => SaddleHeightRule.Inseam883,
            "1.09 rule" => SaddleHeightRule.PedalToSaddle,
            "regression on a team's riders" => SaddleHeightRule.TeamInseam,
            "regression on height" => SaddleHeightRule.TeamBody,
            _ => throw new ArgumentException(row.Quantity),
        };
        Length says = rule.For(Length.FromCentimeters(rule.IsOfBody ? row["height_cm"] : row["inseam_cm"]));
        return row.Unit == "cm" ? says.Centimeters : says.Millimeters;
    }
}
