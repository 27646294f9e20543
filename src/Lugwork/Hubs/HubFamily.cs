using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Hubs;

/// <summary>Hubs of one shell: flanges, cassette and rotor stand alike, only the ends differ. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<HubFamily>))]
[TypeConverter(typeof(InterfaceTypeConverter<HubFamily>))]
public sealed class HubFamily : Standard<HubFamily>, IInterfaceValue<HubFamily>
{
    private HubFamily(int code, string key, string name, Source source, string converts = "", string never = "", params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        ConvertedBy = converts;
        NeverBecomes = never;
    }

    /// <summary>Every family, front before rear, narrow before wide.</summary>
    public static ImmutableArray<HubFamily> All { get; } =
    [
        new(1, "F70", "front 70 mm shell", Sources.TrialsHubs),
        new(2, "F74", "front 74 mm shell", Sources.Memory),
        new(3, "F9x", "front 90 to 96 mm shell", Sources.Memory),
        new(4, "F100", "front 100 mm shell", Sources.AxleGuide, "end caps or axle sleeves that the hub maker sells, where the bore passes the axle", "110 mm: 5 mm a side and 5 mm at the rotor are a spacer kit, not end caps"),
        new(5, "F100N", "front 100 mm shell, nutted", Sources.AxleNut),
        new(6, "F110B", "front Boost shell", Sources.Axle20Article, "end caps; a 20 mm axle only where the bore passes it", "20x110 of before Boost: of one width, but the rotor stands 5 mm off"),
        new(7, "F110-20", "front 20x110 shell of before Boost", Sources.Axle20Article),
        new(8, "F110RB", "front road Boost shell", Sources.WheelBuilderAxles),
        new(9, "F135fat", "fat front 135 mm shell", Sources.Memory),
        new(10, "F142fat", "fat front 142 mm shell", Sources.Memory),
        new(11, "F150fat", "fat front 150 mm shell", Sources.Memory),
        new(12, "R110", "rear 110 mm shell", Sources.GearHubChainline),
        new(13, "R114", "rear 114 mm shell", Sources.GearHubChainline),
        new(14, "R116", "rear 116 mm shell", Sources.TrialsHubs),
        new(15, "R120", "rear 120 mm shell", Sources.WheelAdvice),
        new(16, "R126", "rear 126 mm shell", Sources.WheelAdvice),
        new(17, "R129", "rear 129 mm shell", Sources.TrialsHubs),
        new(18, "R130", "rear 130 mm shell", Sources.FreehubLengths, "spacers under the locknuts make 126, 130 or 135 mm of a threaded axle; the rim has to be dished again", "any thru-axle"),
        new(19, "R135", "rear 135 mm shell", Sources.Boost148Explained, "end caps, 3.5 mm a side more or less; cassette and rotor stay where they are in the frame", "141 or 148 mm, and 130 mm"),
        new(20, "Rtandem", "tandem shell", Sources.Memory),
        new(21, "R148", "rear 141 and 148 mm shell", Sources.WheelBuilderAxles, "end caps, 3.5 mm a side more or less", "135 or 142 mm: the 3 mm a side are in the shell, so that only spacers for hub and rotor bridge them"),
        new(22, "R150", "rear 150 and 157 mm shell", Sources.AxleWidths157, "end caps, 3.5 mm a side more or less; the chainline stays", "141 or 148 mm"),
        new(23, "R157W", "rear 157 mm shell with wide flanges", Sources.SuperBoostPress, "nothing: it drops into any 157 mm frame of the same depth", "150 mm without end caps made for it"),
        new(24, "R170", "fat rear 170 mm shell", Sources.SprocketCarrier, "end caps", "190 or 197 mm"),
        new(25, "R190", "fat rear 190 mm shell", Sources.SprocketCarrier, "end caps", "170 or 177 mm"),
    ];

    /// <inheritdoc/>
    public static string Called => "hub family";

    /// <summary>What turns one member into another; empty where no source says, or the family has one member.</summary>
    public string ConvertedBy { get; }

    /// <summary>What no change of ends makes of it; empty where no source says.</summary>
    public string NeverBecomes { get; }

    /// <summary>The hub standards of this shell.</summary>
    public ImmutableArray<HubStandard> Members
    {
        get
        {
            ImmutableArray<HubStandard>.Builder members = ImmutableArray.CreateBuilder<HubStandard>();
            foreach (HubStandard standard in HubStandard.All)
            {
                if (standard.Family == this)
                {
                    members.Add(standard);
                }
            }

            return members.ToImmutable();
        }
    }

    internal static HubFamily Named(string key)
    {
        foreach (HubFamily family in All)
        {
            if (family.FitKey == key)
            {
                return family;
            }
        }

        throw new ArgumentException($"no hub family {key}", nameof(key));
    }

    /// <inheritdoc/>
    public static HubFamily OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<HubFamily> Read(ReadOnlySpan<char> text) => ByName(text);
}
