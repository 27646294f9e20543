using Lugwork.Tests.Builds;

namespace Lugwork.Benchmarks.Screening;

/// <summary>The values that occur in each field of the parts of a slot, and parts put together from them, field by field.</summary>
internal sealed class FieldPool
{
    private readonly IPartForm _form;
    private readonly Candidates[][] _values;

    public FieldPool(Slot slot, Random random)
    {
        _form = PartForms.Of(slot);
        HashSet<(KnownState, long)>[] seen = [.. _form.OwnFields.Select(_ => new HashSet<(KnownState, long)>())];
        Candidates[] read = new Candidates[seen.Length];
        for (int i = 0; i < 2_000; i++)
        {
            _form.ReadCodes(slot == Slot.Frame ? Bicycles.Frame(random) : Bicycles.Part(slot, random), read);
            for (int field = 0; field < read.Length; field++)
            {
                if (read[field].State is KnownState.Value or KnownState.None)
                {
                    seen[field].Add((read[field].State, read[field].Low));
                }
            }
        }

        _values = [.. seen.Select(s => s.Order().Select(v => new Candidates(v.Item1, v.Item2, v.Item2, null)).ToArray())];
    }

    /// <summary>A part that does not contradict itself; a field is unknown where nothing occurs in it, and else one time in so many, or never for 0.</summary>
    public Part Draw(Random random, int unknownOneIn)
    {
        Part part;
        do
        {
            part = Any(random, unknownOneIn);
        }
        while (_form.WrongOf(part) is not null);

        return part;
    }

    private Part Any(Random random, int unknownOneIn)
    {
        Candidates[] codes = new Candidates[_values.Length];
        for (int field = 0; field < codes.Length; field++)
        {
            if (_values[field].Length > 0 && (unknownOneIn == 0 || random.Next(unknownOneIn) > 0))
            {
                codes[field] = _values[field][random.Next(_values[field].Length)];
            }
        }

        return _form.OfCodes(codes);
    }
}
