namespace Lugwork.Benchmarks.Judging;

/// <summary>Whole bicycles of known parts with a part in every slot, cable discs and rim brakes under the same levers, most joints fitting, some not: the same ones in every run.</summary>
internal static class KnownBuilds
{
    public const int Count = 64;

    public static IReadOnlyList<Build> All { get; } = [.. Enumerable.Range(0, Count).Select(i => Make(new Random(1_000 + i)))];

    private static Build Make(Random random)
    {
        string Of(string usual, params string[] others) => random.Next(8) == 0 ? others[random.Next(others.Length)] : usual;
        string bore = Of("27.2", "30.9", "31.6");
        string width = Of("40", "32", "45");
        return Build.From(Frame.Read($"kind gravel; rear {Of("R142-12", "R148-12", "R135-QR")}; rear axle thread {Of("M12x1.5", "M12x1.0")}; material {Of("carbon", "steel", "aluminium")}; seatTube {bore}; seat tube outside {Of("31.8", "34.9")}; leastInsertion {Of("80", "100")}; mostInsertion {Of("210", "250")}; rearBrake {Of("PM-160", "PM-180", "IS-rear")}; largestRearRotor {Of("180", "160")}; head tube {Of("44|56", "44|44", "EC34|EC34")}; shell {Of("BSA-68", "BSA-73", "PF41-86.5")}; hanger {Of("M10x1", "direct-mount")}; rear triangle {Of("closed", "opens")}; largest tyre {Of("45-622", "40-622")}; rear bosses none; rear boss spacing none; rear brake hole {Of("recessed-6", "nutted-6")}; rear bolt to rim {Of("52", "58")}; rear bolt to rim of 622; rear stay thickness none; rear axle length {Of("163", "171")}; rear slot none; upper bore depth 20; lower bore depth {Of("20", "9")}; headset cables outside; shell bore {Of("41", "41.05")}; shell face {Of("bare", "painted")}; binder {Of("collar", "welded-tabs")}; dropper entry {Of("hole", "no-hole")}; load limit {Of("120 kg", "90 kg")}; system limit none; use condition 3; condition new; bottom bracket drop 70; chainstay 430; down tube drop 60; fork crowns single; front centre 620; front mount none; guide tabs none; head tube length 140; largest ring {Of("48", "42")}; longest fork 420; shortest fork 380; most fork travel none; lower shock hardware none; upper shock hardware none; rear hose side {Of("left", "either")}; seat tube length 520; shock none; smallest outer ring none; standover 780; fork of the design 390; head angle 71; wheelbase 1020; slackest head angle 69; steepest head angle {Of("73", "71")}"))
            .Fitted(Fork.Read($"front {Of("F100-12", "F110-15B")}; brake {Of("PM-160", "PM-180")}; largest rotor 180; steerer shape {Of("tapered 1-1/8 to 1.5", "straight 1-1/8")}; steerer kind threadless; axle thread {Of("M12x1.5", "M15x1.5")}; largest tyre 45-622; axle length {Of("127", "120")}; bosses none; boss spacing none; brake hole {Of("recessed-6", "nutted-6")}; bolt to rim {Of("50", "46")}; bolt to rim of 622; lips missing; steerer material {Of("aluminium", "carbon")}; load limit 120 kg; system limit none; use {Of("condition 3", "condition 1")}; condition new; axle to crown {Of("395", "425")}; crowns single; knob rise none; material carbon; most spacers 40; steerer length {Of("260", "210")}; travel none"))
            .Fitted(Wheel.Read($"hub {Of("F100-12", "F100-15")}; ends swappable; rotorFixing {Of("six-bolt", "center-lock")}; beadSeat 622; innerWidth {Of("21", "23", "25")}; rimType {Of("TC", "C")}; brake track {Of("aluminium", "carbon")}; hub brake none; axle thread M9x1; washers none; valve hole {Of("6.5", "8.5")}; rim depth {Of("24", "40")}; bed hole 9; load limit none; system limit {Of("130 kg", "100 kg")}; use condition 2; condition new; rim material aluminium; rim wall none"), Slot.FrontWheel)
            .Fitted(Wheel.Read($"hub {Of("R142-12", "R135-QR", "R148-12")}; ends {Of("swappable", "fixed")}; body {Of("HG-M", "HG-L", "XD")}; rotorFixing {Of("six-bolt", "center-lock")}; beadSeat 622; innerWidth {Of("21", "23", "25")}; rimType {Of("TC", "C")}; brake track {Of("aluminium", "carbon")}; hub brake none; axle thread M10x1; washers none; valve hole {Of("6.5", "8.5")}; rim depth {Of("24", "40")}; bed hole 9; load limit none; system limit {Of("130 kg", "100 kg")}; use condition 2; condition new; rim material aluminium; rim wall none; sprocket line none"), Slot.RearWheel)
            .Fitted(Tyre.Read($"{width}-622; folding; condition {Of("new", "inspected")}"), Slot.FrontTyre)
            .Fitted(Tyre.Read($"{width}-622; folding; condition {Of("new", "inspected")}"), Slot.RearTyre)
            .Fitted(Cassette.Read($"pattern {Of("HG-9", "HG-10-old-road", "HG-11-road")}; condition new; largest sprocket {Of("34", "40")}; smallest sprocket 11; lockring none"))
            .Fitted(Rotor.Read($"160; fixing {Of("six-bolt", "center-lock")}; lockring {Of("internal", "external")}; carrier with-lockring; thickness {Of("1.8", "2.0")}; condition new; least thickness 1.5"), Slot.FrontRotor)
            .Fitted(Rotor.Read($"{Of("160", "180", "203")}; fixing six-bolt; lockring internal; carrier {Of("bolts", "pins")}; thickness {Of("1.8", "2.0")}; condition new; least thickness 1.5"), Slot.RearRotor)
            .Fitted(Caliper.Read($"{Of("post", "flat")}; type {Of("disc-cable-road", "disc-cable-off-road")}; fluid none; thickest rotor 1.9; thinnest rotor 1.5; bolt length none; condition new; adapter none; adapter on none; second adapter none"), Slot.FrontCaliper)
            .Fitted(Caliper.Read($"{Of("post", "flat")}; type {Of("disc-cable-road", "disc-cable-off-road")}; fluid none; thickest rotor 1.9; thinnest rotor 1.5; bolt length none; condition new; adapter none; adapter on none; second adapter none"), Slot.RearCaliper)
            .Fitted(Seatpost.Read($"{Of(bore, "27.2", "26.8")}; mark {Of("75", "100")}; insertion {Of("110", "70", "240")}; rails {Of("7-round", "7x9")}; material {Of("aluminium", "carbon")}; binder gap {Of("2", "none")}; rider limit 115 kg; system limit none; use condition 3; condition new; length 350"), Slot.Seatpost)
            .Fitted(ThruAxle.Read($"{Of("M12x1.5", "M15x1.5")}; length {Of("127", "120")}; condition {Of("new", "inspected")}"), Slot.FrontThruAxle)
            .Fitted(ThruAxle.Read($"{Of("M12x1.5", "M12x1.75")}; length {Of("163", "171")}; condition {Of("new", "inspected")}"), Slot.RearThruAxle)
            .Fitted(Headset.Read($"upper ZS44/28.6; lower {Of("ZS56/40", "EC44/40")}; threadless; upper skirt 12; lower skirt 12; upper bearing 30.15x41x6.5-36/45; lower bearing 40x52x7-45/45; condition new; upper stack 12; lower stack 12"))
            .Fitted(Stem.Read($"28.6 clamp; bar {Of("31.8", "35")}; mark none; insertion none; rider limit 115 kg; system limit none; use condition 3; condition new; material aluminium; clamp height 40; spacers above 5; spacers below {Of("20", "35")}"))
            .Fitted(Handlebar.Read($"{Of("31.8", "25.4")}; grip {Of("22.2", "23.8")}; rider limit 115 kg; system limit none; use condition 3; condition new; material aluminium"))
            .Fitted(SeatClamp.Read($"{Of("31.8", "34.9")}; condition new"))
            .Fitted(Saddle.Read($"{Of("7-round", "7x9")}; condition new; depth 45"))
            .Fitted(BottomBracket.Read($"shell {Of("BSA 68-73", "BB86")}; takes {Of("24", "30")}; designated width none; condition new; drive spacer none"))
            .Fitted(Crankset.Read($"spindle {Of("24-road", "30-long", "28.99")}; pedals 9/16; rings {Of("9", "11")}; designed width none; condition new; bolt circle 5x110; direct mount none; chainline road-45; crank length 170; largest ring {Of("46", "42")}; smallest ring 30; material aluminium; Q factor 150; ring line 45; shell width 68"))
            .Fitted(Pedals.Read($"{Of("9/16", "1/2")}; condition new; height 25; reach 100"))
            .Fitted(Chain.Read($"size {Of("9", "11")}; condition new; over 24 pitches 304.8; pitches {Of("114", "104")}"))
            .Fitted(RearDerailleur.Read($"M10 bolt; chain {Of("9", "11")}; condition new; actuation {Of("R", "M10")}; capacity {Of("41", "35")}; largest sprocket {Of("36", "34")}; smallest sprocket 11; signal cable"))
            .Fitted(BrakeLever.Read($"pull {Of("short", "long")}; fluid none; condition new; hand {Of("either", "left")}"), Slot.FrontBrakeLever)
            .Fitted(BrakeLever.Read($"pull {Of("short", "long")}; fluid none; condition new; hand {Of("either", "left")}"), Slot.RearBrakeLever)
            .Fitted(RimBrake.Read($"rim-caliper; reach 47-57; bolt {Of("recessed-6", "nutted-6")}; pads for-aluminium; condition new"), Slot.FrontRimBrake)
            .Fitted(RimBrake.Read($"rim-caliper; reach 47-57; bolt {Of("recessed-6", "nutted-6")}; pads for-aluminium; condition new"), Slot.RearRimBrake)
            .Fitted(AxleNuts.Read($"{Of("M9x1", "M10x1")}; condition new"), Slot.FrontAxleNuts)
            .Fitted(AxleNuts.Read($"{Of("M10x1", "3/8x26")}; condition new"), Slot.RearAxleNuts)
            .Fitted(InnerTube.Read($"{Of("622", "635")}; other seat none; tyres from 28; tyres to {Of("47", "37")}; Presta; valve length {Of("48", "40")}; condition new"), Slot.FrontInnerTube)
            .Fitted(InnerTube.Read($"622; other seat none; tyres from 28; tyres to 47; valve {Of("Presta", "Schrader")}; valve length 48; condition new"), Slot.RearInnerTube)
            .Fitted(TubelessValve.Read($"Presta; length {Of("44", "36")}; condition new"), Slot.FrontTubelessValve)
            .Fitted(TubelessValve.Read("Presta; length 44; condition new"), Slot.RearTubelessValve)
            .Fitted(RimTape.Read($"width {Of("21", "9")}; condition new"), Slot.FrontRimTape)
            .Fitted(RimTape.Read("width 21; condition new"), Slot.RearRimTape)
            .Fitted(HeadsetCartridge.Read("30.15x41x6.5-36/45; condition new"), Slot.UpperBearing)
            .Fitted(HeadsetCartridge.Read($"{Of("40x52x7-45/45", "40x52x6.5-36/45")}; condition new"), Slot.LowerBearing)
            .Fitted(HeadsetCover.Read($"{Of("outside", "through")}; condition new"))
            .Fitted(Preload.Read($"{Of("star-nut", "expander")}; condition new"))
            .Fitted(Controls.Read($"{Of("flat-bar-control", "drop-bar-lever")}; condition new"))
            .Fitted(Grips.Read("22.2; condition new"))
            .Fitted(ShellAdapter.Read("outboard; condition new"))
            .Fitted(Dropper.Read($"{Of("internal", "external")}; condition new; stack 250; travel 125"))
            .Fitted(Shifter.Read($"signal cable; actuation {Of("R", "M10")}; spacing {Of("9", "11-close")}; with derailleur none; with sprockets none; condition new"), Slot.RearShifter)
            .Fitted(Shifter.Read("signal cable; with derailleur none; condition new"), Slot.FrontShifter)
            .Fitted(FrontDerailleur.Read($"mount {Of("band-31.8", "braze-on")}; chainline road-45; difference 16; signal cable; speeds {Of("9", "11")}; condition new"))
            .Fitted(Chainring.Read($"bolt circle {Of("5x110", "5x130")}; direct mount none; speeds 9; teeth {Of("46", "42")}; condition new"))
            .Fitted(ChainGuide.Read("mount none; condition new"))
            .Fitted(Shock.Read("size none; bush none; eyelet none; upper hardware none; lower hardware none; condition new"))
            .Fitted(Rider.Read($"{Of("82 kg", "118 kg")}; with luggage none; system {Of("120 kg", "129 kg")}; use {Of("condition 2", "condition 4")}; front brake hand {Of("left", "right")}; inseam 830; saddle height 720"));
    }

    /// <summary>The part as it stands on this bicycle, with what was read there.</summary>
    private static Build Fitted(this Build build, Part part, Slot? slot = null) => build.OfFile(part, slot ?? part.Places.Single());
}
