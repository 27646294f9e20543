using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>The exact diameter that is specified for a nominal rim diameter. Most are in tables that no one of our sources shows.</summary>
public sealed class SpecifiedDiameter
{
    private readonly int _hundredths;
    private readonly int _tolerance;
    private readonly int _circumference;

    private SpecifiedDiameter(int nominal, int hundredths, int tolerance, int circumferenceTenths, ImmutableArray<RimType> types, Source source)
    {
        NominalMillimetres = nominal;
        _hundredths = hundredths;
        _tolerance = tolerance;
        _circumference = circumferenceTenths;
        RimTypes = types;
        Source = source;
    }

    /// <summary>Every published, derived or remembered one, by nominal diameter.</summary>
    public static ImmutableArray<SpecifiedDiameter> All { get; } =
    [
        new(270, 26_990, 0, 8_479, [RimType.HookedBead], Sources.Derived),
        new(321, 32_070, 0, 10_075, [RimType.HookedBead], Sources.Derived),
        new(372, 37_150, 0, 11_671, [RimType.HookedBead], Sources.RimsJapan),
        new(422, 42_230, 0, 13_267, [RimType.HookedBead], Sources.RimsJapan),
        new(559, 55_880, 0, 0, [], Sources.RimDiameterFromLabel),
        new(622, 62_195, 50, 0, [RimType.Crochet, RimType.TubelessCrochet, RimType.Hookless], Sources.OptimalRim),
        new(622, 62_195, 35, 0, [RimType.TubelessCrochet, RimType.Hookless], Sources.Memory),
    ];

    /// <summary>The nominal diameter, millimetres.</summary>
    public int NominalMillimetres { get; }

    /// <summary>The rim types that it is said of; empty where it is said of any.</summary>
    public ImmutableArray<RimType> RimTypes { get; }

    /// <summary>The specified diameter, to 0.1 mm or better.</summary>
    public Length Diameter => Length.FromMillimeters((double)Millimetres);

    /// <summary>How far a rim may be out to either side; null where no source says.</summary>
    public Length? Tolerance => _tolerance == 0 ? null : Length.FromMillimeters(_tolerance / 100d);

    /// <summary>The circumference that is printed beside it; null where none is.</summary>
    public Length? Circumference => _circumference == 0 ? null : Length.FromMillimeters(_circumference / 10d);

    /// <summary>Where it comes from: a maker who quotes the standard, a sum from a label, a printed circumference, or memory.</summary>
    public Source Source { get; }

    internal decimal Millimetres => _hundredths / 100m;

    internal decimal ToleranceMillimetres => _tolerance / 100m;

    internal static ImmutableArray<SpecifiedDiameter> Of(long nominal)
    {
        ImmutableArray<SpecifiedDiameter>.Builder of = ImmutableArray.CreateBuilder<SpecifiedDiameter>();
        foreach (SpecifiedDiameter row in All)
        {
            if (row.NominalMillimetres == nominal)
            {
                of.Add(row);
            }
        }

        return of.ToImmutable();
    }

    /// <summary>From the smallest to the largest that a rim of this nominal diameter may measure by a source, its own name included. Memory does not narrow it.</summary>
    internal static (decimal Least, decimal Most) Range(long nominal)
    {
        decimal least = nominal;
        decimal most = nominal;
        foreach (SpecifiedDiameter row in All)
        {
            if (row.NominalMillimetres == nominal)
            {
                least = Math.Min(least, row.Millimetres - row.ToleranceMillimetres);
                most = Math.Max(most, row.Millimetres + row.ToleranceMillimetres);
            }
        }

        return (least, most);
    }
}
