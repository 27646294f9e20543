using Lugwork;

namespace Answers;

/// <summary>The ten lines of the README, as samples/scripts/frame-up.cs has them.</summary>
internal static class TenLines
{
    public static void Run()
    {
        #region ten-lines
        var frame = Frame.Read("rear 12x142; seat tube 27.2; shell BSA 68; head tube EC34/EC34; rear brake IS");
        var bike  = Build.From(frame)
            .With(Wheel.Read("rear 10x135, HG, six-bolt"), Slot.RearWheel)
            .With(Seatpost.Read("26.8 x 350"));
        var report = bike.Check();
        Console.WriteLine(report);                              // verdict first, then the worst joint and its remedy
        foreach (var need in bike.Needs()) Console.WriteLine(need);
        #endregion
    }
}
