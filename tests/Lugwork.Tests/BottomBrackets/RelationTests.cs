using Lugwork.BottomBrackets;

namespace Lugwork.Tests.BottomBrackets;

/// <summary>Shell, width, spindle and pedal relations: both sides of each boundary, none on a side, and the traps.</summary>
public sealed class RelationTests
{
    [Theory]
    [InlineData("PF30", "BB30", Verdict.NeedsPart, "46-to-42")]
    [InlineData("BB30", "PF30", Verdict.DoesNotFit, "")]
    [InlineData("American", "BSA", Verdict.NeedsPart, "51.3")]
    [InlineData("BSA", "American", Verdict.DoesNotFit, "")]
    [InlineData("American", "Mid", Verdict.NeedsPart, "American-to-Mid")]
    [InlineData("Mid", "American", Verdict.DoesNotFit, "")]
    [InlineData("American", "Spanish", Verdict.NeedsPart, "American-to-Spanish")]
    [InlineData("Spanish", "American", Verdict.DoesNotFit, "")]
    [InlineData("T47", "BSA", Verdict.NeedsMeasuring, "T47-to-BSA")]
    [InlineData("BSA", "T47", Verdict.DoesNotFit, "")]
    [InlineData("OSBB", "OSBB", Verdict.NeedsMeasuring, "")]
    [InlineData("Thompson", "Thompson", Verdict.NeedsMeasuring, "")]
    [InlineData("BBright-press", "PF30", Verdict.DoesNotFit, "")]
    [InlineData("T47", "T47A", Verdict.DoesNotFit, "")]
    public void A_bridge_goes_in_its_own_direction_only(string shell, string unit, Verdict expected, string bridge)
    {
        Outcome outcome = BottomBracketRelations.InShell.Judge([ShellFamily.Parse(shell, null).FitCode, ShellFamily.Parse(unit, null).FitCode]);
        Assert.Equal(expected, outcome.Verdict);
        Assert.Contains(bridge, outcome.Bridge?.What ?? "", StringComparison.Ordinal);
        Assert.Equal(bridge.Length > 0, outcome.Bridge is not null);
    }

    [Theory]
    [InlineData("PF30", "T47", "tap-46-to-t47", "leave it to a shop")]
    [InlineData("Italian", "BSA", "italian-shell", "thread inserts")]
    [InlineData("Italian", "BB30", "italian-shell", "threadless expanding")]
    [InlineData("French", "BSA", "other-thread", "threadless expanding")]
    [InlineData("French", "Swiss", "other-thread", "threadless expanding")]
    [InlineData("26tpi", "BSA", "26-against-24-tpi", "new thread")]
    [InlineData("BSA", "26tpi", "26-against-24-tpi", "shop")]
    [InlineData("BSA", "T47", "shell-far-too-small", "own shell")]
    [InlineData("T47", "Italian", "bore-too-large", "own shell")]
    [InlineData("BB30", "BB30A", "other-centre", "own shell")]
    [InlineData("Mid", "PF41", "bore-too-large", "own shell")]
    [InlineData("PF41", "Mid", "bore-too-small", "own shell")]
    [InlineData("Spanish", "BB90", "other-shell", "own shell")]
    public void A_refused_unit_is_told_why_and_what_would_mend_it(string shell, string unit, string reason, string mend)
    {
        Outcome outcome = BottomBracketRelations.InShell.Judge([ShellFamily.Parse(shell, null).FitCode, ShellFamily.Parse(unit, null).FitCode]);
        Assert.Equal((Verdict.DoesNotFit, reason), (outcome.Verdict, outcome.Reason!.Id));
        Assert.Contains(mend, string.Join("; ", outcome.Reason.Offers.Select(b => b.What).Prepend(outcome.Reason.Mend)), StringComparison.Ordinal);
        Assert.NotEmpty(outcome.Reason.Sources);
    }

    [Theory]
    [InlineData(68.0, 68.0, 68.0, Verdict.Fits)]
    [InlineData(73.0, 68.0, 73.0, Verdict.Fits)]
    [InlineData(67.0, 68.0, 73.0, Verdict.NeedsMeasuring)]
    [InlineData(66.999999, 68.0, 73.0, Verdict.DoesNotFit)]
    [InlineData(73.000001, 68.0, 73.0, Verdict.NeedsMeasuring)]
    [InlineData(74.0, 68.0, 73.0, Verdict.NeedsMeasuring)]
    [InlineData(74.000001, 68.0, 73.0, Verdict.DoesNotFit)]
    [InlineData(85.5, 86.5, 86.5, Verdict.NeedsMeasuring)]
    [InlineData(85.5, 68.0, 73.0, Verdict.DoesNotFit)]
    [InlineData(68.0, 73.0, 68.0, Verdict.DoesNotFit)]
    [InlineData(0.0, 68.0, 73.0, Verdict.DoesNotFit)]
    [InlineData(0.0, 0.0, 0.0, Verdict.DoesNotFit)]
    [InlineData(68.0, 0.0, 0.0, Verdict.NeedsMeasuring)]
    [InlineData(60.0, 0.0, 68.0, Verdict.NeedsMeasuring)]
    [InlineData(68.0, 0.0, 68.0, Verdict.Fits)]
    [InlineData(70.0, 0.0, 68.0, Verdict.DoesNotFit)]
    [InlineData(90.0, 68.0, 0.0, Verdict.NeedsMeasuring)]
    [InlineData(68.0, 68.0, 0.0, Verdict.Fits)]
    [InlineData(60.0, 68.0, 0.0, Verdict.DoesNotFit)]
    public void A_width_is_judged_to_the_nanometre_at_its_limits(double shell, double least, double most, Verdict expected)
    {
        Outcome outcome = BottomBracketRelations.Width.Judge([Exact(shell), Exact(least), Exact(most)]);
        Assert.Equal(expected, outcome.Verdict);
        Assert.Equal(outcome.Reason!.Template.Contains("[bridge]", StringComparison.Ordinal), outcome.Bridge is not null);
    }

