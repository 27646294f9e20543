using System.Text;

namespace Lugwork.Fuzz;

/// <summary>Makes another input out of one: bytes, blocks, words of the target, figures, and pieces of other inputs.</summary>
internal sealed class Mutator(Random random, byte[][] words, int mostBytes)
{
    private static readonly byte[][] Figures = [.. new[] { "0", "1", "-1", "9", "27.2", "27,2", "0.000001", "999999", "9223372036854775807", "18446744073709551616", "1e9", "1/8", "\u00BD", "\u0661", "00000001", "NaN" }.Select(Encoding.UTF8.GetBytes)];

    private static readonly byte[][] Signs = [.. new[] { ";", ",", ", ", ".", "|", " | ", "/", "x", "\u00D7", "-", "\u2013", ":", "=", "\"", "'", "(", ")", "[", "]", "{", "}", "\n", "\r", "\t", " ", "\u00A0", "\u200B", "\u202E", "\uFEFF", "\0", "\\", "\\u0000", "\\uD800", "\u00B1", "?", "\u00E4", "\uD83D\uDEB2", "<", "&" }.Select(Encoding.UTF8.GetBytes)];

    public byte[] Next(byte[] input, byte[] other)
    {
        List<byte> bytes = [.. input];
        for (int turns = 1 << random.Next(4); turns > 0; turns--)
        {
            Change(bytes, other);
        }

        if (bytes.Count > mostBytes)
        {
            bytes.RemoveRange(mostBytes, bytes.Count - mostBytes);
        }

        return [.. bytes];
    }

    private void Change(List<byte> bytes, byte[] other)
    {
        int at = random.Next(bytes.Count + 1);
        int left = bytes.Count - at;
        switch (random.Next(11))
        {
            case 0 when left > 0:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1 when left > 0:
                bytes[at] = (byte)random.Next(256);
                break;
            case 2 when left > 0:
                bytes.RemoveRange(at, Length(left));
                break;
            case 3 when left > 0:
                bytes.InsertRange(random.Next(bytes.Count + 1), bytes.GetRange(at, Length(left)));
                break;
            case 4 when left > 1:
                bytes.Reverse(at, 2);
                break;
            case 5:
                bytes.InsertRange(at, Any(Signs));
                break;
            case 6 when words.Length > 0:
                bytes.InsertRange(at, Any(words));
                break;
            case 7 when words.Length > 0:
                Replace(bytes, at, IsLetter, Any(words));
                break;
            case 8:
                Replace(bytes, at, IsDigit, Any(Figures));
                break;
            case 9 when other.Length > 0:
                int from = random.Next(other.Length);
                bytes.InsertRange(at, other[from..(from + Length(other.Length - from))]);
                break;
            case 10 when other.Length > 0:
                // The beginning of one, the end of the other.
                bytes.RemoveRange(at, left);
                bytes.AddRange(other[random.Next(other.Length)..]);
                break;
            default:
                bytes.Insert(at, (byte)random.Next(256));
                break;
        }
    }

    /// <summary>The next run of letters or digits is exchanged.</summary>
    private static void Replace(List<byte> bytes, int at, Predicate<byte> of, byte[] by)
    {
        int start = bytes.FindIndex(at, of);
        if (start < 0)
        {
            return;
        }

        int end = bytes.FindIndex(start, b => !of(b));
        bytes.RemoveRange(start, (end < 0 ? bytes.Count : end) - start);
        bytes.InsertRange(start, by);
    }

    /// <summary>Mostly short, at times all of it.</summary>
    private int Length(int most) => random.Next(12) == 0 ? random.Next(1, most + 1) : random.Next(1, Math.Min(most, 1 << random.Next(1, 7)) + 1);

    private byte[] Any(byte[][] all) => all[random.Next(all.Length)];

    private static bool IsLetter(byte b) => char.IsAsciiLetter((char)b) || b >= 0x80;

    private static bool IsDigit(byte b) => char.IsAsciiDigit((char)b);
}
