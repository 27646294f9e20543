using Lugwork.Brakes;

namespace Lugwork.PublishedTables;

/// <summary>Mounts and calipers told by published measurements, each with its source.</summary>
public sealed class BrakeMountsMeasuredChecks
{
    private const string MountInfo = "Disc Brake Mounting Standards; Bikeman tech info";
    private const string MountAnswer = "Answer on IS and post mount; Bicycles Stack Exchange copy";
    private const string OldMounts = "IS and Postmount explained; MTB-News forum";
    private const string BrazeOns = "Braze-on distances index; bikebuilding.blogspot.com";
    private const string AdaptersPage = "Rubber Side Down: Disc Brake Adapters; Art's Cyclery";
    private const string Drawing = "The problem with flat mount; peterverdone.com";
    private const string FlatBrakes = "The problem with flat mount brakes; michaelhanslip.com";

    [Theory]
    [InlineData(MountInfo, 51, "IS-front, IS-rear, IS-front-DH")]
    [InlineData(AdaptersPage, 51, "IS-front, IS-rear, IS-front-DH")]
    [InlineData(MountInfo, 74, "PM-140, PM-160, PM-180, PM-200, PM-203")]
    [InlineData(MountAnswer, 74, "PM-140, PM-160, PM-180, PM-200, PM-203")]
    [InlineData(Drawing, 74.2, "PM-140, PM-160, PM-180, PM-200, PM-203")]
    [InlineData(MountInfo, 68, "PM-old")]
    [InlineData(OldMounts, 69, "PM-old")]
    [InlineData(MountInfo, 22, "DM-22")]
    public void Holes_this_far_apart_are_these_mounts(string source, double spacing, string expected) =>
        Assert.True(expected == Keys(BrakeMount.Identify(Read(spacing))), source);

    [Theory]
    [InlineData(BrazeOns, 79.1, "IS-rear")]
    [InlineData(BrazeOns, 79.2, "IS-rear")]
    [InlineData(BrazeOns, 79.0, "IS-rear")]
    [InlineData(BrazeOns, 87.3, "IS-front")]
    public void The_farther_tab_hole_tells_front_from_rear(string source, double farHole, string expected) =>
        Assert.True(expected == BrakeMount.Identify(Read(51), Read(farHole)).Candidates[0].Value.FitKey, source);

    [Theory]
    [InlineData(BrazeOns, 83.2)]
    [InlineData(BrazeOns, 70)]
    public void Between_the_two_ends_there_is_neither(string source, double farHole) =>
        Assert.False(BrakeMount.Identify(Read(51), Read(farHole)).Candidates.Any(c => c.Value == BrakeMount.InternationalStandardFront || c.Value == BrakeMount.InternationalStandardRear), source);

    [Theory]
    [PrintedIn(Drawing)]
    [InlineData(55.90, "PM-160")]
    [InlineData(64.56, "PM-180")]
    [InlineData(73.22, "PM-200")]
    public void The_height_of_the_posts_ranks_the_mounts_and_keeps_the_next_one_because_drawings_differ(double face, string expected)
    {
        string[] told = [.. BrakeMount.Identify(Read(74.2), axleToPostFace: Read(face)).Candidates.Select(c => c.Value.FitKey)];
        Assert.True(told[0] == expected && told.Length > 1, $"{Drawing}: {string.Join(", ", told)}");
    }

    /// <summary>By the drawing a rotor step of 20 mm is 8.66 mm of height: one step up is another mount, never the same.</summary>
    [Theory]
    [PrintedIn(Drawing)]
    [InlineData("PM-140", "PM-160")]
    [InlineData("PM-160", "PM-180")]
    [InlineData("PM-180", "PM-200")]
    public void One_step_higher_is_the_next_mount(string mount, string next)
    {
        double face = BrakeMount.Parse(mount, null).AxleToPostFace!.Value.Millimeters;
        Assert.True(BrakeMount.Parse(next, null) == BrakeMount.Identify(Read(74.2), axleToPostFace: Read(Math.Round(face + 8.66, 2))).Candidates[0].Value, Drawing);
    }

    [Theory]
    [InlineData(MountInfo, 74, "post")]
    [InlineData(MountInfo, 51, "IS")]
    public void A_caliper_is_told_by_its_holes(string source, double spacing, string expected) =>
        Assert.True(expected == CaliperFoot.Identify(Read(spacing)).Candidates.Single().Value.FitKey, source);

    [Theory]
    [InlineData(MountInfo, 68)]
    [InlineData(OldMounts, 69)]
    [InlineData(MountInfo, 22)]
    public void A_caliper_of_before_2000_is_none_of_today(string source, double spacing)
    {
        Assert.Empty(CaliperFoot.Identify(Read(spacing)).Candidates);
        BrakeMount mount = BrakeMount.Identify(Read(spacing)).Candidates.Single().Value;
        Published.Says(
            Build.From(Frame.Read($"rearBrake {mount}")).With(Caliper.Read("post"), Slot.RearCaliper).With(Rotor.Read("size 160"), Slot.RearRotor),
            "rear-caliper-on-mount", source, Verdict.DoesNotFit);
    }

    [Theory]
    [PrintedIn(FlatBrakes)]
    [InlineData("FM-front-140", 160)]
    [InlineData("FM-rear-140", 160)]
    public void The_joint_takes_the_rotor_of_the_plate(string mount, int rotor)
    {
        BrakeMount read = BrakeMount.Parse(mount, null);
        Assert.True(BrakeRelations.Accepts(read, CaliperFoot.Flat, Verdict.NeedsPart).Contains(rotor), FlatBrakes);
    }

    private static MeasuredLength Read(double millimetres) => MeasuredLength.OfMillimetres((decimal)millimetres);

    private static string Keys(Identification<BrakeMount> found) => string.Join(", ", found.Candidates.Select(c => c.Value.FitKey));
}
