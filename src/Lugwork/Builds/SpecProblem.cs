using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork;

/// <summary>One thing wrong with a text: where, why and what was expected.</summary>
public sealed record SpecProblem
{
    internal SpecProblem(string where, int position, string reason, string expected)
    {
        Where = where;
        Position = position;
        Reason = reason;
        Expected = expected;
    }

    /// <summary>A JSON path such as "$.parts.rearWheel.hub", or the key of a short form.</summary>
    public string Where { get; internal init; }

    /// <summary>Position in that text, from 0.</summary>
    public int Position { get; internal init; }

    /// <summary>What is wrong.</summary>
    public string Reason { get; internal init; }

    /// <summary>What was expected.</summary>
    public string Expected { get; internal init; }

    /// <summary>One line.</summary>
    public override string ToString() => $"{Where} (position {Position}): {Reason}; expected {Expected}";
}

/// <summary>Text that could not be read, with all problems at once; the message tells the first 50 of them.</summary>
public sealed class SpecException : FormatException
{
    /// <summary>So many problems stand in the message; a hostile file has a hundred thousand. Our own bound, no source.</summary>
    private const int Told = 50;

    internal SpecException(ImmutableArray<SpecProblem> problems)
        : base(problems.Length <= Told ? string.Join(Environment.NewLine, problems) : string.Join(Environment.NewLine, problems.Take(Told)) + string.Create(CultureInfo.InvariantCulture, $"{Environment.NewLine}and {problems.Length - Told} more"))
    {
        Problems = problems;
    }

    /// <summary>Every problem, in the order of the text.</summary>
    public ImmutableArray<SpecProblem> Problems { get; }
}
