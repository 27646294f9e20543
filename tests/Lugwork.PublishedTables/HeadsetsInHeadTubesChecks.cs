namespace Lugwork.PublishedTables;

/// <summary>Headset halves in the ends of head tubes: published cases, each with its source.</summary>
public sealed class HeadsetsInHeadTubesChecks
{
    private const string Straight44 = "Comment 13194524; London Fixed Gear and Single-Speed forum";
    private const string Pages44 = "44mm; a frame maker's geek pages";
    private const string Chart = "Headset Standards Explained: Reading the SHIS Chart; a tool maker";
    private const string Overview = "S.H.I.S. Overview; a headset maker";
    private const string CodeNote = "Standardized Headset Identification System (repost); BikeRadar forum";
    private const string Guide = "Headset Identification and Specification Guide, rev. F+; a headset maker, 2010";
    private const string OneInch = "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese); Overwheel";
    private const string Handbook = "The Paterek Manual, ch. 6, The Front Triangle; T. Paterek";
    private const string OneInchOrMore = "1 in versus 1-1/8 in headset; rec.bicycles.tech";
    private const string Integrated = "Integrated headsets; R+E Cycles";
    private const string BearingSizes = "Information and Guides: Measure Headset Bearings; a bearing seller";
    private const string BearingArticle = "How to measure sealed headset bearing sizes; CyclingTips, 2021";
    private const string Need41 = "Headset for a cyclocross frame; BikeRadar forum, 2013";
    private const string Types = "Building a bike from parts 2: headset types (table, in Japanese); shobota.com";
    private const string HeadTubes = "Head tube (glossary, in Japanese); atwiki piro bicycle wiki";
    private const string Lower49 = "Fork cutting and headset; allez-allez.net, 2019";
    private const string Cable = "The definitive thread for 1-1/2 internal routing headsets; Chinertown forum";
    private const string Arithmetic = "arithmetic on the published bores";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("44", "ZS44/28.6", Verdict.Fits, Straight44)]
    [InlineData("44", "EC44/28.6", Verdict.Fits, Arithmetic)]
    [InlineData("EC34", "EC34/28.6", Verdict.Fits, CodeNote)]
    [InlineData("EC30", "EC30/25.4", Verdict.Fits, OneInch)]
    [InlineData("EC29", "EC29/25.4", Verdict.Fits, Guide)]
    [InlineData("EC37", "EC37/31.8", Verdict.Fits, Types)]
    [InlineData("49", "EC49/38.1", Verdict.Fits, HeadTubes)]
    [InlineData("IS41", "IS41/28.6", Verdict.Fits, BearingSizes)]
    [InlineData("IS52", "IS52/28.6", Verdict.Fits, Cable)]
    [InlineData("EC30", "EC29/25.4", Verdict.DoesNotFit, OneInch)]
    [InlineData("EC30", "EC29/25.4", Verdict.DoesNotFit, Guide)]
    [InlineData("EC30", "EC34/28.6", Verdict.DoesNotFit, OneInchOrMore)]
    [InlineData("IS42", "IS41/28.6", Verdict.DoesNotFit, BearingArticle)]
    [InlineData("IS41", "IS42/28.6", Verdict.DoesNotFit, BearingArticle)]
    [InlineData("IS41", "ZS41/28.6", Verdict.DoesNotFit, Memory)]
    [InlineData("ZS41", "IS41/28.6", Verdict.DoesNotFit, Need41)]
    [InlineData("IS42", "ZS44/28.6", Verdict.DoesNotFit, Straight44)]
    [InlineData("EC34", "ZS44/28.6", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("44", "ZS56/28.6", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("unknown", "ZS44/28.6", Verdict.NeedsMeasuring, Integrated)]
    public void An_upper_half_goes_in_as_published(string end, string half, Verdict expected, string source) =>
        Published.Says(Upper(end, half), "headset-upper-in-head-tube", source, expected);

    [Theory]
    [InlineData("44", "ZS44/30", Verdict.Fits, Straight44)]
    [InlineData("44", "EC44/40", Verdict.Fits, Pages44)]
    [InlineData("44", "EC44/30", Verdict.Fits, Pages44)]
    [InlineData("56", "ZS56/40", Verdict.Fits, Chart)]
    [InlineData("49", "EC49/40", Verdict.Fits, Types)]
    [InlineData("IS49", "IS49/37", Verdict.Fits, Lower49)]
    [InlineData("IS52", "IS52/40", Verdict.Fits, Cable)]
    [InlineData("EC34", "EC34/30", Verdict.Fits, CodeNote)]
    [InlineData("IS41", "EC44/40", Verdict.DoesNotFit, Straight44)]
    [InlineData("IS42", "EC44/40", Verdict.DoesNotFit, Integrated)]
    [InlineData("IS52", "ZS56/40", Verdict.DoesNotFit, Integrated)]
    [InlineData("IS52", "IS51/40", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("56", "ZS55/40", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("ZS55", "ZS56/40", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("EC34", "EC44/40", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("56", "IS52/40", Verdict.DoesNotFit, Arithmetic)]
    public void A_lower_half_goes_in_as_published(string end, string half, Verdict expected, string source) =>
        Published.Says(Lower(end, half), "headset-lower-in-head-tube", source, expected);

    [Theory]
    [InlineData(Handbook)]
    [InlineData(OneInch)]
    public void A_JIS_head_tube_is_reamed_for_an_ISO_cup_by_a_shop(string source)
    {
        Published.Says(Upper("EC29", "EC30/25.4"), "headset-upper-in-head-tube", source, Verdict.DoesNotFit, "ream");
        Published.Says(Lower("EC29", "EC30/26"), "headset-lower-in-head-tube", source, Verdict.DoesNotFit, "shop");
    }

    /// <summary>Reducers of these pairs are known from memory alone.</summary>
    [Theory]
    [InlineData("EC34", "EC30/25.4", Memory)]
    [InlineData("44", "EC34/28.6", Memory)]
    [InlineData("49", "ZS44/28.6", Memory)]
    public void A_reducer_from_memory_makes_no_fit(string end, string half, string source) =>
        Published.SaysNothingMilder(Upper(end, half), "headset-upper-in-head-tube", source, Verdict.NeedsMeasuring);

    [Fact]
    [PrintedIn(Overview)]
    public void The_two_halves_are_judged_apart()
    {
        Build build = Build.From(Frame.Read("head tube 44|56")).With(Headset.Read("upper ZS44/28.6; lower ZS44/30"), Slot.Headset);

        Published.Says(build, "headset-upper-in-head-tube", Overview, Verdict.Fits);
        Published.Says(build, "headset-lower-in-head-tube", Overview, Verdict.DoesNotFit);
    }

    private static Build Upper(string end, string half) =>
        Build.From(Frame.Read($"headTubeUpper {end}")).With(Headset.Read($"upper {half}"), Slot.Headset);

    private static Build Lower(string end, string half) =>
        Build.From(Frame.Read($"headTubeLower {end}")).With(Headset.Read($"lower {half}"), Slot.Headset);
}
