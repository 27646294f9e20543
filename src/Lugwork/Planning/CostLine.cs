using System.Text;

namespace Lugwork.Planning;

/// <summary>One line of a cost sheet. What it may carry is checked when it is put into a sheet.</summary>
public sealed record CostLine
{
    /// <summary>How many pieces one line has at most.</summary>
    public static int MostCount => CountLimit;

    // For patterns and attributes, which take constants alone; a public one would be copied into callers.
    internal const int CountLimit = 10_000;

    /// <summary>By which it is found again, once in a sheet: of a part the key of its slot ("rearWheel"), of a small part or bridge its permanent id, else a name of the caller's own.</summary>
    public required string Id { get; init; }

    /// <summary>What it is for.</summary>
    public required CostKind Kind { get; init; }

    /// <summary>What to buy, have or sell, in words.</summary>
    public required string What { get; init; }

    /// <summary>The slot that it fills; null where none.</summary>
    public Slot? Slot { get; init; }

    /// <summary>The price of one piece, never below 0; of a resale what one piece brings. The default is unknown.</summary>
    public CostRange Price { get; init; }

    /// <summary>The mass of one piece; the default is unknown. Only what is ridden has one.</summary>
    public MassRange Mass { get; init; }

    /// <summary>How many pieces, 1 to 10,000.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Who sends it; empty where it does not come by post.</summary>
    public string Seller { get; init; } = "";

    /// <summary>It is there already and costs nothing, whatever its price; its mass counts.</summary>
    public bool IsOwned { get; init; }

    /// <summary>What the whole line costs: 0 where it is owned, below 0 for a resale.</summary>
    public CostRange Cost => IsOwned ? CostRange.Nothing(Price.Currency)
        : Kind == CostKind.Resale ? Price.AsPrice().Times(Count).Negated()
        : Price.AsPrice().Times(Count);

    /// <summary>What the whole line adds to the bicycle's mass; nothing for what is not ridden.</summary>
    public MassRange TotalMass => CostKinds.IsRidden(Kind) ? Mass.Times(Count) : MassRange.Nothing;

    /// <summary>"2 x inner tube: 13.00 EUR, 240 g".</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        text.Append(Count == 1 ? "" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Count} x ")).Append(What).Append(": ");
        text.Append(IsOwned ? "owned" : Price.AsPrice() is { Most: null, Least: 0 } ? "price unknown" : Cost.ToString());
        return text.Append(Seller.Length > 0 ? $" from {Seller}" : "").Append(TotalMass == MassRange.Unknown || !CostKinds.IsRidden(Kind) ? "" : $", {TotalMass}").ToString();
    }

    /// <summary>The line, if it may stand in a sheet.</summary>
    /// <exception cref="ArgumentException">With the reason.</exception>
    internal CostLine Checked()
    {
        string? wrong =
            string.IsNullOrWhiteSpace(Id) ? "a line needs an id"
            : Id.StartsWith(CostPostage.Start, StringComparison.Ordinal) ? $"ids that start with \"{CostPostage.Start}\" are kept for the postage of sellers"
            : string.IsNullOrWhiteSpace(What) ? "a line says what it is for"
            : !Enum.IsDefined(Kind) ? "a line has one of the kinds"
            : Count is < 1 or > CountLimit ? $"a line is for 1 to {MostCount} pieces"
            : Price.Least < 0 || Price.Most < 0 ? "a price is not below 0; what leftovers bring is a line of kind resale"
            : Seller is null || (Seller.Length > 0 && !CostKinds.IsPosted(Kind)) ? $"no seller sends {CostKinds.InWords(Kind)}"
            : IsOwned && !CostKinds.IsPosted(Kind) ? $"{CostKinds.InWords(Kind)} cannot be owned"
            : Mass != MassRange.Unknown && !CostKinds.IsRidden(Kind) ? $"{CostKinds.InWords(Kind)} add no mass to the bicycle"
            : null;
        return wrong is null ? this : throw new ArgumentException($"{Id}: {wrong}");
    }
}
