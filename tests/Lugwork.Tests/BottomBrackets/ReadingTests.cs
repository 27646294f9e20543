using System.Globalization;
using Lugwork.BottomBrackets;

namespace Lugwork.Tests.BottomBrackets;

/// <summary>Names of shells, spindles and pedal threads: clear ones, ambiguous ones with all readings, and refused ones.</summary>
public sealed class ReadingTests
{
    [Theory]
    [InlineData("BSA 68", "BSA-68")]
    [InlineData("68 mm BSA", "BSA-68")]
    [InlineData("BSA shell 73mm wide", "BSA-73")]
    [InlineData("English 68", "BSA-68")]
    [InlineData("Euro BMX", "BSA-68")]
    [InlineData("1.37x24 68", "BSA-68")]
    [InlineData("BB 30 68", "BB30-68")]
    [InlineData("68 x 1.37", "")]
    [InlineData("Italian", "Italian-70")]
    [InlineData("ITA 70", "Italian-70")]
    [InlineData("36 x 24 tpi", "Italian-70")]
    [InlineData("T47 85,5", "T47-85.5")]
    [InlineData("t47 92 mm", "T47-92")]
    [InlineData("T47 77", "T47A-77")]
    [InlineData("T47 asymmetric", "T47A-77")]
    [InlineData("BB30 68", "BB30-68")]
    [InlineData("BB30A 73", "BB30A-73")]
    [InlineData("BB30-83 Ai", "BB30A-83")]
    [InlineData("PF30 68", "PF30-68")]
    [InlineData("PressFit 30 68", "PF30-68")]
    [InlineData("PF30 83", "PF30A-83")]
    [InlineData("BB386EVO", "PF30-86.5")]
    [InlineData("bb 386 evo", "PF30-86.5")]
    [InlineData("BB86", "PF41-86.5")]
    [InlineData("PF86.5", "PF41-86.5")]
    [InlineData("Press Fit BB92", "PF41-92")]
    [InlineData("BB91.5", "PF41-92")]
    [InlineData("pressfit 104.5", "PF41-104.5")]
    [InlineData("BBright press 79", "BBright-press-79")]
    [InlineData("BB90", "BB90-90")]
    [InlineData("90.5", "BB90-90")]
    [InlineData("BB95", "BB90-95")]
    [InlineData("OSBB 61", "OSBB-61")]
    [InlineData("82.5", "threaded-insert-82.5")]
    public void A_clear_name_is_one_shell(string text, string key)
    {
        TextReading<Shell> reading = Shell.Read(text);
        Assert.Equal(key, reading.IsClear ? reading.Values[0].FitKey : "");
    }

    [Theory]
    [InlineData("BSA", "BSA-100 BSA-120 BSA-68 BSA-73 BSA-83")]
    [InlineData("T47", "T47-68 T47-73 T47-85.5 T47-86.5 T47-92 T47A-77")]
    [InlineData("T47 internal", "T47-85.5 T47-86.5 T47-92")]
    [InlineData("T47 86", "T47-85.5 T47-86.5")]
    [InlineData("86", "PF30-86.5 PF41-86.5 T47-85.5 T47-86.5")]
    [InlineData("90", "BB90-90 PF41-89.5")]
    [InlineData("PF30", "PF30-68 PF30-73 PF30A-73")]
    [InlineData("PF30 73", "PF30-73 PF30A-73")]
    [InlineData("BB30", "BB30-68 BB30-73 BB30A-73")]
    [InlineData("BB30 73", "BB30-73 BB30A-73")]
    [InlineData("BBright", "BBright-direct-79 BBright-press-79")]
    [InlineData("35x1", "French-68 Swiss-68")]
    [InlineData("OSBB", "BB30-68 OSBB-61 PF30-73")]
    [InlineData("pressfit 86.5", "PF30-86.5 PF41-86.5")]
    [InlineData("68", "American-68 BB30-68 BSA-68 French-68 Mid-68 PF30-68 Spanish-68 Swiss-68 T47-68 Thompson-68 pressed-30-68")]
    public void An_ambiguous_name_keeps_all_its_readings(string text, string keys)
    {
        TextReading<Shell> reading = Shell.Read(text);
        Assert.Equal(keys, string.Join(' ', reading.Values.Select(v => v.FitKey).Order(StringComparer.Ordinal)));
        Assert.NotEmpty(reading.Reason);
        Assert.Throws<FormatException>(() => Shell.Parse(text, null));
    }

