using Lugwork.Tests.Builds;
using Lugwork.Workshop;

namespace Lugwork.Tests.Workshop;

/// <summary>Orders that work, orders that do not, and why one step waits for another.</summary>
public sealed class OrderTests
{
    [Fact]
    public void Of_free_steps_the_one_listed_first_comes_first() =>
        Assert.Equal(["b", "a", "d", "c"], WorkOrder.Of([Step("c", "d"), Step("b"), Step("a"), Step("d", "a")]).Select(s => s.Id));

    [Fact]
    public void A_circle_is_an_error_that_names_its_steps_and_no_other()
    {
        WorkOrderException e = Assert.Throws<WorkOrderException>(() => WorkOrder.Of([Step("free"), Step("a", "free", "c"), Step("b", "a"), Step("c", "b"), Step("after", "c")]));
        Assert.Equal(["a", "b", "c"], e.Steps.Order(StringComparer.Ordinal));
        Assert.Equal($"these steps wait for each other: {string.Join(", ", e.Steps)}", e.Message);
        Assert.Contains("a, b, c", $"{string.Join(", ", e.Steps)}, {string.Join(", ", e.Steps)}", StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_that_waits_for_itself_is_a_circle() =>
        Assert.Equal(["a"], Assert.Throws<WorkOrderException>(() => WorkOrder.Of([Step("a", "a")])).Steps);

    [Fact]
    public void A_prerequisite_that_is_not_there_is_an_error_that_names_both()
    {
        WorkOrderException e = Assert.Throws<WorkOrderException>(() => WorkOrder.Of([Step("a", "ghost")]));
        Assert.Equal("a waits for ghost, which is no step of this plan", e.Message);
        Assert.Equal(["a", "ghost"], e.Steps);
    }

    [Fact]
    public void An_id_that_stands_twice_is_an_error() =>
        Assert.Equal(["a"], Assert.Throws<WorkOrderException>(() => WorkOrder.Of([Step("a"), Step("a")])).Steps);

    [Fact]
    public void Why_the_steerer_is_cut_before_the_stem_is_fitted_is_told_in_a_chain()
    {
        WorkPlan plan = Bench.WholeBicycle().WorkPlan();
        WorkLink[] chain = [.. plan.WhyBefore("press-headset", "fit-stem")];
        Assert.Equal("press-headset", chain[0].EarlierId);
        Assert.Equal("fit-stem", chain[^1].LaterId);
        Assert.Equal(chain.Skip(1).Select(l => l.EarlierId), chain.SkipLast(1).Select(l => l.LaterId));
        Assert.All(chain, l => Assert.Contains(plan.Find(l.LaterId)!.After, a => a.StepId == l.EarlierId && a.Because == l.Because));
    }

    [Fact]
    public void Nothing_puts_the_pedals_before_the_saddle_and_an_unknown_step_is_refused()
    {
        WorkPlan plan = Bench.WholeBicycle().WorkPlan();
        Assert.Empty(plan.WhyBefore("fit-pedals", "fit-saddle"));
        Assert.Empty(plan.WhyBefore("fit-stem", "press-headset"));
        Assert.Contains("no step polish", Assert.Throws<ArgumentException>(() => plan.WhyBefore("polish", "fit-stem")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_longest_chain_is_a_chain_of_the_plan_and_no_other_takes_longer()
    {
        WorkPlan plan = Bench.WholeBicycle().WorkPlan();
        WorkLink[] chain = [.. plan.LongestChain];
        Assert.Equal("recheck", chain[^1].LaterId);
        Assert.Equal(chain.Skip(1).Select(l => l.EarlierId), chain.SkipLast(1).Select(l => l.LaterId));
        int Minutes(string id) => plan.Find(id)!.Time.Minutes();
        int Most(string id) => Minutes(id) + plan.Find(id)!.After.Select(a => Most(a.StepId)).DefaultIfEmpty().Max();
        Assert.Equal(Most("recheck"), Minutes(chain[0].EarlierId) + chain.Sum(l => Minutes(l.LaterId)));
    }

    [Fact]
    public void A_step_of_ones_own_is_put_where_it_belongs_and_cannot_turn_the_order_round()
    {
        WorkPlan plan = Bench.WholeBicycle().WorkPlan();
        WorkStep paint = Step("paint", "inspect-parts");
        WorkPlan painted = plan.With(paint, "press-headset");
        string[] ids = [.. painted.Steps.Select(s => s.Id)];
        Assert.InRange(Array.IndexOf(ids, "paint"), Array.IndexOf(ids, "inspect-parts") + 1, Array.IndexOf(ids, "press-headset") - 1);
        Assert.Contains("fit-stem", Assert.Throws<WorkOrderException>(() => plan.With(Step("late", "fit-stem"), "press-headset")).Steps);
        Assert.Equal(["late", "ghost"], Assert.Throws<WorkOrderException>(() => plan.With(Step("late"), "ghost")).Steps);
    }

    private static WorkStep Step(string id, params string[] after) =>
        new() { Id = id, Title = id, Stage = WorkStage.Preparation, Skill = WorkSkill.Practised, Time = WorkTime.HalfHour, Does = ["Do it."], After = [.. after.Select(a => new WorkPrerequisite(a, "it has to be"))] };
}
