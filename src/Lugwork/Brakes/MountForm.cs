namespace Lugwork.Brakes;

/// <summary>What of a frame or fork a disc caliper is bolted to.</summary>
public enum MountForm
{
    /// <summary>Flat tabs with plain holes; the bolts run parallel to the axle.</summary>
    Tabs = 0,

    /// <summary>Two threaded posts; the bolts run in the plane of the rotor.</summary>
    Posts,

    /// <summary>A flat face of the stay or the fork leg; at a fork always with a plate between.</summary>
    Flat,
}
