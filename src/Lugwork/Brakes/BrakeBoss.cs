using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>The bosses of a frame or fork for a rim brake with two arms, by where they stand. Closed set, identity equality.</summary>
/// <remarks>Bosses below the rim and above it are not interchangeable. The place was made for one bead seat.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<BrakeBoss>))]
[TypeConverter(typeof(InterfaceTypeConverter<BrakeBoss>))]
public sealed class BrakeBoss : Standard<BrakeBoss>, IInterfaceValue<BrakeBoss>
{
    private readonly int _leastToAxle;
    private readonly int _mostToAxle;

    private BrakeBoss(int code, string key, string name, int bead, int least, int most, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        BeadSeatMillimetres = bead;
        _leastToAxle = least;
        _mostToAxle = most;
    }

    /// <summary>Cantilever and direct-pull, for bead seat 622.</summary>
    public static BrakeBoss Cantilever622 { get; } = new(1, "cantilever-622", "cantilever bosses for 622", 622, 2830, 2830, Sources.BrazeOnDistances, "canti 622");

    /// <summary>Cantilever and direct-pull, for bead seat 584.</summary>
    public static BrakeBoss Cantilever584 { get; } = new(2, "cantilever-584", "cantilever bosses for 584", 584, 2650, 2650, Sources.BrazeOnDistances, "canti 584");

    /// <summary>Cantilever and direct-pull, for bead seat 559; printed as 253.5 and as 254.</summary>
    public static BrakeBoss Cantilever559 { get; } = new(3, "cantilever-559", "cantilever bosses for 559", 559, 2535, 2540, Sources.BrazeOnDistances, "canti 559");

    /// <summary>U-brake and roller-cam, above the rim.</summary>
    public static BrakeBoss UBrake { get; } = new(4, "u-brake", "U-brake bosses", 0, 0, 0, Sources.BrazedOnBrakes, "roller-cam", "roller cam bosses");

    /// <summary>Every place.</summary>
    public static ImmutableArray<BrakeBoss> All { get; } = [Cantilever622, Cantilever584, Cantilever559, UBrake];

    /// <inheritdoc/>
    public static string Called => "brake bosses";

    /// <summary>The bosses stand below the rim, nearer the axle.</summary>
    public bool IsBelowRim => BeadSeatMillimetres > 0;

    /// <summary>The bead seat that the place was made for, whole millimetres; 0 where none is known.</summary>
    public int BeadSeatMillimetres { get; }

    /// <summary>Middle of the boss to the middle of the axle, the least that is printed; null where none is known.</summary>
    public Length? ToAxle => _leastToAxle == 0 ? null : Length.FromMillimeters(_leastToAxle / 10d);

    /// <summary>Boss to boss, nominal; null where none is known.</summary>
    public Length? Spacing => IsBelowRim ? Length.FromMillimeters(80) : null;

    /// <summary>Boss to boss, the least of what is usual (75 mm; single frames measured 73); null where none is known.</summary>
    public Length? LeastUsualSpacing => IsBelowRim ? Length.FromMillimeters(75) : null;

    /// <summary>Boss to boss, the most of what is usual; null where none is known.</summary>
    public Length? MostUsualSpacing => IsBelowRim ? Length.FromMillimeters(85) : null;

    /// <summary>Where cantilever bosses stand for a bead seat: 25 to 28 mm inside its radius. A rule drawn from the three places that are published.</summary>
    /// <param name="beadSeatMillimetres">Diameter of the bead seat, 300 to 700 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static LengthRange ToAxleFor(int beadSeatMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(beadSeatMillimetres, 300);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(beadSeatMillimetres, 700);
        return new((beadSeatMillimetres / 2d) - 28, (beadSeatMillimetres / 2d) - 25);
    }

    /// <summary>The places that readings can be. The distance to the axle decides; the spacing is the same for all cantilever bosses.</summary>
    /// <param name="bossToAxle">Middle of a boss to the middle of the axle.</param>
    /// <param name="spacing">Middle to middle of the two bosses.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    public static Identification<BrakeBoss> Identify(MeasuredLength? bossToAxle = null, MeasuredLength? spacing = null) => BrakeBossMeasures.Table.Identify(bossToAxle, spacing);

    /// <inheritdoc/>
    public static BrakeBoss OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "cantilever" alone is three places.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<BrakeBoss> Read(ReadOnlySpan<char> text)
    {
        string word = Trim(text) is { Length: < 40 } trimmed ? trimmed.ToString().ToUpperInvariant().Replace('-', ' ').Replace(" BOSSES", "", StringComparison.Ordinal) : "";
        return word is "CANTI" or "CANTILEVER" or "DIRECT PULL" or "V BRAKE"
            ? TextReading<BrakeBoss>.Several([Cantilever622, Cantilever584, Cantilever559], "say the bead seat that the frame is made for")
            : ByName(text) is { Values.IsEmpty: false } read ? read : ByName(word);
    }

    private static class BrakeBossMeasures
    {
        public static IdentificationTable<BrakeBoss> Table { get; } = new(
            [
                new("boss to axle", "middle of a boss to the middle of the axle, wheel in place"),
                new("boss spacing", "middle to middle of the two bosses"),
            ],
            [
                Row(Cantilever622, "below the rim"), Row(Cantilever584, "below the rim"), Row(Cantilever559, "below the rim"),
                new(UBrake, [null, null], "above the rim"),
            ],
            boss => boss.FitKey);

        /// <summary>Single frames measured 73 between the bosses.</summary>
        private static DimensionRow<BrakeBoss> Row(BrakeBoss boss, string tellsApart) => new(boss, [(boss._leastToAxle / 10m, boss._mostToAxle / 10m), (73m, 85m)], tellsApart);
    }
}
