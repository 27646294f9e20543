using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;

namespace Lugwork.EntityFrameworkCore;

/// <summary>Every interface value of the library, by hand: a test finds one that is forgotten.</summary>
internal static class InterfaceValueList
{
    /// <summary>Calls the visitor once for each type.</summary>
    public static void Visit(IInterfaceValueVisitor visitor)
    {
        visitor.Visit<BicycleKind>();
        visitor.Visit<DateMade>();
        visitor.Visit<Dimension>();
        visitor.Visit<FrameAngle>();
        visitor.Visit<Load>();
        visitor.Visit<OutsideFamily>();
        visitor.Visit<PartCondition>();
        visitor.Visit<UseCategory>();
        visitor.Visit<ShellAdapterKind>();
        visitor.Visit<PedalSides>();
        visitor.Visit<PedalThread>();
        visitor.Visit<Shell>();
        visitor.Visit<ShellFace>();
        visitor.Visit<ShellFamily>();
        visitor.Visit<Spindle>();
        visitor.Visit<SpindleSeat>();
        visitor.Visit<AdapterIncrement>();
        visitor.Visit<BrakeBolt>();
        visitor.Visit<BrakeBoss>();
        visitor.Visit<BrakeFluid>();
        visitor.Visit<BrakeMount>();
        visitor.Visit<BrakeTrack>();
        visitor.Visit<BrakeType>();
        visitor.Visit<CablePull>();
        visitor.Visit<CaliperFoot>();
        visitor.Visit<Lockring>();
        visitor.Visit<RimBrakeReach>();
        visitor.Visit<RimPads>();
        visitor.Visit<RotorCarrier>();
        visitor.Visit<RotorFixing>();
        visitor.Visit<RotorSize>();
        visitor.Visit<RotorThickness>();
        visitor.Visit<BarClamp>();
        visitor.Visit<ControlClamp>();
        visitor.Visit<GripDiameter>();
        visitor.Visit<Hand>();
        visitor.Visit<ActuationFamily>();
        visitor.Visit<BoltCircle>();
        visitor.Visit<CassettePattern>();
        visitor.Visit<ChainGuideMount>();
        visitor.Visit<ChainSize>();
        visitor.Visit<UsualCrankLength>();
        visitor.Visit<DerailleurMount>();
        visitor.Visit<DirectMountRing>();
        visitor.Visit<FreehubBody>();
        visitor.Visit<FreewheelThread>();
        visitor.Visit<FrontCapacity>();
        visitor.Visit<FrontChainline>();
        visitor.Visit<FrontDerailleurCable>();
        visitor.Visit<FrontDerailleurMount>();
        visitor.Visit<FrontDerailleurSwing>();
        visitor.Visit<Hanger>();
        visitor.Visit<HubDrive>();
        visitor.Visit<MakersWord>();
        visitor.Visit<QFactorClass>();
        visitor.Visit<RearTriangle>();
        visitor.Visit<ShiftSignal>();
        visitor.Visit<SprocketClass>();
        visitor.Visit<SprocketSpacing>();
        visitor.Visit<ToothCount>();
        visitor.Visit<AxleThread>();
        visitor.Visit<DropoutSlot>();
        visitor.Visit<DynamoContact>();
        visitor.Visit<Material>();
        visitor.Visit<HubAttachment>();
        visitor.Visit<HubAxleThread>();
        visitor.Visit<HubDynamo>();
        visitor.Visit<HubEnds>();
        visitor.Visit<HubFamily>();
        visitor.Visit<HubStandard>();
        visitor.Visit<RetentionLips>();
        visitor.Visit<RotorPlace>();
        visitor.Visit<DropperEntry>();
        visitor.Visit<DropperRouting>();
        visitor.Visit<DropperTravel>();
        visitor.Visit<InsertionRule>();
        visitor.Visit<RailClamp>();
        visitor.Visit<SaddleRails>();
        visitor.Visit<SeatBinder>();
        visitor.Visit<SeatClampSize>();
        visitor.Visit<SeatTubeBore>();
        visitor.Visit<SeatpostDiameter>();
        visitor.Visit<CableWay>();
        visitor.Visit<CableGuide>();
        visitor.Visit<CrownRace>();
        visitor.Visit<CrownSeat>();
        visitor.Visit<HeadTubeBore>();
        visitor.Visit<HeadsetBearing>();
        visitor.Visit<HeadsetCup>();
        visitor.Visit<HeadsetStyle>();
        visitor.Visit<SteererKind>();
        visitor.Visit<SteererPreload>();
        visitor.Visit<SteererShape>();
        visitor.Visit<SteererSize>();
        visitor.Visit<StemFixing>();
        visitor.Visit<CrownType>();
        visitor.Visit<ForkClass>();
        visitor.Visit<ForkOffset>();
        visitor.Visit<ShockBush>();
        visitor.Visit<ShockHardware>();
        visitor.Visit<ShockMount>();
        visitor.Visit<ShockSize>();
        visitor.Visit<BeadSeat>();
        visitor.Visit<BeadedEdgeSeat>();
        visitor.Visit<RimProfile>();
        visitor.Visit<RimSize>();
        visitor.Visit<RimType>();
        visitor.Visit<SpokeCount>();
        visitor.Visit<TyreBead>();
        visitor.Visit<TyreHold>();
        visitor.Visit<TyreLabel>();
        visitor.Visit<TyreSize>();
        visitor.Visit<ValveHole>();
        visitor.Visit<ValveStem>();
        visitor.Visit<WidthEdition>();
    }
}

/// <summary>Something that is done for each type of interface value.</summary>
internal interface IInterfaceValueVisitor
{
    void Visit<T>()
        where T : IInterfaceValue<T>;
}
