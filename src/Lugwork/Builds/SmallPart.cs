using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A part that the build needs beside its main parts, and that it does not have yet.</summary>
/// <param name="Id">Permanent id, by which the build says that it is there: "front-rotor-bolts"; of what a joint asks for, joint and row: "rear-wheel-in-frame:end-caps".</param>
/// <param name="What">What to buy, as closely as the parts say.</param>
/// <param name="Because">What asks for it.</param>
/// <param name="Slot">The slot in which it may be put with its own interfaces; null where there is none.</param>
/// <param name="Sources">What it rests on.</param>
public sealed record SmallPart(string Id, string What, string Because, Slot? Slot, ImmutableArray<Source> Sources)
{
    /// <summary>"six rotor bolts (front rotor on a six-bolt hub)".</summary>
    public override string ToString() => $"{What} ({Because})";
}
