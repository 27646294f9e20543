using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.BottomBrackets;

/// <summary>A bottom-bracket shell: thread or bore, and width. Closed set, identity equality.</summary>
/// <remarks>Printed widths of one shell differ by half a millimetre (86 and 86.5, 91.5 and 92, 90 and 90.5); the nominal one is kept. 85.5 and 86.5 are two shells.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<Shell>))]
[TypeConverter(typeof(InterfaceTypeConverter<Shell>))]
public sealed class Shell : Standard<Shell>, IInterfaceValue<Shell>
{
    private Shell(int code, ShellFamily family, string width, int micrometres, Source source, params ImmutableArray<string> names)
        : base(code, $"{family.FitKey}-{width}", names is [var first, ..] ? first : $"{family.FitKey} {width}", source, names)
    {
        Family = family;
        WidthNanometres = micrometres * 1_000L;
    }

    /// <summary>Every shell, family by family, narrow before wide.</summary>
    public static ImmutableArray<Shell> All { get; } =
    [
        new(1, ShellFamily.Bsa, "68", 68_000, Sources.ShellThreads, "BSA 68", "English 68", "Euro BMX", "Euro"),
        new(2, ShellFamily.Bsa, "73", 73_000, Sources.ShellThreads, "BSA 73", "English 73"),
        new(3, ShellFamily.Bsa, "83", 83_000, Sources.BracketGuide, "BSA 83"),
        new(4, ShellFamily.Bsa, "100", 100_000, Sources.BracketGuide, "BSA 100"),
        new(5, ShellFamily.Bsa, "120", 120_000, Sources.BracketGuide, "BSA 120"),
        new(6, ShellFamily.Italian, "70", 70_000, Sources.ShellThreads),
        new(7, ShellFamily.French, "68", 68_000, Sources.ShellThreads),
        new(8, ShellFamily.Swiss, "68", 68_000, Sources.Memory),
        new(9, ShellFamily.Tpi26, "71", 71_000, Sources.ThreadPeculiarities),
        new(10, ShellFamily.Tpi26, "76", 76_000, Sources.UnthreadedShells),
        new(11, ShellFamily.T47, "68", 68_000, Sources.T47Dimensions),
        new(12, ShellFamily.T47, "73", 73_000, Sources.T47Dimensions),
        new(13, ShellFamily.T47, "85.5", 85_500, Sources.T47Width),
        new(14, ShellFamily.T47, "86.5", 86_500, Sources.T47Width),
        new(15, ShellFamily.T47, "92", 92_000, Sources.Memory),
        new(16, ShellFamily.T47Asymmetric, "77", 77_000, Sources.T47Asymmetric, "T47-77"),
        new(17, ShellFamily.Bb30, "68", 68_000, Sources.BracketMisconceptions),
        new(18, ShellFamily.Bb30, "73", 73_000, Sources.SpacerChart24),
        new(19, ShellFamily.Bb30Asymmetric, "73", 73_000, Sources.BracketTable),
        new(20, ShellFamily.Bb30Asymmetric, "83", 83_000, Sources.Overview2899, "BB30-83 Ai"),
        new(21, ShellFamily.Pf30, "68", 68_000, Sources.SpacerChart24),
        new(22, ShellFamily.Pf30, "73", 73_000, Sources.Overview2899),
        new(23, ShellFamily.Pf30, "86.5", 86_500, Sources.CranksAndBrackets, "BB386EVO", "BB386", "386EVO"),
        new(24, ShellFamily.Pf30Asymmetric, "73", 73_000, Sources.SpacerChart24),
        new(25, ShellFamily.Pf30Asymmetric, "83", 83_000, Sources.Overview2899, "PF30-83 Ai"),
        new(26, ShellFamily.BbrightDirect, "79", 79_000, Sources.BracketStandards),
        new(27, ShellFamily.BbrightPress, "79", 79_000, Sources.BracketStandards),
        new(28, ShellFamily.Pf41, "86.5", 86_500, Sources.BracketStandards, "BB86", "PF86", "BB86.5", "PF86.5"),
        new(29, ShellFamily.Pf41, "89.5", 89_500, Sources.Overview2899, "BB89.5", "PF89.5"),
        new(30, ShellFamily.Pf41, "92", 92_000, Sources.Overview2899, "BB92", "PF92", "BB91.5"),
        new(31, ShellFamily.Pf41, "104.5", 104_500, Sources.Overview2899, "PF104.5"),
        new(32, ShellFamily.Pf41, "107", 107_000, Sources.Overview2899, "PF107", "BB107"),
        new(33, ShellFamily.Pf41, "121", 121_000, Sources.Overview2899, "PF121", "BB121"),
        new(34, ShellFamily.Pf41, "132", 132_000, Sources.Memory, "PF132", "BB132"),
        new(35, ShellFamily.Bb90, "90", 90_000, Sources.SpacerChart24, "BB90", "BB90.5"),
        new(36, ShellFamily.Bb90, "95", 95_000, Sources.BracketGuide, "BB95"),
        new(37, ShellFamily.Mid, "73", 73_000, Sources.BmxBrackets, "Mid BMX"),
        new(38, ShellFamily.Mid, "68", 68_000, Sources.Memory),
        new(39, ShellFamily.Spanish, "68", 68_000, Sources.BmxBrackets, "Spanish BMX"),
        new(40, ShellFamily.Spanish, "60", 60_000, Sources.Memory),
        new(41, ShellFamily.American, "65", 65_000, Sources.BracketTable),
        new(42, ShellFamily.American, "68", 68_000, Sources.BmxBrackets, "American BMX"),
        new(43, ShellFamily.SmallOnePiece, "65", 65_000, Sources.BracketTable),
        new(44, ShellFamily.Osbb, "61", 61_000, Sources.OsbbGuide),
        new(45, ShellFamily.Thompson, "65", 65_000, Sources.UnthreadedShells),
        new(46, ShellFamily.Thompson, "68", 68_000, Sources.UnthreadedShells),
        new(47, ShellFamily.Thompson, "70", 70_000, Sources.UnthreadedShells),
        new(48, ShellFamily.Pressed30, "68", 68_000, Sources.UnthreadedShells),
        new(49, ShellFamily.Insert, "82.5", 82_500, Sources.BracketGuide),
    ];

