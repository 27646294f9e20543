#:package Lugwork@1.0.0-rc.1
// A new fork with an uncut steerer: where is it cut, how deep goes the star nut, where does the bar end up, and what would another stem do?
using Lugwork;
using Lugwork.Steering;
using UnitsNet;

Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
StemShape Stem(double length, double angle) => StemShape.Of(Mm(length), StemAngle.OfSquare(Angle.FromDegrees(angle)));

SteererLength stack = new() { HeadTube = Mm(125), LowerStack = Mm(12), UpperStack = Mm(14.5), SpacersBelow = Mm(20), StemClamp = Mm(40), SpacersAbove = Mm(5) };
SteererCut cut = SteererCut.Of(stack, Mm(265), Material.Aluminium);
Console.WriteLine($"Steerer {cut}.");
Console.WriteLine(cut.Check);
Console.WriteLine($"Caution: {SteererCut.StarNutCaution}");
Console.WriteLine();

CockpitSetup now = new() { Stack = Mm(572), Reach = Mm(388), HeadAngle = Angle.FromDegrees(72), UpperStack = Mm(14.5), SpacersBelow = Mm(20), StemClamp = Mm(40), Stem = Stem(100, -6) };
Console.WriteLine($"With the stem of {now.Stem}: {now}.");
foreach (StemShape other in (StemShape[])[now.Stem.Flipped, Stem(90, -6), Stem(110, -17)])
{
    double spacers = now.SpacersForSameHeight(other).Millimeters;
    Console.WriteLine($"With {other}: {now.To(now with { Stem = other })}; {(spacers < 0 ? "the same height cannot be had, it is higher without any spacer" : $"spacers for the same height {spacers:0.#} mm")}.");
}

Console.WriteLine($"The same steerer from a used fork, 205 mm long, leaves {SteererCut.SpacersBelowFor(stack, Mm(205)).Millimeters:0.#} mm of spacers below the stem.");
