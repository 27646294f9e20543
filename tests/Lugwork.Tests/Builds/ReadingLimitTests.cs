using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Lugwork.Tests.Builds;

/// <summary>The limits of reading a build file, at their edges.</summary>
public sealed class ReadingLimitTests
{
    private const string Head = "{ \"parts\": { \"frame\": {} }, \"name\": \"";
    private const string Tail = "\" }";

    [Theory]
    [InlineData("a")]
    [InlineData("\u00E9")]
    [InlineData("\u2003")]
    [InlineData("\uD83D\uDEB2")]
    public void A_file_of_1_000_000_bytes_is_read_and_one_byte_more_is_not(string character)
    {
        int room = BuildFile.MostBytes - Head.Length - Tail.Length;
        int width = Encoding.UTF8.GetByteCount(character);
        string name = string.Concat(Enumerable.Repeat(character, room / width)) + new string('a', room % width);
        foreach (string mark in new[] { "", "\uFEFF" })
        {
            string text = mark + Head + name + Tail;
            Assert.Equal(1_000_000, Encoding.UTF8.GetByteCount(text) - Encoding.UTF8.GetByteCount(mark));
            Assert.Equal(name, BuildFile.Read(text).Name);
            Assert.False(BuildFile.TryRead(mark + Head + "a" + name + Tail, out _, out ImmutableArray<SpecProblem> problems));
            SpecProblem only = Assert.Single(problems);
            Assert.Equal(("$", "the file is too large"), (only.Where, only.Reason));
            Assert.False(BuildFile.TryRead(text + " ", out _, out _));
        }
    }

    /// <summary>Where lists can be nested in a file, with the depth at which they begin.</summary>
    public static TheoryData<string, string, int> Places => new()
    {
        { "an unknown property", "{ \"parts\": { \"frame\": {} }, \"more\": @ }", 1 },
        { "a field", "{ \"parts\": { \"frame\": { \"rear\": @ } } }", 3 },
        { "an unknown field", "{ \"parts\": { \"frame\": { \"saddle\": @ } } }", 3 },
        { "a name that is skipped where null", "{ \"parts\": { \"frame\": { \"name\": @ } } }", 3 },
        { "a field of an unknown slot", "{ \"parts\": { \"frame\": {}, \"basket\": { \"size\": @ } } }", 3 },
        { "after an empty slot", "{ \"parts\": { \"frame\": {}, \"fork\": null, \"basket\": { \"size\": @ } } }", 3 },
        { "inside an unknown object", "{ \"parts\": { \"frame\": {} }, \"more\": { \"a\": 1, \"b\": @ } }", 2 },
    };

    [Theory]
    [MemberData(nameof(Places))]
    public void Thirty_two_deep_is_walked_and_thirty_three_is_not(string where, string file, int begins)
    {
        Assert.Equal(32, BuildFile.MostDepth);
        foreach ((string open, string close) in new[] { ("[", "]"), ("{\"a\":", "}") })
        {
            for (int depth = 31; depth <= 34; depth++)
            {
                int levels = depth - begins;
                string nested = string.Concat(Enumerable.Repeat(open, levels)) + (open == "[" ? "" : "1") + string.Concat(Enumerable.Repeat(close, levels));
                Assert.False(BuildFile.TryRead(file.Replace("@", nested, StringComparison.Ordinal), out _, out ImmutableArray<SpecProblem> problems));
                Assert.Equal(depth > 32, problems.Any(p => p.Reason.Contains("depth of 32", StringComparison.Ordinal)));
                Assert.True(problems.All(p => p.Where.StartsWith("$.", StringComparison.Ordinal)), where);
            }
        }
    }