    [Theory]
    [InlineData("30", "24", Verdict.NeedsMeasuring, "check")]
    [InlineData("24", "30", Verdict.DoesNotFit, "spindle-too-large")]
    [InlineData("28.99", "24", Verdict.NeedsMeasuring, "check")]
    [InlineData("30", "28.99", Verdict.DoesNotFit, "28.99-in-30")]
    [InlineData("28.99", "30", Verdict.DoesNotFit, "spindle-too-large")]
    [InlineData("24", "24/22", Verdict.DoesNotFit, "step-loose")]
    [InlineData("24/22", "24", Verdict.DoesNotFit, "spindle-too-large")]
    [InlineData("30", "30/28", Verdict.DoesNotFit, "spindle-too-small")]
    [InlineData("30/28", "28.99", Verdict.DoesNotFit, "spindle-too-large")]
    [InlineData("square-JIS", "square-ISO", Verdict.NeedsMeasuring, "check")]
    [InlineData("square-ISO", "square-JIS", Verdict.NeedsMeasuring, "check")]
    [InlineData("8-spline-short", "8-spline-long", Verdict.DoesNotFit, "other-splines")]
    [InlineData("8-spline-long", "8-spline-short", Verdict.DoesNotFit, "other-splines")]
    [InlineData("10-spline", "8-spline-long", Verdict.DoesNotFit, "other-splines")]
    [InlineData("square-JIS", "24", Verdict.DoesNotFit, "spindle-of-another-kind")]
    [InlineData("30", "25", Verdict.DoesNotFit, "spindle-of-another-kind")]
    [InlineData("24", "BMX-24", Verdict.NeedsMeasuring, "check")]
    [InlineData("BMX-22", "BMX-19", Verdict.DoesNotFit, "spindle-too-small")]
    public void A_spindle_goes_in_its_own_bottom_bracket(string seat, string crank, Verdict expected, string reason)
    {
        Outcome outcome = BottomBracketRelations.SpindleIn.Judge([SpindleSeat.Parse(seat, null).FitCode, SpindleSeat.Parse(crank, null).FitCode]);
        Assert.Equal((expected, reason), (outcome.Verdict, outcome.Reason!.Id));
    }

    [Theory]
    [InlineData("9/16", "9/16", Verdict.Fits, "")]
    [InlineData("French", "9/16", Verdict.Unsafe, "tapping the crank to 9/16")]
    [InlineData("9/16", "French", Verdict.DoesNotFit, "own thread")]
    [InlineData("1/2", "9/16", Verdict.DoesNotFit, "own thread")]
    [InlineData("9/16", "1/2", Verdict.DoesNotFit, "own thread")]
    public void A_pedal_goes_in_a_crank_of_its_own_thread_with_a_caution(string crank, string pedal, Verdict expected, string mend)
    {
        Outcome outcome = BottomBracketRelations.Pedals.Judge([PedalThread.Parse(crank, null).FitCode, PedalThread.Parse(pedal, null).FitCode]);
        Assert.Equal(expected, outcome.Verdict);
        Assert.Contains(mend, string.Join("; ", outcome.Reason!.Offers.Select(b => b.What).Prepend(outcome.Reason.Mend)), StringComparison.Ordinal);
        Assert.Equal(Cautions.PedalThreads, outcome.Reason.Caution);
    }

    [Theory]
    [InlineData("BSA-73", "24-road", "spindle-too-short")]
    [InlineData("BSA-83", "24-MTB", "spindle-too-short")]
    [InlineData("BSA-68", "30-short", "spindle-too-short")]
    [InlineData("T47-68", "30-short", "spindle-too-short")]
    [InlineData("PF41-92", "24-road", "spindle-too-short")]
    [InlineData("PF41-89.5", "24-road", "ask-chart")]
    [InlineData("BSA-73", "30-long", "ask-chart")]
    [InlineData("BSA-73", "28.99", "ask-chart")]
    [InlineData("BB90-95", "30-long", "no-radial-room")]
    [InlineData("Spanish-68", "28.99", "no-radial-room")]
    [InlineData("pressed-30-68", "24-road", "no-radial-room")]
    [InlineData("OSBB-61", "30-short", "measure-shell")]
    [InlineData("Thompson-68", "cottered", "measure-shell")]
    [InlineData("PF30-68", "one-piece", "one-piece-shell-only")]
    [InlineData("small-one-piece-65", "one-piece", "ask-chart")]
    [InlineData("T47-92", "28.99", "ask-chart")]
    [InlineData("T47-68", "28.99", "ask-chart")]
    [InlineData("T47-68", "30-long", "ask-chart")]
    [InlineData("T47-85.5", "28.99", "ask-chart")]
    [InlineData("T47-85.5", "30-long", "ask-chart")]
    [InlineData("T47-86.5", "28.99", "ask-chart")]
    [InlineData("T47-86.5", "30-long", "ask-chart")]
    public void What_no_row_lists_is_refused_by_room_length_or_family_or_left_open(string shell, string spindle, string reason)
    {
        Outcome outcome = BottomBracketRelations.Across.Judge([Shell.Parse(shell, null).FitCode, Spindle.Parse(spindle, null).FitCode]);
        Assert.Equal((reason, reason is "ask-chart" or "measure-shell" ? Verdict.NeedsMeasuring : Verdict.DoesNotFit), (outcome.Reason!.Id, outcome.Verdict));
    }

    private static long Exact(double millimetres) => Nanometres.OfMillimetres((decimal)millimetres).Value;
}
