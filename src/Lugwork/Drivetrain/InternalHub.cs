using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>Gears inside a rear hub by its class, as exact fractions of tooth counts.</summary>
/// <remarks>
/// The published list leaves direct drive out; it is added where the number of gears then comes out. Where it does not, the list is not whole:
/// such a hub has no range, and no table is made of it. Hubs of one class and different makers differ: count teeth, or measure turns of the wheel for ten of the sprocket.
/// Ratio i = turns of the wheel for one of the sprocket; range = 100 imax / imin, per cent. Fractions by "Drive ratios of bicycle hub gears (workbook, improper fractions)", ranges by "Internal gear ratios".
/// </remarks>
public sealed class InternalHub
{
    private InternalHub(string key, string name, int speeds, bool isWhole, Source source, ImmutableArray<HubRatio> ratios)
    {
        Key = key;
        Name = name;
        Speeds = speeds;
        IsWhole = isWhole;
        Source = source;
        Ratios = ratios;
    }

    /// <summary>Every hub of the published lists, few gears before many.</summary>
    public static ImmutableArray<InternalHub> All { get; } =
    [
        new("2", "2-speed, several", 2, false, Sources.HubGearFractions, [new(48, 65), new(16, 21), new(22, 15)]),
        new("2-fast", "2-speed, direct and fast", 2, true, Sources.HubGearArticle, [default, new(34, 25)]),
        new("3-A", "3-speed, wide", 3, true, Sources.HubGearFractions, [new(47, 64), default, new(64, 47)]),
        new("3-B", "3-speed, thirds", 3, true, Sources.HubGearFractions, [new(3, 4), default, new(4, 3)]),
        new("3-C", "3-speed, close", 3, true, Sources.HubGearFractions, [new(4, 5), default, new(5, 4)]),
        new("3-D", "3-speed with a very low gear", 3, false, Sources.HubGearFractions, [new(3, 5)]),
        new("4-close", "4-speed, close", 4, true, Sources.HubGearArticle, [new(67, 100), new(89, 100), default, new(113, 100)]),
        new("5-A", "5-speed, two thirds to three halves", 5, true, Sources.HubGearFractions, [new(2, 3), new(7, 9), default, new(9, 7), new(3, 2)]),
        new("5-B", "5-speed, wide", 5, true, Sources.HubGearFractions, [new(19, 30), new(57, 73), default, new(73, 57), new(30, 19)]),
        new("7-A", "7-speed", 7, true, Sources.HubGearFractions, [new(273, 460), new(21, 31), new(75, 92), default, new(92, 75), new(31, 21), new(460, 273)]),
        new("7-B", "7-speed, wide", 7, false, Sources.HubGearFractions, [new(252, 439), new(72, 89), default, new(89, 72), new(439, 252)]),
        new("8", "8-speed without direct drive", 8, true, Sources.HubGearFractions, [new(14, 23), new(49, 69), new(224, 279), new(28, 31), new(98, 93), new(112, 93), new(42, 31), new(49, 31)]),
        new("9", "9-speed", 9, false, Sources.HubGearFractions, [new(112, 207), new(161, 297), new(8, 11), new(99, 116), default, new(116, 99), new(11, 8), new(297, 161)]),
        new("14", "14-speed", 14, true, Sources.HubGearFractions, Fourteen()),
    ];

    /// <summary>Short key: "3-A". Stable.</summary>
    public string Key { get; }

    /// <summary>The class in words.</summary>
    public string Name { get; }

    /// <summary>Number of gears.</summary>
    public int Speeds { get; }

    /// <summary>Every gear is in <see cref="Ratios"/>. Where it is not, some gears are missing, or gears of several hubs stand together.</summary>
    public bool IsWhole { get; }

    /// <summary>Where the ratios come from. The figures of the article are decimals of two places.</summary>
    public Source Source { get; }

    /// <summary>The published gears, low before high.</summary>
    public ImmutableArray<HubRatio> Ratios { get; }

    /// <summary>Highest gear over the lowest, per cent: 526.6 for 14 speeds; null where the list is not whole.</summary>
    public double? RangePercent => IsWhole ? Gearing.RangePercent(Ratios[0].Value, Ratios[^1].Value) : null;

    /// <summary>Finds a hub by its key, case ignored; null where there is none.</summary>
    /// <param name="key">Such as "3-A".</param>
    public static InternalHub? Find(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        foreach (InternalHub hub in All)
        {
            if (string.Equals(hub.Key, key.Trim(), StringComparison.OrdinalIgnoreCase))
            {
                return hub;
            }
        }

        return null;
    }

    /// <summary>"3-speed, thirds: 3/4, 1/1, 4/3".</summary>
    public override string ToString() => $"{Name}: {string.Join(", ", Ratios)}{(IsWhole ? "" : " (not every gear is published)")}";

    // The upper seven run through the main gears alone, the lower seven through a reduction of 221/541 as well.
    private static ImmutableArray<HubRatio> Fourteen()
    {
        ImmutableArray<HubRatio> upper = [new(15, 22), new(24, 31), new(155, 176), default, new(176, 155), new(31, 24), new(22, 15)];
        HubRatio[] all = new HubRatio[upper.Length * 2];
        for (int i = 0; i < upper.Length; i++)
        {
            all[i] = new(upper[i].Over * 221, upper[i].Under * 541);
            all[upper.Length + i] = upper[i];
        }

        return ImmutableArray.Create(all);
    }
}
