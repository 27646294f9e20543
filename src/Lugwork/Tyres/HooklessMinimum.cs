using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>How firmly a least tyre width on hookless rims stands.</summary>
public enum HooklessStanding
{
    /// <summary>Read in a range that does not say whether it covers hookless rims: never rely on it.</summary>
    TypeNotStated = 0,

    /// <summary>Hearsay.</summary>
    Rumour,

    /// <summary>One report, against others of the same year.</summary>
    Contradicted,

    /// <summary>Published, and replaced by a later edition.</summary>
    Superseded,

    /// <summary>Published and in force.</summary>
    InForce,
}

/// <summary>The narrowest tyre on a hookless rim of one inner width, as one edition or report has it. The maker's own minimum comes first.</summary>
/// <remarks>Tyre ≥ the least of the rim's inner width, mm, by "Tire compatibility statement (PDF)" and others: each row names its source; 5 bar by "Tubeless racing bike requirement".</remarks>
public sealed class HooklessMinimum
{
    private readonly int _inner;
    private readonly int _least;

    private HooklessMinimum(int inner, int least, WidthEdition edition, HooklessStanding standing, Source source)
    {
        (_inner, _least) = (inner, least);
        Edition = edition;
        Standing = standing;
        Source = source;
    }

    /// <summary>Every report. For 19, 21, 23 and 24 mm no figure in force was readable.</summary>
    public static ImmutableArray<HooklessMinimum> All { get; } =
    [
        new(21, 25, WidthEdition.Etrto2022, HooklessStanding.TypeNotStated, Sources.WidthRanges2022),
        new(23, 25, WidthEdition.Etrto2022, HooklessStanding.TypeNotStated, Sources.WidthRanges2022),
        new(25, 28, WidthEdition.Etrto2022, HooklessStanding.Superseded, Sources.TyreStatement),
        new(25, 29, WidthEdition.Etrto2023, HooklessStanding.InForce, Sources.TyreStatement),
        new(25, 29, WidthEdition.Iso2023, HooklessStanding.InForce, Sources.HooklessIso2023),
        new(25, 30, WidthEdition.Etrto2023, HooklessStanding.Contradicted, Sources.HooklessGap),
        new(23, 28, WidthEdition.Etrto2023, HooklessStanding.Rumour, Sources.HooklessRumour),
    ];

    /// <summary>Most pressure on a hookless road rim, 5 bar, whatever the tyre says; a lower figure of rim or tyre binds.</summary>
    public static Pressure MostPressure => Pressure.FromBars(5);

    /// <summary>Where the pressure comes from.</summary>
    public static Source PressureSource => Sources.HooklessPressure;

    /// <summary>Inner width of the rim.</summary>
    public Length InnerWidth => Length.FromMillimeters(_inner);

    /// <summary>Narrowest tyre.</summary>
    public Length LeastTyre => Length.FromMillimeters(_least);

    /// <summary>Whose figure it is.</summary>
    public WidthEdition Edition { get; }

    /// <summary>How firmly it stands.</summary>
    public HooklessStanding Standing { get; }

    /// <summary>Where it was read.</summary>
    public Source Source { get; }

    /// <summary>The figure in force for an inner width.</summary>
    /// <param name="innerWidth">Inner width of the rim.</param>
    /// <returns>The row; null where no figure in force was readable: ask the rim maker.</returns>
    public static HooklessMinimum? InForce(Length innerWidth)
    {
        int tenths = NumberRange.Tenths(innerWidth);
        HooklessMinimum? found = null;
        foreach (HooklessMinimum row in All)
        {
            found = row._inner * 10 == tenths && row.Standing == HooklessStanding.InForce ? row : found;
        }

        return found;
    }

    /// <summary>"25 mm: 29 mm, ISO 5775-1:2023".</summary>
    public override string ToString() => FormattableString.Invariant($"{_inner} mm: {_least} mm, {Edition.TradeName}");
}
