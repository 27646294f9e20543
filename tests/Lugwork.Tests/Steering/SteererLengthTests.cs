using Lugwork.Steering;
using UnitsNet;

namespace Lugwork.Tests.Steering;

public sealed class SteererLengthTests
{
    private static readonly SteererLength Plain = SteererLength.OfMillimetres(110, 11, 11, 0, 40);

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    [Theory]
    [InlineData(166.9, Verdict.Unsafe)]
    [InlineData(167, Verdict.Fits)]
    [InlineData(169, Verdict.Fits)]
    [InlineData(170, Verdict.Fits)]
    [InlineData(170.1, Verdict.NeedsPart)]
    [InlineData(172, Verdict.NeedsPart)]
    [InlineData(200, Verdict.NeedsPart)]
    public void A_steerer_ends_two_to_five_below_the_stem(double steerer, Verdict verdict) =>
        Assert.Equal(verdict, Plain.Check(Mm(steerer)).Verdict);

    [Fact]
    public void A_spacer_above_makes_room_for_the_cap_and_none_for_a_shorter_steerer()
    {
        SteererLength spaced = Plain with { SpacersAbove = Mm(5) };
        Assert.Equal(Verdict.Fits, spaced.Check(Mm(172)).Verdict);
        Assert.Equal(Plain.Shortest.Millimeters, spaced.Shortest.Millimeters, 9);
        Assert.Equal(Plain.Cut.Millimeters + 5, spaced.Cut.Millimeters, 9);
    }

    [Fact]
    public void What_it_says_to_cut_fits() => Assert.Equal(Verdict.Fits, Plain.Check(Plain.Cut).Verdict);

    [Fact]
    public void Heights_are_not_negative()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SteererLength.OfMillimetres(-1, 0, 0, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Plain with { StemClamp = Mm(1_001) });
        Assert.Throws<ArgumentOutOfRangeException>(() => Plain.Check(Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Plain.Check(Mm(1_001)));
    }

    [Theory]
    [InlineData("25.4", 0, null, Verdict.NeedsMeasuring)]
    [InlineData("25.4", 25, null, Verdict.NeedsMeasuring)]
    [InlineData("25.4", 25, 25.0, Verdict.Fits)]
    [InlineData("25.4", 25.1, null, Verdict.Unsafe)]
    [InlineData("28.6", 30, null, Verdict.NeedsMeasuring)]
    [InlineData("28.6", 30.1, null, Verdict.Unsafe)]
    [InlineData("38.1", 38, null, Verdict.Unsafe)]
    [InlineData("28.6", 50, 50.0, Verdict.Fits)]
    [InlineData("28.6", 50.5, 50.0, Verdict.Unsafe)]
    [InlineData("28.6", 25, 20.0, Verdict.Unsafe)]
    public void Spacers_on_carbon_fit_up_to_the_makers_figure_and_without_it_never(string steerer, double spacers, double? makers, Verdict verdict)
    {
        SumCheck check = SteererSpacers.OnCarbon(SteererSize.Parse(steerer, null), Mm(spacers), makers is { } most ? Mm(most) : null);
        Assert.Equal(verdict, check.Verdict);
        Assert.True(makers is not null && verdict == Verdict.Fits || !check.Cautions.IsEmpty);
    }

    [Fact]
    public void Limits_are_sourced_and_in_range() =>
        Assert.All(SteererSpacers.Limits, l => Assert.True(l.Sources.Length > 0 && l.MostMillimetres is >= 5 and <= 50 && l.LeastMillimetres <= l.MostMillimetres && l.Basis.Length > 0));
}
