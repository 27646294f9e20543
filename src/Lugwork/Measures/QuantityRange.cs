using System.Globalization;
using UnitsNet;

namespace Lugwork;

/// <summary>Quantities into numbers, with their range: what is out of it, or no number, is refused by name.</summary>
internal static class QuantityRange
{
    public static double Millimetres(Length value, double least, double most, string name) => Checked(value.Millimeters, least, most, name, "mm");

    public static double? Millimetres(Length? value, double least, double most, string name) => value is { } given ? Millimetres(given, least, most, name) : null;

    public static double Degrees(Angle value, double least, double most, string name) => Checked(value.Degrees, least, most, name, "degrees");

    public static double? Degrees(Angle? value, double least, double most, string name) => value is { } given ? Degrees(given, least, most, name) : null;

    /// <summary>The number of nanometres next to a figure, so that two ways to the same length compare as equal.</summary>
    public static long Nanometres(double millimetres) => (long)Math.Round(millimetres * Lugwork.Nanometres.PerMillimetre);

    private static double Checked(double number, double least, double most, string name, string unit) =>
        number >= least && number <= most
            ? number
            : throw new ArgumentOutOfRangeException(name, number, string.Create(CultureInfo.InvariantCulture, $"{name} is {least:0.###} to {most:0.###} {unit}"));
}
