namespace Lugwork.PublishedTables;

/// <summary>Threads of thru-axles in frames and forks: published cases, each with its source.</summary>
public sealed class ThruAxlesChecks
{
    private const string Help = "How to Measure a Bicycle Thru-Axle; Modern Bike help pages";
    private const string Maker = "How to Measure a Bicycle Thru-Axle; Hardlite Components";
    private const string Universal = "Do we need to eliminate the derailleur hanger and embrace UDH; ICAN Cycling";
    private const string WhatIs = "What is the UDH; BikeRadar";
    private const string ManyKinds = "MTB Thru Axles: who knew there were so many 'standards'; bikeandskiblog.com";
    private const string Guide = "Bicycle Thru-Axle Measuring Guide; Ti-Parts Titanium";
    private const string Arithmetic = "arithmetic on the published diameters";
    private const string Practice = "common practice, no source";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("M12x1.0", "M12x1.0", Verdict.Fits, Universal)]
    [InlineData("M12x1.5", "M12x1.5", Verdict.Fits, Help)]
    [InlineData("M12x1.75", "M12x1.75", Verdict.Fits, Maker)]
    [InlineData("M12x1.0", "M12x1.5", Verdict.Unsafe, Help)]
    [InlineData("M12x1.5", "M12x1.0", Verdict.Unsafe, Maker)]
    [InlineData("M12x1.5", "M12x1.75", Verdict.Unsafe, Help)]
    [InlineData("M12x1.75", "M12x1.0", Verdict.Unsafe, Maker)]
    [InlineData("M12x1.0", "M12", Verdict.NeedsMeasuring, WhatIs)]
    [InlineData("M12x1.5", "unknown", Verdict.NeedsMeasuring, Help)]
    [InlineData("unknown", "M12x1.0", Verdict.NeedsMeasuring, Universal)]
    [InlineData("M12x1.5", "M15x1.5", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("none", "M12x1.5", Verdict.DoesNotFit, Arithmetic)]
    public void A_rear_axle_screws_in_as_published(string frame, string axle, Verdict expected, string source) =>
        Published.Says(Rear(frame, axle), "rear-axle-in-frame", source, expected);

    [Theory]
    [InlineData("M12x1.5", "M12x1.5", Verdict.Fits, Help)]
    [InlineData("M15x1.5", "M15x1.5", Verdict.Fits, Maker)]
    [InlineData("M12x1.5", "M12x1.0", Verdict.Unsafe, Help)]
    [InlineData("M15x1.5", "M12x1.5", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("M12x1.5", "M15x1.5", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("own", "own", Verdict.NeedsMeasuring, Memory)]
    [InlineData("own", "M15x1.5", Verdict.NeedsMeasuring, Memory)]
    [InlineData("unknown", "M15x1.5", Verdict.NeedsMeasuring, Maker)]
    public void A_front_axle_screws_in_as_published(string fork, string axle, Verdict expected, string source) =>
        Published.Says(Front(fork, axle), "front-axle-in-fork", source, expected);

    [Theory]
    [InlineData(Maker)]
    [InlineData(ManyKinds)]
    public void A_thread_that_matches_still_asks_for_the_length(string source)
    {
        foreach (Fit fit in new[] { Published.Of(Rear("M12x1.5", "M12x1.5"), "rear-axle-in-frame"), Published.Of(Front("M12x1.5", "M12x1.5"), "front-axle-in-fork") })
        {
            Assert.True(fit.Sentence.Contains("length", StringComparison.Ordinal), $"{source}: two axles of 12x142 are 163 and 171 mm long; {fit}");
        }
    }

    [Theory]
    [InlineData("12 x 1.0", "M12x1.0", Practice)]
    [InlineData("M12 x 1.5", "M12x1.5", Practice)]
    [InlineData("M12×1.75", "M12x1.75", Practice)]
    [InlineData("M12 P1.0", "M12x1.0", Practice)]
    [InlineData("M15x1.5", "M15x1.5", Practice)]
    public void A_thread_is_read_in_the_spellings_of_the_trade(string text, string key, string source)
    {
        bool good = ThruAxle.TryRead($"thread {text}", out ThruAxle axle, out var problems);
        Assert.True(good && axle.Thread.ToString() == key, $"{source}: {text} is {key}, read: {axle.Thread} {string.Join(" | ", problems)}");
    }

    [Fact]
    [PrintedIn(Guide)]
    public void A_caliper_reads_just_under_the_thread()
    {
        bool good = ThruAxle.TryRead("thread 11.9 ± 0.05", out ThruAxle axle, out _);
        Assert.True(!good || axle.Thread.Values.All(t => t.FitKey.StartsWith("M12", StringComparison.Ordinal)), $"{Guide}: 11.85 to 11.95 is M12, read: {axle.Thread}");
    }

    private static Build Rear(string frame, string axle) =>
        Build.From(Frame.Read($"rearAxleThread {frame}")).With(ThruAxle.Read($"thread {axle}"), Slot.RearThruAxle);

    private static Build Front(string fork, string axle) =>
        Build.From(Frame.Read("material steel")).With(Fork.Read($"frontAxleThread {fork}"), Slot.Fork).With(ThruAxle.Read($"thread {axle}"), Slot.FrontThruAxle);
}
