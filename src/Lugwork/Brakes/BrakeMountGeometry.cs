using System.Collections.Immutable;

namespace Lugwork.Brakes;

/// <summary>Dimensions of a mount in hundredths of a millimetre; 0 where none is known.</summary>
internal readonly record struct MountGeometry(MountForm Form, string Bolt, int LeastSpacing, int Spacing, Source SpacingSource)
{
    /// <summary>From the axle to the nearer and the farther hole: a nominal, and for the farther hole the range that was printed.</summary>
    public int NearHole { get; init; }

    public int LeastFarHole { get; init; }

    public int MostFarHole { get; init; }

    /// <summary>Height of the post face above the axle, by the one drawing that was read.</summary>
    public int PostFace { get; init; }

    /// <summary>Inner rotor face to the slot reference of a flat mount.</summary>
    public int RotorToSlot { get; init; }

    /// <summary>The rotor with the mount's own plate; 0 where there is none.</summary>
    public int WithPlate { get; init; }
}

/// <summary>Holes, bolts and places of the mounts, in the order of <see cref="BrakeMount.All"/>.</summary>
internal static class BrakeMountGeometry
{
    /// <summary>
    /// One maker's post-mount drawing was read, and its reader says that the other big maker's differs, not by how much. So a height ranks the
    /// mounts, and never rules out the next one: a rotor step of 20 mm is 8.66 mm of height. Hundredths.
    /// </summary>
    private const int PostFaceStep = 866;

    public static MountGeometry Of(BrakeMount mount) => Rows[(int)mount.FitCode - 1];

    private static readonly ImmutableArray<MountGeometry> Rows =
    [
        new(MountForm.Tabs, "M6", 5100, 5100, Sources.MountTechInfo) { NearHole = 4580, LeastFarHole = 8730, MostFarHole = 8820 },
        new(MountForm.Tabs, "M6", 5100, 5100, Sources.MountTechInfo) { NearHole = 3990, LeastFarHole = 7900, MostFarHole = 7920 },
        new(MountForm.Tabs, "M6", 5100, 5100, Sources.MountForum),
        Post(4724), Post(5590), Post(6456), Post(7322), Post(7452),
        new(MountForm.Posts, "M6x1", 6800, 6800, Sources.MountTechInfo),
        new(MountForm.Tabs, "", 2200, 2200, Sources.MountTechInfo),
        Flat(12.20m, 160), Flat(0, 180), Flat(12.20m, 160), Flat(0, 180),
    ];

    /// <summary>Millimetres: hole spacing, axle to the farther hole, axle to post face.</summary>
    public static IdentificationTable<BrakeMount> Table { get; } = new(
        [
            new("hole spacing", "caliper between the edges of the two holes, plus one hole; of the caliper's holes at a flat mount"),
            new("axle to farther hole", "middle of the axle to the middle of the hole that is farther away"),
            new("axle to post face", "height of the face of the posts above the axle, square to the face"),
        ],
        Measured(),
        mount => mount.FitKey);

    public static Identification<BrakeMount> Identify(MeasuredLength? holeSpacing, MeasuredLength? axleToFarHole, MeasuredLength? axleToPostFace)
    {
        Identification<BrakeMount> found = Table.Identify(holeSpacing, axleToFarHole, axleToPostFace);
        return axleToPostFace is { } height
            ? new([.. found.Candidates.OrderBy(c => HalfStepsOff(c.Value, height))], found.Next)
            : found;
    }

    /// <summary>Whole half steps between a height and the drawing; what has no posts comes behind what has.</summary>
    private static int HalfStepsOff(BrakeMount mount, MeasuredLength height) =>
        Of(mount).PostFace is > 0 and int face ? (int)(Math.Abs((height.Millimetres * 100) - face) / (PostFaceStep / 2)) : int.MaxValue;

    private static ImmutableArray<DimensionRow<BrakeMount>> Measured()
    {
        DimensionRow<BrakeMount>[] rows = new DimensionRow<BrakeMount>[BrakeMount.All.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            BrakeMount mount = BrakeMount.All[i];
            MountGeometry g = Rows[i];

            // One page measured the old posts at 69.
            int most = mount == BrakeMount.Post68 ? 6900 : g.Spacing;
            rows[i] = new(
                mount,
                [
                    (g.LeastSpacing / 100m, most / 100m),
                    g.LeastFarHole == 0 ? null : (g.LeastFarHole / 100m, g.MostFarHole / 100m),
                    g.PostFace == 0 ? null : ((g.PostFace - PostFaceStep) / 100m, (g.PostFace + PostFaceStep) / 100m),
                ],
                TellsApart(mount));
        }

        return ImmutableArray.Create(rows);
    }

    private static string TellsApart(BrakeMount mount) =>
        mount == BrakeMount.InternationalStandardFront ? "on a fork; the pair of holes sits about 10 mm further out than on a frame"
        : mount == BrakeMount.InternationalStandardRear ? "on a frame, inside face flush with the inside of the dropout"
        : mount == BrakeMount.InternationalStandardFrontDownhill ? "tabs 5 mm further out, on forks with a 20 mm axle"
        : mount == BrakeMount.Post200 || mount == BrakeMount.Post203 ? "200 and 203 differ by 1.5 mm of radius: read it off the fork maker's sheet"
        : mount.IsPost ? "posts; the height of their face tells the rotor by one maker's drawing only: the rotor printed on the frame or fork decides"
        : mount == BrakeMount.Post68 ? "posts of before 2000; no caliper of today goes on"
        : mount == BrakeMount.Tab22 ? "two holes close together, about 1997 to 2000"
        : mount == BrakeMount.FlatFront140 ? "on a fork; its plate gives 140 or 160"
        : mount == BrakeMount.FlatFront160 ? "on a fork, made 20 mm further out; its plate gives 160 or 180"
        : mount == BrakeMount.FlatRear140 ? "on a frame; 140 without a plate"
        : "on a frame; 160 without a plate, never 140";

    private static MountGeometry Post(int face) => new(MountForm.Posts, "M6x1", 7400, 7420, Sources.FlatMountBuilder) { PostFace = face };

    private static MountGeometry Flat(decimal rotorToSlot, int withPlate) =>
        new(MountForm.Flat, "M5", 3400, 3400, Sources.Memory) { RotorToSlot = (int)(rotorToSlot * 100), WithPlate = withPlate };
}
