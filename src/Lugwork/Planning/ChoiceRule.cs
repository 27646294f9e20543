namespace Lugwork.Planning;

/// <summary>Something that the parts of several slots have to meet together, and what meeting it costs: a joint, or that a required slot is filled. Parts that it cannot tell apart are of one class.</summary>
internal abstract class ChoiceRule(int[] scope)
{
    private const int MostDense = 1 << 22;

    private readonly List<(long Price, long Mass)> _costs = [(ChoiceEntry.Never, ChoiceEntry.Never), (0, 0)];
    private int[]? _dense;
    private Dictionary<long, int>? _sparse;

    /// <summary>The slots that it is about, by their numbers in the model, ascending.</summary>
    public int[] Scope { get; } = scope;

    /// <summary>For each slot of the scope and each group its class.</summary>
    public int[][] ClassOf { get; } = new int[scope.Length][];

    /// <summary>How many classes each slot of the scope has.</summary>
    public int[] Classes { get; } = new int[scope.Length];

    /// <summary>The most that it can cost where it is met.</summary>
    public virtual (long Price, long Mass) Most => default;

    /// <summary>What one class of each slot costs together; never where they do not go together. Asked once for each combination.</summary>
    public (long Price, long Mass) Cost(ReadOnlySpan<int> classes)
    {
        long at = 0;
        for (int i = 0; i < classes.Length; i++)
        {
            at = (at * Classes[i]) + classes[i];
        }

        if (_dense is null && _sparse is null)
        {
            long cells = 1;
            foreach (int count in Classes)
            {
                cells = cells > MostDense ? cells : cells * count;
            }

            _dense = cells <= MostDense ? new int[cells] : null;
            _sparse = _dense is null ? [] : null;
        }

        int known = _dense is not null ? _dense[at] : _sparse!.GetValueOrDefault(at);
        if (known == 0)
        {
            (long Price, long Mass) cost = Judge(classes);
            known = cost.Price == ChoiceEntry.Never ? 1 : 1 + NumberOf(cost);
            if (_dense is not null)
            {
                _dense[at] = known;
            }
            else
            {
                _sparse![at] = known;
            }
        }

        return _costs[known - 1];
    }

    protected abstract (long Price, long Mass) Judge(ReadOnlySpan<int> classes);

    private int NumberOf((long Price, long Mass) cost)
    {
        int at = _costs.IndexOf(cost);
        if (at < 0)
        {
            at = _costs.Count;
            _costs.Add(cost);
        }

        return at;
    }
}
