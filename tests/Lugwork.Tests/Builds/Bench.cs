namespace Lugwork.Tests.Builds;

/// <summary>Two parts on the bench: what one joint says of them.</summary>
internal static class Bench
{
    public static Fit Judge(string joint, string frame, params (Slot Slot, Part Part)[] parts)
    {
        Build build = Build.From(Frame.Read(frame));
        foreach ((Slot slot, Part part) in parts)
        {
            build = build.OfFile(part, slot);
        }

        return build.Check().Findings.Single(f => f.Joint!.Id == joint);
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
        Judge("rear-caliper-on-mount", frame, (Slot.RearCaliper, Caliper.Read(caliper)), (Slot.RearRotor, Rotor.Read(rotor))).Verdict;

    /// <summary>A whole bicycle with a part in every slot, of which everything is known and everything fits: cable discs and rim brakes under the same levers.</summary>
    public static Build WholeBicycle() => Whole;

    /// <summary>Rows that speak of the same in place of others, where a part asks for it, and those that give way to them here.</summary>
    public static string[] NotInTheWholeBicycle { get; } = ["bottom-bracket-spacers-with-front-derailleur", "bottom-bracket-spacers-with-guide", "chain-reaches-with-ring", "chain-taken-up-with-ring", "crank-across-shell", "derailleur-capacity-with-ring", "front-rim-wear", "guide-on-bottom-bracket", "head-angle-not-too-slack", "insertion-at-saddle-height", "rear-rim-wear", "ring-on-bare-crank", "standover"];

    private static Build Whole { get; } = Slot.All.Where(s => s != Slot.Frame && s != Slot.Rider).Aggregate(WholeParts(), (build, slot) => build.OfFile(build[slot]! with { Condition = Known<PartCondition>.Of(PartCondition.New) }, slot));

    private static Build WholeParts() => Build.From(Frame.Read("condition new; smallest outer ring 46; down tube drop none; rear hose side either; cable guides full-length; kind gravel; rear 12x142; rear axle thread M12x1.5; material carbon; seatTube 27.2; seat tube outside 31.8; leastInsertion 80; mostInsertion 210; rearBrake PM-160; largestRearRotor 180; head tube ZS44|ZS56; shell BSA 68; hanger M10x1; largest tyre 42-622; rear bosses none; rear boss spacing none; rear brake hole recessed-6; rear bolt to rim 52; rear bolt to rim of 622; rear stay thickness none; rear axle length 163; rear slot none; front derailleur 31.8; guide tabs ISCG05; largest ring 48; shock 210x55; lower shock hardware 22.2x8; upper shock hardware 22.2x8; longest fork 400; most fork travel none; fork crowns single; upper bore depth 20; lower bore depth 20; headset cables outside; shell face bare; shell bore none; binder collar; dropper entry hole; load limit 120 kg; system limit 135 kg; use condition 3; chainstay 430; head tube length 130; seat tube length 500; front centre 630; bottom bracket drop 70; standover 780; front wheel of 622; rear wheel of 622; shortest fork 380; fork of the design 390; head angle 71; wheelbase 1020; slackest head angle 69; steepest head angle 73"))
        .With(Fork.Read("knob rise 5; material carbon; front 12x100; brake PM-160; largest rotor 180; steerer shape tapered 1-1/8 to 1.5; steerer kind threadless; axle thread M12x1.5; largest tyre 45-622; bosses none; boss spacing none; brake hole recessed-6; bolt to rim 50; bolt to rim of 622; axle length 127; lips none; axle to crown 395; travel none; steerer material aluminium; load limit 120 kg; system limit none; use condition 3; steerer length 200; most spacers 40"))
        .With(Wheel.Read("sprocket line 47; rim material aluminium; rim wall 1.6; hub F100-12; ends swappable; six-bolt; beadSeat 622; innerWidth 21; rimType TC; brake track aluminium; hub brake none; axle thread M9x1; washers none; hub holes 28; rim holes 28; hold clincher; valve hole 6.5; rim depth 24; bed hole 9; load limit none; system limit 130 kg; use condition 2"), Slot.FrontWheel)
        .With(Wheel.Read("sprocket line 47; rim material aluminium; rim wall 1.6; hub R142-12; ends swappable; body HG-M; six-bolt; beadSeat 622; innerWidth 21; rimType TC; brake track aluminium; hub brake none; axle thread M10x1; washers none; hub holes 28; rim holes 28; hold clincher; valve hole 6.5; rim depth 24; bed hole 9; load limit none; system limit 130 kg; use condition 2"), Slot.RearWheel)
        .With(Tyre.Read("40-622; folding; clincher"), Slot.FrontTyre)
        .With(Tyre.Read("40-622; folding; clincher"), Slot.RearTyre)
        .With(Cassette.Read("9-speed HG; smallest sprocket 11; largest sprocket 28"))
        .With(Rotor.Read("160; six-bolt; lockring none; carrier none; thickness 1.8; least thickness 1.5"), Slot.FrontRotor)
        .With(Rotor.Read("160; six-bolt; lockring none; carrier none; thickness 1.8; least thickness 1.5"), Slot.RearRotor)
        .With(Caliper.Read("post; type disc-cable-road; fluid none; thickest rotor 1.9; thinnest rotor 1.5; bolt length none; adapter none; adapter on none; second adapter none"), Slot.FrontCaliper)
        .With(Caliper.Read("post; type disc-cable-road; fluid none; thickest rotor 1.9; thinnest rotor 1.5; bolt length none; adapter none; adapter on none; second adapter none"), Slot.RearCaliper)
        .OfFile(Seatpost.Read("27.2 x 350; mark 75; insertion 110; rails 7-round; material aluminium; binder gap 2; rider limit 115 kg; system limit none; use condition 4"), Slot.Seatpost)
        .With(ThruAxle.Read("M12x1.5; length 127"), Slot.FrontThruAxle)
        .With(ThruAxle.Read("M12x1.5; length 163"), Slot.RearThruAxle)
        .With(Headset.Read("upper ZS44/28.6; lower ZS56/40; threadless; upper skirt 12; lower skirt 12; upper bearing 30.15x41x6.5-36/45; lower bearing 40x52x7-45/45; upper stack 12; lower stack 10"))
        .With(Stem.Read("material aluminium; 28.6 clamp; bar 31.8; mark none; insertion none; rider limit 115 kg; system limit none; use condition 3; clamp height 40; spacers below 10; spacers above 5"))
        .With(Handlebar.Read("material aluminium; width 740; 31.8; grip 22.2; rider limit none; system limit 140 kg; use condition 3"))
        .With(SeatClamp.Read("31.8"))
        .With(Saddle.Read("7 mm round; depth 45"))
        .With(BottomBracket.Read("shell BSA 68-73; takes 24; drive spacer none; designated width none"))
        .OfFile(Crankset.Read("ring line 46; shell width 68; material aluminium; spindle 24-road; pedals 9/16; rings 9; bolt circle 5x110; direct mount 8-bolt; largest ring 46; chainline gravel-2x; designed width none; smallest ring 34; crank length 170; Q factor 146"), Slot.Crankset)
        .With(Pedals.Read("9/16; height 16; reach 62"))
        .With(Chain.Read("9-speed; pitches 108; over 24 pitches 304.9"))
        .With(BrakeLever.Read("pull short; fluid none; hose length 900; hand left"), Slot.FrontBrakeLever)
        .With(BrakeLever.Read("pull short; fluid none; hose length 900; hand right"), Slot.RearBrakeLever)
        .With(RimBrake.Read("road caliper; reach 47-57; bolt recessed; pads for aluminium"), Slot.FrontRimBrake)
        .With(RimBrake.Read("road caliper; reach 47-57; bolt recessed; pads for aluminium"), Slot.RearRimBrake)
        .With(AxleNuts.Read("M9x1"), Slot.FrontAxleNuts)
        .With(AxleNuts.Read("M10x1"), Slot.RearAxleNuts)
        .With(RearDerailleur.Read("M10 bolt; chain 9; cable; pull R; capacity 33; largest sprocket 34; smallest sprocket 11; chain allowance 2"))
        .With(Shifter.Read("cable; pull R; spacing 9; with derailleur allowed; with sprockets none; housing length 1500"), Slot.RearShifter)
        .With(Shifter.Read("cable; pull R; spacing none; with derailleur allowed; with sprockets none; housing length 1500"), Slot.FrontShifter)
        .With(FrontDerailleur.Read("31.8; speeds 9; chainline gravel-2x; cable; difference 16"))
        .With(ChainGuide.Read("ISCG05"))
        .With(Chainring.Read("bolt circle 5x110; direct mount none; teeth 46; speeds 9"))
        .With(Shock.Read("size 210x55; lower hardware 22.2x8; upper hardware 22.2x8; eyelet 12.7; bush 12.7"))
        .With(InnerTube.Read("622; other seat none; tyres from 28; tyres to 47; Presta; valve length 48"), Slot.FrontInnerTube)
        .With(InnerTube.Read("622; other seat none; tyres from 28; tyres to 47; Presta; valve length 48"), Slot.RearInnerTube)
        .With(TubelessValve.Read("Presta; length 44"), Slot.FrontTubelessValve)
        .With(TubelessValve.Read("Presta; length 44"), Slot.RearTubelessValve)
        .With(RimTape.Read("width 21"), Slot.FrontRimTape)
        .With(RimTape.Read("width 21"), Slot.RearRimTape)
        .With(HeadsetCartridge.Read("30.15x41x6.5-36/45"), Slot.UpperBearing)
        .With(HeadsetCartridge.Read("40x52x7-45/45"), Slot.LowerBearing)
        .With(HeadsetCover.Read("outside"))
        .With(Preload.Read("star nut"))
        .With(Controls.Read("flat-bar control"))
        .With(Grips.Read("22.2"))
        .With(ShellAdapter.Read("outboard"))
        .With(Dropper.Read("internal; travel 80; stack 40; housing length 1400"))
        .With(Rider.Read("82 kg; with luggage 95 kg; system 108 kg; use condition 2; saddle height 740; inseam 820; front brake hand left"));
}
