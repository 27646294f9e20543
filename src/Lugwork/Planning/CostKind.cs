namespace Lugwork.Planning;

/// <summary>What a line of a cost sheet is for; the groups of its totals.</summary>
public enum CostKind
{
    /// <summary>A part in a slot.</summary>
    Part = 0,

    /// <summary>What makes an unlike pair mate.</summary>
    Bridge,

    /// <summary>A small part: bolts, valves, cables, nuts.</summary>
    SmallPart,

    /// <summary>What is used up: grease, paste, sealant.</summary>
    Consumable,

    /// <summary>A tool; one that is owned costs nothing.</summary>
    Tool,

    /// <summary>Work that a shop does.</summary>
    ShopWork,

    /// <summary>Postage; that of a seller is reckoned from his lines.</summary>
    Postage,

    /// <summary>What the sale of leftovers brings; it counts against the rest.</summary>
    Resale,
}

/// <summary>Kinds of lines in words, and what they may carry.</summary>
internal static class CostKinds
{
    public static string InWords(CostKind kind) => kind switch
    {
        CostKind.Part => "parts",
        CostKind.Bridge => "shims and adapters",
        CostKind.SmallPart => "small parts",
        CostKind.Consumable => "consumables",
        CostKind.Tool => "tools",
        CostKind.ShopWork => "shop work",
        CostKind.Postage => "postage",
        _ => "resale",
    };

    /// <summary>It stays on the bicycle.</summary>
    public static bool IsRidden(CostKind kind) => kind is CostKind.Part or CostKind.Bridge or CostKind.SmallPart or CostKind.Consumable;

    /// <summary>It comes by post and counts towards a seller's free sum.</summary>
    public static bool IsPosted(CostKind kind) => IsRidden(kind) || kind == CostKind.Tool;
}
