using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Lugwork;

/// <summary>One field of a part's text form: how it is read, written and called.</summary>
internal sealed class PartField<TPart> : IPartField
    where TPart : Part
{
    /// <summary>Property name in a build file: "seatTube".</summary>
    public required string Key { get; init; }

    /// <summary>Words that may stand before the value in the short form.</summary>
    public required ImmutableArray<string> Words { get; init; }

    /// <summary>The fields that it sets, where it is another way to say them.</summary>
    public ImmutableArray<string> Sets { get; init; } = [];

    /// <summary>It says several fields roughly; one of them given by itself says it more closely and may stand beside it.</summary>
    public bool Rough { get; init; }

    /// <summary>The value alone is enough in the short form.</summary>
    public bool Bare { get; init; }

    public required string Expected { get; init; }

    public required TryRead Read { get; init; }

    public required Func<TPart, string> Write { get; init; }

    /// <summary>The part with other evidence of this field; null for a field that says several others.</summary>
    public Func<TPart, Evidence, TPart>? Mark { get; init; }

    /// <summary>Where the value of the field came from; null for a field that says several others.</summary>
    public Func<TPart, Evidence?>? Evidence { get; init; }

    /// <summary>Writes what the field of a part can be, in codes; null for a field that says several others.</summary>
    public ReadsCodes? Codes { get; init; }

    /// <summary>The part with the field as codes say it; null for a field that says several others.</summary>
    public Func<TPart, Candidates, TPart>? Take { get; init; }

    /// <inheritdoc/>
    public Func<FieldValues> Values { get; init; } = FieldValues.AsText;

    /// <inheritdoc/>
    public bool HasOwnValue => Take is not null && Sets.IsEmpty;

    /// <inheritdoc/>
    public FieldType? Type => TypeOf?.Invoke();

    /// <summary>Made on demand: a check never pays for it.</summary>
    public Func<FieldType>? TypeOf { get; init; }

    /// <summary>Written where it is wanted: a catalogue reads every field of a million parts.</summary>
    public delegate void ReadsCodes(TPart part, ref Candidates into);

    /// <summary>Writes what the field is of each of several parts as one number each; null for a field that says several others.</summary>
    public PacksCodes? Packs { get; init; }

    /// <summary>One number a part, so far apart as a part has fields.</summary>
    public delegate void PacksCodes(ReadOnlySpan<TPart> parts, Span<long> into, int apart, OtherCodes others);

    public delegate bool TryRead(TPart part, string text, out TPart read, out int position, out string reason);

    public static PartField<TPart> Of<T>(
        string key, string expected, Func<TPart, Known<T>> get, Func<TPart, Known<T>, TPart> with, ImmutableArray<string> words, bool bare = false, Func<T, bool>? where = null, string? sets = null)
        where T : IInterfaceValue<T> => new()
        {
            Key = key,
            Words = words,
            Bare = bare,
            Expected = expected,
            Sets = sets is null ? [] : [sets],
            Values = () => FieldValues.Of(where),
            Mark = (part, evidence) => with(part, get(part).With(evidence)),
            Evidence = part => get(part).Evidence,
            Codes = (TPart part, ref Candidates into) => get(part).ToCandidates(ref into),
            Packs = (parts, into, apart, others) => Pack(get, parts, into, apart, others),
            Take = (part, codes) => with(part, Known<T>.OfCandidates(codes)),
            TypeOf = () => FieldType.Of(where),
            Write = part => sets is null ? get(part).ToString() : "unknown",
            Read = (TPart part, string text, out TPart read, out int position, out string reason) =>
            {
                bool good = KnownText.TryRead(text, where, out Known<T> known, out position, out reason);
                read = good ? with(part, known) : part;
                return good;
            },
        };

    /// <summary>The condition: "unknown" said of it is a state of its own, and not the same as nothing said.</summary>
    public static PartField<TPart> OfCondition()
    {
        PartField<TPart> field = Of("condition", "new, inspected, used, worn, damaged, crashed, recalled or not-known", p => p.Condition, (TPart p, Known<PartCondition> v) => p with { Condition = v }, []);
        TryRead plain = field.Read;
        return new()
        {
            Key = field.Key,
            Words = field.Words,
            Expected = field.Expected,
            Values = field.Values,
            Mark = field.Mark,
            Evidence = field.Evidence,
            Codes = field.Codes,
            Packs = field.Packs,
            Take = field.Take,
            Write = field.Write,
            Read = (TPart part, string text, out TPart read, out int position, out string reason) =>
                plain(part, string.Join('|', text.Split('|').Select(piece => IsUnknown(piece) ? PartCondition.NotKnown.FitKey : piece)), out read, out position, out reason),
        };
    }

    internal static void Pack<T>(Func<TPart, Known<T>> get, ReadOnlySpan<TPart> parts, Span<long> into, int apart, OtherCodes others)
        where T : IInterfaceValue<T>
    {
        int at = 0;
        foreach (TPart part in parts)
        {
            into[at] = get(part).Packed(others);
            at += apart;
        }
    }

    private static bool IsUnknown(string text) => text.Trim() is "?" || text.Trim().Equals("unknown", StringComparison.OrdinalIgnoreCase);
}

