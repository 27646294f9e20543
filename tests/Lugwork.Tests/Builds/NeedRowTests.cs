namespace Lugwork.Tests.Builds;

/// <summary>The rows of a need: what is said comes first, what goes by other parts stands once a part, and nothing is lost.</summary>
public sealed class NeedRowTests
{
    [Fact]
    public void What_goes_by_another_part_stands_in_one_row()
    {
        Need fork = Build.From(Frame.Read("rear 12x142; head tube EC34/EC34")).Needs().Of(Slot.Fork)!;
        string headset = Assert.Single(fork.Rows, r => r.StartsWith("goes by the headset: ", StringComparison.Ordinal));
        Assert.Contains("kind of steerer", headset, StringComparison.Ordinal);
        Assert.Contains(fork.Rows, r => r.StartsWith("steerer 28.6", StringComparison.Ordinal));
        Assert.True(fork.Rows.IndexOf(headset) > fork.Rows.IndexOf(fork.Rows.Last(r => !r.StartsWith("goes by ", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_part_that_is_there_is_gone_by_no_more()
    {
        Build build = Build.From(Frame.Read("rear 12x142")).With(Rotor.Read("160; six-bolt"), Slot.RearRotor);
        Assert.DoesNotContain(build.Needs().Of(Slot.RearWheel)!.Rows, r => r.StartsWith("goes by the rear rotor", StringComparison.Ordinal));
        Assert.Contains(build.Without(Slot.RearRotor).Needs().Of(Slot.RearWheel)!.Rows, r => r.StartsWith("goes by the rear rotor", StringComparison.Ordinal));
    }

    /// <summary>What is to be measured first is told with how: such a line is never folded into another.</summary>
    [Fact]
    public void A_measurement_keeps_its_row()
    {
        Need post = Build.From(Frame.Read("seat tube unknown")).Needs().Of(Slot.Seatpost)!;
        Assert.Contains(post.Rows, r => r.Contains("measure the seat tube bore first (", StringComparison.Ordinal));
    }

    /// <summary>A top tube too near the rider asks for a trial whatever fork goes in, so that no fork is kept out by its length; one that the rider cannot clear is refused with every fork.</summary>
    [Theory]
    [InlineData(770, "fork length, axle to crown: none settles it; measure on the bicycle", false)]
    [InlineData(740, "fork length, axle to crown: no length is right", true)]
    public void A_length_that_settles_nothing_keeps_no_part_out(int inseam, string row, bool keepsOut)
    {
        Need fork = Build.From(Frame.Read("standover 760")).With(Rider.Read($"inseam {inseam}")).Needs().Of(Slot.Fork)!;
        Assert.Contains(row, fork.Rows);
        NeedLine line = fork.Lines.Single(l => l.Joint.Id == "standover-with-fork" && l.Field == "axleToCrown");
        Assert.Equal(keepsOut, line.KeepsAllOut);
        Assert.Equal(keepsOut ? Verdict.DoesNotFit : Verdict.NeedsMeasuring, line.Judge(Dimension.OfMillimetres(400).FitCode));
    }

    /// <summary>With no hub to go by, what some joint does not ask about is no answer: a rotor for Center Lock is not told as right for a wheel that may have six bolts.</summary>
    [Fact]
    public void What_a_joint_does_not_ask_about_is_not_told_as_right()
    {
        NeedsSheet needs = Build.From(Frame.Read("kind touring; rear 12x142; rear brake PM-160")).With(Fork.Read("front F100-12; brake PM-160")).Needs();
        foreach (Need need in new[] { Slot.FrontRotor, Slot.RearRotor, Slot.FrontWheel, Slot.RearWheel, Slot.FrontTyre, Slot.RearTyre, Slot.Cassette, Slot.Crankset }.Select(s => needs.Of(s)!))
        {
            foreach (NeedLine line in need.Lines.Where(l => l.OpenBecause is null && !l.IsIdle && l.Joint.Slots.Any(s => s != need.Slot && s != Slot.Frame && s != Slot.Fork)))
            {
                Assert.True(line.Least is not null || line.Most is not null || line.Codes.Any(c => line.Judge(c) is Verdict.NeedsPart or Verdict.DoesNotFit or Verdict.Unsafe), $"{need.Slot.Name}: {line}");
            }
        }

        Assert.DoesNotContain(needs.Of(Slot.FrontRotor)!.Rows, r => r.Contains("Center Lock", StringComparison.Ordinal));
        Assert.All(needs.Of(Slot.FrontRotor)!.Lines.Where(l => l.OpenBecause is not null), l => Assert.Empty(l.Accepted.Concat(l.WithBridge)));
    }

    /// <summary>A rotor past the limit of frame or fork is listed nowhere, and a tyre wider than the frame takes is in no run.</summary>
    [Fact]
    public void A_limit_cuts_the_list_of_sizes()
    {
        Build build = Build.From(Frame.Read("kind touring; rear 12x142; rear brake PM-160; largest rear rotor 180; largest rear tyre 42-622"))
            .With(Wheel.Read("hub R142-12; six-bolt; beadSeat 622; innerWidth 21; hold clincher; rimType TC"), Slot.RearWheel).With(Caliper.Read("PM"), Slot.RearCaliper);
        string[] rotor = [.. build.Needs().Of(Slot.RearRotor)!.Rows.Where(r => r.StartsWith("rotor size", StringComparison.Ordinal))];
        Assert.Contains("rotor size at most 180 mm", rotor);
        Assert.All(rotor, r => Assert.False(new[] { "200", "203", "220", "223" }.Any(s => r.Contains(s, StringComparison.Ordinal)), r));
        string[] tyre = [.. build.Needs().Of(Slot.RearTyre)!.Rows.Where(r => r.StartsWith("tyre width", StringComparison.Ordinal))];
        Assert.NotEmpty(tyre);
        Assert.All(tyre, r => Assert.DoesNotMatch("to (4[3-9]|5[0-9]|6[0-9])\\b", r));
    }

    /// <summary>A run ends before a size that is left out.</summary>
    [Fact]
    public void A_run_does_not_close_over_a_size_that_is_left_out()
    {
        JointInput width = JointTable.All.SelectMany(j => j.Inputs).First(i => i.Slot == Slot.RearTyre && i.Called == "tyre width");
        long[] all = [.. width.Domain.Order()];
        long gap = all[all.Length / 2];
        string told = new NeedList(width, all, inShort: false).Of([.. all.Where(c => c != gap)]);
        Assert.Contains($"to {width.Show(all[(all.Length / 2) - 1])}, {width.Show(all[(all.Length / 2) + 1])} to ", told, StringComparison.Ordinal);
    }

    /// <summary>What one joint keeps out another does not list, and each value that goes with all of them is still there.</summary>
    [Theory]
    [InlineData("01")]
    [InlineData("07")]
    [InlineData("12")]
    [InlineData("21")]
    public void A_value_that_is_kept_out_anywhere_is_told_nowhere(string number)
    {
        Build whole = WholeBuilds.Load(number);
        int kept = 0;
        foreach (Need need in whole.Needs())
        {
            foreach (IGrouping<(string, string), NeedLine> same in need.Lines.Where(l => l.IsListed).GroupBy(l => (l.Field, l.Input.Figure)))
            {
                HashSet<long> left = [.. same.SelectMany(l => l.Codes).Where(c => same.All(l => l.Judge(c) is not (Verdict.DoesNotFit or Verdict.Unsafe)))];
                foreach (NeedLine line in same.Where(l => l.Told is not null))
                {
                    Assert.True(left.IsSupersetOf(line.Told!), $"{need.Slot.Name}, {line}");
                    kept += line.Codes.Count(c => line.Takes(c) && !left.Contains(c));
                }

                Assert.All(same, l => Assert.Equal(left.Count == 0, l.HasRival));
            }
        }

        Assert.True(kept > 0, "nothing was left out");
    }

    [Theory]
    [InlineData("kind unknown")]
    [InlineData("kind touring; rear 12x142; seat tube 27.2; shell BSA 68")]
    [InlineData("kind hardtail; rear 12x148; head tube 44/56; rear brake PM-160; longest fork 540; most fork travel 140")]
    [InlineData("kind track; rear R120; rear brake none; hanger plain")]
    [InlineData("kind bmx; rear unknown; seat tube frame-specific")]
    public void Nothing_of_the_lines_is_lost(string frame)
    {
        foreach (Need need in Build.From(Frame.Read(frame)).Needs())
        {
            Assert.Equal(need.Rows.Length, need.Rows.Distinct().Count());
            foreach (NeedLine line in need.Lines)
            {
                Assert.True(
                    need.Rows.Contains(line.ToString()) || (line.IsCovered && line.IsIdle) || (line.IsCovered && need.Lines.Any(l => l != line && !l.IsCovered && l.Field == line.Field && need.Rows.Contains(l.ToString()))) || line.Follows.All(s => need.Rows.Any(r => r.StartsWith($"goes by the {s.Name}: ", StringComparison.Ordinal) && r.Contains(line.Input.Called, StringComparison.Ordinal))),
                    line.ToString());
            }
        }
    }
}
