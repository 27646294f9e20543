using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;

namespace Lugwork;

/// <summary>The text forms of every kind of part.</summary>
internal static partial class PartForms
{
    private const string Millimetres = "millimetres, such as 80 or 80 ± 1, or none, or unknown";

    private const string Angles = "degrees from 30 to 110, such as 67.5\u00B0, or none, or unknown";

    public static PartForm<Frame> Frame { get; } = new("frame", () => new Frame(),
        PartField<Frame>.Of("kind", "a kind such as touring", p => p.Kind, (p, v) => p with { Kind = v }, [], bare: true),
        PartField<Frame>.Of("material", "steel, aluminium, carbon or titanium", p => p.Material, (p, v) => p with { Material = v }, [], bare: true),
        PartField<Frame>.Of("rear", "axle and width, such as 12x142", p => p.RearEnd, (p, v) => p with { RearEnd = v }, ["rear axle", "rear end", "rear spacing", "rear hub"], where: h => h.IsRear),
        PartField<Frame>.Of("seatTube", "a diameter such as 27.2", p => p.SeatTubeBore, (p, v) => p with { SeatTubeBore = v }, ["seat tube", "seatpost", "seat post"]),
        PartField<Frame>.Of("leastInsertion", Millimetres, p => p.LeastInsertion, (p, v) => p with { LeastInsertion = v }, ["least insertion", "minimum insertion"]),
        PartField<Frame>.Of("mostInsertion", Millimetres, p => p.MostInsertion, (p, v) => p with { MostInsertion = v }, ["most insertion", "maximum insertion"]),
        PartField<Frame>.Of("rearBrake", "a mount such as IS, PM-160, FM-rear-140 or none", p => p.RearBrakeMount, (p, v) => p with { RearBrakeMount = v }, ["rear brake", "brake"], where: m => m.IsRear),
        PartField<Frame>.Of("largestRearRotor", Millimetres, p => p.LargestRearRotor, (p, v) => p with { LargestRearRotor = v }, ["largest rear rotor", "largest rotor", "max rotor"]),
        PartField<Frame>.Of("rearAxleThread", "a thread such as M12x1.5, or none", p => p.RearAxleThread, (p, v) => p with { RearAxleThread = v }, ["rear axle thread", "axle thread"]),
        HeadTubeEnds,
        PartField<Frame>.Of("headTubeUpper", "an end such as ZS44, EC34 or IS42", p => p.HeadTubeUpper, (p, v) => p with { HeadTubeUpper = v }, ["head tube upper", "upper head tube"]),
        PartField<Frame>.Of("headTubeLower", "an end such as ZS56, EC34 or IS52", p => p.HeadTubeLower, (p, v) => p with { HeadTubeLower = v }, ["head tube lower", "lower head tube"]),
        PartField<Frame>.Of("shell", "a shell such as BSA 68 or T47 85.5", p => p.Shell, (p, v) => p with { Shell = v }, ["bottom bracket", "bottom bracket shell"]),
        PartField<Frame>.Of("seatTubeOutside", "a diameter such as 31.8, or none for a binder of its own", p => p.SeatTubeOutside, (p, v) => p with { SeatTubeOutside = v }, ["seat tube outside", "seat tube od", "seat clamp"]),
        PartField<Frame>.Of("hanger", "a hanger such as M10x1, direct-mount or UDH", p => p.Hanger, (p, v) => p with { Hanger = v }, ["derailleur hanger"]),
        PartField<Frame>.Of("rearTriangle", "closed, or opens where a belt can be led in", p => p.RearTriangle, (p, v) => p with { RearTriangle = v }, ["rear triangle", "stays"]),
        PartField<Frame>.Of("largestRearTyre", "an ISO size such as 42-622, or none", p => p.LargestRearTyre, (p, v) => p with { LargestRearTyre = v }, ["largest rear tyre", "largest tyre"]),
        PartField<Frame>.Of("rearBosses", "bosses such as cantilever-622, or none", p => p.RearBosses, (p, v) => p with { RearBosses = v }, ["rear bosses", "bosses"]),
        PartField<Frame>.Of("rearBossSpacing", Millimetres, p => p.RearBossSpacing, (p, v) => p with { RearBossSpacing = v }, ["rear boss spacing", "boss spacing"]),
        PartField<Frame>.Of("rearBrakeHole", "a bolt such as recessed-6 or nutted-6, or none", p => p.RearBrakeHole, (p, v) => p with { RearBrakeHole = v }, ["rear brake hole", "brake hole"]),
        PartField<Frame>.Of("rearBoltToRim", Millimetres, p => p.RearBoltToRim, (p, v) => p with { RearBoltToRim = v }, ["rear bolt to rim", "bolt to rim"]),
        PartField<Frame>.Of("rearBoltToRimOf", "the ISO diameter, such as 622", p => p.RearBoltToRimOf, (p, v) => p with { RearBoltToRimOf = v }, ["rear bolt to rim of", "bolt to rim of"]),
        PartField<Frame>.Of("rearStayThickness", Millimetres, p => p.RearStayThickness, (p, v) => p with { RearStayThickness = v }, ["rear stay thickness", "stay thickness"]),
        PartField<Frame>.Of("rearAxleLength", Millimetres, p => p.RearAxleLength, (p, v) => p with { RearAxleLength = v }, ["rear axle length", "axle length"]),
        PartField<Frame>.Of("rearDropout", "horizontal, vertical, or none for closed ends", p => p.RearDropout, (p, v) => p with { RearDropout = v }, ["rear dropout", "rear slot", "dropout"]),
        PartField<Frame>.Of("frontDerailleurMount", "a mount such as 31.8 for a round tube, braze-on or low direct S3, or none", p => p.FrontDerailleurMount, (p, v) => p with { FrontDerailleurMount = v }, ["front derailleur", "front derailleur mount", "front mount"]),
        PartField<Frame>.Of("chainGuideTabs", "ISCG, ISCG05 or none", p => p.ChainGuideTabs, (p, v) => p with { ChainGuideTabs = v }, ["guide tabs", "chain guide tabs"], where: m => m.Tabs is not null),
        PartField<Frame>.Of("largestRing", "teeth such as 42, or none", p => p.LargestRing, (p, v) => p with { LargestRing = v }, ["largest ring", "largest chainring"]),
        PartField<Frame>.Of("shock", "a size such as 210x55 or trunnion 185x55, or none", p => p.Shock, (p, v) => p with { Shock = v }, ["rear shock", "shock size"]),
        PartField<Frame>.Of("lowerShockHardware", "width and bolt, such as 22.2x8", p => p.LowerShockHardware, (p, v) => p with { LowerShockHardware = v }, ["lower shock hardware"]),
        PartField<Frame>.Of("upperShockHardware", "width and bolt, such as 22.2x8, or none for a trunnion", p => p.UpperShockHardware, (p, v) => p with { UpperShockHardware = v }, ["upper shock hardware"]),
        PartField<Frame>.Of("longestFork", Millimetres, p => p.LongestFork, (p, v) => p with { LongestFork = v }, ["longest fork"]),
        PartField<Frame>.Of("mostForkTravel", Millimetres, p => p.MostForkTravel, (p, v) => p with { MostForkTravel = v }, ["most fork travel"]),
        PartField<Frame>.Of("forkCrowns", "single or dual", p => p.ForkCrowns, (p, v) => p with { ForkCrowns = v }, ["fork crowns"]),
        PartField<Frame>.Of("upperBoreDepth", Millimetres, p => p.UpperBoreDepth, (p, v) => p with { UpperBoreDepth = v }, ["upper bore depth"]),
        PartField<Frame>.Of("lowerBoreDepth", Millimetres, p => p.LowerBoreDepth, (p, v) => p with { LowerBoreDepth = v }, ["lower bore depth"]),
        PartField<Frame>.Of("headsetCables", "outside or through", p => p.HeadsetCables, (p, v) => p with { HeadsetCables = v }, ["headset cables", "cables at the headset"]),
        PartField<Frame>.Of("shellBore", Millimetres, p => p.ShellBore, (p, v) => p with { ShellBore = v }, ["shell bore"]),
        PartField<Frame>.Of("shellFace", "bare, painted, insert-for-outboard or other-insert", p => p.ShellFace, (p, v) => p with { ShellFace = v }, ["shell face"]),
        PartField<Frame>.Of("binder", "collar or welded-tabs", p => p.Binder, (p, v) => p with { Binder = v }, ["seat binder"]),
        PartField<Frame>.Of("dropperEntry", "hole or no-hole", p => p.DropperEntry, (p, v) => p with { DropperEntry = v }, ["dropper entry"]),
        LoadLimit<Frame>(p => p.LoadLimit, (p, v) => p with { LoadLimit = v }),
        SystemLimit<Frame>(p => p.SystemLimit, (p, v) => p with { SystemLimit = v }),
        UseOf<Frame>(p => p.Use, (p, v) => p with { Use = v }),
        MadeOf<Frame>(p => p.Made, (p, v) => p with { Made = v }),
        PartField<Frame>.Of("chainstay", Millimetres, p => p.Chainstay, (p, v) => p with { Chainstay = v }, ["chain stay"]),
        PartField<Frame>.Of("headTubeLength", Millimetres, p => p.HeadTubeLength, (p, v) => p with { HeadTubeLength = v }, ["head tube length"]),
        PartField<Frame>.Of("seatTubeLength", Millimetres, p => p.SeatTubeLength, (p, v) => p with { SeatTubeLength = v }, ["seat tube length"]),
        PartField<Frame>.Of("frontCentre", Millimetres, p => p.FrontCentre, (p, v) => p with { FrontCentre = v }, ["front centre", "front center"]),
        PartField<Frame>.Of("bottomBracketDrop", Millimetres, p => p.BottomBracketDrop, (p, v) => p with { BottomBracketDrop = v }, ["bottom bracket drop", "BB drop"]),
        PartField<Frame>.Of("standover", Millimetres, p => p.Standover, (p, v) => p with { Standover = v }, ["stand-over"]),
        PartField<Frame>.Of("designFrontBeadSeat", "the ISO diameter, such as 622", p => p.DesignFrontBeadSeat, (p, v) => p with { DesignFrontBeadSeat = v }, ["front wheel of", "designed front wheel"]),
        PartField<Frame>.Of("designRearBeadSeat", "the ISO diameter, such as 584", p => p.DesignRearBeadSeat, (p, v) => p with { DesignRearBeadSeat = v }, ["rear wheel of", "designed rear wheel"]),
        PartField<Frame>.Of("shortestFork", Millimetres, p => p.ShortestFork, (p, v) => p with { ShortestFork = v }, ["shortest fork"]),
        PartField<Frame>.Of("designAxleToCrown", Millimetres, p => p.DesignAxleToCrown, (p, v) => p with { DesignAxleToCrown = v }, ["fork of the design", "designed fork"]),
        PartField<Frame>.Of("headAngle", Angles, p => p.HeadAngle, (p, v) => p with { HeadAngle = v }, ["head angle", "head tube angle"], where: IsHeadAngle),
        PartField<Frame>.Of("wheelbase", Millimetres, p => p.Wheelbase, (p, v) => p with { Wheelbase = v }, ["wheel base"]),
        PartField<Frame>.Of("slackestHeadAngle", Angles, p => p.SlackestHeadAngle, (p, v) => p with { SlackestHeadAngle = v }, ["slackest head angle"], where: IsHeadAngle),
        PartField<Frame>.Of("steepestHeadAngle", Angles, p => p.SteepestHeadAngle, (p, v) => p with { SteepestHeadAngle = v }, ["steepest head angle"], where: IsHeadAngle),
        PartField<Frame>.Of("smallestOuterRing", "teeth such as 52, or none", p => p.SmallestOuterRing, (p, v) => p with { SmallestOuterRing = v }, ["smallest outer ring"]),
        PartField<Frame>.Of("downTubeDrop", Millimetres, p => p.DownTubeDrop, (p, v) => p with { DownTubeDrop = v }, ["down tube drop"]),
        PartField<Frame>.Of("rearHoseSide", "left, right or either", p => p.RearHoseSide, (p, v) => p with { RearHoseSide = v }, ["rear hose side"]),
        PartField<Frame>.Of("cableGuides", "stops, full-length, clips, inside, or none where it carries nothing", p => p.CableGuides, (p, v) => p with { CableGuides = v }, ["cable guides"]))
        {
            Contradiction = OtherThanUniversal,
        };

