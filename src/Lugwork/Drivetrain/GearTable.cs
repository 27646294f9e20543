using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>What the cells of a <see cref="GearTable"/> say.</summary>
public enum GearMeasure
{
    /// <summary>Metres for one turn of the cranks.</summary>
    Development = 0,

    /// <summary>Ratio: turns of the wheel for one turn of the cranks.</summary>
    Ratio,

    /// <summary>Gear inches of the rolled circumference: the way over π, not the nominal wheel.</summary>
    RolledGearInches,
}

/// <summary>Every gear of rings on sprockets, and of a geared hub behind them.</summary>
/// <remarks>Up to 4 rings and 14 sprockets. That a chain can run from every ring to every sprocket is not said: see chainline and capacity. Range = 100 Gmax / Gmin, step = 100 (G(k+1) / G(k) - 1), per cent, G the ratios in order, by "Internal gear ratios"; two gears count as one where |ln(Ga / Gb)| is below the tolerance (common practice, no source).</remarks>
public sealed partial class GearTable
{
    /// <summary>Gears nearer to each other than this count as one, per cent. Common practice is 2 to 3; no source says so.</summary>
    public const double UsualTolerancePercent = 2.5;

    private readonly double _circumference;

    private GearTable(ImmutableArray<int> rings, ImmutableArray<int> sprockets, InternalHub? hub, double circumference)
    {
        Rings = rings;
        Sprockets = sprockets;
        Hub = hub;
        _circumference = circumference;
        Gears = Sorted(rings, sprockets, hub);
    }

    /// <summary>Teeth of the rings, largest first.</summary>
    public ImmutableArray<int> Rings { get; }

    /// <summary>Teeth of the sprockets, smallest first.</summary>
    public ImmutableArray<int> Sprockets { get; }

    /// <summary>The geared hub; null where the hub has one gear.</summary>
    public InternalHub? Hub { get; }

    /// <summary>Every gear, lowest first; of equal ones that on the larger ring first.</summary>
    public ImmutableArray<Gear> Gears { get; }

    /// <summary>Way of the wheel for one turn.</summary>
    public Length RolledCircumference => Length.FromMillimeters(_circumference);

    /// <summary>Highest gear over the lowest, per cent.</summary>
    public double RangePercent => Gearing.RangePercent(Gears[0].Ratio, Gears[^1].Ratio);

    /// <summary>Steps from each gear to the next higher one, per cent; one fewer than there are gears, 0 between equal ones.</summary>
    public ImmutableArray<double> StepsPercent
    {
        get
        {
            double[] steps = new double[Gears.Length - 1];
            for (int i = 0; i < steps.Length; i++)
            {
                steps[i] = Gearing.StepPercent(Gears[i].Ratio, Gears[i + 1].Ratio);
            }

            return ImmutableArray.Create(steps);
        }
    }

    /// <summary>Makes the table.</summary>
    /// <param name="rings">Teeth of 1 to 4 rings in any order, none twice.</param>
    /// <param name="sprockets">Teeth of 1 to 14 sprockets in any order, none twice.</param>
    /// <param name="rolledCircumference">Way of the wheel for one turn, rolled out under load, 300 to 5,000 mm.</param>
    /// <param name="hub">A geared hub behind them, all of whose gears are published.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    /// <exception cref="ArgumentException">A count stands twice, or the list of the hub's gears is not whole.</exception>
    public static GearTable Of(ReadOnlySpan<int> rings, ReadOnlySpan<int> sprockets, Length rolledCircumference, InternalHub? hub = null)
    {
        if (hub is { IsWhole: false })
        {
            throw new ArgumentException($"not every gear of this hub is published: {hub}", nameof(hub));
        }

        ImmutableArray<int> sorted = TeethOf(rings, 4, nameof(rings));
        int[] largestFirst = [.. sorted];
        Array.Reverse(largestFirst);
        return new(ImmutableArray.Create(largestFirst), TeethOf(sprockets, 14, nameof(sprockets)), hub, Gearing.Circumference(rolledCircumference));
    }

    /// <summary>Pairs of gears nearer to each other than a tolerance, |ln(Ga / Gb)| below it, lowest first.</summary>
    /// <param name="tolerancePercent">Per cent, 0 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public ImmutableArray<GearPair> Duplicates(double tolerancePercent = UsualTolerancePercent)
    {
        Given.Number(tolerancePercent, 0, 50, nameof(tolerancePercent));
        ImmutableArray<GearPair>.Builder pairs = ImmutableArray.CreateBuilder<GearPair>();
        for (int i = 0; i < Gears.Length; i++)
        {
            for (int j = i + 1; j < Gears.Length && AreOne(Gears[i], Gears[j], tolerancePercent); j++)
            {
                pairs.Add(new(Gears[i], Gears[j], Gearing.StepPercent(Gears[i].Ratio, Gears[j].Ratio)));
            }
        }

        return pairs.ToImmutable();
    }

    /// <summary>How many gears are left where those within the tolerance of the last one counted are left out, from the lowest up.</summary>
    /// <param name="tolerancePercent">Per cent, 0 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public int CountOfDifferent(double tolerancePercent = UsualTolerancePercent)
    {
        Given.Number(tolerancePercent, 0, 50, nameof(tolerancePercent));
        (int count, Gear last) = (1, Gears[0]);
        foreach (Gear gear in Gears)
        {
            if (gear != last && !AreOne(last, gear, tolerancePercent))
            {
                (count, last) = (count + 1, gear);
            }
        }

        return count;
    }

