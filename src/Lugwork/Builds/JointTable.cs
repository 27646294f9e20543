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
        new("front-tubular-on-rim", "Front tyre on rim, stuck or by its beads", TubularRelations.OnRim, HoldOfRim(Slot.FrontWheel), HoldOfTyre(Slot.FrontTyre)) { Sources = [Sources.Iso5775Part1Sample] },
        new("rear-tubular-on-rim", "Rear tyre on rim, stuck or by its beads", TubularRelations.OnRim, HoldOfRim(Slot.RearWheel), HoldOfTyre(Slot.RearTyre)) { Sources = [Sources.Iso5775Part1Sample] },
        new("front-tube-in-tyre", "Front tube in tyre, bead seat", TubeRelations.Seat, SeatOf(Slot.FrontTyre), TubeSeat(Slot.FrontTube), TubeOtherSeat(Slot.FrontTube)) { Sources = [Sources.TubeMismatch], Caution = Cautions.TubeCare },
        new("rear-tube-in-tyre", "Rear tube in tyre, bead seat", TubeRelations.Seat, SeatOf(Slot.RearTyre), TubeSeat(Slot.RearTube), TubeOtherSeat(Slot.RearTube)) { Sources = [Sources.TubeMismatch], Caution = Cautions.TubeCare },
        new("front-tube-width-in-tyre", "Front tube in tyre, width", TubeRelations.Width, WidthOf(Slot.FrontTyre), NarrowestTyre(Slot.FrontTube), WidestTyre(Slot.FrontTube)) { Sources = [Sources.CommonPractice], Caution = Cautions.TubeCare },
        new("rear-tube-width-in-tyre", "Rear tube in tyre, width", TubeRelations.Width, WidthOf(Slot.RearTyre), NarrowestTyre(Slot.RearTube), WidestTyre(Slot.RearTube)) { Sources = [Sources.CommonPractice], Caution = Cautions.TubeCare },
        new("front-tube-valve-through-rim", "Front valve of the tube through rim", ValveRelations.ThroughRim, HoleOf(Slot.FrontWheel), ValveOf(Slot.FrontTube)) { Sources = [Sources.ValveArticle, Sources.WheelDataSheet] },
        new("rear-tube-valve-through-rim", "Rear valve of the tube through rim", ValveRelations.ThroughRim, HoleOf(Slot.RearWheel), ValveOf(Slot.RearTube)) { Sources = [Sources.ValveArticle, Sources.WheelDataSheet] },
        new("front-tube-valve-length", "Front valve of the tube, length", ValveRelations.Length, ValveLengthOf(Slot.FrontTube), DepthOf(Slot.FrontWheel)) { Sources = [Sources.CommonPractice] },
        new("rear-tube-valve-length", "Rear valve of the tube, length", ValveRelations.Length, ValveLengthOf(Slot.RearTube), DepthOf(Slot.RearWheel)) { Sources = [Sources.CommonPractice] },
        new("front-valve-through-rim", "Front tubeless valve through rim", ValveRelations.ThroughRim, HoleOf(Slot.FrontWheel), ValveOf(Slot.FrontValve)) { Sources = [Sources.ValveArticle, Sources.WheelDataSheet] },
        new("rear-valve-through-rim", "Rear tubeless valve through rim", ValveRelations.ThroughRim, HoleOf(Slot.RearWheel), ValveOf(Slot.RearValve)) { Sources = [Sources.ValveArticle, Sources.WheelDataSheet] },
        new("front-valve-length", "Front tubeless valve, length", ValveRelations.Length, ValveLengthOf(Slot.FrontValve), DepthOf(Slot.FrontWheel)) { Sources = [Sources.CommonPractice] },
        new("rear-valve-length", "Rear tubeless valve, length", ValveRelations.Length, ValveLengthOf(Slot.RearValve), DepthOf(Slot.RearWheel)) { Sources = [Sources.CommonPractice] },
        new("front-rim-tape-on-rim", "Front tape in the rim", RimTapeRelations.InBed, TapeWidth(Slot.FrontRimTape), BedHole(Slot.FrontWheel), Inner(Slot.FrontWheel)) { Sources = [Sources.Iso5775Part2Extract], Caution = Cautions.RimTape },
        new("rear-rim-tape-on-rim", "Rear tape in the rim", RimTapeRelations.InBed, TapeWidth(Slot.RearRimTape), BedHole(Slot.RearWheel), Inner(Slot.RearWheel)) { Sources = [Sources.Iso5775Part2Extract], Caution = Cautions.RimTape },
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
        new("upper-cup-depth-in-head-tube", "Upper cup in head tube, depth", HeadsetPieces.CupDepth, UpperSkirt, UpperBoreDepth) { Sources = [Sources.StraightInTapered], Caution = Cautions.SteeringCare },
        new("lower-cup-depth-in-head-tube", "Lower cup in head tube, depth", HeadsetPieces.CupDepth, LowerSkirt, LowerBoreDepth) { Sources = [Sources.StraightInTapered], Caution = Cautions.SteeringCare },
        new("upper-bearing-in-seat", "Upper headset bearing in its seat", HeadsetPieces.Bearing, UpperBearingAsked, BearingBought(Slot.UpperBearing)) { Sources = [Sources.BearingMeasure, Sources.BearingAngles], Caution = Cautions.SteeringCare },
        new("lower-bearing-in-seat", "Lower headset bearing in its seat", HeadsetPieces.Bearing, LowerBearingAsked, BearingBought(Slot.LowerBearing)) { Sources = [Sources.BearingMeasure, Sources.BearingAngles], Caution = Cautions.SteeringCare },
        new("headset-cover-system", "Headset cover and the way of the cables", HeadsetPieces.Cover, CablesOfFrame, CablesOfCover) { Sources = [Sources.CableHeadsets], Caution = Cautions.SteeringCare },
        new("headset-on-steerer", "Headset on steerer", SteererRelations.OnSteerer, MadeForSteerer, Steerer) { Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart], Caution = Cautions.SteeringCare },
        new("headset-kind", "Headset and steerer, threaded or threadless", SteererRelations.OfKind, ForkKind, HeadsetKind) { Sources = [Sources.HeadsetArticle], Caution = Cautions.SteeringCare },
        new("headset-on-crown", "Headset on crown", SteererRelations.OnCrown, Race, CrownSeatOfFork) { Sources = [Sources.HeadsetChart, Sources.HeadsetCodeNote], Caution = Cautions.SteeringCare },
        new("stem-on-steerer", "Stem on steerer", StemRelations.OnSteerer, Steerer, ForkKind, StemFixing) { Sources = [Sources.StemSizes, Sources.HeadsetArticle], Caution = Cautions.SteeringCare },
        new("preload-in-steerer", "Star nut or expander in steerer", MaterialRelations.Preload, SteererMaterialOfFork, PreloadKind, ForkKind) { Sources = [Sources.ForkCutting, Sources.StarNutSetting], Caution = Cautions.StarNutCare },
        new("quill-insertion", "Quill in steerer, depth", HeadsetPieces.Quill, QuillDepth, QuillMark, StemFixing) { Sources = [Sources.QuillArticle], Caution = Cautions.QuillInsertion },
        new("bar-in-stem", "Handlebar in stem", BarRelations.InStem, StemBar, Bar) { Sources = [Sources.BarAndStemTable], Caution = Cautions.BarClampCare },
        new("control-on-bar", "Levers and shifters on handlebar", ControlRelations.OnBar, GripOfBar, ControlsClamp) { Sources = [Sources.LeverSeats, Sources.PostSizesCanada], Caution = Cautions.BarClampCare },
        new("grip-on-bar", "Grips on handlebar", ControlRelations.GripOnBar, GripOfBar, GripsBore) { Sources = [Sources.BarAndStemTable, Sources.PostSizesCanada], Caution = Cautions.Grips },
        new("seat-clamp-on-seat-tube", "Seat clamp on seat tube", SeatRelations.Collar, TubeOutside, Collar) { Sources = [Sources.ClampShop] },
        new("binder-on-post", "Seat binder on seatpost", BinderRelations.OnPost, Bore, Post, BinderGap) { Sources = [Sources.BinderReport, Sources.SlipFitColumn], Caution = Cautions.BinderEars },
        new("post-material-in-binder", "Seatpost material in binder", MaterialRelations.PostInBinder, PostMaterial, BinderOfFrame) { Sources = [Sources.CarbonPostCracks], Caution = Cautions.CarbonPost },
        new("dropper-routing-in-frame", "Dropper routing in frame", BinderRelations.Dropper, EntryOfFrame, RoutingOfDropper) { Sources = [Sources.CommonPractice] },
        new("saddle-on-seatpost", "Saddle on seatpost", SeatRelations.Rails, PostHead, SaddleRail) { Sources = [Sources.CommonPractice] },
        new("bottom-bracket-in-shell", "Bottom bracket in shell, thread or bore", BottomBracketRelations.InShell, ShellFamilyOfFrame, BracketFamily) { Sources = [Sources.BracketGuide], Caution = Cautions.ShellThreads },
        new("bottom-bracket-width", "Bottom bracket in shell, width", BottomBracketRelations.Width, ShellWidthOfFrame, Narrowest, Widest) { Sources = [Sources.BracketGuide], Caution = Cautions.ShellThreads },
        new("pressed-unit-in-measured-bore", "Pressed bottom bracket in the measured bore", BracketPieces.MeasuredBore, BracketFamily, ShellBore) { Sources = [Sources.CreakyBracket], Caution = Cautions.PressFitCare },
        new("adapter-on-shell-face", "Bottom-bracket adapter on the face of the shell", BracketPieces.OnFace, FaceOfShell, AdapterKind) { Sources = [Sources.ShellAdapterReport], Caution = Cautions.ShellFace },
        new("spindle-in-bottom-bracket", "Spindle in bottom bracket", BottomBracketRelations.SpindleIn, BracketTakes, CrankSeat) { Sources = [Sources.SpindleOptions] },
        new("splined-crank-with-spindle-width", "Splined crank and the width of the spindle", BracketPieces.DesignatedWidth, BracketTakes, DesignedWidth, DesignatedWidth) { Sources = [Sources.TenSplineFaq] },
        new("crank-across-shell", "Crank across shell", BottomBracketRelations.Across, ShellOfFrame, CrankSpindle) { Sources = [Sources.BracketGuide] },
        new("pedals-in-cranks", "Pedals in cranks", BottomBracketRelations.Pedals, CrankPedals, PedalsThread) { Sources = [Sources.PedalAttachment], Caution = Cautions.PedalThreads },
        new("derailleur-on-hanger", "Rear derailleur on hanger", HangerRelations.OnHanger, HangerOfFrame, Mount) { Sources = [Sources.UniversalHangerNews, Sources.UniversalHangerMaker] },
        new("chain-on-cassette", "Chain on cassette", ChainRelations.OnSprockets, SprocketsOfCassette, ChainFor) { Sources = [Sources.ChainWidths] },
        new("chain-on-rings", "Chain on rings", ChainRelations.OnRings, Rings, ChainFor) { Sources = [Sources.ChainWidths] },
        new("chain-through-derailleur", "Chain through derailleur", ChainRelations.ThroughDerailleur, ChainOfDerailleur, ChainFor) { Sources = [Sources.ChainSizes] },
        new("belt-through-rear-triangle", "Belt through the rear triangle", BeltRelations.ThroughRearTriangle, Triangle, ChainFor) { Sources = [Sources.BeltConversion, Sources.SplitFrames] },
    ];
}
