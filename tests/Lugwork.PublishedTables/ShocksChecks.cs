using Lugwork.Suspension;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>Shock sizes as lists and product pages print them.</summary>
public sealed class ShocksChecks
{
    private const string CoilList = "Coil shock review (sizes available); Blister Review";
    private const string Inline = "Inline coil shock review (sizes); Pinkbike, 2023";
    private const string Options = "Rear shock product page, 2016 (travel options); Vital MTB";
    private const string Details = "Shock details; Sicklines";
    private const string Story = "Air shock: the full story; BikeRadar";
    private const string Product = "210 x 55 mm rear shock, product page; BikeCo, 2024";
    private const string Review = "Rear shock review; Mountain Biking UK, 2022";
    private const string AirReview = "Air shock review 2017; Pinkbike (copy)";
    private const string Demystified = "New metric shock sizes demystified; Vital MTB, 2016";
    private const string Guide = "Ultimate guide: metric shock sizing; Worldwide Cyclery";
    private const string Launch = "A suspension maker heralds the era of metric-sized shocks; BikeRadar, 2016";
    private const string News = "First metric shocks launched; MBR, 2016";
    private const string Bushings = "Rear shock eyelet bushings; Bums on the Saddle, 2019";
    private const string Measure = "How to measure the shock and hardware size; MTB Direct";
    private const string Wear = "Trunnion mounts and shock wear; Pinkbike, 2022";

    [Theory]
    [InlineData("190x45", "eyelet-190x45", CoilList)]
    [InlineData("210x50", "eyelet-210x50", CoilList)]
    [InlineData("210x52.5", "eyelet-210x52.5", CoilList)]
    [InlineData("210x55", "eyelet-210x55", CoilList)]
    [InlineData("230x57.5", "eyelet-230x57.5", CoilList)]
    [InlineData("230x60", "eyelet-230x60", CoilList)]
    [InlineData("230x62.5", "eyelet-230x62.5", CoilList)]
    [InlineData("230x65", "eyelet-230x65", CoilList)]
    [InlineData("250x67.5", "eyelet-250x67.5", CoilList)]
    [InlineData("250x70", "eyelet-250x70", CoilList)]
    [InlineData("250x75", "eyelet-250x75", CoilList)]
    [InlineData("165x45", "trunnion-165x45", CoilList)]
    [InlineData("185x50", "trunnion-185x50", CoilList)]
    [InlineData("185x55", "trunnion-185x55", CoilList)]
    [InlineData("205x57.5", "trunnion-205x57.5", CoilList)]
    [InlineData("205x65", "trunnion-205x65", CoilList)]
    [InlineData("225x67.5", "trunnion-225x67.5", CoilList)]
    [InlineData("225x75", "trunnion-225x75", CoilList)]
    [InlineData("7.875 x 2.25 in", "eyelet-200x57", CoilList)]
    [InlineData("7.5 x 2.0 in", "eyelet-190.5x51", CoilList)]
    [InlineData("190 x 40", "eyelet-190x40", Inline)]
    [InlineData("190 x 42.5", "eyelet-190x42.5", Inline)]
    [InlineData("trunnion 165 x 40", "trunnion-165x40", Inline)]
    [InlineData("trunnion 165 x 42.5", "trunnion-165x42.5", Inline)]
    [InlineData("trunnion 185 x 52.5", "trunnion-185x52.5", Inline)]
    [InlineData("7.875 x 2.00 in", "eyelet-200x51", Options)]
    [InlineData("8.50 x 2.50 in", "eyelet-216x63.5", Options)]
    [InlineData("8.75 x 2.75 in", "eyelet-222x70", Options)]
    [InlineData("9.50 x 3.00 in", "eyelet-241x76", Options)]
    [InlineData("10.50 x 3.50 in", "eyelet-267x89", Options)]
    [InlineData("241.3 x 76.2", "eyelet-241x76", Details)]
    [InlineData("190 x 50", "eyelet-190.5x51", Story)]
    [InlineData("7.5 x 2 in", "eyelet-190.5x51", Story)]
    [InlineData("267 x 90", "eyelet-267x89", Story)]
    [InlineData("210 x 55 mm", "eyelet-210x55", Product)]
    [InlineData("205 x 65 mm, trunnion", "trunnion-205x65", Review)]
    [InlineData("200 x 57", "eyelet-200x57", AirReview)]
    public void A_size_in_the_words_of_its_page(string text, string key, string source) => Reads<ShockSize>(source, key, text);

