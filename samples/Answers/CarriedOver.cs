#region moves
using Lugwork;
using Lugwork.Planning;
#endregion

namespace Answers;

/// <summary>What carries over from the old bicycle, and what does it cost?</summary>
internal static class CarriedOver
{
    private static readonly Build Old = Build.From(Frame.Read("rear 12x142; seat tube 26.8"), "old bicycle")
        .With(Seatpost.Read("26.8; mark 75; insertion 110; condition inspected"))
        .With(Handlebar.Read("25.4; material aluminium; condition crashed"))
        .With(Wheel.Read("rear 12x142; ends fixed; body HG-L; condition inspected"), Slot.RearWheel)
        .With(Cassette.Read("9-speed HG; condition inspected"));

    private static readonly Frame Bare = Frame.Read("material steel; rear 12x142; seat tube 27.2; least insertion 70; most insertion 250");

    public static void Moves()
    {
        #region moves

        Build donor = Build.From(Frame.Read("rear 12x142; seat tube 26.8"), "old bicycle")
            .With(Seatpost.Read("26.8; mark 75; insertion 110; condition inspected"))
            .With(Handlebar.Read("25.4; material aluminium; condition crashed"))
            .With(Wheel.Read("rear 12x142; ends fixed; body HG-L; condition inspected"), Slot.RearWheel)
            .With(Cassette.Read("9-speed HG; condition inspected"));
        Frame frame = Frame.Read("material steel; rear 12x142; seat tube 27.2; least insertion 70; most insertion 250");

        CarryOver over = CarryOver.Of(donor, frame);
        foreach (CarriedPart part in over.Parts)
        {
            Console.WriteLine(part);
        }
        #endregion
    }

    public static void Cost()
    {
        (Build donor, Frame frame) = (Old, Bare);
        #region cost
        CostSheet sheet = CostSheet.Of(CarryOver.Of(donor, frame)).WithOwned("frame")
            .WithPrice("seatpost-in-seat-tube:seatpost-shim-26.8-to-27.2", new Price(8.50m, "EUR"), seller: "the shop")
            .With(new CostSeller("the shop", Postage: new Price(5.90m, "EUR"), FreeFrom: new Price(60, "EUR")));
        Console.WriteLine($"so far: {sheet.Total}");
        #endregion
    }
}
