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

namespace Lugwork;

/// <summary>Every closed set of the library, listed by hand, area by area. Made when it is asked for: no check needs it.</summary>
internal static class StandardTables
{
    public static ImmutableArray<StandardTable> All =>
    [
        Of<HubStandard>("Lugwork.Hubs", nameof(HubStandard)),
        Of<HubEnds>("Lugwork.Hubs", nameof(HubEnds)),
        Of<AxleThread>("Lugwork.Hubs", nameof(AxleThread)),
        Of<Material>("Lugwork", nameof(Material)),
        Of<HubAttachment>("Lugwork.Hubs", nameof(HubAttachment)),
        Of<HubAxleThread>("Lugwork.Hubs", nameof(HubAxleThread)),
        Of<HubFamily>("Lugwork.Hubs", nameof(HubFamily)),
        Of<RotorPlace>("Lugwork.Hubs", nameof(RotorPlace)),
        Of<HubDynamo>("Lugwork.Hubs", nameof(HubDynamo)),
        Of<DynamoContact>("Lugwork.Hubs", nameof(DynamoContact)),
        Of<RetentionLips>("Lugwork.Hubs", nameof(RetentionLips)),
        Of<DropoutSlot>("Lugwork.Hubs", nameof(DropoutSlot)),
        Of<BeadSeat>("Lugwork.Tyres", nameof(BeadSeat)),
        Of<RimType>("Lugwork.Tyres", nameof(RimType)),
        Of<TyreBead>("Lugwork.Tyres", nameof(TyreBead)),
        Of<TyreHold>("Lugwork.Tyres", nameof(TyreHold)),
        Of<BeadedEdgeSeat>("Lugwork.Tyres", nameof(BeadedEdgeSeat)),
        Of<RimProfile>("Lugwork.Tyres", nameof(RimProfile)),
        Of<TyreLabel>("Lugwork.Tyres", nameof(TyreLabel)),
        Of<SpokeCount>("Lugwork.Hubs", nameof(SpokeCount)),
        Of<ValveHole>("Lugwork.Tyres", nameof(ValveHole)),
        Of<ValveStem>("Lugwork.Tyres", nameof(ValveStem)),
        Of<WidthEdition>("Lugwork.Tyres", nameof(WidthEdition)),
        Of<HeadTubeBore>("Lugwork.Steering", nameof(HeadTubeBore)),
        Of<HeadsetStyle>("Lugwork.Steering", nameof(HeadsetStyle)),
        Of<HeadsetCup>("Lugwork.Steering", nameof(HeadsetCup)),
        Of<SteererSize>("Lugwork.Steering", nameof(SteererSize)),
        Of<SteererKind>("Lugwork.Steering", nameof(SteererKind)),
        Of<CrownSeat>("Lugwork.Steering", nameof(CrownSeat)),
        Of<CrownRace>("Lugwork.Steering", nameof(CrownRace)),
        Of<StemFixing>("Lugwork.Steering", nameof(StemFixing)),
        Of<HeadsetBearing>("Lugwork.Steering", nameof(HeadsetBearing)),
        Of<SteererShape>("Lugwork.Steering", nameof(SteererShape)),
        Of<CableWay>("Lugwork.Steering", nameof(CableWay)),
        Of<CableGuide>("Lugwork.Cockpit", nameof(CableGuide)),
        Of<SteererPreload>("Lugwork.Steering", nameof(SteererPreload)),
        Of<BarClamp>("Lugwork.Cockpit", nameof(BarClamp)),
        Of<ControlClamp>("Lugwork.Cockpit", nameof(ControlClamp)),
        Of<Hand>("Lugwork.Cockpit", nameof(Hand)),
        Of<GripDiameter>("Lugwork.Cockpit", nameof(GripDiameter)),
        Of<ShellFamily>("Lugwork.BottomBrackets", nameof(ShellFamily)),
        Of<Shell>("Lugwork.BottomBrackets", nameof(Shell)),
        Of<ShellFace>("Lugwork.BottomBrackets", nameof(ShellFace)),
        Of<ShellAdapterKind>("Lugwork.BottomBrackets", nameof(ShellAdapterKind)),
        Of<SpindleSeat>("Lugwork.BottomBrackets", nameof(SpindleSeat)),
        Of<Spindle>("Lugwork.BottomBrackets", nameof(Spindle)),
        Of<PedalThread>("Lugwork.BottomBrackets", nameof(PedalThread)),
        Of<PedalSides>("Lugwork.BottomBrackets", nameof(PedalSides)),
        Of<SeatClampSize>("Lugwork.Seating", nameof(SeatClampSize)),
        Of<RailClamp>("Lugwork.Seating", nameof(RailClamp)),
        Of<SaddleRails>("Lugwork.Seating", nameof(SaddleRails)),
        Of<InsertionRule>("Lugwork.Seating", nameof(InsertionRule)),
        Of<SeatBinder>("Lugwork.Seating", nameof(SeatBinder)),
        Of<DropperRouting>("Lugwork.Seating", nameof(DropperRouting)),
        Of<DropperEntry>("Lugwork.Seating", nameof(DropperEntry)),
        Of<BrakeMount>("Lugwork.Brakes", nameof(BrakeMount)),
        Of<CaliperFoot>("Lugwork.Brakes", nameof(CaliperFoot)),
        Of<RotorFixing>("Lugwork.Brakes", nameof(RotorFixing)),
        Of<RotorSize>("Lugwork.Brakes", nameof(RotorSize)),
        Of<AdapterIncrement>("Lugwork.Brakes", nameof(AdapterIncrement)),
        Of<BrakeBolt>("Lugwork.Brakes", nameof(BrakeBolt)),
        Of<BrakeBoss>("Lugwork.Brakes", nameof(BrakeBoss)),
        Of<BrakeFluid>("Lugwork.Brakes", nameof(BrakeFluid)),
        Of<BrakeType>("Lugwork.Brakes", nameof(BrakeType)),
        Of<CablePull>("Lugwork.Brakes", nameof(CablePull)),
        Of<Lockring>("Lugwork.Brakes", nameof(Lockring)),
        Of<RimBrakeReach>("Lugwork.Brakes", nameof(RimBrakeReach)),
        Of<RotorThickness>("Lugwork.Brakes", nameof(RotorThickness)),
        Of<BrakeTrack>("Lugwork.Brakes", nameof(BrakeTrack)),
        Of<RimPads>("Lugwork.Brakes", nameof(RimPads)),
        Of<RotorCarrier>("Lugwork.Brakes", nameof(RotorCarrier)),
        Of<FreehubBody>("Lugwork.Drivetrain", nameof(FreehubBody)),
        Of<CassettePattern>("Lugwork.Drivetrain", nameof(CassettePattern)),
        Of<SprocketClass>("Lugwork.Drivetrain", nameof(SprocketClass)),
        Of<ChainSize>("Lugwork.Drivetrain", nameof(ChainSize)),
        Of<HubDrive>("Lugwork.Drivetrain", nameof(HubDrive)),
        Of<RearTriangle>("Lugwork.Drivetrain", nameof(RearTriangle)),
        Of<ShiftSignal>("Lugwork.Drivetrain", nameof(ShiftSignal)),
        Of<Hanger>("Lugwork.Drivetrain", nameof(Hanger)),
        Of<DerailleurMount>("Lugwork.Drivetrain", nameof(DerailleurMount)),
        Of<ActuationFamily>("Lugwork.Drivetrain", nameof(ActuationFamily)),
        Of<BoltCircle>("Lugwork.Drivetrain", nameof(BoltCircle)),
        Of<ChainGuideMount>("Lugwork.Drivetrain", nameof(ChainGuideMount)),
        Of<DirectMountRing>("Lugwork.Drivetrain", nameof(DirectMountRing)),
        Of<FreewheelThread>("Lugwork.Drivetrain", nameof(FreewheelThread)),
        Of<FrontCapacity>("Lugwork.Drivetrain", nameof(FrontCapacity)),
        Of<FrontChainline>("Lugwork.Drivetrain", nameof(FrontChainline)),
        Of<FrontDerailleurCable>("Lugwork.Drivetrain", nameof(FrontDerailleurCable)),
        Of<FrontDerailleurMount>("Lugwork.Drivetrain", nameof(FrontDerailleurMount)),
        Of<FrontDerailleurSwing>("Lugwork.Drivetrain", nameof(FrontDerailleurSwing)),
        Of<MakersWord>("Lugwork.Drivetrain", nameof(MakersWord)),
        Of<QFactorClass>("Lugwork.Drivetrain", nameof(QFactorClass)),
        Of<SprocketSpacing>("Lugwork.Drivetrain", nameof(SprocketSpacing)),
        Of<CrownType>("Lugwork.Suspension", nameof(CrownType)),
        Of<ForkClass>("Lugwork.Suspension", nameof(ForkClass)),
        Of<ForkOffset>("Lugwork.Suspension", nameof(ForkOffset)),
        Of<ShockBush>("Lugwork.Suspension", nameof(ShockBush)),
        Of<ShockMount>("Lugwork.Suspension", nameof(ShockMount)),
        Of<ShockSize>("Lugwork.Suspension", nameof(ShockSize)),
        Of<BicycleKind>("Lugwork", nameof(BicycleKind)),
        Of<PartCondition>("Lugwork", nameof(PartCondition)),
        Of<UseCategory>("Lugwork", nameof(UseCategory)),
        Of<OutsideFamily>("Lugwork", nameof(OutsideFamily)),
    ];

