namespace Lugwork.Tests.Builds;

/// <summary>Bicycles made of parts that nearly mate.</summary>
internal static class Bicycles
{
    private static readonly string[] RearEnds = ["R135-QR", "R142-12", "R148-12", "R130", "R126", "unknown", "not covered", "hub-motor"];
    private static readonly string[] Materials = ["steel", "aluminium", "carbon", "unknown"];
    private static readonly string[] Bores = ["27.2", "30.9", "31.6", "27.2 | 27.4", "27.18 ± 0.05", "unknown", "frame-specific", "shaped-seatpost"];
    private static readonly string[] Posts = ["27.2", "26.8", "27.4", "30.9", "31.6", "unknown", "frame-specific"];
    private static readonly string[] RearMounts = ["IS-rear", "PM-160", "PM-180", "FM-rear-140", "none", "unknown", "not covered"];
    private static readonly string[] FrontMounts = ["IS-front", "PM-160", "PM-180", "FM-front-140", "none", "unknown"];
    private static readonly string[] Limits = ["160", "180", "203", "unknown", "not covered"];
    private static readonly string[] Bodies = ["HG-M", "HG-L", "HG", "HG-tall", "XD", "hub gear", "FW-thread", "TRACK", "unknown", "not covered"];
    private static readonly string[] Patterns = ["HG-9", "HG-10-old-road", "HG-11-road", "XD", "3-lug", "freewheel", "fixed-sprocket", "unknown"];
    private static readonly string[] Threads = ["M12x1.0", "M12x1.5", "M15x1.5", "own", "none", "M12", "unknown"];
    private static readonly string[] HeadTubes = ["44|56", "44|44", "EC34/EC34", "IS42|IS52", "unknown", "frame-specific"];
    private static readonly string[] Headsets = ["code ZS44/28.6|ZS56/40", "code ZS44/28.6|EC44/40", "code EC34/28.6|EC34/30", "code IS42/28.6|IS52/40", "upper ZS44", "kind threadless", "code frame-specific"];
    private static readonly string[] Steerers = ["steererShape tapered 1-1/8 to 1.5", "steererShape straight 1-1/8", "steererShape tapered", "steererShape straight 1", "steererKind threaded"];
    private static readonly string[] Clamps = ["25.4", "25.8", "26.0", "31.8", "35", "31.8 | 35", "31.7 ± 0.2", "unknown"];
    private static readonly string[] Collars = ["28.6", "31.8", "34.9", "31.8 ± 0.1", "unknown"];
    private static readonly string[] Heads = ["7-round", "7x9", "7x10", "unknown"];
    private static readonly string[] Shells = ["BSA-68", "BSA-73", "BSA", "PF41-86.5", "T47-85.5", "T47-86.5", "Italian-70", "unknown", "not covered", "motor"];
    private static readonly string[] Hangers = ["M10x1", "UDH", "direct-mount", "plain", "no-hanger", "unknown", "frame-specific"];
    private static readonly string[] Largest = ["37-622", "40-622", "28-622", "40-635", "none", "unknown"];
    private static readonly string[] Speeds = ["5-8", "9", "10", "11", "12", "belt", "unknown"];
    private static readonly string[] Triangles = ["closed", "opens", "none", "unknown", "proprietary"];
    private static readonly string[] Bosses = ["cantilever-622", "cantilever-559", "u-brake", "none", "unknown", "frame-specific"];
    private static readonly string[] BossSpacings = ["74.9", "75", "80", "85", "85 ± 1", "none", "unknown"];
    private static readonly string[] Bolts = ["nutted-6", "recessed-6", "M6", "none", "unknown"];
    private static readonly string[] BoltToRims = ["46", "47", "49 ± 0.5", "57", "58", "none", "unknown"];
    private static readonly string[] Fluids = ["mineral-oil", "glycol-ether", "none", "unknown"];
    private static readonly string[] AxleLengths = ["99", "163", "171", "163 ± 0.5", "none", "unknown"];
    private static readonly string[] Slots = ["horizontal", "vertical", "none", "unknown"];
    private static readonly string[] AxleThreads = ["M9x1", "M10x1", "3/8x24", "3/8x26", "3/8", "M14x1", "unknown"];
    private static readonly string[] Depths = ["79", "80", "110", "210", "211", "unknown", "frame-specific"];

