using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Lugwork.Drivetrain;
using UnitsNet;
using UnitsNet.Units;

namespace Lugwork.Tests.Drivetrain;

/// <summary>What holds of gears, chains and chainlines whatever the teeth.</summary>
public sealed class DrivetrainSumLaws
{
    private const double Near = 1e-9;

    private static readonly Arbitrary<(int Ring, int Sprocket, double Centre)> Drives =
        (from ring in Gen.Choose(6, 70) from sprocket in Gen.Choose(6, 60) from centre in Gen.Choose(300_000, 1_500_000) select (ring, sprocket, centre / 1_000.0)).ToArbitrary();

    private static readonly Arbitrary<(int Ring, int Sprocket, double Centre)> Bicycles =
        (from ring in Gen.Choose(20, 60) from sprocket in Gen.Choose(9, 52) from centre in Gen.Choose(380_000, 800_000) select (ring, sprocket, centre / 1_000.0)).ToArbitrary();

    private static readonly Arbitrary<(Gear Gear, double Wheel, double Cadence)> Rides =
        (from ring in Gen.Choose(20, 60) from sprocket in Gen.Choose(9, 52) from over in Gen.Choose(10, 50) from under in Gen.Choose(25, 50) from wheel in Gen.Choose(900_000, 2_400_000) from cadence in Gen.Choose(1, 80_000)
         select (new Gear(ring, sprocket, new HubRatio(over, under)), wheel / 1_000.0, cadence / 1_000.0)).ToArbitrary();

    private static readonly LengthUnit[] Units = [LengthUnit.Inch, LengthUnit.Foot, LengthUnit.Meter, LengthUnit.Centimeter, LengthUnit.Micrometer];

    [Property(MaxTest = 1_000)]
    public Property The_unit_of_a_length_never_changes_a_sum() => Prop.ForAll(Drives, Gen.Elements(Units).ToArbitrary(), (d, unit) =>
    {
        Length plain = Length.FromMillimeters(d.Centre);
        Length same = plain.ToUnit(unit);
        return Alike(ChainLoop.Exact(plain, d.Ring, d.Sprocket).Pitches, ChainLoop.Exact(same, d.Ring, d.Sprocket).Pitches)
            && Alike(ChainRule.ByShortRuleWithOneInch(plain, d.Ring, d.Sprocket).Pitches, ChainRule.ByShortRuleWithOneInch(same, d.Ring, d.Sprocket).Pitches)
            && Alike(new Gear(d.Ring, d.Sprocket).GearInches(plain), new Gear(d.Ring, d.Sprocket).GearInches(same))
            && Alike(new Gear(d.Ring, d.Sprocket).Development(plain).Meters, new Gear(d.Ring, d.Sprocket).Development(same).Meters);
    });

    [Property(MaxTest = 1_000)]
    public Property Gears_scale_with_every_figure_they_are_made_of() => Prop.ForAll(Rides, r =>
    {
        Gear twice = new(r.Gear.Ring * 2, r.Gear.Sprocket, r.Gear.Hub);
        Length wheel = Length.FromMillimeters(r.Wheel);
        RotationalSpeed cadence = RotationalSpeed.FromRevolutionsPerMinute(r.Cadence);
        return Alike(twice.Ratio, 2 * r.Gear.Ratio)
            && Alike(new Gear(r.Gear.Ring * 2, r.Gear.Sprocket * 2, r.Gear.Hub).Ratio, r.Gear.Ratio)
            && Alike(r.Gear.Development(wheel * 2).Meters, 2 * r.Gear.Development(wheel).Meters)
            && Alike(r.Gear.SpeedAt(cadence * 2, wheel).KilometersPerHour, 2 * r.Gear.SpeedAt(cadence, wheel).KilometersPerHour);
    });

    [Property(MaxTest = 1_000)]
    public Property Speed_and_cadence_gear_inches_and_development_go_back_to_each_other() => Prop.ForAll(Rides, r =>
    {
        Length wheel = Length.FromMillimeters(r.Wheel);
        Speed speed = r.Gear.SpeedAt(RotationalSpeed.FromRevolutionsPerMinute(r.Cadence), wheel);
        double metres = Gearing.DevelopmentOf(Gearing.GearInchesOf(wheel)).Meters;
        return Alike(metres, wheel.Meters) && (speed.KilometersPerHour > 200 || Alike(r.Gear.CadenceAt(speed, wheel).RevolutionsPerMinute, r.Cadence));
    });

    [Property(MaxTest = 1_000)]
    public Property Both_ways_to_a_cadence_agree() => Prop.ForAll(Rides, r =>
    {
        double radius = r.Wheel / (2 * Math.PI);
        Length crank = Length.FromMillimeters(170);
        double gain = r.Gear.GainRatio(Length.FromMillimeters(radius), crank);
        return Alike(Gearing.CadenceAt(gain, crank, Speed.FromKilometersPerHour(25)).RevolutionsPerMinute, r.Gear.CadenceAt(Speed.FromKilometersPerHour(25), Length.FromMillimeters(r.Wheel)).RevolutionsPerMinute);
    });

