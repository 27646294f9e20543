using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.BottomBrackets;

/// <summary>Thread or bore of a bottom-bracket shell, and where its middle is; the width stands apart, see <see cref="Shell"/>. Closed set, identity equality.</summary>
/// <remarks>Two families may share a bore and still be two: an asymmetric shell puts the crank off centre.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ShellFamily>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShellFamily>))]
public sealed class ShellFamily : Standard<ShellFamily>, IInterfaceValue<ShellFamily>
{
    private ShellFamily(int code, string key, string name, int bore, string thread, bool left, bool asymmetric, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        BoreMicrometres = bore;
        Thread = thread;
        IsDriveCupLeftHand = left;
        IsAsymmetric = asymmetric;
    }

    /// <summary>BSA, also English or ISO: 1.370 in x 24 tpi, drive cup left-hand.</summary>
    public static ShellFamily Bsa { get; } = Threaded(1, "BSA", "BSA threaded", "1.370 in x 24 tpi", true, Sources.ShellThreads, "English", "ISO", "BSC", "Euro BMX");

    /// <summary>Italian: 36 mm x 24 tpi, right-hand on both sides.</summary>
    public static ShellFamily Italian { get; } = Threaded(2, "Italian", "Italian threaded", "36 mm x 24 tpi", false, Sources.ShellThreads, "ITA");

    /// <summary>French: 35 mm x 1 mm, right-hand on both sides.</summary>
    public static ShellFamily French { get; } = Threaded(3, "French", "French threaded", "35 mm x 1 mm", false, Sources.ShellThreads);

    /// <summary>Swiss: the French thread with a left-hand drive cup.</summary>
    public static ShellFamily Swiss { get; } = Threaded(4, "Swiss", "Swiss threaded", "35 mm x 1 mm", true, Sources.SwissThread);

    /// <summary>One large English maker's 26 threads to the inch: 1 3/8 in x 26 tpi.</summary>
    public static ShellFamily Tpi26 { get; } = Threaded(5, "26tpi", "26 tpi English", "1 3/8 in x 26 tpi", true, Sources.CycleThreads);

    /// <summary>T47, symmetric: M47 x 1; the hand of the thread is from memory.</summary>
    public static ShellFamily T47 { get; } = Threaded(6, "T47", "T47 threaded", "M47 x 1", true, Sources.SpacerChart24);

    /// <summary>T47, asymmetric: cup outside on the drive side, inside on the other.</summary>
    public static ShellFamily T47Asymmetric { get; } = new(7, "T47A", "T47 asymmetric", 0, "M47 x 1", true, true, Sources.T47Asymmetric);

    /// <summary>BB30: bearings straight in a 42 mm bore.</summary>
    public static ShellFamily Bb30 { get; } = Bored(8, "BB30", "BB30, 42 mm bore", 42_000, false, Sources.BracketStandards);

    /// <summary>BB30A: the same bore, off centre.</summary>
    public static ShellFamily Bb30Asymmetric { get; } = Bored(9, "BB30A", "BB30A, 42 mm bore, asymmetric", 42_000, true, Sources.BracketTable, "BB30 Ai");

    /// <summary>PF30: cups in a 46 mm bore; BB386EVO is the same bore at 86.5 mm.</summary>
    public static ShellFamily Pf30 { get; } = Bored(10, "PF30", "PF30, 46 mm bore", 46_000, false, Sources.BracketMisconceptions, "BB386EVO", "BB386", "PressFit 30");

    /// <summary>PF30A: the same bore, off centre.</summary>
    public static ShellFamily Pf30Asymmetric { get; } = Bored(11, "PF30A", "PF30A, 46 mm bore, asymmetric", 46_000, true, Sources.SpacerChart24, "PF30 Ai");

    /// <summary>BBright direct: bearings straight in a 42 mm bore, 11 mm more on the non-drive side.</summary>
    public static ShellFamily BbrightDirect { get; } = Bored(12, "BBright-direct", "BBright direct, 42 mm bore", 42_000, true, Sources.BracketStandards);

    /// <summary>BBright press: cups in a 46 mm bore, 11 mm more on the non-drive side.</summary>
    public static ShellFamily BbrightPress { get; } = Bored(13, "BBright-press", "BBright press, 46 mm bore", 46_000, true, Sources.BracketStandards);

    /// <summary>Cups in a 41 mm bore: BB86, BB89.5, BB92 and wider.</summary>
    public static ShellFamily Pf41 { get; } = Bored(14, "PF41", "press fit, 41 mm bore", 41_000, false, Sources.BracketStandards, "BB86", "PF86", "BB89.5", "BB92", "PF92");

    /// <summary>BB90 and BB95: bearings in moulded seats of 37 mm.</summary>
    public static ShellFamily Bb90 { get; } = Bored(15, "BB90", "BB90, 37 mm seats", 37_000, false, Sources.SpacerChart24, "BB95");

    /// <summary>Mid: bearings straight in a 41.2 mm bore, BMX.</summary>
    public static ShellFamily Mid { get; } = Bored(16, "Mid", "Mid BMX, 41.2 mm bore", 41_200, false, Sources.BmxBrackets);

    /// <summary>Spanish: bearings straight in a 37 mm bore, BMX.</summary>
    public static ShellFamily Spanish { get; } = Bored(17, "Spanish", "Spanish BMX, 37 mm bore", 37_000, false, Sources.BmxBrackets);

