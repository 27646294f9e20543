#r "nuget: Lugwork, 1.0.0-rc.1"
open Lugwork

let frame = Frame.Read "rear 12x142; seat tube 27.2; shell BSA 68; head tube EC34/EC34; rear brake IS"
let bike =
    Build.From(frame)
        .With(Wheel.Read "rear 10x135, HG, six-bolt", Slot.RearWheel)
        .With(Seatpost.Read "26.8 x 350")

printfn $"{bike.Check()}"
for need in bike.Needs() do
    printfn $"{need}"
