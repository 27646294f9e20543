using System.Globalization;
using UnitsNet;

namespace Lugwork;

/// <summary>A length in whole nanometres, so that every 1/64 inch is exact.</summary>
internal readonly record struct Nanometres(long Value) : IComparable<Nanometres>
{
    public const long PerMillimetre = 1_000_000;
    public const long PerInch = 25_400_000;

    public static Nanometres OfMillimetres(decimal millimetres) => new((long)decimal.Round(millimetres * PerMillimetre));

    public int CompareTo(Nanometres other) => Value.CompareTo(other.Value);

    /// <summary>The seam to UnitsNet: made from a number, never parsed, never compared.</summary>
    public Length ToLength() => Length.FromMillimeters((double)((decimal)Value / PerMillimetre));

    public decimal Millimetres => (decimal)Value / PerMillimetre;

    /// <summary>Millimetres without trailing zeros, invariant: "27.2".</summary>
    public override string ToString() => Millimetres.ToString("0.######", CultureInfo.InvariantCulture);
}