    private static bool IsHeadAngle(FrameAngle angle) => angle.Degrees is >= 30 and <= 110;

    public static PartForm<Fork> Fork { get; } = new("fork", () => new Fork(),
        PartField<Fork>.Of("front", "axle and width, such as 12x100", p => p.FrontEnd, (p, v) => p with { FrontEnd = v }, ["front axle", "front end", "axle"], where: h => !h.IsRear),
        PartField<Fork>.Of("frontBrake", "a mount such as IS, PM-160, FM-front-140 or none", p => p.FrontBrakeMount, (p, v) => p with { FrontBrakeMount = v }, ["front brake", "brake"], where: m => m.IsFront),
        PartField<Fork>.Of("largestFrontRotor", Millimetres, p => p.LargestFrontRotor, (p, v) => p with { LargestFrontRotor = v }, ["largest front rotor", "largest rotor", "max rotor"]),
        SteererShape,
        PartField<Fork>.Of("steerer", "a steerer such as 28.6 or 1-1/8", p => p.Steerer, (p, v) => p with { Steerer = v }, []),
        PartField<Fork>.Of("steererKind", "threadless or threaded", p => p.SteererKind, (p, v) => p with { SteererKind = v }, ["steerer kind"], bare: true),
        PartField<Fork>.Of("crownSeat", "a seat such as 30 or 40", p => p.CrownSeat, (p, v) => p with { CrownSeat = v }, ["crown seat", "crown race"]),
        PartField<Fork>.Of("frontAxleThread", "a thread such as M12x1.5, or none", p => p.FrontAxleThread, (p, v) => p with { FrontAxleThread = v }, ["front axle thread", "axle thread"]),
        PartField<Fork>.Of("largestFrontTyre", "an ISO size such as 42-622, or none", p => p.LargestFrontTyre, (p, v) => p with { LargestFrontTyre = v }, ["largest front tyre", "largest tyre"]),
        PartField<Fork>.Of("frontBosses", "bosses such as cantilever-622, or none", p => p.FrontBosses, (p, v) => p with { FrontBosses = v }, ["front bosses", "bosses"]),
        PartField<Fork>.Of("frontBossSpacing", Millimetres, p => p.FrontBossSpacing, (p, v) => p with { FrontBossSpacing = v }, ["front boss spacing", "boss spacing"]),
        PartField<Fork>.Of("frontBrakeHole", "a bolt such as recessed-6 or nutted-6, or none", p => p.FrontBrakeHole, (p, v) => p with { FrontBrakeHole = v }, ["front brake hole", "brake hole"]),
        PartField<Fork>.Of("frontBoltToRim", Millimetres, p => p.FrontBoltToRim, (p, v) => p with { FrontBoltToRim = v }, ["front bolt to rim", "bolt to rim"]),
        PartField<Fork>.Of("frontBoltToRimOf", "the ISO diameter, such as 622", p => p.FrontBoltToRimOf, (p, v) => p with { FrontBoltToRimOf = v }, ["front bolt to rim of", "bolt to rim of"]),
        PartField<Fork>.Of("frontAxleLength", Millimetres, p => p.FrontAxleLength, (p, v) => p with { FrontAxleLength = v }, ["front axle length", "axle length"]),
        PartField<Fork>.Of("frontLips", "kept or missing", p => p.FrontLips, (p, v) => p with { FrontLips = v }, ["front lips", "retention lips", "lips"]),
        PartField<Fork>.Of("axleToCrown", Millimetres, p => p.AxleToCrown, (p, v) => p with { AxleToCrown = v }, ["axle to crown", "axle-to-crown"]),
        PartField<Fork>.Of("travel", "millimetres, such as 120, or none for a rigid fork", p => p.Travel, (p, v) => p with { Travel = v }, []),
        PartField<Fork>.Of("crowns", "single or dual", p => p.Crowns, (p, v) => p with { Crowns = v }, ["crown type"]),
        PartField<Fork>.Of("steererMaterial", "steel, aluminium, carbon or titanium", p => p.SteererMaterial, (p, v) => p with { SteererMaterial = v }, ["steerer material"]),
        PartField<Fork>.Of("knobRise", Millimetres, p => p.KnobRise, (p, v) => p with { KnobRise = v }, ["knob rise"]),
        PartField<Fork>.Of("material", "steel, aluminium, carbon or titanium", p => p.Material, (p, v) => p with { Material = v }, []),
        LoadLimit<Fork>(p => p.LoadLimit, (p, v) => p with { LoadLimit = v }),
        SystemLimit<Fork>(p => p.SystemLimit, (p, v) => p with { SystemLimit = v }),
        UseOf<Fork>(p => p.Use, (p, v) => p with { Use = v }),
        MadeOf<Fork>(p => p.Made, (p, v) => p with { Made = v }),
        PartField<Fork>.Of("steererLength", Millimetres, p => p.SteererLength, (p, v) => p with { SteererLength = v }, ["steerer length"]),
        PartField<Fork>.Of("mostSpacers", Millimetres, p => p.MostSpacers, (p, v) => p with { MostSpacers = v }, ["most spacers"]));

