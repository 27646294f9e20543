using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>What shells are called: exact names, then family and width in either order, then one of both alone.</summary>
internal static class ShellText
{
    private const long Half = Nanometres.PerMillimetre / 2;

    private const string Doubt = "several shells are called so: measure bore or thread and the width between the faces with calipers, and see whether the middle of the shell is the middle of the frame";

    /// <summary>A family's name; what it means alone, and what with a width beside it.</summary>
    private static readonly ImmutableArray<(string Name, ImmutableArray<Shell> Alone, ImmutableArray<Shell> WithWidth)> Families =
    [
        Of("BSA", ShellFamily.Bsa), Of("ENGLISH", ShellFamily.Bsa), Of("BSC", ShellFamily.Bsa), Of("ISO", ShellFamily.Bsa),
        Of("1.37X24", ShellFamily.Bsa), Of("1.37X24TPI", ShellFamily.Bsa), Of("1.375X24", ShellFamily.Bsa), Of("1.375X24TPI", ShellFamily.Bsa), Of("BSA1.37X24", ShellFamily.Bsa), Of("BSA1.37X24TPI", ShellFamily.Bsa),
        Of("ITALIAN", ShellFamily.Italian), Of("ITA", ShellFamily.Italian), Of("36X24", ShellFamily.Italian), Of("36X24TPI", ShellFamily.Italian),
        Of("FRENCH", ShellFamily.French), Of("SWISS", ShellFamily.Swiss), Of("35X1", ShellFamily.French, ShellFamily.Swiss), Of("26TPI", ShellFamily.Tpi26),
        Of("T47", ShellFamily.T47, ShellFamily.T47Asymmetric), Of("M47X1", ShellFamily.T47, ShellFamily.T47Asymmetric),
        Of("T47A", ShellFamily.T47Asymmetric), Of("T47ASYMMETRIC", ShellFamily.T47Asymmetric), Listed("T47EXTERNAL", "T47-68", "T47-73"), Listed("T47INTERNAL", "T47-85.5", "T47-86.5", "T47-92"),
        Of("BB30", ShellFamily.Bb30, ShellFamily.Bb30Asymmetric) with { Alone = Keys("BB30-68", "BB30-73", "BB30A-73") }, Of("BB30A", ShellFamily.Bb30Asymmetric), Of("BB30AI", ShellFamily.Bb30Asymmetric),
        Of("PF30", ShellFamily.Pf30, ShellFamily.Pf30Asymmetric) with { Alone = Keys("PF30-68", "PF30-73", "PF30A-73") }, Of("PF30A", ShellFamily.Pf30Asymmetric), Of("PF30AI", ShellFamily.Pf30Asymmetric),
        Of("BBRIGHT", ShellFamily.BbrightDirect, ShellFamily.BbrightPress), Of("BBRIGHTDIRECT", ShellFamily.BbrightDirect), Of("BBRIGHTPRESS", ShellFamily.BbrightPress),
        Of("PF41", ShellFamily.Pf41), Listed("BB86", "PF41-86.5"), Listed("PF86", "PF41-86.5"), Listed("BB92", "PF41-92"), Listed("PF92", "PF41-92"), Listed("BB386EVO", "PF30-86.5"), Listed("BB386", "PF30-86.5"),
        Listed("BB90", "BB90-90"), Listed("BB95", "BB90-95"),
        Of("MID", ShellFamily.Mid), Of("SPANISH", ShellFamily.Spanish), Of("AMERICAN", ShellFamily.American), Of("ASHTABULA", ShellFamily.American), Listed("BMX", "BSA-68", "Mid-73", "Mid-68", "Spanish-68", "Spanish-60", "American-65", "American-68"),
        Of("ONEPIECE", ShellFamily.American, ShellFamily.SmallOnePiece), Of("SMALLONEPIECE", ShellFamily.SmallOnePiece),
        Listed("OSBB", "OSBB-61", "BB30-68", "PF30-73"), Listed("OSBBROAD", "OSBB-61", "BB30-68"), Listed("OSBBMOUNTAIN", "PF30-73"),
        Of("THOMPSON", ShellFamily.Thompson), Of("PRESSED30", ShellFamily.Pressed30), Of("THREADEDINSERT", ShellFamily.Insert),
        ("THREADED", [.. Shell.All.Where(s => s.Family.IsThreaded)], [.. Shell.All.Where(s => s.Family.IsThreaded)]),
        ("PF", [.. Shell.All.Where(s => !s.Family.IsThreaded)], [.. Shell.All.Where(s => !s.Family.IsThreaded)]),
        ("PRESSFIT", [.. Shell.All.Where(s => !s.Family.IsThreaded)], [.. Shell.All.Where(s => !s.Family.IsThreaded)]),
        ("BB", [], Shell.All), ("", [], Shell.All),
    ];

