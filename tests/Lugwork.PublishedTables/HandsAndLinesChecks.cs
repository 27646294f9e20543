using Lugwork.Cockpit;

namespace Lugwork.PublishedTables;

/// <summary>Which hand brakes in front, and how straight one ring and one sprocket stand: published cases, each with its source.</summary>
public sealed class HandsAndLinesChecks
{
    private const string Hands = "Bike front brake: left or right?; frederiksfridayfact.com";
    private const string ByCountry = "Should the bicycle brakes be left rear and right front; huafengqp.com";
    private const string OneSprocket = "Zen and the art of fixie building: chainline tricks part II; West 5 Cycles";
    private const string GearHub = "Chainline and Overlocknut Distance on Bicycles with Internal-Gear Hubs; sheldonbrown.com";

    /// <summary>A lever pair set up for one country, ridden by someone from another.</summary>
    [Theory]
    [InlineData(Hands, "United Kingdom", "right", "right", Verdict.Fits)]
    [InlineData(Hands, "United States", "left", "left", Verdict.Fits)]
    [InlineData(Hands, "United Kingdom, rider from the United States", "right", "left", Verdict.DoesNotFit)]
    [InlineData(ByCountry, "Australia", "right", "right", Verdict.Fits)]
    [InlineData(ByCountry, "Europe, rider from Australia", "left", "right", Verdict.DoesNotFit)]
    public void The_front_brake_is_in_the_hand_of_the_country(string source, string where, string lever, string rider, Verdict verdict)
    {
        Assert.NotEmpty(source + where);
        Build build = Build.From(new Frame()).With(new BrakeLever { Hand = Known<Hand>.Of(Hand.Parse(lever, null)) }, Slot.FrontBrakeLever).With(new Rider { FrontBrakeHand = Known<Hand>.Of(Hand.Parse(rider, null)) });
        Assert.Equal(verdict, build.Check().Findings.Single(f => f.Joint!.Id == "front-brake-hand").Verdict);
    }

    /// <summary>The worked case: 120 mm between the ends, sprocket 12 mm inside, ring at 46: 2 mm apart, and one can get away with it.</summary>
    [Theory]
    [InlineData(OneSprocket, "46", "48", Verdict.Fits)]
    [InlineData(OneSprocket, "45.9", "48", Verdict.NeedsMeasuring)]
    [InlineData(GearHub, "42", "54", Verdict.DoesNotFit)]
    [InlineData(GearHub, "54", "54", Verdict.Fits)]
    [InlineData(GearHub, "58", "58", Verdict.Fits)]
    public void One_ring_and_one_sprocket_are_in_line_as_the_pages_say(string source, string ring, string sprocket, Verdict verdict)
    {
        Assert.NotEmpty(source);
        Build build = Build.From(new Frame()).OfFile(Crankset.Read("ring line " + ring), Slot.Crankset).OfFile(Wheel.Read("sprocket line " + sprocket), Slot.RearWheel);
        Assert.Equal(verdict, build.Check().Findings.Single(f => f.Joint!.Id == "single-chainline").Verdict);
    }
}
