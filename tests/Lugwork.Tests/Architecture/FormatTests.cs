using System.Globalization;
using System.Reflection;
using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork.Tests.Architecture;

/// <summary>The formats of values in text: G key, T trade name, M millimetres and I inches of the one main length.</summary>
public sealed class FormatTests
{
    private static readonly string[] Cultures = ["", "tr-TR", "de-DE", "ar-SA", "fa-IR"];

    public static TheoryData<string> TypeNames => [.. Values.Types.Select(t => t.FullName!)];

    public static TheoryData<string, string, string, string, string> Examples => new()
    {
        { typeof(SteererSize).FullName!, "28.6", "1-1/8 in steerer (28.6)", "28.6 mm", "1.126 in" },
        { typeof(SteererSize).FullName!, "25.4", "1 in steerer (25.4)", "25.4 mm", "1 in" },
        { typeof(SteererSize).FullName!, "38.1", "1.5 in steerer (38.1)", "38.1 mm", "1-1/2 in" },
        { typeof(CrownSeat).FullName!, "39.8", "39.8 mm seat (1.5 in, coded 40)", "39.8 mm", "1.567 in" },
        { typeof(CrownRace).FullName!, "30", "30.0 mm race (1-1/8 in)", "30 mm", "1.181 in" },
        { typeof(StemFixing).FullName!, "quill-22.2", "22.2 mm quill", "22.2 mm", "0.874 in" },
        { typeof(BarClamp).FullName!, "25.4", "25.4 mm", "25.4 mm", "1 in" },
        { typeof(SeatClampSize).FullName!, "34.9", "34.9 mm", "34.9 mm", "1.374 in" },
        { typeof(RotorSize).FullName!, "203", "203 mm", "203 mm", "7.992 in" },
        { typeof(BeadSeat).FullName!, "622", "622 mm", "622 mm", "24.488 in" },
        { typeof(PedalThread).FullName!, "9/16x20", "9/16 in x 20 tpi", "14.2875 mm", "9/16 in" },
        { typeof(PedalThread).FullName!, "1/2x20", "1/2 in x 20 tpi", "12.7 mm", "1/2 in" },
        { typeof(AxleThread).FullName!, "M12x1.5", "M12 x 1.5", "12 mm", "0.472 in" },
        { typeof(SpindleSeat).FullName!, "28.99", "28.99 mm", "28.99 mm", "1.141 in" },
        { typeof(SeatpostDiameter).FullName!, "27.2", "27.2", "27.2 mm", "1.071 in" },
        { typeof(SeatTubeBore).FullName!, "25.4", "25.4", "25.4 mm", "1 in" },
        { typeof(Dimension).FullName!, "28.575", "28.575", "28.575 mm", "1-1/8 in" },
        { typeof(Dimension).FullName!, "0.396875", "0.396875", "0.396875 mm", "1/64 in" },
        { typeof(Dimension).FullName!, "0.396876", "0.396876", "0.396876 mm", "0.016 in" },
        { typeof(TyreSize).FullName!, "37-622", "37-622", "37 mm", "1.457 in" },
    };

    /// <summary>What has no one main length, or not one of its own: a tapered steerer is told by two, a bore by a range.</summary>
    public static TheoryData<string, string> WithoutLength => new()
    {
        { typeof(HeadTubeBore).FullName!, "EC34" },
        { typeof(HubStandard).FullName!, "R142-12" },
        { typeof(Shell).FullName!, "BSA-68" },
        { typeof(AxleThread).FullName!, "own" },
        { typeof(SpindleSeat).FullName!, "24/22" },
        { typeof(SpindleSeat).FullName!, "square-JIS" },
        { typeof(RotorFixing).FullName!, "six-bolt" },
        { typeof(BicycleKind).FullName!, "touring" },
        { typeof(AxleSize).FullName!, "12x142" },
        { typeof(HeadsetHalf).FullName!, "ZS44/28.6" },
        { typeof(HeadsetPair).FullName!, "ZS44/28.6|ZS56/40" },
    };

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_value_with_a_main_length_is_written_in_four_ways(string type, string key, string trade, string millimetres, string inches)
    {
        IFormattable value = Parsed(type, key);
        Assert.Equal([key, key, key, trade, millimetres, inches], new[] { null, "", "G", "T", "M", "I" }.Select(f => value.ToString(f, null)));
    }

