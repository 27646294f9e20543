using System.Text.Json;
using Lugwork.Steering;

namespace Lugwork.PublishedTables;

/// <summary>Headset codes in the spellings in which they are published.</summary>
public sealed class HeadsetCodesChecks
{
    private const string CodeNote = "Standardized Headset Identification System (repost); BikeRadar forum";
    private const string Overview = "S.H.I.S. Overview; a headset maker";
    private const string Chart = "Headset Standards Explained: Reading the SHIS Chart; a tool maker";
    private const string OneInch = "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese); Overwheel";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("ZS44/28.6 | EC44/40", "ZS44", "28.6", "EC44", "39.8", Overview)]
    [InlineData("ZS44/28.6|EC44/40", "ZS44", "28.6", "EC44", "39.8", Overview)]
    [InlineData("ZS44/28.6 I EC44/40", "ZS44", "28.6", "EC44", "39.8", CodeNote)]
    [InlineData("ZS44/28.6 I IS52/40", "ZS44", "28.6", "IS52", "39.8", CodeNote)]
    [InlineData("IS42/28.6 I IS52/40", "IS42", "28.6", "IS52", "39.8", CodeNote)]
    [InlineData("ZS44/28.6;EC44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("ZS44/28.6, EC44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("ZS44/28.6,EC44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("ZS44/28.6-EC44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("ZS44/28.6 - EC44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("ZS44/28.6 EC44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("ZS44/28.6   EC44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("zs44/28.6 | ec44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("ZS 44/28.6 | EC 44/40", "ZS44", "28.6", "EC44", "39.8", Memory)]
    [InlineData("EC34/28.6|EC34/30", "EC34", "28.6", "EC34", "30", CodeNote)]
    [InlineData("EC34/28.6|EC34/30.0", "EC34", "28.6", "EC34", "30", CodeNote)]
    [InlineData("EC30/25.4|EC30/26", "EC30", "25.4", "EC30", "26.4", OneInch)]
    [InlineData("EC30/25.4|EC30/26.4", "EC30", "25.4", "EC30", "26.4", OneInch)]
    [InlineData("EC29/25.4|EC29/27", "EC29", "25.4", "EC29", "27", OneInch)]
    [InlineData("ZS44.0/28.6|ZS56.0/40", "ZS44", "28.6", "ZS56", "39.8", Memory)]
    [InlineData("ZS44|EC44", "ZS44", "unknown", "EC44", "unknown", Overview)]
    [InlineData("ZS44/EC49", "ZS44", "unknown", "EC49", "unknown", Memory)]
    [InlineData("IS41-IS52", "IS41", "unknown", "IS52", "unknown", Overview)]
    [InlineData("ZS44/28.6|EC44", "ZS44", "28.6", "EC44", "unknown", Overview)]
    public void A_code_is_read_in_its_published_spellings(string code, string upper, string steerer, string lower, string race, string source)
    {
        bool read = BuildFile.TryRead($$"""{ "parts": { "frame": {}, "headset": { "code": {{JsonSerializer.Serialize(code)}} } } }""", out Build? build, out var problems);

        Assert.True(read, $"{source}: {code} is published, refused: {string.Join(" | ", problems)}");
        Headset headset = Assert.IsType<Headset>(build![Slot.Headset]);
        Assert.Equal((upper, steerer, lower, race), (headset.UpperCup.ToString(), headset.Steerer.ToString(), headset.LowerCup.ToString(), headset.CrownRace.ToString()));
    }

    [Theory]
    [InlineData("head tube ZS44|ZS56", "44", "56", Chart)]
    [InlineData("head tube EC34/EC34", "EC34", "EC34", Memory)]
    [InlineData("head tube ZS44/28.6 | EC44/40", "44", "44", Overview)]
    [InlineData("head tube IS42/28.6 I IS52/40", "IS42", "IS52", CodeNote)]
    [InlineData("head tube is41-is41", "IS41", "IS41", Memory)]
    public void A_head_tube_is_told_by_the_code_that_it_takes(string text, string upper, string lower, string source)
    {
        Frame frame = Frame.Read(text);
        Assert.True((upper, lower) == (frame.HeadTubeUpper.ToString(), frame.HeadTubeLower.ToString()), $"{source}: {text} is {upper} and {lower}, read: {frame.HeadTubeUpper} and {frame.HeadTubeLower}");
    }

    [Theory]
    [PrintedIn("common practice, no source")]
    [InlineData("ZS44/28.6")]
    [InlineData("ZS44/28.6|EC44/40|EC34/30")]
    [InlineData("ZS|EC")]
    [InlineData("44/28.6|44/40")]
    [InlineData("ZS45/28.6|ZS45/30")]
    [InlineData("ZS44/40|EC44/28.6")]
    public void A_text_that_is_no_code_is_refused(string code) =>
        Assert.False(BuildFile.TryRead($$"""{ "parts": { "frame": {}, "headset": { "code": {{JsonSerializer.Serialize(code)}} } } }""", out _, out _));

    [Theory]
    [InlineData("external cup", "EC34", CodeNote)]
    [InlineData("EC", "EC44", Overview)]
    [InlineData("zero stack", "ZS44", CodeNote)]
    [InlineData("ZS", "ZS56", Overview)]
    [InlineData("integrated", "IS42", CodeNote)]
    [InlineData("IS", "IS41", Overview)]
    public void The_letters_of_a_code_are_its_style(string style, string cup, string source) =>
        Assert.True(HeadsetStyle.Parse(style, null) == HeadsetCup.Parse(cup, null).Style, source);
}
