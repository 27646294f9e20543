namespace Lugwork.PublishedTables;

/// <summary>Tyres in frames and forks: published cases, each with its source.</summary>
public sealed class TyreRoomChecks
{
    private const string Narrower = "Why are tires sometimes narrower than their listed size?; a tyre maker's help centre";
    private const string Manual = "Operation manual, wheels check; a bicycle maker";
    private const string Racing = "EN 14781 clause 4.10.2 as quoted; lfgss.com";
    private const string Arithmetic = "arithmetic on the published sizes";

    [Theory]
    [InlineData("largest as printed", "42-622", "42-622", Verdict.Fits, Manual)]
    [InlineData("narrower", "42-622", "37-622", Verdict.Fits, Manual)]
    [InlineData("wider", "42-622", "45-622", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("E36: 37 counts, not 35", "35-622", "37-622", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("largest not known", "unknown", "37-622", Verdict.NeedsMeasuring, Manual)]
    [InlineData("tyre not known", "42-622", "unknown", Verdict.NeedsMeasuring, Manual)]
    public void A_tyre_has_room_as_published(string row, string largest, string tyre, Verdict expected, string source)
    {
        Published.Says(Rear(largest, tyre), "rear-tyre-in-frame", $"{row}, {source}", expected);
        Published.Says(Front(largest, tyre), "front-tyre-in-fork", $"{row}, {source}", expected);
    }

    /// <summary>Bigger round though narrower, or the same round though wider: no page says that the printed limit covers it.</summary>
    [Theory]
    [PrintedIn(Arithmetic)]
    [InlineData("E72: same outer diameter, 19 mm wider", "28-622", "47-584")]
    [InlineData("27 in for 700C", "32-622", "32-630")]
    [InlineData("29 in for 27.5 in", "58-584", "54-622")]
    [InlineData("26 in for 700C", "42-622", "40-559")]
    [InlineData("635 for 622", "42-622", "40-635")]
    public void Another_wheel_size_is_no_fit(string row, string largest, string tyre)
    {
        Published.SaysNothingMilder(Rear(largest, tyre), "rear-tyre-in-frame", $"{row}, {Arithmetic}", Verdict.NeedsMeasuring);
        Published.SaysNothingMilder(Front(largest, tyre), "front-tyre-in-fork", $"{row}, {Arithmetic}", Verdict.NeedsMeasuring);
    }

    [Fact]
    [PrintedIn(Narrower)]
    public void A_forty_on_a_wide_rim_outgrows_a_frame_cleared_for_42()
    {
        Build build = Rear("42-622", "40-622").With(Wheel.Read("beadSeat 622; innerWidth 25"), Slot.RearWheel);

        // One tyre was measured at 45 mm; between the two published rates of growth it is 41.2 to 43 mm, so it has to be measured.
        Published.SaysNothingMilder(build, "rear-tyre-on-its-rim-in-frame", $"E61: 45 mm on a rim of 25 mm, {Narrower}", Verdict.NeedsMeasuring);
    }

    [Fact]
    [PrintedIn(Narrower)]
    public void A_forty_on_a_19_rim_has_room_in_a_frame_cleared_for_42()
    {
        Build build = Rear("42-622", "40-622").With(Wheel.Read("beadSeat 622; innerWidth 19"), Slot.RearWheel);

        Published.Says(build, "rear-tyre-in-frame", $"39 mm on a rim of 19 mm, {Narrower}", Verdict.Fits);
    }

    [Theory]
    [InlineData("6 mm a side, all others", "12 mm", Manual)]
    [InlineData("4 mm a side, racing", "8 mm", Racing)]
    [InlineData("tolerance of the tyre", "3 mm", Narrower)]
    public void The_measuring_note_keeps_the_published_gap(string row, string words, string source)
    {
        Fit fit = Published.Of(Rear("unknown", "37-622"), "rear-tyre-in-frame");
        Assert.True(fit.Measurements.Any(m => m.How.Contains(words, StringComparison.Ordinal)), $"{row}, {source}: {string.Join(" | ", fit.Measurements)}");
    }

    [Fact]
    [PrintedIn(Narrower)]
    public void A_fit_by_the_label_carries_the_caution_of_3_mm()
    {
        Fit fit = Published.Of(Rear("42-622", "40-622"), "rear-tyre-in-frame");
        Assert.True(fit.Cautions.Any(c => c.Text.Contains("3 mm", StringComparison.Ordinal)), $"E60, {Narrower}: {fit}, cautions: {string.Join(" | ", fit.Cautions.Select(c => c.Text))}");
    }

    private static Build Rear(string largest, string tyre) =>
        Build.From(Frame.Read($"largestRearTyre {largest}")).With(Tyre.Read($"size {tyre}"), Slot.RearTyre);

    private static Build Front(string largest, string tyre) =>
        Build.From(Frame.Read("material steel")).With(Fork.Read($"largestFrontTyre {largest}"), Slot.Fork).With(Tyre.Read($"size {tyre}"), Slot.FrontTyre);
}
