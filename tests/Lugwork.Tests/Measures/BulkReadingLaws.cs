using System.Globalization;
using System.Text;
using FsCheck;
using FsCheck.Xunit;
using Lugwork.Hubs;
using Lugwork.Steering;
using Lugwork.Tyres;

namespace Lugwork.Tests.Measures;

/// <summary>What holds for every reader of spec lines in bulk.</summary>
public sealed class BulkReadingLaws
{
    private delegate TextReading<T> Reader<T, TChar>(ReadOnlySpan<TChar> text);

    [Property(MaxTest = 4_000)]
    public bool Every_way_to_read_a_text_says_the_same(DoNotSize<int> seed)
    {
        string text = Writers.Any(new Random(seed.Item));
        return Agrees<AxleSize>(text, AxleSize.Read, AxleSize.Read)
            && Agrees<HeadsetHalf>(text, HeadsetHalf.Read, HeadsetHalf.Read)
            && Agrees<HeadsetPair>(text, HeadsetPair.Read, HeadsetPair.Read)
            && Agrees<TyreSize>(text, TyreSize.Read, TyreSize.Read);
    }

    /// <summary>A times sign of two or three bytes in a label that says one size.</summary>
    [Theory]
    [InlineData("8 × 2")]
    [InlineData("8✕  2")]
    [InlineData("8✕\u00a0 2")]
    [InlineData("28 × 1-1/2")]
    [InlineData("26 × 1 × 1-3/8")]
    [InlineData("700 × 38C")]
    public void A_label_says_the_same_in_bytes(string text) => Assert.True(Agrees<TyreSize>(text, TyreSize.Read, TyreSize.Read));

    [Property(MaxTest = 2_000)]
    public bool What_is_written_reads_back(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        return Returns(Writers.Axle(random)) && Returns(Writers.Half(random)) && Returns(Writers.Pair(random)) && Returns(Writers.Tyre(random));
    }

    [Property(MaxTest = 2_000)]
    public bool A_loose_writing_reads_as_the_value(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        AxleSize axle = Writers.Axle(random);
        HeadsetHalf half = Writers.Half(random);
        HeadsetPair pair = Writers.Pair(random);
        TyreSize tyre = Writers.Tyre(random);
        return Reads(Writers.Loose(random, axle), axle) && Reads(Writers.Loose(random, half), half) && Reads(Writers.Loose(random, pair), pair) && Reads(Writers.Loose(random, tyre), tyre);
    }

    [Fact]
    public void The_drawn_texts_hold_many_good_and_many_bad_ones_of_each_kind()
    {
        string[] texts = [.. Enumerable.Range(0, 4_000).Select(seed => Writers.Any(new Random(seed)))];
        int[] good =
        [
            texts.Count(t => AxleSize.TryParse(t, null, out _)),
            texts.Count(t => HeadsetPair.TryParse(t, null, out _)),
            texts.Count(t => TyreSize.TryParse(t, null, out _)),
        ];
        Assert.All(good, g => Assert.InRange(g, 100, 2_000));
    }

    [Fact]
    public void Reading_and_refusing_allocate_nothing()
    {
        string[] texts = [.. Enumerable.Range(0, 500).Select(seed => Writers.Any(new Random(seed)))];
        byte[][] utf8 = [.. texts.Select(Encoding.UTF8.GetBytes)];
        Read();
        int good = 0;
        long least = long.MaxValue;
        for (int pass = 0; pass < 5 && least > 0; pass++)
        {
            // A method that is compiled anew while it runs allocates once on its thread; what a reader allocates is there in every pass.
            long before = GC.GetAllocatedBytesForCurrentThread();
            good = Read();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.Equal(0, least);
        Assert.InRange(good, 100, 3_900);

        int Read()
        {
            int count = 0;
            for (int i = 0; i < texts.Length; i++)
            {
                count += Count<AxleSize>(texts[i], utf8[i]) + Count<HeadsetHalf>(texts[i], utf8[i]) + Count<HeadsetPair>(texts[i], utf8[i]) + Count<TyreSize>(texts[i], utf8[i]);
            }

            return count;
        }
    }

    private static int Count<T>(string text, byte[] utf8)
        where T : struct, ISpanParsable<T>, IUtf8SpanParsable<T> => (T.TryParse(text.AsSpan(), null, out _) ? 1 : 0) + (T.TryParse(utf8, null, out _) ? 1 : 0);

    private static bool Agrees<T>(string text, Reader<T, char> read, Reader<T, byte> readUtf8)
        where T : struct, ISpanParsable<T>, IUtf8SpanParsable<T>, IEquatable<T>
    {
        byte[] utf8 = Encoding.UTF8.GetBytes(text);
        bool good = T.TryParse(text.AsSpan(), null, out T value);
        Assert.Equal(good, T.TryParse(utf8, null, out T fromUtf8));
        Assert.Equal(value, fromUtf8);
        Assert.Equal(good, T.TryParse(text, CultureInfo.GetCultureInfo("de-DE"), out T fromString));
        Assert.Equal(value, fromString);

        TextReading<T> reading = read(text);
        TextReading<T> other = readUtf8(utf8);
        Assert.Equal(good, reading.IsClear);
        Assert.Equal(reading.Values.AsSpan(), other.Values.AsSpan());
        Assert.Equal(reading.Reason, other.Reason);
        if (good)
        {
            Assert.Equal(value, reading.Values[0]);
            Assert.Equal(value, T.Parse(text, null));
            Assert.Equal(value, T.Parse(utf8, null));
            return true;
        }

        // The place in bytes is the place in characters, counted in bytes.
        Assert.Equal(Encoding.UTF8.GetByteCount(text.AsSpan(0, reading.Position)), other.Position);
        Assert.Equal(default, value);
        Assert.Throws<FormatException>(() => T.Parse(text, null));
        Assert.Throws<FormatException>(() => T.Parse(utf8, null));
        return true;
    }

    private static bool Returns<T>(T value)
        where T : struct, ISpanParsable<T>, IUtf8SpanParsable<T>, ISpanFormattable, IEquatable<T>
    {
        string text = value.ToString(null, CultureInfo.GetCultureInfo("fa-IR"));
        Assert.Equal(text, value.ToString());
        char[] room = new char[text.Length];
        Assert.True(value.TryFormat(room, out int written, default, null));
        Assert.Equal(text, new string(room, 0, written));
        Assert.False(value.TryFormat(room.AsSpan(1), out written, default, null));
        Assert.Equal(0, written);
        return Reads(text, value);
    }

    private static bool Reads<T>(string text, T value)
        where T : struct, ISpanParsable<T>, IUtf8SpanParsable<T>, IEquatable<T>
    {
        Assert.True(T.TryParse(text, null, out T read), text);
        Assert.Equal(value, read);
        Assert.True(T.TryParse(Encoding.UTF8.GetBytes(text), null, out read), text);
        Assert.Equal(value, read);
        return true;
    }
}
