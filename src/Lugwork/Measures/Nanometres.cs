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

    /// <summary>Inches, invariant: a fraction down to 1/64 where it is exact ("1-1/8"), otherwise with three places ("1.071").</summary>
    public string InInches()
    {
        long parts = Math.DivRem(Value * 64, PerInch, out long rest);
        if (rest != 0)
        {
            return ((decimal)Value / PerInch).ToString("0.000", CultureInfo.InvariantCulture);
        }

        (long whole, long over) = Math.DivRem(parts, 64);
        long under = 64;
        while (over != 0 && over % 2 == 0)
        {
            over /= 2;
            under /= 2;
        }

        return over == 0 ? string.Create(CultureInfo.InvariantCulture, $"{whole}")
            : whole == 0 ? string.Create(CultureInfo.InvariantCulture, $"{over}/{under}")
            : string.Create(CultureInfo.InvariantCulture, $"{whole}-{over}/{under}");
    }

    /// <summary>Millimetres without trailing zeros, invariant: "27.2".</summary>
    public override string ToString() => Millimetres.ToString("0.######", CultureInfo.InvariantCulture);
}
