#region search
using Lugwork;
using Lugwork.Catalogues;
#endregion

namespace Answers;

/// <summary>How do I search a catalogue or a database?</summary>
internal static class CatalogueSearch
{
    public static void Search()
    {
        #region search

        PartCatalogue catalogue = new();
        catalogue.Load([
            new(1, Slot.Seatpost, Seatpost.Read("27.2 x 350; mark 75")),
            new(2, Slot.Seatpost, Seatpost.Read("26.8 x 300; mark 75")),
            new(3, Slot.Seatpost, Seatpost.Read("31.6 x 350; mark 80")),
            new(4, Slot.Seatpost, Seatpost.Read("x 400")),
        ]);

        Build build = Build.From(Frame.Read("seat tube 27.2; least insertion 70; most insertion 250"));
        SlotFitting found = catalogue.View.Fitting(build, Slot.Seatpost, most: 100);
        Console.WriteLine($"fit: {string.Join(", ", found.Fits.Ids)}");
        Console.WriteLine($"need a part: {string.Join(", ", found.NeedsPart.Ids)}");
        Console.WriteLine($"to be measured or asked: {string.Join(", ", found.Open.Ids)}");
        Console.WriteLine(found.Counts);
        #endregion
    }

    public static void FramesFor()
    {
        #region frames
        PartCatalogue frames = new();
        frames.Load([
            new(10, Slot.Frame, Frame.Read("seat tube 27.2")),
            new(11, Slot.Frame, Frame.Read("seat tube 31.6")),
            new(12, Slot.Frame, Frame.Read("seat tube 30.9")),
        ]);

        SlotFitting takers = frames.View.FramesFor(Seatpost.Read("30.9; material steel"), Slot.Seatpost, most: 100);
        Console.WriteLine($"fit: {string.Join(", ", takers.Fits.Ids)}; with a part: {string.Join(", ", takers.NeedsPart.Ids)}");
        #endregion
    }

    public static void Keys()
    {
        #region keys
        Build build = Build.From(Frame.Read("seat tube 27.2"));
        string[] keys = [.. FitKeys.Accepted(build, Slot.Seatpost).Where(row => row.JointId == "seatpost-in-seat-tube").Select(row => row.Key)];
        Console.WriteLine($"WHERE diameter IN ({string.Join(", ", keys.Select(key => $"'{key}'"))})");
        #endregion
    }
}
