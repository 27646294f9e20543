using FsCheck;
using FsCheck.Xunit;
using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>What holds for every cost sheet.</summary>
public sealed class CostLaws
{
    private static readonly string[] Names = ["", "A", "B", "C"];

    private static Price Euro(decimal amount) => new(amount, "EUR");

    private static decimal Amount(Random random) => random.Next(4) == 0 ? random.Next(0, 40) * 5 : random.Next(0, 2_000_000) / 10_000m;

    /// <summary>A sheet of which everything is known; sums meet the free sums often.</summary>
    private static CostLine[] Lines(Random random) =>
        [.. Enumerable.Range(0, random.Next(1, 14)).Select(i =>
        {
            CostKind[] kinds = [.. Enum.GetValues<CostKind>()];
            CostKind kind = kinds[random.Next(kinds.Length)];
            bool posted = kind is not (CostKind.ShopWork or CostKind.Postage or CostKind.Resale);
            bool ridden = posted && kind != CostKind.Tool;
            return new CostLine
            {
                Id = $"line {i}", Kind = kind, What = $"what {i}", Price = Euro(Amount(random)), Count = random.Next(1, 4),
                Seller = posted ? Names[random.Next(Names.Length)] : "", IsOwned = posted && random.Next(5) == 0,
                Mass = ridden ? MassRange.OfGrams(random.Next(0, 3_000_000) / 1_000m) : default,
            };
        })];

    private static CostSeller[] Sellers(Random random) =>
        [.. Names.Skip(1).Select(n => new CostSeller(n, Euro(random.Next(0, 900) / 100m), random.Next(3) == 0 ? null : Euro(random.Next(0, 40) * 5)))];

    private static CostSheet Sheet(IEnumerable<CostLine> lines, IEnumerable<CostSeller> sellers) =>
        sellers.Aggregate(lines.Aggregate(CostSheet.Empty, (s, l) => s.With(l)), (s, seller) => s.With(seller));

    [Property(MaxTest = 1_000)]
    public bool A_total_is_the_sum_of_its_groups_and_of_plain_arithmetic(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CostLine[] lines = Lines(random);
        CostSeller[] sellers = Sellers(random);
        CostSheet sheet = Sheet(lines, sellers);
        decimal plain = 0;
        decimal grams = 0;
        foreach (CostLine line in lines)
        {
            plain += line.IsOwned ? 0 : (line.Kind == CostKind.Resale ? -1 : 1) * line.Price.Least!.Value * line.Count;
            grams += line.Mass.LeastGrams * line.Count;
        }

        foreach (CostSeller seller in sellers)
        {
            CostLine[] sent = [.. lines.Where(l => l.Seller == seller.Name && !l.IsOwned)];
            decimal goods = sent.Sum(l => l.Price.Least!.Value * l.Count);
            plain += sent.Length > 0 && !(seller.FreeFrom is { } free && goods >= free.Amount) ? seller.Postage.Least!.Value : 0;
        }

        return sheet.Total.Least == plain && sheet.Total.Most == plain
            && sheet.Groups.Sum(g => g.Cost.Least) == plain && sheet.Groups.Sum(g => g.Cost.Most) == plain
            && sheet.Mass.LeastGrams == grams && sheet.Mass.MostGrams == grams && sheet.Groups.Sum(g => g.Mass.LeastGrams) == grams
            && sheet.Groups.SelectMany(g => g.Lines).SequenceEqual(sheet.Lines);
    }

    [Property(MaxTest = 1_000)]
    public bool A_total_lies_in_every_range_from_before_it_was_known(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CostLine[] lines = Lines(random);
        CostSeller[] sellers = Sellers(random);
        CostSheet full = Sheet(lines, sellers);
        CostSheet before = Sheet(lines.Select(l => l with { Price = Forget(l.Price, random), Mass = ForgetMass(l, random) }), sellers.Where(_ => random.Next(6) != 0).Select(s => s with { Postage = Forget(s.Postage, random) }));
        decimal total = full.Total.Least!.Value;
        return (before.Total.Least ?? total) <= total && total <= (before.Total.Most ?? total) && before.Mass.HoldsGrams(full.Mass.LeastGrams);
    }

    private static CostRange Forget(CostRange exact, Random random)
    {
        decimal amount = exact.Least!.Value;
        Price Near(int way) => Euro(Math.Max(0, amount + (way * (random.Next(3) == 0 ? 0 : random.Next(0, 500) / 10m))));
        return random.Next(6) switch
        {
            0 => CostRange.Unknown,
            1 => CostRange.AtLeast(Near(-1)),
            2 => CostRange.AtMost(Near(1)),
            3 => CostRange.Between(Near(-1), Near(1)),
            _ => exact,
        };
    }

    private static MassRange ForgetMass(CostLine line, Random random)
    {
        decimal grams = line.Mass.LeastGrams;
        return line.Mass == MassRange.Unknown ? line.Mass : random.Next(4) switch
        {
            0 => MassRange.Unknown,
            1 => MassRange.AtLeastGrams(grams / 2 is var half ? decimal.Floor(half) : 0),
            2 => MassRange.BetweenGrams(decimal.Floor(grams), decimal.Ceiling(grams)),
            _ => line.Mass,
        };
    }

    [Property(MaxTest = 500)]
    public bool Postage_never_rises_by_a_line_above_the_free_sum_and_no_line_makes_it_rise_where_something_is_bought_already(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CostSheet sheet = Sheet(Lines(random), Sellers(random));
        CostLine more = new() { Id = "one more", Kind = CostKind.SmallPart, What = "one more", Price = Euro(Amount(random)), Seller = Names[random.Next(1, Names.Length)] };
        CostSheet after = sheet.With(more);
        CostSeller seller = sheet.Sellers.Single(s => s.Name == more.Seller);
        decimal? was = sheet["postage:" + more.Seller]?.Cost.Least;
        decimal now = after["postage:" + more.Seller]!.Cost.Least!.Value;
        bool others = Names.Where(n => n.Length > 0 && n != more.Seller).All(n => sheet["postage:" + n]?.Cost == after["postage:" + n]?.Cost);
        bool free = seller.FreeFrom is { } from && after.Lines.Where(l => l.Seller == more.Seller && !l.IsOwned).Sum(l => l.Cost.Least) >= from.Amount;
        return others && (was is not { } before || now <= before) && now == (free ? 0 : seller.Postage.Least!.Value);
    }

    [Property(MaxTest = 100)]
    public bool The_order_of_lines_and_sellers_never_matters(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CostLine[] lines = Lines(random);
        CostSeller[] sellers = Sellers(random);
        CostSheet one = Sheet(lines, sellers);
        CostSheet other = Sheet(lines.OrderBy(_ => random.Next()), sellers.OrderBy(_ => random.Next()));
        return one.Total == other.Total && one.Mass == other.Mass;
    }

    [Property(MaxTest = 100)]
    public bool What_is_sold_comes_off_and_what_is_owned_falls_away_to_the_cent(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        CostSheet sheet = Sheet(Lines(random), Sellers(random));
        CostSheet counter = Sheet(Lines(random).Select(l => l with { Seller = "" }), []);
        CostLine sold = new() { Id = "sold", Kind = CostKind.Resale, What = "sold", Price = Euro(Amount(random)) };
        return sheet.With(sold).Total.Most == sheet.Total.Most - sold.Price.Most
            && counter.Lines.Where(l => l.Kind is CostKind.Part or CostKind.Tool).All(l => counter.WithOwned(l.Id, l.Mass).Total.Most == counter.Total.Most - l.Cost.Most);
    }
}
