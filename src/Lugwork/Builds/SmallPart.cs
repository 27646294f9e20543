using System.Collections.Immutable;

namespace Lugwork;

/// <summary>A part that the build needs beside its main parts, and that it does not have yet.</summary>
public sealed class SmallPart
{
    internal SmallPart(string id, string what, string because, Slot? slot, ImmutableArray<Source> sources)
    {
        Id = id;
        What = what;
        Because = because;
        Slot = slot;
        Sources = sources;
    }

    /// <summary>Permanent id, by which the build says that it is there: "front-rotor-bolts"; of what a joint asks for, joint and row: "rear-wheel-in-frame:end-caps".</summary>
    public string Id { get; internal init; }

    /// <summary>What to buy, as closely as the parts say.</summary>
    public string What { get; internal init; }

    /// <summary>What asks for it.</summary>
    public string Because { get; internal init; }

    /// <summary>The slot in which it may be put with its own interfaces; null where there is none.</summary>
    public Slot? Slot { get; internal init; }

    /// <summary>What it rests on.</summary>
    public ImmutableArray<Source> Sources { get; internal init; }

    /// <summary>"six rotor bolts (front rotor on a six-bolt hub)".</summary>
    public override string ToString() => $"{What} ({Because})";
}
