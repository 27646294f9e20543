using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;

namespace Lugwork;

/// <summary>A place on the bicycle for one part. Closed set, identity equality. Its text, in JSON too, is its key.</summary>
[JsonConverter(typeof(SlotJsonConverter))]
public sealed class Slot : ISpanParsable<Slot>
{
    private Slot(int number, string key, string name, bool optional = false)
    {
        Number = number;
        Key = key;
        Name = name;
        IsOptional = optional;
    }

    /// <summary>The frame.</summary>
    public static Slot Frame { get; } = new(0, "frame", "frame");

    /// <summary>The fork.</summary>
    public static Slot Fork { get; } = new(1, "fork", "fork");

    /// <summary>The front wheel: hub and rim.</summary>
    public static Slot FrontWheel { get; } = new(2, "frontWheel", "front wheel");

    /// <summary>The rear wheel: hub, rim and freehub body.</summary>
    public static Slot RearWheel { get; } = new(3, "rearWheel", "rear wheel");

    /// <summary>The front tyre.</summary>
    public static Slot FrontTyre { get; } = new(4, "frontTyre", "front tyre");

    /// <summary>The rear tyre.</summary>
    public static Slot RearTyre { get; } = new(5, "rearTyre", "rear tyre");

    /// <summary>The cassette.</summary>
    public static Slot Cassette { get; } = new(6, "cassette", "cassette");

    /// <summary>The front disc rotor.</summary>
    public static Slot FrontRotor { get; } = new(7, "frontRotor", "front rotor");

    /// <summary>The rear disc rotor.</summary>
    public static Slot RearRotor { get; } = new(8, "rearRotor", "rear rotor");

    /// <summary>The front disc caliper.</summary>
    public static Slot FrontBrake { get; } = new(9, "frontCaliper", "front brake caliper");

    /// <summary>The rear disc caliper.</summary>
    public static Slot RearBrake { get; } = new(10, "rearCaliper", "rear brake caliper");

    /// <summary>The seatpost.</summary>
    public static Slot Seatpost { get; } = new(11, "seatpost", "seatpost");

    /// <summary>The front thru-axle.</summary>
    public static Slot FrontAxle { get; } = new(12, "frontThruAxle", "front thru-axle");

    /// <summary>The rear thru-axle.</summary>
    public static Slot RearAxle { get; } = new(13, "rearThruAxle", "rear thru-axle");

    /// <summary>The headset, both halves.</summary>
    public static Slot Headset { get; } = new(14, "headset", "headset");

    /// <summary>The stem.</summary>
    public static Slot Stem { get; } = new(15, "stem", "stem");

    /// <summary>The handlebar.</summary>
    public static Slot Handlebar { get; } = new(16, "handlebar", "handlebar");

    /// <summary>The collar round the seat tube.</summary>
    public static Slot SeatClamp { get; } = new(17, "seatClamp", "seat clamp");

    /// <summary>The saddle.</summary>
    public static Slot Saddle { get; } = new(18, "saddle", "saddle");

    /// <summary>The bottom bracket.</summary>
    public static Slot BottomBracket { get; } = new(19, "bottomBracket", "bottom bracket");

    /// <summary>The crankset: arms, spindle and rings.</summary>
    public static Slot Crankset { get; } = new(20, "crankset", "crankset");

    /// <summary>The pedals.</summary>
    public static Slot Pedals { get; } = new(21, "pedals", "pedals");

    /// <summary>The chain.</summary>
    public static Slot Chain { get; } = new(22, "chain", "chain");

    /// <summary>The rear derailleur.</summary>
    public static Slot RearDerailleur { get; } = new(23, "rearDerailleur", "rear derailleur");

    /// <summary>The lever of the front brake.</summary>
    public static Slot FrontLever { get; } = new(24, "frontBrakeLever", "front brake lever");

    /// <summary>The lever of the rear brake.</summary>
    public static Slot RearLever { get; } = new(25, "rearBrakeLever", "rear brake lever");

    /// <summary>The front rim brake.</summary>
    public static Slot FrontRimBrake { get; } = new(26, "frontRimBrake", "front rim brake");

    /// <summary>The rear rim brake.</summary>
    public static Slot RearRimBrake { get; } = new(27, "rearRimBrake", "rear rim brake");

    /// <summary>The nuts of a solid front axle.</summary>
    public static Slot FrontNuts { get; } = new(28, "frontAxleNuts", "front axle nuts", optional: true);

    /// <summary>The nuts of a solid rear axle.</summary>
    public static Slot RearNuts { get; } = new(29, "rearAxleNuts", "rear axle nuts", optional: true);

    /// <summary>The rear shifter.</summary>
    public static Slot Shifter { get; } = new(30, "rearShifter", "rear shifter");

    /// <summary>The front shifter; never required.</summary>
    public static Slot FrontShifter { get; } = new(31, "frontShifter", "front shifter", optional: true);

    /// <summary>The front derailleur; never required.</summary>
    public static Slot FrontDerailleur { get; } = new(32, "frontDerailleur", "front derailleur", optional: true);

    /// <summary>The chain guide; never required.</summary>
    public static Slot ChainGuide { get; } = new(33, "chainGuide", "chain guide", optional: true);

    /// <summary>A ring that is bought apart from the crankset; never required.</summary>
    public static Slot Chainring { get; } = new(34, "chainring", "chainring", optional: true);

    /// <summary>The rear shock.</summary>
    public static Slot Shock { get; } = new(35, "shock", "rear shock");

    /// <summary>The inner tube of the front tyre.</summary>
    public static Slot FrontTube { get; } = new(36, "frontInnerTube", "front inner tube", optional: true);

