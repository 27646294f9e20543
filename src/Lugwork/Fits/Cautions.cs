namespace Lugwork;

/// <summary>The cautions that verdicts carry. Makers' figures, local codes and licensed practice come first.</summary>
internal static class Cautions
{
    public static Caution NeverReamToSuit { get; } = new("never-ream-to-suit", "Never ream a seat tube or turn down a post to suit: the wall carries the load.");

    public static Caution NeverSpread { get; } = new("never-spread", "Never spread an aluminium, carbon or titanium frame; only a steel frame can be cold-set, by a shop that re-aligns the ends.");

    public static Caution Insertion { get; } = new("insertion", "Put the post in to its own mark and to the frame maker's figure, whichever is deeper; too little breaks post or frame.");

    public static Caution Rotor { get; } = new("rotor-limit", "The frame or fork maker's largest rotor is a limit whatever the adapter sum says; a missing figure is unknown, not unlimited.");

    public static Caution BrakeWork { get; } = new("brake-work", "Brake work: follow the brake maker's bolts and torques, and have it checked by a shop if in doubt.");

    public static Caution Hookless { get; } = new("hookless", "Hookless rims take only tyres that their maker allows, at 5 bar or the lowest limit of tyre and rim; the maker's minimum width comes first.");

    public static Caution WideTyre { get; } = new("wide-tyre", "The tyre is more than twice as wide as the rim is inside: it squirms at low pressure; stay near the higher pressures both makers allow.");

    public static Caution BeadSeat { get; } = new("bead-seat", "A tyre of another bead seat may slip on and still blow off; the second ISO number must be the rim's.");

    public static Caution Axle { get; } = new("axle", "A wheel that is not held by its axle comes out. Match axle diameter, thread and length to the frame maker's figures.");

    public static Caution Stopgap { get; } = new("stopgap", "A very thin shim creeps and marks the post; use it only until the right post is there.");
}
