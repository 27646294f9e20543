namespace Lugwork.Tests.Builds;

/// <summary>What a kind of bicycle asks for by its rear hub.</summary>
public sealed class BicycleKindTests
{
    [Theory]
    [InlineData("body 3-lug; hub brake coaster", false)]
    [InlineData("body 3-lug; hub brake coaster | roller", false)]
    [InlineData("body hub gear; hub brake coaster", true)]
    [InlineData("body 3-lug; hub brake roller", true)]
    [InlineData("body 3-lug; hub brake none", true)]
    [InlineData("body HG-9; hub brake none", true)]
    [InlineData("body TRACK; hub brake coaster", false)]
    public void A_shifter_is_asked_for_beside_gears_and_not_beside_a_coaster_hub_of_one_speed(string wheel, bool asked)
    {
        Build build = Build.From(Frame.Read("kind city; material steel")).With(Wheel.Read(wheel), Slot.RearWheel);
        Assert.Equal(asked, build.Check().Missing.Contains(Slot.RearShifter));
        Assert.Equal(wheel.StartsWith("body HG", StringComparison.Ordinal), build.Check().Missing.Contains(Slot.RearDerailleur));
    }

    [Fact]
    public void A_shifter_that_is_there_beside_a_coaster_hub_is_worked_with() =>
        Assert.NotNull(Build.From(Frame.Read("kind city; material steel")).With(Wheel.Read("body 3-lug; hub brake coaster"), Slot.RearWheel).With(Shifter.Read("cable"), Slot.RearShifter).WorkPlan().Find("adjust-gears"));
}
