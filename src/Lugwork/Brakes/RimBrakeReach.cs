using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>Reach of a rim-brake caliper: centre bolt to pad centre along the arm, from its shortest to its longest setting. Closed set, identity equality.</summary>
/// <remarks>The words are classes, the figures are makers': "short" is 39 to 49 mm here and 42 to 52 there, so a word alone is several. Least ≤ bolt to rim ≤ most, mm, by "Brake Reach Pitfalls" and "How to measure brake calipers (Q&amp;A copy)".</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<RimBrakeReach>))]
[TypeConverter(typeof(InterfaceTypeConverter<RimBrakeReach>))]
public sealed class RimBrakeReach : Standard<RimBrakeReach>, IInterfaceValue<RimBrakeReach>
{
    private RimBrakeReach(int code, string word, int least, int most, Source source)
        : base(
            code,
            FormattableString.Invariant($"{word}-{least}-{most}"),
            least == most ? FormattableString.Invariant($"{word} reach, about {least} mm") : FormattableString.Invariant($"{word} reach, {least} to {most} mm"),
            source)
    {
        Word = word;
        LeastMillimetres = least;
        MostMillimetres = most;
    }

    /// <summary>Every class, short before long, the usual figures first.</summary>
    public static ImmutableArray<RimBrakeReach> All { get; } =
    [
        new(1, "short", 39, 49, Sources.ReachPitfalls),
        new(2, "short", 40, 50, Sources.ReachPitfalls),
        new(3, "short", 42, 52, Sources.ReachPitfalls),
        new(4, "short", 39, 51, Sources.ReachMeasuring),
        new(5, "medium", 47, 57, Sources.ReachPitfalls),
        new(6, "long", 55, 73, Sources.ReachPitfalls),
        new(7, "long", 57, 73, Sources.ReachMeasuring),
        new(8, "centre-pull", 61, 61, Sources.ReachPitfalls),
        new(9, "centre-pull", 62, 78, Sources.ReachClasses),
    ];

    /// <inheritdoc/>
    public static string Called => "rim-brake reach";

    /// <summary>The shortest reach of any caliper of the trade that was found.</summary>
    public static Length ShortestOfTrade => Length.FromMillimeters(39);

    /// <summary>The longest reach of any caliper of the trade that was found.</summary>
    public static Length LongestOfTrade => Length.FromMillimeters(108);

    /// <summary>"short", "medium", "long" or "centre-pull".</summary>
    public string Word { get; }

    /// <summary>With the pad at the top of its slot.</summary>
    public Length Least => Length.FromMillimeters(LeastMillimetres);

    /// <summary>With the pad at the bottom of its slot.</summary>
    public Length Most => Length.FromMillimeters(MostMillimetres);

    internal int LeastMillimetres { get; }

    internal int MostMillimetres { get; }

    /// <summary>The classes whose pads meet a rim at the distance that was read. Several may: the one with room to both sides is the one to take.</summary>
    /// <param name="boltToRim">Middle of the brake hole straight down to the middle of the rim's track.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<RimBrakeReach> Identify(MeasuredLength boltToRim) => RimBrakeReachMeasures.Table.Identify(boltToRim);

    /// <summary>Whether the pads meet the rim: with too little reach they touch the tyre, with too much they do not come up to the track.</summary>
    /// <param name="boltToRim">Middle of the brake hole straight down to the middle of the rim's track.</param>
    /// <exception cref="ArgumentException">The reading is a default.</exception>
    public SumCheck Check(MeasuredLength boltToRim)
    {
        if (boltToRim.Millimetres == 0)
        {
            throw new ArgumentException("a default is no reading", nameof(boltToRim));
        }

        decimal low = boltToRim.Millimetres - boltToRim.ErrorMillimetres;
        decimal high = boltToRim.Millimetres + boltToRim.ErrorMillimetres;
        Verdict verdict = high < LeastMillimetres || low > MostMillimetres ? Verdict.DoesNotFit
            : low >= LeastMillimetres && high <= MostMillimetres ? Verdict.Fits
            : Verdict.NeedsMeasuring;
        string remedy = verdict switch { Verdict.DoesNotFit => "a caliper whose reach holds the distance", Verdict.Fits => "", _ => "the distance to 0.5 mm, or the caliper held to the rim" };
        return new SumCheck("rim-brake-reach", verdict, FormattableString.Invariant($"bolt to rim is {boltToRim}, the reach is {LeastMillimetres} to {MostMillimetres} mm"), remedy, Cautions.BrakeWork, [Source])
            .Comparing(("bolt to rim", (double)boltToRim.Millimetres, "mm"), ("error", (double)boltToRim.ErrorMillimetres, "mm"), ("least reach", LeastMillimetres, "mm"), ("most reach", MostMillimetres, "mm"));
    }

