namespace Lugwork.Tests.Builds;

/// <summary>Two parts on the bench: what one joint says of them.</summary>
internal static class Bench
{
    public static Fit Judge(string joint, string frame, params (Slot Slot, Part Part)[] parts)
    {
        Build build = Build.From(Frame.Read(frame));
        foreach ((Slot slot, Part part) in parts)
        {
            build = build.With(part, slot);
        }

        return build.Check().Fits.Single(f => f.Joint!.Id == joint);
    }

    public static Verdict RearWheel(string frame, string wheel) => Judge("rear-wheel-in-frame", frame, (Slot.RearWheel, Wheel.Read(wheel))).Verdict;

    public static Verdict FrontWheel(string fork, string wheel) =>
        Judge("front-wheel-in-fork", "material steel", (Slot.Fork, Fork.Read(fork)), (Slot.FrontWheel, Wheel.Read(wheel))).Verdict;

    public static Verdict Post(string frame, string post) => Judge("seatpost-in-seat-tube", frame, (Slot.Seatpost, Seatpost.Read(post))).Verdict;

    public static Verdict Insertion(string frame, string post) => Judge("seatpost-insertion", frame, (Slot.Seatpost, Seatpost.Read("27.2; " + post))).Verdict;

    public static Verdict Room(string frame, string post) => Judge("seatpost-room-in-seat-tube", frame, (Slot.Seatpost, Seatpost.Read(post))).Verdict;

    public static Verdict CassetteOn(string wheel, string cassette) =>
        Judge("cassette-on-freehub-body", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.Cassette, Cassette.Read(cassette))).Verdict;

    public static Verdict TyreBead(string wheel, string tyre) =>
        Judge("rear-tyre-bead-on-rim", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearTyre, Tyre.Read(tyre))).Verdict;

    public static Verdict TyreWidth(string wheel, string tyre) =>
        Judge("rear-tyre-width-on-rim", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearTyre, Tyre.Read(tyre))).Verdict;

    public static Verdict RotorLimit(string frame, string rotor) => Judge("rear-rotor-within-limit", frame, (Slot.RearRotor, Rotor.Read(rotor))).Verdict;

    public static Verdict Fixing(string wheel, string rotor) =>
        Judge("rear-rotor-on-hub", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearRotor, Rotor.Read(rotor))).Verdict;

    public static Verdict OnMount(string frame, string caliper, string rotor) =>
        Judge("rear-caliper-on-mount", frame, (Slot.RearBrake, Caliper.Read(caliper)), (Slot.RearRotor, Rotor.Read(rotor))).Verdict;

    /// <summary>A whole bicycle of which everything is known and everything fits.</summary>
    public static Build WholeBicycle() => Build.From(Frame.Read("kind gravel; rear 12x142; rear axle thread M12x1.5; material carbon; seatTube 27.2; seat tube outside 31.8; leastInsertion 80; mostInsertion 210; rearBrake PM-160; largestRearRotor 180; head tube ZS44|ZS56; shell BSA 68; hanger M10x1; largest tyre 42-622; upper bore depth 20; lower bore depth 20; headset cables outside; shell face bare; shell bore none; binder collar; dropper entry hole"))
        .With(Fork.Read("front 12x100; brake PM-160; largest rotor 180; steerer shape tapered 1-1/8 to 1.5; steerer kind threadless; axle thread M12x1.5; largest tyre 45-622; steerer material aluminium"))
        .With(Wheel.Read("hub F100-12; ends swappable; six-bolt; beadSeat 622; innerWidth 21; rimType TC; hold clincher; valve hole 6.5; rim depth 24; bed hole 9"), Slot.FrontWheel)
        .With(Wheel.Read("hub R142-12; ends swappable; body HG-M; six-bolt; beadSeat 622; innerWidth 21; rimType TC; hold clincher; valve hole 6.5; rim depth 24; bed hole 9"), Slot.RearWheel)
        .With(Tyre.Read("40-622; folding; clincher"), Slot.FrontTyre)
        .With(Tyre.Read("40-622; folding; clincher"), Slot.RearTyre)
        .With(Cassette.Read("9-speed HG"))
        .With(Rotor.Read("160; six-bolt"), Slot.FrontRotor)
        .With(Rotor.Read("160; six-bolt"), Slot.RearRotor)
        .With(Caliper.Read("post"), Slot.FrontBrake)
        .With(Caliper.Read("post"), Slot.RearBrake)
        .With(Seatpost.Read("27.2 x 350; mark 75; insertion 110; rails 7-round; material aluminium; binder gap 2"))
        .With(ThruAxle.Read("M12x1.5"), Slot.FrontAxle)
        .With(ThruAxle.Read("M12x1.5"), Slot.RearAxle)
        .With(Headset.Read("upper ZS44/28.6; lower ZS56/40; threadless; upper skirt 12; lower skirt 12; upper bearing 30.15x41x6.5-36/45; lower bearing 40x52x7-45/45"))
        .With(Stem.Read("28.6 clamp; bar 31.8; mark none; insertion none"))
        .With(Handlebar.Read("31.8; grip 22.2"))
        .With(SeatClamp.Read("31.8"))
        .With(Saddle.Read("7 mm round"))
        .With(BottomBracket.Read("shell BSA 68-73; takes 24; designated width none"))
        .With(Crankset.Read("spindle 24-road; pedals 9/16; rings 9; designed width none"))
        .With(Pedals.Read("9/16"))
        .With(Chain.Read("9-speed"))
        .With(RearDerailleur.Read("M10 bolt; chain 9"))
        .With(InnerTube.Read("622; other seat none; tyres from 28; tyres to 47; Presta; valve length 48"), Slot.FrontTube)
        .With(InnerTube.Read("622; other seat none; tyres from 28; tyres to 47; Presta; valve length 48"), Slot.RearTube)
        .With(TubelessValve.Read("Presta; length 44"), Slot.FrontValve)
        .With(TubelessValve.Read("Presta; length 44"), Slot.RearValve)
        .With(RimTape.Read("width 21"), Slot.FrontRimTape)
        .With(RimTape.Read("width 21"), Slot.RearRimTape)
        .With(HeadsetCartridge.Read("30.15x41x6.5-36/45"), Slot.UpperBearing)
        .With(HeadsetCartridge.Read("40x52x7-45/45"), Slot.LowerBearing)
        .With(HeadsetCover.Read("outside"))
        .With(Preload.Read("star nut"))
        .With(Controls.Read("flat-bar control"))
        .With(Grips.Read("22.2"))
        .With(ShellAdapter.Read("outboard"))
        .With(Dropper.Read("internal"));
}
