using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables;

/// <summary>Bodies, threads, chains and cassettes: printed dimensions put in as readings, printed totals against the sum of pitches, each with its source.</summary>
/// <remarks>32 to 33 mm is printed for 7 speeds, 31.8 is the sum; the pitch of close 11 speeds is from memory and meets the printed lengthening of 1.85 mm.</remarks>
public sealed class SprocketsChecks
{
    private const string Interchange = "Sprocket and wheel interchange explained; Cyclabo";
    private const string Types = "Freehub types, standards for road and MTB wheels; Cyclabo";
    private const string Lengths = "Freehubs and cassettes (body length table); cornant.uk";
    private const string Forum = "11-speed cassette on 10-speed hub (body lengths); Slowtwitch forum";
    private const string SideBySide = "HG, Micro Spline, road 12 and XDR measured side by side; handsonbike.blogspot.com";
    private const string Bodies = "8-spline freehub bodies: which do you have?; Branford Bike";
    private const string Short = "1x13 gravel group and the N3W body; chan-bike.com";
    private const string Launch = "Launch of the 13-speed gravel group; road.cc";
    private const string Closeup = "Closeup: Micro Spline; Bikerumor";
    private const string HubGears = "Alles ueber Nabenschaltungen; WikiPedalia";
    private const string Freewheels = "Traditional Thread-on Freewheels; sheldonbrown.com";
    private const string NoLockring = "Fixed gear without lockring; movimentofisso.it";
    private const string Widths = "Bicycle chain explained (width tables); Cycling Boutique";
    private const string Catalogue = "Chains; Velogear";
    private const string Spacing = "New Shifters, and Nine Over Eight Gearing?; 2nd-gear.blogspot.com";
    private const string CribSheet = "Frame/hub spacing and sprocket spacing crib sheet; sheldonbrown.com";
    private const string Totals = "Cassette total widths (table); brainybiker.com";
    private const string Glossary = "11-speed cassette (glossary entry, in Japanese); jitetan.com";

    [Theory]
    [InlineData(31, 9, "HG-S", Lengths)]
    [InlineData(34.9, 9, "HG-M", Interchange)]
    [InlineData(34.95, 9, "HG-M", Forum)]
    [InlineData(35, 9, "HG-M", Lengths)]
    [InlineData(35, 9, "HG-10only", Lengths)]
    [InlineData(36.75, 9, "HG-L", Interchange)]
    [InlineData(36.75, 9, "HG-L", Forum)]
    [InlineData(37.65, 18, "HG-L2", SideBySide)]
    [InlineData(36, 8, "C8-old", Lengths)]
    [InlineData(31, 8, "C8-old", Lengths)]
    [InlineData(38, 8, "C9-12", Lengths)]
    [InlineData(38, 8, "C9-12", Bodies)]
    [InlineData(33.6, 8, "N3W", Short)]
    public void A_body_is_told_by_its_printed_length(double length, int splines, string key, string source) => Among(FreehubBody.Identify(Mm(length), splines), key, source, 0);

    [Theory]
    [InlineData(34.92, 24, "1.375x24", Freewheels)]
    [InlineData(34.8, 24, "British-1.370x24", Freewheels)]
    [InlineData(35, 24, "1.378x24", Freewheels)]
    [InlineData(34.7, 25.4, "34.7x1", Freewheels)]
    [InlineData(30, 25.4, "30x1", Freewheels)]
    public void A_freewheel_thread_is_told_by_its_printed_dimensions(double diameter, double threads, string key, string source) =>
        Among(FreewheelThread.Identify(Mm(diameter), (decimal)threads), key, source, 0.01m);

    [Theory]
    [InlineData(7.8, 2.38, "5-8", Catalogue)]
    [InlineData(7.3, 2.38, "5-8", Widths)]
    [InlineData(7.0, 2.38, "5-8", Widths)]
    [InlineData(6.6, 2.18, "9", Widths)]
    [InlineData(6.2, 2.18, "10", Widths)]
    [InlineData(5.84, 2.18, "10", Widths)]
    [InlineData(5.46, 2.18, "11", Widths)]
    [InlineData(5.25, 2.18, "12", Widths)]
    [InlineData(4.9, 2.18, "13", Widths)]
    [InlineData(0, 3.175, "1/8", Widths)]
    [InlineData(0, 4.0, "5/32", Widths)]
    public void A_chain_is_told_by_its_printed_widths(double rivets, double inside, string key, string source) => Among(ChainSize.Identify(rivets == 0 ? null : Mm(rivets), Mm(inside)), key, source, 0);

    [Theory]
    [InlineData("5-freewheel", 24.0, 0.001, CribSheet)]
    [InlineData("5-freewheel-narrow", 23.2, 0.051, CribSheet)]
    [InlineData("6-speed", 29.5, 0.001, Spacing)]
    [InlineData("7", 32, 0.21, Spacing)]
    [InlineData("8", 35.4, 0.001, Totals)]
    [InlineData("9", 36.5, 0.03, Totals)]
    [InlineData("10", 37.2, 0.06, Totals)]
    [InlineData("11-wide", 40.6, 0.001, Totals)]
    [InlineData("12", 41.2, 0.001, Totals)]
    [InlineData("11-close", 39.0, 0.01, Glossary)]
    public void Sprockets_stack_up_to_the_printed_total(string spacing, double total, double off, string source) =>
        Assert.True(Math.Abs(total - SprocketSpacing.Parse(spacing, null).Stack!.Value.Millimeters) <= off, $"{source}: {SprocketSpacing.Parse(spacing, null).Stack}");

    private static MeasuredLength Mm(double millimetres) => MeasuredLength.OfMillimetres((decimal)millimetres);

    private static void Among<T>(Identification<T> found, string key, string source, decimal most)
        where T : Standard<T>, IInterfaceValue<T> =>
        Assert.True(found.Candidates.Any(c => c.Value.FitKey == key && c.DeviationMillimetres <= most), $"{source}: {key} is printed, found {string.Join(", ", found.Candidates)}");
}