/// <summary>The text form of one kind of part: short "key value;" text and JSON properties come from the same fields.</summary>
internal sealed class PartForm<TPart>(string kind, Func<TPart> empty, params PartField<TPart>[] fields) : IPartForm
    where TPart : Part
{
    private const int MostText = 20_000;

    // A rider is no part that was used.
    private readonly PartField<TPart>[] _fields = typeof(TPart) == typeof(Rider)
        ? fields
        : [.. fields, PartField<TPart>.OfCondition()];

    string IPartForm.Kind => kind;

    IEnumerable<IPartField> IPartForm.Fields => _fields;

    /// <summary>What a part cannot be, whatever its neighbours: the field and the reason; null where it can.</summary>
    public Func<TPart, (string Field, string Reason, string Expected)?>? Contradiction { get; init; }

    public TPart Read(string text) => TryRead(text, out TPart part, out ImmutableArray<SpecProblem> problems) ? part : throw new SpecException(problems);

    public bool TryRead(string text, out TPart part, out ImmutableArray<SpecProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        part = empty();
        List<SpecProblem> found = [];
        HashSet<string> seen = [];
        if (text.Length > MostText)
        {
            problems = [new(kind, MostText, "the text is too long", $"at most {MostText} characters")];
            return false;
        }

        bool any = false;
        foreach (bool rough in new[] { true, false })
        {
            foreach ((string piece, int at) in Pieces(text))
            {
                any = true;
                part = ReadPiece(part, piece, at, rough, seen, found);
            }
        }

        found.Sort(PartFields.ByPosition);
        if (!any)
        {
            found.Add(new(kind, 0, "the text is empty", Keys));
        }

        if (found.Count == 0 && Contradiction?.Invoke(part) is { } wrong)
        {
            found.Add(new(wrong.Field, 0, wrong.Reason, wrong.Expected));
        }

        problems = [.. found];
        return problems.IsEmpty;
    }

    public bool TryReadAny(string text, out Part part, out ImmutableArray<SpecProblem> problems)
    {
        bool good = TryRead(text, out TPart read, out problems);
        part = read;
        return good;
    }

    public Part ReadProperties(IEnumerable<KeyValuePair<string, string>> properties, string path, List<SpecProblem> problems)
    {
        TPart part = empty();
        HashSet<string> seen = [];
        List<(int Order, SpecProblem Problem)> found = [];
        foreach (bool rough in new[] { true, false })
        {
            int order = 0;
            foreach ((string key, string text) in properties)
            {
                order++;
                PartField<TPart>? field = _fields.FirstOrDefault(f => string.Equals(f.Key, key, StringComparison.Ordinal));
                if ((field?.Rough ?? false) != rough)
                {
                    continue;
                }

                if (key == "name")
                {
                    part = part with { Name = text };
                }
                else if (field is null)
                {
                    found.Add((order, new($"{path}.{key}", 0, $"a {kind} has no such property", Keys)));
                }
                else if (SaidBefore(field, seen))
                {
                    found.Add((order, new($"{path}.{key}", 0, "it is said twice under two names", "one of them")));
                }
                else
                {
                    string before = field.Write(part);
                    if (!field.Read(part, text, out part, out int position, out string reason))
                    {
                        found.Add((order, new($"{path}.{key}", position, reason, field.Expected)));
                    }
                    else if (!Closer(before, field.Write(part)))
                    {
                        found.Add((order, new($"{path}.{key}", 0, $"another field says {before}", "the same, or no such field")));
                    }
                }
            }
        }

        problems.AddRange(PartFields.InOrder(found));
        if (Contradiction?.Invoke(part) is { } wrong)
        {
            problems.Add(new($"{path}.{wrong.Field}", 0, wrong.Reason, wrong.Expected));
        }

        return part;
    }

    public IEnumerable<KeyValuePair<string, string>> Write(Part part)
    {
        if (!string.IsNullOrEmpty(part.Name))
        {
            yield return new("name", part.Name);
        }

        foreach (PartField<TPart> field in _fields)
        {
            string text = field.Write((TPart)part);
            if (text != "unknown" && text.Length > 0)
            {
                yield return new(field.Key, text);
            }
        }
    }

    public Part Empty => empty();

    public string? TextOf(Part part, string key) => Field(key) is { } field ? field.Write((TPart)part) : null;

    public Candidates CodesOf(Part part, string key)
    {
        Candidates read = default;
        Field(key)?.Codes?.Invoke((TPart)part, ref read);
        return read;
    }

    /// <summary>The fields that hold a value of their own. Worked out when a catalogue first asks.</summary>
    private PartField<TPart>[] Own => field ??= [.. _fields.Where<PartField<TPart>>(PartFields.HasOwnValue)];

    public ImmutableArray<string> OwnFields => PartFields.Keys(Own);

    public void ReadCodes(Part part, Span<Candidates> into)
    {
        TPart typed = (TPart)part;
        PartField<TPart>[] own = Own;
        for (int i = 0; i < own.Length; i++)
        {
            own[i].Codes!(typed, ref into[i]);
        }
    }

    public PartBatch Batch() => new PartBatch<TPart>(Own);

    public Part OfCodes(ReadOnlySpan<Candidates> codes)
    {
        TPart part = empty();
        PartField<TPart>[] own = Own;
        for (int i = 0; i < own.Length; i++)
        {
            part = codes[i].State == KnownState.Unknown ? part : own[i].Take!(part, codes[i]);
        }

        return part;
    }

    public Evidence? EvidenceOf(Part part, string key) => Field(key)?.Evidence?.Invoke((TPart)part);

    public SpecProblem? WrongOf(Part part) => Contradiction?.Invoke((TPart)part) is { } wrong ? new(wrong.Field, 0, wrong.Reason, wrong.Expected) : null;

    public bool TrySet(Part part, string key, string text, Evidence evidence, out Part changed, out SpecProblem? problem)
    {
        changed = part;
        problem = null;
        if (Field(key) is not { Mark: { } mark } field)
        {
            problem = new(key, 0, $"a {kind} has no such field", Keys);
            return false;
        }

        if (!field.Read((TPart)part, text, out TPart read, out int position, out string reason))
        {
            problem = new(key, position, reason, field.Expected);
            return false;
        }

        changed = mark(read, evidence);
        if (Contradiction?.Invoke(read) is { } wrong)
        {
            problem = new(wrong.Field, 0, wrong.Reason, wrong.Expected);
            return false;
        }

        return true;
    }

    private PartField<TPart>? Field(string key)
    {
        foreach (PartField<TPart> field in _fields)
        {
            if (field.Mark is not null && field.Sets.IsEmpty && string.Equals(field.Key, key, StringComparison.Ordinal))
            {
                return field;
            }
        }

        return null;
    }

    /// <summary>A diameter of one field that another field has too: not taken as either unless it is named or one is left; the reason, null for other text.</summary>
    public Func<string, string?>? Shared { get; init; }

    /// <summary>The fields that share it.</summary>
    public ImmutableArray<string> SharedBy { get; init; } = [];

    private TPart ReadPiece(TPart part, string piece, int at, bool rough, HashSet<string> seen, List<SpecProblem> found)
    {
        PartField<TPart>? named = null;
        string value = piece;
        int length = -1;
        foreach (PartField<TPart> field in _fields)
        {
            for (int i = 0; i <= field.Words.Length; i++)
            {
                // A letter after the word is a longer word: most fall there.
                string word = i == field.Words.Length ? field.Key : field.Words[i];
                if (word.Length > length && piece.Length > word.Length && piece[word.Length] is ' ' or ':' or '=' or '\t' && piece.StartsWith(word, StringComparison.OrdinalIgnoreCase))
                {
                    named = field;
                    length = word.Length;
                    value = piece[word.Length..].TrimStart(' ', ':', '=', '\t');
                }
            }
        }

        if (named is not null)
        {
            return named.Rough != rough ? part : Take(part, named, value, at + piece.Length - value.Length, seen, found);
        }

        if (Shared?.Invoke(piece) is { } shared)
        {
            if (rough)
            {
                return part;
            }

            // Where only one field is still free, the size can be no other.
            PartField<TPart>[] free = [.. _fields.Where(f => SharedBy.Contains(f.Key) && !seen.Contains(f.Key))];
            if (free.Length == 1)
            {
                return Take(part, free[0], piece, at, seen, found);
            }

            found.Add(new(kind, at, shared, Keys));
            return part;
        }

        PartField<TPart>[] takers = [.. _fields.Where(f => f.Bare && f.Read(part, piece, out _, out _, out _))];
        if (takers.Length == 1)
        {
            return takers[0].Rough != rough ? part : Take(part, takers[0], piece, at, seen, found);
        }

        // The name of a family that is not judged goes where the trade writes it: "motor mount" of a frame is its shell.
        if (OutsideText.Read(piece) is { Family: { } family } && _fields.FirstOrDefault(f => family.Homes.Contains(f.Key)) is { } home)
        {
            return home.Rough != rough ? part : Take(part, home, piece, at, seen, found);
        }

        if (rough)
        {
            return part;
        }

        found.Add(new(kind, at, takers.Length == 0 ? $"'{Shorten(piece)}' is nothing known" : $"'{Shorten(piece)}' could be {string.Join(" or ", PartFields.Keys(takers))}", Keys));
        return part;
    }

    private static TPart Take(TPart part, PartField<TPart> field, string value, int at, HashSet<string> seen, List<SpecProblem> found)
    {
        if (SaidBefore(field, seen))
        {
            found.Add(new(field.Key, at, "it is given twice", "each key once"));
            return part;
        }

        string before = field.Write(part);
        if (!field.Read(part, value, out TPart read, out int position, out string reason))
        {
            found.Add(new(field.Key, at + position, reason, field.Expected));
        }
        else if (!Closer(before, field.Write(read)))
        {
            found.Add(new(field.Key, at, $"another field says {before}", "the same, or no such field"));
        }

        return read;
    }

    /// <summary>Every value of the second is one of the first; what said nothing before allows all.</summary>
    private static bool Closer(string before, string after) =>
        before == "unknown" || after == "unknown" || after.Split(" | ").All(before.Split(" | ").Contains);

    private static bool SaidBefore(PartField<TPart> field, HashSet<string> seen)
    {
        bool before = false;
        foreach (string key in field.Sets.IsEmpty ? [field.Key] : field.Sets)
        {
            before |= !seen.Add(field.Rough ? "rough " + key : key);
        }

        return before;
    }

    /// <summary>Split at semicolons, line ends, and commas that a blank follows (a comma inside a number has none).</summary>
    private static IEnumerable<(string Piece, int At)> Pieces(string text)
    {
        int start = 0;
        for (int i = 0; i <= text.Length; i++)
        {
            bool cut = i == text.Length || text[i] is ';' or '\n' or '\r' || (text[i] == ',' && (i + 1 == text.Length || char.IsWhiteSpace(text[i + 1])));
            if (!cut)
            {
                continue;
            }

            string piece = text[start..i];
            string trimmed = piece.Trim();
            if (trimmed.Length > 0)
            {
                yield return (trimmed, start + piece.IndexOf(trimmed[0], StringComparison.Ordinal));
            }

            start = i + 1;
        }
    }

    private static string Shorten(string text) => text.Length > 60 ? text[..60] + "..." : text;

    /// <summary>One text for all problems of a form: a file may be full of them.</summary>
    private string Keys => field ??= "one of " + string.Join(", ", PartFields.Keys(_fields)) + ", each with its value";
}

