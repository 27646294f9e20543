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
                    need.Rows.Contains(line.ToString()) || line.Follows.All(s => need.Rows.Any(r => r.StartsWith($"goes by the {s.Name}: ", StringComparison.Ordinal) && r.Contains(line.Input.Called, StringComparison.Ordinal))),
                    line.ToString());
            }
        }
    }
}
