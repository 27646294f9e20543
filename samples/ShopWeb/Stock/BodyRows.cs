using System.Collections.Immutable;

namespace ShopWeb.Stock;

/// <summary>Cockpit, seat and drive of the invented stock.</summary>
internal static class BodyRows
{
    public static ImmutableArray<ArticleRow> All { get; } =
    [
        new("seatpost", 4_000, 42, 260, "Seatpost {post}, {long} mm, {mat}", "diameter {post:25.4|26.8|27.2|27.2|30.9|31.6}; length {long:300|350|400}; mark {75|90|100}; insertion {105|120}; railClamp {7-round|7x9}; material {mat:aluminium|carbon}"),
        new("seatpost", 120, 30, 300, "Seatpost, {long} mm, diameter not stated", "length {long:350|400}; material aluminium"),
        new("headset", 1_500, 48, 110, "Headset {top} over {low}",
            "upper {top:IS42/28.6|ZS44/28.6|EC34/28.6|IS41/28.6}; lower {low:IS52/40|ZS56/40|EC34/30|ZS44/30}; kind threadless; upperStack {8|14}; lowerStack {1|12}"),
        new("headsetCover", 120, 12, 20, "Headset cover, {way}", "cables {way:outside~plain|through~for hoses inside}"),
        new("preload", 160, 9, 35, "{kind}", "kind {kind:star-nut~Star nut|expander~Expander plug}"),
        new("stem", 1_900, 38, 140, "Stem {long} mm, bar {bar}", "fixing clamp-28.6; bar {bar:25.4|31.8|31.8|35}; material aluminium; clampHeight {38|40|42}; spacersBelow {10|15|20}; spacersAbove 5{long:~50|~60|~70|~80|~90|~100|~110}"),
        new("handlebar", 1_900, 52, 280, "Handlebar, {shape}, clamp {bar}", "clamp {bar:25.4|31.8|31.8|35}; {shape:grip 23.8~drop|grip 22.2~flat}; material {aluminium|carbon}"),
        new("controls", 150, 30, 200, "Controls, {clamp}", "clamp {clamp:drop-bar-lever~for drop bars|flat-bar-control~for flat bars}"),
        new("grips", 300, 15, 90, "Grips {bore} mm", "bore 22.2{bore:~130|~135|~140}"),
        new("seatClamp", 600, 14, 28, "Seat collar {size}", "size {size:28.6|30|31.8|34.9}"),
        new("saddle", 2_600, 62, 260, "Saddle, {rails} rails, {wide} mm wide", "rails {rails:7-round~round|7x9~oval}; depth {42|45|48}{wide:~135|~143|~150|~155}"),
        new("bottomBracket", 1_300, 36, 95, "Bottom bracket {shell} for {spindle} mm", "shell {shell:BSA 68-73|BB86|T47 68|T47 85.5|BB92}; takes {spindle:24|30|28.99}"),
        new("crankset", 1_580, 145, 720, "Crankset {long} mm, {spindle}, {large} teeth",
            "spindle {spindle:24-road|30|28.99}; pedalThread 9/16; {rings 11; largestRing {large:50}; smallestRing 34; chainline road-2x-44.7|rings 11; largestRing {large:46}; smallestRing 30; chainline gravel-2x|rings 12; largestRing {large:40}; smallestRing none}{long:~165|~170|~172.5|~175}"),
        new("pedals", 1_200, 45, 350, "Pedals, {kind}, pair", "thread 9/16; sides pair{kind:~flat|~clip-in|~cage}"),
        new("chain", 900, 24, 255, "Chain, {size} speeds, {links} links", "size {size:9|10|11|12}{links:~114|~116|~118|~126}"),
        new("rearDerailleur", 800, 78, 260, "Rear derailleur, {chain} speeds, up to {large}",
            "mount {M10-bolt|direct-mount}; chain {chain:9|11|12}; signal cable; actuation {R11|R|M11}; capacity {37|39|41}; largestSprocket {large:30|34|42|51}; smallestSprocket 11"),
        new("frontDerailleur", 250, 35, 95, "Front derailleur, {mount}", "mount {mount:braze-on|31.8|28.6}; speeds 11; chainline road-2x-44.7; signal cable"),
        new("rearShifter", 700, 66, 190, "Rear shifter, {step}", "signal cable; actuation {R11|R|M11}; spacing {step:11-close~11 close|9~9 speeds}; withDerailleur allowed"),
        new("frontShifter", 150, 55, 190, "Front shifter", "signal cable; withDerailleur allowed"),
        new("frontBrakeLever rearBrakeLever", 800, 42, 210, "Brake lever, {fluid}", "{fluid:fluid mineral-oil; pull none~mineral oil|fluid glycol-ether; pull none~glycol ether|pull short; fluid none~cable short pull|pull long; fluid none~cable long pull}"),
        new("frontCaliper rearCaliper", 1_200, 58, 165, "Caliper, {mount} mount, {fluid}",
            "mounting {mount:flat|post}; {fluid:type disc-hydraulic; fluid mineral-oil~mineral oil|type disc-hydraulic; fluid glycol-ether~glycol ether|type disc-cable-road; fluid none~cable}; thickestRotor 1.9; thinnestRotor 1.5; boltLength {28|33|38}"),
        new("frontRimBrake rearRimBrake", 200, 26, 170, "Rim brake, {type}", "type {type:rim-caliper|cantilever|direct-pull}; pads for-aluminium"),
    ];
}
