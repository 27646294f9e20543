using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>What the trade writes of brakes, and what stays open.</summary>
public sealed class BrakeReadingTests
{
    [Theory]
    [InlineData("47-57", "medium-47-57")]
    [InlineData("47\u201357 mm", "medium-47-57")]
    [InlineData("47 to 57mm", "medium-47-57")]
    [InlineData("47 mm - 57 mm", "medium-47-57")]
    [InlineData("medium reach", "medium-47-57")]
    [InlineData("Mid", "medium-47-57")]
    [InlineData("57-73", "long-57-73")]
    [InlineData("62-78", "centre-pull-62-78")]
    [InlineData("61-61", "centre-pull-61-61")]
    public void A_reach_is_read(string text, string key) => Assert.Equal(key, RimBrakeReach.Parse(text, null).FitKey);

    [Theory]
    [InlineData("short", 4)]
    [InlineData("SHORT REACH", 4)]
    [InlineData("long reach", 2)]
    [InlineData("centre-pull", 2)]
    [InlineData("center pull", 2)]
    public void A_word_alone_keeps_every_class(string text, int readings)
    {
        TextReading<RimBrakeReach> read = RimBrakeReach.Read(text);
        Assert.Equal(readings, read.Values.Length);
        Assert.NotEmpty(read.Reason);
        Assert.False(RimBrakeReach.TryParse(text, null, out _));
    }

    [Theory]
    [InlineData("57-47")]
    [InlineData("47-58")]
    [InlineData("4757")]
    [InlineData("47")]
    [InlineData("47-57-67")]
    [InlineData("-47-57")]
    [InlineData("47-57 in")]
    [InlineData("standard reach")]
    public void Another_figure_is_no_class(string text) => Assert.Empty(RimBrakeReach.Read(text).Values);

    [Theory]
    [InlineData("+20", 20)]
    [InlineData("20", 20)]
    [InlineData("+ 20 mm", 20)]
    [InlineData("adapter +43 mm", 43)]
    [InlineData("+0", 0)]
    [InlineData("80mm", 80)]
    public void An_adapter_is_read_by_its_increment(string text, int millimetres) => Assert.Equal(millimetres, AdapterIncrement.Parse(text, null).Millimetres);

    [Theory]
    [InlineData("-20")]
    [InlineData("\u221220")]
    [InlineData("+21")]
    [InlineData("10")]
    [InlineData("++20")]
    [InlineData("+-20")]
    public void There_is_no_such_adapter(string text) => Assert.Empty(AdapterIncrement.Read(text).Values);

    [Theory]
    [InlineData("DOT 4", "glycol-ether")]
    [InlineData("dot5.1", "glycol-ether")]
    [InlineData("DOT-5.1", "glycol-ether")]
    [InlineData("Mineral Oil", "mineral-oil")]
    public void A_fluid_is_read_by_its_family(string text, string key) => Assert.Equal(key, BrakeFluid.Parse(text, null).FitKey);

    [Theory]
    [InlineData("DOT 5")]
    [InlineData("DOT 3")]
    [InlineData("oil")]
    [InlineData("low-viscosity mineral oil")]
    public void A_fluid_of_no_row_is_refused(string text) => Assert.Empty(BrakeFluid.Read(text).Values);

    [Theory]
    [InlineData("disc", 3)]
    [InlineData("cable disc", 2)]
    [InlineData("hub brake", 3)]
    [InlineData("V brake", 1)]
    [InlineData("mini-V-brake", 1)]
    [InlineData("roller brake", 1)]
    [InlineData("back pedal brake", 1)]
    public void A_brake_is_read_and_a_family_keeps_all(string text, int readings) => Assert.Equal(readings, BrakeType.Read(text).Values.Length);

    [Theory]
    [InlineData("canti", 3)]
    [InlineData("cantilever bosses", 3)]
    [InlineData("direct-pull bosses", 3)]
    [InlineData("canti 559", 1)]
    [InlineData("roller-cam", 1)]
    [InlineData("canti 571", 0)]
    public void Bosses_are_read_and_a_family_keeps_all(string text, int readings) => Assert.Equal(readings, BrakeBoss.Read(text).Values.Length);

    [Theory]
    [InlineData("nutted", 2)]
    [InlineData("recessed", 1)]
    [InlineData("Allen nut", 1)]
    [InlineData("nutted 1/4\"", 1)]
    public void A_brake_bolt_is_read(string text, int readings) => Assert.Equal(readings, BrakeBolt.Read(text).Values.Length);

    [Theory]
    [InlineData("standard pull", "short")]
    [InlineData("long pull", "long")]
    [InlineData("linear-pull", "long")]
    [InlineData("super short", "newer-road")]
    public void A_pull_is_read(string text, string key) => Assert.Equal(key, CablePull.Parse(text, null).FitKey);

    [Theory]
    [InlineData("inner", "internal")]
    [InlineData("External notches", "external")]
    public void A_lockring_is_read(string text, string key) => Assert.Equal(key, Lockring.Parse(text, null).FitKey);
}
