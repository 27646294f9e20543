using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Lugwork;

/// <summary>A quantity as a number within its range; what is outside it, or no number, is refused with value and range.</summary>
internal static class NumberRange
{
    public static double Checked(double number, double least, double most, string unit, [CallerArgumentExpression(nameof(number))] string name = "") =>
        number >= least && number <= most
            ? number
            : throw new ArgumentOutOfRangeException(name, number, string.Create(CultureInfo.InvariantCulture, $"{name} is {least:0.######} to {most:0.######} {unit}").TrimEnd());

    public static int Checked(int number, int least, int most, string unit, [CallerArgumentExpression(nameof(number))] string name = "") => (int)Checked((double)number, least, most, unit, name);

    public static double Millimetres(Length length, double least, double most, [CallerArgumentExpression(nameof(length))] string name = "") => Checked(length.Millimeters, least, most, "mm", name);

    public static double Bars(Pressure pressure, double least, double most, [CallerArgumentExpression(nameof(pressure))] string name = "") => Checked(pressure.Bars, least, most, "bar", name);

    public static double Parts(Ratio ratio, double least, double most, [CallerArgumentExpression(nameof(ratio))] string name = "") => Checked(ratio.DecimalFractions, least, most, "(1 is all of it)", name);

    public static double? Millimetres(Length? length, double least, double most, string name) => length is { } given ? Millimetres(given, least, most, name) : null;

    public static double Degrees(Angle angle, double least, double most, [CallerArgumentExpression(nameof(angle))] string name = "") => Checked(angle.Degrees, least, most, "degrees", name);

    public static double? Degrees(Angle? angle, double least, double most, string name) => angle is { } given ? Degrees(given, least, most, name) : null;

    /// <summary>A length within its range in whole nanometres.</summary>
    public static Nanometres Exact(Length length, double least, double most, [CallerArgumentExpression(nameof(length))] string name = "") =>
        Lugwork.Nanometres.OfMillimetres((decimal)Millimetres(length, least, most, name));

    /// <summary>A nominal width, which is whole millimetres: what lies between is refused, for no table has it.</summary>
    public static int Whole(Length length, int least, int most, [CallerArgumentExpression(nameof(length))] string name = "")
    {
        long exact = Exact(length, least, most, name).Value;
        return exact % Lugwork.Nanometres.PerMillimetre == 0
            ? (int)(exact / Lugwork.Nanometres.PerMillimetre)
            : throw new ArgumentOutOfRangeException(name, length.Millimeters, $"{name} is a nominal width, in whole millimetres");
    }

    /// <summary>A width in tenths of a millimetre, for tables that list them; -1 for one between them or out of all tables.</summary>
    public static int Tenths(Length length) =>
        length.Millimeters is >= 0 and <= 100_000 && Nanometres(length.Millimeters) is var exact && exact % (Lugwork.Nanometres.PerMillimetre / 10) == 0 ? (int)(exact / (Lugwork.Nanometres.PerMillimetre / 10)) : -1;

    /// <summary>The number of nanometres next to a figure, so that two ways to the same length compare as equal.</summary>
    public static long Nanometres(double millimetres) => (long)Math.Round(millimetres * Lugwork.Nanometres.PerMillimetre);
}
