using System.Collections.Immutable;
using static Lugwork.Sources;

namespace Lugwork.Workshop;

/// <summary>Torque of the fasteners of a bicycle, by every page that was read. Each row says what disagrees; the maker's figure rules.</summary>
public static partial class TorqueTable
{
    /// <summary>Every row.</summary>
    public static ImmutableArray<TorqueFigure> All { get; } = [.. SteeringTorques.All, .. DriveTorques.All, .. BrakeTorques.All];

    /// <summary>The row of an id; null where there is none.</summary>
    /// <param name="id">Its id.</param>
    public static TorqueFigure? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return All.FirstOrDefault(f => f.Id == id);
    }

    internal static class SteeringTorques
    {
        public static TorqueFigure StemOnSteerer { get; } = new("stem-on-steerer", "stem on a threadless steerer, M5 bolts", new(4, 6, CommonPractice), new(5, 7, BoltTorqueGuide), new(4, 5, CarbonRoadTorques, "one maker of carbon road frames")) { Note = "Old stems with large bolts take another row.", Either = "stem" };

        public static TorqueFigure StemOnCarbon { get; } = new("stem-on-carbon-steerer", "stem on a carbon steerer, M5 bolts", new(4, 6, CommonPractice, "its lower end on carbon"), new(5, 7, BoltTorqueGuide), new(4, 5, CarbonRoadTorques, "one maker of carbon road frames")) { Treatment = ThreadTreatment.AssemblyPaste, TreatmentSource = CommonPractice };

        public static TorqueFigure StemOnSteererOld { get; } = new("stem-on-steerer-old", "stem on a threadless steerer, older steel or aluminium stem with large bolts", new TorqueRange(13.6m, 16.3m, CargoBoltList)) { Note = "Never for M5 bolts.", Either = "stem" };

        public static TorqueFigure Faceplate { get; } = new("stem-faceplate", "faceplate of the stem, four M5 bolts", new(4, 6, CommonPractice), new(4, 6, BoltTorqueGuide)) { Note = "Crosswise, with an even gap.", Either = "bar" };

        public static TorqueFigure BarBinderOld { get; } = new("bar-binder-old", "handlebar binder of an older stem, large bolts", new TorqueRange(19.7m, 29.4m, CargoBoltList)) { Note = "Never for M5 bolts.", Either = "bar" };

        public static TorqueFigure QuillWedge { get; } = new("quill-wedge", "wedge bolt of a quill stem", new TorqueRange(19.7m, 29.4m, CargoBoltList)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice };

        public static TorqueFigure Locknut { get; } = new("headset-locknut", "locknut of a threaded headset", new TorqueRange(14.7m, 16.9m, CargoBoltList));

        public static TorqueFigure TopCap { get; } = new("top-cap", "bolt of the top cap", new(1, 3, CommonPractice), new(1, 2, BoltTorqueGuide, "only snug"), new(1, 2, CarbonRoadTorques, "only to remove play"), new(0.6m, 1.7m, TopCapThread, "instructions of the first threadless headset, as told"), new(2.8m, 4, TopCapThread, "another maker, as told")) { IsByHand = true, Note = "A setting, no torque: stop when the play is gone. It carries nothing." };

        public static TorqueFigure Expander { get; } = new("expander-plug", "expander in a carbon steerer", new(5, 10, Memory, "2 to 11 seen"), new(6, 6, TopCapThread, "its wedge bolt, not the preload bolt")) { IsCovered = true };

        public static TorqueFigure SeatBinder { get; } = new("seat-binder-metal", "seatpost binder, metal frame and post", new TorqueRange(9.6m, 14.1m, GuideTorques2002, "one maker"));

        public static TorqueFigure SeatCollarCarbon { get; } = new("seat-collar-carbon", "seat collar, carbon frame or post", new(4, 7, Memory), new(4, 4, CarbonRoadTorques, "collar of a carbon time-trial frame", true), new(6, 6, CarbonRoadTorques, "collar that is not round", true), new(8, 8, CarbonRoadTorques, "wedge instead of a collar", true)) { Treatment = ThreadTreatment.AssemblyPaste, TreatmentSource = Memory };

        public static TorqueFigure RailNuts { get; } = new("saddle-clamp-nuts", "saddle clamp with 13 or 14 mm nuts", new TorqueRange(20.3m, 24.9m, GuideTorques2002)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Either = "saddle" };

        public static TorqueFigure RailBolt { get; } = new("saddle-clamp-one-bolt", "saddle clamp with one 6 mm hex bolt", new TorqueRange(17, 28.3m, GuideTorques2002)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Either = "saddle" };

        public static TorqueFigure RailBolts { get; } = new("saddle-clamp-two-bolts", "saddle clamp with two 5 mm hex bolts", new TorqueRange(9.6m, 14.1m, GuideTorques2002)) { Treatment = ThreadTreatment.Grease, TreatmentSource = CommonPractice, Note = "The page prints 80 in\u00B7lbf as 9.6 N m; 80 in\u00B7lbf is 9.0 N m.", Either = "saddle" };

        public static TorqueFigure RailBinder { get; } = new("saddle-binder", "saddle rail binder in general", new TorqueRange(19.7m, 39.2m, CargoBoltList));

        public static TorqueFigure ShockBolts { get; } = new("shock-bolts", "shock mounting bolts M8, trunnion M10", new TorqueRange(8, 15, Memory)) { Note = "The frame maker decides." };

        public static ImmutableArray<TorqueFigure> All { get; } =
        [
            StemOnSteerer, StemOnCarbon, StemOnSteererOld, Faceplate, BarBinderOld, QuillWedge, Locknut, TopCap, Expander,
            SeatBinder, SeatCollarCarbon, RailNuts, RailBolt, RailBolts, RailBinder, ShockBolts,
        ];
    }
}
