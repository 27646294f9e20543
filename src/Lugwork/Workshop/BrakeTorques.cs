using System.Collections.Immutable;
using static Lugwork.Sources;

namespace Lugwork.Workshop;

/// <summary>Torque of brakes and wheels.</summary>
public static partial class TorqueTable
{
    internal static class BrakeTorques
    {
        public static TorqueFigure RotorLockring { get; } = new("rotor-lockring", "lockring of a splined rotor", new(40.2m, 40.2m, FrameMakersTorques), new(40.2m, 40.2m, ShopTorqueTable), new(40, 40, BoltTorqueGuide), new(40, 50, Memory)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true };

        public static TorqueFigure RotorBolts { get; } = new("rotor-bolts", "six rotor bolts, T25", new(5, 6.2m, FrameMakersTorques), new(5, 6.2m, ShopTorqueTable), new(4, 6, BoltTorqueGuide), new(2, 4, RotorMakersSheet, "with a plate that locks them", true)) { Treatment = ThreadTreatment.Threadlock, TreatmentSource = CommonPractice, Note = "The rotor maker decides." };

        public static TorqueFigure CaliperBolts { get; } = new("caliper-bolts", "disc caliper or adapter on frame or fork, M6", new(6, 8, DiscMakersSheet), new(6, 8, BoltTorqueGuide), new(7.9m, 9, HydraulicCaliperGuide, "bolts of the bracket, a second maker"), new(11.3m, 12.4m, FrameMakersTorques), new(11.3m, 12.4m, ShopTorqueTable)) { Note = "Trust the caliper maker over a frame maker's general list.", Either = "caliper" };

        public static TorqueFigure CaliperBody { get; } = new("caliper-body-bolts", "disc caliper on its bracket, M6", new(6, 8, DiscMakersSheet, "post caliper"), new(4.5m, 6.8m, HydraulicCaliperGuide, "a second maker")) { Either = "caliper" };

        public static TorqueFigure AdapterBolts { get; } = new("adapter-bolts-m5", "disc adapter, M5 bolts", new(6.8m, 7.3m, FrameMakersTorques), new(6.8m, 7.3m, ShopTorqueTable)) { Either = "caliper" };

        public static TorqueFigure FlatMountBolts { get; } = new("flat-mount-bolts", "flat-mount bolts, M5", new TorqueRange(6, 8, Memory)) { Either = "caliper" };

        public static TorqueFigure RimCaliperRear { get; } = new("rim-caliper-rear", "mounting nut of the rear rim caliper", new TorqueRange(7.9m, 9.6m, FrameMakersTorques)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice };

        public static TorqueFigure RimCaliperFront { get; } = new("rim-caliper-front", "mounting nut of the front rim caliper", new TorqueRange(6, 7, FrameMakersTorques)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice };

        public static TorqueFigure ArmBolt { get; } = new("brake-arm-bolt", "arm of a linear-pull or cantilever brake on its boss", new TorqueRange(7.9m, 9.6m, FrameMakersTorques));

        public static TorqueFigure PadLinear { get; } = new("pad-linear-pull", "pad of a linear-pull brake", new TorqueRange(7.9m, 9, FrameMakersTorques));

        public static TorqueFigure PadCaliper { get; } = new("pad-rim-caliper", "pad of a road caliper", new TorqueRange(4.5m, 6.8m, FrameMakersTorques));

        public static TorqueFigure BrakeCable { get; } = new("brake-cable", "cable clamp of a brake", new TorqueRange(5.7m, 7.9m, FrameMakersTorques));

        public static TorqueFigure LeverClamp { get; } = new("lever-clamp", "brake lever on a flat bar", new(6, 8, OwnersTorques2017), new(5, 7, OwnersTorques2017, "a second maker"));

        public static TorqueFigure HoseNut { get; } = new("hose-nut", "nut of a brake hose, M8", new TorqueRange(5, 6, Memory));

        public static TorqueFigure Skewer { get; } = new("quick-release", "quick-release skewer", new TorqueRange(5, 7.5m, OwnersTorques2017)) { IsByHand = true, Note = "A lever force: it closes with firm pressure of the palm." };

        public static TorqueFigure AxleNut { get; } = new("axle-nut", "axle nut of a geared hub", new TorqueRange(30, 45, OwnersTorques2017));

        public static TorqueFigure FrontThruAxle { get; } = new("thru-axle-front", "front thru-axle", new(9, 15, Memory, "10 to 15 usual"), new(12, 15, BoltTorqueGuide), new(9, 9, HexAxlePage, "printed on one fork's hex axle", true)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Note = "Read the figure on the axle." };

        public static TorqueFigure RearThruAxle { get; } = new("thru-axle-rear", "rear thru-axle", new(9, 15, Memory, "10 to 15 usual"), new(12, 18, BoltTorqueGuide)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Note = "Read the figure on the axle." };

        public static TorqueFigure BottleCage { get; } = new("bottle-cage", "bottle cage, M5", new(2, 4, Memory), new(2, 2, CarbonRoadTorques, "carbon frames", true));

        public static ImmutableArray<TorqueFigure> All { get; } =
        [
            RotorLockring, RotorBolts, CaliperBolts, CaliperBody, AdapterBolts, FlatMountBolts, RimCaliperRear, RimCaliperFront, ArmBolt, PadLinear,
            PadCaliper, BrakeCable, LeverClamp, HoseNut, Skewer, AxleNut, FrontThruAxle, RearThruAxle, BottleCage,
        ];
    }
}