    /// <inheritdoc/>
    public static string Called => "bottom-bracket shell";

    /// <summary>Thread or bore.</summary>
    public ShellFamily Family { get; }

    /// <summary>Width between the faces, nominal.</summary>
    public Length Width => new Nanometres(WidthNanometres).ToLength();

    /// <summary>The narrowest that it is printed as: 86 for 86.5, 91.5 for 92.</summary>
    public Length LeastWidth => Length.FromMillimeters(ShellDimensions.Width(this).Least / 1e3);

    /// <summary>The widest that it is printed as: 90.5 for 90.</summary>
    public Length MostWidth => Length.FromMillimeters(ShellDimensions.Width(this).Most / 1e3);

    /// <summary>Where the bearings sit.</summary>
    public BearingPlace Bearings => ShellDimensions.Bearings(this);

    internal long WidthNanometres { get; }

    /// <summary>What shell measured dimensions can be, likeliest first, and what to measure or look at next.</summary>
    /// <param name="bore">Inside of the shell: a tapped one over the crests of its thread.</param>
    /// <param name="width">Across the faces.</param>
    /// <param name="threadsPerInch">Counted with a gauge, right to half a thread: 24, 26, or 25.4 for a pitch of 1 mm; 4 to 100. Only tapped shells are left then.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No such thread.</exception>
    public static Identification<Shell> Identify(MeasuredLength? bore = null, MeasuredLength? width = null, decimal? threadsPerInch = null) =>
        ShellMeasured.Identify(bore, width, threadsPerInch);

    /// <inheritdoc/>
    public static Shell OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key, a trade name, or family and width in either order; a family or a width alone is every shell that it can mean.</summary>
    /// <param name="text">Any text.</param>
    /// <remarks>A key is clear as it stands ("BB30-73"); the same words with a blank are not, where the trade says them of two shells.</remarks>
    public static TextReading<Shell> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> trimmed = Trim(text);
        foreach (Shell shell in All)
        {
            if (trimmed.Equals(shell.FitKey, StringComparison.OrdinalIgnoreCase))
            {
                return TextReading<Shell>.Of(shell);
            }
        }

        return trimmed.IsEmpty ? TextReading<Shell>.Refused("the text is empty") : ShellText.Read(trimmed);
    }
}
