using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Cost sheets: lines, groups, ranges, postage, resale, comparison.</summary>
public sealed class CostSheetTests
{
    private static Price Euro(decimal amount) => new(amount, "EUR");

    private static CostLine Line(string id, CostKind kind, CostRange price = default, string seller = "", int count = 1, bool owned = false, MassRange mass = default) =>
        new() { Id = id, Kind = kind, What = id, Price = price, Seller = seller, Count = count, IsOwned = owned, Mass = mass };

    private static CostSheet Sheet(params CostLine[] lines) => lines.Aggregate(CostSheet.Empty, (s, l) => s.With(l));

    [Theory]
    [InlineData("41.99", "5.90", "59.99")] // 41.99 + 2 x 6.05 = 54.09, below 60
    [InlineData("47.89", "5.90", "65.89")] // 59.99: a cent short, and the postage is not counted
    [InlineData("47.90", "0", "60.00")] // 60.00 is enough
    [InlineData("50.00", "0", "62.10")]
    public void Postage_is_free_from_the_sum_of_the_goods_on(string part, string postage, string total)
    {
        CostSheet sheet = Sheet(Line("part", CostKind.Part, Euro(decimal.Parse(part, null)), "A"), Line("tubes", CostKind.SmallPart, Euro(6.05m), "A", 2), Line("gift", CostKind.Tool, Euro(99), "A", owned: true))
            .With(new CostSeller("A", Euro(5.90m), Euro(60)));
        Assert.Equal(CostRange.Of(Euro(decimal.Parse(postage, null))), sheet["postage:A"]!.Cost);
        Assert.Equal(CostRange.Of(Euro(decimal.Parse(total, null))), sheet.Total);
    }

    [Fact]
    public void Each_seller_asks_for_his_own_postage_and_one_of_whom_nothing_is_bought_for_none()
    {
        CostSheet sheet = Sheet(Line("a", CostKind.Part, Euro(10), "A"), Line("b", CostKind.Part, Euro(20), "B"), Line("c", CostKind.Part, Euro(5)), Line("d", CostKind.Part, Euro(7), "D", owned: true))
            .With(new CostSeller("A", Euro(3))).With(new CostSeller("B", Euro(4), Euro(25))).With(new CostSeller("C", Euro(100))).With(new CostSeller("D", Euro(100)));
        Assert.Equal(["postage:A", "postage:B"], sheet.Lines.Where(l => l.Kind == CostKind.Postage).Select(l => l.Id));
        Assert.Equal(CostRange.Of(Euro(42)), sheet.Total);
    }

    [Fact]
    public void Sellers_whose_names_differ_in_a_letter_are_two_sellers()
    {
        CostSheet sheet = Sheet(Line("a", CostKind.Part, Euro(10), "shop"), Line("b", CostKind.Part, Euro(20), "Shop")).With(new CostSeller("shop", Euro(3))).With(new CostSeller("Shop", Euro(4)));
        Assert.Equal(["postage:shop", "postage:Shop"], sheet.Lines.Where(l => l.Kind == CostKind.Postage).Select(l => l.Id));
        Assert.Equal(CostRange.Of(Euro(37)), sheet.Total);
    }

    [Fact]
    public void Where_the_sum_of_the_goods_may_lie_on_either_side_postage_is_a_range()
    {
        CostSheet sheet = Sheet(Line("a", CostKind.Part, CostRange.Between(Euro(50), Euro(70)), "A")).With(new CostSeller("A", Euro(6), Euro(60)));
        Assert.Equal(CostRange.Between(Euro(0), Euro(6)), sheet["postage:A"]!.Cost);
        Assert.Equal(CostRange.Between(Euro(50), Euro(76)), sheet.Total);
        Assert.Equal(CostRange.AtLeast(Euro(50)), Sheet(Line("a", CostKind.Part, Euro(50), "nobody described")).Total);
        Assert.Equal("at least 50.00 EUR", Sheet(Line("a", CostKind.Part, Euro(50), "nobody described")).Total.ToString());
    }

