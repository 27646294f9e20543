#region known
using Lugwork;
using Lugwork.Seating;
#endregion

namespace Answers;

/// <summary>What does a verdict mean, and what if a value is unknown?</summary>
internal static class KnownAndUnknown
{
    public static void KnownStates()
    {
        #region known

        Frame frame = Frame.Read("seat tube 27.2");
        foreach (Known<SeatpostDiameter> diameter in new[]
        {
            Known<SeatpostDiameter>.Of(SeatpostDiameter.OfMillimetres(27.2m)),
            Known<SeatpostDiameter>.Measured(27.18m, error: 0.05m),
            Known<SeatpostDiameter>.Measured(27.1m, error: 0.2m),
            Known<SeatpostDiameter>.OneOf([SeatpostDiameter.OfMillimetres(30.9m), SeatpostDiameter.OfMillimetres(31.6m)]),
            Known<SeatpostDiameter>.Unknown,
        })
        {
            Fit fit = Build.From(frame).With(new Seatpost { Diameter = diameter }).Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube");
            Console.WriteLine($"{diameter}: {Verdicts.InWords(fit.Verdict)}");
        }
        #endregion
    }

    public static void Matters()
    {
        #region matters
        Build build = Build.From(Frame.Read("rear 12x148")).With(Wheel.Read("hub 12x157"), Slot.RearWheel);
        Console.WriteLine(build.Check().Findings.Single(f => f.Joint!.Id == "rear-wheel-in-frame"));
        #endregion
    }

    public static void Waive()
    {
        #region waive
        Build build = Build.From(Frame.Read("seat tube 27.2")).With(Seatpost.Read("31.6"))
            .Waive("seatpost-in-seat-tube", "the post is for another frame");
        FitReport report = build.Check();
        Console.WriteLine($"{report.Waived.Length} waived; the verdict stays: {Verdicts.InWords(report.Verdict)}");
        #endregion
    }
}
