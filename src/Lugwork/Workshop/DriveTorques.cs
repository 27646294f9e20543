using System.Collections.Immutable;
using static Lugwork.Sources;

namespace Lugwork.Workshop;

/// <summary>Torque of crank, bottom bracket and gears.</summary>
public static partial class TorqueTable
{
    internal static class DriveTorques
    {
        private static readonly TorqueRange Generic = new(34.5m, 44.2m, CargoBoltList, "crank bolts in general");

        private static readonly TorqueRange LargeBolt = new(39.5m, 49.2m, ShopTorqueTable, "large single bolt", true);

        public static TorqueFigure CrankSquare { get; } = new("crank-square-taper", "crank bolt, square taper", new(35, 50, OwnersTorques2017), Generic, LargeBolt) { Treatment = ThreadTreatment.AsMakerSays, Note = "The taper itself is kept free of grease by the page of 2017; makers differ." };

        public static TorqueFigure CrankEight { get; } = new("crank-8-spline", "crank bolt, 8 splines", new(35, 50, OwnersTorques2017), Generic, LargeBolt);

        public static TorqueFigure CrankTen { get; } = new("crank-10-spline", "crank bolt, 10 splines", new TorqueRange(31, 34, OwnersTorques2017));

        public static TorqueFigure CrankPinch { get; } = new("crank-pinch-bolts", "two pinch bolts of a crank on a 24 mm spindle", new(12, 15, FrameMakersTorques), new(12, 15, OwnersTorques2017), new(12, 15, ShopTorqueTable), new(12, 14, PinchBoltNote)) { Note = "Alternate between the two; set the preload cap first." };

        public static TorqueFigure PreloadCap { get; } = new("crank-preload-cap", "preload cap of a crank on a 24 mm spindle", new TorqueRange(0.4m, 0.7m, Memory)) { IsByHand = true, Note = "By hand, until the side play is gone." };

        public static TorqueFigure CrankStepped { get; } = new("crank-stepped", "crank bolt, stepped 24/22 spindle, self-extracting", new TorqueRange(48, 54, OwnersTorques2017));

        public static TorqueFigure CrankThirty { get; } = new("crank-30", "crank bolt, 28.99 or 30 mm spindle, one bolt", new(47, 54, FrameMakersTorques), new(47, 54, Memory));

        public static TorqueFigure CrankGeneric { get; } = new("crank-bolt", "crank bolt in general", new(34.5m, 44.2m, CargoBoltList), LargeBolt);

        public static TorqueFigure RingBoltsAluminium { get; } = new("ring-bolts-aluminium", "chainring bolts, aluminium", new(8, 9, FrameMakersTorques), new(5, 9.9m, CargoBoltList), new(8, 11, OwnersTorques2017)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Either = "ring", IsCovered = true };

        public static TorqueFigure RingBoltsSteel { get; } = new("ring-bolts-steel", "chainring bolts, steel", new(12, 14, FrameMakersTorques), new(7.9m, 10.7m, CargoBoltList), new(12, 14, OwnersTorques2017)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Either = "ring", IsCovered = true };

        public static TorqueFigure BracketSquare { get; } = new("bracket-square-taper", "bottom-bracket cartridge, square taper", new TorqueRange(49, 69, OwnersTorques2017)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true, OnlyWhere = "where it is a cartridge" };

        public static TorqueFigure BracketEight { get; } = new("bracket-8-spline", "bottom-bracket cartridge, 8 splines", new TorqueRange(50, 70, OwnersTorques2017)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true };

        public static TorqueFigure BracketOutboard { get; } = new("bracket-outboard", "bottom-bracket cups outboard, 24 mm", new(35, 50, OwnersTorques2017), new(32.9m, 40.7m, FrameMakersTorques, "cups in general"), new(32.9m, 40.7m, ShopTorqueTable, "cups in general")) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true };

        public static TorqueFigure BracketStepped { get; } = new("bracket-outboard-stepped", "bottom-bracket cups outboard, stepped spindle", new TorqueRange(34, 41, OwnersTorques2017)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true };

        public static TorqueFigure BracketCups { get; } = new("bracket-cups", "bottom-bracket cups in general", new(32.9m, 40.7m, FrameMakersTorques), new(32.9m, 40.7m, ShopTorqueTable)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true };

        public static TorqueFigure BracketEccentric { get; } = new("bracket-eccentric", "bolts of an eccentric shell", new TorqueRange(8.5m, 11.3m, FrameMakersTorques));

        public static TorqueFigure Pedal { get; } = new("pedal", "pedal in the crank", new TorqueRange(34.7m, 39.5m, CargoBoltList)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Note = "The left pedal has a left-hand thread." };

        public static TorqueFigure CassetteLockring { get; } = new("cassette-lockring", "lockring of the cassette", new(30, 50, FrameMakersTorques), new(29, 49, OwnersTorques2017), new(40, 40, OwnersTorques2017, "a second maker")) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true };

        public static TorqueFigure RearDerailleur { get; } = new("rear-derailleur", "rear derailleur on its hanger", new(8, 10, OwnersTorques2017), new(7.9m, 9.6m, FrameMakersTorques), new(10, 12, PrintedTorque, "one 12-speed family", true)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice };

        public static TorqueFigure RearCable { get; } = new("rear-derailleur-cable", "cable clamp of the rear derailleur", new TorqueRange(4, 7, OwnersTorques2017));

        public static TorqueFigure Pulley { get; } = new("pulley-bolt", "pulley bolt", new TorqueRange(3, 4, OwnersTorques2017));

        public static TorqueFigure FrontBand { get; } = new("front-derailleur-band", "band of the front derailleur", new(2.8m, 4, FrameMakersTorques), new(5, 7, OwnersTorques2017)) { Note = "Thin aluminium and carbon tubes take the low figure.", Either = "front-derailleur" };

        public static TorqueFigure FrontBrazeOn { get; } = new("front-derailleur-braze-on", "front derailleur on a braze-on tab", new TorqueRange(4.9m, 7, FrameMakersTorques, "taken from this page and an owner's manual of 2017 together")) { Either = "front-derailleur" };

        public static TorqueFigure FrontCable { get; } = new("front-derailleur-cable", "cable clamp of the front derailleur", new TorqueRange(5, 6.8m, CargoBoltList, "taken from this page and an owner's manual of 2017 together"));

        public static TorqueFigure HangerBolts { get; } = new("hanger-bolts", "bolts of a derailleur hanger, M3 to M4", new(1, 4, Memory), new(1, 1, CarbonRoadTorques, "one maker")) { OnlyWhere = "where the hanger is a part of its own" };

        public static TorqueFigure UniversalHanger { get; } = new("universal-hanger-bolt", "bolt of a universal hanger", new TorqueRange(25, 25, Memory)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, IsCovered = true };

        public static TorqueFigure ShifterClamp { get; } = new("shifter-clamp", "shifter on a flat bar", new TorqueRange(2.5m, 5, OwnersTorques2017));

        public static ImmutableArray<TorqueFigure> All { get; } =
        [
            CrankSquare, CrankEight, CrankTen, CrankPinch, PreloadCap, CrankStepped, CrankThirty, CrankGeneric, RingBoltsAluminium, RingBoltsSteel,
            BracketSquare, BracketEight, BracketOutboard, BracketStepped, BracketCups, BracketEccentric, Pedal, CassetteLockring,
            RearDerailleur, RearCable, Pulley, FrontBand, FrontBrazeOn, FrontCable, HangerBolts, UniversalHanger, ShifterClamp,
        ];
    }
}