    public static PartForm<Wheel> Wheel { get; } = new("wheel", () => new Wheel(),
        PartField<Wheel>.Of("hub", "axle and width, such as 12x142", p => p.Hub, (p, v) => p with { Hub = v }, [], bare: true),
        PartField<Wheel>.Of("rear", "axle and width, such as 12x142", p => p.Hub, (p, v) => p with { Hub = v }, ["rear hub"], where: h => h.IsRear, sets: "hub"),
        PartField<Wheel>.Of("front", "axle and width, such as 12x100", p => p.Hub, (p, v) => p with { Hub = v }, ["front hub"], where: h => !h.IsRear, sets: "hub"),
        PartField<Wheel>.Of("ends", "swappable or fixed", p => p.Ends, (p, v) => p with { Ends = v }, ["hub ends"], bare: true),
        PartField<Wheel>.Of("body", "a freehub body such as HG, HG-M, XD or none", p => p.FreehubBody, (p, v) => p with { FreehubBody = v }, ["freehub", "freehub body", "driver"], bare: true),
        PartField<Wheel>.Of("rotorFixing", "six-bolt, center-lock or none", p => p.RotorFixing, (p, v) => p with { RotorFixing = v }, ["rotor fixing", "rotor"], bare: true),
        PartField<Wheel>.Of("beadSeat", "the ISO diameter, such as 622", p => p.BeadSeat, (p, v) => p with { BeadSeat = v }, ["bead seat", "rim"]),
        PartField<Wheel>.Of("innerWidth", Millimetres, p => p.InnerWidth, (p, v) => p with { InnerWidth = v }, ["inner width", "inside width", "inner"]),
        PartField<Wheel>.Of("rimType", "SS, C, HB, TSS or TC", p => p.RimType, (p, v) => p with { RimType = v }, ["rim type"]),
        PartField<Wheel>.Of("hold", "clincher or tubular", p => p.Hold, (p, v) => p with { Hold = v }, ["holds", "tyre hold"]),
        PartField<Wheel>.Of("valveHole", "6.5 or 8.5, or the name of its valve", p => p.ValveHole, (p, v) => p with { ValveHole = v }, ["valve hole"]),
        PartField<Wheel>.Of("rimDepth", Millimetres, p => p.RimDepth, (p, v) => p with { RimDepth = v }, ["rim depth"]),
        PartField<Wheel>.Of("bedHole", Millimetres, p => p.BedHole, (p, v) => p with { BedHole = v }, ["bed hole", "spoke hole"]),
        PartField<Wheel>.Of("thread", "a thread such as ISO or French", p => p.Thread, (p, v) => p with { Thread = v }, ["hub thread"]),
        PartField<Wheel>.Of("brakeTrack", "aluminium, carbon, or none for a rim made for discs", p => p.BrakeTrack, (p, v) => p with { BrakeTrack = v }, ["brake track"]),
        PartField<Wheel>.Of("hubBrake", "drum, roller, coaster or none", p => p.HubBrake, (p, v) => p with { HubBrake = v }, ["hub brake"], where: t => t.Place == Brakes.BrakePlace.Hub),
        PartField<Wheel>.Of("axleThread", "a thread such as 3/8x26, or none", p => p.AxleThread, (p, v) => p with { AxleThread = v }, ["axle thread"]),
        PartField<Wheel>.Of("washers", "the slot that the washers are for, horizontal or vertical, or none", p => p.Washers, (p, v) => p with { Washers = v }, []),
        PartField<Wheel>.Of("hubHoles", "a number of spoke holes such as 32", p => p.HubHoles, (p, v) => p with { HubHoles = v }, ["hub holes"]),
        PartField<Wheel>.Of("rimHoles", "a number of spoke holes such as 32", p => p.RimHoles, (p, v) => p with { RimHoles = v }, ["rim holes"]),
        PartField<Wheel>.Of("rimMaterial", "steel, aluminium, carbon or titanium", p => p.RimMaterial, (p, v) => p with { RimMaterial = v }, ["rim material"]),
        PartField<Wheel>.Of("sprocketChainline", Millimetres, p => p.SprocketChainline, (p, v) => p with { SprocketChainline = v }, ["sprocket chainline", "sprocket line"]),
        PartField<Wheel>.Of("cassetteChainline", Millimetres, p => p.CassetteChainline, (p, v) => p with { CassetteChainline = v }, ["cassette chainline", "cassette line"]),
        PartField<Wheel>.Of("rimWall", Millimetres, p => p.RimWall, (p, v) => p with { RimWall = v }, ["rim wall"]),
        LoadLimit<Wheel>(p => p.LoadLimit, (p, v) => p with { LoadLimit = v }),
        SystemLimit<Wheel>(p => p.SystemLimit, (p, v) => p with { SystemLimit = v }),
        UseOf<Wheel>(p => p.Use, (p, v) => p with { Use = v }))
        {
            Contradiction = OtherHolesThanHub,
        };