    [Fact]
    public void What_is_unknown_is_never_nothing()
    {
        CostSheet sheet = Sheet(Line("a", CostKind.Part, Euro(50)), Line("b", CostKind.Part));
        Assert.Equal(CostRange.AtLeast(Euro(50)), sheet.Total);
        Assert.False(sheet.Total.IsExact);
        sheet = Sheet(Line("a", CostKind.Part, Euro(50)), Line("old", CostKind.Resale));
        Assert.Equal(CostRange.AtMost(Euro(50)), sheet.Total);
        sheet = Sheet(Line("a", CostKind.Part, Euro(50)), Line("b", CostKind.Part), Line("old", CostKind.Resale));
        Assert.Equal((null, null, "EUR"), (sheet.Total.Least, sheet.Total.Most, sheet.Total.Currency));
        sheet = Sheet(Line("old", CostKind.Resale, CostRange.Between(Euro(20), Euro(30)), count: 2));
        Assert.Equal((-60m, -40m), (sheet.Total.Least, sheet.Total.Most));
        Assert.Equal(CostRange.Between(Euro(0), Euro(9)), Sheet(Line("a", CostKind.Part, CostRange.AtMost(Euro(9)))).Total);
    }

    [Fact]
    public void What_is_owned_costs_nothing_and_is_ridden_all_the_same()
    {
        CostSheet sheet = Sheet(Line("post", CostKind.Part, Euro(50), owned: true, mass: MassRange.OfGrams(280)), Line("press", CostKind.Tool, Euro(60), owned: true), Line("cutter", CostKind.Tool, Euro(20.5m)));
        Assert.Equal(CostRange.Of(Euro(20.5m)), sheet.Total);
        Assert.Equal(MassRange.OfGrams(280), sheet.Mass);
        Assert.Equal(280, sheet.Mass.Least.Grams, 9);
        Assert.Equal("tools: 20.50 EUR, 2 lines", sheet.Groups.Single(g => g.Kind == CostKind.Tool).ToString());
    }

    [Fact]
    public void What_is_not_said_again_stays_on_a_line()
    {
        CostSheet sheet = Sheet(Line("post", CostKind.Part, Euro(50), "A", mass: MassRange.OfGrams(280)));
        Assert.Equal((MassRange.OfGrams(280), "A"), (sheet.WithOwned("post").Mass, sheet.WithOwned("post").WithPrice("post", Euro(40))["post"]!.Seller));
        Assert.Equal((false, MassRange.OfGrams(290), ""), sheet.WithOwned("post").WithPrice("post", Euro(40), MassRange.OfGrams(290), "")["post"] is { } line ? (line.IsOwned, line.Mass, line.Seller) : default);
    }

    [Fact]
    public void Mass_is_a_range_where_it_is_not_known()
    {
        CostSheet sheet = Sheet(Line("a", CostKind.Part, mass: MassRange.OfGrams(500)), Line("b", CostKind.SmallPart, count: 2, mass: MassRange.BetweenGrams(10.5m, 12)));
        Assert.Equal(MassRange.BetweenGrams(521, 524), sheet.Mass);
        Assert.Equal(MassRange.AtLeastGrams(521), sheet.With(Line("c", CostKind.Part)).Mass);
        Assert.Equal(MassRange.BetweenGrams(521, 524), sheet.With(Line("work", CostKind.ShopWork, Euro(30))).Mass);
        Assert.Equal(["285 g", "280 to 300.5 g", "at least 285 g", "at most 300 g", "unknown"], new[] { MassRange.OfGrams(285), MassRange.BetweenGrams(280, 300.5m), MassRange.AtLeastGrams(285), MassRange.BetweenGrams(0, 300), default }.Select(m => m.ToString()));
    }

