#:package Lugwork@1.0.0-rc.1
// A commuter gives its parts to a bare frame: what moves, what it takes, and what that costs beside a new bicycle.
using Lugwork;
using Lugwork.Planning;

Price Euro(decimal amount) => new(amount, "EUR");

Build donor = Build.From(Frame.Read("rear 12x142; seat tube 26.8"), "commuter")
    .With(Wheel.Read("rear 12x142; ends swappable; body HG-L; center-lock; condition inspected"), Slot.RearWheel)
    .With(Cassette.Read("9-speed HG; condition inspected"))
    .With(Rotor.Read("203; center-lock; lockring internal; condition inspected"), Slot.RearRotor)
    .With(Seatpost.Read("26.8; mark 75; insertion 110; rails 7-round"))
    .With(Saddle.Read("7-round; condition inspected"))
    .With(Handlebar.Read("25.4; material aluminium; condition crashed"))
    .With(Chain.Read("9; condition worn"));
Frame frame = Frame.Read("material steel; rear 135 QR; rear axle thread none; seat tube 27.2; least insertion 70; most insertion 250; rear brake IS-rear; largest rear rotor 180");

CarryOver over = CarryOver.Of(donor, frame);
foreach (CarriedPart part in over.Parts)
{
    Console.WriteLine(part);
}

Console.WriteLine($"Still to buy: {string.Join(", ", over.ToBuy.Select(n => n.Slot))}.");
Console.WriteLine();

// The post was looked over and is sound. Some lines make a cost sheet of it; what has no price yet keeps the total open.
CostSheet sheet = CostSheet.Of(over).WithOwned("frame").WithOwned("seatpost").WithOwned("grease")
    .WithPrice("rear-wheel-in-frame:hub-r142-12-in-r135-qr", Euro(24.90m), MassRange.OfGrams(45), "the shop")
    .WithPrice("cassette-on-freehub-body:cassette-hg-9-on-hg-l", Euro(2.50m), MassRange.OfGrams(6), "the shop")
    .WithPrice("seatpost-in-seat-tube:seatpost-shim-26.8-to-27.2", CostRange.Between(Euro(8), Euro(12)), seller: "the shop")
    .With(new CostSeller("the shop", Postage: Euro(5.90m), FreeFrom: Euro(60)));
Console.WriteLine(string.Join(Environment.NewLine, sheet.Groups));
Console.WriteLine($"so far: {sheet.Total}");

// The rest for a round sum, and the old frame sold.
sheet = over.ToBuy.Aggregate(sheet, (s, need) => s.WithPrice(need.Slot.Key, Euro(30), seller: "the shop")).WithPrice("cassette-lockring", Euro(4), seller: "the shop")
    .With(new CostLine { Id = "old frame", Kind = CostKind.Resale, What = "the commuter's frame", Price = Euro(80) });
Console.WriteLine($"all of it: {sheet.Total}");
Console.WriteLine(sheet.Against(Euro(899)));
