using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables;

/// <summary>Cassettes on freehub bodies: every row of the published tables, each with its source; spacers in millimetres.</summary>
/// <remarks>A 7-speed body takes an 8-speed cassette only with a sprocket left out: the cassette as sold does not fit.</remarks>
public sealed class CassettesOnBodiesChecks
{
    private const string Types = "Freehub types, standards for road and MTB wheels; Cyclabo";
    private const string Faq = "Cassette FAQ; BikeRadar forum";
    private const string Page = "Freehub / cassette page; Rol Wheels";
    private const string TwelveGuide = "Guide for 11-speed, 12-speed and MS freehubs; ICAN Cycling";
    private const string Widths = "Cassette total widths (table); brainybiker.com";
    private const string TwelveOnEleven = "12-speed cassette on an 11-speed hub; brainybiker.com";
    private const string Xd = "XD driver body explained; BikeRadar copy";
    private const string Xdr = "XDR freehub body explained; Bikerumor";
    private const string SideBySide = "HG vs Micro Spline vs road 12-speed vs XDR freehub body; handsonbike.blogspot.com";
    private const string EightSpline = "8-spline freehub bodies: which do you have?; Branford Bike";
    private const string N3w = "1x13 gravel group and the N3W body; chan-bike.com";
    private const string Thirteen = "Launch of the 13-speed gravel group; road.cc";
    private const string Freewheels = "Traditional Thread-on Freewheels; sheldonbrown.com";

    private static readonly string[] Hg = ["HG-7", "HG-8", "HG-9", "HG-10-late", "HG-10-old-road", "HG-11-wide", "HG-11-road", "HG-12-road", "HG-12-fit"];

    private static readonly string[] Others = ["MS-12", "XD", "XDR", "8-spline-9", "8-spline-8", "8-spline-10-12", "8-spline-13"];

    private static readonly string[] Freehubs = ["UG", "HG-S", "HG-M", "HG-10only", "HG-L", "HG-L2", "MS", "XD", "XDR", "C8-old", "C9-12", "N3W"];

    public static TheoryData<string, string> AnyHg => Of(Hg, Page);

    public static TheoryData<string, string> AnyCassette => Of([.. Hg, .. Others], Freewheels);

    public static TheoryData<string, string> AnyFreehub => Of(Freehubs, Freewheels);

    [Theory]
    [InlineData("HG-7", "HG-S", Types)]
    [InlineData("HG-8", "HG-M", Types)]
    [InlineData("HG-9", "HG-M", Types)]
    [InlineData("HG-10-late", "HG-M", Types)]
    [InlineData("HG-10-old-road", "HG-10only", TwelveGuide)]
    [InlineData("HG-11-wide", "HG-M", Types)]
    [InlineData("HG-11-road", "HG-L", Types)]
    [InlineData("HG-12-road", "HG-L2", Types)]
    [InlineData("HG-12-road", "HG-L", TwelveGuide)]
    [InlineData("HG-12-fit", "HG-M", Widths)]
    [InlineData("MS-12", "MS", Types)]
    [InlineData("XD", "XD", Xd)]
    [InlineData("XDR", "XDR", Xdr)]
    [InlineData("8-spline-9", "C9-12", EightSpline)]
    [InlineData("8-spline-10-12", "C9-12", EightSpline)]
    [InlineData("8-spline-13", "N3W", Thirteen)]
    public void A_cassette_goes_straight_on_where_the_table_says_so(string cassette, string body, string source) =>
        AssertFit(cassette, body, source, Verdict.Fits, "");