    [Theory]
    [InlineData("")]
    [InlineData("BB")]
    [InlineData("84")]
    [InlineData("OSBB 84.5")]
    [InlineData("BSA 70")]
    [InlineData("68 73")]
    [InlineData("6 8")]
    [InlineData("BB86 92")]
    [InlineData("BSA 68 73")]
    [InlineData("86.4")]
    [InlineData("12x142")]
    [InlineData("octagonal")]
    [InlineData("-68.0001")]
    public void What_is_no_shell_is_refused_with_a_reason(string text)
    {
        TextReading<Shell> reading = Shell.Read(text);
        Assert.Empty(reading.Values);
        Assert.NotEmpty(reading.Reason);
    }

    [Fact]
    public void A_refused_width_names_the_widths_that_the_family_has()
    {
        Assert.Contains("BB30-68, PF30-73, OSBB-61", Shell.Read("OSBB 84.5").Reason, StringComparison.Ordinal);
        Assert.Contains("BSA-68, BSA-73", Shell.Read("BSA 70").Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("24", "24-road 24-MTB")]
    [InlineData("24 mm spindle", "24-road 24-MTB")]
    [InlineData("24 road", "24-road")]
    [InlineData("24 mm off-road", "24-MTB")]
    [InlineData("24/22", "24/22")]
    [InlineData("28.99 mm", "28.99")]
    [InlineData("29", "28.99")]
    [InlineData("30", "30-short 30-79 30-long")]
    [InlineData("30/28 mm", "30/28")]
    [InlineData("square taper", "square-JIS square-ISO")]
    [InlineData("JIS", "square-JIS")]
    [InlineData("ISO", "square-ISO")]
    [InlineData("8-spline", "8-spline-short 8-spline-long")]
    [InlineData("10 spline", "10-spline")]
    [InlineData("one-piece", "one-piece")]
    [InlineData("19 mm", "BMX-19")]
    [InlineData("BMX", "BMX-19 BMX-22 BMX-24")]
    [InlineData("23", "")]
    [InlineData("brandname", "")]
    public void A_spindle_keeps_every_length_class(string text, string keys) =>
        Assert.Equal(keys, string.Join(' ', Spindle.Read(text).Values.Select(v => v.FitKey)));

    [Theory]
    [InlineData("24", "24")]
    [InlineData("24 mm", "24")]
    [InlineData("30", "30")]
    [InlineData("square", "square-JIS square-ISO")]
    [InlineData("8 splines", "8-spline-short 8-spline-long")]
    [InlineData("22", "BMX-22")]
    public void A_bottom_bracket_takes_the_spindle_that_its_text_names(string text, string keys) =>
        Assert.Equal(keys, string.Join(' ', SpindleSeat.Read(text).Values.Select(v => v.FitKey)));

    [Theory]
    [InlineData("9/16", "9/16x20")]
    [InlineData("9/16\"", "9/16x20")]
    [InlineData("9/16 in x 20 tpi", "9/16x20")]
    [InlineData("1/2 in", "1/2x20")]
    [InlineData("1/2\" × 20", "1/2x20")]
    [InlineData("14 x 1.25", "14x1.25")]
    [InlineData("French", "14x1.25")]
    [InlineData("14", "")]
    public void A_pedal_thread_is_read_with_its_inch_marks(string text, string key) =>
        Assert.Equal(key, PedalThread.TryParse(text, null, out PedalThread? read) ? read.FitKey : "");

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("fa-IR")]
    public void Text_is_read_the_same_in_every_culture(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal("T47-85.5", Shell.Parse("t47 internal 85.5", null).FitKey);
            Assert.Equal("Italian-70", Shell.Parse("italian", null).FitKey);
            Assert.Equal("28.99", Spindle.Parse("28.99", null).FitKey);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("\uD800")]
    [InlineData("\0")]
    [InlineData("{0}")]
    [InlineData("[bridge]")]
    [InlineData("999999999999")]
    [InlineData("\u202E86\u202C")]
    [InlineData("#")]
    [InlineData("_")]
    public void Hostile_text_is_refused(string text)
    {
        foreach (string hostile in new[] { text, new('9', 10_000), new('a', 100_000), "BSA" + new string(' ', 300) + "x" })
        {
            Assert.False(Shell.TryParse(hostile, null, out _));
            Assert.False(ShellFamily.TryParse(hostile, null, out _));
            Assert.False(Spindle.TryParse(hostile, null, out _));
            Assert.False(SpindleSeat.TryParse(hostile, null, out _));
            Assert.False(PedalThread.TryParse(hostile, null, out _));
        }
    }
}
