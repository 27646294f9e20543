using System.Collections.Immutable;

namespace Lugwork;

/// <summary>One thing wrong with a text: where, why and what was expected.</summary>
/// <param name="Where">A JSON path such as "$.parts.rearWheel.hub", or the key of a short form.</param>
/// <param name="Position">Position in that text, from 0.</param>
/// <param name="Reason">What is wrong.</param>
/// <param name="Expected">What was expected.</param>
public sealed record SpecProblem(string Where, int Position, string Reason, string Expected)
{
    /// <summary>One line.</summary>
    public override string ToString() => $"{Where} (position {Position}): {Reason}; expected {Expected}";
}

/// <summary>Text that could not be read, with all problems at once.</summary>
public sealed class SpecException : FormatException
{
    internal SpecException(ImmutableArray<SpecProblem> problems)
        : base(string.Join(Environment.NewLine, problems))
    {
        Problems = problems;
    }

    /// <summary>Every problem, in the order of the text.</summary>
    public ImmutableArray<SpecProblem> Problems { get; }
}
