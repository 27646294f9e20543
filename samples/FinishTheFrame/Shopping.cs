using Lugwork.Workshop;
using Lugwork;
using Lugwork.Planning;

namespace FinishTheFrame;

/// <summary>The shopping list as a person reads it.</summary>
internal static class Shopping
{
    public static void Write(CostSheet sheet, ChosenBuild chosen, CarryOver over, TextWriter to)
    {
        foreach (CostGroup group in sheet.Groups)
        {
            to.WriteLine(group);
            foreach (CostLine line in group.Lines.Where(l => !l.IsOwned))
            {
                to.WriteLine($"  {line}");
            }
        }

        to.WriteLine($"In all: {sheet.Total}; what is bought weighs {sheet.Mass}.");
        Slot[] left = [.. over.WorthMoving.Select(p => p.Slot).Where(s => !chosen.Parts.Any(p => p.Slot == s && p.IsOwned))];
        to.WriteLine($"Kept from the donor: {string.Join(", ", over.WorthMoving.Select(p => p.Slot).Except(left))}.");
        if (left.Length > 0)
        {
            to.WriteLine($"Fits the frame, but is no part of the cheapest whole: {string.Join(", ", left.AsEnumerable())}.");
        }
    }
}