    /// <summary>The table in metres of development.</summary>
    public override string ToString() => ToString(GearMeasure.Development);

    /// <summary>The table: a line for each ring, a column for each sprocket, or with a geared hub a line for each ring and sprocket and a column for each gear of the hub; then range, steps and duplicates.</summary>
    /// <param name="measure">What the cells say.</param>
    public string ToString(GearMeasure measure)
    {
        StringBuilder text = new(Unit(measure));
        int wide = Hub is null ? 6 : 9;
        foreach (ImmutableArray<string> row in Rows(measure))
        {
            text.Append('\n').Append(row[0].PadLeft(7));
            foreach (string cell in row.AsSpan(1..))
            {
                text.Append(cell.PadLeft(wide));
            }
        }

        return text.Append('\n').Append(Summary()).ToString();
    }

    /// <summary>What the cells say: "development, metres; 2180 mm rolled".</summary>
    internal string Unit(GearMeasure measure)
    {
        string unit = measure switch { GearMeasure.Ratio => "ratio, turns of the wheel", GearMeasure.RolledGearInches => "gear inches", _ => "development, metres" };
        return string.Create(CultureInfo.InvariantCulture, $"{unit}; {_circumference:0.#} mm rolled");
    }

    /// <summary>The cells, heads first; a row begins with its ring, or with ring and sprocket where there is a geared hub.</summary>
    internal ImmutableArray<ImmutableArray<string>> Rows(GearMeasure measure)
    {
        ImmutableArray<ImmutableArray<string>>.Builder rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        rows.Add(["", .. Heads()]);
        foreach (int ring in Rings)
        {
            if (Hub is not { } hub)
            {
                List<string> row = [ring.ToString(CultureInfo.InvariantCulture)];
                foreach (int sprocket in Sprockets)
                {
                    row.Add(Cell(new(ring, sprocket), measure));
                }

                rows.Add([.. row]);
                continue;
            }

            foreach (int sprocket in Sprockets)
            {
                List<string> row = [string.Create(CultureInfo.InvariantCulture, $"{ring}/{sprocket}")];
                foreach (HubRatio ratio in hub.Ratios)
                {
                    row.Add(Cell(new(ring, sprocket, ratio), measure));
                }

                rows.Add([.. row]);
            }
        }

        return rows.ToImmutable();
    }

    /// <summary>Range, steps and how many gears differ, in one line.</summary>
    internal string Summary()
    {
        if (Gears.Length == 1)
        {
            return "one gear";
        }

        double least = double.MaxValue;
        double most = 0;
        foreach (double step in StepsPercent)
        {
            (least, most) = (Math.Min(least, step), Math.Max(most, step));
        }

        return string.Create(CultureInfo.InvariantCulture, $"range {RangePercent:0.#} %, steps {least:0.#} to {most:0.#} %, {Gears.Length} gears, {CountOfDifferent()} that differ by {UsualTolerancePercent} % or more");
    }

    private static bool AreOne(Gear lower, Gear higher, double tolerancePercent) => Math.Abs(Math.Log(higher.Ratio / lower.Ratio)) < tolerancePercent / 100;

    private static ImmutableArray<int> TeethOf(ReadOnlySpan<int> teeth, int most, string name)
    {
        Given.Number(teeth.Length, 1, most, name);
        int[] sorted = teeth.ToArray();
        Array.Sort(sorted);
        for (int i = 0; i < sorted.Length; i++)
        {
            if (i > 0 && Given.Teeth(sorted[i], name) == sorted[i - 1])
            {
                throw new ArgumentException($"{sorted[i].ToString(CultureInfo.InvariantCulture)} teeth stand twice", name);
            }

            Given.Teeth(sorted[i], name);
        }

        return ImmutableArray.Create(sorted);
    }

    private static ImmutableArray<Gear> Sorted(ImmutableArray<int> rings, ImmutableArray<int> sprockets, InternalHub? hub)
    {
        List<Gear> all = [];
        foreach (int ring in rings)
        {
            foreach (int sprocket in sprockets)
            {
                foreach (HubRatio ratio in hub?.Ratios ?? [default])
                {
                    all.Add(new(ring, sprocket, ratio));
                }
            }
        }

        all.Sort((a, b) => Gear.Compare(a, b) is var order and not 0 ? order : b.Ring != a.Ring ? b.Ring.CompareTo(a.Ring) : b.Sprocket.CompareTo(a.Sprocket));
        return [.. all];
    }

    private List<string> Heads()
    {
        List<string> heads = [];
        if (Hub is { } hub)
        {
            foreach (HubRatio ratio in hub.Ratios)
            {
                heads.Add(ratio.Value.ToString("0.000", CultureInfo.InvariantCulture));
            }
        }
        else
        {
            foreach (int sprocket in Sprockets)
            {
                heads.Add(sprocket.ToString(CultureInfo.InvariantCulture));
            }
        }

        return heads;
    }

    private string Cell(Gear gear, GearMeasure measure) => measure switch
    {
        GearMeasure.Ratio => gear.Ratio.ToString("0.00", CultureInfo.InvariantCulture),
        GearMeasure.RolledGearInches => (gear.Ratio * _circumference / (Math.PI * 25.4)).ToString("0.0", CultureInfo.InvariantCulture),
        _ => (gear.Ratio * _circumference / 1_000).ToString("0.00", CultureInfo.InvariantCulture),
    };
}
