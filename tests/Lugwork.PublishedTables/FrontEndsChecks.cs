namespace Lugwork.PublishedTables;

/// <summary>Whole front ends, from text or from a build file, against the published pairs of head tube and fork.</summary>
public sealed class FrontEndsChecks
{
    private const string Pages44 = "44mm; a frame maker's geek pages";
    private const string Straight44 = "Comment 13194524; London Fixed Gear and Single-Speed forum";
    private const string Chart = "Headset Standards Explained: Reading the SHIS Chart; a tool maker";
    private const string CodeNote = "Standardized Headset Identification System (repost); BikeRadar forum";
    private const string Conversion = "Headset or steerer tube from straight to tapered conversion; highlandmist.blogspot.com";
    private const string OneInch = "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese); Overwheel";
    private const string Integrated = "Integrated headsets; R+E Cycles";
    private const string Caps = "Integrated headset cap for internal routing; zacksunsang.com";
    private const string StackUp = "Stack em up!; a frame maker's blog";
    private const string Arithmetic = "arithmetic on the published diameters";

    private static readonly string[] Steering = ["headset-upper-in-head-tube", "headset-lower-in-head-tube", "headset-on-steerer", "headset-kind", "headset-on-crown", "steerer-through-head-tube", "fork-in-head-tube"];

