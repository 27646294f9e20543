using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;

namespace Lugwork.Benchmarks.Processes;

/// <summary>A touring bicycle with disc brakes and every slot filled that it has, from values.</summary>
internal static class Bicycles
{
    /// <summary>All of it fits with a 27.2 post; any other is too large or loose.</summary>
    /// <param name="post">Diameter of the seatpost, millimetres.</param>
    public static Build Touring(decimal post)
    {
        Known<UseCategory> use = Known<UseCategory>.Of(UseCategory.Condition2);
        Wheel wheel = new()
        {
            Ends = Known<HubEnds>.Of(HubEnds.Swappable),
            RotorFixing = Known<RotorFixing>.Of(RotorFixing.SixBolt),
            BeadSeat = Known<BeadSeat>.Of(BeadSeat.OfFitCode(622)),
            InnerWidth = Millimetres(19),
            RimType = Known<RimType>.Of(RimType.TubelessCrochet),
            BrakeTrack = Known<BrakeTrack>.None,
            HubBrake = Known<BrakeType>.None,
            AxleThread = Known<HubAxleThread>.None,
            Washers = Known<DropoutSlot>.None,
            ValveHole = Known<ValveHole>.Of(ValveHole.Narrow),
            RimDepth = Millimetres(24),
            BedHole = Millimetres(9),
            LoadLimit = Kilograms(120),
            SystemLimit = Known<Load>.None,
            Use = use,
        };
        InnerTube tube = new()
        {
            Seat = Known<BeadSeat>.Of(BeadSeat.OfFitCode(622)),
            OtherSeat = Known<BeadSeat>.None,
            NarrowestTyre = Millimetres(28),
            WidestTyre = Millimetres(47),
            Valve = Known<ValveStem>.Of(ValveStem.Presta),
            ValveLength = Millimetres(48),
        };
        TubelessValve valve = new() { Valve = Known<ValveStem>.Of(ValveStem.Presta), Length = Millimetres(44) };
        RimTape tape = new() { Width = Millimetres(19) };
        Known<HeadsetBearing> bearing = Known<HeadsetBearing>.Of(HeadsetBearing.Mm41);
        Tyre tyre = new() { Size = Known<TyreSize>.Of(TyreSize.Of(37, BeadSeat.OfFitCode(622))), Bead = Known<TyreBead>.Of(TyreBead.Folding) };
        Rotor rotor = new()
        {
            Size = Known<RotorSize>.Of(RotorSize.OfFitCode(160)),
            Fixing = Known<RotorFixing>.Of(RotorFixing.SixBolt),
            Lockring = Known<Lockring>.None,
            Carrier = Known<RotorCarrier>.None,
            Thickness = Millimetres(1.8m),
        };
        Caliper caliper = new()
        {
            Mounting = Known<CaliperFoot>.Of(CaliperFoot.Post),
            Type = Known<BrakeType>.Of(BrakeType.HydraulicDisc),
            Fluid = Known<BrakeFluid>.Of(BrakeFluid.MineralOil),
            ThickestRotor = Millimetres(1.9m),
            ThinnestRotor = Millimetres(1.5m),
            BoltLength = Known<Dimension>.None,
        };
        BrakeLever lever = new() { Pull = Known<CablePull>.None, Fluid = Known<BrakeFluid>.Of(BrakeFluid.MineralOil) };
        ThruAxle axle = new() { Thread = Known<AxleThread>.Of(AxleThread.M12Pitch1Point5), Length = Millimetres(163) };
        return Build.From(new Frame
        {
            Kind = Known<BicycleKind>.Of(BicycleKind.Touring),
            Material = Known<Material>.Of(Material.Steel),
            RearEnd = Known<HubStandard>.Of(HubStandard.OfFitCode(29)),
            SeatTubeBore = Known<SeatTubeBore>.Of(SeatTubeBore.OfMillimetres(27.2m)),
            LeastInsertion = Millimetres(80),
            MostInsertion = Millimetres(210),
            RearBrakeMount = Known<BrakeMount>.Of(BrakeMount.Post160),
            LargestRearRotor = Millimetres(180),
            RearAxleThread = Known<AxleThread>.Of(AxleThread.M12Pitch1Point5),
            RearAxleLength = Millimetres(163),
            RearDropout = Known<DropoutSlot>.None,
            RearStayThickness = Known<Dimension>.None,
            HeadTubeUpper = Known<HeadTubeBore>.Of(HeadTubeBore.Bore44),
            HeadTubeLower = Known<HeadTubeBore>.Of(HeadTubeBore.Bore56),
            Shell = Known<Shell>.Of(Shell.OfFitCode(1)),
            SeatTubeOutside = Known<SeatClampSize>.Of(SeatClampSize.Mm31Point8),
            Hanger = Known<Hanger>.Of(Hanger.M10),
            LargestRearTyre = Known<TyreSize>.Of(TyreSize.Of(42, BeadSeat.OfFitCode(622))),
            UpperBoreDepth = Millimetres(20),
            LowerBoreDepth = Millimetres(20),
            HeadsetCables = Known<CableWay>.Of(CableWay.Outside),
            ShellFace = Known<ShellFace>.Of(ShellFace.Bare),
            DropperEntry = Known<DropperEntry>.Of(DropperEntry.Hole),
            LargestRing = Known<ToothCount>.Of(ToothCount.Of(50)),
            LongestFork = Millimetres(405),
            MostForkTravel = Known<Dimension>.None,
            ForkCrowns = Known<CrownType>.Of(CrownType.Single),
            LoadLimit = Kilograms(120),
            SystemLimit = Known<Load>.None,
            Use = use,
        })
            .With(new Fork
            {
                FrontEnd = Known<HubStandard>.Of(HubStandard.OfFitCode(7)),
                FrontBrakeMount = Known<BrakeMount>.Of(BrakeMount.Post160),
                LargestFrontRotor = Millimetres(180),
                Steerer = Known<SteererSize>.Of(SteererSize.Mm28Point6),
                SteererKind = Known<SteererKind>.Of(SteererKind.Threadless),
                CrownSeat = Known<CrownSeat>.Of(CrownSeat.Mm39Point8),
                FrontAxleThread = Known<AxleThread>.Of(AxleThread.M12Pitch1Point5),
                FrontAxleLength = Millimetres(127),
                FrontLips = Known<RetentionLips>.None,
                LargestFrontTyre = Known<TyreSize>.Of(TyreSize.Of(42, BeadSeat.OfFitCode(622))),
                SteererMaterial = Known<Material>.Of(Material.Steel),
                AxleToCrown = Millimetres(395),
                Travel = Known<Dimension>.None,
                Crowns = Known<CrownType>.Of(CrownType.Single),
                LoadLimit = Kilograms(120),
                SystemLimit = Known<Load>.None,
                Use = use,
            })
            .With(tube, Slot.FrontInnerTube)
            .With(tube, Slot.RearInnerTube)
            .With(valve, Slot.FrontTubelessValve)
            .With(valve, Slot.RearTubelessValve)
            .With(tape, Slot.FrontRimTape)
            .With(tape, Slot.RearRimTape)
            .With(new HeadsetCartridge { Size = bearing }, Slot.UpperBearing)
            .With(new HeadsetCartridge { Size = bearing }, Slot.LowerBearing)
            .With(new HeadsetCover { Cables = Known<CableWay>.Of(CableWay.Outside) })
            .With(new Preload { Kind = Known<SteererPreload>.Of(SteererPreload.StarNut) })
            .With(new Controls { Clamp = Known<ControlClamp>.Of(ControlClamp.FlatBar) })
            .With(new Grips { Bore = Known<GripDiameter>.Of(GripDiameter.Mm22Point2) })
            .With(new ShellAdapter { Kind = Known<ShellAdapterKind>.Of(ShellAdapterKind.Outboard) })
            .With(new Dropper { Routing = Known<DropperRouting>.Of(DropperRouting.Internal) })
            .With(new Rider { Mass = Kilograms(82), MassWithLuggage = Kilograms(95), SystemMass = Kilograms(108), Use = use })
            .With(axle with { Length = Millimetres(127) }, Slot.FrontThruAxle)
            .With(axle, Slot.RearThruAxle)
            .With(new Headset
            {
                UpperCup = Known<HeadsetCup>.Of(HeadsetCup.Zs44),
                Steerer = Known<SteererSize>.Of(SteererSize.Mm28Point6),
                LowerCup = Known<HeadsetCup>.Of(HeadsetCup.Zs56),
                CrownRace = Known<CrownRace>.Of(CrownRace.Mm39Point8),
                Kind = Known<SteererKind>.Of(SteererKind.Threadless),
                UpperSkirt = Millimetres(12),
                LowerSkirt = Millimetres(12),
                UpperBearing = bearing,
                LowerBearing = bearing,
            })
            .With(new Stem { Fixing = Known<StemFixing>.Of(StemFixing.Clamp28Point6), BarClamp = Known<BarClamp>.Of(BarClamp.Mm31Point8), RiderLimit = Kilograms(115), SystemLimit = Known<Load>.None, Use = use })
            .With(new Handlebar { Clamp = Known<BarClamp>.Of(BarClamp.Mm31Point8), Grip = Known<GripDiameter>.Of(GripDiameter.Mm22Point2), RiderLimit = Kilograms(115), SystemLimit = Known<Load>.None, Use = use })
            .With(new SeatClamp { Size = Known<SeatClampSize>.Of(SeatClampSize.Mm31Point8) })
            .With(new Saddle { Rails = Known<SaddleRails>.Of(SaddleRails.Round7) })
            .With(new BottomBracket
            {
                Family = Known<ShellFamily>.Of(ShellFamily.Bsa),
                NarrowestShell = Millimetres(68),
                WidestShell = Millimetres(73),
                Takes = Known<SpindleSeat>.Of(SpindleSeat.Mm24),
            })
            .With(new Crankset
            {
                Spindle = Known<Spindle>.Of(Spindle.Road24),
                PedalThread = Known<PedalThread>.Of(PedalThread.NineSixteenths),
                Speeds = Known<SprocketClass>.Of(SprocketClass.For9),
                LargestRing = Known<ToothCount>.Of(ToothCount.Of(44)),
            })
            .With(new Pedals { Thread = Known<PedalThread>.Of(PedalThread.NineSixteenths) })
            .With(new Chain { Size = Known<ChainSize>.Of(ChainSize.For9) })
            .With(new RearDerailleur { Mount = Known<DerailleurMount>.Of(DerailleurMount.Bolt), Chain = Known<ChainSize>.Of(ChainSize.For9), Signal = Known<ShiftSignal>.Of(ShiftSignal.Cable), Actuation = Known<ActuationFamily>.Of(ActuationFamily.Older) })
            .With(new Shifter { Signal = Known<ShiftSignal>.Of(ShiftSignal.Cable), Actuation = Known<ActuationFamily>.Of(ActuationFamily.Older), Spacing = Known<SprocketSpacing>.Of(SprocketSpacing.OfFitCode(6)), WithDerailleur = Known<MakersWord>.Of(MakersWord.Allowed) }, Slot.RearShifter)
            .With(wheel with { Hub = Known<HubStandard>.Of(HubStandard.OfFitCode(7)) }, Slot.FrontWheel)
            .With(wheel with { Hub = Known<HubStandard>.Of(HubStandard.OfFitCode(29)), FreehubBody = Known<FreehubBody>.Of(FreehubBody.HgMedium) }, Slot.RearWheel)
            .With(tyre, Slot.FrontTyre)
            .With(tyre, Slot.RearTyre)
            .With(new Cassette { Pattern = Known<CassettePattern>.Of(CassettePattern.Hg9), Spacing = Known<SprocketSpacing>.Of(SprocketSpacing.OfFitCode(6)) })
            .With(rotor, Slot.FrontRotor)
            .With(rotor, Slot.RearRotor)
            .With(caliper, Slot.FrontCaliper)
            .With(caliper, Slot.RearCaliper)
            .With(lever, Slot.FrontBrakeLever)
            .With(lever, Slot.RearBrakeLever)
            .With(new Seatpost
            {
                Diameter = Known<SeatpostDiameter>.Of(SeatpostDiameter.OfMillimetres(post)),
                Length = Millimetres(350),
                Mark = Millimetres(75),
                Insertion = Millimetres(110),
                RailClamp = Known<RailClamp>.Of(RailClamp.Round7),
                RiderLimit = Kilograms(115),
                SystemLimit = Known<Load>.None,
                Use = use,
            });
    }

    private static Known<Load> Kilograms(decimal kilograms) => Known<Load>.Of(Load.OfKilograms(kilograms));

    private static Known<Dimension> Millimetres(decimal millimetres) => Known<Dimension>.Of(Dimension.OfMillimetres(millimetres));
}
