using Lugwork.Steering;

namespace Lugwork;

/// <summary>Forms of headset, stem, bar, axle, collar and saddle.</summary>
internal static partial class PartForms
{
    public static PartForm<ThruAxle> ThruAxle { get; } = new("thru-axle", () => new ThruAxle(),
        PartField<ThruAxle>.Of("thread", "diameter and pitch, such as M12x1.5", p => p.Thread, (p, v) => p with { Thread = v }, ["axle"], bare: true),
        PartField<ThruAxle>.Of("length", Millimetres, p => p.Length, (p, v) => p with { Length = v }, []));

    public static PartForm<Headset> Headset { get; } = new("headset", () => new Headset(),
        HeadsetCode,
        UpperHalf,
        LowerHalf,
        PartField<Headset>.Of("upperCup", "type and bore, such as ZS44", p => p.UpperCup, (p, v) => p with { UpperCup = v }, ["upper cup"], where: c => c.IsUpper),
        PartField<Headset>.Of("steerer", "a steerer such as 28.6", p => p.Steerer, (p, v) => p with { Steerer = v }, []),
        PartField<Headset>.Of("lowerCup", "type and bore, such as ZS56", p => p.LowerCup, (p, v) => p with { LowerCup = v }, ["lower cup"], where: c => c.IsLower),
        PartField<Headset>.Of("crownRace", "a seat such as 30 or 40", p => p.CrownRace, (p, v) => p with { CrownRace = v }, ["crown race", "race"]),
        PartField<Headset>.Of("kind", "threadless or threaded", p => p.Kind, (p, v) => p with { Kind = v }, [], bare: true),
        PartField<Headset>.Of("upperSkirt", Millimetres, p => p.UpperSkirt, (p, v) => p with { UpperSkirt = v }, ["upper skirt"]),
        PartField<Headset>.Of("lowerSkirt", Millimetres, p => p.LowerSkirt, (p, v) => p with { LowerSkirt = v }, ["lower skirt"]),
        PartField<Headset>.Of("upperBearing", BearingSizes, p => p.UpperBearing, (p, v) => p with { UpperBearing = v }, ["upper bearing"]),
        PartField<Headset>.Of("lowerBearing", BearingSizes, p => p.LowerBearing, (p, v) => p with { LowerBearing = v }, ["lower bearing"]),
        PartField<Headset>.Of("upperStack", Millimetres, p => p.UpperStack, (p, v) => p with { UpperStack = v }, ["upper stack"]),
        PartField<Headset>.Of("lowerStack", Millimetres, p => p.LowerStack, (p, v) => p with { LowerStack = v }, ["lower stack"]));

    public static PartForm<Stem> Stem { get; } = new("stem", () => new Stem(),
        PartField<Stem>.Of("fixing", "a clamp or quill, such as 28.6 clamp or 22.2 quill", p => p.Foot, (p, v) => p with { Foot = v }, ["steerer"], bare: true),
        PartField<Stem>.Of("bar", "a diameter such as 31.8", p => p.BarClamp, (p, v) => p with { BarClamp = v }, ["bar clamp", "handlebar"]),
        MadeOf<Stem>(p => p.Made, (p, v) => p with { Made = v }),
        PartField<Stem>.Of("mark", Millimetres, p => p.Mark, (p, v) => p with { Mark = v }, ["insertion mark"]),
        PartField<Stem>.Of("insertion", Millimetres, p => p.Insertion, (p, v) => p with { Insertion = v }, ["sits", "inserted"]),
        PartField<Stem>.Of("material", "steel, aluminium, carbon or titanium", p => p.Material, (p, v) => p with { Material = v }, []),
        RiderLimit<Stem>(p => p.RiderLimit, (p, v) => p with { RiderLimit = v }),
        SystemLimit<Stem>(p => p.SystemLimit, (p, v) => p with { SystemLimit = v }),
        UseOf<Stem>(p => p.Use, (p, v) => p with { Use = v }),
        PartField<Stem>.Of("clampHeight", Millimetres, p => p.ClampHeight, (p, v) => p with { ClampHeight = v }, ["clamp height", "stack of the stem"]),
        PartField<Stem>.Of("spacersBelow", Millimetres, p => p.SpacersBelow, (p, v) => p with { SpacersBelow = v }, ["spacers below"]),
        PartField<Stem>.Of("spacersAbove", Millimetres, p => p.SpacersAbove, (p, v) => p with { SpacersAbove = v }, ["spacers above"]))
        {
            Shared = BothEndsOfStem,
            SharedBy = ["fixing", "bar"],
        };

    /// <summary>A stem has a clamp at either end, and sizes that stand for both.</summary>
    private static string? BothEndsOfStem(string piece) =>
        !Cockpit.BarClamp.Read(piece).Values.IsEmpty && !StemFixing.Read(piece).Values.IsEmpty
            ? $"'{piece}' could be fixing or bar: say which, such as fixing 28.6 or bar 31.8"
            : null;

