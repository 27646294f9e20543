#:package Lugwork@1.0.0-rc.1
using Lugwork.Drivetrain;
using UnitsNet;

// A tourer on 40-622 tyres, rolled out at 2180 mm: which gears has it, how fast are they, and is a 14-speed hub an answer?
var wheel = Length.FromMillimeters(2180);
var cadence = RotationalSpeed.FromRevolutionsPerMinute(80);
var derailleur = GearTable.Of([46, 30], [11, 13, 15, 17, 19, 21, 24, 28, 32, 36], wheel);
Console.WriteLine(derailleur);
foreach (GearPair pair in derailleur.Duplicates())
{
    Console.WriteLine($"  nearly one gear: {pair}");
}

foreach (Gear gear in new[] { derailleur.Gears[0], derailleur.Gears[^1] })
{
    Console.WriteLine($"{gear}: {gear.SpeedAt(cadence, wheel).KilometersPerHour:0.0} km/h at 80 a minute, gain ratio {gear.GainRatio(wheel / (2 * Math.PI), Length.FromMillimeters(170)):0.00} on 170 mm cranks");
}

Console.WriteLine();
Console.WriteLine(GearTable.Of([42], [17], wheel, InternalHub.Find("14")));

Console.WriteLine();
var young = RolloutLimit.Of("a club's own class", Length.FromMeters(6.93));
Console.WriteLine(young.Check(new Gear(46, 15), Length.FromMillimeters(2096)));
Console.WriteLine(young.Check(new Gear(46, 14), Length.FromMillimeters(2096)));
