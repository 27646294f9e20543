using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>A mass in whole grams: what is read, what is refused, and both ends of the range.</summary>
public sealed class LoadTests
{
    [Theory]
    [InlineData("120 kg", 120_000)]
    [InlineData("120", 120_000)]
    [InlineData("120kg", 120_000)]
    [InlineData(" 82,5 KG ", 82_500)]
    [InlineData("82.123 kilograms", 82_123)]
    [InlineData("265 lb", 120_202)]
    [InlineData("265 lbs.", 120_202)]
    [InlineData("1 lb", 454)]
    [InlineData("18 st 13 lb", 120_202)]
    [InlineData("18st 13lb", 120_202)]
    [InlineData("18 stone", 114_305)]
    [InlineData("500 kg", 500_000)]
    [InlineData("0.001 kg", 1)]
    [InlineData("1102.3 lb", 499_995)]
    [InlineData("82,500 kg", 82_500)]
    [InlineData("181,103 lb", 82_147)]
    public void Kilograms_pounds_and_stone_are_read_to_the_gram(string text, int grams)
    {
        Assert.Equal(grams, Load.Parse(text, null).Grams);
        Assert.Equal(grams, Load.Parse(Load.Parse(text, null).FitKey, null).Grams);
    }

    [Theory]
    [InlineData("")]
    [InlineData("kg")]
    [InlineData("0")]
    [InlineData("0 kg")]
    [InlineData("0.0004 kg")]
    [InlineData("-5 kg")]
    [InlineData("\u22125 kg")]
    [InlineData("500.001 kg")]
    [InlineData("1102.4 lb")]
    [InlineData("78 st 11 lb")]
    [InlineData("120 kg / 265 lb")]
    [InlineData("120 kg 265 lb")]
    [InlineData("18 st 14 lb")]
    [InlineData("18 st 13")]
    [InlineData("18 st 13 kg")]
    [InlineData("120 N")]
    [InlineData("120 mm")]
    [InlineData("120 g")]
    [InlineData("1,102 lb")]
    [InlineData("1,000 lb")]
    [InlineData("100-120 kg")]
    public void Anything_else_is_refused_with_its_reason(string text)
    {
        TextReading<Load> reading = Load.Read(text);
        Assert.Empty(reading.Values);
        Assert.NotEmpty(reading.Reason);
    }

    [Fact]
    public void A_refusal_names_the_place()
    {
        Assert.Equal(4, Load.Read("120 N").Position);
        Assert.Equal(7, Load.Read("120 kg / 265 lb").Position);
        Assert.Equal(6, Load.Read("18 st 14 lb").Position);
    }

    [Fact]
    public void Quantities_and_numbers_keep_within_the_range()
    {
        Assert.Equal(82_500, Load.OfKilograms(82.5m).Grams);
        Assert.Equal(120_202, Load.Of(Mass.FromPounds(265)).Grams);
        Assert.Equal(82.5, Load.OfKilograms(82.5m).Mass.Kilograms, 9);
        Assert.Equal(82.5m, Load.OfKilograms(82.5m).Kilograms);
        Assert.Equal(500_000, Load.OfKilograms(500m).Grams);
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.OfKilograms(500.0001m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.OfKilograms(0m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.OfKilograms(-1m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.Of(Mass.FromKilograms(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.Of(Mass.FromKilograms(500.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.OfFitCode(500_001));
    }

    [Fact]
    public void The_default_is_no_load_and_is_refused_as_a_value()
    {
        Assert.Equal(0, default(Load).Grams);
        Assert.False(Load.Read(default(Load).ToString()).IsClear);
        Assert.ThrowsAny<ArgumentException>(() => Known<Load>.Of(default));
    }

    [Fact]
    public void A_load_has_no_error_in_millimetres()
    {
        Assert.False(Rider.TryRead("mass 82 ± 1", out _, out var problems));
        Assert.Contains("without an error", problems[0].Reason, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Known<Load>.Measured(82, 1));
    }
}

/// <summary>The conditions of use and their order.</summary>
public sealed class UseCategoryTests
{
    [Theory]
    [InlineData("2", 2)]
    [InlineData("condition 2", 2)]
    [InlineData("Category 5", 5)]
    [InlineData("ASTM condition 3", 3)]
    [InlineData("condition 4, rough descents", 4)]
    public void A_condition_is_read_by_number(string text, int code) => Assert.Equal(code, UseCategory.Parse(text, null).FitCode);

    [Theory]
    [InlineData("0")]
    [InlineData("condition 0")]
    [InlineData("6")]
    [InlineData("road")]
    [InlineData("-2")]
    public void Condition_0_and_what_no_edition_has_are_refused(string text) => Assert.False(UseCategory.Read(text).IsClear);

    [Fact]
    public void Each_condition_takes_in_those_below_it_and_none_above()
    {
        foreach (UseCategory made in UseCategory.All)
        {
            foreach (UseCategory use in UseCategory.All)
            {
                Assert.Equal(UseCategory.All.IndexOf(use) <= UseCategory.All.IndexOf(made), made.TakesIn(use));
            }

            Assert.NotEmpty(made.Covers);
        }
    }
}
