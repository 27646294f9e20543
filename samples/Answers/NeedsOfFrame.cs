#region slot
using Lugwork;
#endregion
using Lugwork.Reading;

namespace Answers;

/// <summary>What do I need for this frame?</summary>
internal static class NeedsOfFrame
{
    public static void OfSlot()
    {
        #region slot

        Frame frame = Frame.Read("kind road; rear 12x142; seat tube 27.2; least insertion 80; most insertion 250; shell BSA 68; rear brake flat; largest rear rotor 160");
        NeedsSheet needs = Build.From(frame).Needs();

        foreach (NeedLine line in needs.Of(Slot.Seatpost)!.Lines)
        {
            Console.WriteLine(line);
        }
        #endregion
    }

    public static void AskFirst()
    {
        #region first
        Frame frame = Frame.Read("kind road; rear 12x142; seat tube 27.2");
        foreach (RankedMeasurement question in SpecQuestions.Of(frame).Take(3))
        {
            Console.WriteLine(question);
        }
        #endregion
    }

    public static void Small()
    {
        #region small
        Build build = Build.From(Frame.Read("kind road; head tube EC34/EC34; rear 12x142"))
            .With(Fork.Read("front 12x100; steerer 28.6; threadless; steerer material carbon"))
            .With(Cassette.Read("HG-11-road"));

        foreach (SmallPart part in build.SmallParts())
        {
            Console.WriteLine(part);
        }
        #endregion
    }
}
