using System.Collections.Immutable;
using System.Text;

namespace Lugwork.Planning;

/// <summary>What a bicycle costs and weighs, line by line. Immutable; every change makes another sheet.</summary>
/// <remarks>
/// Sums are exact decimals in one currency; nothing is rounded. What is not known stays open: a line without a price makes the total "at least", a resale of which nothing is known makes it
/// "at most". A total that becomes known always lies in the range that was given before.
/// </remarks>
public sealed class CostSheet
{
    private readonly ImmutableArray<CostLine> _given;

    private CostSheet(Build? build, ImmutableArray<CostLine> given, ImmutableArray<CostSeller> sellers)
    {
        (Build, _given, Sellers) = (build, given, sellers);
        Currency = CurrencyOf(given, sellers);
        Lines = [.. given.Concat(CostPostage.Lines(given, sellers, Currency)).OrderBy(l => l.Kind)];
        Groups = [.. Lines.GroupBy(l => l.Kind).Select(g => new CostGroup(g.Key, [.. g], Sum(g), g.Aggregate(MassRange.Nothing, (sum, l) => sum.Plus(l.TotalMass))))];
        Total = Sum(Lines);
        Mass = Lines.Aggregate(MassRange.Nothing, (sum, l) => sum.Plus(l.TotalMass));
    }

    /// <summary>A sheet without lines.</summary>
    public static CostSheet Empty { get; } = new(null, [], []);

    /// <summary>The build that the lines were drawn from; null where none.</summary>
    public Build? Build { get; }

    /// <summary>The sellers that are described.</summary>
    public ImmutableArray<CostSeller> Sellers { get; }

    /// <summary>Three letters of ISO 4217; empty where no price is known.</summary>
    public string Currency { get; }

    /// <summary>Every line by kind, the postage of sellers among them; within a kind as they came.</summary>
    public ImmutableArray<CostLine> Lines { get; }

    /// <summary>The kinds that have lines, each with its sums.</summary>
    public ImmutableArray<CostGroup> Groups { get; }

    /// <summary>What it costs in all, resale taken off.</summary>
    public CostRange Total { get; }

    /// <summary>What is ridden weighs.</summary>
    public MassRange Mass { get; }

    /// <summary>The sheet of a build, without prices: its parts, what it lacks, its bridges, small parts, what is used up, and shop work. What a joint may take once it is measured is a line of unknown price.</summary>
    /// <param name="build">Any build.</param>
    public static CostSheet Of(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return new(build, [.. CostDraft.Lines(build)], []);
    }

    /// <summary>The same of the new build of a carry-over. What moves and fits is owned, and so are the parts that the new build has, save its frame; what is to be measured or looked over first has an unknown price, for it may have to be bought: <see cref="WithOwned"/> says that it measured right.</summary>
    /// <param name="carried">A carry-over.</param>
    public static CostSheet Of(CarryOver carried)
    {
        ArgumentNullException.ThrowIfNull(carried);
        Dictionary<string, bool> moving = carried.Parts.Where(p => p.Plan == CarryDecision.Moves).ToDictionary(p => p.Slot.Key, p => p.IsWorthMoving);
        return new(carried.Moved, [.. CostDraft.Lines(carried.Moved).Select(Line)], []);

        bool IsThere(CostLine line) => line is { Kind: CostKind.Part, Slot: { } slot } && slot != Slot.Frame && carried.Onto[slot] is not null;

        CostLine Line(CostLine line) => IsThere(line) ? line with { IsOwned = true }
            : !moving.TryGetValue(line.Id, out bool fits) ? line
            : fits ? line with { IsOwned = true }
            : line with { What = $"{line.What}, to be bought unless the old one fits" };
    }

    /// <summary>The line of an id; null where there is none.</summary>
    /// <param name="id">An id.</param>
    public CostLine? this[string id] => Lines.FirstOrDefault(l => l.Id == id);

    /// <summary>The same with another line.</summary>
    /// <param name="line">A line of an id that is not there.</param>
    /// <exception cref="ArgumentException">The id is there, the line carries what its kind may not, or its currency is another; the message names what is wrong.</exception>
    public CostSheet With(CostLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return this[line.Id] is null ? new(Build, _given.Add(line.Checked()), Sellers) : throw new ArgumentException($"there is a line of the id {line.Id}", nameof(line));
    }

    /// <summary>The same with a seller; one of the same name goes.</summary>
    /// <param name="seller">A seller.</param>
    /// <exception cref="ArgumentException">He has no name, a sum is below 0, or its currency is another.</exception>
    public CostSheet With(CostSeller seller)
    {
        ArgumentNullException.ThrowIfNull(seller);
        return new(Build, _given, [.. Sellers.Where(s => s.Name != seller.Name), seller.Checked()]);
    }

