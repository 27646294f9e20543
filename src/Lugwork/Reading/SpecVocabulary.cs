using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>The words by which spec text is read: of fields, of values and of what has no interface, in English, German, French, Spanish, Italian and Dutch. Immutable; a user adds words with the methods that return a new one.</summary>
/// <remarks>Case, accents, blanks and hyphens in a word do not matter. The longest phrase wins.</remarks>
public sealed class SpecVocabulary
{
    internal const int MostWords = 12;

    private static readonly Lazy<SpecVocabulary> Built = new(Build);

    private readonly PhraseTree _tree;

    private SpecVocabulary(PhraseTree tree) => _tree = tree;

    /// <summary>The words that come with the library.</summary>
    public static SpecVocabulary Default => Built.Value;

    internal PhraseTree Tree => _tree;

    /// <summary>Adds a phrase after which, or before which, the value of one field stands.</summary>
    /// <param name="words">A phrase of one to twelve words.</param>
    /// <param name="slot">The part.</param>
    /// <param name="field">Key of the field in a build file: "seatTube".</param>
    /// <exception cref="ArgumentException">The phrase has no letters or too many words, or the part has no such field.</exception>
    public SpecVocabulary With(string words, Slot slot, string field)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(field);
        SpecFields.Of(slot, field);
        return Add(words, $"f:{slot.Key}.{field}");
    }

    /// <summary>Adds a phrase that is a value by itself.</summary>
    /// <param name="words">A phrase of one to twelve words.</param>
    /// <param name="slot">The part.</param>
    /// <param name="field">Key of the field in a build file: "bead".</param>
    /// <param name="value">The value as the field reads it: "folding".</param>
    /// <exception cref="ArgumentException">The phrase has no letters or too many words, the part has no such field, or the field does not read the value as one.</exception>
    public SpecVocabulary WithValue(string words, Slot slot, string field, string value)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(value);
        SpecField known = SpecFields.Of(slot, field);
        FieldReading reading = known.Read(value);
        return reading.Keys is [string key]
            ? Add(words, $"w:{slot.Key}.{field}={key}")
            : throw new ArgumentException($"'{value}' is not one value of {slot.Key}.{field}", nameof(value));
    }

    /// <summary>Adds a phrase beside which a figure says nothing about an interface: "crank length".</summary>
    /// <param name="words">A phrase of one to twelve words.</param>
    /// <exception cref="ArgumentException">The phrase has no letters or too many words.</exception>
    public SpecVocabulary WithNoise(string words) => Add(words, "n:own");

    private SpecVocabulary Add(string words, string term)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(words);
        PhraseTree tree = _tree.Copy();
        if (!tree.TryAdd(words, [term], own: true))
        {
            throw new ArgumentException($"a phrase of one to {MostWords} words with a letter in it is expected", nameof(words));
        }

        return new(tree);
    }

    private static SpecVocabulary Build()
    {
        Dictionary<string, List<string>> files = WordFile.Read();
        PhraseTree tree = new();
        foreach (string file in (string[])["topics", "noise", "marks", "values", "doubts", "outside", "lengths"])
        {
            foreach ((ImmutableArray<string> terms, string[] phrases) in Rows(files[file]))
            {
                foreach (string phrase in phrases)
                {
                    tree.TryAdd(phrase, terms, own: false);
                }
            }
        }

        foreach (string[] row in files["pairs"].Select(r => r.Split('\t')))
        {
            Pair(tree, [.. row[0].Split(' ')], row[1].Split(", "), row[2].Split(", "), turned: row.Length > 3);
        }

        foreach ((ImmutableArray<string> terms, string[] phrases) in Rows(files["topics"].Concat(files["marks"]).Concat(files["values"])))
        {
            foreach (string phrase in phrases)
            {
                tree.AddPlain(phrase, terms);
            }
        }

        return new(tree);
    }

    private static IEnumerable<(ImmutableArray<string> Terms, string[] Phrases)> Rows(IEnumerable<string> rows) =>
        rows.Select(r => r.Split('\t')).Select(r => (r[0].Split(' ').ToImmutableArray(), r[1].Split(", ")));

    private static void Pair(PhraseTree tree, ImmutableArray<string> terms, string[] things, string[] states, bool turned)
    {
        foreach (string thing in things)
        {
            foreach (string state in states)
            {
                tree.TryAdd($"{thing} {state}", terms, own: false);
                if (turned)
                {
                    tree.TryAdd($"{state} {thing}", terms, own: false);
                }
            }
        }
    }
}
