using System.Collections.Immutable;
using Lugwork;
using Lugwork.Planning;

namespace FinishTheFrame;

/// <summary>Invented prices of what no list has: a bridge by its class, a small part for a round sum.</summary>
internal static class PriceList
{
    public const string Currency = "EUR";

    public static Price Of(decimal amount) => new(amount, Currency);

    public static Price Of(CostClass of) => of switch
    {
        CostClass.Cheap => Of(8),
        CostClass.Moderate => Of(24),
        _ => Of(60),
    };

    public static Price SmallPart => Of(4);

    public static ImmutableArray<ChoiceBridgePrice> Bridges() => [.. CostClassTable.Bridges.Select(b => new ChoiceBridgePrice(b.Id, Of(CostClassTable.Of(b))))];

    /// <summary>The sheet with every line that has no price of its own.</summary>
    public static CostSheet Fill(CostSheet sheet, ChosenBuild chosen)
    {
        foreach (ChoiceOffer part in chosen.Parts)
        {
            sheet = part.IsOwned ? sheet.WithOwned(part.Slot.Key)
                : sheet.WithPrice(part.Slot.Key, part.Price is { } price ? price : CostRange.Unknown, part.Mass is { } mass ? MassRange.OfGrams((decimal)mass.Grams) : MassRange.Unknown, "the shop");
        }

        foreach (ChosenBridge bridge in chosen.Bridges.DistinctBy(b => $"{b.Joint.Id}:{b.Bridge.Id}"))
        {
            string id = $"{bridge.Joint.Id}:{bridge.Bridge.Id}";
            if (bridge.Price is not { } price)
            {
                continue;
            }

            // Where it is open which bridge is needed, the sheet has one line for the choice, and the dearest is paid.
            if ((sheet[id] ?? sheet[$"{bridge.Joint.Id}:choice"]) is { } line)
            {
                sheet = sheet.WithPrice(line.Id, price, seller: line.Kind == CostKind.ShopWork ? "" : "the shop");
            }
            else
            {
                sheet = sheet.With(new CostLine { Id = id, Kind = CostKind.Bridge, What = bridge.Bridge.What, Price = price, Seller = "the shop" });
            }
        }

        foreach (CostLine small in sheet.Lines.Where(l => l.Kind is CostKind.SmallPart or CostKind.Consumable))
        {
            sheet = sheet.WithPrice(small.Id, SmallPart, seller: "the shop");
        }

        return sheet.With(new CostSeller("the shop", Of(5.90m), Of(150)));
    }
}