/// <summary>What the forms of all kinds of part have in common: a lambda in each of them would leave static fields for each kind.</summary>
internal static class PartFields
{
    public static ImmutableArray<string> Keys(IPartField[] fields)
    {
        string[] keys = new string[fields.Length];
        for (int i = 0; i < keys.Length; i++)
        {
            keys[i] = fields[i].Key;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(keys);
    }

    public static Func<IPartField, bool> HasOwnValue { get; } = field => field.HasOwnValue;

    public static Comparison<SpecProblem> ByPosition { get; } = (a, b) => a.Position.CompareTo(b.Position);

    public static IEnumerable<SpecProblem> InOrder(List<(int Order, SpecProblem Problem)> found) => found.OrderBy(f => f.Order).Select(f => f.Problem);
}

/// <summary>A form of any kind of part.</summary>
internal interface IPartForm
{
    bool TryReadAny(string text, out Part part, out ImmutableArray<SpecProblem> problems);

    /// <summary>What the part is called: "wheel".</summary>
    string Kind { get; }

    IEnumerable<IPartField> Fields { get; }

    Part ReadProperties(IEnumerable<KeyValuePair<string, string>> properties, string path, List<SpecProblem> problems);

    IEnumerable<KeyValuePair<string, string>> Write(Part part);

