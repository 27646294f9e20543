using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;
using static Lugwork.JointInputs;

namespace Lugwork;

/// <summary>
/// The checks over several parts, a row each, in the same words as the joints: they are judged, told, measured, put on the needs sheet and refused in the same way.
/// A check stands on figures that few sheets print, so it is judged where one of them is stated.
/// </summary>
internal static class SystemChecks
{
    public static ImmutableArray<Joint> All { get; } =
    [
        new("derailleur-capacity", "Capacity of the rear derailleur", () => DriveSums.Capacity, CapacityOfDerailleur, LargeRing, LargestOfCassette, SmallestOfCassette, SmallRing) { Sources = [Sources.DerailleurCapacity, Sources.TotalCapacity], Caution = Cautions.ChainTooShort, Seen = [0, 2, 3] },
        new("derailleur-capacity-with-ring", "Capacity of the rear derailleur with the ring on a bare crank", () => DriveSums.CapacityWithRing, CapacityOfDerailleur, RingOfBareCrank, LargestOfCassette, SmallestOfCassette, SmallRingOfBareCrank) { Sources = [Sources.DerailleurCapacity, Sources.TotalCapacity], Caution = Cautions.ChainTooShort, Seen = [0, 2, 3], OnlyWith = [4], MostHaveNone = true, GivesWay = [(Slot.FrontDerailleur, IsFrontDerailleur)] },
        new("largest-sprocket-of-derailleur", "Largest sprocket under the rear derailleur", () => DriveSums.LargestSprocket, LargestForDerailleur, LargestOfCassette) { Sources = [Sources.DerailleurCapacity], Caution = Cautions.ChainTooShort, Seen = [0, 1] },
        new("smallest-sprocket-of-derailleur", "Smallest sprocket under the rear derailleur", () => DriveSums.SmallestSprocket, SmallestForDerailleur, SmallestOfCassette) { Sources = [Sources.DerailleurCapacity], Seen = [0] },
        new("front-difference", "Chainring difference under the front derailleur", () => DriveSums.FrontDifference, FrontDifference, BareCrank, SmallRing) { Sources = [Sources.DerailleurCapacity], Seen = [0, 1] },
        new("chain-reaches", "Chain length, largest ring and largest sprocket", () => DriveSums.ChainReaches, ChainPitches, Chainstay, LargeRing, LargestOfCassette, ChainAllowance) { Sources = [Sources.ChainSizing], Caution = Cautions.ChainTooShort, Seen = [0] },
        new("chain-reaches-with-ring", "Chain length, ring on a bare crank and largest sprocket", () => DriveSums.ChainReachesWithRing, ChainPitches, Chainstay, RingOfBareCrank, LargestOfCassette, ChainAllowance, BareCrank) { Sources = [Sources.ChainSizing], Caution = Cautions.ChainTooShort, Seen = [0], OnlyWith = [5], MostHaveNone = true },
        new("chain-taken-up", "Chain slack, smallest ring and smallest sprocket", () => DriveSums.ChainTaken, ChainPitches, Chainstay, SmallestOfCassette, LargeRing, SmallRing, CapacityOfDerailleur, ChainAllowance) { Sources = [Sources.DerailleurCapacity, Sources.Derived], Caution = Cautions.ChainTooShort, Seen = [0] },
        new("chain-taken-up-with-ring", "Chain slack, ring on a bare crank and smallest sprocket", () => DriveSums.ChainTakenWithRing, ChainPitches, Chainstay, SmallestOfCassette, RingOfBareCrank, SmallRingOfBareCrank, CapacityOfDerailleur, ChainAllowance) { Sources = [Sources.DerailleurCapacity, Sources.Derived], Caution = Cautions.ChainTooShort, Seen = [0], OnlyWith = [4], MostHaveNone = true, GivesWay = [(Slot.FrontDerailleur, IsFrontDerailleur)] },
        new("chainline", "Chainline of crank and sprockets", () => ChainlineChecks.Rings, CrankChainline, Hub(Slot.RearWheel), SpacingOfCassette, RingLineAsBuilt, CassetteLine) { Sources = [Sources.ChainlineTable, Sources.FatHubSpacing], Caution = Cautions.ShiftSetUp, Seen = [0] },
        new("chainline-of-hangerless", "Chainline of the crank and a hangerless derailleur", () => ChainlineChecks.OfDerailleur, CrankChainline, Mount) { Sources = [Sources.Chainline55], Caution = Cautions.ShiftSetUp, Seen = [0] },
        new("bottom-bracket-spacers", "Spacers under the bottom-bracket cups", () => SpacersOnShell.UnderCups, ShellOfFrame, CrankSpindle, DriveSpacer) { Sources = [Sources.SpacerChart24], Seen = [2], GivesWay = [(Slot.ChainGuide, HasGuidePlate), (Slot.FrontDerailleur, HasDerailleurPlate)] },
        new("bottom-bracket-spacers-with-guide", "Spacers and plate of the guide under the drive-side cup", () => SpacersOnShell.WithPlate(ChainGuideMount.Bracket.FitCode), ShellOfFrame, CrankSpindle, DriveSpacer, GuidePlate) { Sources = [Sources.GuideOnBracket], Caution = Cautions.GuidePlate, Seen = [3], MostHaveNone = true },
        new("bottom-bracket-spacers-with-front-derailleur", "Spacers and plate of the front derailleur under the drive-side cup", () => SpacersOnShell.WithPlate(FrontDerailleurMount.EType.FitCode), ShellOfFrame, CrankSpindle, DriveSpacer, DerailleurPlate) { Sources = [Sources.FrontMountSpacing, Sources.CupSpacers], Caution = Cautions.GuidePlate, Seen = [3], MostHaveNone = true },
        new("steerer-reaches-stem", "Steerer length in the stem", () => SteererSums.Reaches, LengthOfSteerer, HeadTubeLength, StemHeight, LowerStack, UpperStack, SpacersBelow, CrownsOfSum) { Sources = [Sources.SteererRequirement], Caution = Cautions.SteeringCare, Seen = [0] },
        new("gap-under-cap", "Gap between steerer and cap", () => SteererSums.UnderCap, LengthOfSteerer, HeadTubeLength, StemHeight, LowerStack, UpperStack, SpacersBelow, SpacersAbove, CrownsOfSum) { Sources = [Sources.SteererRequirement, Sources.SteererGap], Caution = Cautions.SteeringCare, Seen = [0] },
        new("spacers-on-carbon-steerer", "Spacers below the stem", () => CarbonSpacers.Below, SteererMaterialOfFork, Steerer, SpacersBelow, MostSpacers) { Sources = [Sources.SpacerColumn], Caution = Cautions.CarbonSpacers, Seen = [2] },
        new("saddle-height-least-insertion", "Minimum insertion at the saddle height", () => SaddleSums.Least, HeightOfSaddle, PostLength, SeatTubeLength, SaddleDepth, Mark, Least, TwoDiameters) { Sources = [Sources.SeatRegulation, Sources.FrameManual], Caution = Cautions.Insertion, Seen = [0] },
        new("saddle-height-open-depth", "Room below the post at the saddle height", () => SaddleSums.Most, HeightOfSaddle, PostLength, SeatTubeLength, SaddleDepth, Most) { Sources = [Sources.FrameManual], Caution = Cautions.Insertion, Seen = [0] },
        new("insertion-at-saddle-height", "Insertion as measured and by the saddle height", () => SaddleSums.Read, MeasuredDepth, HeightOfSaddle, PostLength, SeatTubeLength, SaddleDepth) { Sources = [Sources.CommonPractice, Sources.Derived], Caution = Cautions.Insertion, Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("dropper-at-saddle-height", "Dropper at the saddle height", () => SaddleSums.Dropper, HeightOfSaddle, TravelOfDropper, SeatTubeLength, SaddleDepth, DropperStack) { Sources = [Sources.DropperTips], Caution = Cautions.Insertion, Seen = [0, 1] },
        new("standover", "Standover", () => ClearanceSums.Standover, Inseam, JointInputs.Standover) { Sources = [Sources.CommonPractice], Seen = [0], GivesWay = [(Slot.Fork, IsFork)] },
        new("standover-with-fork", "Standover with this fork", () => ClearanceSums.StandoverWithFork, Inseam, JointInputs.Standover, LengthOfFork, ForkOfStandover) { Sources = [Sources.CommonPractice, Sources.Derived], Seen = [0] },
        new("toe-clearance", "Toe overlap", () => ClearanceSums.Toes, FrontCentre, LengthOfCrank, OutsideOf(Slot.FrontTyre), RoomForToes, LengthOfFork, IfKnown(ForkOfDesign), IfKnown(HeadAngle)) { Sources = [Sources.ClearanceRegulation, Sources.ToeClearanceTest], Seen = [0, 1, 3] },
        new("pedal-ground-clearance", "Pedal ground clearance", () => ClearanceSums.Pedals, LengthOfCrank, Drop, OutsideOf(Slot.RearTyre), PedalHeight, AcrossCranks, PedalReach, PedalAboveGround) { Sources = [Sources.ClearanceRegulation], Seen = [1, 3, 4, 5, 6] },
        new("bottom-bracket-with-fork-and-wheels", "Bottom bracket with this fork and these wheels", () => SunkenBracket.Sinks, OutsideOf(Slot.FrontTyre), OutsideOf(Slot.RearTyre), LengthOfFork, IfKnown(ForkOfDesign), IfKnown(Wheelbase), IfKnown(Chainstay), Drop, PedalAboveGround) { Sources = [Sources.ClearanceRegulation, Sources.Derived], Caution = Cautions.GeometryCare, Seen = [6], MostHaveNone = true },
        new("wheels-of-one-size", "Front and rear wheel, size", WheelPair.OnFrame, Seat(Slot.FrontWheel), Seat(Slot.RearWheel), DesignedFront, DesignedRear) { Sources = [Sources.CommonPractice], Caution = Cautions.TyreRoom },
        new("rotors-front-and-rear", "Front and rear rotor, size", () => AdapterRelations.Pair, Across(Slot.FrontRotor), Across(Slot.RearRotor)) { Sources = [Sources.CommonPractice], Caution = Cautions.Rotor, Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("front-adapter-with-rotor", "Front adapter, mount and rotor", () => AdapterRelations.Meeting, FrontMount, Size(Slot.FrontRotor), AdapterOf(Slot.FrontCaliper)) { Sources = [Sources.AdapterGuide, Sources.MountAnswer], Caution = Cautions.BrakeWork, Seen = [2] },
        new("rear-adapter-with-rotor", "Rear adapter, mount and rotor", () => AdapterRelations.Meeting, RearMount, Size(Slot.RearRotor), AdapterOf(Slot.RearCaliper)) { Sources = [Sources.AdapterGuide, Sources.MountAnswer], Caution = Cautions.BrakeWork, Seen = [2] },
        new("fork-not-too-short", "Fork not shorter than the frame allows", () => ForkRelations.NotTooShort, AxleToCrown, ShortestFork) { Sources = [Sources.ForkTravel], Caution = Cautions.ForkClassCare, Seen = [1] },
        new("head-angle-not-too-slack", "Head angle with the fork, slackest", () => HeadAngleRelations.NotTooSlack, AxleToCrown, SlackestHeadAngle, ForkOfDesign, HeadAngle, Wheelbase) { Sources = [Sources.ForkTravel, Sources.Derived], Caution = Cautions.GeometryCare, Seen = [1], MostHaveNone = true, GivesWay = [(Slot.Headset, HasTallLowerHalf)] },
        new("head-angle-with-headset", "Head angle with the fork and a tall lower half of the headset, slackest", () => HeadAngleRelations.WithHeadset, AxleToCrown, SlackestHeadAngle, ForkOfDesign, HeadAngle, Wheelbase, TallLowerStack) { Sources = [Sources.ForkTravel, Sources.Derived], Caution = Cautions.GeometryCare, Seen = [1, 5], NeedsAllSeen = true, MostHaveNone = true },
        new("head-angle-not-too-steep", "Head angle with the fork, steepest", () => HeadAngleRelations.NotTooSteep, AxleToCrown, SteepestHeadAngle, ForkOfDesign, HeadAngle, Wheelbase) { Sources = [Sources.ForkTravel, Sources.Derived], Caution = Cautions.GeometryCare, Seen = [1], MostHaveNone = true },
    ];
}