    [Property(MaxTest = 500)]
    public Property Steps_of_a_table_multiply_to_its_range_and_are_never_below_zero() => Prop.ForAll(Gen.Choose(1, int.MaxValue).ToArbitrary(), seed =>
    {
        Random random = new(seed);
        GearTable table = GearTable.Of([.. Enumerable.Range(20, 40).OrderBy(_ => random.Next()).Take(1 + (seed % 4))], [.. Enumerable.Range(9, 43).OrderBy(_ => random.Next()).Take(1 + (seed % 14))], Length.FromMillimeters(2_100));
        double range = table.StepsPercent.Aggregate(100.0, (all, step) => all * (1 + (step / 100)));
        return Alike(range, table.RangePercent) && table.StepsPercent.All(s => s >= 0) && table.Gears.Length == table.Rings.Length * table.Sprockets.Length
            && table.CountOfDifferent(0) <= table.Gears.Length && table.CountOfDifferent(5) <= table.CountOfDifferent(1);
    });

    [Property(MaxTest = 1_000)]
    public Property A_loop_grows_with_every_tooth_and_with_the_distance() => Prop.ForAll(Drives, d =>
    {
        double loop = Loop(d.Centre, d.Ring, d.Sprocket);
        return Loop(d.Centre, d.Ring + 1, d.Sprocket) > loop && Loop(d.Centre, d.Ring, d.Sprocket + 1) > loop && Loop(d.Centre + 0.01, d.Ring, d.Sprocket) > loop;
    });

    [Property(MaxTest = 1_000)]
    public Property A_loop_is_the_same_from_either_end() => Prop.ForAll(Drives, d => Alike(Loop(d.Centre, d.Ring, d.Sprocket), Loop(d.Centre, d.Sprocket, d.Ring)));

    [Property(MaxTest = 1_000)]
    public Property A_loop_goes_back_to_its_distance_by_both_sums() => Prop.ForAll(Drives, d =>
    {
        Length centre = Length.FromMillimeters(d.Centre);
        double exact = ChainLoop.CentreDistance(ChainLoop.Exact(centre, d.Ring, d.Sprocket), d.Ring, d.Sprocket).Millimeters;
        double formula = ChainLoop.CentreDistanceByRollerChainFormula(ChainLoop.ByRollerChainFormula(centre, d.Ring, d.Sprocket), d.Ring, d.Sprocket).Millimeters;
        return Math.Abs(exact - d.Centre) < 1e-6 && Math.Abs(formula - d.Centre) < 1e-6;
    });

    [Property(MaxTest = 1_000)]
    public Property The_exact_sum_and_the_two_rules_stay_near_each_other() => Prop.ForAll(Bicycles, d =>
    {
        Length centre = Length.FromMillimeters(d.Centre);
        double exact = Loop(d.Centre, d.Ring, d.Sprocket);
        return Math.Abs(ChainLoop.ByRollerChainFormula(centre, d.Ring, d.Sprocket).Pitches - exact) < 0.015
            && Math.Abs(ChainRule.ByLongRuleWithOneInch(centre, d.Ring, d.Sprocket).Pitches - 2 - exact) < 0.06
            && ChainRule.ByShortRuleWithOneInch(centre, d.Ring, d.Sprocket).Pitches <= ChainRule.ByLongRuleWithOneInch(centre, d.Ring, d.Sprocket).Pitches + Near;
    });

    [Property(MaxTest = 1_000)]
    public Property Rounding_up_adds_less_than_a_full_link_and_is_even() => Prop.ForAll(Gen.Choose(0, 4_000_000).ToArbitrary(), thousandths =>
    {
        ChainLength chain = ChainLength.OfPitches(thousandths / 4_001.0);
        return chain.EvenPitches % 2 == 0 && chain.Spare >= -1e-5 && chain.Spare < 2 && chain.WholePitches <= chain.EvenPitches && chain.EvenPitches - chain.WholePitches <= 1;
    });

    [Property(MaxTest = 500)]
    public Property Moving_rings_out_and_back_changes_nothing_and_the_middle_is_best() => Prop.ForAll(Drives, Gen.Choose(-20_000, 20_000).ToArbitrary(), (d, thousandths) =>
    {
        RearChainline rear = SprocketSpacing.Parse("11 wide", null).InInnerGap(Dimension.OfMillimetres(135m))!;
        ChainlineStudy study = ChainlineStudy.Of(RingLine.Rings(Length.FromMillimeters(30 + (d.Ring / 4.0)), 1 + (d.Sprocket % 3), Length.FromMillimeters(7)), rear, Length.FromMillimeters(d.Centre));
        Length shift = Length.FromMillimeters(thousandths / 1_000.0);
        double best = study.Moved(study.ShiftToMiddle).Worst.Angle.Degrees;
        return Alike(study.Worst.Angle.Degrees, study.Moved(shift).Moved(-shift).Worst.Angle.Degrees) && best <= study.Worst.Angle.Degrees + Near && best <= study.Moved(shift).Worst.Angle.Degrees + Near;
    });

    private static bool Alike(double first, double second) => Math.Abs(first - second) <= Near * Math.Max(1, Math.Abs(first));

    private static double Loop(double centre, int ring, int sprocket) => ChainLoop.Exact(Length.FromMillimeters(centre), ring, sprocket).Pitches;
}