    public static PartForm<Tyre> Tyre { get; } = new("tyre", () => new Tyre(),
        PartField<Tyre>.Of("size", "the ISO size, such as 37-622", p => p.Size, (p, v) => p with { Size = v }, [], bare: true),
        PartField<Tyre>.Of("bead", "wired, folding or tubeless", p => p.Bead, (p, v) => p with { Bead = v }, [], bare: true),
        PartField<Tyre>.Of("hold", "clincher or tubular", p => p.Hold, (p, v) => p with { Hold = v }, ["held by"], bare: true),
        PartField<Tyre>.Of("mountedWidth", Millimetres, p => p.MountedWidth, (p, v) => p with { MountedWidth = v }, ["mounted width"]),
        PartField<Tyre>.Of("mountedRim", Millimetres, p => p.MountedRim, (p, v) => p with { MountedRim = v }, ["mounted on rim"]))
        {
            Contradiction = ReadingBounds.Contradiction,
        };

    public static PartForm<Cassette> Cassette { get; } = new("cassette", () => new Cassette(),
        PartField<Cassette>.Of("pattern", "a pattern such as 9-speed HG", p => p.Pattern, (p, v) => p with { Pattern = v }, [], bare: true),
        PartField<Cassette>.Of("speeds", "speeds such as 9, or 1/8 for one sprocket", p => p.Speeds, (p, v) => p with { Speeds = v }, ["sprockets"]),
        PartField<Cassette>.Of("thread", "a thread such as ISO or French", p => p.Thread, (p, v) => p with { Thread = v }, []),
        PartField<Cassette>.Of("lockring", "lockring-1.29x24 for the left-hand ring of a fixed sprocket, or none", p => p.Lockring, (p, v) => p with { Lockring = v }, [], where: t => t.IsLeftHand),
        PartField<Cassette>.Of("spacing", "a spacing such as 9, 11-wide or LG-10", p => p.Spacing, (p, v) => p with { Spacing = v }, ["sprocket spacing"]),
        PartField<Cassette>.Of("smallestSprocket", "teeth such as 11", p => p.SmallestSprocket, (p, v) => p with { SmallestSprocket = v }, ["smallest sprocket"]),
        PartField<Cassette>.Of("largestSprocket", "teeth such as 34", p => p.LargestSprocket, (p, v) => p with { LargestSprocket = v }, ["largest sprocket"]))
        {
            Contradiction = OtherSprocketsThanPattern,
        };

