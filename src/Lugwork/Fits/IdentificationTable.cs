using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork;

/// <summary>One dimension by which a kind of thing can be told.</summary>
/// <param name="Name">"width".</param>
/// <param name="How">Where and with what it is measured: "caliper across the faces, cups out".</param>
internal sealed record MeasuredDimension(string Name, string How);

/// <summary>The dimensions of one thing: a range a dimension, null where it has none or none is known; and the name size of the first one, which ranks where ranges overlap.</summary>
internal sealed record DimensionRow<T>(T Value, ImmutableArray<(decimal Least, decimal Most)?> Ranges, string TellsApart = "", decimal? NameSize = null);

/// <summary>The measurable dimensions of everything of one kind: tells what readings can be, and what to measure next.</summary>
/// <remarks>A thing whose dimension is not known is never ruled out by a reading of it, and ranks behind those that have it.</remarks>
internal sealed class IdentificationTable<T>(ImmutableArray<MeasuredDimension> dimensions, ImmutableArray<DimensionRow<T>> rows, Func<T, string> name)
{
    private const decimal CaliperError = 0.1m;

    /// <summary>Ranks by deviation, then by how far the first reading is from the name size; a missing dimension counts as just allowed, equal ones keep the order of the table.</summary>
    /// <param name="readings">A reading a dimension, in the order of the dimensions; null where it was not measured.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public Identification<T> Identify(params ReadOnlySpan<MeasuredLength?> readings)
    {
        List<(DimensionRow<T> Row, decimal Deviation)> found = [];
        bool any = false;
        foreach (MeasuredLength? reading in readings)
        {
            any |= reading is not null;
            if (reading is { Millimetres: 0 })
            {
                throw new ArgumentException("a default is no reading", nameof(readings));
            }
        }

        if (!any)
        {
            throw new ArgumentException($"one of {string.Join(", ", dimensions.Select(d => d.Name))} has to be measured", nameof(readings));
        }

        foreach (DimensionRow<T> row in rows)
        {
            if (Deviation(row, readings) is { } deviation)
            {
                found.Add((row, deviation));
            }
        }

        MeasuredLength? first = readings[0];
        (DimensionRow<T> Row, decimal Deviation)[] ranked = [.. found.OrderBy(f => f.Deviation).ThenBy(f => FromName(f.Row, first))];
        return new([.. ranked.Select(f => new Identified<T>(f.Row.Value, f.Deviation, f.Row.TellsApart))], Next([.. ranked.Select(f => f.Row)], readings));
    }

    private static decimal FromName(DimensionRow<T> row, MeasuredLength? first) =>
        first is not { } reading ? 0 : row.NameSize is { } name ? Math.Abs(reading.Millimetres - name) : decimal.MaxValue;

    private static decimal? Deviation(DimensionRow<T> row, ReadOnlySpan<MeasuredLength?> readings)
    {
        decimal sum = 0;
        for (int i = 0; i < readings.Length; i++)
        {
            if (readings[i] is not { } reading)
            {
                continue;
            }

            decimal? outside = row.Ranges[i] is var (least, most) ? reading.Outside(least, most) : reading.ErrorMillimetres;
            if (outside is null)
            {
                return null;
            }

            sum += outside.Value;
        }

        return sum;
    }

    /// <summary>The dimension that was not measured and that leaves the fewest together, told with its outcomes.</summary>
    private string Next(DimensionRow<T>[] rest, ReadOnlySpan<MeasuredLength?> readings)
    {
        string best = "";
        int most = 1;
        for (int i = 0; i < dimensions.Length; i++)
        {
            if (i < readings.Length && readings[i] is not null)
            {
                continue;
            }

            List<(decimal Least, decimal Most, List<string> Names)> groups = Groups(rest, i);
            if (groups.Count > most)
            {
                most = groups.Count;
                string outcomes = string.Join("; ", groups.Select(g => $"{Range(g.Least, g.Most)} mm is {string.Join(" or ", g.Names)}"));
                best = $"{dimensions[i].Name} ({dimensions[i].How}): {outcomes}";
            }
        }

        return best;
    }

    /// <summary>Things that a caliper can tell apart by one dimension stand in groups of their own.</summary>
    private List<(decimal Least, decimal Most, List<string> Names)> Groups(DimensionRow<T>[] rest, int dimension)
    {
        List<(decimal Least, decimal Most, List<string> Names)> groups = [];
        foreach (DimensionRow<T> row in rest.Where(r => r.Ranges[dimension] is not null).OrderBy(r => r.Ranges[dimension]!.Value.Least))
        {
            (decimal least, decimal most) = row.Ranges[dimension]!.Value;
            if (groups.Count > 0 && groups[^1].Most + (2 * CaliperError) >= least)
            {
                (decimal from, decimal to, List<string> names) = groups[^1];
                names.Add(name(row.Value));
                groups[^1] = (from, Math.Max(to, most), names);
            }
            else
            {
                groups.Add((least, most, [name(row.Value)]));
            }
        }

        return groups;
    }

    private static string Range(decimal least, decimal most) => least == most
        ? least.ToString("0.###", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{least:0.###} to {most:0.###}");
}
