using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Tyres;

/// <summary>How far a tyre may be inflated.</summary>
public sealed class PressureLimitTests
{
    [Theory]
    [InlineData(8.0, 9.0, "TC", 8.0, "tyre")]
    [InlineData(8.0, 7.0, "TC", 7.0, "rim")]
    [InlineData(8.0, 7.0, "TSS", 5.0, "hookless rim")]
    [InlineData(4.5, 7.0, "TSS", 4.5, "tyre")]
    [InlineData(8.0, 4.0, "TSS", 4.0, "rim")]
    [InlineData(8.0, null, "TC", 8.0, "tyre")]
    [InlineData(8.0, 9.0, null, 5.0, "hookless rim, which it may be")]
    [InlineData(5.0, 5.0, "TSS", 5.0, "tyre")]
    [InlineData(null, 7.0, "TC", 7.0, "rim")]
    [InlineData(null, null, "TSS", 5.0, "hookless rim")]
    [InlineData(null, null, "TC", null, "")]
    public void The_lowest_limit_binds(double? tyre, double? rim, string? type, double? most, string binding)
    {
        PressureLimits limits = Limits(tyre, rim, type);
        Assert.Equal(most, limits.Most?.Bars);
        Assert.Equal(binding, limits.Binding);
        Assert.Equal(tyre is not null && rim is not null && type is not null, limits.IsComplete);
        Assert.False(PressureLimits.Of(tyre is { } t ? Pressure.FromBars(t) : null, rim is { } r ? Pressure.FromBars(r) : null, type is null ? null : RimType.Parse(type, null)).IsComplete);
    }

    [Theory]
    [InlineData(8.0, 9.0, "TC", 8.0, Verdict.Fits)]
    [InlineData(8.0, 9.0, "TC", 8.01, Verdict.Unsafe)]
    [InlineData(8.0, 7.0, "TC", 7.01, Verdict.Unsafe)]
    [InlineData(8.0, 7.0, "TSS", 5.0, Verdict.Fits)]
    [InlineData(8.0, 7.0, "TSS", 5.01, Verdict.Unsafe)]
    [InlineData(8.0, null, "TC", 4.0, Verdict.NeedsMeasuring)]
    [InlineData(8.0, null, "TC", 8.01, Verdict.Unsafe)]
    [InlineData(8.0, 7.0, null, 5.0, Verdict.Fits)]
    [InlineData(8.0, 7.0, null, 5.01, Verdict.NeedsMeasuring)]
    [InlineData(null, 7.0, "TC", 2.0, Verdict.NeedsMeasuring)]
    [InlineData(null, 7.0, "TC", 7.01, Verdict.Unsafe)]
    [InlineData(null, null, "TSS", 5.01, Verdict.Unsafe)]
    public void A_pressure_is_held_against_every_limit(double? tyre, double? rim, string? type, double bars, Verdict expected)
    {
        SumCheck check = Limits(tyre, rim, type).Check(Pressure.FromBars(bars));
        Assert.True(expected == check.Verdict, check.ToString());
        Assert.Equal("tyre-pressure", check.Cautions[0].Id);
    }

    [Theory]
    [InlineData(8.0, 9.0, "at most 8.0 bar (tyre)")]
    [InlineData(8.0, null, "at most 8.0 bar (tyre); the rim's limit is not known")]
    [InlineData(null, 7.0, "at most 7.0 bar (rim); the tyre's limit is not known")]
    [InlineData(null, null, "the limits of tyre and rim are not known")]
    public void A_limit_that_is_not_known_is_named(double? tyre, double? rim, string expected) => Assert.Equal(expected, Limits(tyre, rim, "TC").ToString());

    [Theory]
    [InlineData(null, 0.2, Verdict.NeedsMeasuring)]
    [InlineData(null, 2.99, Verdict.NeedsMeasuring)]
    [InlineData(null, 3.0, Verdict.NeedsMeasuring)]
    [InlineData(1.0, 1.0, Verdict.Fits)]
    [InlineData(1.0, 0.99, Verdict.Unsafe)]
    public void A_least_that_is_not_known_is_asked_for(double? least, double bars, Verdict expected) =>
        Assert.Equal(expected, PressureLimits.Of(Pressure.FromBars(4), Pressure.FromBars(4), RimType.Crochet, least is { } l ? Pressure.FromBars(l) : null).Check(Pressure.FromBars(bars)).Verdict);

    [Fact]
    public void Below_the_least_of_the_tyre_is_no_pressure()
    {
        PressureLimits limits = PressureLimits.Of(Pressure.FromBars(8), Pressure.FromBars(4), RimType.Crochet, Pressure.FromBars(5));
        Assert.Equal(Verdict.Unsafe, limits.Check(Pressure.FromBars(4)).Verdict);
        Assert.Equal(Verdict.Unsafe, limits.Check(Pressure.FromBars(4.5)).Verdict);
    }

    [Fact]
    public void A_table_is_never_offered_above_a_limit_or_where_one_is_not_known()
    {
        PressureByLoad heavy = PressureByLoad.Find(Length.FromMillimeters(28), Mass.FromKilograms(85))!;
        Assert.Equal(6.5, heavy.Within(Limits(8, 8, "TC"))!.Value.Bars);
        Assert.Null(heavy.Within(Limits(8, 8, "TSS")));
        Assert.Null(heavy.Within(Limits(6, 8, "TC")));
        Assert.Null(heavy.Within(Limits(8, null, "TC")));
        Assert.Null(heavy.Within(Limits(8, 8, null)));
        Assert.Null(PressureByLoad.Find(Length.FromMillimeters(30), Mass.FromKilograms(85)));
        Assert.Null(PressureByLoad.Find(Length.FromMillimeters(28), Mass.FromKilograms(80)));
    }

    [Theory]
    [InlineData(1e300)]
    [InlineData(0)]
    [InlineData(25)]
    public void What_is_no_pressure_is_refused(double bad)
    {
        Pressure pressure = Pressure.FromBars(bad);
        Assert.Throws<ArgumentOutOfRangeException>(() => PressureLimits.Of(pressure, null, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => PressureLimits.Of(null, pressure, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => PressureLimits.Of(null, null, null, pressure));
        Assert.Throws<ArgumentOutOfRangeException>(() => Limits(8, 8, "TC").Check(pressure));
    }

    private static PressureLimits Limits(double? tyre, double? rim, string? type) =>
        PressureLimits.Of(tyre is { } t ? Pressure.FromBars(t) : null, rim is { } r ? Pressure.FromBars(r) : null, type is null ? null : RimType.Parse(type, null), Pressure.FromBars(0.5));
}
