using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>One type for what every sum comes to: id, verdict, sentence, figures, sources, cautions, remedy.</summary>
public sealed class SumCheckTests
{
    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static Dimension Of(decimal millimetres) => Dimension.OfMillimetres(millimetres);

    /// <summary>One of each sum, most of them with a verdict that is no fit.</summary>
    private static SumCheck[] Every() =>
    [
        SteererLength.OfMillimetres(125, 12, 14, 20, 40).Check(Mm(206)),
        SteererCut.Of(SteererLength.OfMillimetres(125, 12, 14, 20, 40), Mm(265)).Check,
        SteererSpacers.OnCarbon(SteererSize.Mm28Point6, Mm(35)),
        HeadsetHeights.Usual(HeadsetCup.Ec44, HeadsetCup.Ec44)!.Check(SteererLength.OfMillimetres(125, 0, 0, 20, 40), Mm(200)),
        PressFit.Check(MeasuredLength.OfMillimetres(34.1m, 0.01m), MeasuredLength.OfMillimetres(33.9m, 0.01m)),
        new DerailleurLimits { TotalCapacity = 30, LargestSprocket = 28 }.Check([50, 34], [11, 30]),
        ChainSpan.Of(Mm(430), Mm(430), [50, 34], [11, 30], 39, 2).Check(),
        SingleSpeedChain.ForFixedAxle(Mm(632), 18, 18).Check,
        ChainWear.Of(ChainSize.For11, Mm(306.5), 24).Check,
        RolloutLimit.PrintedUntilFebruary2025[0].Check(new Gear(46, 14), Mm(2_096)),
        Indexing.Estimate(ActuationFamily.Road11, ActuationFamily.Road11, SprocketSpacing.Parse("11-close", null)).Check,
        Lockring.Internal.OnAxle(Mm(15)),
        TyreClearance.EachSide(MountedTyre.OnRim(TyreSize.Parse("40-622", null), Mm(25)), Mm(52)).Check(ClearanceRule.Others),
        PressureLimits.Of(Pressure.FromBars(5), null, RimType.Hookless).Check(Pressure.FromBars(5.5)),
        ShockChange.Of(ShockSize.All[0], Mm(100), ShockSize.All[1]).Check(),
        AdapterChoice.Of(BrakeMount.Post160, CaliperFoot.Post, RotorSize.Parse("180", null), null).OnMount,
        AdapterChoice.Of(BrakeMount.Post160, CaliperFoot.Post, RotorSize.Parse("180", null), RotorSize.Parse("160", null)).Limit,
        LeverAndBrake.Of(CablePull.Short, BrakeType.OffRoadCableDisc).Check,
        RotorThickness.Check(MeasuredLength.OfMillimetres(1.4m, 0.01m), Of(1.5m)),
        RimBrakeReach.All[0].Check(MeasuredLength.OfMillimetres(60, 0.5m)),
        GroundClearance.Check(Mm(250), Mm(175), Mm(20), Mm(180)),
        ToeClearance.Check(Mm(570), Mm(340), Mm(170)),
        new FrameLimits { LongestFork = Mm(540) }.Check(Geometry.Frames.Drawn, Geometry.Frames.Drawn.WithFork(Mm(551), Mm(44)))[0],
        new SeatpostRoom { RailHeight = Of(300), OpenDepth = Of(200), LeastInsertion = Of(80) }.Check(Of(350)),
        DropperFit.Of(new() { Travel = DropperTravel.OfMillimetres(170), Stack = Of(55), TotalLength = Of(470), Actuator = Length.Zero }, new() { RailHeight = Of(395), OpenDepth = Of(250), LeastInsertion = Of(80) }).Check,
        new DropperSize { Travel = DropperTravel.OfMillimetres(170), Stack = Of(55), TotalLength = Of(470), Actuator = Length.Zero }.Check(Of(395), Of(250), Of(80)),
    ];