    public static PartForm<Rotor> Rotor { get; } = new("rotor", () => new Rotor(),
        PartField<Rotor>.Of("size", "a diameter such as 160", p => p.Size, (p, v) => p with { Size = v }, ["diameter"], bare: true),
        PartField<Rotor>.Of("fixing", "six-bolt or center-lock", p => p.Fixing, (p, v) => p with { Fixing = v }, [], bare: true),
        PartField<Rotor>.Of("lockring", "internal, external or none", p => p.Lockring, (p, v) => p with { Lockring = v }, []),
        PartField<Rotor>.Of("carrier", "bolts, pins, with-lockring or none", p => p.Carrier, (p, v) => p with { Carrier = v }, []),
        PartField<Rotor>.Of("thickness", Millimetres, p => p.Thickness, (p, v) => p with { Thickness = v }, []),
        PartField<Rotor>.Of("leastThickness", Millimetres, p => p.LeastThickness, (p, v) => p with { LeastThickness = v }, ["least thickness", "minimum thickness"]));

    public static PartForm<Caliper> Caliper { get; } = new("caliper", () => new Caliper(),
        PartField<Caliper>.Of("mounting", "post, flat or IS", p => p.Mounting, (p, v) => p with { Mounting = v }, ["mount"], bare: true),
        PartField<Caliper>.Of("type", "disc-hydraulic, disc-cable-road, disc-cable-off-road or disc-cable-hydraulic", p => p.Type, (p, v) => p with { Type = v }, ["works by"], where: t => t.Place == Brakes.BrakePlace.DiscMount),
        PartField<Caliper>.Of("fluid", "mineral-oil, glycol-ether or none", p => p.Fluid, (p, v) => p with { Fluid = v }, []),
        PartField<Caliper>.Of("thickestRotor", Millimetres, p => p.ThickestRotor, (p, v) => p with { ThickestRotor = v }, ["thickest rotor"]),
        PartField<Caliper>.Of("thinnestRotor", Millimetres, p => p.ThinnestRotor, (p, v) => p with { ThinnestRotor = v }, ["thinnest rotor"]),
        PartField<Caliper>.Of("boltLength", Millimetres, p => p.BoltLength, (p, v) => p with { BoltLength = v }, ["bolt length"]),
        PartField<Caliper>.Of("adapter", "an increment such as +20, or none", p => p.Adapter, (p, v) => p with { Adapter = v }, []),
        PartField<Caliper>.Of("adapterOn", "the mount that the adapter is made for, such as PM-160 or IS-rear", p => p.AdapterOn, (p, v) => p with { AdapterOn = v }, ["adapter on"]),
        PartField<Caliper>.Of("secondAdapter", "an increment such as +20, or none", p => p.SecondAdapter, (p, v) => p with { SecondAdapter = v }, ["second adapter"]))
        {
            Contradiction = OtherWorkThanFluid,
        };