    [Theory]
    [InlineData("7.875x2.25 in", "200x57", Verdict.Fits, Demystified)] // one size, two names
    [InlineData("210x50", "210x55", Verdict.Unsafe, Guide)] // the frame may bottom out
    [InlineData("210x55", "trunnion 185x55", Verdict.DoesNotFit, Inline)]
    public void A_shock_in_a_frame(string frame, string shock, Verdict verdict, string source) =>
        Assert.True(ShockRelations.InFrame.Judge([ShockSize.Parse(frame, null).FitCode, ShockSize.Parse(shock, null).FitCode]).Verdict == verdict, source);

    [Theory]
    [InlineData(190, 50, "eyelet-190.5x51", Story)]
    [InlineData(241.3, 76.2, "eyelet-241x76", Details)]
    [InlineData(210, 55, "eyelet-210x55", Product)]
    public void A_shock_by_its_measures(double eye, double stroke, string key, string source) => First(source, key, ShockSize.Identify(Mm(eye, 0.2), Mm(stroke, 0.2)));

    [Theory]
    [InlineData(Launch)]
    [InlineData(News)]
    public void Metric_hardware_comes_in_eighteen_combinations(string source)
    {
        int listed = 0;
        foreach (int width in new[] { 15, 20, 25, 30, 35, 40 })
        {
            foreach (int bolt in new[] { 6, 8, 10 })
            {
                listed += ShockHardware.Parse($"{width} x {bolt}", null).IsMetric ? 1 : 0;
            }
        }

        Assert.True(listed == 18 && ShockHardware.All.Count(h => h.IsMetric) == 18, source);
    }

    [Fact]
    [PrintedIn(CoilList)]
    [PrintedIn(Launch)]
    public void Hardware_of_21_8_and_22_2_is_easily_confused()
    {
        Identification<ShockHardware> found = ShockHardware.Identify(width: Mm(22.0, 0.2), bolt: Mm(8));
        Among(Launch, "21.8x8", found);
        Among(Launch, "22.2x8", found);
        Assert.Contains(found.Candidates, c => c.TellsApart.Contains("confused", StringComparison.Ordinal));
        Reads<ShockHardware>(CoilList, "22.2x8", "22.2 x 8 mm");
    }

    [Fact]
    [PrintedIn(Measure)]
    public void Hardware_is_the_frames_own() => Assert.True(ShockRelations.Hardware.Judge([ShockHardware.Parse("24x8", null).FitCode, ShockHardware.Parse("22.2x8", null).FitCode]).Verdict == Verdict.DoesNotFit, Measure);

    [Theory]
    [InlineData(12.6, 15.2, "12.7", Details)]
    [InlineData(12.75, 15.2, "12.7", Details)]
    [InlineData(12.0, 14.0, "12", Details)]
    [InlineData(12.7, null, "12.7", Bushings)]
    [InlineData(12.0, null, "12", Bushings)]
    public void A_bush_by_its_measures(double inside, double? eyelet, string key, string source) =>
        First(source, key, ShockBush.Identify(Mm(inside), eyelet is { } bore ? Mm(bore) : null));

    [Fact]
    [PrintedIn(Bushings)]
    public void A_12_7_bush_does_not_go_in_a_12_0_eyelet() => Assert.True(ShockRelations.Bush.Judge([ShockBush.Mm12.FitCode, ShockBush.Mm12Point7.FitCode]).Verdict == Verdict.DoesNotFit, Bushings);

    [Fact]
    [PrintedIn(Wear)]
    public void A_trunnion_carries_its_caution() =>
        Assert.True(ShockSize.Parse("trunnion 205x65", null).Mount == ShockMount.Parse("trunnion mount", null) && ShockMount.Parse("trunnion", null).Caution is not null && ShockMount.Parse("eye to eye", null).Caution is null, Wear);
}
