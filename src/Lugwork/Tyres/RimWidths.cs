using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>Inner rim widths that are published as codes for a rim type.</summary>
/// <remarks>Inner width = the code, mm, by "Zulaessige Kombinationen von Reifen und Felgen nach ETRTO, Stand 2006" and others: <see cref="SourceOf"/> names the source of each, and some are from memory.</remarks>
public static class RimWidths
{
    private static readonly (int Tenths, int Type, Source Source)[] Rows = Make();

    /// <summary>The published or remembered inner widths of a rim type, narrow first; empty for tubeless types, whose codes were not readable.</summary>
    /// <param name="type">A rim type.</param>
    public static ImmutableArray<Length> Of(RimType type)
    {
        ImmutableArray<decimal> widths = Millimetres(type);
        ImmutableArray<Length>.Builder lengths = ImmutableArray.CreateBuilder<Length>(widths.Length);
        foreach (decimal width in widths)
        {
            lengths.Add(Length.FromMillimeters((double)width));
        }

        return lengths.MoveToImmutable();
    }

    internal static ImmutableArray<decimal> Millimetres(RimType type)
    {
        ArgumentNullException.ThrowIfNull(type);
        ImmutableArray<decimal>.Builder widths = ImmutableArray.CreateBuilder<decimal>();
        foreach ((int tenths, int code, _) in Rows)
        {
            if (code == type.FitCode)
            {
                widths.Add(tenths / 10m);
            }
        }

        return widths.ToImmutable();
    }

    /// <summary>Where a width of a rim type comes from.</summary>
    /// <param name="type">A rim type.</param>
    /// <param name="innerWidth">Inner width.</param>
    /// <returns>The source; null where no row has that width.</returns>
    public static Source? SourceOf(RimType type, Length innerWidth)
    {
        ArgumentNullException.ThrowIfNull(type);
        int inner = NumberRange.Tenths(innerWidth);
        foreach ((int tenths, int code, Source source) in Rows)
        {
            if (code == type.FitCode && tenths == inner)
            {
                return source;
            }
        }

        return null;
    }

    private static (int Tenths, int Type, Source Source)[] Make()
    {
        List<(int, int, Source)> rows = [];
        foreach (int width in (ReadOnlySpan<int>)[13, 15, 17, 19, 21, 23, 25, 27, 29])
        {
            rows.Add((width * 10, 2, Sources.WidthMatrix2006));
        }

        foreach (int tenths in (ReadOnlySpan<int>)[180, 200, 220, 240, 270, 305])
        {
            rows.Add((tenths, 1, tenths == 200 ? Sources.Iso5775Part2Extract : Sources.Memory));
        }

        foreach (int width in (ReadOnlySpan<int>)[20, 25, 27])
        {
            rows.Add((width * 10, 3, Sources.RimsJapan));
        }

        return [.. rows];
    }
}
