namespace Lugwork.Tests.Fits;

/// <summary>Rows of what can be known of a joint's inputs, aimed at the boundaries, and their completions by another way than the library's.</summary>
internal static class Rows
{
    private const long Millimetre = 1_000_000;

    public sealed record Row(Joint Joint, Candidates[] Inputs)
    {
        public Verdict Common()
        {
            CandidateRow row = default;
            for (int i = 0; i < Inputs.Length; i++)
            {
                row[i] = Inputs[i];
            }

            return Joint.Common(row);
        }

        public override string ToString() =>
            $"{Joint.Id}: {string.Join(", ", Inputs.Select(i => $"{i.State} {i.Low}..{i.High} [{string.Join(' ', i.Codes ?? [])}]"))}";
    }

    /// <summary>A settled row first, then up to two inputs loosened.</summary>
    public static Row Draw(Random random) => Draw(JointTable.All[random.Next(JointTable.All.Length)], random);

    public static Row Draw(Joint joint, Random random)
    {
        long[] exact = [.. joint.Inputs.Select(i => i.IsLength ? Length(random) : i.Domain[random.Next(i.Domain.Length)])];
        for (int i = 0; i < exact.Length; i++)
        {
            // Two random values are never nearly equal, so half of them are set beside another input's.
            int other = random.Next(exact.Length);
            JointInput input = joint.Inputs[i];
            bool related = other != i && (input.IsLength ? joint.Inputs[other].Family == input.Family : input.Domain.Contains(exact[other]));
            if (related && random.Next(2) == 0)
            {
                exact[i] = input.IsLength ? Math.Max(1, exact[other] + (random.Next(-1, 2) * (random.Next(2) == 0 ? 1 : 4 * Millimetre))) : exact[other];
            }
        }

        // Now and then a part that has none of it.
        Candidates[] inputs = [.. exact.Select(v => random.Next(12) == 0 ? None : Exact(v))];
        for (int turns = random.Next(3); turns > 0; turns--)
        {
            int at = random.Next(inputs.Length);
            inputs[at] = Loosen(inputs[at], joint.Inputs[at], random);
        }

        return new(joint, inputs);
    }

    public static Candidates None { get; } = new(KnownState.None, 0, 0, null);

    /// <summary>Less knowledge of the same input. That there is none of it is no value among others: it stays.</summary>
    public static Candidates Loosen(Candidates from, JointInput input, Random random)
    {
        if (from.State == KnownState.None)
        {
            return from;
        }

        if (random.Next(3) == 0 || from.State == KnownState.Unknown)
        {
            return default;
        }

        if (input.IsLength)
        {
            long error = random.Next(3) switch { 0 => 1, 1 => Millimetre / 10, _ => 3 * Millimetre };
            return new(KnownState.Measured, Math.Max(1, from.Low - error), from.High + error, null);
        }

        SortedSet<long> codes = [.. from.Codes ?? [from.Low], input.Domain[random.Next(input.Domain.Length)]];
        return codes.Count == 1 ? from : new(KnownState.OneOf, codes.Min, codes.Max, [.. codes]);
    }

    /// <summary>One verdict stands; a pair that is refused either way is refused, by the lesser claim; else it has to be measured.</summary>
    public static Verdict Expected(HashSet<Verdict> all) =>
        all.Count == 1 ? all.Single() : all.All(v => v is Verdict.DoesNotFit or Verdict.Unsafe) ? Verdict.DoesNotFit : Verdict.NeedsMeasuring;

    /// <summary>What may be left of a verdict when less is known.</summary>
    public static bool MayRemain(Verdict known, Verdict after) =>
        after == known || after == Verdict.NeedsMeasuring || (known == Verdict.Unsafe && after == Verdict.DoesNotFit);

    public static HashSet<Verdict> Completions(Row row)
    {
        long[][] values = [.. row.Inputs.Select((c, i) => Values(row, i, c))];
        HashSet<Verdict> verdicts = [];
        int[] at = new int[values.Length];
        long[] point = [.. values.Select(v => v[0])];
        Verdict last = Verdict.NotJudged;
        while (true)
        {
            Verdict verdict = row.Joint.Relation.Judge(point).Verdict;
            if (verdict != last)
            {
                verdicts.Add(last = verdict);
            }

            int turn = values.Length - 1;
            while (turn >= 0 && ++at[turn] == values[turn].Length)
            {
                at[turn] = 0;
                point[turn] = values[turn--][0];
            }

            if (turn >= 0)
            {
                point[turn] = values[turn][at[turn]];
            }

            if (turn < 0)
            {
                return verdicts;
            }
        }
    }

    private static long[] Values(Row row, int at, Candidates known)
    {
        JointInput input = row.Joint.Inputs[at];
        if (known.State == KnownState.OneOf)
        {
            return known.Codes!;
        }

        if (known.State is KnownState.Value or KnownState.None)
        {
            return [known.Low];
        }

        if (!input.IsLength)
        {
            IEnumerable<long> mates = row.Inputs.Where((c, i) => i != at && input.Family != 0 && row.Joint.Inputs[i].Family == input.Family && !row.Joint.Inputs[i].IsLength && c.State is not (KnownState.Unknown or KnownState.None))
                .SelectMany(c => c.Codes ?? [c.Low]);
            return [.. input.Domain.Concat(mates).Distinct()];
        }

        // A plain grid of half millimetres, coarser where two lengths are open, and every place where another figure could matter.
        bool twoOpen = row.Inputs.Where((c, i) => row.Joint.Inputs[i].IsLength && !c.IsSettled).Skip(1).Any();
        IEnumerable<long> grid = Enumerable.Range(1, twoOpen ? 100 : 500).Select(h => h * Millimetre * (twoOpen ? 5 : 1) / 2)
            .Concat(Enumerable.Range(600, 60).Select(h => h * Millimetre / 2)) // 24 pitches of a chain, new and worn.
            .Concat(Enumerable.Range(178, 8).Select(h => h * Millimetre / 2)); // Shells of 89.5 mm under cups for 92 mm.
        IEnumerable<long> near = row.Inputs.SelectMany(c => new[] { c.Low, c.High }.Concat(c.Codes ?? []))
            .SelectMany(v => new[] { v, v - (4 * Millimetre), v - Millimetre, v + Millimetre })
            .Concat(known.State == KnownState.Measured ? [known.Low, known.High] : [1, long.MaxValue / 8]);
        long low = known.State == KnownState.Measured ? known.Low : 1;
        long high = known.State == KnownState.Measured ? known.High : long.MaxValue / 4;
        return [.. grid.Concat(near).SelectMany(v => new[] { v - 1, v, v + 1 }).Where(v => v >= low && v <= high).Distinct()];
    }

    private static Candidates Exact(long code) => new(KnownState.Value, code, code, null);

    private static long Length(Random random) => random.Next(3) switch
    {
        0 => random.Next(26, 70) * Millimetre / 2,
        1 => random.Next(50, 250) * Millimetre,
        _ => new[] { 17, 19, 21, 23, 25, 28, 29, 30 }[random.Next(8)] * Millimetre,
    };
}
