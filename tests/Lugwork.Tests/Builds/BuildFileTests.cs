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
        Assert.Equal("HG-M | HG-L", ((Wheel)build[Slot.RearWheel]!).Body.ToString());
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
}
