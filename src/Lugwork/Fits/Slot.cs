using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A place on the bicycle for one part. Closed set, identity equality.</summary>
public sealed class Slot
{
    private Slot(int number, string key, string name)
    {
        Number = number;
        Key = key;
        Name = name;
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
    public static Slot FrontBrake { get; } = new(9, "frontBrake", "front brake caliper");

    /// <summary>The rear disc caliper.</summary>
    public static Slot RearBrake { get; } = new(10, "rearBrake", "rear brake caliper");

    /// <summary>The seatpost.</summary>
    public static Slot Seatpost { get; } = new(11, "seatpost", "seatpost");

    /// <summary>The front thru-axle.</summary>
    public static Slot FrontAxle { get; } = new(12, "frontAxle", "front thru-axle");

    /// <summary>The rear thru-axle.</summary>
    public static Slot RearAxle { get; } = new(13, "rearAxle", "rear thru-axle");

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
    public static Slot FrontLever { get; } = new(24, "frontLever", "front brake lever");

    /// <summary>The lever of the rear brake.</summary>
    public static Slot RearLever { get; } = new(25, "rearLever", "rear brake lever");

    /// <summary>The front rim brake.</summary>
    public static Slot FrontRimBrake { get; } = new(26, "frontRimBrake", "front rim brake");

    /// <summary>The rear rim brake.</summary>
    public static Slot RearRimBrake { get; } = new(27, "rearRimBrake", "rear rim brake");

    /// <summary>The nuts of a solid front axle.</summary>
    public static Slot FrontNuts { get; } = new(28, "frontNuts", "front axle nuts");

    /// <summary>The nuts of a solid rear axle.</summary>
    public static Slot RearNuts { get; } = new(29, "rearNuts", "rear axle nuts");
    /// <summary>The rear shifter.</summary>
    public static Slot Shifter { get; } = new(30, "shifter", "rear shifter");
    /// <summary>The front shifter; never required.</summary>
    public static Slot FrontShifter { get; } = new(31, "frontShifter", "front shifter");
    /// <summary>The front derailleur; never required.</summary>
    public static Slot FrontDerailleur { get; } = new(32, "frontDerailleur", "front derailleur");
    /// <summary>The chain guide; never required.</summary>
    public static Slot ChainGuide { get; } = new(33, "chainGuide", "chain guide");
    /// <summary>A ring that is bought apart from the crankset; never required.</summary>
    public static Slot Chainring { get; } = new(34, "chainring", "chainring");
    /// <summary>The rear shock.</summary>
    public static Slot Shock { get; } = new(35, "shock", "rear shock");

    /// <summary>Every slot, in the order of a build sheet.</summary>
    public static ImmutableArray<Slot> All { get; } =
    [
        Frame, Fork, FrontWheel, RearWheel, FrontTyre, RearTyre, Cassette, FrontRotor, RearRotor, FrontBrake, RearBrake, Seatpost,
        FrontAxle, RearAxle, Headset, Stem, Handlebar, SeatClamp, Saddle, BottomBracket, Crankset, Pedals, Chain, RearDerailleur,
        FrontLever, RearLever, FrontRimBrake, RearRimBrake, FrontNuts, RearNuts,
        Shifter, FrontShifter, FrontDerailleur, ChainGuide, Chainring, Shock,
    ];

    /// <summary>Property name in a build file: "rearWheel".</summary>
    public string Key { get; }

    /// <summary>Plain name: "rear wheel".</summary>
    public string Name { get; }

    internal int Number { get; }

    /// <summary>Finds a slot by its key, case ignored; null where there is none.</summary>
    /// <param name="key">A key such as "rearWheel".</param>
    public static Slot? Find(string key)
    {
        foreach (Slot slot in All)
        {
            if (string.Equals(slot.Key, key, StringComparison.OrdinalIgnoreCase))
            {
                return slot;
            }
        }

        return null;
    }

    /// <summary>The plain name.</summary>
    public override string ToString() => Name;
}
