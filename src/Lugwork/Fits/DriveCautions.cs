namespace Lugwork;

/// <summary>Cautions of drivetrain and rear suspension.</summary>
internal static partial class Cautions
{
    public static readonly Caution FixedLockring = new("fixed-lockring", "A fixed sprocket that unscrews leaves the rider without a brake: it needs its own left-hand lockring, tightened fully against it, and a brake on the bicycle.");

    public static readonly Caution LeftHandCone = new("left-hand-cone", "Cone and locknut on the left of a one-piece crank have a left-hand thread: turned the wrong way with force, they strip it, and a cone that comes loose lets the crank wander.");

    public static readonly Caution FreewheelLoad = new("freewheel-load", "Older British and Italian threads exchange with ISO for ordinary use: not on a tandem, nor for a strong rider on an aluminium hub.");

    public static readonly Caution ShiftSetUp = new("shift-set-up", "Lever and derailleur are set up on the stand: every gear, both ways, under load, with the limit screws set first. A derailleur that goes over the end runs into the spokes.");

    public static readonly Caution RollOut = new("roll-out", "At the start the bicycle is rolled out: a new tyre, another one or more pressure rolls further than the sum. The governing body's text in force comes first.");

    public static readonly Caution ChainWorn = new("chain-worn", "A worn chain wears rings and sprockets with it, and a new one may skip on them under load: try every sprocket on the stand and at walking pace before riding.");

    public static readonly Caution RingRoom = new("ring-room", "A ring or chain that meets the chainstay cuts into it. The frame maker's figure comes first; leave room for the chain and for the frame to flex.");

    public static readonly Caution GuidePlate = new("guide-plate", "A plate under the cup moves the crank outward unless it takes the place of a spacer: see that the cup has all its thread and the chainline is right.");
}