    public static Frame Frame(Random random) => Lugwork.Frame.Read(
        $"rear {Of(random, RearEnds)}; material {Of(random, Materials)}; seatTube {Of(random, Bores)}; rearBrake {Of(random, RearMounts)}; largestRearRotor {Of(random, Limits)}; leastInsertion 80; mostInsertion 210; {RearEnd(random)}; headTube {Of(random, HeadTubes)}; shell {Of(random, Shells)}; seatTubeOutside {Of(random, [.. Collars, "none"])}; largestRearTyre {Of(random, Largest)}; rearTriangle {Of(random, Triangles)}; {RimPlace(random, "rear")}; rearStayThickness {Of(random, ["20", "25", "none", "unknown"])}; rearAxleLength {Of(random, AxleLengths)}; rearDropout {Of(random, Slots)}; {FrameOfDrive(random)}; upperBoreDepth {Of(random, Skirts)}; lowerBoreDepth {Of(random, Skirts)}; headsetCables {Of(random, Ways)}; shellBore {Of(random, ["40.99", "41.04", "41.05", "45.98", "none", "unknown"])}; shellFace {Of(random, ["bare", "painted", "other-insert", "unknown"])}; binder {Of(random, ["collar", "welded-tabs", "unknown"])}; dropperEntry {Of(random, ["hole", "no-hole", "unknown"])}; {Carries(random, "loadLimit")}");
    private static readonly string[] Mounts = ["28.6", "31.8", "34.9", "braze-on", "S2", "S3", "E-type", "none", "unknown", "proprietary"];
    private static readonly string[] Teeth = ["32", "34", "38", "39", "46", "none", "unknown"];
    private static readonly string[] Shocks = ["210x50", "210x55", "trunnion 185x55", "200x57", "none", "unknown"];
    private static readonly string[] Hardware = ["22.2x8", "24x8", "22.3x8", "none", "unknown"];
    private static readonly string[] Lengths = ["395", "500", "500 ± 2", "520", "none", "unknown"];
    private static readonly string[] Travels = ["100", "120", "120 ± 1", "none", "unknown"];
    private static readonly string[] Threads24 = ["ISO", "British", "French", "track", "none", "unknown"];
    private static readonly string[] Signals = ["cable", "wired", "wireless", "no-shifting", "unknown", "not covered"];
    private static readonly string[] Families = ["R", "M10", "R11", "M11", "LG", "none", "unknown"];
    private static readonly string[] Spacings = ["8", "9", "10", "11-wide", "LG-9", "single", "none", "unknown"];
    private static readonly string[] Words = ["allowed", "refused", "none", "unknown"];
    private static readonly string[] Chainlines = ["road-2x", "road-45", "gravel-2x", "gravel-2x-wide", "unknown"];
    private static readonly string[] Circles = ["5x130", "5x110", "4x110-uneven", "5x110-offset", "none", "unknown"];
    private static readonly string[] Arms = ["3-bolt", "8-bolt", "own", "unknown"];
    private static string FrameOfDrive(Random random) =>
        $"frontDerailleurMount {Of(random, Mounts)}; chainGuideTabs {Of(random, ["ISCG", "ISCG05", "none", "unknown"])}; largestRing {Of(random, Teeth)}; shock {Of(random, Shocks)}; lowerShockHardware {Of(random, Hardware)}; upperShockHardware {Of(random, Hardware)}; longestFork {Of(random, Lengths)}; mostForkTravel {Of(random, Travels)}; forkCrowns {Of(random, ["single", "dual", "unknown"])}";
    private static readonly string[] Skirts = ["9", "12", "none", "unknown", "not covered"];
    private static readonly string[] Bearings = ["30.15x41x6.5-36/45", "30.15x41x7-45/45", "40x52x7-45/45", "40x52x6.5-36/45", "40x51.8x8-36/45", "unknown"];
    private static readonly string[] Ways = ["outside", "through", "unknown"];
    private static readonly string[] Holds = ["clincher", "tubular", "unknown", "unknown"];
    private static readonly string[] Valves = ["presta", "schrader", "dunlop", "presta | schrader", "unknown"];
    private static readonly string[] Stands = ["24", "25", "39", "40", "none", "unknown"];
    private static readonly string[] Loads = ["81.999 kg", "82 kg", "100 kg", "110 kg", "120 kg", "none", "unknown", "not covered"];
    private static readonly string[] Uses = ["condition-1", "condition-2", "condition-3", "none", "unknown"];
    private static readonly string[] BarEnds = ["22.2", "23.5", "23.8", "unknown"];

