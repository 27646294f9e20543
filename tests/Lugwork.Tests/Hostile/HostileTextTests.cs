using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Tyres;

namespace Lugwork.Tests.Hostile;

/// <summary>Text that nobody means: it is refused with a reason and never throws on the Try path.</summary>
public sealed class HostileTextTests
{
    private static readonly string[] Texts =
    [
        "", " ", "\0", "\uD800", "\uDC00\uD800", new('9', 10_000), "1" + new string('0', 9_999) + "x142", "\u202E142x12\u202C", "\u2003\u3000",
        "NaN", "-27.2", "1e9", "27.2.2", "27,2,2", "x", "xxxx", "12x", "x142", "12x142x3", "\uFEFF", "\uD83D\uDEB2", new(';', 10_000), new('|', 500),
        "± 1", "27.2 ±", "27.2 ± -1", "0 ± 0", "999999999 ± 999999999", "27.2 +/- 27.2", new('a', 100_000), "{0}", "[bridge]", "none|none", "unknown | 27.2",
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

    private static readonly string[] Meant = ["12x142", "27.2", "27,2", "27.18 ± 0.05", "STEEL", "titanium", "IS", "37-622", "160", "six-bolt", "post", "9-speed HG", "27.2 x 350", "80.5 mm", "none", "ZS44/28.6|ZS56/40", "tapered", "BSA 68", "M12x1.5", "9/16", "1-1/8", "\u0661\u0662"];

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
