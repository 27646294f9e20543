using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Workshop;

/// <summary>The last look over the bicycle: points of this build alone, filled in, and honest about where they come from.</summary>
public sealed class FinalInspectionTests
{
    private static readonly FinalPoint[] Points = [.. Bench.WholeBicycle().WorkPlan().Inspection];

    [Fact]
    public void Every_point_names_registered_sources_and_practice_is_marked()
    {
        Assert.Equal(Points.Length, Points.Select(p => p.Id).Distinct().Count());
        Assert.All(Points, p => Assert.NotEmpty(p.Sources));
        Assert.All(Points, p => Assert.Equal(p.Figures.Length, p.Figures.Select(f => f.Id).Distinct().Count()));
        Assert.All(Points.SelectMany(p => p.Sources), s => Assert.Contains(s, Sources.All));
        Assert.True(Points.Single(p => p.Id == "lights-and-bell").IsPractice);
        Assert.All(new[] { "reflectors", "bell-in-germany", "weight-share", "above-saddle", "brake-sides" }, id => Assert.False(Points.Single(p => p.Id == id).IsPractice));
        Assert.False(Points.Single(p => p.Id == "stem-gap").IsPractice);
        Assert.Contains("(common practice)", Bench.WholeBicycle().WorkPlan().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_values_of_this_build_are_filled_in()
    {
        FinalPoint post = Points.Single(p => p.Id == "post-mark");
        Assert.Equal([75.0, 80.0], new[] { "post-mark", "frame-least" }.Select(id => post.Figures.Single(f => f.Id == id).Value ?? 0));
        Fit gap = Bench.WholeBicycle().Check().Findings.Single(f => f.Joint!.Id == "gap-under-cap");
        Assert.Contains(gap.Sentence, Points.Single(p => p.Id == "stem-gap").Figures.Single(f => f.Id == "gap-under-cap").Words, StringComparison.Ordinal);
        Assert.Contains(Points.Single(p => p.Id == "load").Figures, f => f.Id == "rider-on-frame");
        Assert.Equal(740, Points.Single(p => p.Id == "bar-width").Figures.Single().Value);
        Assert.Equal(["thru-axle in closed ends", "thru-axle in closed ends"], Points.Single(p => p.Id == "wheels-hold").Figures.Select(f => f.Words));
        Assert.All(Points.Single(p => p.Id == "two-brakes").Figures, f => Assert.Contains(" and ", f.Words, StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_not_on_the_bicycle_is_not_asked()
    {
        string[] bare = [.. Build.From(Frame.Read("material steel")).WorkPlan().Inspection.Select(p => p.Id)];
        Assert.DoesNotContain("post-mark", bare);
        Assert.DoesNotContain("toe-clearance", bare);
        Assert.DoesNotContain("carbon", bare);
        Assert.Contains("two-brakes", bare);
        Assert.DoesNotContain("quill-mark", Points.Select(p => p.Id));
        Assert.Contains("quill-mark", Build.From(Frame.Read("material steel")).With(Stem.Read("quill-22.2")).WorkPlan().Inspection.Select(p => p.Id));
    }

    [Fact]
    public void What_is_lacking_stays_on_the_list_beside_what_is_known()
    {
        FinalPoint post = Build.From(Frame.Read("material steel")).With(Seatpost.Read("27.2")).WorkPlan().Inspection.Single(p => p.Id == "post-mark");
        Assert.True(post.Figures.Single(f => f.Id == "two-diameters").IsKnown);
        Assert.All(new[] { "post-mark", "frame-least", "post-insertion" }, id => Assert.False(post.Figures.Single(f => f.Id == id).IsKnown));
        FinalPoint brakes = Build.From(Frame.Read("material steel")).With(RimBrake.Read("type cantilever"), Slot.FrontRimBrake).WorkPlan().Inspection.Single(p => p.Id == "two-brakes");
        Assert.Equal([true, false], brakes.Figures.Select(f => f.IsKnown));
    }

    [Fact]
    public void A_point_of_which_nothing_is_known_says_what_it_lacks()
    {
        FinalPoint point = Build.From(Frame.Read("material steel")).With(Fork.Read("steerer kind threadless")).With(Stem.Read("28.6 clamp")).WorkPlan().Inspection.Single(p => p.Id == "stem-gap");
        Assert.False(Assert.Single(point.Figures).IsKnown);
    }
}
