using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>How a wheel stands in a frame or fork: width over locknuts or end caps, axle, and how it is held. Closed set, identity equality.</summary>
/// <remarks>Two of one width need not be the same: rotor place, flanges and ends separate them. A measured inner gap is no O.L.D.: recessed thru-axle ends add 3.5 mm a side.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<HubStandard>))]
[TypeConverter(typeof(InterfaceTypeConverter<HubStandard>))]
public sealed class HubStandard : Standard<HubStandard>, IInterfaceValue<HubStandard>
{
    private readonly int _old;
    private readonly int _gap;

    private HubStandard(int code, string key, string name, bool isRear, int old, int gap, ImmutableArray<int> axles, string needs, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        IsRear = isRear;
        _old = old;
        _gap = gap;
        Axles = axles;
        Needs = needs;
    }

    /// <summary>Every standard, front before rear, narrow before wide.</summary>
    public static ImmutableArray<HubStandard> All { get; } =
    [
        new(1, "F070", "9 x 70, nutted/QR", false, 70000, 70000, [9000], "", Sources.TrialsHubs),
        new(2, "F074", "9 x 74, nutted/QR", false, 74000, 74000, [9000], "", Sources.Memory),
        new(3, "F091-096", "8 (5/16 in) x 93, nutted", false, 93000, 93000, [7940], "", Sources.Memory),
        new(4, "F100-QR9", "100 mm QR", false, 100000, 100000, [9000], "", Sources.AxleGuide, "100 QR", "QR 100"),
        new(5, "F100-TB9", "9 x 100, 9 mm thru-bolt in open QR slots", false, 100000, 100000, [9000], "", Sources.AxleStandardsBlog, "9 mm thru-bolt"),
        new(6, "F100-N", "9, 5/16 in or 3/8 in x 100, nutted", false, 100000, 100000, [9000, 7940, 9530], "", Sources.AxleNut),
        new(47, "F100-N9", "9 x 100, nutted", false, 100000, 100000, [9000], "", Sources.AxleNut),
        new(48, "F100-N-5/16", "5/16 in x 100, nutted", false, 100000, 100000, [7940], "", Sources.AxleNut),
        new(49, "F100-N-3/8", "3/8 in x 100, nutted", false, 100000, 100000, [9530], "", Sources.AxleNut),
        new(7, "F100-12", "12x100 thru-axle", false, 100000, 0, [12000], "", Sources.HubStandards),
        new(8, "F100-15", "15x100 thru-axle", false, 100000, 0, [15000], "", Sources.AxleGuide),
        new(9, "F110-15B", "15x110 thru-axle, Boost", false, 110000, 0, [15000], "", Sources.AxleGuide, "Boost 110", "110 Boost", "Boost 15x110", "15x110 Boost"),
        new(10, "F110-15B-31", "15x110 thru-axle, Boost, 31 mm end caps", false, 110000, 0, [15000], "31", Sources.EndCapPage),
        new(11, "F110-20", "20x110 thru-axle, pre-Boost", false, 110000, 0, [20000], "", Sources.AxleGuide, "20x110 pre-Boost"),
        new(12, "F110-20B", "20x110 thru-axle, Boost", false, 110000, 0, [20000], "", Sources.Axle20Article, "20x110 Boost"),
        new(13, "F110-12RB", "12x110 thru-axle, road Boost", false, 110000, 0, [12000], "road", Sources.WheelBuilderAxles),
        new(14, "F135-QR", "9 or 10 x 135, QR/nutted", false, 135000, 135000, [9000, 10000], "", Sources.Memory),
        new(15, "F142-15", "15x142 thru-axle", false, 142000, 0, [15000], "", Sources.Memory),
        new(16, "F150-15", "15x150 thru-axle", false, 150000, 0, [15000], "", Sources.Memory),
        new(17, "F-OWN", "one-sided or maker-own fork end", false, 0, 0, [], "", Sources.Memory, "maker-own fork end"),
        new(18, "R110-3/8", "3/8 in x 110, nutted", true, 110000, 110000, [9530], "", Sources.GearHubChainline),
        new(44, "R110-14", "14 x 110, nutted", true, 110000, 110000, [14000], "", Sources.GearHubChainline),
        new(19, "R114", "9.5 (3/8 in) x 114, nutted", true, 114000, 114000, [9530], "", Sources.GearHubChainline),
        new(20, "R116", "10 x 116, bolt", true, 116000, 116000, [10000], "", Sources.TrialsHubs),
        new(21, "R120", "10 x 120, nutted/QR", true, 120000, 120000, [10000], "", Sources.WheelAdvice, "120 track"),
        new(46, "R120-3/8", "3/8 in x 120, nutted", true, 120000, 120000, [9530], "", Sources.WheelAdvice),
        new(22, "R126", "126 mm QR", true, 126000, 126000, [10000], "", Sources.WheelAdvice, "126 QR"),
        new(23, "R129", "10 x 129, bolt", true, 129000, 129000, [10000], "", Sources.TrialsHubs),
        new(24, "R130", "130 mm QR", true, 130000, 130000, [10000], "", Sources.WheelAdvice, "130 QR", "QR 130"),
        new(25, "R132.5", "132.5 mm QR", true, 132500, 132500, [10000], "", Sources.CassetteFaq),
        new(26, "R135-QR", "135 mm QR", true, 135000, 135000, [10000], "", Sources.AxleGuide, "135 QR", "QR 135"),
        new(27, "R135-10", "10 x 135, 10 mm thru-bolt in open slots", true, 135000, 135000, [10000], "", Sources.AxleStandardsBlog, "10 mm thru-bolt"),
        new(28, "R135-12", "12x135 thru-axle or bolt, no recess", true, 135000, 135000, [12000], "", Sources.AxleGuide),
        new(29, "R142-12", "12x142 thru-axle", true, 142000, 135000, [12000], "", Sources.Boost148Explained),
        new(30, "R140-145t", "10 x 145, QR/bolt", true, 145000, 145000, [10000], "tandem", Sources.Memory, "145 tandem"),
        new(31, "R145-flex", "12x145 thru-axle, frame designed to flex +/-3 mm", true, 145000, 138000, [12000], "flex", Sources.BoostBlog, "145 flex"),
        new(32, "R141-QR", "141 mm QR", true, 141000, 141000, [10000], "", Sources.WheelBuilderAxles, "141 QR", "QR 141"),
        new(33, "R148-12", "12x148 thru-axle, Boost", true, 148000, 141000, [12000], "", Sources.SixMillimetre, "Boost 148", "148 Boost"),
        new(34, "R148-12RB", "12x148 thru-axle, road Boost", true, 148000, 141000, [12000], "road", Sources.WheelBuilderAxles),
        new(35, "R150-12", "12 x 150, bolt or thru-axle, no recess", true, 150000, 150000, [12000], "", Sources.AxleGuide),
        new(45, "R150-10", "10 x 150, bolt, no recess", true, 150000, 150000, [10000], "", Sources.AxleGuide),
        new(36, "R157-12DH", "12x157 thru-axle, narrow flange", true, 157000, 150000, [12000], "", Sources.AxleWidths157, "157 DH", "12x157 DH"),
        new(37, "R157-12W", "12x157 thru-axle, wide-flange", true, 157000, 150000, [12000], "", Sources.SuperBoostPress, "Super Boost", "157 wide", "157 trail"),
        new(38, "R160t", "10 x 160, QR/bolt", true, 160000, 160000, [10000], "tandem", Sources.Memory, "160 tandem"),
        new(39, "R135-OFF", "10 x 135, QR, rear end offset 17.5 mm to the drive side", true, 135000, 135000, [10000], "offset", Sources.FatRearEnds, "135 offset"),
        new(40, "R170-QR", "170 mm QR", true, 170000, 170000, [10000], "", Sources.FatRearEnds, "170 QR"),
        new(41, "R177-12", "12x177 thru-axle", true, 177000, 170000, [12000], "", Sources.SprocketCarrier),
        new(42, "R190-QR", "190 mm QR", true, 190000, 190000, [10000], "", Sources.FatHubSpacing, "190 QR"),
        new(43, "R197-12", "12x197 thru-axle", true, 197000, 190000, [12000], "", Sources.SprocketCarrier),
    ];

