using Lugwork.Workshop;
using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;
using Lugwork.Catalogues;
using Lugwork.Reading;

namespace Lugwork.Tests.Hostile;

/// <summary>Inputs as large and as deep as they may be, made of what costs most: they end soon, and what is told of them stays in proportion.</summary>
public sealed class LargeInputTests
{
    /// <summary>A hang: on a machine with five times the work that it has cores for, the slowest of these takes a third of it.</summary>
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(60);

    private static readonly WorkPlan Plan = Build.From(Frame.Read("seat tube 27.2")).With(Seatpost.Read("27.2 x 350")).WorkPlan();

    /// <summary>What a build file can be full of: the beginning, what comes again and again with a number, the end.</summary>
    public static TheoryData<string, string, string> Full => new()
    {
        { "{\"parts\":{\"frame\":{\"a\":1", ",\"@\":1", "}}}" },
        { "{\"parts\":{\"frame\":{}", ",\"@\":{}", "}}" },
        { "{\"parts\":{\"frame\":{}}", ",\"@\":1", "}" },
        { "{\"parts\":{\"frame\":{\"rear\":[\"x\"", ",\"@\"", "]}}}" },
        { "{\"parts\":{\"frame\":{}},\"smallParts\":[\"x\"", ",\"@\"", "]}" },
        { "{\"parts\":{\"frame\":{}},\"waivers\":[{}", ",{\"joint\":\"seatpost-in-seat-tube\",\"reason\":\"@\"}", "]}" },
        { "{\"parts\":{\"frame\":{\"seatTube\":27.2}},\"asBuilt\":[null", ",{\"slot\":\"frame\",\"field\":\"seatTube\",\"kind\":\"measured\",\"note\":\"@\"}", "]}" },
    };

