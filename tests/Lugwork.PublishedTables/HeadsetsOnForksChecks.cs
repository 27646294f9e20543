using Lugwork.Steering;

namespace Lugwork.PublishedTables;

/// <summary>Headsets on steerers and crowns: published cases, each with its source.</summary>
/// <remarks>A row that asks for a mill or a reamer is no fit, and a shop does it.</remarks>
public sealed class HeadsetsOnForksChecks
{
    private const string Article = "Headset (bicycle part); Wikipedia";
    private const string Chart = "Headset Standards Explained: Reading the SHIS Chart; a tool maker";
    private const string OneInch = "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese); Overwheel";
    private const string NotStraight = "Straight 1-1/8 in steering tube is not actually straight; Bicycles Q&A (TransWikia copy), 2021";
    private const string CarbonRace = "Crown race won't fit on carbon steerer; RoadBikeReview forums, 2012";
    private const string Lower49 = "Fork cutting and headset; allez-allez.net, 2019";
    private const string Conversion = "Headset or steerer tube from straight to tapered conversion; highlandmist.blogspot.com";
    private const string Notes = "Notes on headset standards (in Japanese); note.com";
    private const string OneInchOrMore = "1 in versus 1-1/8 in headset; rec.bicycles.tech";
    private const string Standard = "TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4; Taiwan Bicycle Industry Standard";
    private const string StackUp = "Stack em up!; a frame maker's blog";
    private const string Arithmetic = "arithmetic on the published diameters";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("28.6", "steerer 28.6", Verdict.Fits, Article)]
    [InlineData("25.4", "steerer 1 in", Verdict.Fits, Article)]
    [InlineData("31.8", "steerer 1-1/4", Verdict.Fits, Article)]
    [InlineData("38.1", "steerer 1.5", Verdict.Fits, Article)]
    [InlineData("28.6", "steerer shape tapered 1-1/8 to 1.5", Verdict.Fits, Chart)]
    [InlineData("28.6", "steerer shape straight 1-1/8", Verdict.Fits, NotStraight)]
    [InlineData("28.6", "steerer shape straight 1.5", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("25.4", "steerer 28.6", Verdict.DoesNotFit, OneInchOrMore)]
    [InlineData("28.6", "steerer shape tapered 1-1/4 to 1.5", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("28.6", "steerer unknown", Verdict.NeedsMeasuring, Article)]
    public void A_headset_goes_on_a_steerer_as_published(string made, string fork, Verdict expected, string source) =>
        Published.Says(On($"upper EC44/{made}", fork), "headset-on-steerer", source, expected);

    [Theory]
    [InlineData("28.6", "25.4", Memory)]
    [InlineData("38.1", "28.6", Memory)]
    [InlineData("25.4", "25.0", Memory)]
    public void A_narrower_steerer_is_no_fit_from_memory(string made, string steerer, string source) =>
        Published.SaysNothingMilder(On($"steerer {made}", $"steerer {steerer}"), "headset-on-steerer", source, Verdict.NeedsMeasuring);

    [Theory]
    [InlineData("40", "39.8", Verdict.Fits, "", Chart)]
    [InlineData("39.8", "40", Verdict.Fits, "", Notes)]
    [InlineData("30", "30", Verdict.Fits, "", NotStraight)]
    [InlineData("33", "33", Verdict.Fits, "", CarbonRace)]
    [InlineData("37", "37", Verdict.Fits, "", Lower49)]
    [InlineData("26", "26.4", Verdict.Fits, "", OneInch)]
    [InlineData("27", "27.0", Verdict.Fits, "", OneInch)]
    [InlineData("27", "26.4", Verdict.DoesNotFit, "crown race", OneInch)]
    [InlineData("27", "26.4", Verdict.DoesNotFit, "", Article)]
    [InlineData("26.4", "27", Verdict.DoesNotFit, "mill", OneInch)]
    [InlineData("26.4", "27", Verdict.DoesNotFit, "shop", Article)]
    [InlineData("40", "30", Verdict.NeedsPart, "reducer", Conversion)]
    [InlineData("30", "40", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("33", "40", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("30", "27", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("40", "unknown", Verdict.NeedsMeasuring, "", Chart)]
    public void A_race_goes_on_a_seat_as_published(string race, string seat, Verdict expected, string remedy, string source) =>
        Published.Says(On($"crown race {race}", $"crown seat {seat}"), "headset-on-crown", source, expected, remedy);

    [Theory]
    [InlineData("26.4", "26.5", Memory)]
    [InlineData("27", "26.5", Memory)]
    [InlineData("40", "33", Memory)]
    public void A_seat_from_memory_makes_no_fit(string race, string seat, string source) =>
        Published.SaysNothingMilder(On($"crown race {race}", $"crown seat {seat}"), "headset-on-crown", source, Verdict.NeedsMeasuring);

    [Theory]
    [InlineData("threadless", "threadless", Verdict.Fits, Article)]
    [InlineData("threaded", "threaded", Verdict.Fits, StackUp)]
    [InlineData("threadless", "threaded", Verdict.DoesNotFit, Standard)]
    [InlineData("threaded", "threadless", Verdict.DoesNotFit, Article)]
    [InlineData("threadless", "unknown", Verdict.NeedsMeasuring, Article)]
    public void Threads_are_judged_as_published(string headset, string fork, Verdict expected, string source) =>
        Published.Says(On($"kind {Published.Key<SteererKind>(headset, source)}", $"steererKind {Published.Key<SteererKind>(fork, source)}"), "headset-kind", source, expected);

    private static Build On(string headset, string fork) =>
        Build.From(Frame.Read("material steel")).With(Fork.Read(fork), Slot.Fork).With(Headset.Read(headset), Slot.Headset);
}
