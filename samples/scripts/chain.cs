#:package Lugwork@1.0.0-rc.1
using Lugwork;
using Lugwork.Drivetrain;
using UnitsNet;

// A full-suspension frame: 440 mm between the axles at rest, 451 mm at its longest; 32 teeth, 10-51 behind.
var longest = Length.FromMillimeters(451);
ChainLength chain = ChainRule.BigBig(longest, largestRing: 32, largestSprocket: 51, ChainRule.GeneralAllowancePitches);
Console.WriteLine($"round both, and one inch:    {chain}");
Console.WriteLine($"measured at rest, it lacks:  {ChainLoop.PitchesForGrowth(Length.FromMillimeters(11)):0.00} pitches");
Console.WriteLine($"the handbook's short rule:   {ChainRule.ByShortRuleWithOneInch(longest, 32, 51)}");
Console.WriteLine($"caution: {ChainRule.Care}");

var stated = new DerailleurLimits { TotalCapacity = 41, LargestSprocket = 52, SmallestSprocket = 10 };
Console.WriteLine();
Console.WriteLine($"one ring 32, 10-51:      {stated.Check([32], [10, 51])}");
Console.WriteLine($"two rings 36-26, 10-51:  {stated.Check([36, 26], [10, 51])}");

ChainSpan span = ChainSpan.Of(Length.FromMillimeters(451), Length.FromMillimeters(440), [32], [10, 51], capacity: 45, ChainRule.GeneralAllowancePitches);
Console.WriteLine($"big-big to small-small:  {span.Check()}");

// A single speed, 42/17: slots of 20 mm, then a frame whose axle cannot move.
Console.WriteLine();
foreach (SingleSpeedChain one in SingleSpeedChain.ForSlots(Length.FromMillimeters(402), Length.FromMillimeters(422), 42, 17, withCrankedLink: true))
{
    Console.WriteLine($"in the slots:  {one}");
}

Console.WriteLine($"fixed axle:    {SingleSpeedChain.ForFixedAxle(Length.FromMillimeters(425), 42, 17)}");
Console.WriteLine($"fixed axle:    {SingleSpeedChain.ForFixedAxle(Length.FromMillimeters(425), 42, 17, withCrankedLink: true)}");

// And the old chain, a foot of it under a ruler.
Console.WriteLine();
Console.WriteLine(ChainWear.Of(ChainSize.For11, Length.FromMillimeters(306.5), pitches: 24));
