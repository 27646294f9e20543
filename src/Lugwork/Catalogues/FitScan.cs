using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Lugwork.Catalogues;

/// <summary>
/// Questions to two columns that a shop keeps in memory: the fit code of an interface of each part, and a figure of it. For what no index
/// was made for; it goes through all parts, eight at a time, about as fast as memory brings them.
/// </summary>
/// <remarks>Both columns are of 32 bits: a code of a closed set, or whole nanometres up to 2,147 mm. A part of which something is unknown has 0 there, which no question with a code and a least above 0 meets.</remarks>
public static class FitScan
{
    /// <summary>How many parts have a code and a figure within limits.</summary>
    /// <param name="codes">The code of each part.</param>
    /// <param name="figures">The figure of each part, in the same order.</param>
    /// <param name="code">The code that is sought.</param>
    /// <param name="least">The least number that is met.</param>
    /// <param name="most">The greatest number that is met; below <paramref name="least"/> nothing is met.</param>
    /// <exception cref="ArgumentException">The columns are not of one length.</exception>
    public static int Count(ReadOnlySpan<int> codes, ReadOnlySpan<int> figures, int code, int least, int most)
    {
        Same(codes, figures);
        int count = 0;
        int at = 0;
        if (Vector256.IsHardwareAccelerated)
        {
            Vector256<int> sought = Vector256.Create(code);
            Vector256<int> from = Vector256.Create(least);
            Vector256<int> to = Vector256.Create(most);
            Vector256<int> counts = Vector256<int>.Zero;
            for (; at <= codes.Length - Vector256<int>.Count; at += Vector256<int>.Count)
            {
                // A lane that is met is -1.
                counts -= Met(codes, figures, at, sought, from, to);
            }

            count = Vector256.Sum(counts);
        }

        for (; at < codes.Length; at++)
        {
            count += IsMet(codes[at], figures[at], code, least, most) ? 1 : 0;
        }

        return count;
    }

    /// <summary>The places of the parts that have a code and a figure within limits, in order, as many as there is room for.</summary>
    /// <param name="codes">The code of each part.</param>
    /// <param name="figures">The figure of each part, in the same order.</param>
    /// <param name="code">The code that is sought.</param>
    /// <param name="least">The least number that is met.</param>
    /// <param name="most">The greatest number that is met; below <paramref name="least"/> nothing is met.</param>
    /// <param name="places">Room for the places, from 0; what is behind those that were found stays as it is.</param>
    /// <returns>How many were put there.</returns>
    /// <exception cref="ArgumentException">The columns are not of one length.</exception>
    public static int Find(ReadOnlySpan<int> codes, ReadOnlySpan<int> figures, int code, int least, int most, Span<int> places)
    {
        Same(codes, figures);
        int found = 0;
        int at = 0;
        if (Vector256.IsHardwareAccelerated)
        {
            Vector256<int> sought = Vector256.Create(code);
            Vector256<int> from = Vector256.Create(least);
            Vector256<int> to = Vector256.Create(most);
            for (; at <= codes.Length - 32 && found < places.Length; at += 32)
            {
                // Thirty-two parts as the bits of one number: most of them are none.
                uint met = Met(codes, figures, at, sought, from, to).ExtractMostSignificantBits()
                    | (Met(codes, figures, at + 8, sought, from, to).ExtractMostSignificantBits() << 8)
                    | (Met(codes, figures, at + 16, sought, from, to).ExtractMostSignificantBits() << 16)
                    | (Met(codes, figures, at + 24, sought, from, to).ExtractMostSignificantBits() << 24);
                for (; met != 0 && found < places.Length; met &= met - 1)
                {
                    places[found++] = at + BitOperations.TrailingZeroCount(met);
                }
            }
        }

        for (; at < codes.Length && found < places.Length; at++)
        {
            if (IsMet(codes[at], figures[at], code, least, most))
            {
                places[found++] = at;
            }
        }

        return found;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<int> Met(ReadOnlySpan<int> codes, ReadOnlySpan<int> figures, int at, Vector256<int> sought, Vector256<int> from, Vector256<int> to)
    {
        Vector256<int> own = Vector256.LoadUnsafe(in MemoryMarshal.GetReference(codes), (nuint)at);
        Vector256<int> figure = Vector256.LoadUnsafe(in MemoryMarshal.GetReference(figures), (nuint)at);
        return Vector256.Equals(own, sought) & Vector256.GreaterThanOrEqual(figure, from) & Vector256.LessThanOrEqual(figure, to);
    }

    private static bool IsMet(int own, int figure, int code, int least, int most) => own == code && figure >= least && figure <= most;

    private static void Same(ReadOnlySpan<int> codes, ReadOnlySpan<int> figures)
    {
        if (codes.Length != figures.Length)
        {
            throw new ArgumentException($"{codes.Length} codes and {figures.Length} figures", nameof(figures));
        }
    }
}
