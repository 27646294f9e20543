namespace Lugwork;

/// <summary>Warnings about parts that are not new.</summary>
internal static partial class Cautions
{
    public static readonly Caution UsedPart = new("used-part", "No list finds every fault. What cannot be seen or measured, and whatever there is doubt about, is for the part's maker or a shop; its maker's figures and its recalls come first.");

    public static readonly Caution CarbonCrash = new("carbon-crash", "Carbon that was hit can be broken inside and look whole, and it breaks without bending first. No look, tap or flex test clears it: its maker, or a shop with the maker's method, says whether it may be ridden; in doubt replace it.");

    public static readonly Caution AlloyCrash = new("alloy-crash", "A bar, stem or post of light alloy that took a fall can crack later where nothing shows now. Replace it; for how long one lasts without a fall the pages disagree, from two years or 5,000 km to ten years.");

    public static readonly Caution Recall = new("recall", "Do not ride a part that its maker has called back before the maker's remedy is carried out.");
}
