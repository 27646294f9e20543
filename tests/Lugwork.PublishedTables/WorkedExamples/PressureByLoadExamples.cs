using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>A tyre maker's table of pressures, cell by cell.</summary>
public sealed class PressureByLoadExamples : WorkedExample
{
    private const string Topic = "pressure-by-load";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_cell_is_offered_as_it_stands(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        PressureByLoad cell = PressureByLoad.Find(Length.FromMillimeters(row["tyre"]), Mass.FromKilograms(row["rider"]))!;
        Agrees(row, cell.Published.Bars);
        PressureLimits hooked = PressureLimits.Of(Pressure.FromBars(9), Pressure.FromBars(9), RimType.TubelessCrochet, Pressure.FromBars(1.5));
        PressureLimits hookless = PressureLimits.Of(Pressure.FromBars(9), Pressure.FromBars(9), RimType.Hookless, Pressure.FromBars(1.5));
        Assert.Equal(row.Published, cell.Within(hooked)?.Bars);
        Assert.True(cell.Within(hookless) is not null == row.Published <= 5, row.Tell(5));
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 27);

    [Fact]
    public void The_library_has_no_cell_that_is_not_published() => Assert.Equal(27, PressureByLoad.All.Length);
}
