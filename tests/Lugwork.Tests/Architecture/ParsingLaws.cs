using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Lugwork.Tests.Architecture;

/// <summary>What holds for every type that text is read into.</summary>
public sealed class ParsingLaws
{
    public static TheoryData<string> All => [.. Values.Types.Select(t => t.FullName!)];

    public static TheoryData<string> WithKeys => [.. Values.InterfaceTypes.Select(t => t.FullName!)];

    public static TheoryData<string> Closed => [.. Values.ClosedTypes.Select(t => t.FullName!)];

    public static TheoryData<string> FromUtf8 => [.. Values.Types.Where(t => Values.Implements(t, typeof(IUtf8SpanParsable<>))).Select(t => t.FullName!)];

    [Fact]
    public void There_are_many_types()
    {
        Assert.True(Values.Types.Length >= 42, $"{Values.Types.Length} types");
        Assert.True(FromUtf8.Count >= 4, $"{FromUtf8.Count} types out of UTF-8");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void What_is_written_as_text_reads_back(string type) => Values.Check(typeof(ParsingLaws), nameof(Returns), type);

    private static void Returns<T>()
        where T : ISpanParsable<T>, ISpanFormattable
    {
        foreach (T value in Values.Of<T>())
        {
            foreach (string text in new[] { value.ToString()!, value.ToString("G", null), value.ToString("T", null) })
            {
                if (SharedNames.Contains($"{typeof(T).FullName} {text}"))
                {
                    Assert.False(T.TryParse(text, null, out _));
                    continue;
                }

                Assert.True(T.TryParse(text, null, out T? back), $"'{text}' is not read");
                Assert.Equal(value, back);
                Assert.Equal(value, T.Parse(text.AsSpan(), CultureInfo.GetCultureInfo("fa-IR")));
            }
        }
    }

    public static TheoryData<string> Sizes => [.. Values.InterfaceTypes.Where(t => t != typeof(Lugwork.Brakes.AdapterIncrement)).Select(t => t.FullName!)];

    /// <summary>Nothing is nought millimetres wide: a figure that is missing from a cell is no size. An adapter alone may move a caliper by nothing.</summary>
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Nought_is_no_size(string type) => Values.Check(typeof(ParsingLaws), nameof(RefusesNought), type);

    private static void RefusesNought<T>()
        where T : IInterfaceValue<T>
    {
        foreach (string text in new[] { "0", "0 mm", "0.0", "0,00 mm", "0 in" })
        {
            Assert.False(T.TryParse(text, null, out T? read), $"'{text}' is read as {read}");
        }
    }

    /// <summary>Trade names that the trade gives to two things: they are read as both (<see cref="Case_blanks_times_signs_and_decimal_marks_do_not_matter"/>), never as one.</summary>
    private static readonly string[] SharedNames = ["Lugwork.BottomBrackets.Shell BB30 73", "Lugwork.BottomBrackets.Shell PF30 73"];

    [Theory]
    [MemberData(nameof(WithKeys))]
    public void Case_blanks_times_signs_and_decimal_marks_do_not_matter(string type) => Values.Check(typeof(ParsingLaws), nameof(ReadsAlike), type);

    private static void ReadsAlike<T>()
        where T : IInterfaceValue<T>
    {
        List<string> wrong = [];
        foreach (T value in Values.Of<T>())
        {
            foreach (string text in Texts(value))
            {
                ImmutableArray<T> plain = T.Read(text).Values;
                Assert.Contains(value, plain);
                wrong.AddRange(Spellings.Alike(text).Where(s => !T.Read(s).Values.SequenceEqual(plain)).Select(s => $"'{text}' against '{s}': {T.Read(s).Reason}"));
            }

            if (Spellings.IsNumber(value.FitKey) && HasLength(value))
            {
                wrong.AddRange(Spellings.WithUnit(value.FitKey).Where(s => !T.Read(s).Values.SequenceEqual(T.Read(value.FitKey).Values)).Select(s => $"'{s}' is not read"));
                Assert.Contains(value, T.Read(value.ToString("M", null)).Values);
            }
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count}:\n{string.Join('\n', wrong.Take(40))}");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_throws_on_the_Try_path_and_a_refusal_is_the_same_on_every_path(string type) => Values.Check(typeof(ParsingLaws), nameof(Survives), type);

    private static void Survives<T>()
        where T : ISpanParsable<T>, ISpanFormattable
    {
        Random random = new(3);
        T[] values = Values.Of<T>();
        IEnumerable<string> broken = Enumerable.Range(0, 400).Select(i => Spellings.Broken(values[random.Next(values.Length)].ToString(i % 2 == 0 ? "G" : "T", null), random));
        int refused = 0;
        foreach (string text in Spellings.Hostile.Concat(broken))
        {
            bool good = TryText(text, out T? value);
            Assert.Equal(good, T.TryParse(text.AsSpan(), CultureInfo.GetCultureInfo("tr-TR"), out T? again));
            Assert.Equal(value, again);
            if (good)
            {
                Assert.Equal(value, FromText<T>(text));
                Assert.Equal(value, FromText<T>(value!.ToString()!));
            }
            else
            {
                refused++;
                Assert.Equal(default, value);
                Assert.InRange(Assert.Throws<FormatException>(() => FromText<T>(text)).Message.Length, 1, 2_000);
                Assert.Throws<FormatException>(() => T.Parse(text.AsSpan(), null));
            }
        }

        Assert.True(refused > 100, $"only {refused} were refused");
        Assert.False(TryText<T>(null, out _));
        Assert.Throws<ArgumentNullException>(() => FromText<T>(null!));
    }

    [Theory]
    [MemberData(nameof(WithKeys))]
    public void No_two_values_share_a_key_or_a_code(string type) => Values.Check(typeof(ParsingLaws), nameof(OwnKeys), type);

    private static void OwnKeys<T>()
        where T : IInterfaceValue<T>
    {
        T[] values = Values.Of<T>();
        Assert.Equal(values.Length, values.Select(v => v.FitKey).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Equal(values.Length, values.Select(v => v.FitCode).Distinct().Count());
        Assert.All(values, v => Assert.Equal(v, T.OfFitCode(v.FitCode)));
        Assert.All(values, v => Assert.Equal(v, T.Parse(v.FitKey, null)));
    }

    [Theory]
    [MemberData(nameof(Closed))]
    public void A_key_or_a_name_of_one_value_is_never_read_as_another_alone(string type) => Values.Check(typeof(ParsingLaws), nameof(OwnNames), type);

    private static void OwnNames<T>()
        where T : Standard<T>, IInterfaceValue<T>
    {
        foreach (T value in T.All)
        {
            Assert.All(Texts(value), text => Assert.Contains(value, T.Read(text).Values));
            Assert.Equal(value, Assert.Single(T.Read(value.FitKey).Values));
        }
    }

    [Theory]
    [MemberData(nameof(FromUtf8))]
    public void Bytes_are_read_as_characters_are(string type) => Values.Check(typeof(ParsingLaws), nameof(BytesAlike), type);

    private static void BytesAlike<T>()
        where T : ISpanParsable<T>, IUtf8SpanParsable<T>, ISpanFormattable
    {
        Random random = new(5);
        T[] values = Values.Of<T>();
        int good = 0;
        int bad = 0;
        string[] texts = [.. Enumerable.Range(0, 300).Select(_ => values[random.Next(values.Length)].ToString()!)];
        foreach (string text in texts.Concat(texts.SelectMany(Spellings.Alike)).Concat(texts.Select(t => Spellings.Broken(t, random))).Concat(Spellings.Hostile))
        {
            byte[] utf8 = Encoding.UTF8.GetBytes(text);
            bool here = T.TryParse(text, null, out T? value);
            Assert.Equal(here, T.TryParse(utf8, null, out T? other));
            Assert.Equal(value, other);
            if (here)
            {
                good++;
                Assert.Equal(value, T.Parse(utf8, null));
            }
            else
            {
                bad++;
                Assert.Throws<FormatException>(() => T.Parse(utf8, null));
            }
        }

        Assert.True(good > 1_000 && bad > 100, $"{good} read, {bad} refused");

        // A broken sequence is no text at all.
        Assert.False(T.TryParse([0x31, 0xFF, 0x32], null, out _));
        Assert.False(T.TryParse([0xC3], null, out _));
    }

    // A type's span overload hides the one for a string, where both are asked for.
    private static T FromText<T>(string text)
        where T : IParsable<T> => T.Parse(text, null);

    private static bool TryText<T>(string? text, out T? value)
        where T : IParsable<T> => T.TryParse(text, null, out value);

    private static string[] Texts<T>(T value)
        where T : IInterfaceValue<T> =>
        [value.FitKey, value.ToString("T", null), .. value.GetType().GetProperty("Names")?.GetValue(value) is ImmutableArray<string> names ? names : []];

    private static bool HasLength<T>(T value)
        where T : IInterfaceValue<T>
    {
        try
        {
            return value.ToString("M", null).Length > 0;
        }
        catch (FormatException)
        {
            return false;
        }
    }
}
