namespace Lugwork.Planning;

/// <summary>A rule that asks which articles stand in its slots, whatever their interfaces.</summary>
internal abstract class ChoiceEntryRule(int[] scope) : ChoiceRule(scope)
{
    /// <summary>The class of what stands in one slot of the scope.</summary>
    /// <param name="place">Which of the scope.</param>
    /// <param name="offer">What stands there; null where nothing does.</param>
    public abstract int Of(int place, ChoiceOffer? offer);

    /// <summary>The rule in words.</summary>
    public abstract string Why { get; }

    /// <summary>The rules of what can stand in the slots of a model.</summary>
    /// <param name="slots">The slots of the model.</param>
    /// <param name="entries">What can stand in each.</param>
    /// <param name="build">The build as it is to be judged.</param>
    /// <param name="owned">The build whose parts are owned.</param>
    public static IEnumerable<ChoiceEntryRule> Of(Slot[] slots, List<ChoiceEntry>[] entries, Build build, Build owned)
    {
        foreach ((Slot companion, System.Collections.Immutable.ImmutableArray<Slot> _) in OneArticle.All)
        {
            int[] hosts = [.. OneArticle.HostsOf(companion, owned).Select(h => Array.IndexOf(slots, h)).Where(n => n >= 0)];
            int own = Array.IndexOf(slots, companion);

            // One that is swapped by itself is asked about without the part that it stood with.
            if (hosts.Length > 0 && own >= 0 && ReferenceEquals(build[companion], owned[companion]))
            {
                yield return new ChoiceTieRule([.. hosts.Append(own).Order()], own, slots, owned);
            }
        }

        int[] named = [.. Enumerable.Range(0, slots.Length).Where(n => entries[n].Exists(e => e.Offer is { } offer && (offer.Item ?? offer.Article) is not null))];
        for (int one = 0; one < named.Length; one++)
        {
            for (int other = one + 1; other < named.Length; other++)
            {
                ChoicePairRule rule = new([named[one], named[other]], slots, entries);
                if (rule.IsNeeded)
                {
                    yield return rule;
                }
            }
        }
    }
}

/// <summary>Two slots: what is there once does not stand in both, and an article that is offered for both is taken whole or not at all.</summary>
internal sealed class ChoicePairRule : ChoiceEntryRule
{
    private readonly Slot[] _slots;
    private readonly Dictionary<string, int> _items;
    private readonly Dictionary<string, int> _articles;
    private readonly List<(int Item, int Article)>[] _classes = [[], []];
    private readonly Dictionary<(int Item, int Article), int>[] _classOf = [[], []];

    public ChoicePairRule(int[] scope, Slot[] slots, List<ChoiceEntry>[] entries)
        : base(scope)
    {
        _slots = slots;
        _items = InBoth(entries, o => o.Item);
        _articles = InBoth(entries, o => o.Article);
    }

    public bool IsNeeded => _items.Count + _articles.Count > 0;

    public override string Why => $"{_slots[Scope[0]]} and {_slots[Scope[1]]}: what is there once stands in one of them, and one article is taken whole";

    public override int Of(int place, ChoiceOffer? offer)
    {
        (int Item, int Article) own = (Number(_items, offer?.Item), Number(_articles, offer?.Article));
        if (!_classOf[place].TryGetValue(own, out int at))
        {
            _classOf[place][own] = at = _classes[place].Count;
            _classes[place].Add(own);
        }

        return at;
    }

    protected override (long Price, long Mass) Judge(ReadOnlySpan<int> classes)
    {
        ((int item, int article), (int otherItem, int otherArticle)) = (_classes[0][classes[0]], _classes[1][classes[1]]);
        return (item > 0 && item == otherItem) || article != otherArticle ? (ChoiceEntry.Never, ChoiceEntry.Never) : default;
    }

    private static int Number(Dictionary<string, int> numbers, string? name) => name is null ? 0 : numbers.GetValueOrDefault(name);

    private Dictionary<string, int> InBoth(List<ChoiceEntry>[] entries, Func<ChoiceOffer, string?> name)
    {
        string[] In(int slot) => [.. entries[slot].Select(e => e.Offer is { } offer ? name(offer) : null).OfType<string>().Distinct(StringComparer.Ordinal)];
        return In(Scope[0]).Intersect(In(Scope[1]), StringComparer.Ordinal).Select((n, i) => (n, i)).ToDictionary(p => p.n, p => p.i + 1, StringComparer.Ordinal);
    }
}

/// <summary>An owned part that is one article with parts in other slots stands where one of them stands, and else not.</summary>
internal sealed class ChoiceTieRule(int[] scope, int companion, Slot[] slots, Build owned) : ChoiceEntryRule(scope)
{
    private const int IsOwned = 1;

    public override string Why => $"the owned {slots[companion]} is one article with the {string.Join(", ", Scope.Where(n => n != companion).Select(n => slots[n]))}";

    public override int Of(int place, ChoiceOffer? offer) => offer is not null && ReferenceEquals(offer.Part, owned[slots[Scope[place]]]) ? IsOwned : 0;

    protected override (long Price, long Mass) Judge(ReadOnlySpan<int> classes)
    {
        bool stands = false;
        bool host = false;
        for (int i = 0; i < classes.Length; i++)
        {
            stands |= Scope[i] == companion && classes[i] == IsOwned;
            host |= Scope[i] != companion && classes[i] == IsOwned;
        }

        return stands == host ? default : (ChoiceEntry.Never, ChoiceEntry.Never);
    }
}

/// <summary>A rule that counts: what it does not meet costs one, or cannot be; what its bridges cost is left out.</summary>
internal sealed class ChoiceCountRule : ChoiceRule
{
    private readonly ChoiceRule _rule;
    private readonly bool _isSoft;

    public ChoiceCountRule(ChoiceRule rule, bool isSoft)
        : base(rule.Scope)
    {
        _rule = rule;
        _isSoft = isSoft;
        rule.ClassOf.CopyTo(ClassOf, 0);
        rule.Classes.CopyTo(Classes, 0);
    }

    protected override (long Price, long Mass) Judge(ReadOnlySpan<int> classes) =>
        _rule.Cost(classes).Price < ChoiceEntry.Never ? default : _isSoft ? (1, 0) : (ChoiceEntry.Never, ChoiceEntry.Never);
}