    /// <summary>A universal hanger goes with its own axle thread only; another one is bad input.</summary>
    private static string RearEnd(Random random)
    {
        string hanger = Of(random, Hangers);
        return $"hanger {hanger}; rearAxleThread {(hanger == "UDH" ? Of(random, ["M12x1.0", "own", "none", "unknown"]) : Of(random, Threads))}";
    }

    public static Part Part(Slot slot, Random random) =>
        slot == Slot.Fork ? Fork.Read($"front {Of(random, ["F100-QR9", "F100-12", "F110-15B", "unknown"])}; frontBrake {Of(random, FrontMounts)}; largestFrontRotor {Of(random, Limits)}; frontAxleThread {Of(random, Threads)}; {Of(random, Steerers)}; largestFrontTyre {Of(random, Largest)}; {RimPlace(random, "front")}; frontAxleLength {Of(random, AxleLengths)}; frontLips {Of(random, ["kept", "none", "unknown"])}; axleToCrown {Of(random, Lengths)}; travel {Of(random, Travels)}; crowns {Of(random, ["single", "dual", "unknown"])}; steererMaterial {Of(random, Materials)}; {Carries(random, "loadLimit")}")
        : slot == Slot.FrontWheel ? Wheel.Read($"hub {Of(random, ["F100-QR9", "F100-12", "F100-15", "unknown"])}; ends {Of(random, ["swappable", "fixed", "unknown"])}; {Rim(random)}")
        : slot == Slot.RearWheel ? Wheel.Read($"hub {Of(random, RearEnds)}; ends {Of(random, ["swappable", "fixed", "unknown"])}; body {Of(random, Bodies)}; thread {Of(random, Threads24)}; {Rim(random)}")
        : slot == Slot.FrontTyre || slot == Slot.RearTyre ? Tyre.Read($"size {Of(random, ["28-622", "29-622", "37-622", "62-622", "40-635"])}; bead {Of(random, ["wired", "folding", "tubeless", "unknown"])}; hold {Of(random, Holds)}")
        : slot == Slot.Cassette ? Cassette.Read($"pattern {Of(random, Patterns)}; thread {Of(random, Threads24)}; lockring {Of(random, ["lockring", "none", "unknown"])}; spacing {Of(random, Spacings)}")
        : slot == Slot.FrontRotor || slot == Slot.RearRotor ? Rotor.Read($"size {Of(random, ["140", "160", "180", "203", "unknown"])}; fixing {Of(random, ["six-bolt", "center-lock", "unknown"])}; lockring {Of(random, ["internal", "external", "none", "unknown"])}; carrier {Of(random, ["bolts", "pins", "with-lockring", "none", "unknown"])}; thickness {Of(random, ["1.5", "1.8", "2.0", "1.8 ± 0.05", "unknown"])}")
        : slot == Slot.FrontCaliper || slot == Slot.RearCaliper ? Caliper.Read($"mounting {Of(random, ["post", "flat", "unknown"])}; {Of(random, ["type hydraulic disc; fluid mineral oil", "type hydraulic disc", "type disc-cable-road", "type disc-cable-hydraulic; fluid mineral oil", "type disc-cable-off-road; fluid none", "fluid DOT", "fluid none", "type unknown"])}; thickestRotor {Of(random, ["1.8", "2.0", "none", "unknown"])}; thinnestRotor {Of(random, ["1.5", "none", "unknown"])}; boltLength {Of(random, ["33", "38", "none", "unknown"])}")
        : slot == Slot.Seatpost ? Seatpost.Read($"diameter {Of(random, Posts)}; mark {Of(random, ["75", "90", "unknown"])}; insertion {Of(random, Depths)}; railClamp {Of(random, Heads)}; material {Of(random, Materials)}; binderGap {Of(random, ["0.9", "1", "none", "unknown"])}; {Carries(random, "riderLimit")}")
        : Other(slot, random);

