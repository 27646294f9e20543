using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>One half of the corpus, run against the readers and counted by the conventions of its README.</summary>
internal sealed class SpecCorpus
{
    private readonly string _half;

    private SpecCorpus(string half) => _half = half;

    public static SpecCorpus Open => new("open");

    public static SpecCorpus Aside => new("aside");

    /// <summary>A second open set, by another hand and written against a reader that was there: hostile lines.</summary>
    public static SpecCorpus More => new("more");

    /// <summary>A third open set, by yet another hand and written without the grammar at hand.</summary>
    public static SpecCorpus Third => new("third");

    /// <summary>A fourth open set, by a further hand and written without running a reader: plain things in plain words.</summary>
    public static SpecCorpus Fourth => new("fourth");

    /// <summary>A fifth open set, by two further hands and written without running a reader: lines and sheets in the manner of the first two halves.</summary>
    public static SpecCorpus Fifth => new("fifth");

    /// <summary>A sixth open set of lines that look hard and are sure.</summary>
    public static SpecCorpus Sixth => new("sixth");

    /// <summary>A seventh open set of lines, weighted to where reading is weakest.</summary>
    public static SpecCorpus Seventh => new("seventh");

    /// <summary>An eighth open set of lines, of the kind that spec pages and exports have.</summary>
    public static SpecCorpus Eighth => new("eighth");

    /// <summary>A ninth open set of lines, as in forums, advertisements and mechanics' notes.</summary>
    public static SpecCorpus Ninth => new("ninth");

    /// <summary>A tenth open set of lines, by three hands, as siblings of the open half.</summary>
    public static SpecCorpus Tenth => new("tenth");

    /// <summary>An eleventh open set of lines, of the same kind by a fourth hand.</summary>
    public static SpecCorpus Eleventh => new("eleventh");

    /// <summary>A twelfth open set of lines, of the same kind by a fifth hand.</summary>
    public static SpecCorpus Twelfth => new("twelfth");

    /// <summary>A thirteenth open set of lines, of the same kind by a sixth hand.</summary>
    public static SpecCorpus Thirteenth => new("thirteenth");

    /// <summary>A fourteenth open set of lines, of the same kind by a seventh hand.</summary>
    public static SpecCorpus Fourteenth => new("fourteenth");

    /// <summary>An open set of lines by its name in the README of the corpus.</summary>
    public static SpecCorpus Named(string name) => new(name);

    public static string Folder { get; } = Path.Combine(Root(), "tests", "Lugwork.Tests", "Reading", "Corpus");

    public List<string> Wrong { get; } = [];

    public List<string> Missed { get; } = [];

    public bool IsAside => _half == "aside";

    public int Readable { get; private set; }

    public int Read { get; private set; }

    public int Accepted { get; private set; }

    public int Right { get; private set; }

    public int Expected { get; private set; }

    public int Found { get; private set; }

    public string Note => string.Create(CultureInfo.InvariantCulture,
        $"{_half}: {Read} of {Readable} readable lines read ({100m * Read / Math.Max(1, Readable):0.0} %), {Right} of {Accepted} accepted values right (precision {100m * Right / Math.Max(1, Accepted):0.0} %), {Found} of {Expected} expected values found (recall {100m * Found / Math.Max(1, Expected):0.0} %)");