    [Fact]
    public void Every_sum_tells_what_it_compared_warns_and_says_what_would_mend_it()
    {
        foreach (SumCheck check in Every())
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", check.Id);
            Assert.NotEqual(Verdict.NotJudged, check.Verdict);
            Assert.False(string.IsNullOrWhiteSpace(check.Sentence), check.Id);
            Assert.DoesNotContain("{", check.Sentence, StringComparison.Ordinal);
            Assert.True(!check.Cautions.IsEmpty, $"{check.Id} warns of nothing: {check}");
            Assert.True(check.Verdict is Verdict.Fits or Verdict.NeedsPart || check.Remedy is not null || check.Id is "lever-and-brake" or "shock-change" or "rotor-limit", $"{check.Id} mends nothing: {check}");
            Assert.True(check.Id == "steerer-material" || !check.Figures.IsEmpty, $"{check.Id} compares nothing: {check}");
            Assert.All(check.Figures, f => Assert.True(double.IsFinite(f.Value) && f.Name.Length > 0, $"{check.Id}: {f}"));
            Assert.True(check.Id is "frame-limits" or "rotor-wear" || !check.Sources.IsEmpty, $"{check.Id} rests on nothing");
            Assert.Equal($"{Verdicts.InWords(check.Verdict)}: {check.Sentence}", check.ToString());
        }
    }

    [Fact]
    public void Ids_are_one_a_sum() =>
        Assert.Equal(
            ["brake-adapter", "carbon-spacers", "chain-span", "chain-wear", "derailleur-limits", "dropper-fit", "dropper-size", "frame-limits", "headset-heights", "indexing", "lever-and-brake", "lockring-on-axle", "pedal-clearance", "press-fit", "rim-brake-reach", "rollout-limit", "rotor-limit", "rotor-wear", "seatpost-room", "shock-change", "single-speed-chain", "steerer-length", "steerer-material", "toe-clearance", "tyre-clearance", "tyre-pressure"],
            Every().Select(c => c.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void What_was_compared_is_a_figure_with_a_unit()
    {
        SumCheck check = new SeatpostRoom { RailHeight = Of(300), OpenDepth = Of(200), LeastInsertion = Of(80) }.Check(Of(350));
        Assert.Equal(["insertion 50 mm", "least insertion 80 mm", "open depth 200 mm"], check.Figures.Select(f => f.ToString()));
        Assert.Equal(50, check.Figures[0].Length!.Value.Millimeters);
        SumCheck pressure = PressureLimits.Of(Pressure.FromBars(5), null, RimType.Hookless).Check(Pressure.FromBars(5.5));
        Assert.Equal(["pressure 5.5 bar", "tyre's limit 5 bar", "limit of hookless rims 5 bar"], pressure.Figures.Select(f => f.ToString()));
        Assert.Null(pressure.Figures[0].Length);
        Assert.Equal("unsafe: 6 bar is above 4.5 bar, the limit of the rim", PressureLimits.Of(Pressure.FromBars(5.5), Pressure.FromBars(4.5), RimType.Hookless).Check(Pressure.FromBars(6)).ToString().Replace("6.0", "6", StringComparison.Ordinal));
        Assert.StartsWith("needs a part: the steerer stands 41 mm above", SteererLength.OfMillimetres(125, 12, 14, 20, 40).Check(Mm(252)).ToString(), StringComparison.Ordinal);
    }

    /// <summary>No check at all is nothing judged, which counts as needs measuring.</summary>
    [Fact]
    public void The_worst_of_none_is_not_judged()
    {
        Assert.Equal(Verdict.NotJudged, SumCheck.WorstOf());
        Assert.Equal(Verdict.NeedsMeasuring, Verdicts.Worse(Verdict.Fits, SumCheck.WorstOf()));
        SumCheck fits = SteererLength.OfMillimetres(125, 12, 14, 20, 40).Check(Mm(208));
        Assert.Equal(Verdict.Fits, SumCheck.WorstOf(fits));
        Assert.Equal(Verdict.Unsafe, SumCheck.WorstOf(fits, RotorThickness.Check(MeasuredLength.OfMillimetres(1.4m, 0.01m), Of(1.5m)), fits));
    }
}
