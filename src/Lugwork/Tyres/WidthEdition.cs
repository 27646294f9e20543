using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Tyres;

/// <summary>Whose word a tyre width on a rim width is. Closed set, identity equality. Editions disagree: a verdict names its own.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<WidthEdition>))]
[TypeConverter(typeof(InterfaceTypeConverter<WidthEdition>))]
public sealed class WidthEdition : Standard<WidthEdition>, IInterfaceValue<WidthEdition>
{
    private WidthEdition(int code, string key, string name, Source source, bool limits, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        IsLimit = limits;
    }

    /// <summary>Before 2006, crochet rims.</summary>
    public static WidthEdition Before2006 { get; } = new(1, "before-2006", "before 2006 (draft DIN 7800 of 1996)", Sources.WidthMatrix2006, true, "DIN 7800");

    /// <summary>2006, crochet rims.</summary>
    public static WidthEdition Etrto2006 { get; } = new(2, "etrto-2006", "ETRTO 2006", Sources.WidthMatrix2006, true, "2006");

    /// <summary>2022; the page does not say for which rim type.</summary>
    public static WidthEdition Etrto2022 { get; } = new(3, "etrto-2022", "ETRTO 2022", Sources.WidthRanges2022, true, "2022");

    /// <summary>A wheel maker's narrower ranges: advice, no limit.</summary>
    public static WidthEdition WheelMaker { get; } = new(4, "wheel-maker", "a wheel maker's advice", Sources.WidthRanges2022, false);

    /// <summary>One statement of a tyre maker about 38 mm tyres; it contradicts the 2006 table at 27 mm.</summary>
    public static WidthEdition TyreMaker { get; } = new(5, "tyre-maker", "a tyre maker's statement", Sources.WideRimStatement, false);

    /// <summary>2023, hookless rims.</summary>
    public static WidthEdition Etrto2023 { get; } = new(6, "etrto-2023", "ETRTO 2023", Sources.TyreStatement, true, "2023");

    /// <summary>ISO 5775-1:2023, hookless rims, by a press report.</summary>
    public static WidthEdition Iso2023 { get; } = new(7, "iso-2023", "ISO 5775-1:2023", Sources.HooklessIso2023, true, "ISO 5775-1");

    /// <summary>Every edition.</summary>
    public static ImmutableArray<WidthEdition> All { get; } = [Before2006, Etrto2006, Etrto2022, WheelMaker, TyreMaker, Etrto2023, Iso2023];

    /// <inheritdoc/>
    public static string Called => "width edition";

    /// <summary>A limit, or only advice.</summary>
    public bool IsLimit { get; }

    /// <inheritdoc/>
    public static WidthEdition OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<WidthEdition> Read(ReadOnlySpan<char> text) => ByName(text);
}
