using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork.Tests.Hostile;

/// <summary>Text that nobody means: it is refused with a reason and never throws on the Try path.</summary>
public sealed class HostileTextTests
{
    internal static readonly string[] Texts =
    [
        "", " ", "\0", "\uD800", "\uDC00\uD800", new('9', 10_000), "1" + new string('0', 9_999) + "x142", "\u202E142x12\u202C", "\u2003\u3000",
        "NaN", "-27.2", "1e9", "27.2.2", "27,2,2", "x", "xxxx", "12x", "x142", "12x142x3", "\uFEFF", "\uD83D\uDEB2", new(';', 10_000), new('|', 500),
        "± 1", "27.2 ±", "27.2 ± -1", "0 ± 0", "999999999 ± 999999999", "27.2 +/- 27.2", new('a', 100_000), "{0}", "[bridge]", "none|none", "not covered|not covered", "frame-specific | 27.2", "unknown | 27.2",
    ];

    public static TheoryData<string> Cultures => ["", "tr-TR", "de-DE", "ar-SA", "fa-IR"];

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Values_refuse_it_with_a_reason(string culture) => In(culture, () =>
    {
        foreach (Type type in Parsable)
        {
            typeof(HostileTextTests).GetMethod(nameof(Try), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(type).Invoke(null, null);
        }

        TryBulk(AxleSize.Read, AxleSize.Read);
        TryBulk(HeadsetHalf.Read, HeadsetHalf.Read);
        TryBulk(HeadsetPair.Read, HeadsetPair.Read);
        TryBulk(TyreSize.Read, TyreSize.Read);
    });

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Parts_refuse_it_with_problems(string culture) => In(culture, () =>
    {
        foreach (string text in Texts)
        {
            foreach (string form in new[] { text, "rear " + text, "size " + text, "insertion " + text })
            {
                Part(form, (string t, out Frame p, out ImmutableArray<SpecProblem> all) => Frame.TryRead(t, out p, out all));
                Part(form, (string t, out Wheel p, out ImmutableArray<SpecProblem> all) => Wheel.TryRead(t, out p, out all));
                Part(form, (string t, out Tyre p, out ImmutableArray<SpecProblem> all) => Tyre.TryRead(t, out p, out all));
                Part(form, (string t, out Seatpost p, out ImmutableArray<SpecProblem> all) => Seatpost.TryRead(t, out p, out all));
            }
        }
    });

    [Fact]
    public void Build_files_refuse_it_with_problems()
    {
        foreach (string text in Texts)
        {
            Assert.False(BuildFile.TryRead(text, out Build? none, out ImmutableArray<SpecProblem> problems));
            Assert.Null(none);
            Assert.NotEmpty(problems);
        }
    }

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Every_part_and_the_build_file_read_the_same_in_every_culture(string culture)
    {
        string plain = "";
        string here = "";
        In("", () => plain = Everything());
        In(culture, () => here = Everything());
        Assert.Equal(plain, here);
    }

    [Fact]
    public void There_are_many_parsable_types() => Assert.True(Parsable.Length >= 36, $"{Parsable.Length} found");

    private static readonly Type[] Parsable =
        [.. typeof(Build).Assembly.GetExportedTypes().Where(t => !t.IsAbstract && !t.IsGenericType && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IInterfaceValue<>)))];

    [Fact]
    public void Null_is_no_text()
    {
        Assert.False(Dimension.TryParse(null, null, out _));
        Assert.False(HubStandard.TryParse(null, null, out _));
        Assert.Throws<ArgumentNullException>(() => Dimension.Parse(null!, null));
        Assert.Throws<ArgumentNullException>(() => Frame.Read(null!));
        Assert.Throws<ArgumentNullException>(() => BuildFile.Read(null!));
    }

    /// <summary>What every hostile text reads as, in every kind of part and field.</summary>
    private static string Everything()
    {
        System.Text.StringBuilder told = new();
        foreach (string text in Texts.Concat(Meant))
        {
            foreach (Slot slot in Slot.All)
            {
                IPartForm form = PartForms.Of(slot);
                foreach (string word in form.Fields.Select(f => f.Key + " ").Prepend(""))
                {
                    Add(form.TryReadAny(word + text, out Part part, out ImmutableArray<SpecProblem> problems), part, form, problems);
                }
            }

            string file = "{ \"parts\": { \"frame\": { \"rear\": " + System.Text.Json.JsonSerializer.Serialize(text) + ", \"seatTube\": " + System.Text.Json.JsonSerializer.Serialize(text) + " } } }";
            bool good = BuildFile.TryRead(file, out Build? build, out ImmutableArray<SpecProblem> all);
            Assert.Equal(good, all.IsEmpty);
            Assert.Equal(good, build is not null);
            told.AppendJoin('\n', all).AppendLine(build is null ? "" : BuildFile.Write(build));
        }

        return told.ToString();

        void Add(bool good, Part part, IPartForm form, ImmutableArray<SpecProblem> problems)
        {
            Assert.Equal(good, problems.IsEmpty);
            Assert.All(problems, p => Assert.True(p.Position >= 0 && p.Reason.Length > 0));
            told.AppendJoin('\n', problems).AppendJoin(';', form.Write(part)).AppendLine();
        }
    }

    private static readonly string[] Meant = ["12x142", "27.2", "27,2", "27.18 ± 0.05", "STEEL", "titanium", "IS", "37-622", "160", "six-bolt", "post", "9-speed HG", "27.2 x 350", "80.5 mm", "none", "not covered", "FRAME-SPECIFIC", "ZS44/28.6|ZS56/40", "tapered", "BSA 68", "M12x1.5", "9/16", "1-1/8", "\u0661\u0662"];

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Good_text_is_the_same_in_every_culture(string culture) => In(culture, () =>
    {
        Frame frame = Frame.Read("rear 12x142; seat tube 27,2; material TITANIUM; leastInsertion 80.5 mm; rearBrake is");
        Assert.Equal("27.2", frame.SeatTubeBore.ToString());
        Assert.Equal("80.5", frame.LeastInsertion.ToString());
        Assert.Equal("titanium", frame.Material.ToString());
        Assert.Equal("IS-rear", frame.RearBrakeMount.ToString());
        Assert.Equal("27.18 ± 0.05", Known<Dimension>.Measured(27.18m, 0.05m).ToString());
    });

    private delegate bool Reader<TPart>(string text, out TPart part, out ImmutableArray<SpecProblem> problems);

    private static void Part<TPart>(string text, Reader<TPart> read)
    {
        bool good = read(text, out _, out ImmutableArray<SpecProblem> problems);
        Assert.Equal(good, problems.IsEmpty);
    }

    private static void Try<T>()
        where T : IInterfaceValue<T>
    {
        foreach (string text in Texts)
        {
            bool good = T.TryParse(text, CultureInfo.CurrentCulture, out T? value);
            if (good)
            {
                Assert.True(value!.FitCode > 0);
                continue;
            }

            Assert.NotEmpty(T.Read(text).Reason);
            FormatException refused = Assert.Throws<FormatException>(() => T.Parse(text, CultureInfo.CurrentCulture));
            Assert.True(refused.Message.Length < 2_000);
        }
    }

    private delegate TextReading<T> Reads<T, TChar>(ReadOnlySpan<TChar> text);

    private static void TryBulk<T>(Reads<T, char> read, Reads<T, byte> readUtf8)
        where T : struct, ISpanParsable<T>, IUtf8SpanParsable<T>, IEquatable<T>
    {
        foreach (string text in Texts.Concat(Odd))
        {
            byte[] utf8 = System.Text.Encoding.UTF8.GetBytes(text);
            Assert.False(T.TryParse(text, CultureInfo.CurrentCulture, out T value));
            Assert.False(T.TryParse(utf8, CultureInfo.CurrentCulture, out T fromUtf8));
            Assert.True(value.Equals(default) && fromUtf8.Equals(default));
            TextReading<T> reading = read(text);
            TextReading<T> other = readUtf8(utf8);
            Assert.NotEmpty(reading.Reason);
            Assert.Equal(reading.Reason, other.Reason);
            Assert.InRange(reading.Position, 0, text.Length);
            Assert.InRange(other.Position, 0, utf8.Length);
            Assert.True(Assert.Throws<FormatException>(() => T.Parse(text, CultureInfo.CurrentCulture)).Message.Length < 500);
            Assert.True(Assert.Throws<FormatException>(() => T.Parse(utf8, CultureInfo.CurrentCulture)).Message.Length < 500);
        }
    }

    /// <summary>Nearly what the bulk readers take.</summary>
    private static readonly string[] Odd =
    [
        "12\u00D7\u00D7142", "\u0661\u0662x142", "\uFF11\uFF12x142", "12\u0000x142", "12x142\u0000", "1234567890x142", "0000000012x142", "12.0000000x142", "12x142\uD83D\uDEB2", "1e1x142",
        "EC34/", "EC34//EC34", "EC34|", "EC34|EC", "|EC34|EC34", "EC34||EC34", "EC34EC34", "EC34 IS", "\u0415C34|EC34", "E\u0421 34|EC34", "IS|IS", "I|I",
        "37\u2013\u2013622", "37-623", "17-622", "133-622", "700x28C", "700x26C", "37-622C", "37-622mmC", "37.5-622", "37-622-1",
    ];

    private static void In(string culture, Action act)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            act();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