    /// <inheritdoc/>
    public static string Called => "hub standard";

    /// <summary>A rear hub or rear end; otherwise a front one.</summary>
    public bool IsRear { get; }

    /// <summary>Over-locknut dimension (O.L.D.), with end caps where it has them; zero where the fork end is the maker's own.</summary>
    public Length OverLocknut => Length.FromMillimeters(_old / 1000d);

    /// <summary>Gap between the inner faces of the dropouts; zero where no source gives it.</summary>
    public Length InnerGap => Length.FromMillimeters(_gap / 1000d);

    /// <summary>Thickness of the axles that it comes with; empty where the fork end is the maker's own. 3/8 and 5/16 in are rounded to a hundredth of a millimetre.</summary>
    public ImmutableArray<Length> AxleDiameters
    {
        get
        {
            ImmutableArray<Length>.Builder diameters = ImmutableArray.CreateBuilder<Length>(Axles.Length);
            foreach (int axle in Axles)
            {
                diameters.Add(Length.FromMillimeters(axle / 1000d));
            }

            return diameters.MoveToImmutable();
        }
    }

    /// <summary>How deep each end stands in its shelf, half of what the O.L.D. exceeds the inner gap; null where no source gives the gap.</summary>
    public Length? RecessPerSide => _gap == 0 ? null : Length.FromMillimeters((_old - _gap) / 2000d);

