using System.Text.Json;
using Lugwork.Seating;

namespace Lugwork.Tests.Builds;

/// <summary>What a script meets when it prints, binds and takes apart.</summary>
public sealed class PlainUseTests
{
    private static readonly Build Bicycle = Build.From(Frame.Read("seat tube 27.2"), "the red one").With(Seatpost.Read("27.2 x 350")).With(Fork.Read("axle to crown 400 \u00B1 2"));

    [Fact]
    public void A_part_prints_what_is_known_of_it_in_its_short_form()
    {
        Seatpost post = Seatpost.Read("27.2 x 350");
        Assert.Equal(PartText.Write(Slot.Seatpost, post), post.ToString());
        Assert.Equal(post, Seatpost.Read(post.ToString()));
        Assert.Equal($"the old post: {post}", (post with { Name = "the old post" }).ToString());
        Assert.Equal("nothing known", new Frame().ToString());
        Assert.Equal("bare: nothing known", (new Frame { Name = "bare" }).ToString());
    }

    [Fact]
    public void Every_kind_of_part_prints_its_short_form()
    {
        Build whole = Bench.WholeBicycle();
        Assert.All(Slot.All.Where(s => whole[s] is not null), s => Assert.Equal(PartText.Write(s, whole[s]!), (whole[s]! with { Name = "" }).ToString()));
    }

    [Fact]
    public void A_build_prints_its_slots_and_a_needs_sheet_its_needs()
    {
        Assert.Equal("the red one: frame, fork, seatpost", Bicycle.ToString());
        Assert.Equal("build: frame", Build.From(new Frame()).ToString());
        NeedsSheet needs = Bicycle.Needs();
        Assert.Equal(needs.Select(n => n.ToString()), needs.ToString().Split(Environment.NewLine));
    }

    [Fact]
    public void A_part_is_asked_for_as_what_it_is()
    {
        Assert.Same(Bicycle[Slot.Fork], Bicycle.Part<Fork>(Slot.Fork));
        Assert.Null(Bicycle.Part<Wheel>(Slot.RearWheel));
        Assert.Throws<InvalidCastException>(() => Bicycle.Part<Wheel>(Slot.Fork));
    }

    [Fact]
    public void What_is_known_is_said_and_asked_without_naming_the_type()
    {
        Known<SeatpostDiameter> known = Known.Of(SeatpostDiameter.OfMillimetres(27.2m));
        Assert.True(known.TryGetValue(out SeatpostDiameter value));
        Assert.Equal(27.2m, value.Millimetres);
        Assert.False(Known<SeatpostDiameter>.Unknown.TryGetValue(out _));
        Assert.False(Known<SeatpostDiameter>.OneOf([SeatpostDiameter.OfMillimetres(27.2m), SeatpostDiameter.OfMillimetres(27m)]).TryGetValue(out _));
        Assert.Throws<ArgumentException>(() => Known.Of(default(SeatpostDiameter)));
    }

    [Theory]
    [InlineData(400, 2)]
    [InlineData(27.2, 0.05)]
    [InlineData(100, 0.1)]
    public void A_measured_length_is_read_back_as_it_was_measured(decimal millimetres, decimal error)
    {
        MeasuredLength length = MeasuredLength.OfMillimetres(millimetres, error);
        Known<Dimension> known = Known<Dimension>.Measured(length);
        Assert.Equal((millimetres, error), (known.Reading!.Value.Millimetres, known.Reading.Value.ErrorMillimetres));
        Assert.Equal(Known<Dimension>.Measured(millimetres, error), known);
        Assert.Equal(FormattableString.Invariant($"{millimetres} \u00B1 {error} mm"), known.Evidence!.Words);
        Assert.Equal("by the caliper", Known<Dimension>.Measured(millimetres, error, "by the caliper").Evidence!.Words);
        Assert.Null(Known.Of(Dimension.OfMillimetres(400)).Reading);
        Assert.Null(Known<Dimension>.Unknown.Reading);
        Assert.Throws<ArgumentOutOfRangeException>(() => Known<Dimension>.Measured(default));
    }

    [Fact]
    public void A_value_is_tried_without_a_culture()
    {
        Assert.True(SeatpostDiameter.TryParse("27.2", out SeatpostDiameter post));
        Assert.Equal(27.2m, post.Millimetres);
        Assert.False(SeatpostDiameter.TryParse("wide", out _));
        Assert.True(Lugwork.Brakes.BrakeMount.TryParse(Lugwork.Brakes.BrakeMount.All[0].FitKey, out Lugwork.Brakes.BrakeMount? mount));
        Assert.Same(Lugwork.Brakes.BrakeMount.All[0], mount);
        Assert.False(Lugwork.Brakes.BrakeMount.TryParse(null, out _));
    }

    [Fact]
    public void A_slot_is_text_wherever_values_are()
    {
        Assert.All(Slot.All, s =>
        {
            Assert.Same(s, Slot.Parse(s.Key.ToUpperInvariant(), null));
            Assert.Same(s, Slot.Parse(s.Key.AsSpan(), null));
            Assert.True(Slot.TryParse(s.Key, null, out Slot? found) && found == s);
            Assert.Equal($"\"{s.Key}\"", JsonSerializer.Serialize(s));
            Assert.Same(s, JsonSerializer.Deserialize<Slot>($"\"{s.Key}\""));
        });
        Assert.Equal("""{"rearWheel":1}""", JsonSerializer.Serialize(new Dictionary<Slot, int> { [Slot.RearWheel] = 1 }));
        Assert.Equal(1, JsonSerializer.Deserialize<Dictionary<Slot, int>>("""{"rearWheel":1}""")![Slot.RearWheel]);
    }

    [Theory]
    [InlineData("\"wing\"")]
    [InlineData("3")]
    [InlineData("{}")]
    [InlineData("\"\\ud800\"")]
    public void What_is_no_slot_is_refused(string json)
    {
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Slot>(json));
        Assert.Throws<FormatException>(() => Slot.Parse(json, null));
        Assert.False(Slot.TryParse(json, out _));
        Assert.False(Slot.TryParse(null, out _));
    }

    [Fact]
    public void Offers_are_equal_by_what_they_say_and_a_mass_by_its_grams()
    {
        Lugwork.Planning.ChoiceOffer one = new("a", Slot.Seatpost, Seatpost.Read("27.2 x 350")) { Mass = UnitsNet.Mass.FromKilograms(0.25) };
        Assert.Equal(one, one with { Mass = UnitsNet.Mass.FromGrams(250) });
        Assert.Equal(one.GetHashCode(), (one with { Mass = UnitsNet.Mass.FromGrams(250) }).GetHashCode());
        Assert.NotEqual(one, one with { Mass = UnitsNet.Mass.FromGrams(251) });
        Assert.NotEqual(one, one with { Mass = null });
        Assert.NotEqual(one, one with { IsOwned = true });
        Assert.NotEqual(one, one with { Item = "x" });
    }
}
