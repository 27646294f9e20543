using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork;

/// <summary>What a sum says from one figure upwards, to where the next band begins.</summary>
/// <param name="From">The least sum of the band, included.</param>
/// <param name="Outcome">What it says.</param>
internal readonly record struct SumBand(long From, Outcome Outcome);

/// <summary>
/// A sum over the inputs that never falls with one input and never grows with another, held against bands. So the least and the greatest
/// sum of what is unknown lie at the ends of the inputs, and a verdict is found without going through completions.
/// </summary>
internal sealed class SumRelation : Relation, ITells
{
    /// <summary>What a length above it changes nothing any more: 100 km.</summary>
    private const long Far = 100_000_000L * Nanometres.PerMillimetre;

    /// <summary>The unit of a sum in microdegrees.</summary>
    public const string Degrees = "\u00B0";

    private readonly Func<ReadOnlySpan<long>, long> _sum;
    private readonly string _unit;
    private readonly int[] _directions;
    private readonly SumBand[] _bands;
    private readonly Outcome[] _without;
    private (int Input, SumRelation Sum)? _measured;

    /// <param name="kind">Kind in words.</param>
    /// <param name="unit">"mm" for a sum in nanometres, <see cref="Degrees"/> for one in microdegrees, else the unit of a plain count.</param>
    /// <param name="sum">The sum; 0 for an input that there is none of.</param>
    /// <param name="directions">+1 where more of the input never makes the sum less, -1 where it never makes it more.</param>
    /// <param name="bands">Lowest first; the first has no least.</param>
    public SumRelation(string kind, string unit, Func<ReadOnlySpan<long>, long> sum, ImmutableArray<int> directions, params ImmutableArray<SumBand> bands)
    {
        Kind = kind;
        _unit = unit;
        _sum = sum;
        _directions = [.. directions];
        _bands = [.. bands];
        _without = new Outcome[directions.Length];
    }

    public override string Kind { get; }

    public override ImmutableArray<Bridge> Bridges => [.. _bands.Select(b => b.Outcome.Bridge).OfType<Bridge>(), .. _measured?.Sum.Bridges ?? []];

    public override ImmutableArray<Source> RestsOn => [.. _bands.SelectMany(b => b.Outcome.Reason!.Sources).Concat(_measured?.Sum.RestsOn ?? []).Distinct()];

    /// <summary>The same, with another sum over the same inputs that judges wherever there is something of one of them: what was measured on the bicycle is asked in place of what is reckoned.</summary>
    public SumRelation Measured(int input, SumRelation sum)
    {
        _measured = (input, sum);
        return this;
    }

    /// <summary>The same, and what it says where there is none of an input; without it none counts as nothing.</summary>
    public SumRelation Without(int input, Verdict verdict, Reason reason)
    {
        _without[input] = new(verdict, reason);
        return this;
    }

    /// <summary>How far what was measured lies from what is reckoned of the same inputs; 0 where they meet, or where one of them is not known.</summary>
    public long Apart(ImmutableArray<JointInput> inputs, in CandidateRow row)
    {
        if (InPlace(row) is not { } measured)
        {
            return 0;
        }

        for (int i = 0; i < inputs.Length; i++)
        {
            // A length that is open leaves the sum open as far as it counts there: where it may be far off, nothing is apart from it.
            bool isOpen = row[i].State == KnownState.Unknown && !inputs[i].IsLength;
            if (isOpen || row[i].State.IsOutside() || (row[i].State == KnownState.None && _without[i].Reason is not null))
            {
                return 0;
            }
        }

        Span<long> low = stackalloc long[inputs.Length];
        Span<long> high = stackalloc long[inputs.Length];
        Ends(inputs, row, low, high);
        Turn(low, high);
        return Math.Max(0, Math.Max(measured.Sum(low) - Sum(high), Sum(low) - measured.Sum(high)));
    }

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        if (_measured is { } measured && values[measured.Input] != 0)
        {
            return measured.Sum.Judge(values);
        }

