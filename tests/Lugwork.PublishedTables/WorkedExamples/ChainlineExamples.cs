using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

public sealed class ChainlineExamples : WorkedExample
{
    private const string Topic = "chainline";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 17);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Chainlines_and_angles_come_out_as_printed(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        Agrees(row, row.Quantity switch
        {
            "sprocket offset from centre plane" => Stack(row).Sprockets[(int)row["sprocket"] - 1].Millimeters,
            "single ring between 6th and 7th" => Stack(row).Between((int)row["first"], (int)row["second"]).Millimeters,
            "chain angle" => Angle(row),
            "front chainline, double ring" => RingLine.OfTwoByTube(Of(row, "tube_mm"), Of(row, "face_mm"), Of(row, "pair_mm")).Millimeters,
            "front chainline, triple ring" => RingLine.OfOneByTube(Of(row, "tube_mm"), Of(row, "face_mm"), Of(row, "tooth_mm")).Millimeters,
            _ => throw new ArgumentException(row.Quantity),
        });
    }

    [Fact]
    public void The_printed_stack_is_that_of_ten_speeds()
    {
        RearChainline ten = SprocketSpacing.Parse("10", null).InInnerGap(Dimension.OfMillimetres(130m), Dimension.OfMillimetres(3m))!;
        Assert.All(RowsOf(Topic).Where(r => r.Has("sprocket")), row => Agrees(row, ten.Sprockets[(int)row["sprocket"] - 1].Millimeters));
    }

    [Fact]
    public void The_printed_bound_is_not_passed() => Assert.True(Angle(RowOf(Topic, "285")) < RowOf(Topic, "285").Published);

    private static RearChainline Stack(WorkedRow row) => RearChainline.OfStackInInnerGap(Exact(row, "old_mm"), Exact(row, "gap_mm"), Exact(row, "sprocket_mm"), Exact(row, "pitch_mm"), 10);

    private static double Angle(WorkedRow row)
    {
        RearChainline one = RearChainline.OfStackInInnerGap(Dimension.OfMillimetres(135m), Dimension.OfMillimetres(3m), Dimension.OfMillimetres(2m), Dimension.OfMillimetres(4m), 1);
        return ChainlineStudy.Of([one.Smallest - Of(row, "deviation_mm")], one, Of(row, "chainstay_mm")).Worst.Angle.Degrees;
    }

    private static Length Of(WorkedRow row, string name) => Length.FromMillimeters(row[name]);

    private static Dimension Exact(WorkedRow row, string name) => Dimension.OfMillimetres((decimal)row[name]);
}