    /// <inheritdoc/>
    public static RimBrakeReach OfFitCode(long code) => ByCode(code);

    /// <summary>Reads "47-57", "47 to 57 mm", a key or a word; a word alone is every class of that word.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<RimBrakeReach> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (cursor.TryNumber(out long least))
        {
            return Between(least, cursor);
        }

        string word = Trim(text) is { Length: < 40 } trimmed ? trimmed.ToString().ToUpperInvariant().Replace('-', ' ').Replace(" REACH", "", StringComparison.Ordinal) : "";
        string family = word switch
        {
            "SHORT" => "short",
            "MEDIUM" or "MID" => "medium",
            "LONG" => "long",
            "CENTRE PULL" or "CENTER PULL" => "centre-pull",
            _ => "",
        };
        ImmutableArray<RimBrakeReach> all = Where(r => r.Word == family);
        return all.IsEmpty ? ByName(text)
            : all.Length == 1 ? TextReading<RimBrakeReach>.Of(all[0])
            : TextReading<RimBrakeReach>.Several(all, "makers draw this class differently: say the millimetres");
    }

    private static TextReading<RimBrakeReach> Between(long least, TextCursor cursor)
    {
        cursor.SkipMillimetres();
        bool joined = cursor.TryDash();
        if (!joined && cursor.Word() is not "to")
        {
            return TextReading<RimBrakeReach>.Refused("a reach is two figures, such as 47-57", cursor.Position);
        }

        if (!cursor.TryNumber(out long most))
        {
            return TextReading<RimBrakeReach>.Refused("the longer reach is expected", cursor.Position);
        }

        cursor.SkipMillimetres();
        if (!cursor.AtEnd)
        {
            return TextReading<RimBrakeReach>.Refused("only millimetres may follow the reach", cursor.Position);
        }

        ImmutableArray<RimBrakeReach> all = Where(r => r.LeastMillimetres * Nanometres.PerMillimetre == least && r.MostMillimetres * Nanometres.PerMillimetre == most);
        return all.IsEmpty ? TextReading<RimBrakeReach>.Refused("no class has this reach") : TextReading<RimBrakeReach>.Of(all[0]);
    }

    private static ImmutableArray<RimBrakeReach> Where(Func<RimBrakeReach, bool> wanted)
    {
        ImmutableArray<RimBrakeReach>.Builder found = ImmutableArray.CreateBuilder<RimBrakeReach>();
        foreach (RimBrakeReach reach in All)
        {
            if (wanted(reach))
            {
                found.Add(reach);
            }
        }

        return found.ToImmutable();
    }

    private static class RimBrakeReachMeasures
    {
        public static IdentificationTable<RimBrakeReach> Table { get; } = new(
            [new("bolt to rim", "middle of the brake hole straight down to the middle of the rim's track, wheel in place")],
            Rows(),
            reach => reach.FitKey);

        private static ImmutableArray<DimensionRow<RimBrakeReach>> Rows()
        {
            DimensionRow<RimBrakeReach>[] rows = new DimensionRow<RimBrakeReach>[All.Length];
            for (int i = 0; i < rows.Length; i++)
            {
                rows[i] = new(All[i], [(All[i].LeastMillimetres, All[i].MostMillimetres)], All[i].Word switch
                {
                    "short" => "usual racing reach",
                    "medium" => "older racing, touring with mudguards",
                    "long" => "mudguards, wheels of a smaller bead seat",
                    _ => "older centre-pull",
                });
            }

            return ImmutableArray.Create(rows);
        }
    }
}