    public static PartForm<Handlebar> Handlebar { get; } = new("handlebar", () => new Handlebar(),
        PartField<Handlebar>.Of("clamp", "a diameter such as 31.8", p => p.Clamp, (p, v) => p with { Clamp = v }, ["clamp diameter"], bare: true),
        PartField<Handlebar>.Of("grip", "a diameter such as 22.2 or 23.8", p => p.Grip, (p, v) => p with { Grip = v }, ["grip diameter"]),
        PartField<Handlebar>.Of("material", "steel, aluminium, carbon or titanium", p => p.Material, (p, v) => p with { Material = v }, []),
        MadeOf<Handlebar>(p => p.Made, (p, v) => p with { Made = v }),
        PartField<Handlebar>.Of("width", Millimetres, p => p.Width, (p, v) => p with { Width = v }, []),
        RiderLimit<Handlebar>(p => p.RiderLimit, (p, v) => p with { RiderLimit = v }),
        SystemLimit<Handlebar>(p => p.SystemLimit, (p, v) => p with { SystemLimit = v }),
        UseOf<Handlebar>(p => p.Use, (p, v) => p with { Use = v }));

    public static PartForm<SeatClamp> SeatClamp { get; } = new("seat clamp", () => new SeatClamp(),
        PartField<SeatClamp>.Of("size", "a diameter such as 31.8", p => p.Size, (p, v) => p with { Size = v }, ["diameter"], bare: true));

    public static PartForm<Saddle> Saddle { get; } = new("saddle", () => new Saddle(),
        PartField<Saddle>.Of("rails", "rails such as 7-round or 7x9", p => p.Rails, (p, v) => p with { Rails = v }, [], bare: true),
        PartField<Saddle>.Of("depth", Millimetres, p => p.Depth, (p, v) => p with { Depth = v }, ["saddle depth"]));

    private static PartField<Headset> HeadsetCode => Custom<Headset>("code", "both halves, such as ZS44/28.6|ZS56/40", ["upperCup", "steerer", "lowerCup", "crownRace"], (Headset part, string text, out string reason) =>
    {
        Known<HeadsetCup> upper = default;
        Known<HeadsetCup> lower = default;
        Known<SteererSize> steerer = default;
        Known<CrownRace> race = default;
        reason = "two halves with a bar between are expected, such as ZS44/28.6|ZS56/40";
        bool good = HeadTubeText.TrySplit(text, out string first, out string second)
            && HeadTubeText.TryHalf(first, c => c.IsUpper, out upper, out steerer, out reason)
            && HeadTubeText.TryHalf(second, c => c.IsLower, out lower, out race, out reason);
        return good ? part with { UpperCup = upper, Steerer = steerer, LowerCup = lower, CrownRace = race } : null;
    }, bare: true);

    private static PartField<Headset> UpperHalf => Custom<Headset>("upper", "a half such as ZS44/28.6", ["upperCup", "steerer"], (Headset part, string text, out string reason) =>
        HeadTubeText.TryHalf(text, c => c.IsUpper, out Known<HeadsetCup> cup, out Known<SteererSize> steerer, out reason) ? part with { UpperCup = cup, Steerer = steerer } : null);

    private static PartField<Headset> LowerHalf => Custom<Headset>("lower", "a half such as ZS56/40", ["lowerCup", "crownRace"], (Headset part, string text, out string reason) =>
        HeadTubeText.TryHalf(text, c => c.IsLower, out Known<HeadsetCup> cup, out Known<CrownRace> race, out reason) ? part with { LowerCup = cup, CrownRace = race } : null);

    private static PartField<Frame> HeadTubeEnds => Custom<Frame>("headTube", "both ends, such as ZS44|ZS56 or EC34/EC34", ["headTubeUpper", "headTubeLower"], (Frame part, string text, out string reason) =>
        HeadTubeText.TryEnds(text, out Known<HeadTubeBore> upper, out Known<HeadTubeBore> lower, out reason) ? part with { HeadTubeUpper = upper, HeadTubeLower = lower } : null, ["head tube", "headset"]);

    private static PartField<Fork> SteererShape => Custom<Fork>("steererShape", "straight or tapered with its sizes, such as tapered 1-1/8 to 1.5", ["steerer", "crownSeat"], (Fork part, string text, out string reason) =>
        SteererText.TryRead(text, out Known<SteererSize> top, out Known<CrownSeat> seat, out reason) ? part with { Steerer = top, CrownSeat = seat } : null, ["steerer shape"]);

    private delegate TPart? ReadWhole<TPart>(TPart part, string text, out string reason);

    /// <summary>A field that says several others at once; it is never written, the others are.</summary>
    private static PartField<TPart> Custom<TPart>(string key, string expected, string[] sets, ReadWhole<TPart> reader, string[]? words = null, bool bare = false)
        where TPart : Part => new()
        {
            Key = key,
            Sets = [.. sets],
            Rough = true,
            Bare = bare,
            Words = [.. words ?? []],
            Expected = expected,
            Write = _ => "unknown",
            Read = (TPart part, string text, out TPart read, out int position, out string reason) =>
            {
                position = 0;
                reason = "";
                TPart? whole = text.Trim() is "unknown" or "?" ? part : reader(part, text.Trim(), out reason);
                read = whole ?? part;
                return whole is not null;
            },
        };
}
