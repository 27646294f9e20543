namespace Lugwork;

/// <summary>Front or rear: the slots of one end, so that a step of both is declared once.</summary>
internal sealed class WheelEnd
{
    private WheelEnd(string name, bool isFront, Slot holder, Slot wheel, Slot tyre, Slot tube, Slot valve, Slot tape, Slot rotor, Slot caliper, Slot rimBrake, Slot lever, Slot axle, Slot nuts)
    {
        (Name, IsFront, Holder, Wheel, Tyre, Tube, Valve, Tape) = (name, isFront, holder, wheel, tyre, tube, valve, tape);
        (Rotor, Caliper, RimBrake, Lever, Axle, Nuts) = (rotor, caliper, rimBrake, lever, axle, nuts);
    }

    public static WheelEnd Front { get; } = new(
        "front", true, Slot.Fork, Slot.FrontWheel, Slot.FrontTyre, Slot.FrontInnerTube, Slot.FrontTubelessValve, Slot.FrontRimTape,
        Slot.FrontRotor, Slot.FrontCaliper, Slot.FrontRimBrake, Slot.FrontBrakeLever, Slot.FrontThruAxle, Slot.FrontAxleNuts);

    public static WheelEnd Rear { get; } = new(
        "rear", false, Slot.Frame, Slot.RearWheel, Slot.RearTyre, Slot.RearInnerTube, Slot.RearTubelessValve, Slot.RearRimTape,
        Slot.RearRotor, Slot.RearCaliper, Slot.RearRimBrake, Slot.RearBrakeLever, Slot.RearThruAxle, Slot.RearAxleNuts);

    public string Name { get; }

    public bool IsFront { get; }

    /// <summary>Fork or frame.</summary>
    public Slot Holder { get; }

    public Slot Wheel { get; }

    public Slot Tyre { get; }

    public Slot Tube { get; }

    public Slot Valve { get; }

    public Slot Tape { get; }

    public Slot Rotor { get; }

    public Slot Caliper { get; }

    public Slot RimBrake { get; }

    public Slot Lever { get; }

    public Slot Axle { get; }

    public Slot Nuts { get; }
}