    [Theory]
    [InlineData("top", """{ "name": "a", "name": "a", "parts": { "frame": {} } }""", "$.name")]
    [InlineData("address", """{ "$schema": "a", "$schema": null, "parts": { "frame": {} } }""", "$.$schema")]
    [InlineData("parts", """{ "parts": { "frame": {} }, "parts": { "frame": {} } }""", "$.parts")]
    [InlineData("an unknown property", """{ "more": 1, "more": 1, "parts": { "frame": {} } }""", "$.more")]
    [InlineData("inside an unknown property", """{ "more": { "a": 1, "a": 1 }, "parts": { "frame": {} } }""", "$.more")]
    [InlineData("slot", """{ "parts": { "frame": {}, "frame": {} } }""", "$.parts.frame")]
    [InlineData("an empty slot", """{ "parts": { "frame": {}, "fork": null, "fork": {} } }""", "$.parts.fork")]
    [InlineData("slot, spelt otherwise", """{ "parts": { "frame": {}, "fr\u0061me": {} } }""", "$.parts.frame")]
    [InlineData("field", """{ "parts": { "frame": { "rear": "12x142", "rear": "12x142" } } }""", "$.parts.frame.rear")]
    [InlineData("field, spelt otherwise", """{ "parts": { "frame": { "rear": "12x142", "re\u0061r": "12x142" } } }""", "$.parts.frame.rear")]
    [InlineData("a name that is skipped", """{ "parts": { "frame": { "name": null, "name": "a" } } }""", "$.parts.frame.name")]
    [InlineData("inside a field", """{ "parts": { "frame": { "rear": { "a": 1, "a": 1 } } } }""", "$.parts.frame.rear")]
    public void A_repeated_property_is_told_with_its_path(string where, string text, string path)
    {
        Assert.False(BuildFile.TryRead(text, out Build? build, out ImmutableArray<SpecProblem> problems), where);
        Assert.Null(build);
        SpecProblem only = Assert.Single(problems);
        Assert.Equal((path, "each property once"), (only.Where, only.Expected));
        Assert.Contains("stands twice", only.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void No_field_takes_what_is_no_number()
    {
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields)
        {
            foreach (string literal in new[] { "NaN", "Infinity", "-Infinity" })
            {
                Refused(SchemaBench.With(slot, field.Key, literal));
                Refused(SchemaBench.With(slot, field.Key, $"[{literal}]"));
            }

            if (field.Values().Shape != FieldValues.AnyText)
            {
                foreach (string text in new[] { "NaN", "Infinity", "-Infinity", "+Infinity", "\u221E", "-\u221E", "1e300", "1e999", "27.2 ± NaN", "NaN ± 1", "27.2 ± Infinity", "NaN x 350", "27.2 x NaN", "27.2 x Infinity" })
                {
                    Refused(SchemaBench.With(slot, field.Key, JsonSerializer.Serialize(text)));
                }
            }
        }
    }

    [Fact]
    public void No_length_is_zero_or_below()
    {
        string[] bad = ["0", "0.0", "-0", "-1", "-27.2", "-0.000001", "-100000", "-1e2", "\"0 mm\"", "\"-80 mm\"", "\"\u221280\"", "\"\u201380\"", "\"80 | 0\"", "\"80 | -80\"", "\"0 ± 1\"", "\"-80 ± 1\"", "\"80 ± -1\"", "[80, 0]", "[-80]"];
        int lengths = 0;
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields.Where(f => f.Field.Values().Shape == FieldValues.AnyLength))
        {
            lengths++;
            if (ReadingBounds.IsBounded(slot, field.Key))
            {
                Refused(SchemaBench.With(slot, field.Key, "100000"));
                continue;
            }

            Assert.True(SchemaBench.Reads(SchemaBench.With(slot, field.Key, "0.000001")));
            Assert.True(SchemaBench.Reads(SchemaBench.With(slot, field.Key, "100000")));
            Refused(SchemaBench.With(slot, field.Key, "100000.000001"));
            foreach (string value in bad.Concat(bad.Where(b => b[0] is not ('"' or '[')).Select(b => $"\"{b}\"")))
            {
                Refused(SchemaBench.With(slot, field.Key, value));
            }
        }

        Assert.True(lengths >= 7, $"only {lengths} lengths were tried");
    }