    /// <summary>The open sizes that have nominal ones with a source each.</summary>
    public static ImmutableArray<StandardTable> Nominal =>
    [
        new("Lugwork.Drivetrain", nameof(UsualCrankLength), UsualCrankLength.Called, [.. UsualCrankLength.All.Select(d => Size(d.FitCode, d.FitKey, d.Source!))]),
        new("Lugwork.Drivetrain", nameof(ToothCount), ToothCount.Called, [.. ToothCount.All.Select(t => Size(t.FitCode, t.FitKey, Sources.CommonPractice, ""))]),
        new("Lugwork.Seating", nameof(SeatpostDiameter), SeatpostDiameter.Called, [.. SeatpostDiameter.All.Select(d => Size(d.FitCode, d.FitKey, d.Source!))]),
        new("Lugwork.Seating", nameof(SeatTubeBore), SeatTubeBore.Called, [.. SeatTubeBore.All.Select(d => Size(d.FitCode, d.FitKey, d.Source!))]),
        new("Lugwork.Seating", nameof(DropperTravel), DropperTravel.Called, [.. DropperTravel.All.Select(d => Size(d.FitCode, d.FitKey, d.Source!))]),
        new("Lugwork.Suspension", nameof(ShockHardware), ShockHardware.Called, [.. ShockHardware.All.Select(d => Size(d.FitCode, d.FitKey, d.Source!))]),
        new("Lugwork.Tyres", nameof(RimSize), RimSize.Called, [.. RimSize.All.Select(d => Size(d.FitCode, d.FitKey, d.Source!, ""))]),
    ];

    private static StandardTable Of<T>(string home, string name)
        where T : Standard<T>, IInterfaceValue<T> =>
        new(home, name, T.Called, [.. T.All.Select(m => new StandardRow(m.FitCode, m.FitKey, m.TradeName, m.Names, m.Source))]);

    private static StandardRow Size(long code, string key, Source source, string unit = " mm") => new(code, key, key + unit, [], source);
}

/// <summary>A closed set, or the nominal sizes of an open one, as the reference page shows it.</summary>
/// <param name="Home">Its namespace.</param>
/// <param name="Name">Its type.</param>
/// <param name="Called">What its values are called.</param>
/// <param name="Rows">Its values, in the order of the table.</param>
internal sealed record StandardTable(string Home, string Name, string Called, ImmutableArray<StandardRow> Rows);

/// <summary>A value as the reference page shows it.</summary>
internal sealed record StandardRow(long Code, string Key, string TradeName, ImmutableArray<string> Names, Source Source);
