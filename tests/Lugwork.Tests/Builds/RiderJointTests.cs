using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Builds;

/// <summary>Rider, luggage and use against what the makers allow: both sides of each limit, an unknown on each side, and a trap.</summary>
public sealed class RiderJointTests
{
    private const string Weighed = "82 kg; with luggage 95 kg; system 108 kg";

    [Theory]
    [InlineData(Weighed, "load limit 95 kg; system limit none", Verdict.Fits)]
    [InlineData(Weighed, "load limit 94.999 kg; system limit none", Verdict.Unsafe)]
    [InlineData(Weighed, "load limit none; system limit 108 kg", Verdict.Fits)]
    [InlineData(Weighed, "load limit none; system limit 107.999 kg", Verdict.Unsafe)]
    [InlineData(Weighed, "load limit 95 kg; system limit 108 kg", Verdict.Fits)]
    [InlineData(Weighed, "load limit 200 kg; system limit 107 kg", Verdict.Unsafe)]
    [InlineData(Weighed, "load limit 90 kg; system limit 200 kg", Verdict.Unsafe)]
    [InlineData(Weighed, "load limit none; system limit none", Verdict.NeedsMeasuring)]
    [InlineData(Weighed, "load limit unknown; system limit none", Verdict.NeedsMeasuring)]
    [InlineData(Weighed, "load limit 200 kg", Verdict.NeedsMeasuring)]
    [InlineData(Weighed, "load limit 90 kg", Verdict.Unsafe)]
    [InlineData(Weighed, "system limit 107 kg", Verdict.Unsafe)]
    [InlineData(Weighed, "load limit 94 kg | 95 kg; system limit none", Verdict.NeedsMeasuring)]
    [InlineData(Weighed, "load limit not covered; system limit none", Verdict.NeedsMeasuring)]
    [InlineData("82 kg; with luggage none; system none", "load limit 82 kg; system limit none", Verdict.Fits)]
    [InlineData("82 kg; with luggage none; system none", "load limit 81.999 kg; system limit none", Verdict.Unsafe)]
    [InlineData("82 kg; with luggage none; system none", "load limit 82 kg; system limit 200 kg", Verdict.NeedsMeasuring)]
    [InlineData("82 kg; with luggage none", "load limit 82 kg; system limit none", Verdict.Fits)]
    [InlineData("82 kg; with luggage none", "load limit none; system limit 100 kg", Verdict.NeedsMeasuring)]
    [InlineData("82 kg", "load limit 100 kg; system limit none", Verdict.NeedsMeasuring)]
    [InlineData("82 kg", "load limit 81 kg; system limit none", Verdict.Unsafe)]
    [InlineData("82 kg", "load limit none; system limit 81 kg", Verdict.Unsafe)]
    [InlineData("with luggage 95 kg", "load limit 95 kg; system limit none", Verdict.NeedsMeasuring)]
    [InlineData("with luggage 95 kg", "load limit 94 kg; system limit none", Verdict.Unsafe)]
    [InlineData("system 108 kg", "load limit none; system limit 107 kg", Verdict.Unsafe)]
    [InlineData("mass unknown", "load limit 500 kg; system limit 500 kg", Verdict.NeedsMeasuring)]
    [InlineData("mass none; with luggage none; system none", "load limit 120 kg; system limit none", Verdict.NeedsMeasuring)]
    public void Frame_fork_and_wheels_carry_rider_and_luggage_within_both_limits(string rider, string part, Verdict expected)
    {
        Part who = Rider.Read(rider);
        Assert.Equal(expected, Judge("rider-on-frame", part, (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("rider-on-fork", "steel", (Slot.Fork, Fork.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("rider-on-front-wheel", "steel", (Slot.FrontWheel, Wheel.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("rider-on-rear-wheel", "steel", (Slot.RearWheel, Wheel.Read(part)), (Slot.Rider, who)).Verdict);
    }

    [Theory]
    [InlineData(Weighed, "rider limit 82 kg; system limit none", Verdict.Fits)]
    [InlineData(Weighed, "rider limit 81.999 kg; system limit none", Verdict.Unsafe)]
    [InlineData(Weighed, "rider limit none; system limit 108 kg", Verdict.Fits)]
    [InlineData(Weighed, "rider limit none; system limit 107.999 kg", Verdict.Unsafe)]
    [InlineData(Weighed, "rider limit none; system limit none", Verdict.NeedsMeasuring)]
    [InlineData(Weighed, "rider limit unknown; system limit none", Verdict.NeedsMeasuring)]
    [InlineData(Weighed, "rider limit 82 kg", Verdict.NeedsMeasuring)]
    [InlineData("82 kg", "rider limit 82 kg; system limit none", Verdict.Fits)]
    [InlineData("82 kg", "rider limit 82 kg; system limit 81 kg", Verdict.Unsafe)]
    [InlineData("82 kg", "rider limit 82 kg; system limit 90 kg", Verdict.NeedsMeasuring)]
    [InlineData("mass unknown", "rider limit 120 kg; system limit none", Verdict.NeedsMeasuring)]
    [InlineData("system 108 kg", "rider limit none; system limit 107 kg", Verdict.Unsafe)]
    public void Stem_bar_and_post_hold_the_rider_whatever_the_bags_weigh(string rider, string part, Verdict expected)
    {
        Part who = Rider.Read(rider);
        Assert.Equal(expected, Judge("rider-on-stem", "steel", (Slot.Stem, Stem.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("rider-on-handlebar", "steel", (Slot.Handlebar, Handlebar.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("rider-on-seatpost", "steel", (Slot.Seatpost, Seatpost.Read(part)), (Slot.Rider, who)).Verdict);
    }

    [Theory]
    [InlineData("2", "3", Verdict.Fits)]
    [InlineData("3", "3", Verdict.Fits)]
    [InlineData("4", "3", Verdict.Unsafe)]
    [InlineData("5", "4", Verdict.Unsafe)]
    [InlineData("2", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("1", "unknown", Verdict.Fits)]
    [InlineData("unknown", "4", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "5", Verdict.Fits)]
    [InlineData("2", "none", Verdict.NeedsMeasuring)]
    [InlineData("none", "5", Verdict.NeedsMeasuring)]
    [InlineData("3", "2 | 3", Verdict.NeedsMeasuring)]
    [InlineData("4", "2 | 3", Verdict.Unsafe)]
    public void A_part_is_ridden_no_harder_than_it_is_made_for(string use, string made, Verdict expected)
    {
        Part who = Rider.Read("use " + use);
        string part = "use " + made;
        Assert.Equal(expected, Judge("use-of-frame", part, (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("use-of-fork", "steel", (Slot.Fork, Fork.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("use-of-front-wheel", "steel", (Slot.FrontWheel, Wheel.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("use-of-rear-wheel", "steel", (Slot.RearWheel, Wheel.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("use-of-stem", "steel", (Slot.Stem, Stem.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("use-of-handlebar", "steel", (Slot.Handlebar, Handlebar.Read(part)), (Slot.Rider, who)).Verdict);
        Assert.Equal(expected, Judge("use-of-seatpost", "steel", (Slot.Seatpost, Seatpost.Read(part)), (Slot.Rider, who)).Verdict);
    }

    [Fact]
    public void Too_much_load_carries_the_caution_and_says_both_figures()
    {
        Fit fit = Judge("rider-on-fork", "steel", (Slot.Fork, Fork.Read("load limit 90 kg; system limit none")), (Slot.Rider, Rider.Read(Weighed)));
        Assert.Contains(fit.Cautions, c => c.Id == "overload");
        Assert.Contains("95 kg", fit.ToString(), StringComparison.Ordinal);
        Assert.Contains("90 kg", fit.ToString(), StringComparison.Ordinal);
        Fit harder = Judge("use-of-stem", "steel", (Slot.Stem, Stem.Read("use 1")), (Slot.Rider, Rider.Read("use 3")));
        Assert.Contains(harder.Cautions, c => c.Id == "harder-use");
    }

    [Theory]
    [InlineData("82 kg; with luggage 81 kg")]
    [InlineData("82 kg; system 81 kg")]
    [InlineData("82 kg; with luggage 95 kg; system 94 kg")]
    [InlineData("with luggage 95 kg; system 94 kg")]
    public void A_whole_that_is_lighter_than_its_part_is_bad_input(string text) => Assert.False(Rider.TryRead(text, out _, out _));

    [Fact]
    public void Made_in_code_the_heaviest_figure_counts()
    {
        Rider turned = Rider.Read("82 kg") with { MassWithLuggage = Kilograms(70), SystemMass = Kilograms(60) };
        Assert.Equal(Verdict.Unsafe, Judge("rider-on-frame", "load limit 80 kg; system limit none", (Slot.Rider, turned)).Verdict);
        Assert.Equal(Verdict.Unsafe, Judge("rider-on-frame", "load limit none; system limit 80 kg", (Slot.Rider, turned)).Verdict);
    }

    [Fact]
    public void Nothing_of_it_is_judged_without_a_rider()
    {
        FitReport report = WholeBicycle().Without(Slot.Rider).Check();
        Assert.DoesNotContain(report.Findings, f => f.Joint!.Id.StartsWith("rider-", StringComparison.Ordinal) || f.Joint.Id.StartsWith("use-", StringComparison.Ordinal));
        Assert.True(report.IsComplete);
        Assert.DoesNotContain(report.Findings, f => f.Joint!.Slots.Contains(Slot.Rider));

        // Loads and uses, the hand for the front brake twice, and the side of the rear hose.
        Assert.Equal(21, WholeBicycle().Check().Findings.Length - report.Findings.Length);
    }

    [Fact]
    public void The_needs_sheet_says_what_a_part_must_carry()
    {
        Build build = Build.From(Frame.Read("steel")).With(Rider.Read(Weighed + "; use 3"));
        NeedLine[] fork = [.. build.Needs().Of(Slot.Fork)!.Lines.Where(l => l.Joint.Id == "rider-on-fork")];
        Assert.Equal(["fork's limit for rider and luggage at least 95 kg", "fork's limit for everything at least 108 kg"], fork.Select(l => l.ToString()));
        Assert.Equal(95_000, fork[0].LeastLoad!.Value.Grams);
        Assert.Null(fork[0].MostLoad);
        Assert.Null(fork[0].Least);
        Assert.Equal(Verdict.Fits, fork[0].Judge(95_000));
        Assert.Equal(Verdict.DoesNotFit, fork[0].Judge(94_999));
        Assert.Equal(Verdict.NeedsMeasuring, fork[0].Judge(500_001));
        Assert.Equal(["condition-3", "condition-4", "condition-5"], build.Needs().Of(Slot.Fork)!.Lines.Single(l => l.Joint.Id == "use-of-fork").Accepted);
        NeedLine post = build.Needs().Of(Slot.Seatpost)!.Lines.First(l => l.Joint.Id == "rider-on-seatpost");
        Assert.Equal("seatpost's limit for the rider at least 82 kg", post.ToString());
    }

    [Fact]
    public void A_build_file_takes_kilograms_as_numbers_and_keeps_them()
    {
        Build build = BuildFile.Read("""{ "parts": { "frame": { "loadLimit": 120, "systemLimit": "none", "use": 2 }, "rider": { "mass": 82.5, "massWithLuggage": "15 st", "systemMass": "unknown", "use": "condition 2" } } }""");
        Rider rider = (Rider)build[Slot.Rider]!;
        Assert.Equal(82_500, rider.Mass.Value.Grams);
        Assert.Equal(95_254, rider.MassWithLuggage.Value.Grams);
        Assert.Equal(Verdict.Fits, build.Check().Findings.Single(f => f.Joint!.Id == "rider-on-frame").Verdict);
        Assert.Equal(build[Slot.Rider], BuildFile.Read(BuildFile.Write(build))[Slot.Rider]);
    }

    private static Known<Load> Kilograms(decimal kilograms) => Known<Load>.Of(Load.OfKilograms(kilograms));
}