    public static PartForm<Seatpost> Seatpost { get; } = new("seatpost", () => new Seatpost(),
        PartField<Seatpost>.Of("diameter", "a diameter such as 27.2", p => p.Diameter, (p, v) => p with { Diameter = v }, [], bare: true),
        DiameterByLength,
        PartField<Seatpost>.Of("length", Millimetres, p => p.Length, (p, v) => p with { Length = v }, []),
        PartField<Seatpost>.Of("mark", Millimetres, p => p.Mark, (p, v) => p with { Mark = v }, ["minimum insertion", "own mark"]),
        MadeOf<Seatpost>(p => p.Made, (p, v) => p with { Made = v }),
        PartField<Seatpost>.Of("insertion", Millimetres, p => p.Insertion, (p, v) => p with { Insertion = v }, ["sits", "inserted"]),
        PartField<Seatpost>.Of("railClamp", "a clamp such as 7-round or 7x9", p => p.RailClamp, (p, v) => p with { RailClamp = v }, ["rail clamp", "rails"]),
        PartField<Seatpost>.Of("material", "steel, aluminium, carbon or titanium", p => p.Material, (p, v) => p with { Material = v }, []),
        PartField<Seatpost>.Of("binderGap", Millimetres, p => p.BinderGap, (p, v) => p with { BinderGap = v }, ["binder gap"]),
        RiderLimit<Seatpost>(p => p.RiderLimit, (p, v) => p with { RiderLimit = v }),
        SystemLimit<Seatpost>(p => p.SystemLimit, (p, v) => p with { SystemLimit = v }),
        UseOf<Seatpost>(p => p.Use, (p, v) => p with { Use = v }))
        {
            Contradiction = LongerThanItself,
        };

