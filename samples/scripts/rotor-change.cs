#:package Lugwork@1.0.0-rc.1
using Lugwork;
using Lugwork.Brakes;

// A fork with posts for 160 and a largest rotor of 180: which adapter for 180, and what about 203?
foreach (RotorSize rotor in (RotorSize[])[RotorSize.Parse("180", null), RotorSize.Parse("203", null)])
{
    AdapterChoice choice = AdapterChoice.Of(BrakeMount.Post160, CaliperFoot.Post, rotor, RotorSize.Parse("180", null));
    RotorChange change = RotorChange.Of(RotorSize.Parse("160", null), rotor);
    Console.WriteLine($"{rotor.TradeName} rotor: {Verdicts.InWords(choice.Verdict)}.");
    Console.WriteLine($"  {choice.Limit.Sentence}");
    Console.WriteLine(choice.Adapter.Length == 0 ? "  no adapter" : $"  {choice.Adapter}");
    Console.WriteLine(FormattableString.Invariant($"  {change}; by one drawing of posts {change.SquareToPosts.Millimeters:0.0} mm square to them and {change.AlongPosts.Millimeters:0.0} mm along them; braking torque x {change.TorqueRatio:0.00}."));
}

Console.WriteLine($"The old levers: {LeverAndBrake.Of(CablePull.Short, BrakeType.OffRoadCableDisc)}");
Console.WriteLine($"Caution: {RotorChange.Caution}");
