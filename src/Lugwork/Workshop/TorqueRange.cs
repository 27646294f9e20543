using System.Globalization;
using UnitsNet;

namespace Lugwork.Workshop;

/// <summary>What a thread gets before a bolt goes in.</summary>
public enum ThreadTreatment
{
    /// <summary>The sources do not say: as the maker says.</summary>
    AsMakerSays = 0,

    /// <summary>Clean and dry.</summary>
    Dry,

    /// <summary>A little grease on the thread.</summary>
    Grease,

    /// <summary>Assembly paste between the clamped surfaces, not on the thread.</summary>
    AssemblyPaste,

    /// <summary>Thread lock of the strength that the maker names, on bolts that come without it.</summary>
    Threadlock,
}

/// <summary>Units in which torque is printed.</summary>
public enum TorqueScale
{
    /// <summary>N m.</summary>
    NewtonMetres = 0,

    /// <summary>in·lbf; 1 N m is 8.8507.</summary>
    InchPounds,

    /// <summary>kgf·cm; 1 N m is 10.1972.</summary>
    KilogramForceCentimetres,
}

/// <summary>One published figure: from, to, who prints it, and of what exactly.</summary>
/// <remarks>Kept as whole hundredths of a newton metre. 1 in·lbf = 0.1129848290276167 N m and 1 kgf·cm = 0.0980665 N m, exact by definition.</remarks>
public sealed record TorqueRange
{
    private const decimal PerInchPound = 0.1129848290276167m;
    private const decimal PerKilogramForceCentimetre = 0.0980665m;

    internal TorqueRange(decimal least, decimal most, Source source, string of = "", bool other = false)
    {
        IsOfOtherParts = other;
        (LeastHundredths, MostHundredths) = ((int)(least * 100), (int)(most * 100));
        Source = source;
        Of = of;
    }

    /// <summary>The least.</summary>
    public Torque Least => Torque.FromNewtonMeters(LeastHundredths / 100d);

    /// <summary>The most; the same as the least where one figure is printed.</summary>
    public Torque Most => Torque.FromNewtonMeters(MostHundredths / 100d);

    /// <summary>Who prints it, or that nobody was found who does.</summary>
    public Source Source { get; }

    /// <summary>Of which parts it is said, where that is closer than the fastener; empty otherwise.</summary>
    public string Of { get; }

    /// <summary>It is said of a closer or another kind of part than the rest of the row, so it neither agrees with the others nor contradicts them.</summary>
    public bool IsOfOtherParts { get; }

    /// <summary>A torque is within it, to the hundredth of a newton metre.</summary>
    internal bool Holds(Torque torque) => Math.Round(torque.NewtonMeters * 100) is var hundredths && hundredths >= LeastHundredths && hundredths <= MostHundredths;

    internal int LeastHundredths { get; }

    internal int MostHundredths { get; }

    /// <summary>"5 to 6.2 N m".</summary>
    public override string ToString() => ToString(TorqueScale.NewtonMetres);

    /// <summary>The range in a unit: "5 to 6.2 N m", "44.3 to 54.9 in·lbf", "51 to 63 kgf·cm".</summary>
    /// <param name="scale">The unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such unit.</exception>
    public string ToString(TorqueScale scale)
    {
        (decimal unit, string name, string format) = scale switch
        {
            TorqueScale.NewtonMetres => (1m, "N m", "0.##"),
            TorqueScale.InchPounds => (PerInchPound, "in\u00B7lbf", "0.#"),
            TorqueScale.KilogramForceCentimetres => (PerKilogramForceCentimetre, "kgf\u00B7cm", "0"),
            _ => throw new ArgumentOutOfRangeException(nameof(scale), scale, "no such unit of torque"),
        };
        string least = (LeastHundredths / 100m / unit).ToString(format, CultureInfo.InvariantCulture);
        string most = (MostHundredths / 100m / unit).ToString(format, CultureInfo.InvariantCulture);
        return least == most ? $"{least} {name}" : $"{least} to {most} {name}";
    }
}