    [Theory]
    [MemberData(nameof(WithoutLength))]
    public void A_value_without_one_refuses_millimetres_and_inches_and_says_what_there_is(string type, string key)
    {
        IFormattable value = Parsed(type, key);
        Assert.Equal(key, value.ToString("G", null));
        foreach (string format in new[] { "M", "I" })
        {
            FormatException refused = Assert.Throws<FormatException>(() => value.ToString(format, null));
            Assert.Contains("no one main length", refused.Message, StringComparison.Ordinal);
            Assert.Contains("use G (key) or T (trade name)", refused.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(TypeNames))]
    public void Every_type_has_the_formats_in_every_culture_and_refuses_others(string type) => Values.Check(typeof(FormatTests), nameof(Formats), type);

    private static void Formats<T>()
        where T : ISpanParsable<T>, ISpanFormattable
    {
        foreach (T value in Values.Of<T>())
        {
            string plain = value.ToString()!;
            Assert.Equal(plain, value.ToString(null, null));
            Assert.Equal(plain, value.ToString("", null));
            Assert.Equal(plain, value.ToString("G", null));
            Assert.NotEmpty(value.ToString("T", null));
            bool hasLength = Text(value, "M", CultureInfo.InvariantCulture) is not null;
            Assert.Equal(hasLength, Text(value, "I", CultureInfo.InvariantCulture) is not null);
            foreach (string format in new[] { "", "G", "T", "M", "I" })
            {
                string? text = Text(value, format, CultureInfo.InvariantCulture);
                Assert.All(Cultures, c => Assert.Equal(text, Text(value, format, CultureInfo.GetCultureInfo(c))));
                if (text is not null)
                {
                    Assert.Equal(text, Written(value, format, text.Length));
                    Assert.Null(Written(value, format, text.Length - 1));
                }
                else
                {
                    Assert.Throws<FormatException>(() => Written(value, format, 100));
                }
            }

            if (hasLength)
            {
                Assert.EndsWith(" mm", value.ToString("M", null), StringComparison.Ordinal);
                Assert.EndsWith(" in", value.ToString("I", null), StringComparison.Ordinal);
                decimal millimetres = decimal.Parse(value.ToString("M", null)[..^3], CultureInfo.InvariantCulture);
                Assert.InRange(Inches(value.ToString("I", null)[..^3]) - (millimetres / 25.4m), -0.0005m, 0.0005m);
            }

            foreach (string other in new[] { "X", "g", "m", "GG", "MM", " ", "0.0" })
            {
                FormatException refused = Assert.Throws<FormatException>(() => value.ToString(other, null));
                Assert.Contains(hasLength ? "M (millimetres) or I (inches)" : "T (trade name)", refused.Message, StringComparison.Ordinal);
                Assert.Throws<FormatException>(() => Written(value, other, 100));
            }
        }
    }

    private static IFormattable Parsed(string type, string key) =>
        (IFormattable)Values.Types.Single(t => t.FullName == type).GetMethod("Parse", BindingFlags.Public | BindingFlags.Static | BindingFlags.FlattenHierarchy, [typeof(string), typeof(IFormatProvider)])!.Invoke(null, [key, null])!;

    private static string? Text<T>(T value, string format, CultureInfo culture)
        where T : ISpanFormattable
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = culture;
        try
        {
            string there = value.ToString(format, null);
            Assert.Equal(there, value.ToString(format, culture));
            return there;
        }
        catch (FormatException) when (format is "M" or "I")
        {
            return null;
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string? Written<T>(T value, string format, int room)
        where T : ISpanFormattable
    {
        char[] into = new char[Math.Max(room, 0)];
        bool good = value.TryFormat(into, out int written, format, null);
        Assert.True(good || written == 0);
        return good ? new string(into, 0, written) : null;
    }

    private static decimal Inches(string text)
    {
        string[] pieces = text.Split('-');
        string[] fraction = pieces[^1].Split('/');
        decimal part = fraction.Length == 2
            ? decimal.Parse(fraction[0], CultureInfo.InvariantCulture) / decimal.Parse(fraction[1], CultureInfo.InvariantCulture)
            : decimal.Parse(pieces[^1], CultureInfo.InvariantCulture);
        return part + (pieces.Length == 2 ? decimal.Parse(pieces[0], CultureInfo.InvariantCulture) : 0);
    }
}
