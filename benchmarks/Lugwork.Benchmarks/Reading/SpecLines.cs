using System.Text;

namespace Lugwork.Benchmarks.Reading;

/// <summary>Spec lines in one block of characters, with the numbers in them found beforehand, decimal points in place of commas.</summary>
internal sealed class SpecLines
{
    private readonly char[] _text;
    private readonly char[] _normal;
    private readonly (int Start, int Length)[] _lines;
    private readonly (int Start, int Length)[] _numbers;

    private SpecLines(List<string> lines)
    {
        Texts = [.. lines];
        StringBuilder all = new();
        _lines = new (int, int)[lines.Count];
        for (int i = 0; i < lines.Count; i++)
        {
            _lines[i] = (all.Length, lines[i].Length);
            all.Append(lines[i]);
        }

        _text = all.ToString().ToCharArray();
        _normal = all.Replace(',', '.').ToString().ToCharArray();
        List<(int, int)> numbers = [];
        FirstNumber = new int[lines.Count + 1];
        for (int i = 0; i < lines.Count; i++)
        {
            FirstNumber[i] = numbers.Count;
            FindNumbers(_lines[i].Start, _lines[i].Length, numbers);
        }

        FirstNumber[lines.Count] = numbers.Count;
        _numbers = [.. numbers];
    }

    public const int Count = 65_536;

    /// <summary>The lines one by one, for candidates that take strings.</summary>
    public string[] Texts { get; }

    public int Length => _lines.Length;

    public int Numbers => _numbers.Length;

    /// <summary>Which number is the first of a line; one more than there are lines.</summary>
    public int[] FirstNumber { get; }

    public ReadOnlySpan<char> Line(int i) => _text.AsSpan(_lines[i].Start, _lines[i].Length);

    /// <summary>A number of a line with a decimal point.</summary>
    public ReadOnlySpan<char> Number(int i) => _normal.AsSpan(_numbers[i].Start, _numbers[i].Length);

    public static SpecLines Axles() => Of(1, r =>
    {
        string axle = r.Next(10) switch
        {
            0 => Pick(r, "3/8", "5/16", "9/16", "1/2", "7/16", "13/32", "25/64"),
            1 => Decimal(r, r.Next(5, 25), r.Next(1, 10)),
            2 => $"{r.Next(5, 26)}",
            _ => Pick(r, "9", "10", "12", "12", "14", "15", "20"),
        };
        axle += axle.Contains('/', StringComparison.Ordinal) ? Pick(r, "", " in", "in", "\"", " inch") : Unit(r);
        string width = (r.Next(8) == 0 ? Decimal(r, r.Next(60, 250), r.Next(1, 10)) : r.Next(3) == 0 ? $"{r.Next(60, 251)}" : Pick(r, "100", "110", "130", "135", "142", "148", "157", "177")) + Unit(r);
        string sign = Sign(r);
        return r.Next(4) == 0 ? $"{width}{sign}{axle}" : $"{axle}{sign}{width}";
    });

    public static SpecLines Headsets() => Of(2, r => Case(r, Half(r, "28.6", "25.4", "38.1", "31.8") + Pick(r, "|", " | ", " - ", "; ", " ;", ", ", " I ", "/", " / ", " ") + Half(r, "30", "40", "33", "26.4", "27")));

    public static SpecLines Tyres() => Of(3, r =>
    {
        int width = r.Next(18, 90);
        string bead = Pick(r, "622", "622", "584", "559", "406", "507", "590", "630", "451");
        string part = r.Next(20) == 0 ? ",0" : "";
        return r.Next(8) switch
        {
            0 => $"700{Sign(r)}{Pick(r, "23", "25", "32", "50", "47", "20", "18")}{Pick(r, "", "C", "c", " C")}",
            1 => $"{bead}{Sign(r)}{width}{part}{Unit(r)}",
            2 => $"{width}{part}{Sign(r)}{bead}{Unit(r)}",
            _ => $"{width}{part}{Pick(r, "-", "-", "-", " - ", "\u2013")}{bead}{Unit(r)}",
        };
    });

    /// <summary>The same lines, each spoilt in one place so that nothing may be read from it.</summary>
    public SpecLines Spoilt()
    {
        Random r = new(4);
        List<string> lines = [];
        for (int i = 0; i < Length; i++)
        {
            string line = Line(i).ToString();
            lines.Add(r.Next(6) switch
            {
                0 => line + "?",
                1 => "~" + line,
                2 => line[..r.Next(2)],
                3 => line.Insert(r.Next(line.Length), "!"),
                4 => line + " x 9",
                _ => "unknown",
            });
        }

        return new(lines);
    }

    private static SpecLines Of(int seed, Func<Random, string> one)
    {
        Random random = new(seed);
        return new([.. Enumerable.Range(0, Count).Select(_ => one(random))]);
    }

    private static string Half(Random r, params string[] seconds)
    {
        string bore = r.Next(6) == 0 ? Decimal(r, r.Next(29, 62), r.Next(1, 10)) : Pick(r, "34", "44", "49", "56", "41", "42", "52", "30");
        string second = r.Next(4) == 0 ? "" : "/" + Comma(r, Pick(r, seconds));
        return Pick(r, "EC", "ZS", "IS") + (r.Next(8) == 0 ? " " : "") + bore + second + (r.Next(8) == 0 ? " mm" : "");
    }

    private static string Decimal(Random r, int whole, int tenths) => Comma(r, $"{whole}.{tenths}");

    private static string Comma(Random r, string number) => r.Next(2) == 0 ? number.Replace('.', ',') : number;

    private static string Unit(Random r) => Pick(r, "", "", "", " mm", "mm", " MM");

    private static string Sign(Random r) => Pick(r, "x", "x", "X", " x ", " X ", "\u00D7", " \u00D7 ");

    private static string Case(Random r, string text) => r.Next(3) switch
    {
        0 => text.ToLowerInvariant(),
        _ => text,
    };

    private static string Pick(Random r, params string[] some) => some[r.Next(some.Length)];

    private void FindNumbers(int start, int length, List<(int, int)> numbers)
    {
        for (int i = start; i < start + length; i++)
        {
            if (!char.IsAsciiDigit(_normal[i]))
            {
                continue;
            }

            int end = i + 1;
            while (end < start + length && (char.IsAsciiDigit(_normal[end]) || (_normal[end] == '.' && end + 1 < start + length && char.IsAsciiDigit(_normal[end + 1]))))
            {
                end++;
            }

            numbers.Add((i, end - i));
            i = end;
        }
    }
}
