namespace Lugwork.PublishedTables;

/// <summary>Key sizes of the work plan against the page that prints each.</summary>
public sealed class KeysChecks
{
    private const string Heads = "ISO 4762, Hexagon Socket Cap Head Screw Dimensions (table); geartoolkit.com";
    private const string PedalPage = "Bicycles/Maintenance and Repair: Pedal Wrench; Wikibooks";
    private const string Cranks = "Crank Installation and Removal: Square Spindle Type; Park Tool";
    private const string Wheels = "What Tools Do You Need to Remove a Bike Wheel?; engineerfix.com";
    private const string Axles = "How To Remove Rear Axle From Bicycle Wheel; wheelyap.com";
    private const string Derailleurs = "How To Replace The Rear Derailleur On A Bicycle; wheelyap.com";
    private const string Headsets = "Servicing threaded headsets; VeloWeb";
    private const string Guide = "User Guide 2002, p. 24; Gary Fisher";

    /// <summary>The sizes that the page prints, in the order of the tool's name, where a thread is named without it.</summary>
    [Theory]
    [InlineData("hex-m5", "4", Heads)]
    [InlineData("hex-m6", "5", Heads)]
    [InlineData("pedal-spanner", "15 6 8", PedalPage)]
    [InlineData("crank-bolt-key", "8 14 15", Cranks)]
    [InlineData("axle-spanner", "15 17", Wheels)]
    [InlineData("axle-key", "5 6", Axles)]
    [InlineData("derailleur-key", "5 6", Derailleurs)]
    [InlineData("headset-spanners", "32", Headsets)]
    [InlineData("saddle-key", "6 5 13 14", Guide)]
    public void A_key_has_the_sizes_that_its_page_prints(string key, string sizes, string source)
    {
        WorkTool tool = Tools.First(t => t.Id == key);
        Assert.Equal(sizes, string.Join(' ', tool.Name.Split([' ', ',', '(']).Where(w => int.TryParse(w, out int size) && size > 1)));
        Assert.StartsWith(tool.Source!.Title, source, StringComparison.Ordinal);
    }

    private static readonly WorkTool[] Tools =
    [
        .. Build.From(Frame.Read("material steel")).With(Caliper.Read("post"), Slot.RearCaliper).With(Pedals.Read("9/16")).With(Crankset.Read("spindle square-JIS")).With(AxleNuts.Read("M10x1"), Slot.RearAxleNuts).With(ThruAxle.Read("M12x1.5"), Slot.FrontThruAxle)
            .With(RearDerailleur.Read("M10 bolt")).With(Fork.Read("steerer kind threaded; steerer 1 in")).With(Headset.Read("threaded")).With(Seatpost.Read("27.2; material aluminium")).With(Saddle.Read("7 mm round")).WorkPlan().Tools,
    ];
}
