namespace Lugwork.Planning;

/// <summary>A cost for every combination of classes of some variables. Classes that behave alike are merged, those that go with nothing are dropped.</summary>
internal sealed class ChoiceTable
{
    public ChoiceTable(int[] scope, int[][] classOf, int[] sizes, long[] price, long[]? mass)
    {
        Scope = scope;
        ClassOf = classOf;
        Sizes = sizes;
        Price = price;
        Mass = mass;
    }

    /// <summary>The variables, ascending.</summary>
    public int[] Scope { get; }

    /// <summary>For each variable and each of its states the class; -1 where the state goes with nothing.</summary>
    public int[][] ClassOf { get; }

    public int[] Sizes { get; }

    /// <summary>By combination, the last variable running fastest.</summary>
    public long[] Price { get; private set; }

    /// <summary>The same of the mass; null where it is nothing everywhere.</summary>
    public long[]? Mass { get; private set; }

    /// <summary>How far apart two neighbouring classes of a variable lie.</summary>
    public long Stride(int place)
    {
        long stride = 1;
        for (int i = place + 1; i < Sizes.Length; i++)
        {
            stride *= Sizes[i];
        }

        return stride;
    }

    /// <summary>
    /// Merges and drops. Each variable is looked at once: what is merged or dropped of one makes no classes of another alike, since what is left of them differs where they differed.
    /// </summary>
    /// <returns>Whether a class was dropped, so that states died.</returns>
    public bool Merge()
    {
        bool dropped = false;
        for (int place = 0; place < Sizes.Length && Price.Length > 0; place++)
        {
            (int[] map, int left, bool lost) = Alike(place);
            if (left < Sizes[place])
            {
                dropped |= lost;
                Take(place, map, left);
            }
        }

        return Price.Length == 0 ? Nothing() : dropped;
    }

    /// <summary>Without the variables of one class, which decide nothing; false where none has more than one, and then the one cost is left.</summary>
    public bool Narrowed(out ChoiceTable narrow)
    {
        int[] kept = [.. Enumerable.Range(0, Sizes.Length).Where(i => Sizes[i] > 1)];
        narrow = new([.. kept.Select(i => Scope[i])], [.. kept.Select(i => ClassOf[i])], [.. kept.Select(i => Sizes[i])], Price, Mass);
        return kept.Length > 0;
    }

    /// <summary>Nothing goes together at all.</summary>
    private bool Nothing()
    {
        Array.Clear(Sizes);
        foreach (int[] classes in ClassOf)
        {
            Array.Fill(classes, -1);
        }

        return true;
    }

    private (int[] Map, int Left, bool Lost) Alike(int place)
    {
        int size = Sizes[place];
        int stride = (int)Stride(place);
        int outer = Price.Length / (size * stride);
        int[] map = new int[size];
        ulong[] hashes = Hashes(size, stride, outer);
        int[] first = new int[size];
        int left = 0;
        bool lost = false;
        Dictionary<ulong, int>? byHash = size > 32 ? [] : null;
        for (int own = 0; own < size; own++)
        {
            if (IsNever(own, size, stride, outer))
            {
                map[own] = -1;
                lost = true;
                continue;
            }

            int same = byHash is null ? 0 : byHash.GetValueOrDefault(hashes[own], left);
            while (same < left && (hashes[same] != hashes[own] || !AreAlike(first[same], own, size, stride, outer)))
            {
                same++;
            }

            if (same < left)
            {
                map[own] = same;
                continue;
            }

            // Hashes of the classes that are kept stand in front.
            byHash?.TryAdd(hashes[own], left);
            (hashes[left], first[left], map[own]) = (hashes[own], own, left);
            left++;
        }

        return (map, left, lost);
    }

    /// <summary>A number for each class: the same for those whose prices are the same.</summary>
    private ulong[] Hashes(int size, int stride, int outer)
    {
        ulong[] hashes = new ulong[size];
        ulong factor = 0x9E37_79B9_7F4A_7C15;
        for (int o = 0; o < outer; o++)
        {
            for (int own = 0; own < size; own++)
            {
                ulong hash = 0;
                ulong by = factor;
                foreach (long price in Price.AsSpan(((o * size) + own) * stride, stride))
                {
                    hash += ((ulong)price ^ ((ulong)price >> 29)) * by;
                    by += 0xD1B5_4A32_D192_ED02;
                }

                hashes[own] += hash;
            }

            factor = (factor * 0xBF58_476D_1CE4_E5B9) | 1;
        }

        return hashes;
    }

    private bool IsNever(int own, int size, int stride, int outer)
    {
        for (int o = 0; o < outer; o++)
        {
            if (Price.AsSpan(((o * size) + own) * stride, stride).IndexOfAnyInRange(long.MinValue, ChoiceEntry.Never - 1) >= 0)
            {
                return false;
            }
        }

        return true;
    }

    private bool AreAlike(int one, int other, int size, int stride, int outer)
    {
        for (int o = 0; o < outer; o++)
        {
            int a = ((o * size) + one) * stride;
            int b = ((o * size) + other) * stride;
            if (!Price.AsSpan(a, stride).SequenceEqual(Price.AsSpan(b, stride)) || (Mass is not null && !Mass.AsSpan(a, stride).SequenceEqual(Mass.AsSpan(b, stride))))
            {
                return false;
            }
        }

        return true;
    }

    private void Take(int place, int[] map, int left)
    {
        int size = Sizes[place];
        int stride = (int)Stride(place);
        int outer = Price.Length / (size * stride);
        long[] price = new long[outer * left * stride];
        long[]? mass = Mass is null ? null : new long[price.Length];
        for (int own = size - 1; own >= 0; own--)
        {
            if (map[own] < 0)
            {
                continue;
            }

            for (int o = 0; o < outer; o++)
            {
                Array.Copy(Price, ((o * size) + own) * stride, price, ((o * left) + map[own]) * stride, stride);
                if (mass is not null)
                {
                    Array.Copy(Mass!, ((o * size) + own) * stride, mass, ((o * left) + map[own]) * stride, stride);
                }
            }
        }

        Price = price;
        Mass = mass;
        Sizes[place] = left;
        ClassOf[place] = Array.ConvertAll(ClassOf[place], c => c < 0 ? -1 : map[c]);
    }
}
