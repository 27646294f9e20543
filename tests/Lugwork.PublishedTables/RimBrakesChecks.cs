using Lugwork.Brakes;

namespace Lugwork.PublishedTables;

/// <summary>Reach, bosses, cable pull and fluid: published cases, each with its source.</summary>
public sealed class RimBrakesChecks
{
    private const string Mechanical = "Compatibility [08] Mechanical brakes; BikeGremlin";
    private const string Pitfalls = "Brake Reach Pitfalls; cycledepot 2012";
    private const string Measuring = "How to measure brake calipers; Bicycles Stack Exchange copy";
    private const string Classes = "Post on brake reach classes; Classic Rendezvous list archive";
    private const string ReachShop = "Caliper reach; bmxworks";
    private const string BrazeOns = "Braze-on distances index; bikebuilding.blogspot.com";
    private const string BossForum = "Cantilever post spacing question; MTBR forum";
    private const string Blog = "Brakes; bikeheights.blogspot.com 2010";
    private const string Levers = "Brake Lever Compatibility; Urban Velo issue 21";
    private const string DirectPull = "Adjusting Direct-pull Cantilever Bicycle Brakes; sheldonbrown.com";
    private const string BrazedOn = "About Bicycle Brakes with Brazed-on Fittings; sheldonbrown.com";
    private const string Fluids = "MTB brake fluid, DOT vs mineral oil; vtt-xc-blog.com";
    private const string Derived = "arithmetic on the published bead seats";

    [Theory]
    [InlineData("B40", Pitfalls, "39-49", 52, Verdict.DoesNotFit)]
    [InlineData("B40, its remedy", Pitfalls, "47-57", 52, Verdict.Fits)]
    [InlineData("B41: 45 grows by 19", Derived, "39-49", 64, Verdict.DoesNotFit)]
    [InlineData("B41, its remedy", Pitfalls, "55-73", 64, Verdict.Fits)]
    [InlineData("B42: 45 grows by 4, at the end of the slot", Derived, "39-49", 49, Verdict.NeedsMeasuring)]
    [InlineData("B42: 46 grows by 4", Derived, "39-49", 50, Verdict.DoesNotFit)]
    [InlineData("39-51 of another maker", Measuring, "39-51", 50, Verdict.Fits)]
    [InlineData("42-52 of one maker", Pitfalls, "42-52", 41, Verdict.DoesNotFit)]
    [InlineData("older centre-pull", Classes, "62-78", 61, Verdict.DoesNotFit)]
    [InlineData("older centre-pull", Classes, "62-78", 70, Verdict.Fits)]
    public void A_caliper_reaches_the_rim_as_published(string row, string source, string reach, double boltToRim, Verdict expected) =>
        Assert.True(expected == RimBrakeReach.Parse(reach, null).Check(MeasuredLength.OfMillimetres((decimal)boltToRim)).Verdict, $"{row}, {source}");

    [Theory]
    [InlineData(Pitfalls, "short reach", 49, true)]
    [InlineData(Pitfalls, "medium reach", 57, true)]
    [InlineData(Pitfalls, "long reach", 73, true)]
    [InlineData(Measuring, "long reach", 47, false)]
    [InlineData(Classes, "centre-pull", 73, true)]
    public void A_word_stands_for_a_class_that_covers_the_distance(string source, string word, double boltToRim, bool covered)
    {
        IEnumerable<RimBrakeReach> found = RimBrakeReach.Identify(MeasuredLength.OfMillimetres((decimal)boltToRim, 0)).Candidates.Select(c => c.Value);
        Assert.True(covered == RimBrakeReach.Read(word).Values.Intersect(found).Any(), source);
    }

    [Theory]
    [PrintedIn(ReachShop)]
    [InlineData(6, "nutted-6, recessed-6")]
    [InlineData(6.35, "nutted-1/4")]
    public void A_centre_bolt_is_6_mm_or_a_quarter_inch(double bolt, string expected) =>
        Assert.True(expected == string.Join(", ", BrakeBolt.Identify(MeasuredLength.OfMillimetres((decimal)bolt)).Candidates.Select(c => c.Value.FitKey)), ReachShop);

    [Theory]
    [InlineData(BrazeOns, 283, 80, "cantilever-622")]
    [InlineData(BrazeOns, 265, 80, "cantilever-584")]
    [InlineData(BrazeOns, 253.5, 80, "cantilever-559")]
    [InlineData(BrazeOns, 254, 80, "cantilever-559")]
    [InlineData(BossForum, 253.5, 73, "cantilever-559")]
    [InlineData(BossForum, 253.5, 77, "cantilever-559")]
    public void Bosses_are_told_by_where_they_stand(string source, double toAxle, double spacing, string expected) =>
        Assert.True(expected == BrakeBoss.Identify(MeasuredLength.OfMillimetres((decimal)toAxle), MeasuredLength.OfMillimetres((decimal)spacing)).Candidates[0].Value.FitKey, source);

