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
            Assert.Equal(inner <= widest, TyreRoom.Grown.Judge([width, inner, limit]).Verdict == Verdict.Fits);
        }
    }

    [Theory]
    [InlineData("19", Verdict.Fits)]
    [InlineData("24", Verdict.Fits)]
    [InlineData("24.1", Verdict.NeedsMeasuring)]
    [InlineData("27", Verdict.NeedsMeasuring)]
    [InlineData("27.1", Verdict.DoesNotFit)]
    [InlineData("24 ± 0.5", Verdict.NeedsMeasuring)]
    [InlineData("23 ± 0.5", Verdict.Fits)]
    [InlineData("unknown", Verdict.NeedsMeasuring)]
    public void A_40_under_a_limit_of_42_may_be_up_to_24_mm_wide_inside(string inner, Verdict expected) =>
        Assert.Equal(expected, Builds.Bench.Judge("rear-tyre-on-its-rim-in-frame", "largest tyre 42-622", (Slot.RearTyre, Tyre.Read("40-622")), (Slot.RearWheel, Wheel.Read($"inner width {inner}"))).Verdict);
}