    public static TextReading<Shell> Read(ReadOnlySpan<char> text)
    {
        string plain = BracketText.Compact(text);
        ImmutableArray<Shell> named = [.. Shell.All.Where(s => s.Names.Any(n => BracketText.Compact(n) == plain))];
        if (!named.IsEmpty)
        {
            return Told(named);
        }

        (string Name, ImmutableArray<Shell> Alone, ImmutableArray<Shell> WithWidth) best = ("", [], []);
        long width = -1;
        foreach ((string Name, ImmutableArray<Shell> Alone, ImmutableArray<Shell> WithWidth) family in Families)
        {
            long beside = Beside(plain, family.Name);
            if (beside >= 0 && (width < 0 || family.Name.Length > best.Name.Length))
            {
                best = family;
                width = beside;
            }
        }

        if (width < 0)
        {
            return TextReading<Shell>.Refused("a family, a width in millimetres or both are expected, such as BSA 68, T47 85.5, PF30 73, BB86");
        }

        ImmutableArray<Shell> found = width == 0 ? best.Alone : [.. best.WithWidth.Where(s => Means(width, s.WidthNanometres))];
        return !found.IsEmpty ? Told(found)
            : best.Name.Length > 2 ? TextReading<Shell>.Refused($"no such width is listed; {string.Join(", ", best.WithWidth.Select(s => s.FitKey))} are")
            : TextReading<Shell>.Refused("no shell has this width; to half a millimetre, with calipers, it is such as 68, 73, 85.5, 86.5, 92");
    }

    /// <summary>The width that stands before or after a name, 0 where the name stands alone, -1 where the text is something else.</summary>
    private static long Beside(string plain, string name)
    {
        if (plain == name)
        {
            return name.Length == 0 ? -1 : 0;
        }

        long after = plain.StartsWith(name, StringComparison.Ordinal) ? BracketText.Number(plain.AsSpan(name.Length).TrimStart('#')) : 0;
        long before = after == 0 && plain.EndsWith(name, StringComparison.Ordinal) ? BracketText.Number(plain.AsSpan(0, plain.Length - name.Length).TrimEnd('#')) : 0;
        return after + before > 0 ? after + before : -1;
    }

    /// <summary>A whole number may be a rounded width; one with a fraction is meant as it stands.</summary>
    private static bool Means(long said, long width) =>
        said % Nanometres.PerMillimetre == 0 ? Math.Abs(said - width) <= Half : said == width || (said == 91_500_000 && width == 92_000_000) || (said == 90_500_000 && width == 90_000_000);

    private static TextReading<Shell> Told(ImmutableArray<Shell> found) => found.Length == 1 ? TextReading<Shell>.Of(found[0]) : TextReading<Shell>.Several(found, Doubt);

    private static (string Name, ImmutableArray<Shell> Alone, ImmutableArray<Shell> WithWidth) Of(string name, params ImmutableArray<ShellFamily> families)
    {
        ImmutableArray<Shell> shells = [.. Shell.All.Where(s => families.Contains(s.Family))];
        return (name, shells, shells);
    }

    private static (string Name, ImmutableArray<Shell> Alone, ImmutableArray<Shell> WithWidth) Listed(string name, params ImmutableArray<string> keys) => (name, Keys(keys), Keys(keys));

    private static ImmutableArray<Shell> Keys(params ImmutableArray<string> keys) => [.. Shell.All.Where(s => keys.Contains(s.FitKey))];
}