    private static (string Field, string Reason, string Expected)? OtherSprocketsThanPattern(Cassette cassette) =>
        cassette.Contradicts
            ? ("speeds", $"a cassette {cassette.Pattern} has sprockets for {Drivetrain.CassetteSpeeds.Of(cassette.Pattern)}, not for {cassette.Speeds}", $"{Drivetrain.CassetteSpeeds.Of(cassette.Pattern)}, or another pattern")
            : null;

    private static (string Field, string Reason, string Expected)? OtherHolesThanHub(Wheel wheel) =>
        wheel.HolesContradict
            ? ("rimHoles", $"a hub with {wheel.HubHoles} holes is not laced to a rim with {wheel.RimHoles}, save two to one by the wheel's maker", $"{wheel.HubHoles}, or another hub")
            : null;

    private static (string Field, string Reason, string Expected)? OtherThanUniversal(Frame frame) =>
        frame.Hanger.State == KnownState.Value && frame.Hanger.Value == Hanger.Universal
        && frame.RearAxleThread.Values is { IsEmpty: false } threads && !threads.Any(t => t == AxleThread.M12Pitch1 || t == AxleThread.Own)
            ? ("rearAxleThread", "the axle of a universal hanger screws into its bolt, which is M12 x 1.0", "M12x1.0, or another hanger")
            : null;

