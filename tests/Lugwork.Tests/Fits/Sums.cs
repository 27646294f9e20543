using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;

namespace Lugwork.Tests.Fits;

/// <summary>One of every sum that takes a quantity, with figures that go together: by it all are asked with other units and with figures that are none.</summary>
/// <param name="Covers">The methods that it runs.</param>
/// <param name="Plain">The figures: millimetres, degrees, bar, km/h, turns a minute, kilograms, parts, teeth.</param>
/// <param name="Run">The sum.</param>
/// <param name="ZeroIsOne">Which figures may be nothing at all.</param>
internal sealed record Sum(string Covers, double[] Plain, Func<SumInput, object?> Run, params int[] ZeroIsOne)
{
    private static readonly TyreSize Tyre = TyreSize.Parse("40-622", null);

    private static SpokeFlange Flange => SpokeFlange.Of(UnitsNet.Length.FromMillimeters(50), UnitsNet.Length.FromMillimeters(30), UnitsNet.Length.FromMillimeters(2.6));

    public static Sum[] All { get; } =
    [
        // Sums that end in a verdict.
        new("SteererLength.Check", [125, 12, 14, 20, 40, 0, 208], q => Stack(q).Check(q.L(6)), 1, 2, 3, 5),
        new("SteererCut.Of", [125, 12, 14, 20, 40, 0, 265], q => SteererCut.Of(Stack(q), q.L(6), Material.Aluminium).Check, 1, 2, 3, 5),
        new("SteererCut.Of", [125, 12, 14, 20, 40, 0, 265, 30, 5], q => SteererCut.Of(Stack(q), q.L(6), Material.Carbon, q.L(7), q.L(8)).Check, 1, 2, 5, 8),
        new("SteererSpacers.OnCarbon", [20, 30, 5], q => SteererSpacers.OnCarbon(SteererSize.Mm28Point6, q.L(0), q.L(1), q.L(2)), 2),
        new("HeadsetHeights.Measured HeadsetHeights.Check", [14, 12, 2, 206], q => HeadsetHeights.Measured(q.L(0), q.L(1), q.L(2)).Check(SteererLength.OfMillimetres(120, 0, 0, 20, 40), q.L(3)), 0, 1, 2),
        new("HeadsetHeights.Usual HeadsetHeights.Check", [2, 200], q => HeadsetHeights.Usual(HeadsetCup.Ec44, HeadsetCup.Ec44, q.L(0))!.Check(SteererLength.OfMillimetres(125, 0, 0, 20, 40), q.L(1))),
        new("PressFit.Check PressFit.InterferenceRange", [34.05, 34], q => PressFit.Check(q.M(0), q.M(1))),
        new("DerailleurLimits.Check", [45, 52, 10, 32, 10, 51], q => new DerailleurLimits { TotalCapacity = q.T(0), LargestSprocket = q.T(1), SmallestSprocket = q.T(2) }.Check([q.T(3)], [q.T(4), q.T(5)])),
        new("ChainSpan.Of", [440, 440, 40, 11, 34, 35, 2], q => ChainSpan.Of(q.L(0), q.L(1), [q.T(2)], [q.T(3), q.T(4)], q.T(5), q.T(6)).Check(), 6),
        new("SingleSpeedChain.ForFixedAxle", [425, 42, 17], q => SingleSpeedChain.ForFixedAxle(q.L(0), q.T(1), q.T(2)).Check),
        new("SingleSpeedChain.ForSlots", [402, 422, 42, 17], q => SingleSpeedChain.ForSlots(q.L(0), q.L(1), q.T(2), q.T(3))[0].Check),
        new("ChainWear.Of", [305, 24], q => ChainWear.Of(ChainSize.For11, q.L(0), q.T(1)).Check),
        new("RolloutLimit.Of RolloutLimit.Check", [6_930, 2_096, 46, 16], q => RolloutLimit.Of("own class", q.L(0)).Check(new(q.T(2), q.T(3)), q.L(1))),
        new("Lockring.OnAxle", [12], q => Lockring.Internal.OnAxle(q.L(0))),
        new("MountedTyre.OnRim TyreClearance.EachSide", [25, 70, 1], q => TyreClearance.EachSide(MountedTyre.OnRim(Tyre, q.L(0)), q.L(1), q.L(2)).Check(ClearanceRule.Others), 2),
        new("TyreClearance.EachSide", [70], q => TyreClearance.EachSide(MountedTyre.OnRim(Tyre, UnitsNet.Length.FromMillimeters(25)), q.L(0)).Check(ClearanceRule.Others)),
        new("TyreClearance.Above", [375], q => TyreClearance.Above(MountedTyre.OnRim(Tyre, UnitsNet.Length.FromMillimeters(23)), q.L(0)).Check(ClearanceRule.Others)),
        new("PressureLimits.Of PressureLimits.Check", [5.5, 4.5, 2, 4], q => PressureLimits.Of(q.P(0), q.P(1), RimType.Hookless, q.P(2)).Check(q.P(3))),
        new("RotorThickness.Check", [1.75, 1.5], q => RotorThickness.Check(q.M(0), q.D(1))),
        new("RimBrakeReach.Check", [45], q => RimBrakeReach.All[0].Check(q.M(0))),
        new("GroundClearance.Check", [280, 170, 16, 180], q => GroundClearance.Check(q.L(0), q.L(1), q.L(2), q.L(3))),
        new("ToeClearance.Check", [620, 340, 170], q => ToeClearance.Check(q.L(0), q.L(1), q.L(2))),
        new("SeatpostRoom.Check", [200, 250, 80, 350], q => new SeatpostRoom { RailHeight = q.D(0), OpenDepth = q.D(1), LeastInsertion = q.D(2) }.Check(q.D(3))),
        new("DropperFit.Of", [55, 470, 20, 235, 280, 80, 25, 5], q => DropperFit.Of(Post(q), Room(q), q.L(6), q.L(7)).Check, 2, 6, 7),
        new("DropperSize.Check", [55, 470, 20, 235, 280, 80], q => Post(q).Check(q.D(3), q.D(4), q.D(5)), 2),
        new("ShockChange.Of", [150], q => ShockChange.Of(ShockSize.All[0], q.L(0), ShockSize.All[0]).Check()),
        new("FrameGeometry.WithFork", [551, 44, 560, 300, 62], q => new FrameLimits { LongestFork = q.L(2), ShortestFork = q.L(3), SlackestHeadAngle = q.A(4), LeastTrail = UnitsNet.Length.FromMillimeters(60), MostForkOffset = UnitsNet.Length.FromMillimeters(60) }.Check(Geometry.Frames.Drawn, Geometry.Frames.Drawn.WithFork(q.L(0), q.L(1))).MaxBy(c => c.Verdict), 1),

        // Sums that end in a figure.
        new("Gear.GearInches Gear.Development", [700, 2_100, 50, 11], q => Both(() => new Gear(q.T(2), q.T(3)).GearInches(q.L(0)), () => new Gear(q.T(2), q.T(3)).Development(q.L(1)))),
        new("Gear.GainRatio", [340, 170], q => new Gear(50, 11).GainRatio(q.L(0), q.L(1))),
        new("Gear.SpeedAt Gear.CadenceAt", [90, 2_100, 30], q => Both(() => new Gear(50, 11).SpeedAt(q.R(0), q.L(1)), () => new Gear(50, 11).CadenceAt(q.S(2), q.L(1)))),
        new("Gearing.SpeedAt Gearing.CadenceAt", [6_000, 90, 30], q => Both(() => Gearing.SpeedAt(q.L(0), q.R(1)), () => Gearing.CadenceAt(q.L(0), q.S(2)))),
        new("Gearing.CadenceAt", [5, 170, 30], q => Gearing.CadenceAt(q.N(0), q.L(1), q.S(2))),
        new("Gearing.GearInchesOf", [6_000], q => Gearing.GearInchesOf(q.L(0))),
        new("Gearing.DevelopmentOf Gearing.StepPercent Gearing.RangePercent", [70, 2, 4], q => Both(() => Gearing.DevelopmentOf(q.N(0)), () => Gearing.StepPercent(q.N(1), q.N(2)), () => Gearing.RangePercent(q.N(1), q.N(2)))),
        new("GearTable.Of", [2_100, 50, 11], q => GearTable.Of([q.T(1)], [q.T(2)], q.L(0)).ToString()),
        new("ChainLoop.Exact ChainLoop.ByRollerChainFormula", [430, 50, 11], q => Both(() => ChainLoop.Exact(q.L(0), q.T(1), q.T(2)).Pitches, () => ChainLoop.ByRollerChainFormula(q.L(0), q.T(1), q.T(2)).Pitches)),
        new("ChainLoop.CentreDistance ChainLoop.CentreDistanceByRollerChainFormula", [110, 50, 11], q => Both(() => ChainLoop.CentreDistance(ChainLength.OfPitches(q.N(0)), q.T(1), q.T(2)), () => ChainLoop.CentreDistanceByRollerChainFormula(ChainLength.OfPitches(q.N(0)), q.T(1), q.T(2)))),
        new("ChainLoop.PitchesForGrowth", [11], q => ChainLoop.PitchesForGrowth(q.L(0))),
        new("ChainRule.BigBig ChainRule.ByShortRuleWithOneInch ChainRule.ByLongRuleWithOneInch ChainRule.SmallSmall", [430, 50, 34, 2, 39], q => Both(() => ChainRule.BigBig(q.L(0), q.T(1), q.T(2), q.T(3)).Pitches, () => ChainRule.ByShortRuleWithOneInch(q.L(0), q.T(1), q.T(2)).Pitches, () => ChainRule.ByLongRuleWithOneInch(q.L(0), q.T(1), q.T(2)).Pitches, () => ChainRule.SmallSmall(q.L(0), q.T(1), q.T(2), q.T(4), q.T(3)).Pitches)),
        new("ChainlineStudy.Of ChainlineStudy.Moved ChainlineStudy.Rank", [47, 430, 3], q => ChainlineStudy.Of([q.L(0)], RearChainline.OfStackInInnerGap(Dimension.OfMillimetres(135), Dimension.OfMillimetres(3), Dimension.OfMillimetres(1.6m), Dimension.OfMillimetres(3.9m), 11), q.L(1)).Moved(q.L(2)).Rank([("moved", q.L(2))])[0].ToString()),
        new("RearChainline.OfOneSprocketInInnerGap", [120, 17.5], q => RearChainline.OfOneSprocketInInnerGap(q.D(0), q.D(1))),
        new("RearChainline.OfStackInInnerGap", [135, 3, 1.6, 3.9, 11], q => RearChainline.OfStackInInnerGap(q.D(0), q.D(1), q.D(2), q.D(3), q.T(4)).ToString()),
        new("SprocketSpacing.InRecessedEnds", [142, 3.5], q => SprocketSpacing.Parse("11 wide", null).InRecessedEnds(q.D(0), q.L(1))?.ToString()),
        new("SprocketSpacing.InInnerGap", [135], q => SprocketSpacing.Parse("11 wide", null).InInnerGap(q.D(0))?.ToString()),
        new("RingLine.OfTwoByTube RingLine.OfOneByTube", [31.8, 31.5, 9], q => Both(() => RingLine.OfTwoByTube(q.L(0), q.L(1), q.L(2)), () => RingLine.OfOneByTube(q.L(0), q.L(1), q.L(2)))),
        new("RingLine.ByShell", [68, 10], q => RingLine.ByShell(q.L(0), q.L(1))),
        new("RingLine.BySpindle", [110, 10, 2], q => RingLine.BySpindle(q.L(0), q.L(1), q.L(2))),
        new("RingLine.Rings", [45, 2, 5], q => RingLine.Rings(q.L(0), q.T(1), q.L(2))),
        new("CrankLengthRule.For CrankLengthRule.Range", [812], q => Both(() => CrankLengthRule.Range(q.L(0)).Least, () => CrankLengthRule.Proportion.For(q.L(0)))),
        new("SaddleHeightRule.For SaddleHeightRule.Range", [812, 170], q => Both(() => SaddleHeightRule.Range(q.L(0), q.L(1)).Most, () => SaddleHeightRule.Inseam875.For(q.L(0)))),
        new("SaddleHeight.RailsAboveCollar", [715, 440, 48], q => SaddleHeight.RailsAboveCollar(q.L(0), q.L(1), q.L(2))),
        new("SaddleHeight.Of", [227, 440, 48], q => SaddleHeight.Of(q.L(0), q.L(1), q.L(2))),
        new("SeatpostRoom.InsertionOf SeatpostRoom.LongestTravel", [235, 350, 50], q => Both(() => (Room() with { RailHeight = q.D(0) }).InsertionOf(q.D(1)), () => (Room() with { RailHeight = q.D(0) }).LongestTravel(q.D(2)))),
        new("DropperSize.InsertionAt DropperSize.OpenDepthAt DropperSize.LongestTravel DropperFit.StackOf", [55, 470, 20, 235], q => Both(() => (double?)Post(q).InsertionAt(q.D(3))?.Millimetres, () => (double?)Post(q).OpenDepthAt(q.D(3))?.Millimetres, () => (double?)DropperSize.LongestTravel(q.D(3), q.D(0))?.Millimetres, () => (double)DropperFit.StackOf(q.D(3), DropperTravel.OfMillimetres(170)).Millimetres)),
        new("InsertionRule.LeastWithStub", [40], q => (double)InsertionRule.LeastWithStub(q.D(0)).Millimetres),
        new("EffectiveRimDiameter.OfSpokeEnds SpokeFlange.Of", [600, 50, 30, 2.6], q => SpokeLength.Of(EffectiveRimDiameter.OfSpokeEnds(q.L(0)), SpokeFlange.Of(q.L(1), q.L(2), q.L(3)), SpokeLacing.Of(32, 3))),
        new("EffectiveRimDiameter.FromNippleSeats EffectiveRimDiameter.FromOutside", [594, 3, 630, 15], q => Both(() => EffectiveRimDiameter.FromNippleSeats(q.L(0), q.L(1)).Diameter, () => EffectiveRimDiameter.FromOutside(q.L(2), q.L(3)).Diameter)),
        new("EffectiveRimDiameter.FromSpoke", [290], q => EffectiveRimDiameter.FromSpoke(q.L(0), Flange, SpokeLacing.Of(32, 3)).Diameter),
        new("SpokeFlange.OffsetFrom", [142, 36], q => SpokeFlange.OffsetFrom(q.L(0), q.L(1))),
        new("SpokeStock.Nearest SpokeStock.NotAbove", [291.7, 2], q => Both(() => SpokeStock.Nearest(q.L(0), q.L(1)), () => SpokeStock.NotAbove(q.L(0), q.L(1)))),
        new("SpokeTension.LeftOverRight", [35, 292, 18, 290], q => SpokeTension.LeftOverRight(q.L(0), q.L(1), q.L(2), q.L(3))),
        new("WheelSpokes.Of", [2.5], q => WheelSpokes.Of(EffectiveRimDiameter.OfSpokeEnds(UnitsNet.Length.FromMillimeters(600)), Flange, Flange, SpokeLacing.Of(32, 3), SpokeLacing.Of(32, 3), q.L(0)).ToString()),
        new("TyreGrowth.WidthOn", [28, 19, 23], q => TyreGrowth.Half.WidthOn(q.L(0), q.L(1), q.L(2))),
        new("SectionHeight.Of", [28], q => SectionHeight.EqualToWidth.Of(q.L(0))),
        new("HooklessMinimum.InForce", [25], q => HooklessMinimum.InForce(q.L(0))?.ToString()),
        new("MeasuringRim.For RimWidthAdvice.For PressureLimits.LeastByOlderStandard", [28], q => Both(() => MeasuringRim.For(q.L(0)).InnerWidth, () => RimWidthAdvice.For(q.L(0)).MostByRatio, () => PressureLimits.LeastByOlderStandard(q.L(0), false))),
        new("RimWidths.SourceOf", [19], q => RimWidths.SourceOf(RimType.Crochet, q.L(0))?.ToString()),
        new("PressureByLoad.Find", [40, 85], q => PressureByLoad.Find(q.L(0), q.K(1))?.ToString()),
        new("RotorChange.Of", [160, 180], q => RotorChange.Of(RotorSize.OfFitCode(q.T(0)), RotorSize.OfFitCode(q.T(1))).AlongRadius),
        new("PressFit.Interference", [34.05, 34], q => PressFit.Interference(q.L(0), q.L(1))),
        new("SteererCut.SpacersBelowFor", [125, 12, 14, 20, 40, 0, 205], q => SteererCut.SpacersBelowFor(Stack(q), q.L(6))),
        new("StemAngle.OfSquare StemShape.Of StemShape.Forward StemShape.Up StemAngle.AboveHorizon", [100, -6, 72], q => Both(() => StemShape.Of(q.L(0), StemAngle.OfSquare(q.A(1))).Forward(q.A(2)), () => StemShape.Of(q.L(0), StemAngle.OfSquare(q.A(1))).Up(q.A(2)), () => StemAngle.OfSquare(q.A(1)).AboveHorizon(q.A(2)))),
        new("StemAngle.OfSteerer StemAngle.OfHorizon", [84, 12, 72], q => Both(() => StemAngle.OfSteerer(q.A(0)).FromSquare, () => StemAngle.OfHorizon(q.A(1), q.A(2)).FromSquare)),
        new("CockpitSetup", [572, 388, 72, 14, 20, 40, 10], q => Both(() => Cockpit(q).BarReach, () => Cockpit(q).BarStack)),
        new("MeanLeverage.Of MeanLeverage.TravelFor MeanLeverage.StrokeFor", [150, 55, 30, 80], q => Both(() => MeanLeverage.Of(q.L(0), q.L(1)).TravelFor(q.L(2)), () => MeanLeverage.Of(q.L(0), q.L(1)).StrokeFor(q.L(3)))),
        new("Sag.AtShock Sag.AtFork Sag.AtRearWheelByMeanRatio Sag.ShareOf", [55, 0.3, 140, 16], q => Both(() => Sag.AtShock(q.L(0), q.X(1)), () => Sag.AtFork(q.L(2), q.X(1)), () => Sag.AtRearWheelByMeanRatio(q.L(2), q.X(1)), () => Sag.ShareOf(q.L(3), q.L(0)))),
        new("SteeringGeometry.Trail SteeringGeometry.MechanicalTrail SteeringGeometry.OffsetForTrail SteeringGeometry.FlopFactor", [72, 45, 340, 60], q => Both(() => SteeringGeometry.Trail(q.A(0), q.L(1), q.L(2)), () => SteeringGeometry.MechanicalTrail(q.A(0), q.L(1), q.L(2)), () => SteeringGeometry.OffsetForTrail(q.A(0), q.L(3), q.L(2)), () => SteeringGeometry.FlopFactor(q.L(3), q.A(0)))),
        new("WheelRadius.OfRollOut", [2_180], q => WheelRadius.OfRollOut(q.L(0))),
        new("AngleHeadset.Of FrameGeometry.WithForkLongerBy FrameGeometry.WithForkOffset FrameGeometry.WithWheels FrameGeometry.WithLowerStack", [1, 30, 20, 44, 350, 340, 12], q => Geometry.Frames.Drawn.WithForkLongerBy(q.L(2)).WithForkOffset(q.L(3)).WithWheels(q.L(4), q.L(5)).WithLowerStack(q.L(6)).WithAngleHeadset(AngleHeadset.Of(q.A(0), q.L(1))).Trail),
        new("AngleHeadset.OfShifts AngleHeadset.ShiftFor", [2, 1, 120, 5, 1], q => Both(() => AngleHeadset.OfShifts(q.L(0), q.L(1), q.L(2), q.L(3)).ToString()!, () => AngleHeadset.ShiftFor(q.A(4), q.L(2)))),
        new("ToeClearance.Estimate GroundClearance.Lean", [620, 340, 170, 280, 16, 180], q => Both(() => ToeClearance.Estimate(q.L(0), q.L(1), q.L(2)), () => GroundClearance.Lean(q.L(3), q.L(2), q.L(4), q.L(5)))),
    ];

