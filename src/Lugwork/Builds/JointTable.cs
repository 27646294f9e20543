using System.Collections.Immutable;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
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
        new("front-lever-fluid-with-caliper", "Front lever and caliper, fluid", BrakeActionRelations.FluidOrCable, FluidOfLever(Slot.FrontLever), FluidOfCaliper(Slot.FrontBrake)) { Sources = [Sources.FluidGuide], Caution = Cautions.BrakeWork },
        new("front-lever-with-disc-brake", "Front lever and disc brake, cable", BrakeActionRelations.LeverOrFluid, PullOf(Slot.FrontLever), TypeOfCaliper(Slot.FrontBrake)) { Sources = [Sources.LeverPull, Sources.BrakesBlog], Caution = Cautions.BrakeWork },
        new("front-lever-with-rim-brake", "Front lever and rim brake, cable", BrakeActionRelations.LeverOrFluid, PullOf(Slot.FrontLever), TypeOf(Slot.FrontRimBrake)) { Sources = [Sources.LeverPull, Sources.BrakesBlog], Caution = Cautions.BrakeWork },
        new("front-rotor-thickness-in-caliper", "Front rotor in caliper, thickness", DiscRelations.Thickness, ThicknessOf(Slot.FrontRotor), Thickest(Slot.FrontBrake), Thinnest(Slot.FrontBrake)) { Sources = [Sources.RotorFaq], Caution = Cautions.BrakeWork },
        new("front-lockring-on-hub-axle", "Front lockring over the axle", DiscRelations.LockringOnAxle, AxleThrough(Slot.FrontWheel), Fixing(Slot.FrontWheel), RingOf(Slot.FrontRotor)) { Sources = [Sources.LockringExchange], Caution = Cautions.BrakeWork },
        new("front-carrier-with-lockring", "Front carrier under the lockring", DiscRelations.CarrierUnderRing, Fixing(Slot.FrontWheel), RotorsFixing(Slot.FrontRotor), CarrierOf(Slot.FrontRotor), RingOf(Slot.FrontRotor)) { Sources = [Sources.SplinedRotorNotes], Caution = Cautions.BrakeWork },
        new("disc-on-open-ends", "Disc brake on open fork ends", EndRelations.DiscOnOpenEnds, FrontEnd, FrontMounting, Lips) { Sources = [Sources.OpenEndsGlossary], Caution = Cautions.DiscOnOpenEnds },
        new("front-brake-on-bosses", "Front rim brake on bosses", RimBrakeRelations.OnBossesOfFrame, Bosses(Slot.Fork), TypeOf(Slot.FrontRimBrake)) { Sources = [Sources.BrazedOnBrakes, Sources.BrakesBlog], Caution = Cautions.BrakeWork },
        new("front-bosses-with-rim", "Front bosses and rim", RimBrakeRelations.BossesWithRim, Bosses(Slot.Fork), Seat(Slot.FrontWheel), PlaceOf(Slot.FrontRimBrake)) { Sources = [Sources.BrazeOnDistances], Caution = Cautions.BrakeWork },
        new("front-brake-arms-on-boss-spacing", "Front brake arms on the spacing of the bosses", RimBrakeRelations.ArmsOnSpacing, BossSpacing(Slot.Fork), PlaceOf(Slot.FrontRimBrake)) { Sources = [Sources.BrazeOnDistances, Sources.CantileverSpacing], Caution = Cautions.BrakeWork },
        new("front-caliper-bolt-in-hole", "Front rim brake, bolt in hole", RimBrakeRelations.BoltInHole, Hole(Slot.Fork), BoltOf(Slot.FrontRimBrake)) { Sources = [Sources.ReachShop], Caution = Cautions.BrakeHole },
        new("front-rim-caliper-reach", "Front rim brake, reach", RimBrakeRelations.Reach, BoltToRim(Slot.Fork), ReachOf(Slot.FrontRimBrake), BoltToRimOf(Slot.Fork), Seat(Slot.FrontWheel)) { Sources = [Sources.ReachPitfalls, Sources.ReachMeasuring], Caution = Cautions.BrakeWork },
        new("front-pads-on-rim", "Front rim brake, pads on rim", RimBrakeRelations.PadsOnRim, TrackOf(Slot.FrontWheel), PadsOf(Slot.FrontRimBrake)) { Sources = [Sources.CarbonRimPads], Caution = Cautions.RimPads },
        new("rear-lever-fluid-with-caliper", "Rear lever and caliper, fluid", BrakeActionRelations.FluidOrCable, FluidOfLever(Slot.RearLever), FluidOfCaliper(Slot.RearBrake)) { Sources = [Sources.FluidGuide], Caution = Cautions.BrakeWork },
        new("rear-lever-with-disc-brake", "Rear lever and disc brake, cable", BrakeActionRelations.LeverOrFluid, PullOf(Slot.RearLever), TypeOfCaliper(Slot.RearBrake)) { Sources = [Sources.LeverPull, Sources.BrakesBlog], Caution = Cautions.BrakeWork },
        new("rear-lever-with-rim-brake", "Rear lever and rim brake, cable", BrakeActionRelations.LeverOrFluid, PullOf(Slot.RearLever), TypeOf(Slot.RearRimBrake)) { Sources = [Sources.LeverPull, Sources.BrakesBlog], Caution = Cautions.BrakeWork },
        new("rear-rotor-thickness-in-caliper", "Rear rotor in caliper, thickness", DiscRelations.Thickness, ThicknessOf(Slot.RearRotor), Thickest(Slot.RearBrake), Thinnest(Slot.RearBrake)) { Sources = [Sources.RotorFaq], Caution = Cautions.BrakeWork },
        new("rear-lockring-on-hub-axle", "Rear lockring over the axle", DiscRelations.LockringOnAxle, AxleThrough(Slot.RearWheel), Fixing(Slot.RearWheel), RingOf(Slot.RearRotor)) { Sources = [Sources.LockringExchange], Caution = Cautions.BrakeWork },
        new("rear-carrier-with-lockring", "Rear carrier under the lockring", DiscRelations.CarrierUnderRing, Fixing(Slot.RearWheel), RotorsFixing(Slot.RearRotor), CarrierOf(Slot.RearRotor), RingOf(Slot.RearRotor)) { Sources = [Sources.SplinedRotorNotes], Caution = Cautions.BrakeWork },
        new("flat-mount-bolt-in-stay", "Flat-mount bolt in stay", DiscRelations.BoltInStay, RearMount, RearMounting, RearStay, StayBolt(Slot.RearBrake)) { Sources = [Sources.FlatMountBolts, Sources.FlatMountThinStay], Caution = Cautions.FlatMountBolts },
        new("rear-brake-on-bosses", "Rear rim brake on bosses", RimBrakeRelations.OnBossesOfFrame, Bosses(Slot.Frame), TypeOf(Slot.RearRimBrake)) { Sources = [Sources.BrazedOnBrakes, Sources.BrakesBlog], Caution = Cautions.BrakeWork },
        new("rear-bosses-with-rim", "Rear bosses and rim", RimBrakeRelations.BossesWithRim, Bosses(Slot.Frame), Seat(Slot.RearWheel), PlaceOf(Slot.RearRimBrake)) { Sources = [Sources.BrazeOnDistances], Caution = Cautions.BrakeWork },
        new("rear-brake-arms-on-boss-spacing", "Rear brake arms on the spacing of the bosses", RimBrakeRelations.ArmsOnSpacing, BossSpacing(Slot.Frame), PlaceOf(Slot.RearRimBrake)) { Sources = [Sources.BrazeOnDistances, Sources.CantileverSpacing], Caution = Cautions.BrakeWork },
        new("rear-caliper-bolt-in-hole", "Rear rim brake, bolt in hole", RimBrakeRelations.BoltInHole, Hole(Slot.Frame), BoltOf(Slot.RearRimBrake)) { Sources = [Sources.ReachShop], Caution = Cautions.BrakeHole },
        new("rear-rim-caliper-reach", "Rear rim brake, reach", RimBrakeRelations.Reach, BoltToRim(Slot.Frame), ReachOf(Slot.RearRimBrake), BoltToRimOf(Slot.Frame), Seat(Slot.RearWheel)) { Sources = [Sources.ReachPitfalls, Sources.ReachMeasuring], Caution = Cautions.BrakeWork },
        new("rear-pads-on-rim", "Rear rim brake, pads on rim", RimBrakeRelations.PadsOnRim, TrackOf(Slot.RearWheel), PadsOf(Slot.RearRimBrake)) { Sources = [Sources.CarbonRimPads], Caution = Cautions.RimPads },
        new("seatpost-in-seat-tube", "Seatpost in seat tube", SeatpostRelations.InBore, Bore, Post) { Sources = [Sources.PostSizes] },
        new("seatpost-room-in-seat-tube", "Room for the seatpost", SeatpostRelations.Room, Mark, Least, Most) { Sources = [Sources.FrameManual, Sources.SeatRegulation], Caution = Cautions.Insertion },
        new("seatpost-insertion", "Seatpost insertion", SeatpostRelations.Depth, Depth, Mark, Least, Most, TwoDiameters) { Sources = [Sources.FrameManual, Sources.SeatRegulation], Caution = Cautions.Insertion },
        new("front-axle-in-fork", "Front thru-axle in fork, thread", AxleRelations.Thread, FrontThread, AxleOf(Slot.FrontAxle)) { Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker], Caution = Cautions.AxleThread },
        new("rear-axle-in-frame", "Rear thru-axle in frame, thread", AxleRelations.Thread, RearThread, AxleOf(Slot.RearAxle)) { Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker], Caution = Cautions.AxleThread },
        new("front-axle-diameter", "Front thru-axle in fork, diameter", AxleRelations.Diameter, FrontEnd, AxleOf(Slot.FrontAxle)) { Sources = [Sources.ThruAxleHelp], Caution = Cautions.AxleThread },
        new("rear-axle-diameter", "Rear thru-axle in frame, diameter", AxleRelations.Diameter, RearEnd, AxleOf(Slot.RearAxle)) { Sources = [Sources.ThruAxleHelp], Caution = Cautions.AxleThread },
        new("front-thru-axle-length", "Front thru-axle in fork, length", EndRelations.Length, AxleLengthAsked(Slot.Fork), LengthOfAxle(Slot.FrontAxle), OldOf(Slot.Fork)) { Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker], Caution = Cautions.AxleThread },
        new("front-axle-nut-on-hub-axle", "Front nuts on the hub axle", EndRelations.Nuts, AxleThreadOf(Slot.FrontWheel), NutThread(Slot.FrontNuts)) { Sources = [Sources.AxleNut], Caution = Cautions.Axle },
        new("rear-thru-axle-length", "Rear thru-axle in frame, length", EndRelations.Length, AxleLengthAsked(Slot.Frame), LengthOfAxle(Slot.RearAxle), OldOf(Slot.Frame)) { Sources = [Sources.ThruAxleHelp, Sources.ThruAxleMaker], Caution = Cautions.AxleThread },
        new("rear-axle-nut-on-hub-axle", "Rear nuts on the hub axle", EndRelations.Nuts, AxleThreadOf(Slot.RearWheel), NutThread(Slot.RearNuts)) { Sources = [Sources.AxleNut], Caution = Cautions.Axle },
        new("hub-gear-in-dropout", "Hub gear in drop-outs", EndRelations.GearHubInDropout, GearsInside, RearSlotOf, WashersOf) { Sources = [Sources.NonTurnWashers], Caution = Cautions.HubGearAxle },
        new("front-tyre-in-fork", "Front tyre in fork", TyreRoom.InFork, WidthOf(Slot.FrontTyre), LargestWidth(Slot.Fork), SeatOf(Slot.FrontTyre), LargestSeat(Slot.Fork)) { Sources = [Sources.WheelsManual], Caution = Cautions.TyreRoom },
        new("rear-tyre-in-frame", "Rear tyre in frame", TyreRoom.InFrame, WidthOf(Slot.RearTyre), LargestWidth(Slot.Frame), SeatOf(Slot.RearTyre), LargestSeat(Slot.Frame)) { Sources = [Sources.WheelsManual], Caution = Cautions.TyreRoom },
        new("front-tyre-on-its-rim-in-fork", "Front tyre on its rim in fork", TyreRoom.GrownInFork, WidthOf(Slot.FrontTyre), Inner(Slot.FrontWheel), LargestWidth(Slot.Fork), SeatOf(Slot.FrontTyre), LargestSeat(Slot.Fork)) { Sources = [Sources.WidthTolerance], Caution = Cautions.TyreRoom },
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
        new("pedals-in-cranks", "Pedals in cranks", BottomBracketRelations.Pedals, CrankPedals, PedalsThread) { Sources = [Sources.PedalAttachment], Caution = Cautions.PedalThreads },
        new("derailleur-on-hanger", "Rear derailleur on hanger", HangerRelations.OnHanger, HangerOfFrame, Mount) { Sources = [Sources.UniversalHangerNews, Sources.UniversalHangerMaker] },
        new("chain-on-cassette", "Chain on cassette", ChainRelations.OnSprockets, SprocketsOfCassette, ChainFor) { Sources = [Sources.ChainWidths] },
        new("chain-on-rings", "Chain on rings", ChainRelations.OnRings, Rings, ChainFor) { Sources = [Sources.ChainWidths] },
        new("chain-through-derailleur", "Chain through derailleur", ChainRelations.ThroughDerailleur, ChainOfDerailleur, ChainFor) { Sources = [Sources.ChainSizes] },
        new("belt-through-rear-triangle", "Belt through the rear triangle", BeltRelations.ThroughRearTriangle, Triangle, ChainFor) { Sources = [Sources.BeltConversion, Sources.SplitFrames] },
    ];
}
