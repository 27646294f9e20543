using System.Collections.Immutable;

namespace Lugwork.Workshop;

/// <summary>Steps that cannot be put in an order: one waits for itself, asks for a step that is not there, or stands twice.</summary>
public sealed class WorkOrderException : InvalidOperationException
{
    internal WorkOrderException(string message, ImmutableArray<string> steps)
        : base(message)
    {
        Steps = steps;
    }

    /// <summary>Ids of the steps that are to blame; of a circle each once, in its order.</summary>
    public ImmutableArray<string> Steps { get; }
}

/// <summary>Puts steps in an order in which every prerequisite comes first. Stable: of steps that are free, the one that was listed first.</summary>
internal static class WorkOrder
{
    /// <summary>The steps in order.</summary>
    /// <param name="steps">The steps as they are listed.</param>
    /// <exception cref="WorkOrderException">There is no order.</exception>
    public static ImmutableArray<WorkStep> Of(IReadOnlyList<WorkStep> steps)
    {
        Dictionary<string, int> places = [];
        for (int i = 0; i < steps.Count; i++)
        {
            if (!places.TryAdd(steps[i].Id, i))
            {
                throw new WorkOrderException($"two steps have the id {steps[i].Id}", [steps[i].Id]);
            }
        }

        List<int>[] later = [.. steps.Select(_ => new List<int>())];
        int[] waits = new int[steps.Count];
        for (int i = 0; i < steps.Count; i++)
        {
            foreach (string before in steps[i].After.Select(a => a.StepId).Distinct())
            {
                if (!places.TryGetValue(before, out int place))
                {
                    throw new WorkOrderException($"{steps[i].Id} waits for {before}, which is no step of this plan", [steps[i].Id, before]);
                }

                later[place].Add(i);
                waits[i]++;
            }
        }

        PriorityQueue<int, int> free = new();
        for (int i = 0; i < waits.Length; i++)
        {
            if (waits[i] == 0)
            {
                free.Enqueue(i, i);
            }
        }

        ImmutableArray<WorkStep>.Builder ordered = ImmutableArray.CreateBuilder<WorkStep>(steps.Count);
        while (free.TryDequeue(out int next, out _))
        {
            ordered.Add(steps[next]);
            foreach (int waiting in later[next])
            {
                if (--waits[waiting] == 0)
                {
                    free.Enqueue(waiting, waiting);
                }
            }
        }

        return ordered.Count == steps.Count ? ordered.MoveToImmutable() : throw Circle(steps, places, waits);
    }

    /// <summary>From any step that still waits, backwards over steps that wait too, until one comes again.</summary>
    private static WorkOrderException Circle(IReadOnlyList<WorkStep> steps, Dictionary<string, int> places, int[] waits)
    {
        List<string> walked = [];
        string at = steps[Array.FindIndex(waits, w => w > 0)].Id;
        while (!walked.Contains(at))
        {
            walked.Add(at);
            at = steps[places[at]].After.First(a => waits[places[a.StepId]] > 0).StepId;
        }

        string[] circle = [.. walked[walked.IndexOf(at)..]];
        Array.Reverse(circle);
        return new($"these steps wait for each other: {string.Join(", ", circle)}", [.. circle]);
    }
}
