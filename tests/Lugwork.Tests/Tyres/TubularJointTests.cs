using static Lugwork.Tests.Builds.Bench;

namespace Lugwork.Tests.Tyres;

/// <summary>A tubular in the joints that ask for beads and ISO sizes.</summary>
public sealed class TubularJointTests
{
    [Theory]
    [InlineData("hold tubular", "hold tubular", Verdict.NeedsMeasuring)]
    [InlineData("hold tubular", "hold tubular; size none", Verdict.NeedsMeasuring)]
    [InlineData("hold tubular; beadSeat 622", "hold tubular; size none", Verdict.NeedsMeasuring)]
    [InlineData("hold clincher; beadSeat 622", "hold tubular", Verdict.DoesNotFit)]
    [InlineData("beadSeat 622", "hold tubular", Verdict.DoesNotFit)]
    [InlineData("hold unknown", "hold tubular", Verdict.NeedsMeasuring)]
    [InlineData("hold tubular; beadSeat 622", "hold tubular; size 28-571", Verdict.DoesNotFit)]
    [InlineData("hold tubular; beadSeat 622", "hold tubular; size 28-622", Verdict.Fits)]
    [InlineData("beadSeat 622", "28-622", Verdict.Fits)]
    [InlineData("beadSeat 622", "28-571", Verdict.DoesNotFit)]
    [InlineData("hold tubular", "28-622", Verdict.NeedsMeasuring)]
    public void A_tubular_has_no_bead_to_seat(string rim, string tyre, Verdict expected)
    {
        Fit fit = Judge("rear-tyre-bead-on-rim", "material steel", (Slot.RearWheel, Wheel.Read(rim)), (Slot.RearTyre, Tyre.Read(tyre)));
        Assert.Equal(expected, fit.Verdict);
        Assert.Equal(expected, Judge("front-tyre-bead-on-rim", "material steel", (Slot.FrontWheel, Wheel.Read(rim)), (Slot.FrontTyre, Tyre.Read(tyre))).Verdict);
        Assert.True(expected == Verdict.NeedsMeasuring || !fit.Sentence.Contains("none", StringComparison.Ordinal), fit.Sentence);
    }

    [Theory]
    [InlineData("hold tubular", "hold tubular", Verdict.Fits)]
    [InlineData("beadSeat 622; rimType TC; innerWidth 19", "28-622; folding", Verdict.Fits)]
    [InlineData("beadSeat 622; rimType TC; innerWidth 19", "20-622; folding", Verdict.DoesNotFit)]
    public void The_width_ranges_say_nothing_of_a_tubular(string rim, string tyre, Verdict expected) => Assert.Equal(expected, TyreWidth(rim, tyre));

    [Theory]
    [InlineData("hold tubular", Verdict.NeedsMeasuring)]
    [InlineData("hold tubular; size 28-622", Verdict.Fits)]
    [InlineData("hold tubular; size 42-622", Verdict.DoesNotFit)]
    public void The_room_of_a_tubular_is_measured_where_it_has_no_size(string tyre, Verdict expected) =>
        Assert.Equal(expected, Judge("rear-tyre-in-frame", "largest rear tyre 40-622", (Slot.RearTyre, Tyre.Read(tyre))).Verdict);
}