    /// <summary>Every file that the list of hashes names is as it was committed.</summary>
    public static List<string> Changed()
    {
        List<string> changed = [];
        foreach (string line in File.ReadAllLines(Path.Combine(Folder, "corpus.sha256")).Where(l => l.Length > 66))
        {
            string path = Path.Combine(Folder, line[66..].Trim());
            string hash = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path)));
            if (!line.StartsWith(hash, StringComparison.Ordinal))
            {
                changed.Add(path);
            }
        }

        return changed;
    }

    /// <summary>The lines with what is known of their part, without their labels.</summary>
    public IEnumerable<(Slot? Slot, string Text)> Texts
    {
        get
        {
            using JsonDocument lines = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, $"lines-{_half}.json")));
            foreach (JsonElement line in lines.RootElement.EnumerateArray())
            {
                string? hint = line.GetProperty("hint").GetString();
                yield return (hint is null ? null : Slot.All.Single(s => s.Name == hint), line.GetProperty("text").GetString()!);
            }
        }
    }

    public SpecCorpus RunLines()
    {
        using JsonDocument lines = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, $"lines-{_half}.json")));
        foreach (JsonElement line in lines.RootElement.EnumerateArray())
        {
            string id = line.GetProperty("id").GetString()!;
            string text = line.GetProperty("text").GetString()!;
            string? hint = line.GetProperty("hint").GetString();
            bool readable = line.GetProperty("outcome").GetString() == "read";
            SpecLine read = SpecLine.Read(hint is null ? null : Slot.All.Single(s => s.Name == hint), text);
            Labels labels = Labels.Of(line);
            bool all = Count(id, text, read.Values, labels);
            Readable += readable ? 1 : 0;
            Read += readable && all ? 1 : 0;
            if (readable && !all)
            {
                Missed.Add($"{id}: {string.Join(", ", labels.Left(read.Values))}");
            }
        }

        return this;
    }

    /// <summary>Lines that say anew, in other words and languages, what lines of the open sets say: each by the labels of the line that it is of, and by what it says beyond them. Spans are not labelled.</summary>
    public SpecCorpus RunAnew()
    {
        int at = 0;
        foreach (string row in File.ReadLines(Path.Combine(Folder, $"anew-{_half}.jsonl")))
        {
            at++;
            using JsonDocument anew = JsonDocument.Parse(row);
            string text = anew.RootElement.GetProperty("text").GetString()!;
            JsonElement of = anew.RootElement.GetProperty("of");
            OpenLine line = of.ValueKind == JsonValueKind.Array ? Joined(of.EnumerateArray()) : OpenLines.Value[of.GetString()!];
            SpecLine read = SpecLine.Read(line.Hint is null ? null : Slot.All.Single(s => s.Name == line.Hint), text);
            Labels labels = line.Labels.For(text, anew.RootElement);
            string id = string.Create(CultureInfo.InvariantCulture, $"{at} ({text})");
            bool all = Count(id, text, read.Values, labels);
            Readable += line.IsReadable ? 1 : 0;
            Read += line.IsReadable && all ? 1 : 0;
            if (line.IsReadable && !all)
            {
                Missed.Add($"{id}: {string.Join(", ", labels.Left(read.Values))}");
            }
        }

        return this;
    }

    public SpecCorpus RunSheets()
    {
        foreach (string path in Directory.GetFiles(Path.Combine(Folder, $"sheets-{_half}"), "*.json").Order(StringComparer.Ordinal))
        {
            string text = File.ReadAllText(Path.ChangeExtension(path, ".txt"));
            using JsonDocument labelled = JsonDocument.Parse(File.ReadAllText(path));
            string name = Path.GetFileNameWithoutExtension(path);
            SpecSheet sheet = labelled.RootElement.GetProperty("kind").GetString() switch
            {
                "frame" => SpecSheet.ReadFrame(text),
                "fork" => SpecSheet.ReadFork(text),
                "wheel" => SpecSheet.ReadWheel(text),
                _ => SpecSheet.ReadComplete(text),
            };
            Labels labels = Labels.Of(labelled.RootElement);
            bool all = Count(name, text, sheet.Values, labels);
            Readable++;
            Read += all ? 1 : 0;
            if (!all)
            {
                Missed.Add($"{name}: {string.Join(", ", labels.Left(sheet.Values))}");
            }

            foreach (JsonElement conflict in labelled.RootElement.GetProperty("conflicts").EnumerateArray())
            {
                string field = FieldsOfLabels.Today(conflict.GetProperty("field").GetString()!);
                string[] keys = [.. conflict.GetProperty("values").EnumerateArray().Select(v => v.GetProperty("key").GetString()!).Order(StringComparer.Ordinal)];
                if (!sheet.Conflicts.Any(c => $"{c.Slot.Key}.{c.Field}" == field && c.Values.Select(v => v.Key).Order(StringComparer.Ordinal).SequenceEqual(keys)))
                {
                    Missed.Add($"{name}: conflict of {field}");
                }
            }

            foreach (JsonElement left in labelled.RootElement.GetProperty("leftovers").EnumerateArray())
            {
                if (!sheet.Leftovers.Any(l => l.Contains(left.GetString()!, StringComparison.Ordinal)))
                {
                    Missed.Add($"{name}: left over '{left.GetString()}'");
                }
            }
        }

        return this;
    }

    private bool Count(string id, string text, IReadOnlyList<SpecValue> values, Labels labels)
    {
        HashSet<string> keys = [.. values.Select(v => $"{v.Slot.Key}.{v.Field}={v.Key}")];
        foreach (SpecValue value in values)
        {
            Accepted++;
            string said = $"{value.Slot.Key}.{value.Field}={value.Key}";
            if (labels.Allows(value))
            {
                Right++;
            }
            else
            {
                Wrong.Add($"{id}: {said} from '{value.Words}'");
            }

            if (labels.WordsOf(value) is { } words && !Overlaps(text, words, value.Span))
            {
                Wrong.Add($"{id}: {said} is not from '{words}' but '{value.Words}'");
            }
        }

        int left = labels.Left(values).Count;
        Expected += labels.Count;
        Found += labels.Count - left;
        return left == 0;
    }

    private static bool Overlaps(string text, string words, SpecSpan span)
    {
        for (int at = text.IndexOf(words, StringComparison.Ordinal); at >= 0; at = text.IndexOf(words, at + 1, StringComparison.Ordinal))
        {
            if (span.Start < at + words.Length && at < span.End)
            {
                return true;
            }
        }

        return false;
    }

    private static string Root()
    {
        string at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at) ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above the tests");
        }

        return at;
    }

    /// <summary>All lines of the open sets by their ids.</summary>
    private static readonly Lazy<Dictionary<string, OpenLine>> OpenLines = new(() =>
    {
        Dictionary<string, OpenLine> lines = new(StringComparer.Ordinal);
        foreach (string path in Directory.GetFiles(Folder, "lines-*.json").Where(p => !p.EndsWith("-aside.json", StringComparison.Ordinal)))
        {
            using JsonDocument set = JsonDocument.Parse(File.ReadAllText(path));
            foreach (JsonElement line in set.RootElement.EnumerateArray())
            {
                lines.Add(line.GetProperty("id").GetString()!, new(line.GetProperty("hint").GetString(), line.GetProperty("outcome").GetString() == "read", Labels.Of(line)));
            }
        }

        return lines;
    });

    /// <summary>Several lines about one part, said in one.</summary>
    private static OpenLine Joined(IEnumerable<JsonElement> of)
    {
        OpenLine[] lines = [.. of.Select(id => OpenLines.Value[id.GetString()!])];
        return new(lines[0].Hint, lines.All(l => l.IsReadable), new(
            lines.SelectMany(l => l.Labels.Values).ToDictionary(v => v.Key, v => v.Value),
            [.. lines.SelectMany(l => l.Labels.May)]));
    }

    private sealed record OpenLine(string? Hint, bool IsReadable, Labels Labels);

    /// <summary>What a line or sheet says by its labels.</summary>
    private sealed record Labels(Dictionary<string, (string Key, string Words)> Values, HashSet<string> May)
    {
        public int Count => Values.Count;

        public static Labels Of(JsonElement labelled) => new(
            labelled.GetProperty("values").EnumerateArray().ToDictionary(v => FieldsOfLabels.Today(v.GetProperty("field").GetString()!), v => (v.GetProperty("key").GetString()!, v.GetProperty("words").GetString()!)),
            labelled.TryGetProperty("may", out JsonElement may) ? [.. may.EnumerateArray().Select(v => $"{FieldsOfLabels.Today(v.GetProperty("field").GetString()!)}={v.GetProperty("key").GetString()}")] : []);

        /// <summary>The same said by another text, with what that text says beyond it.</summary>
        public Labels For(string text, JsonElement anew) => new(
            Values.ToDictionary(v => v.Key, v => (v.Value.Key, text)),
            anew.TryGetProperty("may", out JsonElement may) ? [.. May, .. may.EnumerateArray().Select(m => m.GetString()!)] : May);

        public bool Allows(SpecValue value) =>
            (Values.TryGetValue($"{value.Slot.Key}.{value.Field}", out (string Key, string Words) label) && label.Key == value.Key) || May.Contains($"{value.Slot.Key}.{value.Field}={value.Key}");

        public string? WordsOf(SpecValue value) => Values.TryGetValue($"{value.Slot.Key}.{value.Field}", out (string Key, string Words) label) ? label.Words : null;

        public List<string> Left(IEnumerable<SpecValue> values)
        {
            HashSet<string> keys = [.. values.Select(v => $"{v.Slot.Key}.{v.Field}={v.Key}")];
            return [.. Values.Select(v => $"{v.Key}={v.Value.Key}").Where(v => !keys.Contains(v))];
        }
    }
}
