#:package Lugwork@1.0.0-rc.1
// The code cells of gears-and-chain.ipynb, one after the other. RunNotebooks.cs writes this file.
using Lugwork;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using UnitsNet;

var wheel = Length.FromMillimeters(2180);
var two = GearTable.Of([46, 30], [11, 13, 15, 17, 19, 21, 24, 28, 32, 36], wheel);
display(two);

display(Drawings.Gears(two));

var one = GearTable.Of([40], [10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 51], wheel);
display(one);
Console.WriteLine($"two rings: {two.RangePercent:0} % of range in {two.CountOfDifferent()} different gears; one ring: {one.RangePercent:0} % in {one.CountOfDifferent()}");

var stay = Length.FromMillimeters(440);
Console.WriteLine($"two rings: {ChainRule.BigBig(stay, largestRing: 46, largestSprocket: 36, ChainRule.GeneralAllowancePitches)}");
Console.WriteLine($"one ring:  {ChainRule.BigBig(stay, largestRing: 40, largestSprocket: 51, ChainRule.GeneralAllowancePitches)}");
var derailleur = new DerailleurLimits { TotalCapacity = 41, LargestSprocket = 51, SmallestSprocket = 10 };
Console.WriteLine($"two rings on a derailleur for 41 teeth: {derailleur.Check([46, 30], [11, 36])}");
Console.WriteLine($"one ring on the same: {derailleur.Check([40], [10, 51])}");

var bike = Build.From(Frame.Read("kind gravel; rear 12x142; chainstay 440"), "One ring and twelve sprockets")
    .With(Wheel.Read("hub 12x142; body XD"), Slot.RearWheel)
    .With(Cassette.Read("pattern XD; sprockets 12; spacing 12; smallest sprocket 10; largest sprocket 51"))
    .With(Crankset.Read("largest ring 40; rings 12; ring line 47.5"));
display(Drawings.RearHub(bike));

static void display(object shown) => Console.WriteLine(shown is System.Collections.IEnumerable list ? string.Join('\n', list.Cast<object>()) : shown);
