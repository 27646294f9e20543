using FsCheck;
using FsCheck.Xunit;
using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

/// <summary>Tyre in frame: arithmetic and its inverse agree at the boundary.</summary>
public sealed class TyreRoomLaws
{
    private const long Millimetre = 1_000_000;

    [Property(MaxTest = 5_000)]
    public void A_tyre_fits_exactly_up_to_what_the_inverse_accepts(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        long limit = random.Next(18, 133) * Millimetre;
        long limitSeat = BeadSeat.All[random.Next(BeadSeat.All.Length)].FitCode;
        long seat = random.Next(2) == 0 ? limitSeat : BeadSeat.All[random.Next(BeadSeat.All.Length)].FitCode;
        long most = TyreRoom.Accepts(limit, limitSeat, seat);
        foreach (long width in new[] { limit - 1, limit, limit + 1, 18 * Millimetre, 132 * Millimetre })
        {
            Assert.Equal(width <= most, TyreRoom.InFrame.Judge([width, limit, seat, limitSeat]).Verdict == Verdict.Fits);
        }
    }

    [Theory]
    [InlineData("42-622", "42-622", Verdict.Fits)]
    [InlineData("43-622", "42-622", Verdict.DoesNotFit)]
    [InlineData("47-584", "42-622", Verdict.NeedsMeasuring)]
    [InlineData("32-622", "47-584", Verdict.NeedsMeasuring)]
    [InlineData("42-622", "none", Verdict.NeedsMeasuring)]
    [InlineData("42-622", "unknown", Verdict.NeedsMeasuring)]
    public void Another_wheel_size_is_asked_for_never_judged_by_its_width(string tyre, string largest, Verdict expected) =>
        Assert.Equal(expected, Builds.Bench.Judge("rear-tyre-in-frame", $"largest tyre {largest}", (Slot.RearTyre, Tyre.Read(tyre))).Verdict);

    [Property(MaxTest = 5_000)]
    public void A_tyre_stays_within_its_limit_exactly_up_to_the_widest_rim_of_the_inverse(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        long width = random.Next(18, 133) * Millimetre;
        long limit = width + (random.Next(-2, 12) * Millimetre);
        long widest = TyreRoom.WidestRim(width, limit);
        foreach (long inner in new[] { widest - 1, widest, widest + 1, 13 * Millimetre }.Where(i => i > 0))
        {
            Assert.Equal(inner <= widest, TyreRoom.Grown.Judge([width, inner, limit, 622, 622, 0, 0]).Verdict == Verdict.Fits);
            Assert.Equal(Verdict.NeedsMeasuring, TyreRoom.Grown.Judge([width, inner, limit, 584, 622, 0, 0]).Verdict);
        }
    }

    /// <summary>2020 ETRTO standards for bike tires: the measuring rims, at both ends of each row; growth from there by 0.4 to 1.0 mm a millimetre.</summary>
    [Theory]
    [InlineData("57-622", "57-622", "25", Verdict.Fits)]
    [InlineData("57-622", "57-622", "30", Verdict.NeedsMeasuring)]
    [InlineData("65-622", "65-622", "35", Verdict.NeedsMeasuring)]
    [InlineData("28-622", "28-622", "19", Verdict.Fits)]
    [InlineData("29-622", "29-622", "21", Verdict.Fits)]
    [InlineData("30-622", "30-622", "21", Verdict.Fits)]
    [InlineData("30-622", "30-622", "21.1", Verdict.NeedsMeasuring)]
    [InlineData("35-622", "35-622", "21", Verdict.Fits)]
    [InlineData("45-622", "45-622", "25", Verdict.NeedsMeasuring)]
    [InlineData("100-559", "102-559", "76", Verdict.Fits)]
    [InlineData("120-559", "120-559", "94", Verdict.Fits)]
    [InlineData("57-584", "57-622", "25", Verdict.NeedsMeasuring)]
    public void The_makers_own_largest_tyre_fits_on_its_measuring_rim(string tyre, string largest, string inner, Verdict expected) =>
        Assert.Equal(expected, Builds.Bench.Judge("rear-tyre-on-its-rim-in-frame", $"largest tyre {largest}", (Slot.RearTyre, Tyre.Read(tyre)), (Slot.RearWheel, Wheel.Read($"inner width {inner}"))).Verdict);

    [Theory]
    [InlineData("19", Verdict.Fits)]
    [InlineData("23", Verdict.Fits)]
    [InlineData("23.1", Verdict.NeedsMeasuring)]
    [InlineData("25", Verdict.NeedsMeasuring)]
    [InlineData("35.5", Verdict.NeedsMeasuring)]
    [InlineData("35.6", Verdict.DoesNotFit)]
    [InlineData("24.8 ± 0.5", Verdict.NeedsMeasuring)]
    [InlineData("22.5 ± 0.5", Verdict.Fits)]
    [InlineData("23 ± 0.5", Verdict.NeedsMeasuring)]
    [InlineData("unknown", Verdict.NeedsMeasuring)]
    public void A_40_under_a_limit_of_42_is_asked_about_on_a_rim_wider_than_it_is_measured_on(string inner, Verdict expected) =>
        Assert.Equal(expected, Builds.Bench.Judge("rear-tyre-on-its-rim-in-frame", "largest tyre 42-622", (Slot.RearTyre, Tyre.Read("40-622")), (Slot.RearWheel, Wheel.Read($"inner width {inner}"))).Verdict);

