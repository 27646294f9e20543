namespace Lugwork.Tests.Builds;

/// <summary>The ten lines that a newcomer meets.</summary>
public sealed class TenLinesTests
{
    private static readonly Build Bike = Build.From(Frame.Read("rear 12x142; seat tube 27.2; shell BSA 68; head tube EC34/EC34; rear brake IS"))
        .With(Wheel.Read("rear 10x135, HG, six-bolt"), Slot.RearWheel)
        .With(Seatpost.Read("26.8 x 350"));

    [Fact]
    public void The_report_says_the_verdict_first_and_what_settles_the_worst_joint()
    {
        string[] lines = Bike.Check().ToString().Split(Environment.NewLine);

        Assert.StartsWith("Needs measuring: ", lines[0], StringComparison.Ordinal);
        Assert.Contains("hub ends", lines[1], StringComparison.Ordinal);
        Assert.Contains("12x142 thru-axle end caps", lines[2], StringComparison.Ordinal);
        Assert.Contains("fork", lines[3], StringComparison.Ordinal);
        Assert.StartsWith("Not looked at, so not judged: Seat binder", lines[4], StringComparison.Ordinal);
        Assert.Equal(6, lines.Length);
    }

    [Fact]
    public void The_shim_is_offered_with_its_wall()
    {
        Remedy shim = Assert.Single(Bike.Check().PartsToAdd);
        Assert.Contains("26.8 to 27.2 mm, wall 0.2 mm", shim.What, StringComparison.Ordinal);
    }

    [Fact]
    public void The_needs_sheet_has_a_line_for_every_slot_of_the_bicycle()
    {
        NeedsSheet needs = Bike.Needs();
        Assert.Equal(Slot.All.Where(s => !s.IsOptional && s != Slot.Frame && s != Slot.FrontRimBrake && s != Slot.RearRimBrake && s != Slot.Shock), needs.Select(n => n.Slot));
        Assert.Contains("27.2, with a shim or adapter 25, 25.4, 26, 26.8", needs.Of(Slot.Seatpost)!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Shell_and_head_tube_are_read_as_typed_values()
    {
        Assert.Equal("BSA-68", Bike.Frame.Shell.ToString());
        Assert.Equal("EC34", Bike.Frame.HeadTubeUpper.ToString());
        Assert.Equal("EC34", Bike.Frame.HeadTubeLower.ToString());
    }

    [Fact]
    public void A_wheel_without_a_slot_is_refused_as_ambiguous()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Bike.With(Wheel.Read("hub 12x142")));
        Assert.Contains("front wheel or rear wheel", refused.Message, StringComparison.Ordinal);
    }
}