    [Fact]
    public void Two_currencies_are_refused_with_the_parts_named()
    {
        CostSheet sheet = Sheet(Line("seatpost", CostKind.Part, Euro(20)), Line("unpriced", CostKind.Part));
        string message = Assert.Throws<ArgumentException>(() => sheet.With(Line("stem", CostKind.Part, new Price(20, "CHF")))).Message;
        Assert.Contains("seatpost in EUR", message, StringComparison.Ordinal);
        Assert.Contains("stem in CHF", message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => sheet.WithPrice("unpriced", new Price(1, "CHF")));
        Assert.Contains("postage of A in CHF", Assert.Throws<ArgumentException>(() => sheet.With(new CostSeller("A", new Price(5, "CHF")))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => sheet.With(new CostSeller("A", Euro(5), new Price(60, "CHF"))));
        Assert.Throws<ArgumentException>(() => sheet.Against(new Price(900, "CHF")));
        Assert.Throws<ArgumentException>(() => sheet.Against(default));
        Assert.Throws<ArgumentException>(() => CostRange.Between(Euro(1), new Price(2, "CHF")));
    }

    public static TheoryData<string, Func<CostLine, CostLine>> Wrong => new()
    {
        { "id", l => l with { Id = " " } },
        { "kept for the postage", l => l with { Id = "postage:A" } },
        { "what it is for", l => l with { What = "" } },
        { "kinds", l => l with { Kind = (CostKind)99 } },
        { "pieces", l => l with { Count = 0 } },
        { "pieces", l => l with { Count = 10_001 } },
        { "below 0", l => l with { Price = Euro(-1) } },
        { "seller", l => l with { Kind = CostKind.ShopWork, Seller = "A" } },
        { "seller", l => l with { Kind = CostKind.Resale, Seller = "A" } },
        { "owned", l => l with { Kind = CostKind.Resale, IsOwned = true } },
        { "mass", l => l with { Kind = CostKind.Tool, Mass = MassRange.OfGrams(1) } },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_line_that_cannot_be_is_refused_with_its_reason(string reason, Func<CostLine, CostLine> change)
    {
        CostLine good = Line("a", CostKind.Part, Euro(1));
        CostSheet sheet = Sheet(good);
        Assert.Contains(reason, Assert.Throws<ArgumentException>(() => CostSheet.Empty.With(change(good))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => sheet.Change("a", change));
    }

    [Fact]
    public void An_id_stands_once_and_has_to_be_there_to_be_priced()
    {
        CostSheet sheet = Sheet(Line("a", CostKind.Part), Line("b", CostKind.Part));
        Assert.Throws<ArgumentException>(() => sheet.With(Line("a", CostKind.Tool)));
        Assert.Throws<ArgumentException>(() => sheet.Change("a", l => l with { Id = "b" }));
        Assert.Throws<ArgumentException>(() => sheet.WithPrice("c", Euro(1)));
        Assert.Throws<ArgumentException>(() => sheet.WithOwned("c"));
        Assert.Equal(["b"], sheet.Without("a").Without("c").Lines.Select(l => l.Id));
        Assert.Throws<ArgumentException>(() => sheet.With(new CostSeller("", Euro(1))));
        Assert.Throws<ArgumentException>(() => sheet.With(new CostSeller("A", Euro(-1))));
        Assert.Throws<ArgumentException>(() => sheet.With(new CostSeller("A", Euro(1), default(Price))));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(500_001)]
    public void A_mass_out_of_range_is_refused(int grams)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MassRange.OfGrams(grams));
        Assert.Throws<ArgumentOutOfRangeException>(() => MassRange.AtLeastGrams(grams));
        Assert.Throws<ArgumentException>(() => MassRange.OfGrams(0.0001m));
        Assert.Throws<ArgumentOutOfRangeException>(() => MassRange.BetweenGrams(2, 1));
    }

    [Fact]
    public void A_range_writes_its_ends_and_is_never_rounded()
    {
        Assert.Equal(["12.50 EUR", "10.00 to 15.3333 EUR", "at least 10.00 EUR", "at most 15.00 EUR", "unknown"], new[] { Euro(12.5m), CostRange.Between(Euro(10), Euro(15.3333m)), CostRange.AtLeast(Euro(10)), CostRange.AtMost(Euro(15)), default }.Select(r => r.ToString()));
        Assert.Equal(CostRange.Of(Euro(0.9999m)), Sheet(Line("a", CostKind.Part, Euro(0.3333m), count: 3)).Total);
        Assert.True(CostRange.Between(Euro(1), Euro(2)).Holds(Euro(2)));
        Assert.False(CostRange.Between(Euro(1), Euro(2)).Holds(Euro(2.0001m)));
        Assert.False(CostRange.Between(Euro(1), Euro(2)).Holds(new Price(1.5m, "CHF")));
        Assert.True(CostRange.Unknown.Holds(Euro(-5)));
        Assert.Throws<ArgumentException>(() => CostRange.Between(Euro(2), Euro(1)));
        Assert.Throws<ArgumentException>(() => CostRange.Of(default));
        Assert.Equal(CostRange.Unknown, CostSheet.Empty.With(Line("a", CostKind.Part)).Lines[0].Price);
    }

    [Fact]
    public void A_build_draws_its_own_lines()
    {
        Build build = Build.From(Frame.Read("seat tube 27.2; rear brake none; rear axle thread M12x1.5"))
            .With(Seatpost.Read("26.8")).With(Chain.Read("9")).With(Dropper.Read("internal")).With(Rider.Read("82 kg")).With(Controls.Read("flat-bar control")).With(BrakeLever.Read("pull short"), Slot.FrontBrakeLever);
        CostSheet sheet = CostSheet.Of(build);
        Assert.Equal(CostKind.Bridge, sheet["seatpost-in-seat-tube:seatpost-shim-26.8-to-27.2"]!.Kind);
        Assert.Equal(CostKind.SmallPart, sheet["quick-link"]!.Kind);
        Assert.Equal(CostKind.Consumable, sheet["grease"]!.Kind);
        Assert.Contains("still to be chosen", sheet["fork"]!.What, StringComparison.Ordinal);

        // An axle that is missing stands once; who rides, how the post is lowered and how levers are clamped are bought nowhere.
        Assert.NotNull(sheet["rearThruAxle"]);
        Assert.Null(sheet["rear-axle"]);
        Assert.Null(sheet["rider"]);
        Assert.Null(sheet["dropper"]);
        Assert.Null(sheet["controls"]);
        Assert.Same(build, sheet.Build);

        // What may be needed is a line as well.
        CostSheet open = CostSheet.Of(Build.From(Frame.Read("seat tube 27.2 | 27.4")).With(Seatpost.Read("26.8")));
        CostLine perhaps = open["seatpost-in-seat-tube:perhaps"]!;
        Assert.Equal((CostKind.Bridge, false), (perhaps.Kind, perhaps.Cost.IsExact));
        Assert.Contains("shim", perhaps.What, StringComparison.Ordinal);
        CostSheet spread = CostSheet.Of(Build.From(Frame.Read("rear 130; material steel")).With(Wheel.Read("rear 135 QR"), Slot.RearWheel));
        Assert.Equal(CostKind.ShopWork, spread["rear-wheel-in-frame:hub-r135-qr-in-r130"]!.Kind);
    }

    [Fact]
    public void A_complete_bicycle_is_compared_in_cost_mass_and_slots()
    {
        Build ours = Build.From(Frame.Read("seat tube 27.2")).With(Seatpost.Read("27.2") with { Name = "the light one" }).With(Saddle.Read("7-round"));
        Build theirs = Build.From(Frame.Read("seat tube 27.2")).With(Seatpost.Read("27.2; material aluminium") with { Name = "the heavy one" }).With(Chain.Read("9"));
        CostSheet sheet = Sheet(Line("a", CostKind.Part, CostRange.Between(Euro(700), Euro(950)), mass: MassRange.BetweenGrams(9_000, 9_500)));
        CostComparison compared = sheet.Against(Euro(899), null, MassRange.OfGrams(9_800));
        Assert.Equal((-199m, 51m), (compared.Difference.Least, compared.Difference.Most));
        Assert.Contains("between 199.00 EUR less and 51.00 EUR more", compared.ToString(), StringComparison.Ordinal);
        Assert.Equal((-800, -300), (Math.Round(compared.LeastMassMore!.Value.Grams), Math.Round(compared.MostMassMore!.Value.Grams)));
        Assert.Empty(compared.Differs);

        compared = CostSheet.Of(ours).Against(Euro(899), theirs);
        Assert.Equal([Slot.Seatpost, Slot.Saddle, Slot.Chain], compared.Differs.Select(d => d.Slot));
        Assert.Equal([new CostField("material", "not stated", "aluminium")], compared.Differs[0].Fields);
        Assert.Equal((true, false), (compared.Differs[2].Ours is null, compared.Differs[2].Theirs is null));
        Assert.Contains("the light one against the heavy one; material not stated against aluminium", compared.ToString(), StringComparison.Ordinal);
        Assert.Empty(CostSheet.Of(ours).Against(Euro(899), ours).Differs);
    }

    [Theory]
    [InlineData("899", "899", "as much")]
    [InlineData("700", "899", "199.00 EUR less")]
    [InlineData("900", "899", "1.00 EUR more")]
    public void The_saving_is_said_in_words(string ours, string complete, string said) =>
        Assert.Contains(said, Sheet(Line("a", CostKind.Part, Euro(decimal.Parse(ours, null)))).Against(Euro(decimal.Parse(complete, null))).ToString(), StringComparison.Ordinal);

    [Fact]
    public void What_is_open_makes_the_saving_open()
    {
        CostSheet sheet = Sheet(Line("a", CostKind.Part, Euro(700)), Line("b", CostKind.Part));
        Assert.Contains("bicycle 899.00 EUR: 99.00 to 199.00 EUR less.", Sheet(Line("a", CostKind.Part, CostRange.Between(Euro(700), Euro(800)))).Against(Euro(899)).ToString(), StringComparison.Ordinal);
        Assert.Contains("bicycle 650.00 EUR: 50.00 to 150.00 EUR more.", Sheet(Line("a", CostKind.Part, CostRange.Between(Euro(700), Euro(800)))).Against(Euro(650)).ToString(), StringComparison.Ordinal);
        Assert.Contains("at most 199.00 EUR less", sheet.Against(Euro(899)).ToString(), StringComparison.Ordinal);
        Assert.Contains("at least 1.00 EUR more", sheet.Against(Euro(699)).ToString(), StringComparison.Ordinal);
        sheet = Sheet(Line("a", CostKind.Part, Euro(700)), Line("b", CostKind.Resale));
        Assert.Contains("at least 199.00 EUR less", sheet.Against(Euro(899)).ToString(), StringComparison.Ordinal);
        Assert.Contains("not known", sheet.With(Line("c", CostKind.Part)).Against(Euro(899)).ToString(), StringComparison.Ordinal);
        Assert.Null(sheet.With(Line("c", CostKind.Part)).Against(Euro(899)).MostMassMore);
        Assert.Null(sheet.Against(Euro(899)).LeastMassMore);
    }

    [Fact]
    public void A_rotor_asks_for_one_lockring()
    {
        static string[] Rings(string rotor) => [.. CostSheet.Of(Build.From(Frame.Read("steel")).With(Wheel.Read("hub R142-12; center-lock"), Slot.RearWheel).With(Rotor.Read(rotor), Slot.RearRotor)).Lines.Select(l => l.Id).Where(i => i.Contains("lockring", StringComparison.Ordinal))];
        Assert.Equal(["rear-lockring-on-hub-axle:lockring-internal"], Rings("160; center-lock; lockring none"));
        Assert.Equal(["rear-rotor-lockring"], Rings("160; center-lock"));
        Assert.Empty(Rings("160; center-lock; lockring internal"));
    }

    [Fact]
    public void A_comparison_in_two_currencies_names_the_line()
    {
        CostSheet sheet = Sheet(Line("tape", CostKind.SmallPart), Line("saddle", CostKind.Part, Euro(40)));
        string said = Assert.Throws<ArgumentException>(() => sheet.Against(new Price(900, "CHF"))).Message;
        Assert.Contains("saddle in EUR", said, StringComparison.Ordinal);
        Assert.Contains("the complete bicycle in CHF", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_new_build_has_is_owned()
    {
        Build onto = Build.From(Frame.Read("seat tube 27.2")).With(Stem.Read("28.6 clamp; bar 31.8"));
        CostSheet sheet = CostSheet.Of(CarryOver.Of(Build.From(Frame.Read("steel")), onto));
        Assert.True(sheet["stem"]!.IsOwned);
        Assert.False(sheet["frame"]!.IsOwned || sheet["fork"]!.IsOwned);
    }
}
