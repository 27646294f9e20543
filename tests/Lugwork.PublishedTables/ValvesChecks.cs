using Lugwork.Tyres;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>What packets, manuals and glossaries call valves, and the holes that they are for.</summary>
/// <remarks>"SV" means Sclaverand, which is Presta, on one page and Schrader valve on another; it stays open.</remarks>
public sealed class ValvesChecks
{
    private const string Article = "Presta valve; thedailyomnivore.net";
    private const string German = "Ventile (in German); radschlag-info.de";
    private const string Shop = "Common bicycle tube valve types; bicyclethailand.com";
    private const string Manual = "Owner's manual, tire valves, p. 30; a bicycle maker";
    private const string Wiki = "Fahrradventil (in German); Wikipedia";
    private const string Magazine = "Ventiltypen am Fahrrad (in German); Velomotion";
    private const string Drill = "Bicycle tire valve types, 21/64 in drill; acebike.com";
    private const string Types = "Bicycle tire valve types; Trails.com";

    [Theory]
    [InlineData("Presta", "presta", Manual)]
    [InlineData("Sclaverand", "presta", Article)]
    [InlineData("French valve", "presta", Types)]
    [InlineData("FV", "presta", Shop)]
    [InlineData("PV", "presta", Shop)]
    [InlineData("Schrader", "schrader", Manual)]
    [InlineData("American valve", "schrader", Shop)]
    [InlineData("AV", "schrader", Shop)]
    [InlineData("Dunlop", "dunlop", German)]
    [InlineData("DV", "dunlop", German)]
    [InlineData("Woods", "dunlop", Manual)]
    [InlineData("Woods valve", "dunlop", Types)]
    [InlineData("English valve", "dunlop", Article)]
    [InlineData("Blitz", "dunlop", Magazine)]
    public void A_valve_is_read_by_its_printed_name(string name, string key, string source) => Reads<ValveStem>(source, key, name);

    [Theory]
    [InlineData("presta", German)]
    [InlineData("schrader", Shop)]
    public void The_letters_that_two_pages_print_for_two_valves_stay_open(string key, string source)
    {
        TextReading<ValveStem> stem = ValveStem.Read("SV");
        Assert.True(!stem.IsClear && stem.Values.Any(v => v.FitKey == key), source);
        TextReading<ValveHole> hole = ValveHole.Read("SV");
        Assert.True(!hole.IsClear && hole.Values.Any(h => h.Stems.Any(v => v.FitKey == key)), source);
    }

    [Theory]
    [InlineData("Dunlop", 8.5, Wiki)]
    [InlineData("Blitz", 8.5, Magazine)]
    [InlineData("Sclaverand", 6.5, Magazine)]
    [InlineData("Schrader", 8.3, Drill)]
    public void A_valve_stands_in_the_hole_of_the_printed_size(string name, double hole, string source) =>
        Assert.True(ValveHole.Identify(Mm(hole)).Candidates.Single().Value == ValveStem.Parse(name, null).Hole, source);
}
