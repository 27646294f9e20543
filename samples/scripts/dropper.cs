#:package Lugwork@1.0.0-rc.1
// The longest dropper for a frame and a rider: by leg, seat tube and insertion.
using Lugwork;
using Lugwork.Drivetrain;
using Lugwork.Seating;
using UnitsNet;

Dimension Mm(double millimetres) => Dimension.OfMillimetres((decimal)millimetres);
Length Long(double millimetres) => Length.FromMillimeters(millimetres);

Length inseam = Long(815);
Console.WriteLine($"To start from: {SaddleHeightRule.Range(inseam, Long(170))}; {CrankLengthRule.Range(inseam)}.");
Console.WriteLine(RuleOfThumb.Caution);
Console.WriteLine();

Length rails = SaddleHeight.RailsAboveCollar(saddleHeight: Long(715), seatTube: Long(440), saddleDepth: Long(48));
SeatpostRoom room = new() { RailHeight = Dimension.Of(rails), OpenDepth = Mm(245), LeastInsertion = Mm(100) };
Dimension stack = Mm(52);
Console.WriteLine($"Rails {rails.Millimeters:0} mm above the collar: with a stack of 52 mm at most {room.LongestTravel(stack).Millimeters:0} mm of travel, {DropperSize.LongestTravel(room.RailHeight, stack)} of the trade.");
foreach ((decimal travel, double length) in ((decimal, double)[])[(150, 430), (170, 470), (180, 490), (200, 530)])
{
    DropperSize post = new() { Travel = DropperTravel.OfMillimetres(travel), Stack = stack, TotalLength = Mm(length), Actuator = Long(15) };
    DropperFit fit = DropperFit.Of(post, room, mostShim: Long(25), shimStep: Long(5));
    Console.WriteLine($"{travel} mm, {length:0} long: {fit} (left over: {fit.Leftover?.Millimeters:0} above, {fit.LeftoverBelow?.Millimeters:0} below)");
}