    [Theory]
    [MemberData(nameof(Full))]
    public void A_build_file_that_is_full_of_one_thing_is_refused_soon_and_in_proportion(string begin, string again, string end)
    {
        string file = Filled(begin, again, end, BuildFile.MostBytes);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.False(Timed(() => BuildFile.TryRead(file, out _, out ImmutableArray<SpecProblem> problems) || problems.IsEmpty));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 300L * BuildFile.MostBytes);
        Assert.InRange(Assert.Throws<SpecException>(() => BuildFile.Read(file)).Message.Length, 1, 1_000_000);
    }

    [Theory]
    [InlineData("a;")]
    [InlineData("rear 12x142;")]
    [InlineData("27.2, ")]
    [InlineData("rear \u00B1|")]
    [InlineData("x|")]
    public void The_longest_text_of_a_part_is_read_soon(string piece)
    {
        string text = string.Concat(Enumerable.Repeat(piece, 20_000 / piece.Length));
        foreach (Slot slot in new[] { Slot.Frame, Slot.Fork, Slot.RearWheel, Slot.Crankset })
        {
            Assert.False(Timed(() => PartText.TryRead(slot, text, out _, out _)), slot.Key);
        }
    }

    [Theory]
    [InlineData("{\"steps\":[{\"step\":\"inspect-parts\"}", ",{\"step\":\"own @\",\"own\":true,\"done\":true}", "]}", true)]
    [InlineData("{\"steps\":[{\"step\":\"inspect-parts\"}", ",{\"step\":\"own @\"}", "]}", false)]
    [InlineData("{\"steps\":[{\"step\":\"own\",\"own\":true,\"measured\":{\"z\":{\"value\":\"1\"}", ",\"@\":{\"value\":\"1\",\"unit\":\"mm\"}", "}}]}", true)]
    [InlineData("{\"steps\":[{\"step\":\"own\",\"own\":true,\"torqueNewtonMetres\":{\"z\":1", ",\"@\":1", "}}]}", true)]
    public void A_record_that_is_full_of_one_thing_is_read_soon_and_whole(string begin, string again, string end, bool good)
    {
        string file = Filled(begin, again, end, BuildFile.MostBytes);
        WorkRecord? kept = null;
        Assert.Equal(good, Timed(() => WorkRecordFile.TryRead(file, Plan, out kept, out _)));
        if (good)
        {
            Assert.True(kept!.Lapsed.Length + kept.Lapsed.Sum(l => l.Measurements.Length + l.Torques.Length) > 10_000);
            Assert.True(Timed(() => WorkRecordFile.Write(kept).Length > 0 && !kept.Questions.IsDefault && kept.AsBuilt() is not null));
        }
    }

    [Fact]
    public void A_record_of_thirty_three_levels_is_refused()
    {
        string deep = string.Concat(Enumerable.Repeat("[", 100_000));
        Assert.False(WorkRecordFile.TryRead("{\"steps\":" + deep, Plan, out _, out ImmutableArray<SpecProblem> problems));
        Assert.Single(problems);
        Assert.False(BuildFile.TryRead("{\"parts\":" + deep, out _, out _));
    }

    [Theory]
    [InlineData("Rear axle: 12 x 142 mm\n")]
    [InlineData("Seatpost 27.2 mm\nSeatpost 30.9 mm\n")]
    [InlineData("a\n")]
    [InlineData("<a Rear axle 12x142 ")]
    [InlineData("<td>12x142</td>\n")]
    [InlineData("\n")]
    [InlineData("Fork 15x110, frame 12x148, ")]
    [InlineData("| - * \t")]
    public void The_longest_sheet_is_read_soon(string again)
    {
        string text = string.Concat(Enumerable.Repeat(again, SpecSheet.MostCharacters / again.Length));
        SpecSheet sheet = Timed(() => SpecSheet.ReadComplete(text));
        Assert.True(sheet.ToString().Length > 0 || !again.Any(char.IsLetterOrDigit));
    }

    /// <summary>One tag makes the text a page; a sign that begins no tag is text still, and so is what follows.</summary>
    [Fact]
    public void What_stands_behind_a_tag_without_an_end_is_not_dropped()
    {
        SpecSheet sheet = SpecSheet.ReadFrame("<li>Rear axle 12x142</li>\nmaterial <steel\nSeatpost: 27.2 mm\n");
        Assert.Contains(sheet.Values, v => v.Field == "rear");
        Assert.Contains(sheet.Values, v => v.Field == "seatTube" && v.Key == "27.2");
    }

    [Fact]
    public void The_longest_values_are_refused_soon_by_every_type()
    {
        foreach (string text in new[] { new string('9', 1_000_000), new string(' ', 1_000_000), new string('x', 1_000_000), string.Concat(Enumerable.Repeat("12x", 300_000)), string.Concat(Enumerable.Repeat("1/", 500_000)), string.Concat(Enumerable.Repeat("\u202E", 1_000_000)) })
        {
            foreach (Type type in Architecture.Values.Types)
            {
                Assert.False(Timed(() => (bool)typeof(LargeInputTests).GetMethod(nameof(Takes), System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Static)!.MakeGenericMethod(type).Invoke(null, [text])!), type.Name);
            }
        }
    }

    [Fact]
    public void A_catalogue_says_of_every_bad_line_that_it_was_skipped_and_keeps_the_first_reasons()
    {
        PartCatalogue catalogue = new();
        CatalogueReport report = Timed(() => catalogue.LoadLines(Enumerable.Range(0, 20_000).Select(i => new CatalogueLine(i, i % 2 == 0 ? "frame" : "basket", new string('a', 100)))));
        Assert.Equal((0, 20_000L, CatalogueReport.MostProblems), (report.Added, report.Skipped, report.Problems.Length));
    }

    private static bool Takes<T>(string text)
        where T : ISpanParsable<T> => T.TryParse(text.AsSpan(), null, out _);

    private static string Filled(string begin, string again, string end, int bytes)
    {
        StringBuilder file = new(begin);
        for (int i = 0; ; i++)
        {
            string next = again.Replace("@", i.ToString("x", System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
            if (file.Length + next.Length + end.Length > bytes)
            {
                return file.Append(end).ToString();
            }

            file.Append(next);
        }
    }

    private static T Timed<T>(Func<T> act)
    {
        Stopwatch clock = Stopwatch.StartNew();
        T come = act();
        Assert.True(clock.Elapsed < Soon, $"it took {clock.Elapsed}");
        return come;
    }
}
