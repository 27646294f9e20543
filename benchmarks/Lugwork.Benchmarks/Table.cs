using System.Diagnostics;

namespace Lugwork.Benchmarks;

/// <summary>Proves, measures three times, and prints the table.</summary>
internal static class Table
{
    private const int Repeats = 3;

    /// <summary>True where no claim was missed in two of three repeats.</summary>
    public static bool Run(IReadOnlyList<IRow> rows, Options options)
    {
        IRow[] wanted = [.. rows.Where(options.Wants)];
        if (wanted.Length == 0)
        {
            Console.Error.WriteLine($"there is no row {options.Row}; rows are {string.Join(", ", rows.SelectMany(r => r.Claims).Select(c => c.Number).Distinct())}");
            return false;
        }

        List<string> lines = ["| # | job | peer | target | measured | verdict |", "| --- | --- | --- | --- | --- | --- |"];
        List<string> notes = [];
        bool good = true;
        foreach (IRow row in wanted)
        {
            using IDisposable? held = row as IDisposable;
            Console.Error.WriteLine($"row {string.Join(", ", row.Claims.Select(c => c.Number).Distinct())}: {row.Claims[0].Job}");
            long start = Stopwatch.GetTimestamp();
            row.Prove();
            Console.Error.WriteLine($"  proven after {Stopwatch.GetElapsedTime(start).TotalSeconds:0} s");
            if (options.ProveOnly)
            {
                continue;
            }

            IReadOnlyList<Measured>[] repeats = [.. Enumerable.Range(0, Repeats).Select(_ => row.Measure(options.Effort))];
            Console.Error.WriteLine($"  measured after {Stopwatch.GetElapsedTime(start).TotalSeconds:0} s");
            for (int i = 0; i < row.Claims.Count; i++)
            {
                Claim claim = row.Claims[i];
                Measured[] measured = [.. repeats.Select(r => r[i])];
                bool kept = measured.Count(m => !claim.Holds(m)) < 2;
                if (options.Wants(claim))
                {
                    good &= kept;
                    lines.Add($"| {claim.Number} | {claim.Job} | {claim.Peer} | {claim.Target} | {Shown(claim, measured)} | {(kept ? "kept" : "missed")} |");
                }
            }

            if (row.Note.Length > 0)
            {
                notes.Add(row.Note);
            }
        }

        if (options.ProveOnly)
        {
            Console.WriteLine($"{wanted.Length} of {rows.Count} rows proven, nothing measured");
            return true;
        }

        Console.WriteLine(string.Join('\n', [.. lines.Take(2), .. lines.Skip(2).OrderBy(Order)]));
        foreach (string note in notes)
        {
            Console.WriteLine($"\n{note}");
        }

        return good;
    }

    /// <summary>The median first, then the repeats that it is the middle of.</summary>
    private static string Shown(Claim claim, Measured[] measured)
    {
        string[] all = [.. measured.OrderBy(m => m.Value).Select(claim.Show)];
        return all.Distinct().Count() == 1 ? all[0] : $"{all[all.Length / 2]} ({all[0]} to {all[^1]})";
    }

    /// <summary>By number, lines of one number as they were measured.</summary>
    private static double Order(string line)
    {
        string number = line.Split('|')[1].Trim();
        double whole = double.Parse(number.AsSpan().TrimEnd("abcdefgh"), System.Globalization.CultureInfo.InvariantCulture);
        return whole + (char.IsAsciiLetter(number[^1]) ? 0.5 : 0);
    }
}
