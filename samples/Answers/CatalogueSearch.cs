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
            new(1, Slot.Cassette, Cassette.Read("pattern HG-11-road")),
            new(2, Slot.Cassette, Cassette.Read("pattern HG-9")),
            new(3, Slot.Cassette, Cassette.Read("pattern XD")),
            new(4, Slot.Cassette, Cassette.Read("largest sprocket 32")),
        ]);

        Build build = Build.From(Frame.Read("rear 12x142")).With(Wheel.Read("hub 12x142; body HG-L"), Slot.RearWheel);
        SlotFitting found = catalogue.View.Fitting(build, Slot.Cassette, most: 100);
        Console.WriteLine($"fit: {string.Join(", ", found.Fits.Ids)}");
        Console.WriteLine($"need a part: {string.Join(", ", found.NeedsPart.Ids)}");
        Console.WriteLine($"to be measured or asked: {string.Join(", ", found.Open.Ids)}");
        Console.WriteLine($"do not fit: {found.Counts.Worse}");
        #endregion
    }

    public static void FramesFor()
    {
        #region frames
        PartCatalogue frames = new();
        frames.Load([
            new(10, Slot.Frame, Frame.Read("seat tube 27.2; least insertion 80; most insertion 250")),
            new(11, Slot.Frame, Frame.Read("seat tube 31.6; least insertion 80; most insertion 250")),
            new(12, Slot.Frame, Frame.Read("seat tube 30.9; least insertion 80; most insertion 250")),
        ]);

        SlotFitting takers = frames.View.FramesFor(Seatpost.Read("30.9; mark 75; insertion 100"), Slot.Seatpost, most: 100);
        Console.WriteLine($"fit: {string.Join(", ", takers.Fits.Ids)}; with a part: {string.Join(", ", takers.NeedsPart.Ids)}; no: {takers.Counts.Worse}");
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
