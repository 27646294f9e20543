using System.Collections.Immutable;

namespace Lugwork.Tests.Builds;

/// <summary>The JSON build file: what is wrong is said all at once, with its path.</summary>
public sealed class BuildFileTests
{
    [Fact]
    public void All_problems_are_reported_at_once_each_with_its_path()
    {
        const string Text = """
            { "colour": "red", "parts": {
              "frame": { "rear": "12x999", "seatTube": "wide", "saddle": "1" },
              "rearWheel": { "hub": "12x142", "body": true },
              "basket": { } } }
            """;
        Assert.False(BuildFile.TryRead(Text, out _, out ImmutableArray<SpecProblem> problems));
        Assert.Equal(
            ["$.colour", "$.parts.frame.rear", "$.parts.frame.seatTube", "$.parts.frame.saddle", "$.parts.rearWheel.body", "$.parts.basket"],
            problems.Select(p => p.Where));
        Assert.All(problems, p => Assert.True(p.Reason.Length > 0 && p.Expected.Length > 0));
    }

    [Theory]
    [InlineData("{ \"parts\": { \"frame\": { \"rear\": \"12x142\", \"rear\": \"12x148\" } } }")]
    [InlineData("{ \"parts\": { \"frame\": {} }, \"parts\": { \"frame\": {} } }")]
    [InlineData("{ \"parts\": { } }")]
    [InlineData("{ \"parts\": { \"seatpost\": { \"diameter\": \"27.2\" } } }")]
    [InlineData("{ \"parts\": { \"frame\": { \"seatTube\": NaN } } }")]
    [InlineData("{ \"parts\": { \"frame\": { \"seatTube\": -27.2 } } }")]
    [InlineData("{ \"parts\": { \"frame\": { \"leastInsertion\": 0 } } }")]
    [InlineData("{ \"parts\": { \"frame\": { \"seatTube\": {} } } }")]
    [InlineData("{ \"parts\": { \"frame\": {}, \"rearWheel\": { \"hub\": \"12x142\", \"rear\": \"12x148\" } } }")]
    [InlineData("{ \"parts\": { \"frame\": { \"material\": \"\\ud800\" } } }")]
    [InlineData("{ \"parts\": { \"frame\": { \"material\": [\"\\ud800\"] } } }")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{")]
    public void Bad_files_are_refused(string text)
    {
        Assert.False(BuildFile.TryRead(text, out Build? build, out ImmutableArray<SpecProblem> problems));
        Assert.Null(build);
        Assert.NotEmpty(problems);
    }

    [Theory]
    [InlineData("27.2 x 350; insertion 350", true)]
    [InlineData("27.2 x 350; insertion 350.000001", false)]
    [InlineData("27.2 x 350; mark 350", true)]
    [InlineData("27.2 x 350; mark 350.000001", false)]
    [InlineData("27.2; insertion 500", true)]
    public void A_post_deeper_than_it_is_long_is_bad_input(string text, bool good) =>
        Assert.Equal(good, Seatpost.TryRead(text, out _, out _));

    [Fact]
    public void A_slot_that_says_null_is_empty()
    {
        Build build = BuildFile.Read("{ \"parts\": { \"frame\": {}, \"seatpost\": null } }");
        Assert.Null(build[Slot.Seatpost]);
        Assert.Contains(Slot.Seatpost, build.Check().Missing);
    }

    [Fact]
    public void A_file_that_is_too_deep_or_too_large_is_refused()
    {
        Assert.False(BuildFile.TryRead(string.Concat(Enumerable.Repeat("{\"parts\":", 40)), out _, out _));
        Assert.False(BuildFile.TryRead("{ \"name\": \"" + new string('a', BuildFile.MostBytes) + "\" }", out _, out ImmutableArray<SpecProblem> problems));
        Assert.Contains("too large", problems[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_lists_null_and_a_byte_order_mark_are_accepted()
    {
        Build build = BuildFile.Read("\uFEFF{ \"parts\": { \"frame\": { \"seatTube\": 27.2, \"rear\": null }, \"rearWheel\": { \"body\": [\"HG-M\", \"HG-L\"] } } }");
        Assert.Equal("27.2", build.Frame.SeatTubeBore.ToString());
        Assert.Equal(KnownState.Unknown, build.Frame.RearEnd.State);
        Assert.Equal("HG-M | HG-L", ((Wheel)build[Slot.RearWheel]!).FreehubBody.ToString());
    }

    [Fact]
    public void Short_text_reports_all_problems_with_their_positions()
    {
        SpecException refused = Assert.Throws<SpecException>(() => Frame.Read("rear 12x99; seat tube 27.2; seat tube 27.4; wings 2"));
        Assert.Equal(3, refused.Problems.Length);
        Assert.Equal("rear", refused.Problems[0].Where);
        Assert.Equal((38, "it is given twice"), (refused.Problems[1].Position, refused.Problems[1].Reason));
        Assert.Contains("'wings 2'", refused.Problems[2].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Evidence_keeps_the_words()
    {
        Known<Lugwork.Seating.SeatTubeBore> bore = Frame.Read("seat tube 27.18 ± 0.05").SeatTubeBore;
        Assert.Equal((EvidenceKind.Measured, "27.18 ± 0.05"), (bore.Evidence!.Kind, bore.Evidence.Words));
        Assert.Equal("27.2", bore.ToString());
    }

    public static TheoryData<string> Samples => [.. Directory.GetFiles(Path.Combine(Root(), "samples", "FrameUp", "builds"), "*.json").Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_sample_reads_and_writes_back_to_the_same_parts(string name)
    {
        Build build = BuildFile.Read(File.ReadAllText(Path.Combine(Root(), "samples", "FrameUp", "builds", name)));
        string text = BuildFile.Write(build);
        Build back = BuildFile.Read(text);
        Assert.Equal(text, BuildFile.Write(back));
        Assert.Equal(build.Name, back.Name);
        foreach (Slot slot in Slot.All)
        {
            Assert.Equal(build[slot]?.Name, back[slot]?.Name);
        }

        Assert.Equal(build.Check().Findings.Select(f => f.ToString()), back.Check().Findings.Select(f => f.ToString()));
    }

    [Theory]
    [InlineData("basket", "{ \"frame\": {}, \"basket\": {} }", "$.parts.basket")]
    [InlineData("a slot in capitals", "{ \"frame\": {}, \"RearWheel\": {} }", "$.parts.RearWheel")]
    [InlineData("unknown property", "{ \"frame\": { \"saddle\": \"1\" } }", "$.parts.frame.saddle")]
    [InlineData("a property in capitals", "{ \"frame\": { \"Rear\": \"12x142\" } }", "$.parts.frame.Rear")]
    [InlineData("a front end at the back", "{ \"frame\": { \"rear\": \"15x100\" } }", "$.parts.frame.rear")]
    [InlineData("true", "{ \"frame\": { \"rear\": true } }", "$.parts.frame.rear")]
    [InlineData("an object", "{ \"frame\": { \"rear\": { } } }", "$.parts.frame.rear")]
    [InlineData("an empty list", "{ \"frame\": { \"rear\": [] } }", "$.parts.frame.rear")]
    [InlineData("a list in a list", "{ \"frame\": { \"rear\": [[\"12x142\"]] } }", "$.parts.frame.rear")]
    [InlineData("a list with null", "{ \"frame\": { \"rear\": [null] } }", "$.parts.frame.rear")]
    [InlineData("negative", "{ \"frame\": { \"leastInsertion\": -1 } }", "$.parts.frame.leastInsertion")]
    [InlineData("zero", "{ \"frame\": { \"leastInsertion\": 0 } }", "$.parts.frame.leastInsertion")]
    [InlineData("far too large", "{ \"frame\": { \"leastInsertion\": 1e300 } }", "$.parts.frame.leastInsertion")]
    [InlineData("NaN as text", "{ \"frame\": { \"leastInsertion\": \"NaN\" } }", "$.parts.frame.leastInsertion")]
    [InlineData("infinity as text", "{ \"frame\": { \"leastInsertion\": \"Infinity\" } }", "$.parts.frame.leastInsertion")]
    [InlineData("no frame", "{ \"seatpost\": { } }", "$.parts.frame")]
    [InlineData("one thing under two names", "{ \"frame\": {}, \"rearWheel\": { \"hub\": \"12x142\", \"rear\": \"12x142\" } }", "$.parts.rearWheel.rear")]
    public void A_problem_has_the_path_of_its_place(string what, string parts, string path)
    {
        Assert.False(BuildFile.TryRead("{ \"parts\": " + parts + " }", out Build? build, out ImmutableArray<SpecProblem> problems), what);
        Assert.Null(build);
        SpecProblem only = Assert.Single(problems);
        Assert.Equal(path, only.Where);
        Assert.True(only.Reason.Length > 0 && only.Expected.Length > 0);
        Assert.Equal(problems, Assert.Throws<SpecException>(() => BuildFile.Read("{ \"parts\": " + parts + " }")).Problems);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("\"text\"")]
    [InlineData("true")]
    [InlineData("{ \"parts\": [] }")]
    [InlineData("{ \"parts\": 1 }")]
    [InlineData("{ \"parts\": { \"frame\": [] } }")]
    [InlineData("{ \"parts\": { \"frame\": \"12x142\" } }")]
    [InlineData("{ \"parts\": null }")]
    [InlineData("{ \"name\": 1, \"parts\": { \"frame\": {} } }")]
    [InlineData("{ \"parts\": { \"frame\": {} } } {}")]
    [InlineData("{ \"parts\": { \"frame\": { \"leastInsertion\": Infinity } } }")]
    public void Other_kinds_of_JSON_are_refused(string text)
    {
        Assert.False(BuildFile.TryRead(text, out Build? build, out ImmutableArray<SpecProblem> problems));
        Assert.Null(build);
        Assert.NotEmpty(problems);
        Assert.All(problems, p => Assert.StartsWith("$", p.Where, StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_frame_is_told_with_the_other_problems()
    {
        Assert.False(BuildFile.TryRead("{ \"parts\": { \"seatpost\": { \"diameter\": \"wide\" } } }", out _, out ImmutableArray<SpecProblem> problems));
        Assert.Equal(["$.parts.seatpost.diameter", "$.parts.frame"], problems.Select(p => p.Where));
    }

    [Fact]
    public void Every_state_of_knowledge_reads_back()
    {
        Random random = new(1);
        for (int i = 0; i < 500; i++)
        {
            decimal size = Math.Max(0.000001m, random.Next(1, 40_000_000) / 1_000_000m);
            decimal error = random.Next(0, 5_000_000) / 1_000_000m;
            Frame frame = new() { LeastInsertion = Known<Dimension>.Measured(size, error), MostInsertion = i % 2 == 0 ? Known<Dimension>.None : Known<Dimension>.Unknown };
            Frame back = BuildFile.Read(BuildFile.Write(Build.From(frame))).Frame;
            Assert.Equal(frame.LeastInsertion, back.LeastInsertion);
            Assert.Equal(frame.MostInsertion, back.MostInsertion);
        }
    }

    [Fact]
    public void Names_of_any_text_read_back()
    {
        foreach (string name in new[] { "unknown", "none", "a | b", "\"", "\u202E", "\uD83D\uDEB2", "x\ty\n", " " })
        {
            Build build = Build.From(Frame.Read("material steel") with { Name = name }, name);
            Build back = BuildFile.Read(BuildFile.Write(build));
            Assert.Equal((name, name), (back.Name, back.Frame.Name));
        }
    }

    [Theory]
    [InlineData("rear 12x142; seat tube 27.2; material steel")]
    [InlineData("rear: 12x142; seat tube=27,2; steel")]
    [InlineData("REAR AXLE 142 x 12 mm\nseatTube 27.20\nSTEEL")]
    [InlineData("steel, seat post 27.2, rear end 12x142")]
    public void Short_text_reads_the_same_in_many_spellings(string text)
    {
        Frame frame = Frame.Read(text);
        Assert.Equal(("R142-12", "27.2", "steel"), (frame.RearEnd.ToString(), frame.SeatTubeBore.ToString(), frame.Material.ToString()));
    }

    [Theory]
    [InlineData("rear 12x142; seat tube wide", "seatTube", 23)]
    [InlineData("seat tube wide; rear 12x142", "seatTube", 10)]
    [InlineData("rear 12x142; material steel;  material steel", "material", 39)]
    [InlineData("steel; wings 2", "frame", 7)]
    [InlineData("", "frame", 0)]
    [InlineData("; ;", "frame", 0)]
    public void A_problem_in_short_text_has_its_position(string text, string where, int position)
    {
        Assert.False(Frame.TryRead(text, out _, out ImmutableArray<SpecProblem> problems));
        SpecProblem only = Assert.Single(problems);
        Assert.Equal((where, position), (only.Where, only.Position));
    }

    [Fact]
    public void A_part_with_two_places_has_to_be_told_its_slot()
    {
        Build build = Build.From(Frame.Read("steel"));
        Assert.Throws<ArgumentException>(() => build.With(Wheel.Read("12x142")));
        Assert.Throws<ArgumentException>(() => build.With(Tyre.Read("37-622")));
        Assert.Throws<ArgumentException>(() => build.With(Rotor.Read("160")));
        Assert.Throws<ArgumentException>(() => build.With(Caliper.Read("post")));
        Assert.Throws<ArgumentException>(() => build.With(Wheel.Read("12x142"), Slot.Seatpost));
        Assert.Throws<ArgumentException>(() => build.With(Seatpost.Read("27.2"), Slot.Frame));
        Assert.Throws<ArgumentException>(() => build.Without(Slot.Frame));
        Assert.NotNull(build.With(Wheel.Read("12x142"), Slot.RearWheel)[Slot.RearWheel]);
        Assert.NotNull(build.With(Seatpost.Read("27.2"))[Slot.Seatpost]);
        Assert.Null(build[Slot.Seatpost]);
    }

    internal static string Root()
    {
        string? at = AppContext.BaseDirectory;
        while (at is not null && !File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at);
        }

        return at ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above the tests");
    }
}