    /// <summary>A part of which nothing is stated.</summary>
    Part Empty { get; }

    /// <summary>The canonical text of one field; null where the part has no such field of its own.</summary>
    string? TextOf(Part part, string key);

    /// <summary>What one field can be, in codes; unknown where there is no such field.</summary>
    Candidates CodesOf(Part part, string key);

    /// <summary>Keys of the fields that hold a value of their own; together they say all that a part is.</summary>
    ImmutableArray<string> OwnFields { get; }

    /// <summary>What each of these fields can be, in codes.</summary>
    void ReadCodes(Part part, Span<Candidates> into);

    /// <summary>Parts of this kind that are read together.</summary>
    PartBatch Batch();

    /// <summary>The part of which these codes are; without a name, its evidence as stated.</summary>
    /// <exception cref="ArgumentException">A code stands for nothing.</exception>
    Part OfCodes(ReadOnlySpan<Candidates> codes);

    /// <summary>Where the value of one field came from; null where nothing is known.</summary>
    Evidence? EvidenceOf(Part part, string key);

    /// <summary>What a part says against itself, such as a post that has to be in deeper than it is long; null where nothing.</summary>
    SpecProblem? WrongOf(Part part);

    /// <summary>Reads one field into a part, the others as they are.</summary>
    bool TrySet(Part part, string key, string text, Evidence evidence, out Part changed, out SpecProblem? problem);
}
