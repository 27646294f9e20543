using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Lugwork.Tyres;

/// <summary>An ISO tyre size: section width, then the bead seat: "37-622".</summary>
/// <remarks>Width 18 to 132 mm, whole millimetres. The width is a class: the tyre may measure 3 mm more or less. The default is no size.</remarks>
public readonly record struct TyreSize : IInterfaceValue<TyreSize>
{
    private readonly short _width;
    private readonly short _bead;

    private TyreSize(int width, int bead)
    {
        _width = (short)width;
        _bead = (short)bead;
    }

    /// <summary>Nominal section width.</summary>
    public Length Width => Length.FromMillimeters(_width);

    /// <summary>Nominal section width, whole millimetres.</summary>
    public int WidthMillimetres => _width;

    /// <summary>The bead seat.</summary>
    /// <exception cref="ArgumentOutOfRangeException">This is the default, which has none.</exception>
    public BeadSeat Bead => BeadSeat.OfFitCode(_bead);

    /// <inheritdoc/>
    public string FitKey => FormattableString.Invariant($"{_width}-{_bead}");

    /// <summary>Width times 1,000 plus bead seat: 37622.</summary>
    public long FitCode => (_width * 1_000L) + _bead;

    /// <summary>Empty: sizes are made of two numbers, not listed.</summary>
    public static ImmutableArray<TyreSize> All => [];

    /// <inheritdoc/>
    public static string Called => "tyre size";

    /// <summary>Makes a size.</summary>
    /// <param name="widthMillimetres">18 to 132.</param>
    /// <param name="bead">The bead seat.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is out of range.</exception>
    public static TyreSize Of(int widthMillimetres, BeadSeat bead)
    {
        ArgumentNullException.ThrowIfNull(bead);
        ArgumentOutOfRangeException.ThrowIfLessThan(widthMillimetres, 18);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(widthMillimetres, 132);
        return new(widthMillimetres, (int)bead.FitCode);
    }

    /// <inheritdoc/>
    public static TyreSize OfFitCode(long code)
    {
        long width = code / 1_000;
        return code > 0 && width is >= 18 and <= 132
            ? Of((int)width, BeadSeat.OfFitCode(code % 1_000))
            : throw new ArgumentOutOfRangeException(nameof(code), code, "no tyre size has this code");
    }

    /// <summary>
    /// Reads "37-622", "37x622", "622x37" and the French "700x25C". Trade labels that stand for several sizes give several readings or are refused.
    /// </summary>
    /// <param name="text">Any text.</param>
    public static Reading<TyreSize> Read(ReadOnlySpan<char> text)
    {
        TextCursor cursor = new(text);
        if (!cursor.TryNumber(out long first))
        {
            return Reading<TyreSize>.Refused("an ISO size is expected, such as 37-622", cursor.Position);
        }

        if (!cursor.TryTimes() && !cursor.TryDash())
        {
            return Reading<TyreSize>.Refused("a dash or times sign and a second number are expected, such as 37-622", cursor.Position);
        }

        if (!cursor.TryNumber(out long second))
        {
            return Reading<TyreSize>.Refused("a second number is expected, such as 37-622", cursor.Position);
        }

        cursor.SkipMillimetres();
        bool letterC = !cursor.AtEnd && cursor.Rest[0] is 'C' or 'c';
        cursor.Position += letterC ? 1 : 0;
        cursor.SkipMillimetres();
        if (!cursor.AtEnd)
        {
            return Reading<TyreSize>.Refused("something unexpected follows the size", cursor.Position);
        }

        if (first % Nanometres.PerMillimetre != 0 || second % Nanometres.PerMillimetre != 0)
        {
            return Reading<TyreSize>.Refused("a decimal or inch label is not an ISO size; give the number printed as 37-622 on the sidewall");
        }

        int a = (int)(first / Nanometres.PerMillimetre);
        int b = (int)(second / Nanometres.PerMillimetre);
        if (a == 700)
        {
            return TradeWidth(b);
        }

        return letterC ? Reading<TyreSize>.Refused("only 700C labels are read; give the ISO size such as 37-622") : Iso(a, b);
    }

    private static Reading<TyreSize> Iso(int a, int b)
    {
        // The wider numbers of fat tyres overlap with the smallest bead seats, so from 90 up the width must come first.
        bool turned = a > b && b < 90;
        int width = turned ? b : a;
        int bead = turned ? a : b;
        if (width is < 18 or > 132)
        {
            return Reading<TyreSize>.Refused("a tyre is 18 to 132 mm wide");
        }

        return BeadSeat.All.FirstOrDefault(s => s.FitCode == bead) is { } seat
            ? Reading<TyreSize>.Of(Of(width, seat))
            : Reading<TyreSize>.Refused($"no rim has a bead seat of {bead} mm");
    }

    /// <summary>French labels and the ISO widths printed with them; the label is not always the ISO width.</summary>
    private static Reading<TyreSize> TradeWidth(int label)
    {
        ReadOnlySpan<int> widths = label switch
        {
            18 or 20 or 23 or 25 or 32 or 50 => [label],
            28 => [28, 30],
            35 => [35, 37],
            38 => [38, 40],
            40 => [40, 42],
            42 => [42, 44, 47],
            45 or 47 => [47],
            _ => [],
        };
        if (widths.IsEmpty)
        {
            return Reading<TyreSize>.Refused("this 700C label is in no table; give the ISO size such as 37-622");
        }

        ImmutableArray<TyreSize>.Builder sizes = ImmutableArray.CreateBuilder<TyreSize>();
        foreach (int width in widths)
        {
            sizes.Add(new(width, 622));
        }

        return sizes.Count == 1
            ? Reading<TyreSize>.Of(sizes[0])
            : Reading<TyreSize>.Several(sizes.ToImmutable(), "tyres with this label are printed with different ISO widths; read the number on the sidewall");
    }

    /// <inheritdoc/>
    public static TyreSize Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => InterfaceText.Parse<TyreSize>(s);

    /// <inheritdoc/>
    public static TyreSize Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return InterfaceText.Parse<TyreSize>(s);
    }

    /// <inheritdoc/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out TyreSize result) => InterfaceText.TryParse(s, out result);

    /// <inheritdoc/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out TyreSize result) => InterfaceText.TryParse(s, out result);

    /// <summary>The ISO size: "37-622".</summary>
    public override string ToString() => FitKey;

    /// <inheritdoc/>
    public string ToString(string? format, IFormatProvider? formatProvider) => FitKey;

    /// <inheritdoc/>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default, IFormatProvider? provider = null) =>
        InterfaceText.TryFormat(FitKey, destination, out charsWritten);
}