        for (int i = 0; i < values.Length; i++)
        {
            if (values[i] == 0 && _without[i].Reason is not null)
            {
                return _without[i];
            }
        }

        return _bands[BandOf(Sum(values))].Outcome;
    }

    /// <summary>The common verdict of all that the inputs can be. Nothing is allocated.</summary>
    public Verdict Common(ImmutableArray<JointInput> inputs, in CandidateRow row)
    {
        if (InPlace(row) is { } measured)
        {
            return measured.Common(inputs, row);
        }

        for (int i = 0; i < inputs.Length; i++)
        {
            if (row[i].State == KnownState.None && _without[i].Reason is not null)
            {
                return _without[i].Verdict;
            }
        }

        Span<long> low = stackalloc long[inputs.Length];
        Span<long> high = stackalloc long[inputs.Length];
        Ends(inputs, row, low, high);
        Verdict common = Verdict.NotJudged;
        CommonOf(row, low, high, 0, ref common);
        return common;
    }

    /// <summary>Each input that is open moves through its ends and the places where a band begins, with the others at their ends.</summary>
    public void Visit(ImmutableArray<JointInput> inputs, in CandidateRow row, Joint.Visitor visitor)
    {
        if (InPlace(row) is { } measured)
        {
            measured.Visit(inputs, row, visitor);
            return;
        }

        int count = inputs.Length;
        Span<long> low = stackalloc long[count];
        Span<long> high = stackalloc long[count];
        Span<long> values = stackalloc long[count];
        Ends(inputs, row, low, high);
        bool any = false;
        for (int moved = 0; moved < count; moved++)
        {
            if (low[moved] == high[moved])
            {
                continue;
            }

            any = true;
            for (int corner = 0; corner < 1 << count; corner++)
            {
                bool idle = false;
                for (int i = 0; i < count; i++)
                {
                    bool upper = (corner & (1 << i)) != 0;
                    idle |= upper && (i == moved || low[i] == high[i]);
                    values[i] = upper ? high[i] : low[i];
                }

                if (!idle && !Move(inputs[moved], row[moved], moved, values, low[moved], high[moved], visitor))
                {
                    return;
                }
            }
        }

        if (!any)
        {
            low.CopyTo(values);
            visitor(values, Judge(values));
        }
    }

    /// <summary>[sum] in a sentence becomes the figure, [least] its least where it has two ends, [over] the figure without its sign.</summary>
    public string Tell(string sentence, ImmutableArray<JointInput> inputs, in CandidateRow row)
    {
        if (InPlace(row) is { } measured)
        {
            return measured.Tell(sentence, inputs, row);
        }

        Span<long> low = stackalloc long[inputs.Length];
        Span<long> high = stackalloc long[inputs.Length];
        Ends(inputs, row, low, high);
        Turn(low, high);
        long least = Sum(low);
        long most = Sum(high);
        return sentence.Replace("[sum]", Range(least, most), StringComparison.Ordinal).Replace("[least]", Shown(least), StringComparison.Ordinal).Replace("[over]", least < 0 && most < 0 ? Range(-most, -least) : Range(least, most), StringComparison.Ordinal);
    }

    /// <summary>What was measured judges; of what nobody measured an input says none.</summary>
    private SumRelation? InPlace(in CandidateRow row) => _measured is { } measured && row[measured.Input].State != KnownState.None ? measured.Sum : null;

    /// <summary>An end that no figure sets is no end.</summary>
    private string Range(long least, long most) => Shown(least) == Shown(most) ? Shown(least)
        : most >= Far / 2 ? least <= -Far / 2 ? "any number of" : $"{Shown(least)} or more"
        : least <= -Far / 2 ? $"{Shown(most)} or less"
        : $"{Shown(least)} to {Shown(most)}";

    private string Shown(long sum) => _unit is "mm" or Degrees ? ((decimal)sum / Nanometres.PerMillimetre).ToString("0.##", CultureInfo.InvariantCulture) : sum.ToString(CultureInfo.InvariantCulture);

    private void CommonOf(in CandidateRow row, Span<long> low, Span<long> high, int from, ref Verdict common)
    {
        // With two bands the ends say all; with more, what lies between two of several values is no value.
        for (int i = _bands.Length > 2 ? from : low.Length; i < low.Length; i++)
        {
            if (row[i].State == KnownState.OneOf)
            {
                (long least, long most) = (low[i], high[i]);
                foreach (long code in row[i].Codes!)
                {
                    low[i] = high[i] = code;
                    CommonOf(row, low, high, i + 1, ref common);
                }

                (low[i], high[i]) = (least, most);
                return;
            }
        }

        Turn(low, high);
        int first = BandOf(Sum(low));
        int last = BandOf(Sum(high));
        Turn(low, high);
        for (int band = first; band <= last; band++)
        {
            Verdict verdict = _bands[band].Outcome.Verdict;
            common = common == Verdict.NotJudged ? verdict : Joint.Either(common, verdict);
        }
    }

    /// <summary>Makes the ends of the inputs the ends of the sum, or back.</summary>
    private void Turn(Span<long> low, Span<long> high)
    {
        for (int i = 0; i < low.Length; i++)
        {
            if (_directions[i] < 0)
            {
                (low[i], high[i]) = (high[i], low[i]);
            }
        }
    }

    private bool Move(JointInput input, in Candidates own, int moved, Span<long> values, long low, long high, Joint.Visitor visitor)
    {
        ReadOnlySpan<long> listed = own.State == KnownState.OneOf ? own.Codes : input.IsLength ? [] : input.Domain.AsSpan();
        foreach (long code in listed)
        {
            values[moved] = code;
            if (!visitor(values, Judge(values)))
            {
                return false;
            }
        }

        if (!listed.IsEmpty)
        {
            return true;
        }

        Span<long> at = stackalloc long[2 + (3 * _bands.Length)];
        int count = 0;
        at[count++] = low;
        at[count++] = high;
        foreach (SumBand band in _bands.AsSpan(1))
        {
            long cut = FirstAtOrBeyond(values, moved, low, high, band.From);
            for (long value = cut - 1; value <= cut + 1; value++)
            {
                if (value >= low && value <= high && !at[..count].Contains(value))
                {
                    at[count++] = value;
                }
            }
        }

        foreach (long value in at[..count])
        {
            values[moved] = value;
            if (!visitor(values, Judge(values)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The least value of one input with which the sum is on the far side of a figure; the greatest where none is.</summary>
    private long FirstAtOrBeyond(Span<long> values, int moved, long low, long high, long edge)
    {
        while (low < high)
        {
            long middle = low + ((high - low) / 2);
            values[moved] = middle;
            bool beyond = _directions[moved] > 0 ? Sum(values) >= edge : Sum(values) < edge;
            (low, high) = beyond ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private static void Ends(ImmutableArray<JointInput> inputs, in CandidateRow row, Span<long> low, Span<long> high)
    {
        for (int i = 0; i < inputs.Length; i++)
        {
            JointInput input = inputs[i];
            Candidates own = row[i];
            (low[i], high[i]) = own.State switch
            {
                KnownState.None => (0, 0),
                KnownState.Value => (own.Low, own.Low),
                KnownState.Measured or KnownState.OneOf => (own.Low, own.High),
                _ when input.IsLength => (1, long.MaxValue / 4),
                _ => (input.Domain[0], input.Domain[^1]),
            };
        }
    }

    private long Sum(ReadOnlySpan<long> values)
    {
        Span<long> near = stackalloc long[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            near[i] = Math.Min(values[i], Far);
        }

        return _sum(near);
    }

    private int BandOf(long sum)
    {
        int band = _bands.Length - 1;
        while (band > 0 && sum < _bands[band].From)
        {
            band--;
        }

        return band;
    }
}
