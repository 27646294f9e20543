using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>A rim's size: bead seat, then inner width, then the letters of its type: "622x19C". Tyres are named the other way round.</summary>
/// <remarks>
/// The width is between the flanges, never outside, 10 to 100 mm to a tenth. Letters may be missing: then the type is unknown (an old German
/// standard writes straight-side rims so). The default is no size: it is written "?", which is refused when read.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<RimSize>))]
[TypeConverter(typeof(InterfaceTypeConverter<RimSize>))]
public readonly record struct RimSize : IInterfaceValue<RimSize>
{
    private readonly short _bead;
    private readonly short _tenths;
    private readonly byte _type;

    internal RimSize(int bead, int tenths, int type)
    {
        _bead = (short)bead;
        _tenths = (short)tenths;
        _type = (byte)type;
    }

    /// <summary>Sizes as the sources print them: straight side 20 and 21, crochet and tubeless 19 and 21. Others are read too.</summary>
    public static ImmutableArray<RimSize> All { get; } =
    [
        new(400, 200, 1), new(559, 210, 0), new(559, 210, 2), new(622, 190, 0), new(622, 190, 2), new(622, 190, 4), new(622, 190, 5),
    ];

    /// <inheritdoc/>
    public static string Called => "rim size";

    /// <summary>Where the form of a listed size is printed; null for another size.</summary>
    public Source? Source => !All.Contains(this) ? null : _type == 1 ? Sources.Iso5775Part2Extract : _type > 2 ? Sources.HooklessPressure : Sources.LoadedRims;

    /// <summary>The bead seat.</summary>
    /// <exception cref="InvalidOperationException">This is the default, which has none.</exception>
    public BeadSeat Bead => _bead == 0 ? throw new InvalidOperationException("a default has no bead seat") : BeadSeat.OfFitCode(_bead);

    /// <summary>Width between the flanges.</summary>
    public Length InnerWidth => Length.FromMillimeters(_tenths / 10d);

    /// <summary>Width between the flanges, millimetres, exact.</summary>
    public decimal InnerWidthMillimetres => _tenths / 10m;

    /// <summary>How it holds the bead; null where the designation has no letters.</summary>
    public RimType? Type => _type == 0 ? null : RimType.OfFitCode(_type);

    /// <inheritdoc/>
    public string FitKey => this == default ? InterfaceText.NoValue : FormattableString.Invariant($"{BeadSeat.Key(_bead)}x{InnerWidthMillimetres:0.#}{Type?.FitKey}");

    /// <summary>Code of the type times 1,000,000,000, plus bead seat times 10,000, plus width in tenths of a millimetre: 622x19C is 2006220190.</summary>
    public long FitCode => (_type * 1_000_000_000L) + (_bead * 10_000L) + _tenths;

    /// <summary>Makes a size.</summary>
    /// <param name="bead">The bead seat.</param>
    /// <param name="innerMillimetres">Between the flanges, 10 to 100 mm, whole tenths.</param>
    /// <param name="type">How it holds the bead; null where it is unknown. A hooked-bead rim has diameters of its own and is refused.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range or no whole tenth, or the type is hooked bead.</exception>
    public static RimSize Of(BeadSeat bead, decimal innerMillimetres, RimType? type = null)
    {
        ArgumentNullException.ThrowIfNull(bead);
        ArgumentOutOfRangeException.ThrowIfLessThan(innerMillimetres, RimText.LeastTenths / 10m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(innerMillimetres, RimText.MostTenths / 10m);
        ArgumentOutOfRangeException.ThrowIfNotEqual(innerMillimetres * 10 % 1, 0m, nameof(innerMillimetres));
        if (type == RimType.HookedBead)
        {
            throw new ArgumentOutOfRangeException(nameof(type), type, "a hooked-bead rim has diameters of its own");
        }

        return new((int)bead.FitCode, (int)(innerMillimetres * 10), type is null ? 0 : (int)type.FitCode);
    }

    /// <inheritdoc/>
    public static RimSize OfFitCode(long code)
    {
        long type = code / 1_000_000_000L;
        return code > 0 && type <= RimType.All.Length
            ? Of(BeadSeat.OfFitCode(code / 10_000 % 100_000), code % 10_000 / 10m, type == 0 ? null : RimType.OfFitCode(type))
            : throw new ArgumentOutOfRangeException(nameof(code), code, "no rim size has this code");
    }

    /// <summary>
    /// Reads "622x19C", "SS 400x20", "19-622", "622 x 19 TC", with letters before or behind. Where both numbers could be either, the rim has both readings.
    /// </summary>
    /// <param name="text">Any text.</param>
    public static TextReading<RimSize> Read(ReadOnlySpan<char> text) => RimText.Read(text);

    /// <inheritdoc/>
    public static RimSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<RimSize>(s);

    /// <inheritdoc/>
    public static RimSize Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<RimSize>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out RimSize result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out RimSize result) => InterfaceText.TryParse(s, out result);

    /// <summary>Reads a value; false where the text is none, or several.</summary>
    /// <param name="s">Any text.</param>
    /// <param name="result">The value; a default where false is returned.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, out RimSize result) => TryParse(s, null, out result);

    /// <summary>The designation: "622x19C".</summary>
    public override string ToString() => FitKey;

    /// <summary>The key for "G", "T" or nothing; there is no one main length.</summary>
    /// <param name="format">"G", "T", empty or null.</param>
    /// <param name="formatProvider">Not used; the text is the same in every culture.</param>
    /// <exception cref="FormatException">Another format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => InterfaceText.Format(format, FitKey, FitKey, null, Called);

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(format.IsEmpty ? FitKey : ToString(format.ToString(), null), destination, out charsWritten);
}