    /// <summary>The same without a line; nothing changes where it is not there.</summary>
    /// <param name="id">Its id.</param>
    public CostSheet Without(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return new(Build, _given.RemoveAll(l => l.Id == id), Sellers);
    }

    /// <summary>The same with a line changed.</summary>
    /// <param name="id">Its id; a part's is the key of its slot.</param>
    /// <param name="change">Gives the changed line.</param>
    /// <exception cref="ArgumentException">There is no such line, or it may not stand so.</exception>
    public CostSheet WithChange(string id, Func<CostLine, CostLine> change)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(change);
        CostLine line = _given.FirstOrDefault(l => l.Id == id) ?? throw new ArgumentException($"there is no line of the id {id}", nameof(id));
        CostLine changed = change(line).Checked();
        return changed.Id == id || this[changed.Id] is null ? new(Build, _given.Replace(line, changed), Sellers) : throw new ArgumentException($"there is a line of the id {changed.Id}", nameof(change));
    }

    /// <summary>The same with a price, a mass and a seller on a line, which is not owned then.</summary>
    /// <param name="id">Its id; a part's is the key of its slot.</param>
    /// <param name="price">The price of one piece; a default is unknown.</param>
    /// <param name="mass">The mass of one piece; a default leaves what the line has.</param>
    /// <param name="seller">Who sends it, empty where it does not come by post; null leaves what the line has.</param>
    /// <exception cref="ArgumentException">There is no such line, or it may not stand so.</exception>
    public CostSheet WithPrice(string id, CostRange price, MassRange mass = default, string? seller = null) =>
        WithChange(id, l => l with { Price = price, Mass = mass == MassRange.Unknown ? l.Mass : mass, Seller = seller ?? l.Seller, IsOwned = false });

    /// <summary>The same with a line that is owned.</summary>
    /// <param name="id">Its id; a part's is the key of its slot.</param>
    /// <param name="mass">The mass of one piece; a default leaves what the line has.</param>
    /// <exception cref="ArgumentException">There is no such line, or its kind cannot be owned.</exception>
    public CostSheet WithOwned(string id, MassRange mass = default) => WithChange(id, l => l with { IsOwned = true, Mass = mass == MassRange.Unknown ? l.Mass : mass });

    /// <summary>What the bicycle costs more or less than a complete one, and what the difference buys.</summary>
    /// <param name="complete">The price of the complete bicycle.</param>
    /// <param name="theirs">The complete bicycle; null where it is not described.</param>
    /// <param name="mass">Its mass; a default is unknown.</param>
    /// <exception cref="ArgumentException">The price is in another currency or a default.</exception>
    public CostComparison Against(Price complete, Build? theirs = null, MassRange mass = default) => new(this, complete, theirs, mass);

    /// <summary>The groups with their lines, then cost and mass in all.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        foreach (CostGroup group in Groups)
        {
            text.Append(group).AppendLine();
            foreach (CostLine line in group.Lines)
            {
                text.Append("  ").Append(line).AppendLine();
            }
        }

        return text.Append("In all: ").Append(Total).Append("; mass ").Append(Mass).ToString();
    }

    private CostRange Sum(IEnumerable<CostLine> lines) => lines.Aggregate(CostRange.Nothing(Currency), (sum, l) => sum.Plus(l.Cost));

    private static string CurrencyOf(ImmutableArray<CostLine> lines, ImmutableArray<CostSeller> sellers) => Price.OneCurrency(Ends(lines, sellers)) ?? "";

    /// <summary>What is priced on a sheet, in words, with a price of its currency.</summary>
    internal static IEnumerable<(string What, Price Price)> WithPrice(CostSheet sheet) => Ends(sheet._given, sheet.Sellers);

    private static IEnumerable<(string What, Price Price)> Ends(ImmutableArray<CostLine> lines, ImmutableArray<CostSeller> sellers) =>
    [
        .. lines.SelectMany(l => Ends(l.What, l.Price)),
        .. sellers.SelectMany(s => Ends($"postage of {s.Name}", s.Postage)),
        .. sellers.Where(s => s.FreeFrom is not null).Select(s => ($"free sum of {s.Name}", s.FreeFrom!.Value)),
    ];

    private static IEnumerable<(string What, Price Price)> Ends(string what, CostRange range) =>
        (range.Least ?? range.Most) is { } end ? [(what, new Price(end, range.Currency))] : [];
}
