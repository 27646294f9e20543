using System.Globalization;
using Lugwork.Hubs;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork.Tests.Measures;

/// <summary>Values of the bulk readers at and near their ends, and the loose writings a spec sheet has for them.</summary>
internal static class Writers
{
    public static AxleSize Axle(Random random) => AxleSize.OfMillimetres(Length(random, 5, 25), Length(random, 60, 250));

    public static HeadsetHalf Half(Random random) =>
        HeadsetHalf.OfMillimetres(HeadsetStyle.All[random.Next(3)], Length(random, 20, 70), random.Next(3) == 0 ? null : Length(random, 20, 50));

    public static HeadsetPair Pair(Random random) => HeadsetPair.Of(Half(random), Half(random));

    public static TyreSize Tyre(Random random) => TyreSize.Of(random.Next(18, 133), BeadSeat.All[random.Next(BeadSeat.All.Length)]);

    public static string Loose(Random random, AxleSize size)
    {
        string axle = Loose(random, size.AxleMillimetres) + Unit(random);
        string width = Loose(random, size.WidthMillimetres) + Unit(random);
        (string first, string second) = random.Next(2) == 0 ? (axle, width) : (width, axle);
        return Blank(random) + first + Blank(random) + Times(random) + Blank(random) + second + Blank(random);
    }

    public static string Loose(Random random, HeadsetHalf half)
    {
        string style = random.Next(2) == 0 ? half.Style.FitKey : half.Style.FitKey.ToLowerInvariant();
        string bore = style + Blank(random) + Loose(random, half.BoreMillimetres) + Unit(random);
        return half.SecondMillimetres is { } second ? bore + Blank(random) + "/" + Blank(random) + Loose(random, second) + Unit(random) : bore;
    }

    public static string Loose(Random random, HeadsetPair pair)
    {
        string[] signs = ["|", ";", ", ", "-", "\u2013", "I", "i", " ", "/", "\u00A0", "\t"];
        string sign = signs[random.Next(signs.Length)];
        return Blank(random) + Loose(random, pair.Upper) + Blank(random) + sign + Blank(random) + (sign is "I" or "i" && pair.Lower.Style == HeadsetStyle.Integrated ? " " : "") + Loose(random, pair.Lower) + Blank(random);
    }

    public static string Loose(Random random, TyreSize size)
    {
        string[] signs = ["-", "-", "\u2013", "\u2212", "x", "X", "\u00D7", "*"];
        int bead = (int)size.Bead.FitCode;

        // A width from 90 up must come first; 700 is a trade label but for the mark in front, which every size may have.
        bool turned = random.Next(2) == 0 && size.WidthMillimetres < 90;
        string[] marks = ["ISO ", "iso\u00A0", "ETRTO: ", "Etrto"];
        string mark = bead == 700 || random.Next(8) == 0 ? marks[random.Next(marks.Length)] : "";
        (int first, int second) = turned ? (bead, size.WidthMillimetres) : (size.WidthMillimetres, bead);
        return Blank(random) + mark + first + (random.Next(8) == 0 ? ",0" : "") + Blank(random) + signs[random.Next(signs.Length)] + Blank(random) + second + Unit(random) + Blank(random);
    }

    /// <summary>A text made of the pieces that the grammars know, in any order: some are good, most nearly.</summary>
    public static string Any(Random random)
    {
        string[] pieces = ["12", "142", "5", "25", "60", "250", "37", "622", "700", "28.6", "28,6", "3/8", "1/64", "/", "34", "EC", "zs", "IS", "I", "i", "|", ";", ",", ".", "-", "\u2013", "x", "\u00D7", "*", " ", "\u00A0", "\u200B", "mm", "M", "in", "inch", "\"", "\u2033", "C", "0", "\uD83D\uDEB2", "\uD800", "\u0661"];
        string text = random.Next(3) switch
        {
            0 => "",
            1 => Loose(random, Axle(random)),
            _ => random.Next(2) == 0 ? Loose(random, Pair(random)) : Loose(random, Tyre(random)),
        };
        for (int count = random.Next(text.Length == 0 ? 8 : 3); count > 0; count--)
        {
            string piece = pieces[random.Next(pieces.Length)];
            int at = random.Next(text.Length + 1);
            text = random.Next(4) == 0 && at < text.Length ? text.Remove(at, 1) : text.Insert(at, piece);
        }

        return text;
    }

    private static decimal Length(Random random, int least, int most) => random.Next(5) switch
    {
        0 => least,
        1 => most,
        2 => random.Next(least, most + 1),
        3 => random.Next(least * 10, (most * 10) + 1) / 10m,
        _ => random.NextInt64(least * 1_000_000L, (most * 1_000_000L) + 1) / 1_000_000m,
    };

    private static string Loose(Random random, decimal millimetres)
    {
        string text = millimetres.ToString(random.Next(4) == 0 ? "000.000000" : "0.######", CultureInfo.InvariantCulture);
        return random.Next(2) == 0 ? text.Replace('.', ',') : text;
    }

    private static string Unit(Random random) => random.Next(4) switch
    {
        0 => "mm",
        1 => Blank(random) + "MM",
        _ => "",
    };

    private static string Blank(Random random) => random.Next(8) switch
    {
        0 => " ",
        1 => "  ",
        2 => "\u00A0",
        3 => "\u200B\u2009",
        _ => "",
    };

    private static string Times(Random random) => new[] { "x", "X", "*", "\u00D7", "\u2715", "\u2A2F" }[random.Next(6)];
}
