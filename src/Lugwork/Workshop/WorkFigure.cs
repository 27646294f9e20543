using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Workshop;

/// <summary>A figure of this bicycle that a step needs: computed by the sums of the library where their inputs are known, and said to be lacking where not. Immutable.</summary>
/// <remarks>Lists compare by being the same list: two that say the same are equal only where one was made from the other. Compare what is needed.</remarks>
public sealed record WorkFigure
{
    internal const string NewtonMetres = "N m";

    /// <summary>Short id, unique within a step: "steerer-cut".</summary>
    public required string Id { get; init; }

    /// <summary>What it is: "where the steerer is cut, from the seat of the crown race".</summary>
    public required string Name { get; init; }

    /// <summary>The number, in <see cref="Unit"/>; null where it is not known, or is no number.</summary>
    public double? Value { get; init; }

    /// <summary>"mm", "pitches", "N m" for a torque that only its maker names; empty for a plain number or words. Stated for a figure that is lacking too.</summary>
    public string Unit { get; init; } = "";

    /// <summary>How far the number may be out to either side, in <see cref="Unit"/>, by what was measured; 0 where all is stated.</summary>
    public double Doubt { get; init; }

    /// <summary>The figure in words, where it is no number; empty otherwise.</summary>
    public string Words { get; init; } = "";

    /// <summary>What has to be known first; empty where the figure is known.</summary>
    public ImmutableArray<string> Lacking { get; init; } = [];

    /// <summary>What it rests on; empty where the figure is the maker's own.</summary>
    public ImmutableArray<Source> Sources { get; init; } = [];

    /// <summary>Where the figure belongs in a build, once it was measured; null where it has no field there.</summary>
    internal FigurePlace? Place { get; init; }

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

    /// <summary>The same, with the field of a part into which what is measured goes.</summary>
    internal WorkFigure Into(Slot slot, string field, bool isCut = false, bool mayBeNone = false) => this with { Place = new(slot, field, isCut, mayBeNone) };

    /// <summary>The same, where the step only marks it: it stays in the record, and the step that cuts brings it into the build.</summary>
    internal WorkFigure AsMark() => this with { Place = Place is { } place ? place with { IsMark = true, IsCut = false } : null };

    internal static WorkFigure Told(string id, string name, string words, params ImmutableArray<Source> sources) => new() { Id = id, Name = name, Words = words, Sources = sources };

    /// <summary>A torque of which no row is read: the maker's figure, written down once it was applied.</summary>
    internal static WorkFigure LacksTorque(string id, string name, params ImmutableArray<string> lacking) => new() { Id = id, Name = name, Lacking = lacking, Unit = NewtonMetres };

    internal static WorkFigure Lacks(string id, string name, params ImmutableArray<string> lacking) => new() { Id = id, Name = name, Lacking = lacking };
}

/// <summary>The field of a part into which a measured figure goes.</summary>
/// <param name="Slot">The part.</param>
/// <param name="Field">Its field in a build file.</param>
/// <param name="IsCut">The part was cut to it.</param>
/// <param name="MayBeNone">A measured 0 means that there is none; of others it is no length, and stays in the record alone.</param>
/// <param name="IsMark">It is marked and not made yet: nothing of it stands in the build.</param>
internal sealed record FigurePlace(Slot Slot, string Field, bool IsCut, bool MayBeNone, bool IsMark = false);
