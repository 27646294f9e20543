using FsCheck;
using FsCheck.Xunit;
using Lugwork.Geometry;
using Lugwork.Suspension;
using UnitsNet;

namespace Lugwork.Tests.Builds;

/// <summary>The head angle that a fork makes of a frame, against the limits of the frame's maker.</summary>
public sealed class HeadAngleTests
{
    private const string Chart = "fork of the design 500; head angle 67; wheelbase 1150";

    private static FitReport Check(string frame, string fork) => Build.From(Frame.Read(frame)).With(Fork.Read(fork)).Check();

    private static Fit? Of(FitReport report, string joint) => report.Findings.Where(f => f.Joint!.Id == joint).Select(f => (Fit?)f).SingleOrDefault();

    /// <summary>A fork that is 20 mm longer turns this frame by 0.91 degrees, one that is 20 mm shorter by 0.92. Nearer to the limit than 0.3 degrees it is asked; a fork as long as the chart's leaves the frame as its maker has it.</summary>
    [Theory]
    [InlineData("head-angle-not-too-slack", "slackest head angle 65.7", "520", Verdict.Fits)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 65.8", "520", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 66.3", "520", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 66.4", "520", Verdict.Unsafe)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 67", "500", Verdict.Fits)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 67", "500.01", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 67", "480", Verdict.Fits)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 67.5", "480", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 67.5", "540", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 67.000001", "500", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 66", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 65 | 66.5", "520", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-slack", "slackest head angle 65 | 65.7", "520", Verdict.Fits)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 68.3", "480", Verdict.Fits)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 68.2", "480", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 67.7", "480", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 67.6", "480", Verdict.Unsafe)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 67", "500", Verdict.Fits)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 66.999999", "500", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 67", "499.99", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 67", "520", Verdict.Fits)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 66.5", "520", Verdict.NeedsMeasuring)]
    [InlineData("head-angle-not-too-steep", "steepest head angle 68", "unknown", Verdict.NeedsMeasuring)]
    public void The_angle_stays_within_what_the_maker_allows(string joint, string limit, string fork, Verdict verdict)
    {
        Fit fit = Of(Check($"{Chart}; {limit}", $"axle to crown {fork}"), joint)!.Value;
        Assert.Equal(verdict, fit.Verdict);
        if (verdict != Verdict.NeedsMeasuring)
        {
            Assert.Equal(verdict == Verdict.Unsafe, fit.Cautions.Contains(Cautions.GeometryCare) && fit.Remedies.Length > 0);
        }
    }

    /// <summary>A lower half that is taller than usual turns the frame as a longer fork does; the chart's own is not known, so that it asks and refuses nothing. 12 mm above the usual make 0.55 degrees here.</summary>
    [Theory]
    [InlineData("66.5", "500", "8", "head-angle-not-too-slack", Verdict.Fits)]
    [InlineData("66.5", "500", "unknown", "head-angle-with-headset", Verdict.NeedsMeasuring)]
    [InlineData("66.5", "500", "unknown; lower EC44/40", "head-angle-with-headset", Verdict.NeedsMeasuring)]
    [InlineData("66.5", "500", "unknown; lowerCup EC44 | ZS44", "head-angle-with-headset", Verdict.NeedsMeasuring)]
    [InlineData("66.5", "500", "unknown; lower ZS56/40", "head-angle-not-too-slack", Verdict.Fits)]
    [InlineData("66.5", "500", "unknown; lower IS52/40", "head-angle-not-too-slack", Verdict.Fits)]
    [InlineData("66.5", "500", "not covered", "head-angle-with-headset", Verdict.NeedsMeasuring)]
    [InlineData("60", "500", "unknown", "head-angle-with-headset", Verdict.Fits)]
    [InlineData("66.5", "500", "none", "head-angle-not-too-slack", Verdict.Fits)]
    [InlineData("66.5", "500", "8.1", "head-angle-with-headset", Verdict.Fits)]
    [InlineData("66.5", "500", "20", "head-angle-with-headset", Verdict.NeedsMeasuring)]
    [InlineData("66.1", "500", "20", "head-angle-with-headset", Verdict.Fits)]
    [InlineData("66.5", "488", "20", "head-angle-with-headset", Verdict.Fits)]
    [InlineData("65.5", "520", "20", "head-angle-with-headset", Verdict.NeedsMeasuring)]
    [InlineData("65.2", "520", "20", "head-angle-with-headset", Verdict.Fits)]
    [InlineData("66.4", "520", "20", "head-angle-with-headset", Verdict.Unsafe)]
    [InlineData("67.5", "480", "20", "head-angle-with-headset", Verdict.NeedsMeasuring)]
    public void A_tall_lower_half_asks_near_the_slackest(string slackest, string fork, string stack, string joint, Verdict verdict)
    {
        FitReport report = Build.From(Frame.Read($"{Chart}; slackest head angle {slackest}")).With(Fork.Read($"axle to crown {fork}")).With(Headset.Read($"lower stack {stack}")).Check();
        Assert.Equal(verdict, Of(report, joint)!.Value.Verdict);
        Assert.Single(report.Findings, f => f.Joint!.Id.StartsWith("head-angle", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("head angle 67; wheelbase 1150")]
    [InlineData("fork of the design 500; wheelbase 1150")]
    [InlineData("fork of the design 500; head angle 67")]
    [InlineData("fork of the design 500; head angle none; wheelbase 1150")]
    public void A_chart_that_lacks_a_figure_is_asked_for(string chart)
    {
        // A longer fork makes no frame steeper, and a shorter one none slacker: there the wheelbase does not matter.
        Assert.Equal(Verdict.NeedsMeasuring, Of(Check($"{chart}; slackest head angle 66", "axle to crown 520"), "head-angle-not-too-slack")!.Value.Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, Of(Check($"{chart}; steepest head angle 68", "axle to crown 480"), "head-angle-not-too-steep")!.Value.Verdict);
        Assert.Equal(chart.Contains("500; head angle 67", StringComparison.Ordinal) ? Verdict.Fits : Verdict.NeedsMeasuring, Of(Check($"{chart}; steepest head angle 68", "axle to crown 520"), "head-angle-not-too-steep")!.Value.Verdict);
    }

    [Theory]
    [InlineData("")]
    [InlineData("slackest head angle none; steepest head angle none")]
    public void A_frame_without_a_printed_limit_asks_nothing(string limits)
    {
        FitReport report = Check($"{Chart}; {limits}", "axle to crown 560");
        Assert.DoesNotContain(report.Findings, f => f.Joint!.Id.StartsWith("head-angle", StringComparison.Ordinal));
        Assert.DoesNotContain(report.ToMeasure, m => m.What.Slot == Slot.Frame && m.What.Called.Contains("head angle", StringComparison.Ordinal));
    }

    [Fact]
    public void The_sheet_of_a_fork_says_how_long_it_may_be()
    {
        Build frame = Build.From(Frame.Read($"{Chart}; slackest head angle 66; steepest head angle 68"));
        NeedLine[] lines = [.. frame.Needs().Single(n => n.Slot == Slot.Fork).Lines.Where(l => l.Joint.Id.StartsWith("head-angle", StringComparison.Ordinal))];
        decimal most = lines.Single(l => l.Most is not null).Most!.Value.Millimetres;
        decimal least = lines.Single(l => l.Least is not null).Least!.Value.Millimetres;
        Assert.InRange(most, 515.3m, 515.4m);
        Assert.InRange(least, 484.7m, 484.9m);
        Assert.All(new[] { (most, true), (most + 0.000001m, false), (least, true), (least - 0.000001m, false) }, edge =>
            Assert.Equal(edge.Item2, Check($"{Chart}; slackest head angle 66; steepest head angle 68", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"axle to crown {edge.Item1}")).Findings.Where(f => f.Joint!.Id.StartsWith("head-angle", StringComparison.Ordinal)).All(f => f.Verdict == Verdict.Fits)));
    }

    /// <summary>The figure of the frame turns as the sum says: both wheels of one size, as the sum takes them.</summary>
    [Property(MaxTest = 300)]
    public void The_sum_agrees_with_the_figure_of_any_frame(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameChart chart = Lugwork.Tests.Geometry.Frames.Any(random);
        FrameGeometry before = (chart with { FrontRadius = chart.RearRadius }).ToGeometry();
        double change = (random.NextDouble() * 120) - 60;
        FrameGeometry after = before.WithForkLongerBy(Length.FromMillimeters(change));
        long turn = HeadAngleRelations.TurnOf((long)(change * 1_000_000), (long)(before.HeadAngle.Degrees * 1_000_000), (long)(before.Wheelbase.Millimeters * 1_000_000));
        Assert.Equal(before.HeadAngle.Degrees - after.HeadAngle.Degrees, turn / 1_000_000d, 0.000003);

        // And the verdict with it, a hair to either side of where the row begins to ask, and of where it ceases.
        long angle = (long)(before.HeadAngle.Degrees * 1_000_000);
        long asks = change > 0 ? -300_000 : 300_000;
        long after1 = angle - turn;
        foreach ((long limit, Verdict verdict) in new[] { (after1 + asks + Math.Sign(asks), Verdict.Fits), (after1 + asks - Math.Sign(asks), Verdict.NeedsMeasuring), (after1 - asks, Verdict.NeedsMeasuring), (after1 - asks - Math.Sign(asks), Verdict.Unsafe) })
        {
            bool chartIsPast = change > 0 ? limit > angle : limit < angle;
            long fork = 400_000_000 + (long)(change * 1_000_000);
            Verdict row = (change > 0 ? HeadAngleRelations.NotTooSlack : HeadAngleRelations.NotTooSteep).Judge([fork, limit, 400_000_000, angle, (long)(before.Wheelbase.Millimeters * 1_000_000)]).Verdict;
            Assert.Equal(chartIsPast ? Verdict.NeedsMeasuring : verdict, row);
            FrameLimits limits = change > 0 ? new() { SlackestHeadAngle = Angle.FromDegrees(limit / 1_000_000d) } : new() { SteepestHeadAngle = Angle.FromDegrees(limit / 1_000_000d) };
            Verdict figure = limits.Check(before, after).Single(c => c.Figures.Any(f => f.Name == "head angle") && c.Verdict != Verdict.NeedsMeasuring).Verdict;
            Assert.True(row == Verdict.NeedsMeasuring || row == figure, $"{row} where the figure says {figure}");
        }
    }
}
