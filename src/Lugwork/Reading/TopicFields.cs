namespace Lugwork.Reading;

/// <summary>Which field of a part a topic means, and how long or wide such a thing can be.</summary>
internal static class TopicFields
{
    public static string? Of(Slot slot, string topic, bool max, bool min, bool lower, bool upper)
    {
        string kind = PartForms.Of(slot).Kind;
        return (kind, topic) switch
        {
            ("frame", "t:post") => "seatTube",
            ("frame", "t:seatclamp" or "t:clamp") => "seatTubeOutside",
            ("frame", "t:insertion") => max ? "mostInsertion" : min ? "leastInsertion" : null,
            ("frame", "t:rotor") => max ? "largestRearRotor" : null,
            ("frame", "t:axlelength") => "rearAxleLength",
            ("frame", "t:chainring") => max ? "largestRing" : null,
            ("frame", "t:travel") => max ? "mostForkTravel" : null,
            ("frame", "t:axletocrown") => max ? "longestFork" : null,
            ("frame", "t:shellbore") => "shellBore",
            ("fork", "t:rotor") => max ? "largestFrontRotor" : null,
            ("fork", "t:travel" or "t:stroke") => "travel",
            ("fork", "t:axletocrown" or "t:depth") => "axleToCrown",
            ("fork", "t:steererlength") => "steererLength",
            ("fork", "t:axlelength") => "frontAxleLength",
            ("fork", "t:crownrace") => "crownSeat",
            ("wheel", "t:inner") => "innerWidth",
            ("wheel", "t:depth" or "t:axletocrown") => "rimDepth",
            ("wheel", "t:valvehole") => "valveHole",
            ("thru-axle", "t:length" or "t:axlelength" or "t:axle") => "length",
            ("seatpost", "t:length") => "length",
            ("seatpost", "t:insertion") => min ? "mark" : null,
            ("rotor", "t:thickness") => "thickness",
            ("handlebar", "t:grip") => "grip",
            ("headset", "t:crownrace") => "crownRace",
            ("headset", "t:steerer") => "steerer",
            ("rider", "t:luggage") => "massWithLuggage",
            ("rider", "t:systemweight") => "systemMass",
            ("rider", _) => "mass",
            (_, "t:systemweight") => "systemLimit",
            (_, "t:loadlimit") => "loadLimit",
            ("seatpost" or "stem" or "handlebar", "t:rider") => "riderLimit",
            ("seatpost" or "stem" or "handlebar", "t:riderweight") => max ? "riderLimit" : null,
            _ => null,
        };
    }

    public static (decimal Least, decimal Most) Range(Slot slot, string field) => field switch
    {
        "largestRearRotor" or "largestFrontRotor" => (120, 250),
        "travel" or "mostForkTravel" => (10, 250),
        "axleToCrown" or "longestFork" => (250, 700),
        "steererLength" => (100, 400),
        "rimDepth" => (8, 130),
        "innerWidth" => (10, 115),
        "leastInsertion" or "mostInsertion" or "mark" or "insertion" => (30, 450),
        "valveLength" => (20, 120),
        "width" => (8, 130),
        "thickness" or "thickestRotor" or "thinnestRotor" => (1, 3),
        "narrowestTyre" or "widestTyre" => (10, 132),
        "narrowestShell" or "widestShell" => (55, 135),
        "rearAxleLength" or "frontAxleLength" => (80, 270),
        "length" => slot == Slot.Seatpost ? (100, 650) : slot == Slot.FrontTubelessValve || slot == Slot.RearTubelessValve ? (20, 120) : (80, 270),
        "shellBore" => (30, 60),
        "rearBossSpacing" or "frontBossSpacing" => (50, 110),
        "rearStayThickness" => (5, 60),
        "upperBoreDepth" or "lowerBoreDepth" or "upperSkirt" or "lowerSkirt" => (3, 60),
        "rearBoltToRim" or "frontBoltToRim" => (25, 110),
        "bedHole" => (3, 15),
        "boltLength" => (10, 80),
        "binderGap" => (0, 20),
        "chainstay" => (300, 600),
        "headTubeLength" => (60, 300),
        "crankLength" => (100, 220),
        "qFactor" => (120, 280),
        "mostSpacers" => (5, 100),
        "driveSpacer" => (0, 20),
        _ => (1, 1000),
    };
}
