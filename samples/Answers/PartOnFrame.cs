#region post
using Lugwork;
#endregion
using Lugwork.Brakes;
using Lugwork.Seating;

namespace Answers;

/// <summary>Does this part fit my frame?</summary>
internal static class PartOnFrame
{
    public static void Post()
    {
        #region post

        Frame frame = Frame.Read("seat tube 27.2; least insertion 80; most insertion 250");
        Seatpost post = Seatpost.Read("26.8 x 350; mark 75; insertion 110");

        foreach (Fit fit in Build.From(frame).With(post).Check().Findings)
        {
            Console.WriteLine(fit);
        }
        #endregion
    }

    public static void Why()
    {
        #region why
        FitReport report = Build.From(Frame.Read("seat tube 27.2")).With(Seatpost.Read("26.8")).Check();
        Console.WriteLine(report.Findings.Single(fit => fit.Joint!.Id == "seatpost-in-seat-tube").Explain());
        #endregion
    }

    public static void Typed()
    {
        #region typed
        Frame frame = new()
        {
            SeatTubeBore = Known<SeatTubeBore>.Of(SeatTubeBore.OfMillimetres(27.2m)),
            LargestRearRotor = Known<Dimension>.Of(Dimension.OfMillimetres(180)),
        };
        Rotor rotor = new() { Size = Known<RotorSize>.Of(RotorSize.Parse("203", null)) };

        foreach (Fit fit in Build.From(frame).With(rotor, Slot.RearRotor).Check().Findings)
        {
            Console.WriteLine($"{fit.Joint}: {Verdicts.InWords(fit.Verdict)}");
        }
        #endregion
    }

    public static void Measure()
    {
        #region measure
        Build build = Build.From(Frame.Read("rear 12x142; material steel"))
            .With(Wheel.Read("hub 135 QR"), Slot.RearWheel);

        foreach (RankedMeasurement question in build.Check().ToMeasure)
        {
            Console.WriteLine(question);
        }
        #endregion
    }
}
