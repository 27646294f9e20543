using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Workshop;

/// <summary>A figure as it was measured, counted or found out at a step. Immutable.</summary>
public sealed record WorkMeasurement
{
    internal WorkMeasurement(string figure, string text, string unit)
    {
        FigureId = figure;
        Text = text;
        Unit = unit;
    }

    /// <summary>Id of the figure: "steerer-cut".</summary>
    public string FigureId { get; }

    /// <summary>What it is, as a build file writes it: "199.5", "112", "ZS44".</summary>
    public string Text { get; }

    /// <summary>"mm", "pitches", "teeth"; empty for words.</summary>
    public string Unit { get; }

    /// <summary>The measured length; null for what was counted or found out.</summary>
    public Length? Length => Unit == Millimetres ? UnitsNet.Length.FromMillimeters(double.Parse(Text, CultureInfo.InvariantCulture)) : null;

    internal const string Millimetres = "mm";

    /// <summary>"steerer-cut 199.5 mm".</summary>
    public override string ToString() => $"{FigureId} {Text} {Unit}".TrimEnd();
}

/// <summary>A torque as it was applied at a step. Immutable; kept as whole thousandths of a newton metre.</summary>
public sealed record WorkTorque
{
    internal WorkTorque(string fastener, int thousandths)
    {
        FastenerId = fastener;
        Thousandths = thousandths;
    }

    /// <summary>Id of the torque row, "stem-faceplate", or of a figure of which no row is read, "binder-torque".</summary>
    public string FastenerId { get; }

    /// <summary>What the wrench was set to.</summary>
    public Torque Applied => Torque.FromNewtonMeters(Thousandths / 1000d);

    internal int Thousandths { get; }

    /// <summary>"stem-faceplate 5 N m".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{FastenerId} {Thousandths / 1000m:0.###} N m");
}

/// <summary>What was done at one step. Immutable.</summary>
/// <remarks>Lists compare by being the same list: two that say the same are equal only where one was made from the other. Compare what is needed.</remarks>
public sealed record WorkEntry
{
    internal WorkEntry()
    {
    }

    /// <summary>Id of the step.</summary>
    public string StepId { get; internal init; } = "";

    /// <summary>The step is done.</summary>
    public bool IsDone { get; internal init; }

    /// <summary>What was measured, each figure once.</summary>
    public ImmutableArray<WorkMeasurement> Measurements { get; internal init; } = [];

    /// <summary>What was applied, each fastener once.</summary>
    public ImmutableArray<WorkTorque> Torques { get; internal init; } = [];

    /// <summary>A note of one's own; may be empty.</summary>
    public string Note { get; internal init; } = "";

    /// <summary>The step was one of one's own, put into a plan: it has no row in the library.</summary>
    internal bool IsOwn => StepTable.All.All(r => r.Id != StepId);

    /// <summary>Sixteen hexadecimal digits of the parts that the step handled, without what is measured; empty where the record does not say.</summary>
    internal string Parts { get; init; } = "";

    /// <summary>"fit-stem: done; stem-on-steerer 5 N m".</summary>
    public override string ToString() =>
        $"{StepId}: {string.Join("; ", Measurements.Select(m => m.ToString()).Concat(Torques.Select(t => t.ToString())).Prepend(IsDone ? "done" : "open").Concat(Note.Length > 0 ? [Note] : []))}";
}
