namespace Lugwork;

/// <summary>Cautions of load and use.</summary>
internal static partial class Cautions
{
    public static readonly Caution Overload = new("overload", "A part loaded above its maker's limit can break without warning; the maker's figure rules. No figure is unknown, not unlimited.");

    public static readonly Caution HarderUse = new("harder-use", "A part ridden harder than it is made for can break without warning; the maker's words rule. The numbers of the categories changed between editions: read what the maker means by them.");

    public static readonly Caution BrakeHands = new("brake-hands", "A front brake in the hand that expects the rear one throws the rider. Which hand is usual differs: right in front in the United Kingdom and Australia, left in the United States and most of Europe, and some countries rule it for bicycles that are sold.");
}
