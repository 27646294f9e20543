using Lugwork.Cockpit;
using Lugwork.Steering;

namespace Lugwork.Tests.Steering;

/// <summary>Identifying by measuring, for every value at the front of a bicycle.</summary>
public sealed class IdentificationLaws
{
    [Fact]
    public void Head_tube_bores() =>
        Tried(Identifying.Holds(HeadTubeBore.All.Remove(HeadTubeBore.Zs62), b => [Mm(b.Nominal), Mm(HeadsetCup.All.First(c => c.Bore == b).OutsideDiameter)], r => HeadTubeBore.Identify(bore: r[0], part: r[1])));

    [Fact]
    public void A_bore_of_62_is_told_only_with_the_part_that_was_in_it()
    {
        Assert.Empty(HeadTubeBore.Identify(bore: Identifying.Mm(61.93)).Candidates);
        Assert.Same(HeadTubeBore.Zs62, Assert.Single(HeadTubeBore.Identify(bore: Identifying.Mm(61.93), part: Read(HeadsetCup.All.First(c => c.Bore == HeadTubeBore.Zs62).OutsideDiameter)).Candidates).Value);
    }

    [Fact]
    public void Headset_halves() =>
        Tried(Identifying.Holds(HeadsetCup.All, c => [Mm(c.OutsideDiameter), Middle(c.LeastUpperStack, c.MostUpperStack), Middle(c.LeastLowerStack, c.MostLowerStack)], r => HeadsetCup.Identify(diameter: r[0], upperStack: r[1], lowerStack: r[2])));

    [Fact]
    public void Crown_seats() =>
        Tried(Identifying.Holds(CrownSeat.All, s => [Mm(s.Diameter), Foot(s.FitKey)], r => CrownSeat.Identify(diameter: r[0], steerer: r[1])));

    [Fact]
    public void Crown_seats_without_their_steerer() =>
        Tried(Identifying.Holds(CrownSeat.All, s => [Mm(s.Diameter)], r => CrownSeat.Identify(diameter: r[0])));

    [Fact]
    public void Crown_races() =>
        Tried(Identifying.Holds(CrownRace.All, s => [Mm(s.Diameter), Foot(s.FitKey)], r => CrownRace.Identify(diameter: r[0], steerer: r[1])));

    [Fact]
    public void Crown_races_without_their_steerer() =>
        Tried(Identifying.Holds(CrownRace.All, s => [Mm(s.Diameter)], r => CrownRace.Identify(diameter: r[0])));

    [Fact]
    public void Steerers() =>
        Tried(Identifying.Holds(SteererSize.All, s => [Mm(s.Diameter), Quill(s)], r => SteererSize.Identify(diameter: r[0], inside: r[1])));

    [Fact]
    public void Steerer_shapes() =>
        Tried(Identifying.Holds(SteererShape.All, s => [s.Tops.Length == 1 ? Mm(s.Tops[0].Diameter) : null, Mm(s.Foot), s.Seats.IsEmpty ? null : Mm(s.Seats[0].Diameter)], r => SteererShape.Identify(top: r[0], foot: r[1], crownSeat: r[2])));

    [Fact]
    public void Bearings() =>
        Tried(Identifying.Holds(HeadsetBearing.All, b => [Mm(b.OutsideDiameter), Mm(b.InsideDiameter), Mm(b.Height)], r => HeadsetBearing.Identify(outside: r[0], inside: r[1], height: r[2])));

    [Fact]
    public void Stem_clamps() =>
        Tried(Identifying.Holds([.. StemFixing.All.Where(f => !f.IsQuill)], f => [Mm(f.Diameter)], r => StemFixing.Identify(clamp: r[0])));

    [Fact]
    public void Quills() =>
        Tried(Identifying.Holds([.. StemFixing.All.Where(f => f.IsQuill)], f => [Mm(f.Diameter)], r => StemFixing.Identify(quill: r[0])));

    [Fact]
    public void Bars() =>
        Tried(Identifying.Holds(BarClamp.All, c => [Mm(c.Diameter), c.Grips.Length == 1 ? Mm(c.Grips[0].Diameter) : null], r => BarClamp.Identify(clamp: r[0], grip: r[1])));

