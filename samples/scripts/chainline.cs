#:package Lugwork@1.0.0-rc.1
using Lugwork;
using Lugwork.Drivetrain;
using UnitsNet;

// A 55 mm crank on a frame with 141 mm between its ends (148 mm hub) and a 12-speed cassette: what brings the ring nearer to the middle?
RearChainline rear = SprocketSpacing.Parse("12-speed", null).InInnerGap(Dimension.OfMillimetres(141m))!;
Console.WriteLine($"sprockets: {rear}");
Length ring = DirectMountRing.Chainline(0);
ChainlineStudy study = ChainlineStudy.Of(RingLine.Rings(ring, 1, default), rear, Length.FromMillimeters(438));
Console.WriteLine(study);
Console.WriteLine($"least angle with the ring moved by {study.ShiftToMiddle.Millimeters:0.0} mm; of what there is:");
foreach (ChainlineChoice choice in study.Rank(
[
    ("as it is", default),
    ("ring with 3 mm offset", Length.FromMillimeters(-3)),
    ("ring with 6 mm offset", Length.FromMillimeters(-6)),
    ("2.5 mm spacer to the left", Length.FromMillimeters(-2.5)),
]))
{
    Console.WriteLine($"  {choice}");
}

Console.WriteLine($"Caution: {ChainlineStudy.RankingCaution}");

// The same seat tube measured with a ruler: a road double.
Console.WriteLine();
Length front = RingLine.OfTwoByTube(Length.FromMillimeters(31.8), Length.FromMillimeters(31.5), Length.FromMillimeters(9));
Console.WriteLine($"double measured at the seat tube: {front.Millimeters:0.0} mm");
Console.WriteLine(ChainlineStudy.Of(RingLine.Rings(front, 2, Length.FromMillimeters(5)), SprocketSpacing.Parse("10", null).InInnerGap(Dimension.OfMillimetres(130m))!, Length.FromMillimeters(410)));
