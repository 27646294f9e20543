using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>How much room is asked for between a tyre and any part of frame, fork or mudguard. The frame maker's figure comes first. Closed set, identity equality.</summary>
/// <remarks>Room ≥ so many mm, by "EN 14781 clause 4.10.2 as quoted in a forum", "Operation manual, wheels check" and "16 CFR 1512.11 Requirements for wheels".</remarks>
public sealed class ClearanceRule
{
    private ClearanceRule(string name, double millimetres, Source source)
    {
        Name = name;
        Millimetres = millimetres;
        Source = source;
    }

    /// <summary>Racing and road bicycles: 4 mm.</summary>
    public static ClearanceRule Road { get; } = new("road bicycles", 4, Sources.RacingClearance);

    /// <summary>All others: 6 mm, by a maker's manual.</summary>
    public static ClearanceRule Others { get; } = new("all other bicycles", 6, Sources.WheelsManual);

    /// <summary>The least that a United States regulation allows at any position of the wheel: 1.6 mm. No room for dirt or run-out: by it alone nothing fits, more than that needs measuring.</summary>
    public static ClearanceRule UnitedStates { get; } = new("United States regulation", 1.6, Sources.WheelRegulation);

    /// <summary>Every rule, the widest first.</summary>
    public static ImmutableArray<ClearanceRule> All { get; } = [Others, Road, UnitedStates];

    /// <summary>"road bicycles".</summary>
    public string Name { get; }

    /// <summary>The least room.</summary>
    public Length Least => Length.FromMillimeters(Millimetres);

    /// <summary>What it rests on.</summary>
    public Source Source { get; }

    internal double Millimetres { get; }

    /// <summary>"road bicycles: 4 mm".</summary>
    public override string ToString() => FormattableString.Invariant($"{Name}: {Millimetres:0.#} mm");
}
