using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork;

/// <summary>What rules of thumb say together: a range to start from, never advice against pain.</summary>
/// <remarks>From the least to the most that any rule says, mm; each rule names its source. Where only one rule is printed for a leg so short or long, both ends are the same, and the text says so.</remarks>
public sealed class RuleOfThumb
{
    private readonly double _least;
    private readonly double _most;

    internal RuleOfThumb(string what, double least, double most, ImmutableArray<Source> sources)
    {
        What = what;
        _least = least;
        _most = most;
        Sources = sources;
    }

    /// <summary>What the range is of: "saddle height".</summary>
    public string What { get; }

    /// <summary>The smallest that one of the rules says.</summary>
    public Length Least => Length.FromMillimeters(_least);

    /// <summary>The largest that one of the rules says.</summary>
    public Length Most => Length.FromMillimeters(_most);

    /// <summary>What the rules rest on.</summary>
    public ImmutableArray<Source> Sources { get; }

    /// <summary>The caution that goes with every rule about a body.</summary>
    public static Caution Caution => Cautions.BodyRules;

    /// <summary>"saddle height 696 to 713 mm by rules of thumb"; where only one rule is printed for it "crank length about 191.8 mm by one rule of thumb, no other is printed for it".</summary>
    public override string ToString() => _least == _most
        ? FormattableString.Invariant($"{What} about {_least:0.#} mm by one rule of thumb, no other is printed for it")
        : FormattableString.Invariant($"{What} {_least:0.#} to {_most:0.#} mm by rules of thumb");
}