    /// <summary>What holds it; more than one where the trade sells several.</summary>
    public ImmutableArray<HubAttachment> Attachments => HubDetails.Of(this).Held;

    /// <summary>The shell: hubs of one family differ by their ends only. Null where it is the maker's own, uncertain, or a frame that takes two.</summary>
    public HubFamily? Family => HubDetails.Of(this).Family is { Length: > 0 } key ? HubFamily.Named(key) : null;

    /// <summary>Where its rotor stands: several where the hub alone does not say, none where no source does.</summary>
    public ImmutableArray<RotorPlace> RotorPlaces => HubDetails.Of(this).RotorAt;

    /// <summary>How much further out the drive side stands than on a 135 mm hub, half the change of the inner gap; null for front hubs.</summary>
    public Length? DriveSideShift => HubDetails.Of(this).Shift is { } shift ? Length.FromMillimeters(shift / 1000d) : null;

    /// <summary>Outside of the end caps that go into the recess, 19, 21 or 31 mm; null where no source says.</summary>
    public Length? EndCap => HubDetails.Of(this) is { Ends: > 0 } details ? Length.FromMillimeters(details.Ends / 1000d) : null;

    /// <summary>Where the size of the end caps comes from; null where none does. Derived: carried over from 142 and 157 mm hubs.</summary>
    public Source? EndCapSource => HubDetails.Of(this).EndsSource;

    /// <summary>What measured dimensions of a hub, frame or fork end can be.</summary>
    /// <param name="overLocknut">Over the locknuts or end caps of the wheel.</param>
    /// <param name="innerGap">Between the inner faces of the ends; a recessed thru-axle end measures 7 mm less than its O.L.D.</param>
    /// <param name="axle">Thickness of the axle or its bore; the thread of a 12 mm axle measures 11.85 to 11.95 mm.</param>
    /// <param name="endCap">Outside of the end that goes into the recess.</param>
    /// <param name="isRear">Rear only, front only, or both where it is left out.</param>
    /// <returns>The candidates, nearest first. A maker's own fork end is never among them: the fork shows it.</returns>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is the default.</exception>
    public static Identification<HubStandard> Identify(MeasuredLength? overLocknut = null, MeasuredLength? innerGap = null, MeasuredLength? axle = null, MeasuredLength? endCap = null, bool? isRear = null)
    {
        Identification<HubStandard> found = HubIdentification.Of(isRear).Identify(overLocknut, innerGap, axle, endCap);

        // A standard with several axles has a row for each: the nearest one counts.
        ImmutableArray<Identified<HubStandard>>.Builder once = ImmutableArray.CreateBuilder<Identified<HubStandard>>();
        HashSet<HubStandard> seen = [];
        foreach (Identified<HubStandard> candidate in found.Candidates)
        {
            if (seen.Add(candidate.Value))
            {
                once.Add(candidate);
            }
        }

        return new(once.ToImmutable(), once.Count > 1 ? found.Next : "");
    }

