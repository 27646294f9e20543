using Lugwork.Planning;

namespace Lugwork.Tests.Planning;

/// <summary>Three bicycles of our own, each part and line worked out by hand before it was run.</summary>
public sealed class PlanningScenarioTests
{
    private static string[] Told(CarryOver over) => [.. over.Parts.Select(p => $"{p.From.Key} {p.Plan} {p.Verdict}")];

    private static string[] Ids(CostSheet sheet, params CostKind[] kinds) => [.. sheet.Lines.Where(l => kinds.Contains(l.Kind)).Select(l => l.Id)];

    /// <summary>A donor that was looked over: what is not stated otherwise is in order.</summary>
    private static Build Inspected(Build donor) => Slot.All.Where(s => s != Slot.Frame && donor[s] is { Condition.State: KnownState.Unknown })
        .Aggregate(donor, (b, s) => b.With(b[s]! with { Condition = Known<PartCondition>.Of(PartCondition.Inspected) }, s));

    private static CostSheet AllAt(CostSheet sheet, IEnumerable<Need> needs, Price price) => needs.Aggregate(sheet, (s, n) => s.WithPrice(n.Slot.Key, price));

    [Fact]
    public void A_touring_frame_takes_the_rear_end_of_a_commuter()
    {
        Build donor = Build.From(Frame.Read("kind touring; rear 12x142; seat tube 26.8"))
            .With(Wheel.Read("rear 12x142; ends swappable; body HG-L; center-lock"), Slot.RearWheel)
            .With(Cassette.Read("9-speed HG"))
            .With(Rotor.Read("160; six-bolt; lockring internal; carrier with-lockring"), Slot.RearRotor)
            .With(Caliper.Read("post; type disc-cable-road"), Slot.RearCaliper)
            .With(Seatpost.Read("26.8; mark 75; insertion 110; rails 7-round"))
            .With(Saddle.Read("7-round"))
            .With(Chain.Read("9; condition worn"));
        CarryOver over = CarryOver.Of(Inspected(donor), Frame.Read("kind touring; material steel; rear 135 QR; rear axle thread none; seat tube 27.2; leastInsertion 70; mostInsertion 250; rear brake IS-rear; largest rear rotor 180; bosses none; brake hole none"));

        // Wheel: 142 to 135 by end caps. Cassette: 9-speed on the long body, 1.85 mm. Rotor: six-bolt on its carrier, 160 of 180 mm.
        // Caliper: posts on IS tabs by an adapter. Post: 0.4 mm of shim, 110 mm in of 75 asked by its mark and 70 by the frame. Chain: worn out.
        Assert.Equal(
            ["rearWheel Moves NeedsPart", "cassette Moves NeedsPart", "rearRotor Moves Fits", "rearCaliper Moves NeedsPart", "seatpost Moves NeedsPart", "saddle Moves Fits", "chain Stays DoesNotFit"],
            Told(over));
        Assert.Equal([CostClass.Moderate, CostClass.Cheap, CostClass.Moderate, CostClass.Cheap], over.Parts.Where(p => p.Verdict == Verdict.NeedsPart).Select(p => p.BridgeClass));
        Assert.Equal(
            "fork frontWheel frontTyre rearTyre frontRotor frontCaliper frontThruAxle headset stem handlebar seatClamp bottomBracket crankset pedals chain rearDerailleur frontBrakeLever rearBrakeLever rearShifter",
            string.Join(' ', over.ToBuy.Select(n => n.Slot.Key)));
        Assert.Equal("rearWheel cassette rearRotor rearCaliper seatpost saddle", string.Join(' ', over.DonorLacks.Select(n => n.Slot).Where(s => donor[s] is not null).Select(s => s.Key)));

        Price Euro(decimal amount) => new(amount, "EUR");
        CostSheet sheet = CostSheet.Of(over);
        Assert.Equal(
            ["rear-wheel-in-frame:hub-r142-12-in-r135-qr", "cassette-on-freehub-body:cassette-hg-9-on-hg-l", "rear-caliper-on-mount:brake-adapter-is-rear-140-plus-20", "seatpost-in-seat-tube:seatpost-shim-26.8-to-27.2", "rear-caliper-bolts", "cassette-lockring", "grease", "threadlock"],
            Ids(sheet, CostKind.Bridge, CostKind.SmallPart, CostKind.Consumable, CostKind.ShopWork));
        sheet = AllAt(sheet, over.ToBuy, Euro(20)) // 19 x 20.00 = 380.00, over the counter
            .WithOwned("frame").WithOwned("grease")
            .WithPrice("rear-wheel-in-frame:hub-r142-12-in-r135-qr", Euro(24.90m), seller: "A")
            .WithPrice("cassette-on-freehub-body:cassette-hg-9-on-hg-l", Euro(2.50m), seller: "A")
            .WithPrice("rear-caliper-on-mount:brake-adapter-is-rear-140-plus-20", Euro(17.50m), seller: "A")
            .WithPrice("seatpost-in-seat-tube:seatpost-shim-26.8-to-27.2", Euro(9.90m), seller: "B")
            .WithPrice("rear-caliper-bolts", Euro(3.20m), seller: "A")
            .WithPrice("cassette-lockring", Euro(4), seller: "A")
            .WithPrice("threadlock", Euro(6), seller: "A")
            .With(new CostSeller("A", Euro(5.90m), Euro(60)))
            .With(new CostSeller("B", Euro(4.50m)))
            .With(new CostLine { Id = "press", Kind = CostKind.Tool, What = "headset press", Price = Euro(39), IsOwned = true })
            .With(new CostLine { Id = "face", Kind = CostKind.ShopWork, What = "shell faced", Price = Euro(25) })
            .With(new CostLine { Id = "old frame", Kind = CostKind.Resale, What = "the old frame", Price = Euro(150) });

        // Bridges 24.90 + 2.50 + 17.50 + 9.90 = 54.80. Small parts 3.20 + 4.00 = 7.20. A's goods 24.90 + 2.50 + 17.50 + 3.20 + 4.00 + 6.00 = 58.10,
        // below 60.00: 5.90; B 4.50. In all 380.00 + 54.80 + 7.20 + 6.00 + 0 + 25.00 + 10.40 - 150.00 = 333.40.
        Assert.Equal(
            ["Part 380.00 EUR", "Bridge 54.80 EUR", "SmallPart 7.20 EUR", "Consumable 6.00 EUR", "Tool 0.00 EUR", "ShopWork 25.00 EUR", "Postage 10.40 EUR", "Resale -150.00 EUR"],
            sheet.Groups.Select(g => $"{g.Kind} {g.Cost}"));
        Assert.Equal(CostRange.Of(Euro(333.40m)), sheet.Total);
        Assert.Equal(CostRange.Of(Euro(-565.60m)), sheet.Against(Euro(899)).Difference); // 333.40 - 899.00

        // A brake cable of 2.00 from A: 60.10, and the post is free: 333.40 + 2.00 - 5.90 = 329.50.
        sheet = sheet.With(new CostLine { Id = "cable", Kind = CostKind.SmallPart, What = "brake cable", Price = Euro(2), Seller = "A" });
        Assert.Equal(CostRange.Of(Euro(329.50m)), sheet.Total);
    }

