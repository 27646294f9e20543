#:package Lugwork@1.0.0-rc.1
using Lugwork;
using Lugwork.Tyres;
using UnitsNet;

// A 40-622 on a hookless rim 25 mm wide inside: how large does it get, does it clear a gap of 56 mm, how hard may it be?
TyreSize size = TyreSize.Parse("40-622");
MountedTyre tyre = MountedTyre.OnRim(size, Length.FromMillimeters(25));
TyreClearance sides = TyreClearance.EachSide(tyre, Length.FromMillimeters(56));
TyreClearance above = TyreClearance.Above(tyre, Length.FromMillimeters(365));
PressureLimits limits = PressureLimits.Of(Pressure.FromBars(5.5), Pressure.FromBars(4.5), RimType.Hookless, Pressure.FromBars(2.5));

Console.WriteLine(FormattableString.Invariant($"{tyre}, {tyre.LeastWidth.Millimeters:0} to {tyre.MostWidth.Millimeters:0} mm; {tyre.OutsideDiameter(SectionHeight.EqualToWidth).Millimeters:0} mm over all."));
Console.WriteLine($"Sides: {sides.Check(ClearanceRule.Others)}.");
Console.WriteLine($"Above: {above.Check(ClearanceRule.Others)}.");
LengthRange rollout = tyre.LoadedCircumference(SectionHeight.EqualToWidth);
Console.WriteLine(FormattableString.Invariant($"Rollout {tyre.UnloadedCircumference(SectionHeight.EqualToWidth).Millimeters:0} mm without load, about {rollout.Least.Millimeters:0} to {rollout.Most.Millimeters:0} mm under a rider; {tyre.AirVolume.Liters:0.0} litres of air."));
Console.WriteLine($"Pressure: {limits}.");
foreach (PressureByLoad cell in PressureByLoad.All)
{
    if (cell.TyreWidth.Millimeters is > 39.5 and < 40.5)
    {
        Console.WriteLine($"  {cell} by a tyre maker's table; {limits.Check(cell.Published)}.");
    }
}

Console.WriteLine($"Rims: {RimWidthAdvice.For(size.Width)}.");
Console.WriteLine($"Caution: {limits.Check(Pressure.FromBars(5)).Cautions[0]}");
