using System.Text.RegularExpressions;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Fits;

/// <summary>A missing figure is said in words, wherever it stands in a sentence.</summary>
public sealed class WordingTests
{
    [Theory]
    [InlineData("The bed is {0} mm wide.", "none", KnownState.None, "The bed is without a stated width.")]
    [InlineData("The bed is {0} mm wide.", "unknown", KnownState.Unknown, "The bed is an unknown number of mm wide.")]
    [InlineData("The bed is {0} mm wide.", "frame-specific", KnownState.FrameSpecific, "The bed is a figure of the maker's own wide.")]
    [InlineData("The bed is {0} mm wide.", "19", KnownState.Value, "The bed is 19 mm wide.")]
    [InlineData("Its own mark ({0}) counts.", "none", KnownState.None, "Its own mark (none) counts.")]
    public void A_missing_figure_has_no_unit_behind_it(string template, string shown, KnownState state, string expected) =>
        Assert.Equal(expected, Wording.Filled(template, [state], [shown]));

    [Theory]
    [InlineData("622", "none", "Made for 622.")]
    [InlineData("none", "622", "Made for 622.")]
    [InlineData("622", "622", "Made for 622.")]
    [InlineData("none", "none", "Made for none.")]
    [InlineData("622", "635", "Made for 622 or 635.")]
    [InlineData("unknown", "none", "Made for unknown.")]
    public void A_choice_of_which_one_side_is_missing_is_none(string one, string other, string expected) =>
        Assert.Equal(expected, Wording.Filled("Made for {0} or {1}.", [State(one), State(other)], [one, other]));

    [Theory]
    [InlineData("tyres from 28; tyres to none", "The tube is made for tyres from 28 to no figure; the tyre is 37-622 (700x37C).")]
    public void A_tube_without_a_widest_tyre_says_so(string tube, string expected)
    {
        Fit fit = Bench.Judge("rear-tube-width-in-tyre", "material steel", (Slot.RearTyre, Tyre.Read("37-622")), (Slot.RearInnerTube, InnerTube.Read(tube)));
        Assert.DoesNotContain("none mm", fit.Sentence, StringComparison.Ordinal);
        Assert.StartsWith(expected[..60], fit.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_several_inputs_the_missing_one_is_named()
    {
        Fit fit = Bench.Judge("flat-mount-bolt-in-stay", "rear brake FM-rear-140; rear stay thickness none", (Slot.RearCaliper, Caliper.Read("flat; bolt length 33")), (Slot.RearRotor, Rotor.Read("140")));
        Assert.Equal("One side has none of this: there is no stay at the flat mount.", fit.Sentence);
    }

    [Fact]
    public void No_sentence_of_many_bicycles_puts_a_unit_or_a_choice_behind_a_missing_figure()
    {
        Random random = new(20_261);
        Regex wrong = new(@"\b(none|unknown|frame-specific|not covered) (mm|kg)\b|none or none|\bor none\b(?! )|\bnone to\b");
        List<string> found = [];
        int said = 0;
        for (int i = 0; i < 40; i++)
        {
            foreach (Fit fit in Bicycles.Any(random).Check().Findings.Where(f => f.Joint is not null && f.Verdict != Verdict.NotJudged))
            {
                string sentence = fit.Sentence;
                said += sentence.Contains("no figure", StringComparison.Ordinal) ? 1 : 0;
                if (wrong.IsMatch(sentence))
                {
                    found.Add(sentence);
                }
            }
        }

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found.Distinct().Take(20)));
        Assert.True(said > 5, $"only {said} sentences say that a figure is missing");
    }

    private static KnownState State(string shown) => shown switch { "none" => KnownState.None, "unknown" => KnownState.Unknown, _ => KnownState.Value };
}