    /// <summary>American or Ashtabula: unthreaded, 51.3 mm, for one-piece cranks.</summary>
    public static ShellFamily American { get; } = Bored(18, "American", "American one-piece, 51.3 mm bore", 51_300, false, Sources.BracketTable, "Ashtabula");

    /// <summary>Small one-piece of children's bicycles, 43 mm; one report only.</summary>
    public static ShellFamily SmallOnePiece { get; } = Bored(19, "small-one-piece", "small one-piece, 43 mm bore", 43_000, false, Sources.BracketTable);

    /// <summary>One maker's name for several bores; this is the one of 46 mm and 61 mm width. The name alone settles nothing: measure.</summary>
    public static ShellFamily Osbb { get; } = Bored(20, "OSBB", "OSBB, 46 mm bore, narrow", 46_000, false, Sources.OsbbGuide);

    /// <summary>Thompson: pressed cup and cone in bores from 30 to 45 mm: measure.</summary>
    public static ShellFamily Thompson { get; } = Bored(21, "Thompson", "Thompson pressed cup and cone", 0, false, Sources.UnthreadedShells);

    /// <summary>30 mm pressed bearings of old titanium frames.</summary>
    public static ShellFamily Pressed30 { get; } = Bored(22, "pressed-30", "30 mm pressed bearings, old titanium", 30_000, false, Sources.UnthreadedShells);

    /// <summary>A removable threaded sleeve of one maker; unknown until the sleeve is identified.</summary>
    public static ShellFamily Insert { get; } = Bored(23, "threaded-insert", "removable threaded sleeve", 0, false, Sources.BracketGuide);

    /// <summary>Every family, threaded before pressed.</summary>
    public static ImmutableArray<ShellFamily> All { get; } =
    [
        Bsa, Italian, French, Swiss, Tpi26, T47, T47Asymmetric, Bb30, Bb30Asymmetric, Pf30, Pf30Asymmetric, BbrightDirect, BbrightPress,
        Pf41, Bb90, Mid, Spanish, American, SmallOnePiece, Osbb, Thompson, Pressed30, Insert,
    ];

    /// <inheritdoc/>
    public static string Called => "shell family";

    /// <summary>Diameter and pitch of the thread, as the trade writes it; empty for a plain bore.</summary>
    public string Thread { get; }

    /// <summary>The shell is tapped.</summary>
    public bool IsThreaded => Thread.Length > 0;

    /// <summary>The drive-side cup has a left-hand thread. False for right-hand threads and for plain bores. The other cup is right-hand in every family.</summary>
    public bool IsDriveCupLeftHand { get; }

    /// <summary>The middle of the shell is not the middle of the frame.</summary>
    public bool IsAsymmetric { get; }

    /// <summary>Nominal bore in which bearings or cups sit; null where the shell is tapped or the name stands for several.</summary>
    public Length? Bore => BoreMicrometres == 0 ? null : Length.FromMicrometers(BoreMicrometres);

    /// <summary>Least that the inside of the shell measures, a tapped one over the crests of its thread; null where the name stands for several.</summary>
    /// <remarks>Limits of the pressed bores and of T47 are from memory, see <see cref="BoreSource"/>.</remarks>
    public Length? LeastBore => ShellDimensions.Bore(this) is { Least: > 0 } bore ? Length.FromMicrometers(bore.Least) : null;

    /// <summary>Most that the inside of the shell measures; null where the name stands for several.</summary>
    public Length? MostBore => ShellDimensions.Bore(this) is { Least: > 0 } bore ? Length.FromMicrometers(bore.Most) : null;

    /// <summary>Where <see cref="LeastBore"/> and <see cref="MostBore"/> come from; null where they are.</summary>
    public Source? BoreSource => ShellDimensions.BoreSource(this);

    /// <summary>Pitch of the thread: 1.058 mm for 24 threads to the inch; null for a plain bore.</summary>
    public Length? Pitch => ShellDimensions.ThreadsPerInch(this) is > 0 and var threads ? Length.FromMillimeters((double)(25.4m / threads)) : null;

    /// <summary>Least that the thread of a cup measures over its crests; null where none is printed.</summary>
    public Length? LeastCup => ShellDimensions.Cups(this) is { Least: > 0 } cups ? Length.FromMicrometers(cups.Least) : null;

    /// <summary>Most that the thread of a cup measures over its crests; null where none is printed.</summary>
    public Length? MostCup => ShellDimensions.Cups(this) is { Least: > 0 } cups ? Length.FromMicrometers(cups.Most) : null;

    internal int BoreMicrometres { get; }

    /// <summary>The name stands for several things, so that sharing it settles nothing.</summary>
    internal bool IsLoose => FitCode is 20 or 21 or 23;

    /// <inheritdoc/>
    public static ShellFamily OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name; "BBright" alone is two.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ShellFamily> Read(ReadOnlySpan<char> text)
    {
        string plain = BracketText.Compact(text);
        return plain switch
        {
            "BBRIGHT" => TextReading<ShellFamily>.Several([BbrightDirect, BbrightPress], "BBright is made with a 42 and with a 46 mm bore: measure it"),
            _ => ByName(Find(text) is null ? plain : text),
        };
    }

    private static ShellFamily Threaded(int code, string key, string name, string thread, bool left, Source source, params ImmutableArray<string> names) =>
        new(code, key, name, 0, thread, left, false, source, names);

    private static ShellFamily Bored(int code, string key, string name, int bore, bool asymmetric, Source source, params ImmutableArray<string> names) =>
        new(code, key, name, bore, "", false, asymmetric, source, names);
}