    /// <summary>The standards that this one is the common name of; empty for nearly all.</summary>
    internal ImmutableArray<HubStandard> Sizes => FitKey == "F100-N" ? [Named("F100-N9"), Named("F100-N-5/16"), Named("F100-N-3/8")] : [];

    /// <summary>One of several standards that go by one name where nobody states the axle.</summary>
    internal bool IsASizeOfAName => FitKey.StartsWith("F100-N", StringComparison.Ordinal) && FitKey != "F100-N";

    internal int OldMicrometres => _old;

    internal int GapMicrometres => _gap;

    internal ImmutableArray<int> Axles { get; }

    /// <summary>Held, or maybe held, by a thru-axle of 12, 15 or 20 mm; a maker's own end may be.</summary>
    internal bool TakesThruAxle
    {
        get
        {
            foreach (int axle in Axles)
            {
                if (axle is 12_000 or 15_000 or 20_000)
                {
                    return true;
                }
            }

            return Axles.IsEmpty;
        }
    }

    /// <summary>A word that must stand in the text before this row is read from it.</summary>
    private string Needs { get; }

    internal static HubStandard Named(string key)
    {
        foreach (HubStandard standard in All)
        {
            if (standard.FitKey == key)
            {
                return standard;
            }
        }

        throw new ArgumentException($"no hub standard {key}", nameof(key));
    }

    /// <inheritdoc/>
    public static HubStandard OfFitCode(long code) => ByCode(code);

    /// <summary>The standards that a measured width can mean: their O.L.D. or their inner gap, since a recessed end measures 7 mm less than its O.L.D.</summary>
    /// <param name="millimetres">What was measured over the locknuts or between the dropouts, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<HubStandard> WithinError(decimal millimetres, decimal error)
    {
        bool Near(int micrometres) => micrometres > 0 && Math.Abs((micrometres / 1000m) - millimetres) <= error;
        return [.. All.Where(h => Near(h._old) || Near(h._gap))];
    }

    /// <summary>Reads a key, a trade name, or axle and width in either order ("12x142", "142 x 12 mm", "130"). Sizes that several standards share give them all.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<HubStandard> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        return Find(trimmed) is { } named ? TextReading<HubStandard>.Of(named) : HubText.Read(trimmed);
    }

    internal bool Answers(IReadOnlyList<string> words)
    {
        foreach (string word in words)
        {
            bool says = word switch
            {
                "QR" or "QUICKRELEASE" or "QUICK" or "RELEASE" or "SKEWER" => TradeName.Contains("QR", StringComparison.Ordinal),
                "THRU" or "AXLE" or "TA" or "THROUGH" => TradeName.Contains("thru-axle", StringComparison.Ordinal),
                "BOOST" => TradeName.Contains("Boost", StringComparison.Ordinal) && !TradeName.Contains("pre-Boost", StringComparison.Ordinal) || this == Named("R141-QR"),
                "NUTTED" or "SOLID" or "NUTS" when !IsRear => TradeName.Contains("nutted", StringComparison.Ordinal),
                "NUTTED" or "SOLID" or "NUTS" or "BOLT" or "BOLTED" or "BOLT-ON" => TradeName.Contains("nutted", StringComparison.Ordinal)
                    || TradeName.Contains("bolt", StringComparison.Ordinal) || TradeName.Contains("QR", StringComparison.Ordinal),
                "FRONT" => !IsRear,
                "REAR" => IsRear,
                "DH" => this == Named("R157-12DH") || this == Named("R150-12"),
                "WIDE" => this == Named("R157-12W"),
                _ => string.Equals(word, Needs, StringComparison.OrdinalIgnoreCase),
            };
            if (!says)
            {
                return false;
            }
        }

        return Needs.Length == 0 || words.Contains(Needs, StringComparer.OrdinalIgnoreCase);
    }
}
