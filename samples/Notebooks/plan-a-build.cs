#:package Lugwork@1.0.0-rc.1
// The code cells of plan-a-build.ipynb, one after the other. RunNotebooks.cs writes this file.
using Lugwork;
using Lugwork.Drawing;

var frame = Frame.Read("kind touring; material steel; rear 12x142; seat tube 27.2; seat tube outside 31.8; leastInsertion 80; mostInsertion 210; shell BSA 68; head tube EC34/EC34; head tube length 140; rear brake IS; largestRearRotor 180; largest tyre 42-622; chainstay 440");
var bike = Build.From(frame, "Steel tourer from the parts bin")
    .With(Wheel.Read("rear 10x135, HG, six-bolt; beadSeat 622; innerWidth 21; rimType TC; rim depth 22"), Slot.RearWheel)
    .With(Tyre.Read("37-622; folding"), Slot.RearTyre)
    .With(Seatpost.Read("26.8 x 350; mark 75"));
display(bike.Check());

display(Drawings.Seatpost(bike));

display(Drawings.Tyre(bike, Slot.RearTyre, betweenMillimetres: 60));

display(bike.Needs());

display(Drawings.PriceAndMass([("light alloy", 34m, 0.262m), ("heavy alloy", 19m, 0.341m), ("alloy, set back", 39m, 0.318m), ("carbon", 119m, 0.188m)], "EUR"));

bike = bike.With(Seatpost.Read("27.2 x 350; mark 75; insertion 110; condition new"));
display(bike.WorkPlan());

static void display(object shown) => Console.WriteLine(shown is System.Collections.IEnumerable list ? string.Join('\n', list.Cast<object>()) : shown);
