using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;
using static Lugwork.JointInputs;

namespace Lugwork;

/// <summary>The whole bicycle on one page: a joint a row.</summary>
public static class JointTable
{
    /// <summary>Every joint, in the order of a build sheet.</summary>
    public static ImmutableArray<Joint> All { get; } =
    [
        new("front-wheel-in-fork", "Front wheel in fork", HubRelations.InFrame, FrontEnd, Hub(Slot.FrontWheel), Ends(Slot.FrontWheel)) { Sources = [Sources.AxleGuide, Sources.HubStandards], Caution = Cautions.Axle },
        new("rear-wheel-in-frame", "Rear wheel in frame", HubRelations.InFrame, RearEnd, Hub(Slot.RearWheel), Ends(Slot.RearWheel), Material) { Sources = [Sources.AxleGuide, Sources.HubStandards], Caution = Cautions.Axle },
        new("front-tyre-bead-on-rim", "Front tyre on rim, bead seat", TyreOnRim.Bead, Seat(Slot.FrontWheel), SeatOf(Slot.FrontTyre)) { Sources = [Sources.Iso5775Article] },
        new("rear-tyre-bead-on-rim", "Rear tyre on rim, bead seat", TyreOnRim.Bead, Seat(Slot.RearWheel), SeatOf(Slot.RearTyre)) { Sources = [Sources.Iso5775Article] },
        new("front-tyre-width-on-rim", "Front tyre on rim, width", TyreOnRim.Width, Type(Slot.FrontWheel), Inner(Slot.FrontWheel), WidthOf(Slot.FrontTyre), Bead(Slot.FrontTyre)) { Sources = [Sources.WidthRanges2022, Sources.WidthMatrix2006] },
        new("rear-tyre-width-on-rim", "Rear tyre on rim, width", TyreOnRim.Width, Type(Slot.RearWheel), Inner(Slot.RearWheel), WidthOf(Slot.RearTyre), Bead(Slot.RearTyre)) { Sources = [Sources.WidthRanges2022, Sources.WidthMatrix2006] },
        new("cassette-on-freehub-body", "Cassette on freehub body", CassetteOnBody.Table, Body, Pattern) { Sources = [Sources.FreehubTypes] },
        new("front-rotor-on-hub", "Front rotor on hub", BrakeRelations.Fixing, Fixing(Slot.FrontWheel), RotorsFixing(Slot.FrontRotor)) { Sources = [Sources.SixBoltAndSplined] },
        new("rear-rotor-on-hub", "Rear rotor on hub", BrakeRelations.Fixing, Fixing(Slot.RearWheel), RotorsFixing(Slot.RearRotor)) { Sources = [Sources.SixBoltAndSplined] },
        new("front-rotor-within-limit", "Front rotor within the fork's limit", BrakeRelations.Limit, Across(Slot.FrontRotor), LargestFront) { Sources = [Sources.CommonPractice], Caution = Cautions.Rotor },
        new("rear-rotor-within-limit", "Rear rotor within the frame's limit", BrakeRelations.Limit, Across(Slot.RearRotor), LargestRear) { Sources = [Sources.CommonPractice], Caution = Cautions.Rotor },
        new("front-caliper-on-mount", "Front caliper and rotor on mount", BrakeRelations.OnMount, FrontMount, FrontMounting, Size(Slot.FrontRotor)) { Sources = [Sources.MountAnswer, Sources.AdapterGuide], Caution = Cautions.BrakeWork },
        new("rear-caliper-on-mount", "Rear caliper and rotor on mount", BrakeRelations.OnMount, RearMount, RearMounting, Size(Slot.RearRotor)) { Sources = [Sources.MountAnswer, Sources.AdapterGuide], Caution = Cautions.BrakeWork },
        new("seatpost-in-seat-tube", "Seatpost in seat tube", SeatpostRelations.InBore, Bore, Post) { Sources = [Sources.PostSizes] },
        new("seatpost-room-in-seat-tube", "Room for the seatpost", SeatpostRelations.Room, Mark, Least, Most) { Sources = [Sources.FrameManual, Sources.SeatRegulation], Caution = Cautions.Insertion },
        new("seatpost-insertion", "Seatpost insertion", SeatpostRelations.Depth, Depth, Mark, Least, Most, TwoDiameters) { Sources = [Sources.FrameManual, Sources.SeatRegulation], Caution = Cautions.Insertion },
        new("front-axle-in-fork", "Front thru-axle in fork, thread", AxleRelations.Thread, FrontThread, AxleOf(Slot.FrontAxle)) { Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker], Caution = Cautions.AxleThread },
        new("rear-axle-in-frame", "Rear thru-axle in frame, thread", AxleRelations.Thread, RearThread, AxleOf(Slot.RearAxle)) { Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker], Caution = Cautions.AxleThread },
        new("front-axle-diameter", "Front thru-axle in fork, diameter", AxleRelations.Diameter, FrontEnd, AxleOf(Slot.FrontAxle)) { Sources = [Sources.ThruAxleHelp], Caution = Cautions.AxleThread },
        new("rear-axle-diameter", "Rear thru-axle in frame, diameter", AxleRelations.Diameter, RearEnd, AxleOf(Slot.RearAxle)) { Sources = [Sources.ThruAxleHelp], Caution = Cautions.AxleThread },
        new("front-tyre-in-fork", "Front tyre in fork", TyreRoom.InFrame, WidthOf(Slot.FrontTyre), LargestWidth(Slot.Fork), SeatOf(Slot.FrontTyre), LargestSeat(Slot.Fork)) { Sources = [Sources.WheelsManual], Caution = Cautions.TyreRoom },
        new("rear-tyre-in-frame", "Rear tyre in frame", TyreRoom.InFrame, WidthOf(Slot.RearTyre), LargestWidth(Slot.Frame), SeatOf(Slot.RearTyre), LargestSeat(Slot.Frame)) { Sources = [Sources.WheelsManual], Caution = Cautions.TyreRoom },
        new("front-tyre-on-its-rim-in-fork", "Front tyre on its rim in fork", TyreRoom.Grown, WidthOf(Slot.FrontTyre), Inner(Slot.FrontWheel), LargestWidth(Slot.Fork), SeatOf(Slot.FrontTyre), LargestSeat(Slot.Fork)) { Sources = [Sources.WidthTolerance], Caution = Cautions.TyreRoom },
        new("rear-tyre-on-its-rim-in-frame", "Rear tyre on its rim in frame", TyreRoom.Grown, WidthOf(Slot.RearTyre), Inner(Slot.RearWheel), LargestWidth(Slot.Frame), SeatOf(Slot.RearTyre), LargestSeat(Slot.Frame)) { Sources = [Sources.WidthTolerance], Caution = Cautions.TyreRoom },
        new("steerer-through-head-tube", "Steerer through head tube", HeadTubeRelations.SteererThrough, UpperEnd, Steerer) { Sources = [Sources.HeadsetChart], Caution = Cautions.SteeringCare },
        new("fork-in-head-tube", "Fork in head tube", HeadTubeRelations.ForkIn, LowerEnd, CrownSeatOfFork) { Sources = [Sources.HeadsetChart, Sources.HeadTubeComment], Caution = Cautions.SteeringCare },
        new("headset-upper-in-head-tube", "Headset in head tube, upper", HeadTubeRelations.InTube, UpperEnd, UpperCup) { Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart], Caution = Cautions.SteeringCare },
        new("headset-lower-in-head-tube", "Headset in head tube, lower", HeadTubeRelations.InTube, LowerEnd, LowerCup) { Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart], Caution = Cautions.SteeringCare },
        new("headset-on-steerer", "Headset on steerer", SteererRelations.OnSteerer, MadeForSteerer, Steerer) { Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart], Caution = Cautions.SteeringCare },
        new("headset-kind", "Headset and steerer, threaded or threadless", SteererRelations.OfKind, ForkKind, HeadsetKind) { Sources = [Sources.HeadsetArticle], Caution = Cautions.SteeringCare },
        new("headset-on-crown", "Headset on crown", SteererRelations.OnCrown, Race, CrownSeatOfFork) { Sources = [Sources.HeadsetChart, Sources.HeadsetCodeNote], Caution = Cautions.SteeringCare },
        new("stem-on-steerer", "Stem on steerer", StemRelations.OnSteerer, Steerer, ForkKind, StemFixing) { Sources = [Sources.StemSizes, Sources.HeadsetArticle], Caution = Cautions.SteeringCare },
        new("bar-in-stem", "Handlebar in stem", BarRelations.InStem, StemBar, Bar) { Sources = [Sources.BarAndStemTable], Caution = Cautions.BarClampCare },
        new("seat-clamp-on-seat-tube", "Seat clamp on seat tube", SeatRelations.Collar, TubeOutside, Collar) { Sources = [Sources.ClampShop] },
        new("saddle-on-seatpost", "Saddle on seatpost", SeatRelations.Rails, PostHead, SaddleRail) { Sources = [Sources.CommonPractice] },
        new("bottom-bracket-in-shell", "Bottom bracket in shell, thread or bore", BottomBracketRelations.InShell, ShellFamilyOfFrame, BracketFamily) { Sources = [Sources.BracketGuide], Caution = Cautions.ShellThreads },
        new("bottom-bracket-width", "Bottom bracket in shell, width", BottomBracketRelations.Width, ShellWidthOfFrame, Narrowest, Widest) { Sources = [Sources.BracketGuide], Caution = Cautions.ShellThreads },
        new("spindle-in-bottom-bracket", "Spindle in bottom bracket", BottomBracketRelations.SpindleIn, BracketTakes, CrankSeat) { Sources = [Sources.SpindleOptions] },
        new("crank-across-shell", "Crank across shell", BottomBracketRelations.Across, ShellOfFrame, CrankSpindle) { Sources = [Sources.BracketGuide] },
        new("pedals-in-cranks", "Pedals in cranks", BottomBracketRelations.PairOfPedals, CrankPedals, PedalsThread, SidesOfPedals) { Sources = [Sources.PedalAttachment], Caution = Cautions.PedalThreads },
        new("derailleur-on-hanger", "Rear derailleur on hanger", HangerRelations.OnHanger, HangerOfFrame, Mount) { Sources = [Sources.UniversalHangerNews, Sources.UniversalHangerMaker] },
        new("chain-on-cassette", "Chain on cassette", ChainRelations.OnSprockets, SprocketsOfCassette, ChainFor) { Sources = [Sources.ChainWidths] },
        new("chain-on-rings", "Chain on rings", ChainRelations.OnRings, Rings, ChainFor) { Sources = [Sources.ChainWidths] },
        new("chain-through-derailleur", "Chain through derailleur", ChainRelations.ThroughDerailleur, ChainOfDerailleur, ChainFor) { Sources = [Sources.ChainSizes] },
        new("belt-through-rear-triangle", "Belt through the rear triangle", BeltRelations.ThroughRearTriangle, Triangle, ChainFor) { Sources = [Sources.BeltConversion, Sources.SplitFrames] },
        new("freewheel-on-hub-thread", "Screwed freewheel or sprocket on the hub's thread", ThreadOnHub.OnHub, Body, Pattern, HubThread, SprocketThread) { Sources = [Sources.Freewheels], Caution = Cautions.FreewheelThread },
        new("ring-on-spider", "Chainring on spider", RingRelations.OnSpider, SpiderCircle, RingTeeth, RingCircle) { Sources = [Sources.BoltCircles] },
        new("direct-mount-ring-on-arm", "Direct-mount chainring on crank arm", RingRelations.OnArm, ArmMount, RingMount) { Sources = [Sources.RingDecoder] },
        new("ring-against-chainstay", "Crank's largest ring beside the chainstay", RingRelations.BesideChainstay, LargestRing, RingLimit) { Sources = [Sources.CommonPractice], Caution = Cautions.RingRoom },
        new("chainring-against-chainstay", "Chainring beside the chainstay", RingRelations.BesideChainstay, RingTeeth, RingLimit) { Sources = [Sources.CommonPractice], Caution = Cautions.RingRoom },
        new("front-derailleur-on-frame", "Front derailleur on frame", FrontDerailleurRelations.OnFrame, FrontMountOfFrame, FrontMountOfDerailleur) { Sources = [Sources.FrontDerailleurs, Sources.FrontMountSpacing] },
        new("front-derailleur-with-crank", "Front derailleur over the rings", FrontDerailleurRelations.WithCrank, Rings, CageSpeeds, CrankChainline, CageChainline) { Sources = [Sources.CrankTable], Caution = Cautions.ShiftSetUp },
        new("shifter-with-derailleur", "Shifter with rear derailleur", ShiftRelations.WithDerailleur, SignalOfShifter(Slot.Shifter), SignalOfDerailleur, PullOfShifter, RatioOfDerailleur, WordOfPair) { Sources = [Sources.GearEquation], Caution = Cautions.ShiftSetUp },
        new("shifter-with-cassette", "Shifter with sprockets", ShiftRelations.WithSprockets, SpacingOfCassette, SpacingOfShifter, WordOfSprockets) { Sources = [Sources.SprocketSpacing], Caution = Cautions.ShiftSetUp },
        new("front-shifter-with-front-derailleur", "Front shifter with front derailleur", ShiftRelations.WithFrontDerailleur, SignalOfShifter(Slot.FrontShifter), SignalOfFront, WordOfFront) { Sources = [Sources.FrontDerailleurTypes], Caution = Cautions.ShiftSetUp },
        new("guide-on-bottom-bracket", "Chain guide under the drive-side cup", GuideRelations.UnderCup, GuideMount, DriveSpacer) { Sources = [Sources.GuideOnBracket], Caution = Cautions.GuidePlate },
        new("guide-on-tabs", "Chain guide on the frame", GuideRelations.OnFrame, GuideMount, GuideTabs, FrontMountOfFrame) { Sources = [Sources.GuideTabs] },
        new("fork-length-within-limit", "Fork within the frame's length and travel", ForkRelations.WithinFramesLimit, AxleToCrown, LongestFork, ForkTravel, MostForkTravel) { Sources = [Sources.ForkTravel], Caution = Cautions.ForkClassCare },
        new("fork-crowns-on-frame", "Fork's crowns on frame", ForkRelations.CrownOnFrame, CrownsAllowed, CrownsOfFork) { Sources = [Sources.CommonPractice], Caution = Cautions.ForkClassCare },
        new("shock-in-frame", "Rear shock in frame", ShockRelations.InFrame, ShockOfFrame, SizeOfShock) { Sources = [Sources.ShockMeasuring], Caution = Cautions.ShockSizeCare },
        new("shock-hardware-in-frame", "Lower shock hardware in frame", ShockRelations.Hardware, LowerOfFrame, LowerOfShock) { Sources = [Sources.ShockMeasuring], Caution = Cautions.ShockSizeCare },
        new("upper-shock-hardware-in-frame", "Upper shock hardware in frame", ShockRelations.UpperHardware, UpperOfFrame, UpperOfShock) { Sources = [Sources.ShockMeasuring], Caution = Cautions.ShockSizeCare },
        new("shock-bush-in-eyelet", "Bush in the shock's eyelet", ShockRelations.Bush, Eyelet, Bush) { Sources = [Sources.EyeletBushings], Caution = Cautions.ShockSizeCare },
    ];
}
