using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork;

/// <summary>What a bridge is.</summary>
public enum BridgeKind
{
    /// <summary>No part: the two are made to take each other.</summary>
    MadeForBoth = 0,

    /// <summary>End caps or axle sleeves of the hub.</summary>
    EndCaps,

    /// <summary>Spacers.</summary>
    Spacers,

    /// <summary>A shim.</summary>
    Shim,

    /// <summary>An adapter.</summary>
    Adapter,

    /// <summary>Work that belongs in a shop.</summary>
    ShopWork,
}

/// <summary>What a bridge moves, beside making the two mate.</summary>
public readonly record struct SideEffects
{
    internal SideEffects(int stackMicrometres, int chainlineMicrometres, int rotorMicrometres, int perSideMicrometres)
    {
        StackMicrometres = stackMicrometres;
        ChainlineMicrometres = chainlineMicrometres;
        RotorMicrometres = rotorMicrometres;
        PerSideMicrometres = perSideMicrometres;
    }

    /// <summary>Stack height added, micrometres.</summary>
    internal int StackMicrometres { get; }

    /// <summary>Chainline moved outward, micrometres.</summary>
    internal int ChainlineMicrometres { get; }

    /// <summary>Rotor moved outward relative to the hub, micrometres.</summary>
    internal int RotorMicrometres { get; }

    /// <summary>Width added at each hub end, micrometres; negative takes away.</summary>
    internal int PerSideMicrometres { get; }

    /// <summary>Stack height added.</summary>
    public Length Stack => Length.FromMicrometers(StackMicrometres);

    /// <summary>How far the chainline moves outward.</summary>
    public Length Chainline => Length.FromMicrometers(ChainlineMicrometres);

    /// <summary>How far the rotor moves outward relative to the hub.</summary>
    public Length Rotor => Length.FromMicrometers(RotorMicrometres);

    /// <summary>Width added at each hub end.</summary>
    public Length PerSide => Length.FromMicrometers(PerSideMicrometres);

    /// <summary>The side effects of two bridges in a chain.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    public static SideEffects operator +(SideEffects a, SideEffects b) => Add(a, b);

    /// <summary>The side effects of two bridges in a chain.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    public static SideEffects Add(SideEffects a, SideEffects b) => new(
        a.StackMicrometres + b.StackMicrometres,
        a.ChainlineMicrometres + b.ChainlineMicrometres,
        a.RotorMicrometres + b.RotorMicrometres,
        a.PerSideMicrometres + b.PerSideMicrometres);

    /// <summary>All four in millimetres, the same in every culture.</summary>
    // Said without quantities: the record's own text would bring their formatting into every native program.
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"stack {StackMicrometres / 1_000m:0.###}, chainline {ChainlineMicrometres / 1_000m:0.###}, rotor {RotorMicrometres / 1_000m:0.###}, each side {PerSideMicrometres / 1_000m:0.###} mm");
}

/// <summary>A bought part, or shop work, that lets two unlike interfaces mate, in one direction. Rows of ones that exist, never computed.</summary>
/// <remarks>Lists compare by being the same list: two that say the same are equal only where one was made from the other. Compare what is needed.</remarks>
public sealed record Bridge
{
    internal Bridge()
    {
    }

    /// <summary>Stable id: "hub-r135-qr-to-r142-12".</summary>
    public string Id { get; internal init; } = "";

    /// <summary>What kind of thing it is.</summary>
    public BridgeKind Kind { get; internal init; }

    /// <summary>The verdict with the bridge: fits, needs a part, or needs measuring where the source says to check. A row that a refused or unsafe pair offers never changes the verdict of the pair.</summary>
    public Verdict Result { get; internal init; }

    /// <summary>What to buy or have done, for a shopping list.</summary>
    public string What { get; internal init; } = "";

    /// <summary>What it moves.</summary>
    public SideEffects Effects { get; internal init; }

    /// <summary>A warning that goes with it; may be null.</summary>
    public Caution? Caution { get; internal init; }

    /// <summary>Where the row comes from.</summary>
    public ImmutableArray<Source> Sources { get; internal init; } = [];

    /// <summary>Code of what is to be changed (on the part's side).</summary>
    internal long From { get; init; }

    /// <summary>Code of what it becomes.</summary>
    internal long To { get; init; }

    /// <summary>It may be one of two in a chain.</summary>
    internal bool Chains { get; init; }

    /// <summary>Number of the input that must have <see cref="ConditionCode"/>; -1 for none.</summary>
    internal int ConditionInput { get; init; } = -1;

    internal long ConditionCode { get; init; }

    /// <summary>The verdict where the condition does not hold.</summary>
    internal Verdict Otherwise { get; init; } = Verdict.DoesNotFit;

    /// <summary>What to buy or have done.</summary>
    public override string ToString() => What;
}