    private static Part Other(Slot slot, Random random) =>
        slot == Slot.FrontThruAxle || slot == Slot.RearThruAxle ? ThruAxle.Read($"thread {Of(random, Threads)}; length {Of(random, AxleLengths)}")
        : slot == Slot.Headset ? Headset.Read(Of(random, Headsets))
        : slot == Slot.Stem ? Stem.Read($"fixing {Of(random, ["clamp-28.6", "clamp-25.4", "quill-22.2", "25.4", "unknown"])}; bar {Of(random, Clamps)}; mark {Of(random, ["60", "none", "unknown"])}; insertion {Of(random, ["59.9", "60", "unknown"])}; {Carries(random, "riderLimit")}")
        : slot == Slot.Handlebar ? Handlebar.Read($"clamp {Of(random, Clamps)}; grip {Of(random, BarEnds)}; {Carries(random, "riderLimit")}")
        : slot == Slot.SeatClamp ? SeatClamp.Read($"size {Of(random, Collars)}")
        : slot == Slot.Saddle ? Saddle.Read($"rails {Of(random, ["7-round", "7x9", "7x9.6", "7x10", "8-round", "unknown"])}")
        : slot == Slot.BottomBracket ? BottomBracket.Read($"shell {Of(random, ["BSA 68-73", "BSA 68", "BB86", "T47 85.5", "T47 86.5", "Italian 70"])}; driveSpacer {Of(random, ["2.5", "2.4", "5", "none", "unknown"])}; takes {Of(random, ["24", "28.99", "30", "square-JIS", "square-ISO", "10-spline", "unknown"])}; designatedWidth {Of(random, ["68", "73", "unknown"])}")
        : slot == Slot.Crankset ? Crankset.Read($"spindle {Of(random, ["24-road", "24-MTB", "28.99", "30-long", "30-short", "square-JIS", "square-ISO", "24", "unknown"])}; pedalThread {Of(random, ["9/16", "1/2", "French", "unknown"])}; rings {Of(random, Speeds)}; boltCircle {Of(random, Circles)}; directMount {Of(random, [.. Arms, "none"])}; largestRing {Of(random, Teeth)}; chainline {Of(random, Chainlines)}; designedWidth {Of(random, ["68", "73", "unknown"])}")
        : slot == Slot.Pedals ? Pedals.Read($"thread {Of(random, ["9/16", "1/2", "French", "unknown"])}; sides {Of(random, ["pair", "two-left", "unknown"])}")
        : slot == Slot.Chain ? Chain.Read($"size {Of(random, Speeds)}")
        : slot == Slot.FrontBrakeLever || slot == Slot.RearBrakeLever ? BrakeLever.Read(Of(random, ["pull short", "pull long", "pull newer-road", "pull short; fluid none", "fluid " + Of(random, Fluids[..2]), "pull none", "fluid unknown"]))
        : slot == Slot.FrontRimBrake || slot == Slot.RearRimBrake ? RimBrake.Read($"type {Of(random, ["rim-caliper", "centre-pull", "cantilever", "direct-pull", "u-brake", "unknown"])}; reach {Of(random, ["39-49", "47-57", "short", "centre-pull-61-61", "none", "unknown"])}; bolt {Of(random, Bolts)}; pads {Of(random, ["for-aluminium", "for-carbon", "unknown"])}")
        : slot == Slot.FrontAxleNuts || slot == Slot.RearAxleNuts ? AxleNuts.Read($"thread {Of(random, AxleThreads)}")
        : slot == Slot.RearDerailleur ? RearDerailleur.Read($"mount {Of(random, ["M10-bolt", "direct-mount", "hangerless", "unknown"])}; chain {Of(random, Speeds)}; signal {Of(random, Signals)}; actuation {Of(random, Families)}")
        : slot == Slot.RearShifter || slot == Slot.FrontShifter ? Shifter.Read($"signal {Of(random, Signals)}; actuation {Of(random, Families)}; spacing {Of(random, Spacings)}; withDerailleur {Of(random, Words)}; withSprockets {Of(random, Words)}")
        : slot == Slot.FrontDerailleur ? FrontDerailleur.Read($"mount {Of(random, Mounts)}; speeds {Of(random, Speeds)}; chainline {Of(random, Chainlines)}; signal {Of(random, Signals)}")
        : slot == Slot.ChainGuide ? ChainGuide.Read($"mount {Of(random, ["ISCG", "ISCG05", "BB-mount", "derailleur-mount", "unknown"])}")
        : slot == Slot.Chainring ? Chainring.Read($"boltCircle {Of(random, Circles)}; directMount {Of(random, Arms)}; teeth {Of(random, Teeth)}; speeds {Of(random, Speeds)}")
        : slot == Slot.Shock ? Shock.Read($"size {Of(random, Shocks)}; lowerHardware {Of(random, Hardware)}; upperHardware {Of(random, Hardware)}; eyelet {Of(random, ["12", "12.7", "unknown"])}; bush {Of(random, ["12", "12.7", "unknown"])}")
        : Smaller(slot, random);

