using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Workshop;

/// <summary>Whole bicycles of several kinds, whose parts mate as far as they are stated: what a plan has to cope with.</summary>
internal static class Bicycle
{
    public static Build[] All { get; } = [Bench.WholeBicycle(), City(), Belt(), Trail(), Track(), ThreeSpeed(), Hanging(), Racer()];

    /// <summary>Quill stem, threaded steerer, coaster hub of one speed, nuts in level slots, loose cups.</summary>
    private static Build City() => Build.From(Frame.Read("kind city; material steel; rear R120; rear slot horizontal; hanger no-hanger; shell BSA 68; seatTube 27.2; seat tube outside 28.6; shock none; rear brake none; rear bosses none; binder collar; head tube EC34/EC34"), "city")
        .With(Fork.Read("front unknown; material steel; steerer kind threaded; steerer material steel; brake none; travel none; brake hole nutted-6"))
        .With(Headset.Read("kind threaded")).With(Stem.Read("quill-22.2; bar 25.4; material steel")).With(Handlebar.Read("25.4; grip 22.2; material steel; width 600"))
        .With(Wheel.Read("beadSeat 622; innerWidth 19; hub brake none; hold clincher"), Slot.FrontWheel).With(Wheel.Read("hub R120; body 3-lug; hub brake coaster; beadSeat 622; innerWidth 19; hold clincher"), Slot.RearWheel)
        .With(AxleNuts.Read("3/8x24"), Slot.RearAxleNuts).With(Cassette.Read("3-lug")).With(Chain.Read("1/8"))
        .With(Tyre.Read("37-622; wired; clincher"), Slot.FrontTyre).With(Tyre.Read("37-622; wired; clincher"), Slot.RearTyre).With(InnerTube.Read("622"), Slot.FrontInnerTube).With(InnerTube.Read("622"), Slot.RearInnerTube)
        .With(Seatpost.Read("27.2; material steel")).With(SeatClamp.Read("28.6")).With(Saddle.Read("7 mm round"))
        .With(BottomBracket.Read("BSA; takes square-JIS")).With(Crankset.Read("spindle square-JIS")).With(Pedals.Read("9/16"))
        .With(RimBrake.Read("type rim-caliper"), Slot.FrontRimBrake).With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever).With(Grips.Read("22.2"));

    /// <summary>Belt, hub gear with its own carrier, fluid discs, eccentric shell.</summary>
    private static Build Belt() => Build.From(Frame.Read("kind touring; material aluminium; rear R135-QR; rear slot vertical; rear triangle opens; hanger no-hanger; shell BSA 73; seatTube 31.6; seat tube outside 34.9; shock none; rearBrake PM-160; binder collar"), "belt")
        .With(Fork.Read("front F100-15; material aluminium; steerer kind threadless; steerer material aluminium; travel none; brake PM-160")).With(Headset.Read("threadless")).With(Preload.Read("star nut"))
        .With(Stem.Read("28.6 clamp; bar 31.8; material aluminium")).With(Handlebar.Read("31.8; grip 22.2; material carbon; width 700")).With(Controls.Read("flat-bar control"))
        .With(Wheel.Read("hub F100-15; six-bolt"), Slot.FrontWheel).With(Wheel.Read("hub R135-QR; body IGH-own; six-bolt; hub brake none"), Slot.RearWheel)
        .With(Cassette.Read("carrier")).With(Chain.Read("belt")).With(Crankset.Read("spindle 24-MTB; rings belt")).With(BottomBracket.Read("BSA; takes 24")).With(Pedals.Read("9/16"))
        .With(Rotor.Read("160; six-bolt"), Slot.FrontRotor).With(Rotor.Read("160; six-bolt"), Slot.RearRotor).With(Caliper.Read("post; fluid mineral"), Slot.FrontCaliper).With(Caliper.Read("post; fluid mineral"), Slot.RearCaliper)
        .With(BrakeLever.Read("fluid mineral"), Slot.FrontBrakeLever).With(BrakeLever.Read("fluid mineral"), Slot.RearBrakeLever).With(Shifter.Read("cable"), Slot.RearShifter)
        .With(Seatpost.Read("31.6; material aluminium")).With(SeatClamp.Read("34.9")).With(Saddle.Read("7 mm round")).With(Grips.Read("22.2"));

    /// <summary>Rear suspension, universal hanger with a derailleur round the axle, cassette with its own thread, pressed shell, tubeless, dropper.</summary>
    private static Build Trail() => Build.From(Frame.Read("kind full-suspension; material carbon; rear R148-12; hanger UDH; rearAxleThread M12x1.0; rear slot none; shell PF41 89.5; seatTube 31.6; seat tube outside 34.9; shock 210x55; rearBrake PM-180; binder collar; headset cables through"), "trail")
        .With(Fork.Read("front F110-15B; material aluminium; steerer kind threadless; steerer material aluminium; travel 140; brake PM-180")).With(Headset.Read("threadless")).With(HeadsetCover.Read("through")).With(Preload.Read("star nut"))
        .With(Stem.Read("28.6 clamp; bar 35; material aluminium")).With(Handlebar.Read("35; grip 22.2; material carbon; width 780")).With(Controls.Read("flat-bar control")).With(Grips.Read("22.2"))
        .With(Wheel.Read("hub F110-15B; six-bolt; beadSeat 622; innerWidth 30"), Slot.FrontWheel).With(Wheel.Read("hub R148-12; body XD; six-bolt; beadSeat 622; innerWidth 30"), Slot.RearWheel)
        .With(Tyre.Read("60-622; tubeless"), Slot.FrontTyre).With(Tyre.Read("60-622; tubeless"), Slot.RearTyre).With(TubelessValve.Read("Presta"), Slot.FrontTubelessValve).With(TubelessValve.Read("Presta"), Slot.RearTubelessValve)
        .With(InnerTube.Read("622"), Slot.RearInnerTube).With(RimTape.Read("width 35"), Slot.FrontRimTape)
        .With(Cassette.Read("XD")).With(Chain.Read("12-speed")).With(RearDerailleur.Read("hangerless; wireless")).With(Shifter.Read("wireless"), Slot.RearShifter)
        .With(Crankset.Read("spindle 28.99; rings 12")).With(BottomBracket.Read("PF41; takes 28.99")).With(Pedals.Read("9/16"))
        .With(Rotor.Read("180; six-bolt"), Slot.FrontRotor).With(Rotor.Read("180; six-bolt"), Slot.RearRotor).With(Caliper.Read("post; fluid DOT"), Slot.FrontCaliper).With(Caliper.Read("post; fluid DOT"), Slot.RearCaliper)
        .With(BrakeLever.Read("fluid DOT"), Slot.FrontBrakeLever).With(BrakeLever.Read("fluid DOT"), Slot.RearBrakeLever)
        .With(Seatpost.Read("31.6; material aluminium")).With(Dropper.Read("internal")).With(SeatClamp.Read("34.9")).With(Saddle.Read("7x9")).With(Shock.Read("210x55"));

    /// <summary>Fixed sprocket, tubular tyres, drop bar, one front brake.</summary>
    private static Build Track() => Build.From(Frame.Read("kind track; material steel; rear R120; rear slot horizontal; hanger no-hanger; shell BSA 68; seatTube 27.2; seat tube outside 28.6; shock none; rear brake none; rear brake hole none; rear bosses none; binder welded-tabs"), "track")
        .With(Fork.Read("front unknown; material carbon; steerer kind threadless; steerer material carbon; brake none; travel none; brake hole recessed-6")).With(Headset.Read("threadless")).With(Preload.Read("expander"))
        .With(Stem.Read("28.6 clamp; bar 31.8; material aluminium")).With(Handlebar.Read("31.8; grip 23.8; material aluminium")).With(Controls.Read("drop-bar lever"))
        .With(Wheel.Read("hold tubular; hub brake none"), Slot.FrontWheel).With(Wheel.Read("hub R120; body TRACK; thread track; hold tubular; hub brake none"), Slot.RearWheel).With(AxleNuts.Read("M10x1"), Slot.RearAxleNuts)
        .With(Tyre.Read("hold tubular"), Slot.FrontTyre).With(Tyre.Read("hold tubular"), Slot.RearTyre)
        .With(Cassette.Read("fixed-sprocket; thread track; lockring lockring")).With(Chain.Read("1/8")).With(Crankset.Read("spindle square-ISO")).With(BottomBracket.Read("BSA; takes square-ISO")).With(Pedals.Read("9/16"))
        .With(RimBrake.Read("type rim-caliper; bolt recessed"), Slot.FrontRimBrake).With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever)
        .With(Seatpost.Read("27.2; material aluminium")).With(Saddle.Read("7 mm round"));

    /// <summary>Gears in the hub, nuts in level slots, a roller brake.</summary>
    private static Build ThreeSpeed() => City().With(Wheel.Read("hub R120; body hub gear; hub brake roller; beadSeat 622; innerWidth 19; hold clincher"), Slot.RearWheel).With(Cassette.Read("3-lug")).With(Shifter.Read("cable"), Slot.RearShifter).With(BrakeLever.Read("pull short"), Slot.RearBrakeLever);

    /// <summary>The universal hanger with a derailleur that hangs on it.</summary>
    private static Build Hanging() => Trail().With(RearDerailleur.Read("M10 bolt; wireless"));

    /// <summary>Flat-mount calipers with fluid, a carbon steerer with its expander, a pressed shell, and a derailleur with a cable.</summary>
    private static Build Racer() => Build.From(Frame.Read("kind road; material carbon; rear R142-12; rearAxleThread M12x1.5; rear slot none; hanger M10; shell BB86; seatTube 27.2; seat tube outside 31.8; shock none; rearBrake FM-rear-140; binder collar"), "racer")
        .With(Fork.Read("front F100-12; material carbon; steerer kind threadless; steerer material carbon; brake FM-front-140; travel none")).With(Headset.Read("threadless")).With(Preload.Read("expander")).With(Stem.Read("28.6 clamp; bar 31.8; material aluminium"))
        .With(Handlebar.Read("31.8; grip 23.8; material carbon; width 420")).With(Controls.Read("drop-bar lever")).With(BrakeLever.Read("fluid mineral"), Slot.FrontBrakeLever).With(BrakeLever.Read("fluid mineral"), Slot.RearBrakeLever).With(Shifter.Read("cable"), Slot.RearShifter)
        .With(Wheel.Read("hub F100-12; center-lock"), Slot.FrontWheel).With(Wheel.Read("hub R142-12; body HG-L; center-lock"), Slot.RearWheel).With(Cassette.Read("11-speed HG road")).With(Chain.Read("11-speed")).With(RearDerailleur.Read("M10 bolt; chain 11; cable"))
        .With(Rotor.Read("160; center-lock"), Slot.FrontRotor).With(Rotor.Read("140; center-lock"), Slot.RearRotor).With(Caliper.Read("flat; fluid mineral"), Slot.FrontCaliper).With(Caliper.Read("flat; fluid mineral"), Slot.RearCaliper)
        .With(BottomBracket.Read("BB86; takes 24")).With(Crankset.Read("spindle 24-road; rings 11")).With(Pedals.Read("9/16")).With(Seatpost.Read("27.2; material carbon")).With(SeatClamp.Read("31.8")).With(Saddle.Read("7 mm round"));
}