    [Fact]
    public void A_size_that_is_offered_is_not_read_from_its_negative()
    {
        int tried = 0;
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields)
        {
            FieldValues values = field.Values();
            foreach (string key in values.Keys.Where(k => char.IsAsciiDigit(k[0]) && !values.Keys.Contains("-" + k)))
            {
                tried++;
                Refused(SchemaBench.With(slot, field.Key, $"\"-{key}\""));
                Refused(SchemaBench.With(slot, field.Key, $"\" \u2212{key} mm\""));
                if (decimal.TryParse(key, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _))
                {
                    Refused(SchemaBench.With(slot, field.Key, $"-{key}"));
                    Refused(SchemaBench.With(slot, field.Key, $"[{key}, -{key}]"));
                }
            }
        }

        Assert.True(tried > 100, $"only {tried} sizes were tried");
    }

    [Theory]
    [InlineData("frame", "rear", "-142")]
    [InlineData("frame", "rear", "0")]
    [InlineData("frame", "rear", "\"-12x142\"")]
    [InlineData("frame", "rear", "\"12x-142\"")]
    [InlineData("frame", "rear", "\"12 x -142 mm\"")]
    [InlineData("frame", "rear", "\"0x142\"")]
    [InlineData("frame", "rear", "\"R142-12 | -142\"")]
    [InlineData("fork", "front", "-100")]
    [InlineData("rearWheel", "hub", "-135")]
    [InlineData("rearWheel", "rear", "[-142]")]
    [InlineData("rearWheel", "beadSeat", "-622")]
    [InlineData("rearWheel", "beadSeat", "0")]
    [InlineData("rearTyre", "size", "\"-37-622\"")]
    [InlineData("rearTyre", "size", "\"37--622\"")]
    [InlineData("rearTyre", "size", "\"0-622\"")]
    [InlineData("rearTyre", "size", "\"37-0\"")]
    [InlineData("cassette", "pattern", "\"-9-speed HG\"")]
    [InlineData("rearRotor", "size", "-160")]
    [InlineData("rearRotor", "size", "0")]
    [InlineData("seatpost", "size", "\"-27.2 x 350\"")]
    [InlineData("seatpost", "size", "\"27.2 x -350\"")]
    [InlineData("seatpost", "size", "\"27.2 x 0\"")]
    [InlineData("seatpost", "size", "\"0 x 350\"")]
    public void Figures_inside_a_standard_are_above_zero_too(string slot, string field, string value) =>
        Refused(SchemaBench.With(Slot.Find(slot)!, field, value));

    [Theory]
    [InlineData("12x142")]
    [InlineData("12-142")]
    [InlineData("R142-12")]
    [InlineData("QR-135")]
    [InlineData("- 12x142")]
    public void A_dash_that_joins_or_leads_a_line_is_no_sign(string rear) =>
        Assert.True(SchemaBench.Reads(SchemaBench.With(Slot.Frame, "rear", $"\"{rear}\"")), rear);

    [Fact]
    public void A_byte_order_mark_is_taken_from_text_and_from_a_file()
    {
        const string Text = """{ "parts": { "frame": { "seatTube": 27.2 } } }""";
        Assert.True(BuildFile.TryRead("\uFEFF" + Text, out Build? build, out ImmutableArray<SpecProblem> problems));
        Assert.Empty(problems);
        Assert.Equal("27.2", build!.Frame.SeatTubeBore.ToString());

        string raw = Encoding.UTF8.GetString([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Text)]);
        Assert.Equal('\uFEFF', raw[0]);
        Assert.Equal(BuildFile.Write(build), BuildFile.Write(BuildFile.Read(raw)));
        Assert.False(BuildFile.TryRead("\uFEFF", out _, out _));
        Assert.False(BuildFile.TryRead(Text.Replace("27.2", "\uFEFF27.2", StringComparison.Ordinal), out _, out _));
    }

    private static void Refused(string text)
    {
        Assert.False(BuildFile.TryRead(text, out Build? build, out ImmutableArray<SpecProblem> problems), text);
        Assert.Null(build);
        Assert.NotEmpty(problems);
    }
}
