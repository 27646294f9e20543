using System.Collections.Immutable;

namespace Lugwork.Workshop;

/// <summary>Chains of prerequisites in ordered steps.</summary>
internal static class WorkChains
{
    /// <summary>The shortest chain from one step to another; empty where nothing puts them in this order.</summary>
    public static ImmutableArray<WorkLink> Between(ImmutableArray<WorkStep> steps, string earlier, string later)
    {
        Dictionary<string, WorkStep> byId = steps.ToDictionary(s => s.Id);
        Dictionary<string, WorkLink?> onward = new() { [later] = null };
        Queue<string> open = new([later]);
        while (open.TryDequeue(out string? at))
        {
            foreach (WorkPrerequisite before in byId[at].After)
            {
                if (onward.TryAdd(before.StepId, new(before.StepId, at, before.Because)))
                {
                    open.Enqueue(before.StepId);
                }
            }
        }

        ImmutableArray<WorkLink>.Builder chain = ImmutableArray.CreateBuilder<WorkLink>();
        for (WorkLink? link = onward.GetValueOrDefault(earlier); link is not null; link = onward[link.LaterId])
        {
            chain.Add(link);
        }

        return chain.ToImmutable();
    }

    /// <summary>The chain of steps that takes longest: nothing shortens the work but these.</summary>
    public static ImmutableArray<WorkLink> Longest(ImmutableArray<WorkStep> steps)
    {
        Dictionary<string, (int Minutes, WorkLink? By)> reached = [];
        foreach (WorkStep step in steps)
        {
            (int most, WorkLink? by) = (0, null);
            foreach (WorkPrerequisite before in step.After)
            {
                if (reached[before.StepId].Minutes > most)
                {
                    (most, by) = (reached[before.StepId].Minutes, new(before.StepId, step.Id, before.Because));
                }
            }

            reached[step.Id] = (most + step.Time.Minutes(), by);
        }

        List<WorkLink> chain = [];
        string? last = steps.MaxBy(s => reached[s.Id].Minutes)?.Id;
        while (last is not null && reached[last].By is { } link)
        {
            chain.Add(link);
            last = link.EarlierId;
        }

        chain.Reverse();
        return [.. chain];
    }
}
