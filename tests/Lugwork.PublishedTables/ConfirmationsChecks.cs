using Lugwork.BottomBrackets;
using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables;

/// <summary>Later checks of what was from memory: where a second source refines or contradicts a value and no other class here tries it.</summary>
/// <remarks>
/// Not taken over, and why: a blog calls both cups of a Swiss shell right-hand, but a frame on the bench had the left-hand drive cup that the
/// name stands for; one owner saw bearings for IS41 and IS42 differ by diameter alone, but they do not exchange either way. Without a
/// counterpart in the library so far: bolt torques, the groove of BB30's circlips, which bearing of a stepped spindle is held.
/// </remarks>
public sealed class ConfirmationsChecks
{
    private const string Refit = "Headset removal and refit, part I; pedalingzen.blogspot.com";
    private const string Bench = "35 x 1...; blackmountaincycles.blogspot.com";
    private const string Memory = "from memory; the later page prints less";
    private const string Pitches = "Mutant chains, compatibility and cog pitch; bikeblogordie.com";
    private const string Spacers = "Cassette spacers (forum); Bike Forums";
    private const string Uneven = "11-speed wheels of one maker with another's cassette (in Hindi, question-and-answer copy); isolution.pro";
    private const string CribSheet = "Frame/hub spacing and sprocket spacing crib sheet; sheldonbrown.com";

    [Theory]
    [InlineData("11-close", 3.69, Pitches)]
    [InlineData("11-8-spline", 3.76, Pitches)]
    [InlineData("5-freewheel", 5.5, CribSheet)]
    [InlineData("5-freewheel-narrow", 5.35, CribSheet)]
    public void A_published_pitch_is_the_least_that_the_spacing_allows(string spacing, double pitch, string source) =>
        Assert.True(Math.Abs(SprocketSpacing.Parse(spacing, null).LeastPitch!.Value.Millimeters - pitch) < 1e-6, source);

    [Theory]
    [InlineData("11-close", 3.74, Memory)]
    [InlineData("11-8-spline", 3.85, Memory)]
    public void A_pitch_that_a_later_page_contradicts_stays_as_the_upper_end(string spacing, double pitch, string source) =>
        Assert.True(Math.Abs(SprocketSpacing.Parse(spacing, null).MostPitch!.Value.Millimeters - pitch) < 1e-6, source);

    [Fact]
    [PrintedIn(Spacers)]
    public void Ten_speed_8_spline_spacers_are_2_55_and_no_stack_is_claimed()
    {
        SprocketSpacing ten = SprocketSpacing.Parse("10-8-spline", null);
        Assert.True(Math.Abs(ten.Spacer!.Value.Millimeters - 2.55) < 1e-6 && ten.Stack is null, Spacers);
    }

    [Fact]
    [PrintedIn(Uneven)]
    public void Eleven_speed_8_spline_steps_are_not_one_pitch() => Assert.False(SprocketSpacing.Parse("11-8-spline", null).HasEqualSteps, Uneven);

    [Fact]
    [PrintedIn(Bench)]
    public void A_Swiss_shell_keeps_its_left_hand_drive_cup()
    {
        Assert.True(ShellFamily.Swiss.IsDriveCupLeftHand, Bench);
        Assert.False(ShellFamily.French.IsDriveCupLeftHand, Bench);
        Published.Says(Build.From(Frame.Read("shell Swiss 68")).With(BottomBracket.Read("family French")), "bottom-bracket-in-shell", Bench, Verdict.DoesNotFit);
    }

    [Theory]
    [InlineData("IS41", "IS42", Refit)]
    [InlineData("IS42", "IS41", Refit)]
    public void Bearings_for_IS41_and_IS42_do_not_exchange(string end, string half, string source) =>
        Published.Says(Build.From(Frame.Read($"headTubeUpper {end}")).With(Headset.Read($"upperCup {half}")), "headset-upper-in-head-tube", source, Verdict.DoesNotFit, "the bearing of the frame's own seat");
}
