namespace Lugwork;

/// <summary>Cautions of load and use.</summary>
internal static partial class Cautions
{
    public static Caution Overload { get; } = new("overload", "A part loaded above its maker's limit can break without warning; the maker's figure rules. No figure is unknown, not unlimited.");

    public static Caution HarderUse { get; } = new("harder-use", "A part ridden harder than it is made for can break without warning; the maker's words rule. The numbers of the categories changed between editions: read what the maker means by them.");
}