    /// <summary>Tyres differ from their label by 3 mm: one that grows fits only that far within the limit.</summary>
    [Theory]
    [InlineData("45-622", "25", Verdict.Fits)]
    [InlineData("44-622", "25", Verdict.NeedsMeasuring)]
    public void A_40_that_grows_by_2_mm_fits_where_3_more_are_left(string largest, string inner, Verdict expected) =>
        Assert.Equal(expected, Builds.Bench.Judge("rear-tyre-on-its-rim-in-frame", $"largest tyre {largest}", (Slot.RearTyre, Tyre.Read("40-622")), (Slot.RearWheel, Wheel.Read($"inner width {inner}"))).Verdict);

    /// <summary>What was measured takes the place of what is reckoned: on the rim on which it was measured as it is, on another by what a tyre grows or shrinks.</summary>
    [Theory]
    [InlineData("mounted width 42; mounted on rim 25", "25", Verdict.Fits)]
    [InlineData("mounted width 42.1; mounted on rim 25", "25", Verdict.NeedsMeasuring)]
    [InlineData("mounted width 45; mounted on rim 25", "25", Verdict.NeedsMeasuring)]
    [InlineData("mounted width 45.1; mounted on rim 25", "25", Verdict.DoesNotFit)]
    [InlineData("mounted width 40; mounted on rim 21", "23", Verdict.Fits)]
    [InlineData("mounted width 40; mounted on rim 21", "23.1", Verdict.NeedsMeasuring)]
    [InlineData("mounted width 44; mounted on rim 21", "23.5", Verdict.NeedsMeasuring)]
    [InlineData("mounted width 44; mounted on rim 21", "23.6", Verdict.DoesNotFit)]
    [InlineData("mounted width 42.8; mounted on rim 25", "23", Verdict.Fits)]
    [InlineData("mounted width 42.9; mounted on rim 25", "23", Verdict.NeedsMeasuring)]
    [InlineData("mounted width 47.1; mounted on rim 25", "23", Verdict.DoesNotFit)]
    [InlineData("mounted width 41", "25", Verdict.NeedsMeasuring)]
    [InlineData("mounted on rim 25", "23", Verdict.Fits)]
    [InlineData("mounted width 41 \u00B1 1; mounted on rim 25", "25", Verdict.Fits)]
    [InlineData("mounted width 42 \u00B1 0.5; mounted on rim 25", "25", Verdict.NeedsMeasuring)]
    [InlineData("mounted width 41; mounted on rim 25", "unknown", Verdict.NeedsMeasuring)]
    public void A_mounted_width_that_was_measured_takes_the_place_of_the_growth(string measured, string inner, Verdict expected) =>
        Assert.Equal(expected, Builds.Bench.Judge("rear-tyre-on-its-rim-in-frame", "largest tyre 42-622", (Slot.RearTyre, Tyre.Read("40-622; " + measured)), (Slot.RearWheel, Wheel.Read($"inner width {inner}"))).Verdict);

    [Fact]
    public void A_tyre_that_may_grow_too_wide_asks_for_its_mounted_width_and_is_settled_by_it()
    {
        Build build = Build.From(Frame.Read("largest tyre 42-622")).With(Tyre.Read("40-622"), Slot.RearTyre).With(Wheel.Read("inner width 25"), Slot.RearWheel);
        Fit asked = build.Check().Findings.Single(f => f.Joint!.Id == "rear-tyre-on-its-rim-in-frame");
        Assert.Equal(["mountedWidth", "mountedRim"], asked.Measurements.Select(m => m.Field));
        Build measured = build.WithMeasured(Slot.RearTyre, "mountedWidth", "41.5").WithMeasured(Slot.RearTyre, "mountedRim", "25");
        Assert.Equal(Verdict.Fits, measured.Check().Findings.Single(f => f.Joint!.Id == "rear-tyre-on-its-rim-in-frame").Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, measured.With(Wheel.Read("inner width 27"), Slot.RearWheel).Check().Findings.Single(f => f.Joint!.Id == "rear-tyre-on-its-rim-in-frame").Verdict);
    }

    /// <summary>A larger tyre than the fork's maker allows is dangerous in a fork, and asked about in a frame.</summary>
    [Theory]
    [InlineData("57-584", "37-622", Verdict.NeedsMeasuring)]
    [InlineData("57-584", "38-622", Verdict.NeedsMeasuring)]
    [InlineData("57-584", "39-622", Verdict.Unsafe)]
    [InlineData("57-622", "75-584", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "57-622", Verdict.NeedsMeasuring)]
    [InlineData("57-584", "size unknown", Verdict.NeedsMeasuring)]
    public void Another_wheel_size_in_a_fork_is_unsafe_where_the_tyre_is_larger_outside(string largest, string tyre, Verdict inFork)
    {
        Build build = Build.From(Frame.Read($"largest tyre {largest}"))
            .With(Fork.Read($"largest tyre {largest}; travel 120"))
            .With(Tyre.Read(tyre), Slot.FrontTyre)
            .With(Tyre.Read(tyre), Slot.RearTyre);
        Assert.Equal(inFork, build.Check().Findings.Single(f => f.Joint!.Id == "front-tyre-in-fork").Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, build.Check().Findings.Single(f => f.Joint!.Id == "rear-tyre-in-frame").Verdict);
        foreach (string travel in new[] { "none", "unknown" })
        {
            Assert.Equal(Verdict.NeedsMeasuring, build.With(Fork.Read($"largest tyre {largest}; travel {travel}")).Check().Findings.Single(f => f.Joint!.Id == "front-tyre-in-fork").Verdict);
        }
    }
}
