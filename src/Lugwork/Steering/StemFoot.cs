using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>How a stem is held: clamped round a threadless steerer, or a quill inside a threaded one. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<StemFixing>))]
[TypeConverter(typeof(InterfaceTypeConverter<StemFixing>))]
public sealed class StemFixing : Standard<StemFixing>, IInterfaceValue<StemFixing>
{
    private StemFixing(int code, string key, string name, Source source, bool quill, SteererSize steerer, int hundredths, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        IsQuill = quill;
        Steerer = steerer;
        Hundredths = hundredths;
    }

    /// <summary>For a 1 in threadless steerer.</summary>
    public static StemFixing Clamp25Point4 { get; } = new(1, "clamp-25.4", "25.4 mm steerer clamp", Sources.HeadsetArticle, false, SteererSize.Mm25Point4, 2540, "25.4 clamp", "clamp 1 in");

    /// <summary>For a 1-1/8 in threadless steerer.</summary>
    public static StemFixing Clamp28Point6 { get; } = new(2, "clamp-28.6", "28.6 mm steerer clamp", Sources.HeadsetArticle, false, SteererSize.Mm28Point6, 2860, "28.6 clamp", "clamp 1-1/8", "28.6", "1-1/8 in threadless", "1-1/8 in clamp");

    /// <summary>For a 1-1/4 in threadless steerer.</summary>
    public static StemFixing Clamp31Point8 { get; } = new(3, "clamp-31.8", "31.8 mm steerer clamp", Sources.HeadsetArticle, false, SteererSize.Mm31Point8, 3180, "clamp 1-1/4");

    /// <summary>For a 1.5 in threadless steerer.</summary>
    public static StemFixing Clamp38Point1 { get; } = new(4, "clamp-38.1", "38.1 mm steerer clamp", Sources.HeadsetArticle, false, SteererSize.Mm38Point1, 3810, "38.1 clamp", "clamp 1.5");

    /// <summary>For an old American 7/8 in steerer.</summary>
    public static StemFixing Quill21Point15 { get; } = new(5, "quill-21.15", "21.15 mm quill", Sources.StemSizes, true, SteererSize.Mm23Point8, 2115, "21.15 quill", "quill 21.1", "21.1 quill");

    /// <summary>For a French steerer.</summary>
    public static StemFixing Quill22 { get; } = new(6, "quill-22.0", "22.0 mm quill", Sources.Memory, true, SteererSize.Mm25, 2200, "22.0 quill");

    /// <summary>For a 1 in threaded steerer.</summary>
    public static StemFixing Quill22Point2 { get; } = new(7, "quill-22.2", "22.2 mm quill", Sources.StemSizes, true, SteererSize.Mm25Point4, 2220, "22.2 quill", "quill 22.2 mm", "7/8 in quill", "quill 7/8 in");

    /// <summary>For a 1-1/8 in threaded steerer.</summary>
    public static StemFixing Quill25Point4 { get; } = new(8, "quill-25.4", "25.4 mm quill", Sources.StemSizes, true, SteererSize.Mm28Point6, 2540, "25.4 quill", "quill 25.4 mm");

    /// <summary>For a 1-1/4 in threaded steerer.</summary>
    public static StemFixing Quill28Point6 { get; } = new(9, "quill-28.6", "28.6 mm quill", Sources.Memory, true, SteererSize.Mm31Point8, 2860, "28.6 quill");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<StemFixing> All { get; } =
    [
        Clamp25Point4, Clamp28Point6, Clamp31Point8, Clamp38Point1, Quill21Point15, Quill22, Quill22Point2, Quill25Point4,
        Quill28Point6,
    ];

    /// <inheritdoc/>
    public static string Called => "stem fixing";

    /// <summary>A quill, for a threaded steerer; otherwise a clamp, for a threadless one.</summary>
    public bool IsQuill { get; }

    /// <summary>The steerer that it is made for.</summary>
    public SteererSize Steerer { get; }

    /// <summary>Inside diameter of the clamp, or outside diameter of the quill.</summary>
    public Length Diameter => Length.FromMillimeters(Hundredths / 100d);

    /// <summary>Least insertion of a quill that carries no mark: 2.5 diameters. Null for a clamp. The mark of the maker comes first.</summary>
    public Length? LeastInsertion => IsQuill ? Length.FromMillimeters(Hundredths * 2.5 / 100d) : null;

    /// <summary>What the least insertion rests on; null for a clamp.</summary>
    public Source? InsertionSource => IsQuill ? Sources.QuillArticle : null;

    internal int Hundredths { get; }

    internal override Nanometres? MainLength => new(Hundredths * (Nanometres.PerMillimetre / 100));

    /// <summary>What holds a stem, from what is measured on it: its clamp or its quill, and the steerer that it came from.</summary>
    /// <param name="clamp">Inside diameter of the closed steerer clamp, bolts just snug.</param>
    /// <param name="quill">Outside diameter of the quill.</param>
    /// <param name="steerer">Outside diameter of the steerer that it was on or in.</param>
    /// <exception cref="ArgumentException">Neither or both of clamp and quill were measured: a stem has one of them.</exception>
    public static Identification<StemFixing> Identify(MeasuredLength? clamp = null, MeasuredLength? quill = null, MeasuredLength? steerer = null) =>
        clamp is null == quill is null ? throw new ArgumentException("one of clamp and quill has to be measured: a stem has one of them", nameof(clamp))
        : clamp is null ? StemFixingDimensions.Quills.Identify(quill, steerer) : StemFixingDimensions.Clamps.Identify(clamp, steerer);

    /// <inheritdoc/>
    public static StemFixing OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key, a name or a size in millimetres; "25.4" alone can be a clamp or a quill, "28.6" alone is a clamp.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<StemFixing> Read(ReadOnlySpan<char> text) =>
        SizedText.Find<StemFixing>(text, f => f.Hundredths) is not { } sized ? ByName(text)
        : sized == Clamp25Point4 ? TextReading<StemFixing>.Several([Clamp25Point4, Quill25Point4], "say clamp or quill: a 25.4 clamp goes round a 1 in steerer, a 25.4 quill inside a 1-1/8 in one")
        : TextReading<StemFixing>.Of(sized);

    /// <summary>Made when something is first identified.</summary>
    private static class StemFixingDimensions
    {
        private static readonly MeasuredDimension Steerer = new("steerer", "outside caliper on the steerer that it was on or in");

        public static readonly IdentificationTable<StemFixing> Clamps = new([new("clamp", "inside caliper in the closed clamp, bolts just snug"), Steerer], Rows(false), f => f.TradeName);

        public static readonly IdentificationTable<StemFixing> Quills = new([new("quill", "outside caliper on the quill above its wedge, two directions"), Steerer], Rows(true), f => f.TradeName);

        private static ImmutableArray<DimensionRow<StemFixing>> Rows(bool quills)
        {
            ImmutableArray<DimensionRow<StemFixing>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<StemFixing>>();
            foreach (StemFixing foot in All)
            {
                if (foot.IsQuill == quills)
                {
                    decimal size = foot.Hundredths / 100m;
                    decimal steerer = foot.Steerer.Hundredths / 100m;
                    rows.Add(new(foot, [(size, size), (steerer, steerer)], $"made for a {foot.Steerer.TradeName}"));
                }
            }

            return rows.ToImmutable();
        }
    }
}
