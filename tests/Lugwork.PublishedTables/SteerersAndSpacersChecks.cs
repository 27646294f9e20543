using Lugwork.Cockpit;
using Lugwork.Steering;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>How long a steerer is cut, how high spacers may stand, and what goes on a bar, as published.</summary>
public sealed class SteerersAndSpacersChecks
{
    private const string Example = "All forked up, part 1; myrambouilletbuild.blogspot.com, 2008";
    private const string Standard = "TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4; Taiwan Bicycle Industry Standard";
    private const string Gap = "Cutting a steerer: why subtract 3 mm?; RoadBikeReview archive, 2003";
    private const string Limit = "Headset spacer limit on carbon steerer; RoadBikeReview";
    private const string Quoted = "Spacers under the stem; The Paceline Forum, 2012";
    private const string Column = "Technical FAQ: headset spacer stack height; VeloNews";
    private const string Quills = "Handlebar stem size; motorbicycling.com, 2009";
    private const string Mark = "Quill stem (in Japanese); jitetan.com";
    private const string Crib = "Bicycle Handlebar and Stem Dimensions; Love City Cycles";
    private const string Levers = "Bar diameter; standardbikes.ca";
    private const string Seats = "Message on bar diameters; Classic Rendezvous list, 2007";
    private const string Grip = "Which Grip Fits?; Velogear";
    private const string Article = "Headset (bicycle part); Wikipedia";
    private const string Chart = "Headset Standards Explained: Reading the SHIS Chart; a tool maker";
    private const string Cutting = "Fork cutting and headset; allez-allez.net, 2019";

    [Fact]
    [PrintedIn(Example)]
    public void The_published_example_is_cut_at_199_9() =>
        Assert.True(Math.Abs(SteererLength.OfMillimetres(110.2m, 10.9m, 16.5m, 25.3m, 40.0m).Cut.Millimeters - 199.9) < 1e-9, Example);

    [Theory]
    [InlineData(5, Verdict.Fits, Standard)]
    [InlineData(5.1, Verdict.Unsafe, Standard)]
    [InlineData(8, Verdict.Unsafe, Standard)]
    [InlineData(3, Verdict.Fits, Gap)]
    [InlineData(2, Verdict.Fits, Gap)]
    [InlineData(0, Verdict.NeedsPart, Gap)] // flush: the cap bottoms, a spacer goes on top
    public void The_gap_below_the_top_of_the_stem(double gap, Verdict verdict, string source)
    {
        SteererLength stack = SteererLength.OfMillimetres(120, 12.05m, 16.35m, 20, 40);
        SumCheck check = stack.Check(stack.Total - UnitsNet.Length.FromMillimeters(gap));
        Assert.True(check.Verdict == verdict, $"{source}: {gap} mm is {verdict}, judged: {check}");
    }

    [Theory]
    [InlineData("25.4", 25, 25.0, Verdict.Fits, Limit)]
    [InlineData("25.4", 25, null, Verdict.NeedsMeasuring, Column)] // pages disagree: the maker is asked
    [InlineData("28.6", 30, null, Verdict.NeedsMeasuring, Column)]
    [InlineData("28.6", 35, 35.0, Verdict.Fits, Limit)]
    [InlineData("28.6", 50, 50.0, Verdict.Fits, Limit)]
    [InlineData("28.6", 40, 40.0, Verdict.Fits, Quoted)]
    [InlineData("28.6", 41, 40.0, Verdict.Unsafe, Quoted)]
    [InlineData("28.6", 50, null, Verdict.Unsafe, Column)] // no one figure holds for all
    public void Spacers_on_carbon(string steerer, double spacers, double? makers, Verdict verdict, string source) =>
        Assert.True(SteererSpacers.OnCarbon(SteererSize.Parse(steerer, null), UnitsNet.Length.FromMillimeters(spacers), makers is { } most ? UnitsNet.Length.FromMillimeters(most) : null).Verdict == verdict, source);

    [Theory]
    [PrintedIn(Quills)]
    [InlineData(22.2, 25.4)]
    [InlineData(25.4, 28.6)]
    public void A_quill_is_about_an_eighth_of_an_inch_under_its_steerer(double quill, double steerer)
    {
        StemFixing foot = StemFixing.Identify(quill: Mm(quill)).Candidates[0].Value;
        Assert.True(foot.Steerer.Diameter.Millimeters == steerer && Math.Abs(steerer - quill - 3.175) < 0.1, Quills);
    }

    [Fact]
    [PrintedIn(Quills)]
    public void An_old_American_quill() => First(Quills, "quill-21.15", StemFixing.Identify(quill: Mm(21.15)));

    [Fact]
    [PrintedIn(Mark)]
    public void A_quill_without_a_mark_goes_in_by_two_and_a_half_diameters() =>
        Assert.True(Math.Abs(StemFixing.Quill22Point2.LeastInsertion!.Value.Millimeters - 55.5) < 1e-9 && StemFixing.Clamp28Point6.LeastInsertion is null, Mark);

    [Theory]
    [InlineData(28.6, 38.1, 39.8, "tapered-1-1/8-1.5", Chart)]
    [InlineData(38.1, 38.1, 39.8, "straight-1.5", Article)]
    [InlineData(28.6, 34.9, 37.0, "tapered-1-1/8-1-3/8", Cutting)]
    public void A_steerer_by_its_three_diameters(double top, double foot, double seat, string shape, string source) =>
        First(source, shape, SteererShape.Identify(Mm(top), Mm(foot), Mm(seat)));

    [Fact]
    [PrintedIn(Article)]
    public void The_proprietary_steerer_of_39_7_is_none_of_the_listed_ones()
    {
        Assert.True(SteererSize.Identify(diameter: Mm(39.7, 0.1)).Candidates.IsEmpty, Article);
        Assert.False(SteererSize.TryParse("39.7", null, out _), Article);
    }

    [Theory]
    [InlineData(22.2, 22.2, "22.2", Crib)]
    [InlineData(23.8, 22.2, "23.8", Crib)]
    [InlineData(25.0, 23.5, "25", Crib)]
    [InlineData(25.4, 22.2, "25.4", Crib)]
    [InlineData(25.4, 23.8, "25.4", Crib)]
    [InlineData(25.8, 23.8, "25.8", Crib)]
    [InlineData(26.0, 23.8, "26", Crib)]
    [InlineData(26.4, 23.8, "26.4", Crib)]
    [InlineData(27.0, 23.8, "27", Crib)]
    [InlineData(31.8, 22.2, "31.8", Crib)]
    [InlineData(31.8, 23.8, "31.8", Seats)]
    [InlineData(31.7, 23.8, "31.8", Grip)]
    public void A_bar_by_its_middle_and_its_grip(double clamp, double grip, string key, string source) => First(source, key, BarClamp.Identify(Mm(clamp), Mm(grip)));

    [Theory]
    [InlineData("23.8", "drop-bar-lever", Verdict.Fits, Seats)] // whatever the middle measures
    [InlineData("23.8", "flat-bar-control", Verdict.DoesNotFit, Levers)]
    [InlineData("22.2", "drop-bar-lever", Verdict.DoesNotFit, Levers)]
    [InlineData("22.2", "flat-bar-control", Verdict.Fits, Crib)] // BMX bars too
    public void A_lever_on_a_bar(string bar, string control, Verdict verdict, string source) =>
        Assert.True(ControlRelations.OnBar.Judge([GripDiameter.Parse(bar, null).FitCode, ControlClamp.Parse(control, null).FitCode]).Verdict == verdict, source);
}
