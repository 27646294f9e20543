using Lugwork.Cockpit;

namespace Lugwork.Tests.Cockpit;

public sealed class ControlTests
{
    [Theory]
    [InlineData("22.2", "flat-bar-control", Verdict.Fits)]
    [InlineData("23.8", "drop-bar-lever", Verdict.Fits)]
    [InlineData("22.2", "drop-bar-lever", Verdict.DoesNotFit)]
    [InlineData("23.8", "flat-bar-control", Verdict.DoesNotFit)]
    [InlineData("23.5", "flat-bar-control", Verdict.DoesNotFit)]
    [InlineData("23.5", "drop-bar-lever", Verdict.NeedsMeasuring)]
    public void A_control_goes_on_the_bar_that_it_is_made_for(string bar, string control, Verdict verdict) =>
        Assert.Equal(verdict, ControlRelations.OnBar.Judge([GripDiameter.Parse(bar, null).FitCode, ControlClamp.Parse(control, null).FitCode]).Verdict);

    [Fact]
    public void Every_pair_has_a_sourced_reason_of_two_inputs()
    {
        foreach (GripDiameter bar in GripDiameter.All)
        {
            foreach (ControlClamp control in ControlClamp.All)
            {
                Outcome outcome = ControlRelations.OnBar.Judge([bar.FitCode, control.FitCode]);
                Assert.NotEmpty(outcome.Reason!.Sources);
                Assert.DoesNotContain("{2}", outcome.Reason.Template, StringComparison.Ordinal);
            }
        }

        Assert.Equal(Verdict.DoesNotFit, ControlRelations.OnBar.Judge([0, 1]).Verdict);
    }

    [Theory]
    [InlineData("22,2 mm", "22.2")]
    [InlineData("7/8 in", "22.2")]
    [InlineData("Flat bar", "22.2")]
    [InlineData("15/16 in", "23.8")]
    [InlineData("drop", "23.8")]
    [InlineData("23.50", "23.5")]
    public void A_grip_is_read(string text, string key) => Assert.Equal(key, GripDiameter.Parse(text, null).FitKey);

    [Theory]
    [InlineData("22.1")]
    [InlineData("22.3")]
    [InlineData("23.7")]
    [InlineData("31.8")]
    [InlineData("-22.2")]
    public void Its_neighbours_are_not(string text) => Assert.False(GripDiameter.TryParse(text, null, out _));

    [Theory]
    [InlineData("22.2", "flat-bar-control")]
    [InlineData("23,8 mm", "drop-bar-lever")]
    [InlineData("flat bar shifter", "flat-bar-control")]
    public void A_control_is_read(string text, string key) => Assert.Equal(key, ControlClamp.Parse(text, null).FitKey);

    [Theory]
    [InlineData("7/8 in", "22.2")]
    [InlineData("15/16\"", "23.8")]
    [InlineData("1 in", "25.4")]
    [InlineData("1-1/4 in", "31.8")]
    [InlineData("31,7 mm", "31.8")]
    [InlineData("31.75", "")]
    [InlineData("0", "")]
    [InlineData("0 mm", "")]
    [InlineData("0.01", "")]
    public void A_bar_is_read_in_inches_too(string text, string key) => Assert.Equal(key, BarClamp.TryParse(text, null, out BarClamp? clamp) ? clamp.FitKey : "");

    [Fact]
    public void Keys_and_codes_stay()
    {
        Assert.Equal("1 22.2;2 23.5;3 23.8", string.Join(';', GripDiameter.All.Select(v => $"{v.FitCode} {v.FitKey}")));
        Assert.Equal("1 drop-bar-lever;2 flat-bar-control", string.Join(';', ControlClamp.All.Select(v => $"{v.FitCode} {v.FitKey}")));
    }
}
