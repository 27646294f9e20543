using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork;

/// <summary>A figure as it was measured at a step.</summary>
/// <param name="Figure">Id of the figure: "steerer-cut".</param>
/// <param name="Value">What was measured, in the unit of the figure, 0 to 100,000.</param>
public sealed record WorkMeasurement(string Figure, decimal Value)
{
    /// <summary>"steerer-cut 199.5".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Figure} {Value:0.######}");
}

/// <summary>A torque as it was applied at a step.</summary>
/// <param name="Torque">Id of the torque row: "stem-faceplate".</param>
/// <param name="NewtonMetres">What the wrench was set to, N m, above 0 to 300.</param>
public sealed record WorkTorque(string Torque, decimal NewtonMetres)
{
    /// <summary>"stem-faceplate 5 N m".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Torque} {NewtonMetres:0.###} N m");
}

/// <summary>What was done at one step. Immutable.</summary>
public sealed record WorkEntry
{
    internal WorkEntry()
    {
    }

    /// <summary>Id of the step.</summary>
    public required string Step { get; init; }

    /// <summary>The step is done.</summary>
    public bool IsDone { get; init; }

    /// <summary>What was measured, each figure once.</summary>
    public ImmutableArray<WorkMeasurement> Measurements { get; init; } = [];

    /// <summary>What was applied, each fastener once.</summary>
    public ImmutableArray<WorkTorque> Torques { get; init; } = [];

    /// <summary>A note of one's own; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>The step was one of one's own, put into a plan: it has no row in the library.</summary>
    internal bool IsOwn => StepTable.All.All(r => r.Id != Step);

    /// <summary>Sixteen hexadecimal digits of the parts that the step handled, without what is measured; empty where the record does not say.</summary>
    internal string Parts { get; init; } = "";

    /// <summary>"fit-stem: done; stem-on-steerer 5 N m".</summary>
    public override string ToString() =>
        $"{Step}: {string.Join("; ", Measurements.Select(m => m.ToString()).Concat(Torques.Select(t => t.ToString())).Prepend(IsDone ? "done" : "open").Concat(Note.Length > 0 ? [Note] : []))}";
}