    [Fact]
    public void Grips() =>
        Tried(Identifying.Holds(GripDiameter.All, g => [Mm(g.Diameter)], r => GripDiameter.Identify(r[0]!.Value)));

    /// <summary>Where a value has several sizes of one dimension, none of them drops it.</summary>
    [Fact]
    public void Every_grip_top_and_seat_that_a_value_has_keeps_it()
    {
        Assert.All(BarClamp.All, c => Assert.All(c.Grips, g => Kept(c, BarClamp.Identify(Read(c.Diameter), Read(g.Diameter)))));
        Assert.All(SteererShape.All, s => Assert.All(s.Tops, t => Kept(s, SteererShape.Identify(top: Read(t.Diameter), foot: Read(s.Foot)))));
        foreach (SteererShape shape in SteererShape.All)
        {
            Assert.All(shape.Seats, seat => Kept(shape, SteererShape.Identify(foot: Read(shape.Foot), crownSeat: Read(seat.Most))));
            Assert.All(shape.Seats, seat => Assert.All(shape.Tops, top => Kept(top, SteererSize.Identify(diameter: Read(top.Diameter), crownSeat: Read(seat.Least)))));
        }
    }

    [Fact]
    public void A_dimension_that_was_never_measured_is_asked_for_and_a_default_is_no_reading()
    {
        Assert.Throws<ArgumentException>(() => HeadTubeBore.Identify());
        Assert.Throws<ArgumentException>(() => HeadsetBearing.Identify(outside: default(MeasuredLength)));
        Assert.Throws<ArgumentException>(() => StemFixing.Identify());
        Assert.Throws<ArgumentException>(() => StemFixing.Identify(clamp: Identifying.Mm(28.6), quill: Identifying.Mm(22.2)));
    }

    [Fact]
    public void What_a_row_was_found_to_measure_holds_its_nominal_size_or_lies_beside_it()
    {
        Assert.All(CrownSeat.All, s => Assert.True(Mm(s.Least) - 0.02m <= Mm(s.Diameter) && Mm(s.Diameter) <= Mm(s.Most)));
        Assert.All(CrownRace.All, s => Assert.True(Mm(s.Least) <= Mm(s.Diameter) && Mm(s.Diameter) <= Mm(s.Most)));
        Assert.All(HeadTubeBore.All, b => Assert.InRange(Mm(b.Nominal) - Mm(b.Most), -0.1m, 0.05m));
        Assert.All(HeadsetCup.All.Where(c => c.Style != HeadsetStyle.Integrated), c => Assert.True(c.OutsideDiameter > c.Bore.Most));
        Assert.All(HeadsetCup.All.Where(c => c.Style == HeadsetStyle.Integrated), c => Assert.True(c.OutsideDiameter < c.Bore.Most));
    }

    private static MeasuredLength Read(UnitsNet.Length length) => MeasuredLength.OfMillimetres(Mm(length), 0.05m);

    private static void Kept<T>(T value, Identification<T> found)
        where T : class => Assert.Contains(found.Candidates, c => c.Value == value);

    private static void Tried(int readings) => Assert.True(readings >= 30, $"only {readings} readings tried");

    private static decimal Mm(UnitsNet.Length length) => decimal.Round((decimal)length.Millimeters, 3);

    private static decimal? Middle(UnitsNet.Length? least, UnitsNet.Length? most) =>
        least is { } from && most is { } to && Mm(from) < Mm(to) ? (Mm(from) + Mm(to)) / 2 : null;

    private static decimal Foot(string seat) => seat switch
    {
        "26.4" or "27" => 25.4m,
        "26.5" => 25m,
        "30" => 28.6m,
        "33" => 31.8m,
        "37" => 34.9m,
        _ => 38.1m,
    };

    private static decimal? Quill(SteererSize size) => StemFixing.All.FirstOrDefault(f => f.IsQuill && f.Steerer == size) is { } foot ? Mm(foot.Diameter) : null;
}
