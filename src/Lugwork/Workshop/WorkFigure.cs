using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork;

/// <summary>A figure of this bicycle that a step needs: computed by the sums of the library where their inputs are known, and said to be lacking where not. Immutable.</summary>
public sealed record WorkFigure
{
    /// <summary>Short id, unique within a step: "steerer-cut".</summary>
    public required string Id { get; init; }

    /// <summary>What it is: "where the steerer is cut, from the seat of the crown race".</summary>
    public required string Name { get; init; }

    /// <summary>The number, in <see cref="Unit"/>; null where it is not known, or is no number.</summary>
    public double? Value { get; init; }

    /// <summary>"mm", "pitches"; empty for a plain number or words.</summary>
    public string Unit { get; init; } = "";

    /// <summary>How far the number may be out to either side, in <see cref="Unit"/>, by what was measured; 0 where all is stated.</summary>
    public double Doubt { get; init; }

    /// <summary>The figure in words, where it is no number; empty otherwise.</summary>
    public string Words { get; init; } = "";

    /// <summary>What has to be known first; empty where the figure is known.</summary>
    public ImmutableArray<string> Lacking { get; init; } = [];

    /// <summary>What it rests on; empty where the figure is the maker's own.</summary>
    public ImmutableArray<Source> Sources { get; init; } = [];

    /// <summary>There is a figure.</summary>
    public bool IsKnown => Lacking.IsEmpty;

    /// <summary>The figure as a length; null where it is none, or not known.</summary>
    public Length? Length => Unit == "mm" && Value is { } millimetres ? UnitsNet.Length.FromMillimeters(millimetres) : null;

    /// <summary>"where the steerer is cut: 199.9 mm", or "... : lacking, it takes the head tube length".</summary>
    public override string ToString() => $"{Name}: {Said}";

    /// <summary>The figure, or what it lacks.</summary>
    internal string Said =>
        !IsKnown ? $"lacking; it takes {string.Join(", ", Lacking)}"
        : Value is not { } number ? Words
        : string.Create(CultureInfo.InvariantCulture, $"{number:0.##} {Unit}").TrimEnd() + (Doubt > 0 ? string.Create(CultureInfo.InvariantCulture, $" (\u00B1 {Doubt:0.##} by what was measured)") : "") + (Words.Length > 0 ? $" ({Words})" : "");

    internal static WorkFigure Of(string id, string name, double value, string unit, params ImmutableArray<Source> sources) => new() { Id = id, Name = name, Value = value, Unit = unit, Sources = sources };

    internal static WorkFigure Told(string id, string name, string words, params ImmutableArray<Source> sources) => new() { Id = id, Name = name, Words = words, Sources = sources };

    internal static WorkFigure Lacks(string id, string name, params ImmutableArray<string> lacking) => new() { Id = id, Name = name, Lacking = lacking };
}
