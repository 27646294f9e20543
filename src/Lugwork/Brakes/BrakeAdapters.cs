using System.Collections.Immutable;

namespace Lugwork.Brakes;

/// <summary>Adapters between caliper and mount, made when a rotor first asks for one: most calipers sit without.</summary>
internal static class BrakeAdapters
{
    /// <summary>Adapters that exist, by native rotor: the increments in rotor diameter. Described by increment, never by thickness.</summary>
    internal static readonly (long Native, int[] Increments)[] Posts =
        [(140, [20, 40, 43, 60, 63]), (160, [20, 23, 40, 43, 60, 63]), (180, [20, 23, 40, 43]), (200, [20, 23]), (203, [20])];

    internal static readonly int[] RearTabIncrements = [0, 20, 40, 43, 60, 63, 80];
    internal static readonly int[] FrontTabIncrements = [0, 20, 40, 43, 60, 63];

    internal static readonly ImmutableArray<Bridge> PostAdapters =
        [.. Posts.SelectMany(p => p.Increments.Select(i => Adapter("post", p.Native, i, $"post-mount adapter +{i} mm of rotor (from {p.Native} to {p.Native + i}) with its longer bolts", Sources.AdapterGuide)))];

    internal static readonly ImmutableArray<Bridge> RearTabAdapters =
        [.. RearTabIncrements.Select(i => Adapter("is-rear", 140, i, $"IS rear to post-mount adapter for a {140 + i} mm rotor, with its bolts", Sources.IsAdapters))];

    internal static readonly ImmutableArray<Bridge> FrontTabAdapters =
        [.. FrontTabIncrements.Select(i => Adapter("is-front", 160, i, $"IS front to post-mount adapter for a {160 + i} mm rotor, with its bolts", Sources.IsAdapters))];

    internal static readonly Bridge RearPlate140 = Adapter("flat-rear", 140, 20, "flat-mount plate from 140 to 160 at the rear, with bolts for the stay thickness", Sources.FlatMountBuilder);

    internal static readonly Bridge RearPlate160 = Adapter("flat-rear", 160, 20, "flat-mount plate from 160 to 180 at the rear, with bolts for the stay thickness", Sources.FlatMountBuilder);

    internal static readonly ImmutableArray<Bridge> FlatOnPost =
        [.. Posts.Select(p => Adapter("flat-on-post", p.Native, 20, $"adapter for a flat-mount caliper on a post mount ({p.Native} to {p.Native + 20}); 13 mm must be free below the posts", Sources.FlatOnPost))];

    internal static readonly Bridge ReverseAdapter = Checked("brake-adapter-tabs-on-post-plus-20", CaliperFoot.Tabs.FitCode, BrakeMount.Post160.FitCode, "an old reverse adapter for a caliper with IS tabs on posts, for a rotor 20 mm above the mount's own", BridgeKind.Adapter, Sources.MountForum);

    internal static readonly Bridge PostOnFlat = Checked("brake-adapter-post-on-flat", CaliperFoot.Post.FitCode, BrakeMount.FlatRear140.FitCode, "an adapter for a post-mount caliper on exactly this flat mount: most are for the 140 variant", BridgeKind.Adapter, Sources.FlatMountProblem);

    internal static readonly Bridge DownhillSpacers = Checked("brake-adapter-is-front-downhill", CaliperFoot.Post.FitCode, BrakeMount.InternationalStandardFrontDownhill.FitCode, "5 mm spacers under a usual IS adapter, or the fork maker's own adapter", BridgeKind.Spacers, Sources.MountForum);

    internal static readonly Bridge ShimTo203 = Checked("brake-adapter-post-200-plus-3", 200, 203, "a shim with longer bolts, about 1.5 mm thick, or a part for +3 mm of rotor", BridgeKind.Spacers, Sources.CommonPractice, Sources.Derived);

    /// <summary>All of them.</summary>
    public static ImmutableArray<Bridge> All { get; } =
        [.. PostAdapters, .. RearTabAdapters, .. FrontTabAdapters, RearPlate140, RearPlate160, .. FlatOnPost, ReverseAdapter, PostOnFlat, DownhillSpacers, ShimTo203];

    private static Bridge Checked(string id, long from, long to, string what, BridgeKind kind, params ImmutableArray<Source> sources) => new()
    {
        Id = id,
        Kind = kind,
        Result = Verdict.NeedsMeasuring,
        What = what,
        From = from,
        To = to,
        Caution = Cautions.BrakeWork,
        Sources = sources,
    };

    private static Bridge Adapter(string family, long native, int increment, string what, Source source) => new()
    {
        Id = $"brake-adapter-{family}-{native}-plus-{increment}",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = what,
        From = native,
        To = native + increment,
        Caution = Cautions.BrakeWork,
        Sources = [Sources.Derived, source],
    };
}