    private static Part Smaller(Slot slot, Random random) =>
        slot == Slot.FrontInnerTube || slot == Slot.RearInnerTube ? InnerTube.Read($"seat {Of(random, ["622", "635", "406", "unknown"])}; otherSeat {Of(random, ["635", "none", "unknown"])}; narrowestTyre {Of(random, ["28", "29", "unknown"])}; widestTyre {Of(random, ["37", "47", "none", "unknown"])}; valve {Of(random, Valves)}; valveLength {Of(random, Stands)}")
        : slot == Slot.FrontTubelessValve || slot == Slot.RearTubelessValve ? TubelessValve.Read($"valve {Of(random, Valves)}; length {Of(random, Stands)}")
        : slot == Slot.FrontRimTape || slot == Slot.RearRimTape ? RimTape.Read($"width {Of(random, ["9", "9.1", "19", "25", "none", "unknown"])}")
        : slot == Slot.UpperBearing || slot == Slot.LowerBearing ? HeadsetCartridge.Read($"size {Of(random, Bearings)}")
        : slot == Slot.HeadsetCover ? HeadsetCover.Read($"cables {Of(random, Ways)}")
        : slot == Slot.Preload ? Preload.Read($"kind {Of(random, ["star-nut", "expander", "unknown"])}")
        : slot == Slot.Controls ? Controls.Read($"clamp {Of(random, ["drop-bar-lever", "flat-bar-control", "unknown"])}")
        : slot == Slot.Grips ? Grips.Read($"bore {Of(random, BarEnds)}")
        : slot == Slot.ShellAdapter ? ShellAdapter.Read($"kind {Of(random, ["outboard", "inside", "unknown"])}")
        : slot == Slot.Rider ? Rider.Read($"mass {Of(random, ["82 kg", "100 kg", "unknown"])}; massWithLuggage {Of(random, ["100 kg", "110 kg", "none", "unknown"])}; system {Of(random, ["110 kg", "120 kg", "none", "unknown"])}; use {Of(random, Uses)}")
        : Dropper.Read($"routing {Of(random, ["internal", "external", "wireless", "unknown"])}");

    public static Build Any(Random random)
    {
        Build build = Build.From(Frame(random));
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            build = random.Next(5) == 0 ? build : build.With(Part(slot, random), slot);
        }

        return build;
    }

    private static string Rim(Random random) =>
        $"rotorFixing {Of(random, ["six-bolt", "center-lock", "none", "unknown"])}; beadSeat {Of(random, ["622", "622", "635", "unknown"])}; innerWidth {Of(random, ["19", "23", "25", "25 ± 0.5", "unknown"])}; rimType {Of(random, ["C", "TC", "TSS", "unknown"])}; brakeTrack {Of(random, ["aluminium", "carbon", "none", "unknown"])}; hubBrake {Of(random, ["none", "none", "drum", "coaster", "unknown"])}; axleThread {Of(random, AxleThreads)}; washers {Of(random, Slots)}; hold {Of(random, Holds)}; valveHole {Of(random, ["6.5", "8.5", "unknown"])}; rimDepth {Of(random, Stands)}; bedHole {Of(random, ["9", "none", "unknown"])}; {Carries(random, "loadLimit")}";

    private static string Carries(Random random, string limit) => $"{limit} {Of(random, Loads)}; systemLimit {Of(random, Loads)}; use {Of(random, Uses)}";

    private static string RimPlace(Random random, string end) =>
        $"{end}Bosses {Of(random, Bosses)}; {end}BossSpacing {Of(random, BossSpacings)}; {end}BrakeHole {Of(random, Bolts)}; {end}BoltToRim {Of(random, BoltToRims)}; {end}BoltToRimOf {Of(random, ["622", "584", "unknown"])}";

    private static string Of(Random random, string[] some) => some[random.Next(some.Length)];
}
