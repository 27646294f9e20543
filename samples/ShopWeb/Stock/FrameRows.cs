using System.Collections.Immutable;

namespace ShopWeb.Stock;

/// <summary>Frames and forks of the invented stock. Some leave out what a poor spec sheet leaves out.</summary>
internal static class FrameRows
{
    public static ImmutableArray<ArticleRow> All { get; } =
    [
        new("frame", 160, 780, 1_350, "Road frame, {mat}, {shell}, {size} cm",
            "kind road; material {mat:carbon|aluminium}; rear R142-12; rearAxleThread M12x1.5; hanger M10x1; headTubeUpper IS42; headTubeLower IS52; shell {shell:BB86|BSA 68|T47 68}; "
            + "seatTube 27.2; seatTubeOutside 31.8; {leastInsertion 80|}; {mostInsertion 230|}; rearBrake FM-rear-140; largestRearRotor 160; largestRearTyre {32-622|35-622}; rearStayThickness 20; "
            + "rearAxleLength 163; rearDropout none; frontDerailleurMount braze-on; largestRing {50|53}; longestFork 380; mostForkTravel none; forkCrowns single; headTubeLength {size:130~52|150~55|170~58}; "
            + "chainstay 415; shock none; upperBoreDepth none; lowerBoreDepth none; headsetCables outside; binder collar"),
        new("frame", 160, 690, 1_700, "Gravel frame, {mat}, {shell}, {size} cm",
            "kind gravel; material {mat:carbon|aluminium|steel}; rear R142-12; rearAxleThread M12x1.0; hanger UDH; headTubeUpper {IS42|ZS44}; headTubeLower {IS52|ZS56}; shell {shell:BSA 68|T47 85.5|BB86}; "
            + "seatTube 27.2; seatTubeOutside 31.8; {leastInsertion 80|}; {mostInsertion 250|}; rearBrake FM-rear-140; largestRearRotor 160; largestRearTyre {45-622|50-622}; {rearStayThickness 20|}; "
            + "{rearAxleLength 172|}; rearDropout none; frontDerailleurMount {braze-on|none}; largestRing {46|48}; longestFork 400; mostForkTravel {none|40}; forkCrowns single; headTubeLength {size:120~52|140~55|160~58}; "
            + "chainstay 430; shock none; upperBoreDepth none; lowerBoreDepth none; headsetCables outside; binder collar"),
        new("frame", 120, 420, 2_100, "Touring frame, steel, {shell}, {size} cm",
            "kind touring; material steel; rear {R135-QR|R142-12}; headTubeUpper {EC34|ZS44}; headTubeLower {EC34|ZS44}; shell {shell:BSA 68|BSA 73}; seatTube {27.2|26.8}; seatTubeOutside {28.6|30}; "
            + "leastInsertion 65; mostInsertion {200|none}; rearBrake {IS|PM-160}; largestRearRotor {160|180}; largestRearTyre {42-622|47-622}; hanger M10x1; rearDropout {vertical|none}; frontDerailleurMount 28.6; "
            + "largestRing {48|50}; longestFork 400; mostForkTravel none; forkCrowns single; headTubeLength {size:125~53|145~56|175~60}; chainstay 450; shock none; headsetCables outside; {binder collar|}"),
        new("frame", 120, 560, 1_900, "Hardtail frame, {mat}, {shell}, size {size}",
            "kind hardtail; material {mat:aluminium|steel|titanium}; rear R148-12; rearAxleThread M12x1.0; hanger UDH; headTubeUpper ZS44; headTubeLower ZS56; shell {shell:BSA 73|BB92}; seatTube {30.9|31.6}; "
            + "seatTubeOutside 34.9; {leastInsertion 100|}; {mostInsertion 260|}; rearBrake PM-{160|180}; largestRearRotor {180|203}; largestRearTyre {62-622|65-584}; {rearAxleLength 180|}; rearDropout none; "
            + "frontDerailleurMount none; largestRing {32|34|36}; longestFork {535|555}; mostForkTravel {120|140}; forkCrowns single; headTubeLength {size:110~M|120~L}; chainstay 435; shock none; dropperEntry hole; "
            + "headsetCables outside; binder collar"),
        new("frame", 60, 260, 2_300, "City frame, {mat}, size {size}",
            "kind city; material {mat:aluminium|steel}; rear R135-QR; headTubeUpper EC34; headTubeLower EC34; shell BSA 68; seatTube {27.2|31.6}; seatTubeOutside {31.8|34.9}; {rearBrake IS|rearBosses cantilever-622}; "
            + "largestRearTyre {42-622|47-622}; hanger M10x1; rearDropout vertical; frontDerailleurMount {31.8|none}; headTubeLength {size:140~M|170~L}; chainstay 445; shock none"),
        new("fork", 900, 190, 480, "Fork, carbon, 12 mm axle, {tyre} mm clear, {grade}",
            "front F100-12; frontAxleThread M12x1.5; steererShape tapered 1-1/8 to 1.5; steererKind threadless; frontBrake FM-front-140; largestFrontRotor 160; largestFrontTyre {tyre:35~35|45~45|50~50}-622; frontAxleLength 127; "
            + "axleToCrown {372|380|395}; travel none; steererMaterial {carbon|aluminium}; mostSpacers {30|40}; frontBosses none; frontBrakeHole none; material carbon; {steererLength 300|}{grade:~standard}"),
        new("fork", 600, 95, 1_050, "Fork, steel, {axle}, straight 1-1/8 steerer",
            "front {axle:F100-QR9~quick release|F100-12~12 mm axle|F100-15~15 mm axle}; frontBrake {IS-front|PM-160}; largestFrontRotor {160|180}; steererShape straight 1-1/8; steererKind threadless; steererMaterial steel; "
            + "largestFrontTyre {42|47}-622; axleToCrown {390|395}; travel none; frontLips kept; frontBosses none; frontBrakeHole none; material steel; steererLength 300"),
        new("fork", 500, 480, 1_950, "Suspension fork, {travel} mm travel, 15 mm axle",
            "front F110-15B; {frontAxleThread M15x1.5|}; steererShape tapered 1-1/8 to 1.5; steererKind threadless; steererMaterial aluminium; frontBrake PM-{160|180}; largestFrontRotor 203; largestFrontTyre 65-622; "
            + "axleToCrown {510|531|541}; travel {travel:100|120|130|140}; crowns single; frontBosses none; frontBrakeHole none"),
    ];
}