    [Fact]
    public void A_trail_frame_leaves_much_to_be_measured()
    {
        Build donor = Build.From(Frame.Read("kind hardtail; rear 12x142; seat tube 30.9; shell BSA 73"))
            .With(Wheel.Read("rear 12x142; ends fixed; body XD; six-bolt; rim 622; rim type TC"), Slot.RearWheel)
            .With(Tyre.Read("57-622; tubeless"), Slot.RearTyre)
            .With(Cassette.Read("XD"))
            .With(Rotor.Read("203; six-bolt"), Slot.RearRotor)
            .With(Caliper.Read("post; type hydraulic disc; fluid mineral oil"), Slot.RearCaliper)
            .With(BrakeLever.Read("pull none; fluid mineral oil"), Slot.RearBrakeLever)
            .With(Seatpost.Read("30.9; mark 100; insertion 150"))
            .With(BottomBracket.Read("shell BSA 68-73; takes 24"))
            .With(RearDerailleur.Read("mount direct mount; chain 12"))
            .With(Handlebar.Read("35; material aluminium; condition crashed"));
        CarryOver over = CarryOver.Of(Inspected(donor), Frame.Read("kind hardtail; material aluminium; rear 12x148; rear axle thread M12x1.0; rear axle length 172; hanger UDH; seat tube 31.6; leastInsertion 80; mostInsertion 230; rear brake PM-160; largest rear rotor 180; shell BSA 73; bosses none; brake hole none; largest tyre 61-622"));

        // Wheel: 142 to 148 only by a kit that has to be asked for. Tyre: 57 of 61 mm, but the rim's width is not known. Rotor: 203 above 180 is unsafe.
        // Caliper: without a rotor nothing decides it. Derailleur: direct mount on a hanger by its own link. Bar: aluminium from a crash.
        Assert.Equal(
            ["rearWheel Moves NeedsMeasuring", "rearTyre Moves NeedsMeasuring", "cassette Moves Fits", "rearRotor Stays Unsafe", "rearCaliper Moves NotJudged", "seatpost Moves NeedsPart", "handlebar Stays Unsafe", "bottomBracket Moves Fits", "rearDerailleur Moves NeedsPart", "rearBrakeLever Moves Fits"],
            Told(over));
        Assert.Equal(["rearWheel", "rearTyre", "rearCaliper"], over.Open.Select(p => p.Slot.Key));
        Assert.Equal(["rearWheel", "rearTyre", "rearCaliper"], over.ToBuyUnlessMeasured.Select(n => n.Slot.Key));
        Assert.Equal(18, over.ToBuy.Length);

        Price Franc(decimal amount) => new(amount, "CHF");
        CostSheet sheet = AllAt(CostSheet.Of(over), over.ToBuy, Franc(30)) // 18 x 30.00 = 540.00
            .WithPrice("frame", Franc(650), MassRange.OfGrams(1_900))
            .WithPrice("seatpost-in-seat-tube:seatpost-shim-30.9-to-31.6", Franc(9.90m))
            .WithPrice("derailleur-on-hanger:direct-mount-derailleur-on-hanger", CostRange.Between(Franc(20), Franc(30)));
        Assert.Equal(["rear-caliper-bolts", "rear-valve", "rear-rim-tape", "rear-hose-ends"], Ids(sheet, CostKind.SmallPart));
        foreach (string small in new[] { "rear-caliper-bolts", "rear-valve", "rear-rim-tape" })
        {
            sheet = sheet.WithPrice(small, Franc(4)); // 3 x 4.00 = 12.00
        }

        Assert.Equal(["rear-sealant", "grease", "threadlock"], Ids(sheet, CostKind.Consumable));
        sheet = sheet.WithOwned("rear-sealant").WithOwned("grease").WithOwned("threadlock");

        // The kit for the wheel, and its line: perhaps.
        Assert.Contains("rear-wheel-in-frame:perhaps", Ids(sheet, CostKind.Bridge));

        // 540.00 + 650.00 + 9.90 + 20.00 + 12.00 = 1231.90 and more: hose, wheel, tyre and caliper are open.
        Assert.Equal(CostRange.AtLeast(Franc(1231.90m)), sheet.Total);
        Assert.Equal(MassRange.AtLeastGrams(1_900), sheet.Mass);

        // The hose is 18.00, wheel and tyre measured right without a kit, and a caliper costs at most 80.00: 1249.90 to 1249.90 + 10.00 + 80.00.
        sheet = sheet.WithPrice("rear-hose-ends", Franc(18)).WithOwned("rearWheel").Without("rear-wheel-in-frame:perhaps").WithOwned("rearTyre").WithPrice("rearCaliper", CostRange.AtMost(Franc(80)));
        Assert.Equal(CostRange.Between(Franc(1249.90m), Franc(1339.90m)), sheet.Total);
        Assert.Contains("between 50.10 CHF less and 39.90 CHF more", sheet.Against(Franc(1300)).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_old_road_frame_that_is_half_filled_keeps_what_it_has()
    {
        Build onto = Build.From(Frame.Read("kind road; material steel; rear 130; rear axle thread none; seat tube 27.2; leastInsertion 70; mostInsertion 250; shell Italian 70; rear brake none; brake hole recessed-6; bolt to rim 48; bolt to rim of 622; hanger M10x1; bosses none"))
            .With(BottomBracket.Read("shell Italian 70; takes JIS")).With(Stem.Read("quill 22.2; bar 26.0"));
        Build donor = Build.From(Frame.Read("kind road; rear 126; shell BSA 68"))
            .With(Wheel.Read("rear 126; body HG-M; rim 622; brake track aluminium"), Slot.RearWheel)
            .With(Crankset.Read("spindle JIS; pedals 9/16"))
            .With(Pedals.Read("9/16"))
            .With(Handlebar.Read("25.4"))
            .With(RimBrake.Read("road caliper; reach 39-49; bolt recessed; pads for aluminium"), Slot.RearRimBrake)
            .With(Seatpost.Read("25.0; mark 75; insertion 110"))
            .With(BottomBracket.Read("shell BSA 68; takes JIS"));
        CarryOver over = CarryOver.Of(Inspected(donor), onto);

        // Wheel: 126 to 130 by spacers and a rim moved over. Post: 2.2 mm of shim. Bar: 25.4 in 26.0 is pulled tight and is unsafe. Bracket: there is one;
        // the old one would not hold. Crank: how its spindle stands across this shell, and its ring beside the stay, are to be measured. Brake: 48 of 39 to 49 mm.
        Assert.Equal(
            ["rearWheel Moves NeedsPart", "seatpost Moves NeedsPart", "handlebar Stays Unsafe", "bottomBracket Spare DoesNotFit", "crankset Moves NeedsMeasuring", "pedals Moves Fits", "rearRimBrake Moves Fits"],
            Told(over));
        Assert.Equal([CostClass.Dear, CostClass.Cheap], over.WorthMoving.Where(p => p.Verdict == Verdict.NeedsPart).Select(p => p.BridgeClass));
        Assert.Same(onto[Slot.BottomBracket], over.Moved[Slot.BottomBracket]);

        // Fork, front wheel, two tyres, cassette, front axle, headset, bar, clamp, saddle, chain, derailleur, two levers, front brake, shifter: 16 at 25.50 are 408.00.
        Price Pound(decimal amount) => new(amount, "GBP");
        CostSheet sheet = over.ToBuy.Aggregate(CostSheet.Of(over), (s, n) => s.WithPrice(n.Slot.Key, Pound(25.50m), seller: "A"))
            .WithOwned("frame").WithOwned("crankset").WithOwned("grease").WithOwned("rear-skewer")
            .WithPrice("rear-wheel-in-frame:hub-r126-in-r130", Pound(3), seller: "A")
            .WithPrice("seatpost-in-seat-tube:seatpost-shim-25-to-27.2", Pound(8), seller: "A")
            .With(new CostSeller("A", Pound(6.90m), Pound(400)))
            .With(new CostLine { Id = "old bracket", Kind = CostKind.Resale, What = "the old bottom bracket", Price = Pound(12) });

        // 408.00 + 3.00 + 8.00 = 419.00 of goods, so the post is free; less 12.00: 407.00.
        Assert.Equal(16, over.ToBuy.Length);
        Assert.Equal(CostRange.Of(Pound(407)), sheet.Total);

        // The saddle over the counter: 419.00 - 25.50 = 393.50 of goods, so 6.90 of postage: 413.90.
        sheet = sheet.Change("saddle", l => l with { Seller = "" });
        Assert.Equal(CostRange.Of(Pound(413.90m)), sheet.Total);
    }
}
