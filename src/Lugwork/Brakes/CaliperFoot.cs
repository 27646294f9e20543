using System.Collections.Immutable;

namespace Lugwork.Brakes;

/// <summary>How a disc caliper is held. Closed set, identity equality.</summary>
public sealed class CaliperFoot : Standard<CaliperFoot>, IInterfaceValue<CaliperFoot>
{
    private CaliperFoot(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Post mount, holes 74 mm apart: nearly every caliper for posts and, on an adapter, for IS tabs.</summary>
    public static CaliperFoot Post { get; } = new(1, "post", "post mount caliper", Sources.MountTechInfo, "PM", "post mount");

    /// <summary>Flat mount.</summary>
    public static CaliperFoot Flat { get; } = new(2, "flat", "flat mount caliper", Sources.FlatMountProblem, "FM", "flat mount");

    /// <summary>Made for International Standard tabs without an adapter; old.</summary>
    public static CaliperFoot Tabs { get; } = new(3, "IS", "IS caliper", Sources.MountForum, "international standard");

    /// <summary>Every kind.</summary>
    public static ImmutableArray<CaliperFoot> All { get; } = [Post, Flat, Tabs];

    /// <inheritdoc/>
    public static string Called => "caliper mounting";

    /// <inheritdoc/>
    public static CaliperFoot OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static Reading<CaliperFoot> Read(ReadOnlySpan<char> text) => ByName(text);
}
