using System.Collections.Immutable;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Tests.Builds;
using Lugwork.Tests.Geometry;
using UnitsNet;

namespace Lugwork.Tests.Drawing;

/// <summary>Builds of our own invention that are worth looking at, and every drawing of them.</summary>
internal static class Subjects
{
    /// <summary>A steel frame with a headset, post and crank that go together.</summary>
    public static Build Plain { get; } = Build.From(Frame.Read("kind touring; rear 135 QR; seatTube 27.2; seat tube outside 31.8; leastInsertion 80; mostInsertion 210; head tube EC34|EC34; head tube length 140; shell BSA 68; rearBrake IS-rear; largestRearRotor 180; largest tyre 42-622; chainstay 440"), "Plain tourer")
        .With(Fork.Read("front 100 QR; steerer shape straight 1-1/8; steerer kind threadless; brake IS-front; largest rotor 180; largest tyre 42-622; steerer length 230; axle to crown 390"))
        .With(Headset.Read("upper EC34/28.6; lower EC34/30; threadless; upper skirt 10; lower skirt 9; upper stack 16; lower stack 12"))
        .With(Seatpost.Read("27.2 x 350; mark 75; insertion 110"))
        .With(Wheel.Read("hub 135 QR; body HG-M; six-bolt; beadSeat 622; innerWidth 21; rimType TC; rim depth 22"), Slot.RearWheel)
        .With(Wheel.Read("hub 100 QR; six-bolt; beadSeat 622; innerWidth 19; rimType TC; rim depth 24"), Slot.FrontWheel)
        .With(Tyre.Read("37-622; folding"), Slot.RearTyre)
        .With(Tyre.Read("40-622; folding"), Slot.FrontTyre)
        .With(Cassette.Read("9-speed HG; smallest sprocket 11; largest sprocket 32"))
        .With(BottomBracket.Read("shell BSA 68-73; takes 24; drive spacer 2.5"))
        .OfFile(Crankset.Read("spindle 24-road; rings 9; largest ring 46; smallest ring 30; chainline gravel-2x; ring line 46.9"), Slot.Crankset)
        .With(Rotor.Read("160; six-bolt"), Slot.RearRotor)
        .With(Rotor.Read("180; six-bolt"), Slot.FrontRotor)
        .With(Caliper.Read("post"), Slot.RearCaliper)
        .With(Caliper.Read("post"), Slot.FrontCaliper);

    /// <summary>Nothing is known of it but that the parts are there.</summary>
    public static Build Unknown { get; } = Build.From(new Frame())
        .With(new Fork()).With(new Headset()).With(new Seatpost()).With(new Stem())
        .With(new Wheel(), Slot.RearWheel).With(new Wheel(), Slot.FrontWheel).With(new Tyre(), Slot.RearTyre).With(new Tyre(), Slot.FrontTyre)
        .With(new Cassette()).With(new BottomBracket()).With(new Crankset())
        .With(new Rotor(), Slot.RearRotor).With(new Rotor(), Slot.FrontRotor).With(new Caliper(), Slot.RearCaliper).With(new Caliper(), Slot.FrontCaliper);

    /// <summary>Nothing of it goes together.</summary>
    public static Build Unfit { get; } = Build.From(Frame.Read("rear 12x142; seatTube 27.2; mostInsertion 120; head tube EC34|EC34; head tube length 120; shell BSA 68; rearBrake PM-160; largestRearRotor 160; largest tyre 32-622; chainstay 425"), "Everything wrong")
        .With(Fork.Read("steerer 38.1; crown seat 39.8; brake PM-160; largest rotor 160; largest tyre 32-622"))
        .With(Headset.Read("upper ZS44/28.6; lower ZS56/40; upper skirt 12; lower skirt 12"))
        .With(Seatpost.Read("31.6 x 400; mark 110; insertion 90"))
        .With(Wheel.Read("hub 12x148; body XD; six-bolt; beadSeat 584; innerWidth 30; rimType TC"), Slot.RearWheel)
        .With(Wheel.Read("hub F100-12; six-bolt; beadSeat 584; innerWidth 30; rimType TC"), Slot.FrontWheel)
        .With(Tyre.Read("50-622; folding"), Slot.RearTyre)
        .With(Tyre.Read("50-622; folding"), Slot.FrontTyre)
        .With(Cassette.Read("pattern HG-11-road; smallest sprocket 11; largest sprocket 28"))
        .With(BottomBracket.Read("shell T47 85.5; takes 24; drive spacer none"))
        .With(Crankset.Read("spindle 30-long; rings 11; largest ring 50; chainline off-road-1x-55"))
        .With(Rotor.Read("203; six-bolt"), Slot.RearRotor)
        .With(Rotor.Read("203; six-bolt"), Slot.FrontRotor)
        .With(Caliper.Read("flat"), Slot.RearCaliper)
        .With(Caliper.Read("post"), Slot.FrontCaliper);

