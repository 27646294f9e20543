using System.Collections.Immutable;

namespace ShopWeb.Stock;

/// <summary>Wheels, tyres and what goes into and onto them.</summary>
internal static class WheelRows
{
    private const string Rim = "beadSeat {seat:622|584}; innerWidth {inner:19|21|23|25}; rimType TC; valveHole 6.5; rimDepth 24; bedHole 9; rimMaterial aluminium; hold clincher";

    public static ImmutableArray<ArticleRow> All { get; } =
    [
        new("frontWheel", 2_000, 110, 820, "Front wheel {seat}, {hub}, {fix}, {inner} mm inside", "hub {hub:F100-12|F100-QR9|F100-15|F110-15B}; ends {swappable|fixed}; rotorFixing {fix:center-lock~centre lock|six-bolt~six bolts}; " + Rim),
        new("rearWheel", 3_000, 150, 1_010, "Rear wheel {seat}, {hub}, {body}, {fix}, {inner} mm inside",
            "hub {hub:R142-12|R135-QR|R148-12}; ends {swappable|fixed}; body {body:HG-L|HG-M|XDR|XD|MS}; rotorFixing {fix:center-lock~centre lock|six-bolt~six bolts}; " + Rim),
        new("rearWheel", 100, 130, 1_150, "Rear wheel {seat}, {hub}, body not stated", "hub {hub:R142-12|R135-QR}; rotorFixing {center-lock|six-bolt}; beadSeat {seat:622|584}; innerWidth {19|21}; hold clincher"),
        new("frontTyre rearTyre", 13_000, 34, 470, "Tyre {size}, {bead}, {grade}",
            "size {size:28-622|30-622|32-622|35-622|37-622|40-622|42-622}; bead {bead:tubeless|folding|wired}; hold clincher{grade:~all-round|~slick|~file tread|~knobs|~reflex}"),
        new("frontTyre rearTyre", 2_000, 41, 640, "Tyre {size}, {bead}", "size {size:45-622|47-622|50-622|54-622|57-622|60-622|47-584|54-584|60-584}; bead {bead:tubeless|folding|wired}; hold clincher"),
        new("frontInnerTube rearInnerTube", 500, 7, 130, "Inner tube {seat}, {valve} valve {long} mm", "seat {seat:622|584}; otherSeat none; narrowestTyre {23|28|35|47}; widestTyre {62|50|47}; valve {valve:presta|schrader}; valveLength {long:40|48|60}"),
        new("frontTubelessValve rearTubelessValve", 250, 12, 14, "Tubeless valve {long} mm", "valve presta; length {long:35|44|50|60|80}"),
        new("frontRimTape rearRimTape", 200, 9, 20, "Tubeless tape {wide} mm", "width {wide:19|21|23|25|27|30}"),
        new("cassette", 1_500, 55, 330, "Cassette {pattern}, {small}-{large}", "pattern {pattern:HG-9|HG-11-road|HG-11-wide|XD|MS-12}; smallestSprocket {small:10|11}; largestSprocket {large:28|32|34|42|50}"),
        new("frontRotor rearRotor", 1_700, 24, 125, "Rotor {size}, {fix}", "size {size:140|160|180|203}; fixing {fix:center-lock~centre lock|six-bolt~six bolts}; lockring {internal|external}; carrier none; thickness 1.8; leastThickness 1.5"),
        new("frontThruAxle rearThruAxle", 700, 29, 55, "Thru-axle {thread}, {long} mm", "thread {thread:M12x1.5|M12x1.0|M15x1.5}; length {long:119|127|158|163|172|180}"),
    ];
}