    [Theory]
    [InlineData("44|44", "straight 1-1/8", "ZS44/28.6|ZS44/30", Verdict.Fits, Straight44)]
    [InlineData("44|44", "tapered 1-1/8 to 1.5", "ZS44/28.6|EC44/40", Verdict.Fits, Pages44)]
    [InlineData("44|44", "straight 1-1/8", "ZS44/28.6|EC44/30", Verdict.Fits, Pages44)]
    [InlineData("44|56", "tapered 1-1/8 to 1.5", "ZS44/28.6|ZS56/40", Verdict.Fits, Chart)]
    [InlineData("44|56", "straight 1-1/8", "ZS44/28.6|ZS56/40", Verdict.NeedsPart, Conversion)]
    [InlineData("44|56", "straight 1-1/8", "ZS44/28.6|ZS56/30", Verdict.Fits, Conversion)]
    [InlineData("IS42|IS52", "straight 1-1/8", "IS42/28.6|IS52/40", Verdict.NeedsPart, Conversion)]
    [InlineData("IS52|IS52", "tapered 1-1/8 to 1.5", "IS52/28.6|IS52/40", Verdict.Fits, Caps)]
    [InlineData("EC34|EC34", "straight 1-1/8", "EC34/28.6|EC34/30", Verdict.Fits, CodeNote)]
    [InlineData("EC34|EC34", "tapered 1-1/8 to 1.5", "EC34/28.6|EC34/30", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("EC34|EC34", "tapered 1-1/8 to 1.5", "EC34/28.6|EC34/40", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("IS42|IS42", "tapered 1-1/8 to 1.5", "IS42/28.6|IS42/40", Verdict.DoesNotFit, Straight44)]
    [InlineData("IS41|IS41", "tapered 1-1/8 to 1.5", "IS41/28.6|IS41/40", Verdict.DoesNotFit, Integrated)]
    [InlineData("IS41|IS41", "tapered 1-1/8 to 1.5", "IS41/28.6|EC44/40", Verdict.DoesNotFit, Integrated)]
    [InlineData("IS42|IS42", "tapered 1-1/8 to 1.5", "IS42/28.6|IS42/30", Verdict.DoesNotFit, Straight44)]
    [InlineData("44|56", "straight 1.5", "ZS44/28.6|ZS56/40", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("44|56", "tapered", "ZS44/28.6|ZS56/40", Verdict.NeedsMeasuring, Chart)]
    public void A_front_end_from_a_build_file_is_judged_as_published(string headTube, string shape, string code, Verdict expected, string source)
    {
        Build build = BuildFile.Read($$"""
            { "parts": {
              "frame": { "headTube": "{{headTube}}" },
              "fork": { "steererShape": "{{shape}}", "steererKind": "threadless" },
              "headset": { "code": "{{code}}", "kind": "threadless" } } }
            """);

        AssertWorst(build, expected, source);
    }

    [Theory]
    [InlineData("head tube EC30|EC30", "steerer 1 in; crown seat 26.4; threaded", "upper EC30/25.4; lower EC30/26; threaded", Verdict.Fits, StackUp)]
    [InlineData("head tube EC30|EC30", "steerer 1 in; crown seat 27; threaded", "upper EC30/25.4; lower EC30/26; threaded", Verdict.DoesNotFit, OneInch)]
    [InlineData("head tube EC29|EC29", "steerer 1 in; crown seat 27; threaded", "upper EC29/25.4; lower EC29/27; threaded", Verdict.Fits, OneInch)]
    [InlineData("head tube EC30|EC30", "steerer shape straight 1; threaded", "upper EC30/25.4; lower EC30/26; threaded", Verdict.NeedsMeasuring, OneInch)]
    [InlineData("headTubeUpper 44.0 ± 0.1; headTubeLower 44.0 ± 0.1", "steerer 28.6 ± 0.1; crown seat 39.8 ± 0.05; threadless", "upper ZS44/28.6; lower EC44/40; threadless", Verdict.Fits, Pages44)]
    [InlineData("headTubeUpper 34.0 ± 0.1; headTubeLower 34.0 ± 0.1", "steerer 28.6; crown seat 30.02 ± 0.02; threadless", "upper EC34/28.6; lower EC34/30; threadless", Verdict.Fits, CodeNote)]
    public void A_front_end_from_text_is_judged_as_published(string frame, string fork, string headset, Verdict expected, string source) =>
        AssertWorst(Build.From(Frame.Read(frame)).With(Fork.Read(fork), Slot.Fork).With(Headset.Read(headset), Slot.Headset), expected, source);

    [Theory]
    [InlineData("D43", """ "frame": { "hanger": "M10x1" }, "rearDerailleur": { "mount": "hangerless" } """, "derailleur-on-hanger", Verdict.DoesNotFit, "Do we need to eliminate the derailleur hanger and embrace UDH; ICAN Cycling")]
    [InlineData("H43", """ "frame": { "rearAxleThread": "M12x1.0" }, "rearThruAxle": { "thread": "M12x1.5" } """, "rear-axle-in-frame", Verdict.Unsafe, "How to Measure a Bicycle Thru-Axle; Modern Bike help pages")]
    [InlineData("bar of 26.0", """ "frame": { }, "stem": { "bar": 25.4 }, "handlebar": { "clamp": "26.0" } """, "bar-in-stem", Verdict.Unsafe, "26.0 and 25.4 stems interchangeable?; The Paceline Forum")]
    [InlineData("clamp on threads", """ "frame": { }, "fork": { "steerer": 28.6, "steererKind": "threaded" }, "stem": { "fixing": "clamp-28.6" } """, "stem-on-steerer", Verdict.Unsafe, "TBIS 4210-2:2018, clause 4.7.4; Taiwan Bicycle Industry Standard")]
    [InlineData("D32", """ "frame": { }, "cassette": { "pattern": "9-speed HG" }, "chain": { "size": "8" } """, "chain-on-cassette", Verdict.DoesNotFit, "Bicycle chain explained (width tables); Cycling Boutique")]
    public void A_build_file_with_a_published_trap_is_as_bad_as_the_trap(string row, string parts, string joint, Verdict expected, string source)
    {
        Build build = BuildFile.Read($$"""{ "parts": { {{parts}} } }""");

        Published.Says(build, joint, $"{row}, {source}", expected);
        Assert.Equal(expected, build.Check().Verdict);
    }

    private static void AssertWorst(Build build, Verdict expected, string source)
    {
        Fit[] fits = [.. build.Check().Findings.Where(f => Steering.Contains(f.Joint!.Id))];
        Assert.Equal(Steering.Length, fits.Length);
        Assert.True(expected == fits.Max(f => f.Verdict), $"{source}: {expected} is published, judged: {string.Join(" | ", fits)}");
    }
}
