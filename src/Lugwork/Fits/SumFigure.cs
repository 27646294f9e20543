using System.Globalization;
using UnitsNet;

namespace Lugwork;

/// <summary>One figure that a sum compared: its name, its number and the unit of the number.</summary>
public sealed record SumFigure
{
    internal SumFigure(string name, double value, string unit) => (Name, Value, Unit) = (name, value, unit);

    /// <summary>What it is: "axle to crown".</summary>
    public string Name { get; }

    /// <summary>The number, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>"mm", "bar", "degrees", "teeth", "pitches"; empty for a plain number.</summary>
    public string Unit { get; }

    /// <summary>The figure as a quantity; null where it is no length.</summary>
    public Length? Length => Unit == "mm" ? UnitsNet.Length.FromMillimeters(Value) : null;

    /// <summary>"axle to crown 551 mm".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name} {Value:0.###} {Unit}").TrimEnd();
}
