using System.Collections.Immutable;

namespace Lugwork;

/// <summary>Why a relation judged as it did: a template whose {0}, {1} ... are the inputs of the joint.</summary>
/// <param name="Id">Stable id: "too-large".</param>
/// <param name="Template">Sentence with numbered places; [bridge] stands for what has to be bought.</param>
/// <param name="Caution">A warning that goes with it; may be null.</param>
internal sealed record Reason(string Id, string Template, Caution? Caution = null)
{
    /// <summary>What supports this reason in particular; empty where the joint's own sources do.</summary>
    public ImmutableArray<Source> Sources { get; init; } = [];

    /// <summary>What would mend it beside a bridge, for a person; may be empty.</summary>
    public string Mend { get; init; } = "";

    /// <summary>Where the parts fit, true if a person should read the sentence all the same, such as a rear rotor that is larger than the front one.</summary>
    public bool IsNote { get; init; }

    /// <summary>Numbers of the inputs that have to be looked at where the verdict is to measure; empty for all of them.</summary>
    internal ImmutableArray<int> Asks { get; init; } = [];

    /// <summary>Rows that would mend it and leave the verdict as it is: shop work that cannot be undone, or a part that takes the danger away.</summary>
    internal ImmutableArray<Bridge> Offers { get; init; } = [];
}

/// <summary>What a relation says of one set of settled values. The default is not judged.</summary>
internal readonly record struct Outcome(Verdict Verdict, Reason? Reason, Bridge? Bridge = null, Bridge? Second = null);
