using System.Globalization;
using Lugwork.Drawing;

namespace Lugwork.Tests.Drawing;

/// <summary>Colours of drawings as people with other colour vision see them: simulated by the matrices of "A physiologically-based model for simulation of color vision deficiency" at their full severity, in linear light.</summary>
public sealed class ColourTests
{
    /// <summary>Apart by about this much, CIE 1976, two fields beside each other are told apart at a glance; common practice, no source. One is just seen.</summary>
    private const double AtAGlance = 10;

    private static readonly double[][] Plain = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

    private static readonly double[][][] Visions =
    [
        Plain,
        [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
        [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
        [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
    ];

    [Theory]
    [InlineData("#ffffff")]
    [InlineData("#14171c")]
    public void The_three_tones_are_told_apart_with_any_colour_vision(string paper)
    {
        foreach (double[][] vision in Visions)
        {
            double[][] seen = [.. new[] { "a", "b", "c" }.Select(mark => Seen(Over(mark, paper), vision))];
            foreach ((int one, int other) in new[] { (0, 1), (0, 2), (1, 2) })
            {
                double apart = Math.Sqrt(seen[one].Zip(seen[other], (x, y) => (x - y) * (x - y)).Sum());
                Assert.True(apart >= AtAGlance, $"tones {one} and {other} on {paper} are {apart:0.0} apart");
            }
        }
    }

    [Theory]
    [InlineData("#ffffff", "#16181d")]
    [InlineData("#14171c", "#eceff4")]
    public void Lines_and_letters_stand_out_from_the_paper_and_from_every_tone(string paper, string ink)
    {
        Assert.Contains("color:" + ink, DraftStyle.Text, StringComparison.Ordinal);
        Assert.Contains("fill:" + (paper == "#ffffff" ? "#fff" : paper), DraftStyle.Text, StringComparison.Ordinal);
        foreach (double[] field in new[] { Hex(paper), Over("a", paper), Over("b", paper), Over("c", paper) })
        {
            (double light, double dark) = (Luminance(field), Luminance(Hex(ink)));
            (light, dark) = light > dark ? (light, dark) : (dark, light);
            Assert.True((light + 0.05) / (dark + 0.05) >= 4.5, $"{ink} on {string.Join(',', field)}");
        }
    }

    [Fact]
    public void The_scale_of_colours_is_right_at_its_ends()
    {
        Assert.Equal(100, Seen([255, 255, 255], Plain)[0], 1);
        Assert.Equal(0, Seen([0, 0, 0], Plain)[0], 1);
    }

    /// <summary>The tone of a mark as the style has it, laid over the paper.</summary>
    private static double[] Over(string mark, string paper)
    {
        string rule = DraftStyle.Text.Split(".lw-f" + mark + "{")[1].Split('}')[0];
        double opacity = double.Parse(rule.Split("fill-opacity:")[1], CultureInfo.InvariantCulture);
        return [.. Hex(rule.Split("fill:")[1][..7]).Zip(Hex(paper), (top, below) => (opacity * top) + ((1 - opacity) * below))];
    }

    private static double[] Hex(string colour) => [.. Enumerable.Range(0, 3).Select(i => (double)int.Parse(colour.AsSpan(1 + (2 * i), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture))];

    private static double Linear(double channel) => channel / 255 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow(((channel / 255) + 0.055) / 1.055, 2.4);

    private static double Luminance(double[] colour) => (0.2126 * Linear(colour[0])) + (0.7152 * Linear(colour[1])) + (0.0722 * Linear(colour[2]));

    /// <summary>Lightness and the two axes of colour, CIE 1976, under daylight.</summary>
    private static double[] Seen(double[] colour, double[][] vision)
    {
        double[] light = [.. vision.Select(row => Math.Clamp(row.Zip(colour, (factor, channel) => factor * Linear(channel)).Sum(), 0, 1))];
        double x = Root(((0.4124 * light[0]) + (0.3576 * light[1]) + (0.1805 * light[2])) / 0.9505);
        double y = Root((0.2126 * light[0]) + (0.7152 * light[1]) + (0.0722 * light[2]));
        double z = Root(((0.0193 * light[0]) + (0.1192 * light[1]) + (0.9505 * light[2])) / 1.089);
        return [(116 * y) - 16, 500 * (x - y), 200 * (y - z)];

        static double Root(double t) => t > 0.008856 ? Math.Cbrt(t) : (7.787 * t) + (16.0 / 116);
    }
}