    [Theory]
    [InlineData("HG-7", "HG-M", "4.5 mm", Faq)]
    [InlineData("HG-7", "HG-L", "6.35 mm", Faq)]
    [InlineData("HG-8", "HG-L", "1.85 mm", Page)]
    [InlineData("HG-9", "HG-L", "1.85 mm", Page)]
    [InlineData("HG-10-late", "HG-L", "1.85 mm", Types)]
    [InlineData("HG-10-old-road", "HG-M", "1 mm", Page)]
    [InlineData("HG-10-old-road", "HG-L", "2.85 mm", Page)]
    [InlineData("HG-11-wide", "HG-L", "1.85 mm", Page)]
    [InlineData("HG-12-fit", "HG-L", "1.85 mm", TwelveOnEleven)]
    [InlineData("XD", "XDR", "1.85 mm", Xdr)]
    [InlineData("8-spline-10-12", "N3W", "4.4 mm", N3w)]
    public void A_spacer_of_the_published_thickness_is_named(string cassette, string body, string spacer, string source) =>
        AssertFit(cassette, body, source, Verdict.NeedsPart, spacer);

    [Theory]
    [InlineData("HG-8", "HG-S", Types)]
    [InlineData("HG-11-road", "HG-M", Page)]
    [InlineData("HG-11-road", "HG-L2", TwelveGuide)]
    [InlineData("HG-12-road", "HG-M", Types)]
    [InlineData("MS-12", "HG-M", Widths)]
    [InlineData("MS-12", "HG-L", Types)]
    [InlineData("XD", "HG-M", SideBySide)]
    [InlineData("XDR", "XD", Xdr)]
    [InlineData("8-spline-13", "C9-12", N3w)]
    [InlineData("8-spline-9", "HG-M", Page)]
    [InlineData("8-spline-10-12", "HG-M", Page)]
    public void A_cassette_for_another_body_does_not_fit(string cassette, string body, string source) =>
        AssertFit(cassette, body, source, Verdict.DoesNotFit, "");

    [Theory]
    [InlineData("HG-10-late", "HG-10only", TwelveGuide)]
    public void A_deep_spline_body_and_an_off_road_ten_have_to_be_checked(string cassette, string body, string source) =>
        AssertFit(cassette, body, source, Verdict.NeedsMeasuring, "");

    [Theory]
    [MemberData(nameof(AnyHg))]
    public void No_HG_cassette_goes_on_an_eight_spline_body(string cassette, string source) =>
        AssertFit(cassette, "C9-12", source, Verdict.DoesNotFit, "");

    [Theory]
    [MemberData(nameof(AnyCassette))]
    public void No_cassette_goes_on_a_freewheel_thread(string cassette, string source) =>
        AssertFit(cassette, "FW-thread", source, Verdict.DoesNotFit, "");

    [Theory]
    [MemberData(nameof(AnyFreehub))]
    public void No_screwed_freewheel_goes_on_a_freehub_body(string body, string source) =>
        AssertFit("freewheel", body, source, Verdict.DoesNotFit, "");

    [Theory]
    [InlineData("FW-thread", Freewheels)]
    [InlineData("threaded", Freewheels)]
    [InlineData("freewheel thread", Freewheels)]
    public void A_freewheel_whose_thread_is_not_said_is_never_a_fit(string body, string source) =>
        AssertFit("freewheel", body, source, Verdict.NeedsMeasuring, "", "freewheel-on-hub-thread");

    private static void AssertFit(string cassette, string body, string source, Verdict expected, string remedy, string joint = "cassette-on-freehub-body")
    {
        Fit fit = Build.From(Frame.Read("material steel"))
            .With(Wheel.Read($"body {Published.Key<FreehubBody>(body, source)}"), Slot.RearWheel)
            .With(Cassette.Read($"pattern {Published.Key<CassettePattern>(cassette, source)}"))
            .Check().Findings.Single(f => f.Joint!.Id == joint);
        Assert.True(expected == fit.Verdict, $"{source}: {expected} is published, judged: {fit}");
        Assert.Contains(remedy, string.Join(" | ", fit.Remedies), StringComparison.Ordinal);
    }

    private static TheoryData<string, string> Of(string[] keys, string source)
    {
        TheoryData<string, string> data = [];
        foreach (string key in keys)
        {
            data.Add(key, source);
        }

        return data;
    }
}