    private static (string Field, string Reason, string Expected)? LongerThanItself(Seatpost post)
    {
        const string Expected = "at most the length of the post";
        if (post.Length.State != KnownState.Value)
        {
            return null;
        }

        long length = post.Length.Value.FitCode;
        return post.Insertion.State == KnownState.Value && post.Insertion.Value.FitCode > length ? ("insertion", "the post would sit deeper than it is long", Expected)
            : post.Mark.State == KnownState.Value && post.Mark.Value.FitCode > length ? ("mark", "the mark would stand above the top of the post", Expected)
            : null;
    }

    private static PartField<Seatpost> DiameterByLength => new()
    {
        Key = "size",
        Sets = ["diameter", "length"],
        Words = [],
        Bare = true,
        Expected = "diameter by length, such as 27.2 x 350",
        Values = static () => FieldValues.Words,
        Write = _ => "unknown",
        Read = (Seatpost part, string text, out Seatpost read, out int position, out string reason) =>
        {
            read = part;
            position = text.AsSpan().IndexOfAny("xX*\u00D7");
            reason = "diameter by length is expected, such as 27.2 x 350";
            if (position < 0)
            {
                position = 0;
                return false;
            }

            TextReading<SeatpostDiameter> diameter = SeatpostDiameter.Read(text.AsSpan(0, position).Trim());
            TextReading<Dimension> length = Dimension.Read(text.AsSpan(position + 1).Trim());
            if (!diameter.IsClear || !length.IsClear)
            {
                reason = diameter.IsClear ? length.Reason : diameter.Reason;
                return false;
            }

            Evidence evidence = new(EvidenceKind.Stated, text);
            read = part with { Diameter = Known<SeatpostDiameter>.Of(diameter.Values[0], evidence), Length = Known<Dimension>.Of(length.Values[0], evidence) };
            return true;
        },
    };

    public static IPartForm Of(Slot slot) =>
        slot == Slot.Frame ? Frame
        : slot == Slot.Fork ? Fork
        : slot == Slot.FrontWheel || slot == Slot.RearWheel ? Wheel
        : slot == Slot.FrontTyre || slot == Slot.RearTyre ? Tyre
        : slot == Slot.Cassette ? Cassette
        : slot == Slot.FrontRotor || slot == Slot.RearRotor ? Rotor
        : slot == Slot.FrontCaliper || slot == Slot.RearCaliper ? Caliper
        : slot == Slot.Seatpost ? Seatpost
        : slot == Slot.FrontThruAxle || slot == Slot.RearThruAxle ? ThruAxle
        : slot == Slot.Headset ? Headset
        : slot == Slot.Stem ? Stem
        : slot == Slot.Handlebar ? Handlebar
        : slot == Slot.SeatClamp ? SeatClamp
        : slot == Slot.Saddle ? Saddle
        : slot == Slot.BottomBracket ? BottomBracket
        : slot == Slot.Crankset ? Crankset
        : slot == Slot.Pedals ? Pedals
        : slot == Slot.Chain ? Chain
        : slot == Slot.FrontBrakeLever || slot == Slot.RearBrakeLever ? BrakeLever
        : slot == Slot.FrontRimBrake || slot == Slot.RearRimBrake ? RimBrake
        : slot == Slot.FrontAxleNuts || slot == Slot.RearAxleNuts ? AxleNuts
        : slot == Slot.RearShifter || slot == Slot.FrontShifter ? Shifter
        : slot == Slot.FrontDerailleur ? FrontDerailleur
        : slot == Slot.ChainGuide ? ChainGuide
        : slot == Slot.Chainring ? Chainring
        : slot == Slot.Shock ? Shock
        : slot == Slot.RearDerailleur ? RearDerailleur
        : OfSmaller(slot);
}
