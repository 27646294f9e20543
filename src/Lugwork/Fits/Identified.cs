using System.Collections.Immutable;

namespace Lugwork;

/// <summary>One thing that measured dimensions can be.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
/// <param name="Value">What it can be.</param>
/// <param name="DeviationMillimetres">How far the readings lie outside its own dimensions, added up, millimetres; 0 where all lie inside.</param>
/// <param name="TellsApart">What tells it from its neighbours, beside the dimensions; may be empty.</param>
public sealed record Identified<T>(T Value, decimal DeviationMillimetres, string TellsApart);

/// <summary>What measured dimensions can be, the likeliest first, and what to measure next where it is more than one.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
/// <param name="Candidates">Everything that the readings allow within their error; none where nothing listed has such dimensions.</param>
/// <param name="Next">The further measurement that parts the candidates best, with what each outcome would mean; empty where one candidate or none is left, or no dimension parts them.</param>
public sealed record Identification<T>(ImmutableArray<Identified<T>> Candidates, string Next);
