using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Suspension;

/// <summary>Fork limits and the rear shock in a build: both sides of each boundary, an unknown on each side, and a trap.</summary>
public sealed class SuspensionJointTests
{
    [Theory]
    [InlineData("longest fork 500; most fork travel none", "axle to crown 500; travel 120", Verdict.Fits)]
    [InlineData("longest fork 500; most fork travel none", "axle to crown 500.000001; travel 120", Verdict.Unsafe)]
    [InlineData("longest fork none; most fork travel 120", "axle to crown 500; travel 120", Verdict.Fits)]
    [InlineData("longest fork none; most fork travel 120", "axle to crown 500; travel 120.000001", Verdict.Unsafe)]
    [InlineData("longest fork 500; most fork travel 120", "axle to crown 495; travel none", Verdict.Fits)]
    [InlineData("longest fork 500; most fork travel 120", "axle to crown 501; travel none", Verdict.Unsafe)]
    [InlineData("longest fork none; most fork travel none", "axle to crown 395; travel none", Verdict.NeedsMeasuring)]
    [InlineData("longest fork unknown; most fork travel none", "axle to crown 395; travel none", Verdict.NeedsMeasuring)]
    [InlineData("longest fork 500; most fork travel none", "travel 120", Verdict.NeedsMeasuring)]
    [InlineData("longest fork 500; most fork travel none", "axle to crown 499 ± 2; travel 120", Verdict.NeedsMeasuring)]
    [InlineData("longest fork 500; most fork travel unknown", "axle to crown 520; travel 120", Verdict.Unsafe)]
    [InlineData("longest fork none; most fork travel 100", "axle to crown unknown; travel 120", Verdict.Unsafe)]
    public void A_fork_above_a_limit_is_unsafe_and_a_missing_limit_is_unknown(string frame, string fork, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("fork-length-within-limit", frame, (Slot.Fork, Fork.Read(fork))).Verdict);

    [Theory]
    [InlineData("single", "crowns single", Verdict.Fits)]
    [InlineData("single", "crowns dual", Verdict.Unsafe)]
    [InlineData("dual", "crowns dual", Verdict.Fits)]
    [InlineData("unknown", "crowns single", Verdict.Fits)]
    [InlineData("unknown", "crowns dual", Verdict.NeedsMeasuring)]
    [InlineData("single", "crowns unknown", Verdict.NeedsMeasuring)]
    [InlineData("single", "travel none", Verdict.Fits)]
    [InlineData("single", "travel 120", Verdict.NeedsMeasuring)]
    public void Two_crowns_go_where_the_frame_maker_allows_them(string frame, string fork, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("fork-crowns-on-frame", "fork crowns " + frame, (Slot.Fork, Fork.Read(fork))).Verdict);

    [Theory]
    [InlineData("210x55", "210x55", Verdict.Fits)]
    [InlineData("210x50", "210x52.5", Verdict.Unsafe)]
    [InlineData("210x55", "210x52.5", Verdict.NeedsMeasuring)]
    [InlineData("210x55", "190x45", Verdict.DoesNotFit)]
    [InlineData("trunnion 185x55", "210x55", Verdict.DoesNotFit)]
    [InlineData("unknown", "210x55", Verdict.NeedsMeasuring)]
    [InlineData("210x55", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("none", "210x55", Verdict.DoesNotFit)]
    public void A_shock_has_the_frames_mount_length_and_stroke(string frame, string shock, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("shock-in-frame", "shock " + frame, (Slot.Shock, Shock.Read("size " + shock))).Verdict);

    [Theory]
    [InlineData("22.2x8", "22.2x8", Verdict.Fits, Verdict.Fits)]
    [InlineData("22.2x8", "22.3x8", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("22.2x8", "22.2x10", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("33.33x8", "33.33x8", Verdict.Fits, Verdict.Fits)]
    [InlineData("unknown", "22.3x8", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    [InlineData("22.3x8", "unknown", Verdict.NeedsMeasuring, Verdict.NeedsMeasuring)]
    [InlineData("none", "none", Verdict.DoesNotFit, Verdict.Fits)]
    [InlineData("none", "22.2x8", Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData("22.2x8", "none", Verdict.NeedsPart, Verdict.NeedsPart)]
    public void Hardware_is_the_frames_at_each_end_and_a_trunnion_has_none_above(string frame, string shock, Verdict lower, Verdict upper)
    {
        Assert.Equal(lower, Bench.Judge("shock-hardware-in-frame", "lower shock hardware " + frame, (Slot.Shock, Shock.Read("lower hardware " + shock))).Verdict);
        Assert.Equal(upper, Bench.Judge("upper-shock-hardware-in-frame", "upper shock hardware " + frame, (Slot.Shock, Shock.Read("size trunnion 185x55; upper hardware " + shock))).Verdict);
    }

    [Theory]
    [InlineData("size 210x55", Verdict.DoesNotFit)]
    [InlineData("size trunnion 185x55", Verdict.Fits)]
    [InlineData("size unknown", Verdict.NeedsMeasuring)]
    public void Only_a_trunnion_has_no_upper_hardware(string shock, Verdict expected) =>
        Assert.Equal(expected, Bench.Judge("upper-shock-hardware-in-frame", "upper shock hardware none", (Slot.Shock, Shock.Read(shock + "; upper hardware none"))).Verdict);

    [Theory]
    [InlineData("eyelet 12.7; bush 12.7", Verdict.Fits)]
    [InlineData("eyelet 12; bush 12.7", Verdict.DoesNotFit)]
    [InlineData("eyelet 12.7; bush unknown", Verdict.NeedsMeasuring)]
    [InlineData("eyelet unknown; bush 12", Verdict.NeedsMeasuring)]
    public void A_bush_is_the_eyelets(string shock, Verdict expected) => Assert.Equal(expected, Bench.Judge("shock-bush-in-eyelet", "material steel", (Slot.Shock, Shock.Read(shock))).Verdict);
}
