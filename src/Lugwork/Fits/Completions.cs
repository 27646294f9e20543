using System.Collections.Immutable;

namespace Lugwork;

/// <summary>The values that the inputs of a joint can have, as far as they can differ in the verdict.</summary>
internal static class Completions
{
    /// <summary>Room for the values of all inputs of one joint.</summary>
    public const int Most = 2_048;

    /// <summary>Writes the values of each input one after the other, and where each input's begin; gives how many combinations there are.</summary>
    public static long Lay(Joint joint, in CandidateRow row, Span<long> store, Span<int> start)
    {
        int used = 0;
        long combinations = 1;
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            start[i] = used;
            int count = Complete(joint, row, i, store[used..]);
            used += count;
            combinations *= count;
        }

        start[joint.Inputs.Length] = used;
        return combinations;
    }

    /// <summary>Writes the values that one input can have, as far as they can differ in the verdict.</summary>
    private static int Complete(Joint joint, in CandidateRow row, int index, Span<long> into)
    {
        Candidates own = row[index];
        ImmutableArray<JointInput> inputs = joint.Inputs;
        JointInput input = inputs[index];
        switch (own.State)
        {
            case KnownState.Value:
                into[0] = own.Low;
                return 1;
            case KnownState.None:
                into[0] = 0;
                return 1;
            case KnownState.OneOf:
                own.Codes.CopyTo(into);
                return own.Codes!.Length;
        }

        int count = 0;
        if (!input.IsLength)
        {
            input.Domain.CopyTo(into);
            count = input.Domain.Length;
        }

        // A length changes the verdict only where it meets another figure: its own ends, and just below, at and just above every other one.
        long low = own.State == KnownState.Measured ? own.Low : 1;
        long high = own.State == KnownState.Measured ? own.High : long.MaxValue / 4;
        if (input.IsLength)
        {
            into[count++] = low;
            into[count++] = high;
        }

        for (int i = 0; i < inputs.Length && input.Family != 0; i++)
        {
            if (i == index || inputs[i].Family != input.Family || (inputs[i].IsLength && !input.IsLength))
            {
                continue;
            }

            Candidates other = row[i];
            if (other.State == KnownState.OneOf)
            {
                foreach (long code in other.Codes!)
                {
                    count = Around(code, low, high, input.IsLength, into, count);
                }
            }
            else if (other.State is KnownState.Value or KnownState.Measured)
            {
                count = Around(other.Low, low, high, input.IsLength, into, count);
                count = Around(other.High, low, high, input.IsLength, into, count);
            }
        }

        if (input.IsLength && joint.Relation is ICutsLengths cuts)
        {
            foreach (long breakpoint in cuts.Cuts)
            {
                count = Around(breakpoint, low, high, true, into, count);
            }

            foreach (long gap in cuts.Gaps)
            {
                for (int i = 0; i < inputs.Length; i++)
                {
                    if (i != index && inputs[i].Family == input.Family && row[i].State is KnownState.Value or KnownState.Measured)
                    {
                        count = Around(row[i].Low - gap, low, high, true, into, count);
                        count = Around(row[i].High - gap, low, high, true, into, count);
                    }

                    foreach (long code in i != index && inputs[i].Family == input.Family ? row[i].Codes ?? [] : [])
                    {
                        count = Around(code - gap, low, high, true, into, count);
                    }
                }
            }
        }

        if (input.IsLength && joint.Relation is ICutsByOthers others)
        {
            foreach (long breakpoint in others.CutsFor(index, row, inputs))
            {
                count = Around(breakpoint, low, high, true, into, count);
            }
        }

        return count;
    }

    private static int Around(long code, long low, long high, bool isLength, Span<long> into, int count)
    {
        for (long value = isLength ? code - 1 : code; value <= (isLength ? code + 1 : code); value++)
        {
            if (value >= low && value <= high && count < into.Length && !into[..count].Contains(value))
            {
                into[count++] = value;
            }
        }

        return count;
    }
}

/// <summary>A relation that changes its mind at lengths that follow from the other inputs by arithmetic.</summary>
internal interface ICutsByOthers
{
    /// <summary>The lengths of one input at which the verdict changes, given what is known of the others and the inputs themselves.</summary>
    IEnumerable<long> CutsFor(int input, CandidateRow row, ImmutableArray<JointInput> inputs);
}

/// <summary>A relation that changes its mind at lengths that no input says.</summary>
internal interface ICutsLengths
{
    /// <summary>Fixed lengths.</summary>
    ImmutableArray<long> Cuts { get; }

    /// <summary>And wherever another length is larger by one of these.</summary>
    ImmutableArray<long> Gaps { get; }
}