    [Theory]
    [PrintedIn(BrazeOns)]
    [InlineData(622)]
    [InlineData(584)]
    [InlineData(559)]
    public void The_rule_of_radius_less_25_to_28_holds_for_the_published_places(int bead)
    {
        double place = BrakeBoss.Parse($"cantilever-{bead}", null).ToAxle!.Value.Millimeters;
        LengthRange range = BrakeBoss.ToAxleFor(bead);
        (UnitsNet.Length least, UnitsNet.Length most) = (range.Least, range.Most);
        Assert.True(place >= least.Millimeters && place <= most.Millimeters, BrazeOns);
    }

    [Theory]
    [InlineData("B35", Blog, "short", "direct-pull", Verdict.Unsafe)]
    [InlineData("B35", DirectPull, "short", "V-brake", Verdict.Unsafe)]
    [InlineData("B36", Levers, "long", "road caliper", Verdict.Unsafe)]
    [InlineData("B36", Blog, "long", "cantilever", Verdict.Unsafe)]
    [InlineData("B37", Levers, "short", "off-road cable disc", Verdict.DoesNotFit)]
    [InlineData("B37, its remedy", Levers, "short", "road cable disc", Verdict.Fits)]
    [InlineData("short pull pairs", Levers, "short", "cantilever", Verdict.Fits)]
    [InlineData("short pull pairs", Levers, "short", "U-brake", Verdict.Fits)]
    [InlineData("short pull pairs", Levers, "short", "mini direct-pull", Verdict.Fits)]
    [InlineData("short pull pairs", Levers, "short", "caliper", Verdict.Fits)]
    [InlineData("long pull pairs", DirectPull, "long", "direct-pull", Verdict.Fits)]
    [InlineData("long pull pairs", Levers, "long", "off-road cable disc", Verdict.Fits)]
    [InlineData("8 mm on both sides", Mechanical, "newer-road", "road cable disc", Verdict.Fits)]
    [InlineData("8 mm against 7 mm", Mechanical, "newer-road", "cantilever", Verdict.NeedsMeasuring)]
    [InlineData("8 mm against 15 mm", Mechanical, "newer-road", "off-road cable disc", Verdict.DoesNotFit)]
    [InlineData("7 mm on both sides", Mechanical, "short", "roller", Verdict.Fits)]
    [InlineData("15 mm against 7 mm", Mechanical, "long", "roller", Verdict.Unsafe)]
    public void A_lever_works_a_brake_as_published(string row, string source, string lever, string brake, Verdict expected) =>
        Assert.True(expected == BrakeActionRelations.LeverAndBrake.Judge([CablePull.Parse(lever, null).FitCode, BrakeType.Parse(brake, null).FitCode]).Verdict, $"{row}, {source}");

    [Theory]
    [PrintedIn(Fluids)]
    [InlineData("B34", "DOT 5.1", "mineral oil", Verdict.Unsafe)]
    [InlineData("B34, the other way", "mineral oil", "DOT 4", Verdict.Unsafe)]
    [InlineData("one family", "DOT 4", "DOT 5.1", Verdict.Fits)]
    public void Fluids_are_never_mixed(string row, string lever, string caliper, Verdict expected) =>
        Assert.True(expected == BrakeActionRelations.Fluid.Judge([BrakeFluid.Parse(lever, null).FitCode, BrakeFluid.Parse(caliper, null).FitCode]).Verdict, $"{row}, {Fluids}");

    [Theory]
    [InlineData("B39", Blog, "U-brake", "direct-pull", Verdict.DoesNotFit)]
    [InlineData("B39, the other way", BrazedOn, "canti 559", "u-brake", Verdict.DoesNotFit)]
    [InlineData("roller-cam", BrazedOn, "roller-cam", "roller-cam", Verdict.Fits)]
    [InlineData("below the rim", BrazedOn, "canti 622", "cantilever", Verdict.Fits)]
    [InlineData("below the rim", Blog, "canti 559", "direct-pull", Verdict.Fits)]
    public void A_brake_goes_on_bosses_as_published(string row, string source, string bosses, string brake, Verdict expected) =>
        Assert.True(expected == BrakeActionRelations.BrakeOnBosses.Judge([BrakeBoss.Parse(bosses, null).FitCode, BrakeType.Parse(brake, null).FitCode]).Verdict, $"{row}, {source}");
}
