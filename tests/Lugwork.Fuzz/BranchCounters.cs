using System.Numerics;
using System.Runtime.InteropServices;
using SharpFuzz.Common;

namespace Lugwork.Fuzz;

/// <summary>How often each pair of branches was gone through in one run, and which were ever: what is new there makes an input worth keeping.</summary>
internal sealed unsafe class BranchCounters
{
    private const int Size = 1 << 16;

    private readonly byte* _counts = (byte*)NativeMemory.AlignedAlloc(Size, 64);

    private readonly byte[] _seen = new byte[Size];

    public BranchCounters()
    {
        Trace.SharedMem = _counts;
        Clear();
    }

    /// <summary>Pairs of branches that any input went through.</summary>
    public int Reached { get; private set; }

    public void Clear()
    {
        new Span<byte>(_counts, Size).Clear();
        Trace.PrevLocation = 0;
    }

    /// <summary>Whether the run since <see cref="Clear"/> went through a pair that none did before, or in another order of magnitude.</summary>
    public bool TakeNew()
    {
        bool any = false;
        ReadOnlySpan<ulong> words = new(_counts, Size / sizeof(ulong));
        for (int word = 0; word < words.Length; word++)
        {
            if (words[word] == 0)
            {
                continue;
            }

            for (int at = word * sizeof(ulong); at < (word + 1) * sizeof(ulong); at++)
            {
                // 1, 2, 3, 4 to 7, 8 to 15 and so on are each a bit of their own.
                byte kind = _counts[at] switch { 0 => 0, 1 => 1, 2 => 2, 3 => 4, var count => (byte)(1 << Math.Min(7, BitOperations.Log2(count) + 1)) };
                if ((kind & ~_seen[at]) != 0)
                {
                    Reached += _seen[at] == 0 ? 1 : 0;
                    _seen[at] |= kind;
                    any = true;
                }
            }
        }

        return any;
    }
}
