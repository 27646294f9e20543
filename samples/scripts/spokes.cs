#:package Lugwork@1.0.0-rc.1
using Lugwork.Hubs;
using UnitsNet;

// A rear wheel for a touring bicycle: 32 holes, the rim drilled 2.5 mm to the left. Which spokes, and how evenly do they pull?
EffectiveRimDiameter rim = EffectiveRimDiameter.FromNippleSeats(Length.FromMillimeters(594), Length.FromMillimeters(3));
SpokeFlange left = SpokeFlange.Of(Length.FromMillimeters(49), SpokeFlange.OffsetFrom(Length.FromMillimeters(142), Length.FromMillimeters(36.5)), Length.FromMillimeters(2.6));
SpokeFlange right = SpokeFlange.Of(Length.FromMillimeters(52), SpokeFlange.OffsetFrom(Length.FromMillimeters(142), Length.FromMillimeters(51.5)), Length.FromMillimeters(2.6));
SpokeLacing three = SpokeLacing.Of(32, 3);

WheelSpokes wheel = WheelSpokes.Of(rim, left, right, three, three, Length.FromMillimeters(2.5));
WheelSpokes plain = WheelSpokes.Of(rim, left, right, three);
Length step = Length.FromMillimeters(1);

Console.WriteLine(FormattableString.Invariant($"Buy {three.Spokes / 2} spokes of {SpokeStock.Nearest(wheel.Left, step).Millimeters:0} mm for the left and {three.Spokes / 2} of {SpokeStock.Nearest(wheel.Right, step).Millimeters:0} mm for the right."));
Console.WriteLine($"By the formula: {wheel} ({rim}, {three}).");
Console.WriteLine(FormattableString.Invariant($"The left spokes are {wheel.TensionLeftOverRight:0%} as tight as the right ones; in a rim drilled in the middle {plain.TensionLeftOverRight:0%}."));
Console.WriteLine(FormattableString.Invariant($"With two crosses: {WheelSpokes.Of(rim, left, right, SpokeLacing.Of(32, 2), SpokeLacing.Of(32, 2), Length.FromMillimeters(2.5))}."));
Console.WriteLine($"Caution: {WheelSpokes.Caution}");
