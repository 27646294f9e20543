using System.Collections.Immutable;

namespace Lugwork;

/// <summary>One thing that measured dimensions can be.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
public sealed record Identified<T>
{
    internal Identified(T value, decimal deviationMillimetres, string tellsApart)
    {
        Value = value;
        DeviationMillimetres = deviationMillimetres;
        TellsApart = tellsApart;
    }

    /// <summary>What it can be.</summary>
    public T Value { get; internal init; }

    /// <summary>How far the readings lie outside its own dimensions, added up, millimetres; 0 where all lie inside.</summary>
    public decimal DeviationMillimetres { get; internal init; }

    /// <summary>What tells it from its neighbours, beside the dimensions; may be empty.</summary>
    public string TellsApart { get; internal init; }
}

/// <summary>What measured dimensions can be, the likeliest first, and what to measure next where it is more than one.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
public sealed class Identification<T>
{
    internal Identification(ImmutableArray<Identified<T>> candidates, string next)
    {
        Candidates = candidates;
        Next = next;
    }

    /// <summary>Everything that the readings allow within their error; none where nothing listed has such dimensions.</summary>
    public ImmutableArray<Identified<T>> Candidates { get; internal init; }

    /// <summary>The further measurement that parts the candidates best, with what each outcome would mean; empty where one candidate or none is left, or no dimension parts them.</summary>
    public string Next { get; internal init; }
}
