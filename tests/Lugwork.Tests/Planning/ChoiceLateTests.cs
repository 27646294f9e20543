using Lugwork.Planning;
using UnitsNet;

namespace Lugwork.Tests.Planning;

/// <summary>Rules with more combinations than a table may have are asked combination by combination: the answers stay those of the tables, which brute force holds.</summary>
public sealed class ChoiceLateTests
{
    private static BuildChooser Late(ChoiceRequest request)
    {
        BuildChooser late = BuildChooser.Of(request);
        late.MostTableCells = 5;
        return late;
    }

    private static (decimal Price, double Mass)[] Sums(ChoiceResult result) => [.. result.Builds.Select(b => (b.Price.Amount, Math.Round(b.Mass?.Milligrams ?? 0)))];

    private static void Same(ChoiceResult table, ChoiceResult late)
    {
        Assert.Equal((table.Status, table.Bound), (late.Status, late.Bound));
        Assert.Equal(Sums(table), Sums(late));
    }

    [Fact]
    public void What_is_asked_late_changes_no_answer()
    {
        int rules = 0;
        int found = 0;
        for (int seed = 0; seed < 40; seed++)
        {
            ChoiceRequest request = seed % 2 == 0 ? ChoiceBench.Draw(new Random(seed), 4, 4, 0) : ChoiceBench.DrawAll(new Random(seed), 4, 3, 0);
            BuildChooser tables = BuildChooser.Of(request);
            BuildChooser late = Late(request);
            Same(tables.CheapestFew(6), late.CheapestFew(6));
            rules += late.PlanOf(false, default).Network?.Late.Count > 0 ? 1 : 0;
            if (tables.Lightest() is not { Best: { } lightest } result)
            {
                continue;
            }

            Same(result, late.Lightest());
            Mass cap = lightest.Mass!.Value + Mass.FromGrams(120);
            Same(tables.CheapestUnder(cap), late.CheapestUnder(cap));
            Same(tables.CheapestUnder(cap - Mass.FromKilograms(1)), late.CheapestUnder(cap - Mass.FromKilograms(1)));
            Same(tables.CheapestUnder(Mass.FromKilograms(500)), late.CheapestUnder(Mass.FromKilograms(500)));
            Same(tables.LightestUnder(lightest.Price), late.LightestUnder(lightest.Price));
            Same(tables.PriceMassFront(50), late.PriceMassFront(50));
            found++;
        }

        Assert.True(rules >= 8 && found >= 20, $"{rules} with rules asked late, {found} fit");
    }
}
