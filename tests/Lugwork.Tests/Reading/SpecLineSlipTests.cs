using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Slips of the pen in short words and at the end of a word, and the English "of" before a figure.</summary>
public sealed class SpecLineSlipTests
{
    [Theory]
    [InlineData("fork", "Gabelschaft 28,6 Ahed", "steerer=28.6 steererKind=threadless")]
    [InlineData("fork", "28,6er Ahaed-Schaft", "steerer=28.6 steererKind=threadless")]
    [InlineData("frame", "raer 12x148mm, seet tube 31.6, BSA 73", "rear=R148-12 seatTube=31.6 shell=BSA-73")]
    [InlineData("fork", "Steckachse 110*20 Boosst", "front=F110-20B")]
    [InlineData("rear shock", "lenght 250, strok 75", "size=eyelet-250x75")]
    [InlineData("rear shock", "250 mm eye to eye, 75 mm stoke", "size=eyelet-250x75")]
    [InlineData("front tyre", "50-584 foldin bead", "bead=folding size=50-584")]
    [InlineData("front rotor", "Six-bolt rotor of 203 mm, true as a die", "fixing=six-bolt size=203")]
    [InlineData("stem", "Bar clamp of 31.8, fits a 1.125in steerer", "bar=31.8 fixing=clamp-28.6")]
    [InlineData("fork", "travel of 140, axle to crown of 542", "axleToCrown=542 travel=140")]
    [InlineData("front wheel", "hub 100 nutted, axle three eighths", "hub=F100-N-3/8")]
    [InlineData("front wheel", "naaf 100 breed met moeren en de as is drie achtste", "hub=F100-N-3/8")]
    [InlineData("stem", "STUURPEN;ahead;1\" (25.4);stuur 26.0;zilver;1 st;18,50;SP-4412", "bar=26 fixing=clamp-25.4")]
    [InlineData("stem", "STEM / AHEAD / 1″ (25,4 mm) STEERER / BAR Ø 26,0", "bar=26 fixing=clamp-25.4")]
    [InlineData("stem", "stuurpen A‑head voor ⌀ 25,4 mm (1″) schacht, stuur 26,0", "bar=26 fixing=clamp-25.4")]
    [InlineData("stem", "Ahead stem 1-1/8\" (28.6 mm) steerer, bar 31.8", "bar=31.8 fixing=clamp-28.6")]
    public void A_slip_reads_as_what_was_meant(string slot, string text, string expected)
    {
        SpecLine line = SpecLine.Read(Slot.All.Single(s => s.Name == slot), text);

        Assert.Equal(expected, string.Join(' ', line.Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)));
    }

    /// <summary>The Dutch "of" is an "or", and two sizes stay two.</summary>
    [Theory]
    [InlineData("frame", "zitbuis 27.2 of 31.6")]
    [InlineData("rear wheel", "142 naaf of 148")]
    [InlineData("rear rotor", "160 rotor of 180")]
    [InlineData("frame", "PM140 met rotor of 160 met adapter")]
    [InlineData("cassette", "een cassette of 11 speed ketting")]
    public void A_choice_is_no_value(string slot, string text)
    {
        SpecLine line = SpecLine.Read(Slot.All.Single(s => s.Name == slot), text);

        Assert.Empty(line.Values);
    }
}
