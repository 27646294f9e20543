#:package Lugwork@1.0.0-rc.1
using Lugwork;

var frame = Frame.Read("rear 12x142; seat tube 27.2; shell BSA 68; head tube EC34/EC34; rear brake IS");
var bike  = Build.From(frame)
    .With(Wheel.Read("rear 10x135, HG, six-bolt"), Slot.RearWheel)
    .With(Seatpost.Read("26.8 x 350"));
var report = bike.Check();
Console.WriteLine(report);                              // verdict first, then the worst joint and its remedy
foreach (var need in bike.Needs()) Console.WriteLine(need);