    /// <summary>The inner tube of the rear tyre.</summary>
    public static Slot RearTube { get; } = new(37, "rearInnerTube", "rear inner tube", optional: true);

    /// <summary>The tubeless valve of the front rim.</summary>
    public static Slot FrontValve { get; } = new(38, "frontTubelessValve", "front tubeless valve", optional: true);

    /// <summary>The tubeless valve of the rear rim.</summary>
    public static Slot RearValve { get; } = new(39, "rearTubelessValve", "rear tubeless valve", optional: true);

    /// <summary>The tape in the front rim.</summary>
    public static Slot FrontRimTape { get; } = new(40, "frontRimTape", "front rim tape", optional: true);

    /// <summary>The tape in the rear rim.</summary>
    public static Slot RearRimTape { get; } = new(41, "rearRimTape", "rear rim tape", optional: true);

    /// <summary>A new bearing for the upper half of the headset.</summary>
    public static Slot UpperBearing { get; } = new(42, "upperBearing", "upper headset bearing", optional: true);

    /// <summary>A new bearing for the lower half of the headset.</summary>
    public static Slot LowerBearing { get; } = new(43, "lowerBearing", "lower headset bearing", optional: true);

    /// <summary>The cover of the headset with its ring and spacers, where it is bought apart.</summary>
    public static Slot HeadsetCover { get; } = new(44, "headsetCover", "headset cover", optional: true);

    /// <summary>What the top cap pulls on.</summary>
    public static Slot Preload { get; } = new(45, "preload", "star nut or expander", optional: true);

    /// <summary>The levers and shifters on the bar.</summary>
    public static Slot Controls { get; } = new(46, "controls", "levers and shifters", optional: true);

    /// <summary>The grips.</summary>
    public static Slot Grips { get; } = new(47, "grips", "grips", optional: true);

    /// <summary>An adapter between shell and bottom bracket.</summary>
    public static Slot ShellAdapter { get; } = new(48, "shellAdapter", "bottom-bracket adapter", optional: true);

    /// <summary>How the seatpost is lowered, where it is a dropper.</summary>
    public static Slot Dropper { get; } = new(49, "dropper", "dropper", optional: true);

    /// <summary>Who rides the bicycle and what it carries; never required, and load and use are judged where it is filled.</summary>
    public static Slot Rider { get; } = new(50, "rider", "rider", optional: true);

    /// <summary>Every slot, in the order of a build sheet.</summary>
    public static ImmutableArray<Slot> All { get; } =
    [
        Frame, Fork, FrontWheel, RearWheel, FrontTyre, RearTyre, Cassette, FrontRotor, RearRotor, FrontBrake, RearBrake, Seatpost,
        FrontAxle, RearAxle, Headset, Stem, Handlebar, SeatClamp, Saddle, BottomBracket, Crankset, Pedals, Chain, RearDerailleur,
        FrontLever, RearLever, FrontRimBrake, RearRimBrake, FrontNuts, RearNuts,
        Shifter, FrontShifter, FrontDerailleur, ChainGuide, Chainring, Shock,
        FrontTube, RearTube, FrontValve, RearValve, FrontRimTape, RearRimTape, UpperBearing,
        LowerBearing, HeadsetCover, Preload, Controls, Grips, ShellAdapter, Dropper, Rider,
    ];

    /// <summary>Property name in a build file: "rearWheel".</summary>
    public string Key { get; }

    /// <summary>Plain name: "rear wheel".</summary>
    public string Name { get; }

    /// <summary>No kind of bicycle requires it.</summary>
    public bool IsOptional { get; }

    internal int Number { get; }

    /// <summary>Finds a slot by its key, case ignored; null where there is none.</summary>
    /// <param name="key">A key such as "rearWheel".</param>
    public static Slot? Find(ReadOnlySpan<char> key)
    {
        foreach (Slot slot in All)
        {
            if (key.Equals(slot.Key, StringComparison.OrdinalIgnoreCase))
            {
                return slot;
            }
        }

        return null;
    }

    /// <summary>Reads a key, case ignored.</summary>
    /// <param name="s">A key such as "rearWheel".</param>
    /// <param name="provider">Not used.</param>
    /// <exception cref="FormatException">There is no such slot.</exception>
    public static Slot Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Find(s) ?? throw new FormatException(NoSlot(s));

    /// <summary>Reads a key, case ignored.</summary>
    /// <param name="s">A key such as "rearWheel".</param>
    /// <param name="provider">Not used.</param>
    /// <exception cref="FormatException">There is no such slot.</exception>
    public static Slot Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return Parse(s.AsSpan(), null);
    }

    /// <summary>Reads a key, case ignored; false where there is no such slot.</summary>
    /// <param name="s">A key such as "rearWheel".</param>
    /// <param name="provider">Not used.</param>
    /// <param name="result">The slot.</param>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, [MaybeNullWhen(false)] out Slot result) => (result = Find(s)) is not null;

    /// <summary>Reads a key, case ignored; false where there is no such slot.</summary>
    /// <param name="s">A key such as "rearWheel".</param>
    /// <param name="provider">Not used.</param>
    /// <param name="result">The slot.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, [MaybeNullWhen(false)] out Slot result) => (result = Find(s)) is not null;

    /// <summary>Reads a key, case ignored; false where there is no such slot.</summary>
    /// <param name="s">A key such as "rearWheel".</param>
    /// <param name="result">The slot.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, [MaybeNullWhen(false)] out Slot result) => (result = Find(s)) is not null;

    /// <summary>The plain name.</summary>
    public override string ToString() => Name;

    internal static string NoSlot(ReadOnlySpan<char> text) => $"'{(text.Length > 60 ? string.Concat(text[..60], "...") : text.ToString())}' is no slot; the slots are {string.Join(", ", All.Select(s => s.Key))}.";
}