    /// <summary>Several sums of one set of figures, each asked by itself: that one refuses must not hide that another does not.</summary>
    private static Func<object?>[] Both(params Func<object?>[] sums) => sums;

    private static SteererLength Stack(SumInput q) => new() { HeadTube = q.L(0), LowerStack = q.L(1), UpperStack = q.L(2), SpacersBelow = q.L(3), StemClamp = q.L(4), SpacersAbove = q.L(5) };

    private static DropperSize Post(SumInput q) => new() { Travel = DropperTravel.OfMillimetres(170), Stack = q.D(0), TotalLength = q.D(1), Actuator = q.L(2) };

    private static SeatpostRoom Room(SumInput q) => new() { RailHeight = q.D(3), OpenDepth = q.D(4), LeastInsertion = q.D(5) };

    private static SeatpostRoom Room() => new() { RailHeight = Dimension.OfMillimetres(235), OpenDepth = Dimension.OfMillimetres(250), LeastInsertion = Dimension.OfMillimetres(80) };

    private static CockpitSetup Cockpit(SumInput q) => new() { Stack = q.L(0), Reach = q.L(1), HeadAngle = q.A(2), UpperStack = q.L(3), SpacersBelow = q.L(4), StemClamp = q.L(5), BarRise = q.L(6), Stem = StemShape.Of(UnitsNet.Length.FromMillimeters(100), default) };

    public override string ToString() => Covers;
}
