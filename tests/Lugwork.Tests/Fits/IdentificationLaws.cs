using FsCheck;
using FsCheck.Xunit;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Seating;
using Lugwork.Steering;

namespace Lugwork.Tests.Fits;

/// <summary>Identifying by one measured size: the exact size is first, and an error within the stated one never drops it.</summary>
public sealed class IdentificationLaws
{
    private static readonly IReadOnlyList<(object Value, decimal Least, decimal Most, Func<MeasuredLength, IReadOnlyList<object>> Identify)> All =
    [
        .. SteererSize.All.Select(s => Case(s, s.Hundredths / 100m, s.Hundredths / 100m, r => SteererSize.Identify(r))),
        .. CrownSeat.All.Select(s => Case(s, Mm(s.Least), Mm(s.Most), r => CrownSeat.Identify(r))),
        .. CrownRace.All.Select(s => Case(s, Mm(s.Least), Mm(s.Most), r => CrownRace.Identify(r))),
        .. BarClamp.All.Select(s => Case(s, (s.Hundredths / 100m) - 0.1m, s.Hundredths / 100m, r => BarClamp.Identify(r))),
        .. SeatClampSize.All.Select(s => Case(s, s.Hundredths / 100m, s == SeatClampSize.Mm34Point9 ? 35m : s.Hundredths / 100m, r => SeatClampSize.Identify(r))),
        .. RotorSize.All.Select(r => Case(r, r.FitCode, r.FitCode == 203 ? 203.2m : r.FitCode, r => RotorSize.Identify(r))),
        .. HeadTubeBore.All.Where(b => b != HeadTubeBore.Zs62).Select(b => Case(b, Math.Min(Mm(b.Least), Mm(b.Nominal)), Math.Max(Mm(b.Most), Mm(b.Nominal)), r => HeadTubeBore.Identify(r))),
        .. SeatpostDiameter.All.Select(s => Case(s, s.Millimetres - 0.1m, s.Millimetres, r => SeatpostDiameter.Identify(r))),
        .. SeatTubeBore.All.Select(s => Case(s, s.Millimetres, s.Millimetres + 0.1m, r => SeatTubeBore.Identify(r))),
    ];

    private static decimal Mm(UnitsNet.Length length) => decimal.Round((decimal)length.Millimeters, 3);

    private static (object Value, decimal Least, decimal Most, Func<MeasuredLength, IReadOnlyList<object>> Identify) Case<T>(T value, decimal least, decimal most, Func<MeasuredLength, Identification<T>> identify)
        where T : notnull => (value, least, most, reading => [.. identify(reading).Candidates.Select(c => (object)c.Value)]);

    [Fact]
    public void The_exact_nominal_size_is_first()
    {
        Assert.True(All.Count > 100);
        foreach ((object value, decimal least, decimal most, Func<MeasuredLength, IReadOnlyList<object>> identify) in All)
        {
            IReadOnlyList<object> found = identify(MeasuredLength.OfMillimetres(value is SeatpostDiameter or BarClamp or CrownRace ? most : least, 0.01m));
            Assert.Equal(value, found[0]);
        }
    }

    [Property(MaxTest = 5_000)]
    public bool An_error_within_the_stated_one_never_drops_it(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        (object value, decimal least, decimal most, Func<MeasuredLength, IReadOnlyList<object>> identify) = All[random.Next(All.Count)];
        decimal error = random.Next(1, 200) / 1_000m;
        decimal off = new[] { -error, 0, error, error * random.Next(-100, 101) / 100m }[random.Next(4)];
        return identify(MeasuredLength.OfMillimetres((random.Next(2) == 0 ? least : most) + off, error)).Contains(value);
    }

    [Property(MaxTest = 2_000)]
    public void A_reading_beyond_its_error_drops_it_and_deviations_only_grow(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        (object value, decimal least, decimal most, Func<MeasuredLength, IReadOnlyList<object>> identify) = All[random.Next(All.Count)];
        Assert.DoesNotContain(value, identify(MeasuredLength.OfMillimetres(least - 0.101m, 0.1m)));
        Assert.DoesNotContain(value, identify(MeasuredLength.OfMillimetres(most + 0.101m, 0.1m)));
        decimal[] deviations = [.. SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(26m + (random.Next(500) / 100m), 0.4m)).Candidates.Select(c => c.DeviationMillimetres)];
        Assert.Equal(deviations.Order(), deviations);
    }

    [Theory]
    [InlineData("30.9", "31.6")]
    [InlineData("31.6", "30.9")]
    public void Neighbours_of_a_dropper_are_told_apart(string post, string other)
    {
        Identification<SeatpostDiameter> found = SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(decimal.Parse(post, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(post, found.Candidates[0].Value.ToString());
        Assert.DoesNotContain(found.Candidates, c => c.Value.ToString() == other);
        Assert.Contains("a caliper decides", found.Candidates[0].TellsApart, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_measurement_is_the_one_that_parts_the_rest()
    {
        IdentificationTable<string> table = new(
            [new("bore", "inside caliper"), new("width", "across the faces"), new("colour", "look")],
            [new("a", [(41, 41), (86.5m, 86.5m), null]), new("b", [(41, 41), (92, 92), null]), new("c", [(46, 46), (68, 68), null])],
            v => v);
        Identification<string> found = table.Identify(MeasuredLength.OfMillimetres(41), null);
        Assert.Equal(["a", "b"], found.Candidates.Select(c => c.Value));
        Assert.Equal("width (across the faces): 86.5 mm is a; 92 mm is b", found.Next);
        Assert.Equal("", table.Identify(MeasuredLength.OfMillimetres(41), MeasuredLength.OfMillimetres(92)).Next);
        Assert.Empty(table.Identify(MeasuredLength.OfMillimetres(44), null).Candidates);
    }

    [Fact]
    public void Nothing_measured_and_a_default_reading_are_refused()
    {
        Assert.Throws<ArgumentException>(() => SteererSize.Identify(default(MeasuredLength)));
        IdentificationTable<string> table = new([new("bore", "")], [], v => v);
        Assert.Throws<ArgumentException>(() => table.Identify([null]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredLength.OfMillimetres(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredLength.OfMillimetres(1, -0.1m));
    }
}
