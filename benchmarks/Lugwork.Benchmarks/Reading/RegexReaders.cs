using System.Globalization;
using System.Text.RegularExpressions;

namespace Lugwork.Benchmarks.Reading;

/// <summary>The peers: source-generated expressions with groups. Numbers come out of the groups as whole nanometres, without a detour over text.</summary>
internal static partial class RegexReaders
{
    private const RegexOptions Loose = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    [GeneratedRegex("""^\s*(((?<n>\d{1,9})/(?<d>2|4|8|16|32|64)\s*(in(ch)?|["″])?)|((?<a>\d{1,9})([.,](?<ap>\d{1,6}))?\s*(mm)?))\s*[x*×✕⨯]\s*(((?<m>\d{1,9})/(?<e>2|4|8|16|32|64)\s*(in(ch)?|["″])?)|((?<b>\d{1,9})([.,](?<bp>\d{1,6}))?\s*(mm)?))\s*\z""", Loose)]
    private static partial Regex AxleBySize();

    [GeneratedRegex("""^\s*(?<s>EC|ZS|IS)\s*(?<a>\d{1,9})([.,](?<ap>\d{1,6}))?\s*(mm)?(\s*/\s*(?<b>\d{1,9})([.,](?<bp>\d{1,6}))?(\s*mm)?)?(\s*(\||;|,|-|[‐‑‒–—−]|/|I(?!S))\s*|\s+)(?<t>EC|ZS|IS)\s*(?<c>\d{1,9})([.,](?<cp>\d{1,6}))?\s*(mm)?(\s*/\s*(?<d>\d{1,9})([.,](?<dp>\d{1,6}))?(\s*mm)?)?\s*\z""", Loose)]
    private static partial Regex TwoHalves();

    [GeneratedRegex("""^\s*(?<a>\d{1,9})([.,]0{1,6})?\s*[x*×✕⨯‐‑‒–—−-]\s*(?<b>\d{1,9})([.,]0{1,6})?\s*(mm\b)?\s*((?<c>C)\s*(mm)?\s*)?\z""", Loose)]
    private static partial Regex TwoNumbers();

    public static bool Axle(string line, out (long Axle, long Width) size)
    {
        size = default;
        if (AxleBySize().Match(line) is not { Success: true } match)
        {
            return false;
        }

        GroupCollection groups = match.Groups;
        long a = groups["n"] is { Success: true } n ? Inches(n, groups["d"]) : Exact(groups["a"], groups["ap"]);
        long b = groups["m"] is { Success: true } m ? Inches(m, groups["e"]) : Exact(groups["b"], groups["bp"]);
        size = (Math.Min(a, b), Math.Max(a, b));
        return size is { Axle: >= 5_000_000 and <= 25_000_000, Width: >= 60_000_000 and <= 250_000_000 };
    }

    public static bool Headset(string line, out (int Style, long Bore, long Second, int LowerStyle, long LowerBore, long LowerSecond) pair)
    {
        pair = default;
        if (TwoHalves().Match(line) is not { Success: true } match)
        {
            return false;
        }

        GroupCollection groups = match.Groups;
        pair = (Style(groups["s"]), Exact(groups["a"], groups["ap"]), Exact(groups["b"], groups["bp"]), Style(groups["t"]), Exact(groups["c"], groups["cp"]), Exact(groups["d"], groups["dp"]));
        return IsBore(pair.Bore) && IsBore(pair.LowerBore) && IsSecond(pair.Second, groups["b"]) && IsSecond(pair.LowerSecond, groups["d"]);
    }

    public static bool Tyre(string line, out (int Width, int Bead) size)
    {
        size = default;
        if (TwoNumbers().Match(line) is not { Success: true } match)
        {
            return false;
        }

        GroupCollection groups = match.Groups;
        int a = Whole(groups["a"]);
        int b = Whole(groups["b"]);
        if (a == 700)
        {
            size = (b is 45 or 47 ? 47 : b, 622);
            return b is 18 or 20 or 23 or 25 or 32 or 50 or 45 or 47;
        }

        size = a > b && b < 90 ? (b, a) : (a, b);
        return !groups["c"].Success && size.Width is >= 18 and <= 132 && Seats.Contains(size.Bead);
    }

    private static readonly HashSet<int> Seats = [.. Lugwork.Tyres.BeadSeat.All.Select(s => (int)s.FitCode)];

    private static int Whole(Group group) => int.Parse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    private static long Inches(Group above, Group below) => Whole(above) * (25_400_000L / Whole(below));

    private static long Exact(Group whole, Group part)
    {
        if (!whole.Success)
        {
            return 0;
        }

        long value = Whole(whole) * 1_000_000L;
        if (part.Success)
        {
            long scale = 1_000_000;
            for (int i = 0; i < part.Length; i++)
            {
                scale /= 10;
            }

            value += Whole(part) * scale;
        }

        return value;
    }

    private static int Style(Group group) => (group.ValueSpan[0] | 0x20) switch
    {
        'e' => 1,
        'z' => 2,
        _ => 3,
    };

    private static bool IsBore(long value) => value is >= 20_000_000 and <= 70_000_000;

    private static bool IsSecond(long value, Group group) => !group.Success || value is >= 20_000_000 and <= 50_000_000;
}