    public static Build Fat { get; } = Build.From(Frame.Read("kind fat; rear 12x197; seatTube 31.6; head tube ZS44|ZS56; head tube length 110; shell PF121; largest tyre 127-559; rearBrake PM-160; largestRearRotor 203; chainstay 450"), "Fat")
        .With(Fork.Read("front F150-15; brake PM-180; largest rotor 203; largest tyre 127-559; steerer shape tapered 1-1/8 to 1.5"))
        .With(Headset.Read("upper ZS44/28.6; lower ZS56/40"))
        .With(Seatpost.Read("31.6 x 400; mark 100; insertion 160"))
        .With(Wheel.Read("hub R197-12; body XD; beadSeat 559; innerWidth 94; rimType TC; six-bolt"), Slot.RearWheel)
        .With(Wheel.Read("hub F150-15; beadSeat 559; innerWidth 94; rimType TC; six-bolt"), Slot.FrontWheel)
        .With(Tyre.Read("127-559; tubeless"), Slot.RearTyre)
        .With(Tyre.Read("127-559; tubeless"), Slot.FrontTyre)
        .With(Cassette.Read("pattern XD; sprockets 12; spacing 12; smallest sprocket 10; largest sprocket 52"))
        .With(Crankset.Read("largest ring 28; chainline fat-190"))
        .With(Rotor.Read("180; six-bolt"), Slot.RearRotor).With(Caliper.Read("post"), Slot.RearCaliper);

    public static Build Folding { get; } = Build.From(Frame.Read("kind folding; rear R130; seatTube 33.9; leastInsertion 100; mostInsertion none; head tube EC30|EC30; head tube length 90; shell BSA 68; largest tyre 37-349; chainstay 250"), "Folding")
        .With(Fork.Read("steerer 25.4; steerer kind threaded; largest tyre 37-349"))
        .With(Seatpost.Read("33.9 x 580; mark 100; insertion 150"))
        .With(Wheel.Read("hub R130; beadSeat 349; innerWidth 17; rimType C"), Slot.RearWheel)
        .With(Wheel.Read("hub F074; beadSeat 349; innerWidth 17; rimType C"), Slot.FrontWheel)
        .With(Tyre.Read("35-349; wired"), Slot.RearTyre)
        .With(Tyre.Read("35-349; wired"), Slot.FrontTyre)
        .With(Crankset.Read("spindle square-JIS; largest ring 44"));

    public static Build ThirtySix { get; } = Build.From(Frame.Read("rear 135 QR; seatTube 27.2; head tube EC34|EC34; head tube length 200; shell BSA 68; largest tyre 62-787; rearBrake IS-rear; chainstay 560"), "36 inches")
        .With(Fork.Read("steerer shape straight 1-1/8; largest tyre 62-787"))
        .With(Headset.Read("upper EC34/28.6; lower EC34/30"))
        .With(Wheel.Read("hub 135 QR; beadSeat 787; innerWidth 35; rimType C; rim depth 20"), Slot.RearWheel)
        .With(Wheel.Read("hub 100 QR; beadSeat 787; innerWidth 35; rimType C"), Slot.FrontWheel)
        .With(Tyre.Read("57-787; wired"), Slot.RearTyre)
        .With(Tyre.Read("57-787; wired"), Slot.FrontTyre)
        .With(Seatpost.Read("27.2 x 300; mark 70; insertion 90"));

    /// <summary>What was read on the bicycle and what is fitted: lines, a mounted tyre and an adapter for tabs.</summary>
    public static Build Measured { get; } = Plain
        .With(Wheel.Read("hub 135 QR; body HG-M; six-bolt; beadSeat 622; innerWidth 21; rimType TC; rim depth 22"), Slot.RearWheel)
        .With(Tyre.Read("37-622; folding; mounted width 38.5 \u00B1 0.5; mounted on rim 21"), Slot.RearTyre)
        .With(Crankset.Read("spindle 24-road; rings 9; largest ring 40; smallest ring none; chainline gravel-1x-49.7"))
        .With(Caliper.Read("post; adapter +20; adapter on IS-rear"), Slot.RearCaliper)
        .With(Caliper.Read("post; adapter +20; adapter on IS-front"), Slot.FrontCaliper)
        .WithMeasured(Slot.RearWheel, "cassetteChainline", "42.5")
        .WithMeasured(Slot.Crankset, "measuredChainline", "48.5");

    public static ImmutableArray<Build> Builds => [Plain, Measured, Bench.WholeBicycle(), Unknown, Unfit, Fat, Folding, ThirtySix, Build.From(Frame.Read("seat tube 27.2"))];

    public static GearTable Gears { get; } = GearTable.Of([46, 30], [11, 13, 15, 17, 19, 21, 24, 28, 32, 36], Length.FromMillimeters(2_180));

    public static FrameGeometry Before => Frames.Drawn;

    public static FrameGeometry After => Frames.Drawn.WithForkLongerBy(Length.FromMillimeters(20));

    public static ImmutableArray<(string Name, decimal Price, decimal Kilograms)> Offers { get; } =
        [("cheap and heavy", 900m, 13.4m), ("in the middle", 1_450m, 11.2m), ("dear and light", 3_200m, 9.1m), ("dear and heavy", 2_000m, 12.5m)];

    /// <summary>Every drawing of a build, whatever slots are empty.</summary>
    public static ImmutableArray<LineDrawing> Of(Build build) =>
    [
        Drawings.HeadTube(build), Drawings.Seatpost(build), Drawings.BottomBracket(build), Drawings.RearHub(build), Drawings.Tyre(build, Slot.FrontTyre), Drawings.Tyre(build, Slot.RearTyre),
        Drawings.Tyre(build, Slot.RearTyre, 60, 2, 360), Drawings.DiscBrake(build, Slot.FrontCaliper), Drawings.DiscBrake(build, Slot.RearCaliper),
    ];

    public static ImmutableArray<LineDrawing> Charts => [Drawings.Geometry(Before, After), Drawings.Geometry(Before), Drawings.Gears(Gears), Drawings.PriceAndMass(Offers, "EUR")];

    public static IEnumerable<LineDrawing> All => Builds.SelectMany(b => Of(b)).Concat(Charts);
}
