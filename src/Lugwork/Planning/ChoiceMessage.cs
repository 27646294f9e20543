namespace Lugwork.Planning;

/// <summary>One cost for every combination of classes of some variables, as the elimination adds them up: a table seen by one weighing of price and mass, or what an eliminated variable leaves behind.</summary>
internal sealed class ChoiceMessage
{
    private readonly Dictionary<long, long>? _sparse;

    private ChoiceMessage(int[] scope, int[][] classOf, int[] sizes, long[]? cells, Dictionary<long, long>? sparse)
    {
        Scope = scope;
        ClassOf = classOf;
        Sizes = sizes;
        Cells = cells;
        _sparse = sparse;
        foreach (int variable in scope)
        {
            Mask |= 1UL << variable;
        }
    }

    /// <summary>The variables, ascending.</summary>
    public int[] Scope { get; }

    /// <summary>A bit for each of them.</summary>
    public ulong Mask { get; }

    public int[][] ClassOf { get; }

    public int[] Sizes { get; }

    /// <summary>By combination; null where only the combinations that go together are held.</summary>
    public long[]? Cells { get; }

    /// <summary>The table that it is; null for what a variable leaves behind.</summary>
    public ChoiceTable? Table { get; private init; }

    /// <summary>The bucket that left it; null for a table.</summary>
    public ChoiceBucketPart? From { get; set; }

    public static ChoiceMessage Of(ChoiceTable table, ChoiceWeights weights)
    {
        long[] cells = table.Price;
        if (weights != ChoiceWeights.Price)
        {
            cells = new long[table.Price.Length];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = table.Price[i] >= ChoiceEntry.Never ? ChoiceEntry.Never : weights.Of(table.Price[i], table.Mass?[i] ?? 0);
            }
        }

        return new(table.Scope, table.ClassOf, table.Sizes, cells, null) { Table = table };
    }

    /// <summary>A message of full cells: classes that behave alike become one.</summary>
    public static ChoiceMessage Merged(int[] scope, int[][] classOf, int[] sizes, long[] cells)
    {
        ChoiceTable table = new(scope, classOf, sizes, cells, null);
        table.Merge();
        return new(table.Scope, table.ClassOf, table.Sizes, table.Price, null);
    }

    public static ChoiceMessage Sparse(int[] scope, int[][] classOf, int[] sizes, Dictionary<long, long> cells) => new(scope, classOf, sizes, null, cells);

    public long this[long at] => Cells is not null ? Cells[at] : _sparse!.TryGetValue(at, out long cost) ? cost : ChoiceEntry.Never;

    public long Stride(int place)
    {
        long stride = 1;
        for (int i = place + 1; i < Sizes.Length; i++)
        {
            stride *= Sizes[i];
        }

        return stride;
    }

    /// <summary>The classes of one variable of the scope by its states.</summary>
    /// <param name="bit">Its bit.</param>
    /// <param name="size">How many classes it has.</param>
    /// <param name="stride">How far apart two neighbouring ones lie.</param>
    public int[] ClassesOf(ulong bit, out int size, out long stride)
    {
        int place = System.Numerics.BitOperations.PopCount(Mask & (bit - 1));
        (size, stride) = (Sizes[place], Stride(place));
        return ClassOf[place];
    }

    /// <summary>Where it is asked but for one variable of its scope; -1 where another of them goes with nothing.</summary>
    public long Beside(int variable, int[] state)
    {
        long at = 0;
        for (int i = 0; i < Scope.Length; i++)
        {
            int own = Scope[i] == variable ? 0 : ClassOf[i][state[Scope[i]]];
            if (own < 0)
            {
                return -1;
            }

            at = (at * Sizes[i]) + own;
        }

        return at;
    }

    /// <summary>The cost where every variable of the scope has a state; never where one goes with nothing.</summary>
    public long At(int[] state)
    {
        long at = 0;
        for (int i = 0; i < Scope.Length; i++)
        {
            int own = ClassOf[i][state[Scope[i]]];
            if (own < 0)
            {
                return ChoiceEntry.Never;
            }

            at = (at * Sizes[i]) + own;
        }

        return this[at];
    }
}

/// <summary>How price and mass are weighed against each other: whole numbers, not negative.</summary>
internal readonly record struct ChoiceWeights(long PerPrice, long PerMass)
{
    public static ChoiceWeights Price { get; } = new(1, 0);

    public static ChoiceWeights Mass { get; } = new(0, 1);

    public long Of(long price, long mass) => (PerPrice * price) + (PerMass * mass);
}
