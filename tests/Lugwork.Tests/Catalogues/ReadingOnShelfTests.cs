using Lugwork.Catalogues;
using Lugwork.Planning;
using Lugwork.Tests.Builds;
using static Lugwork.Tests.Builds.WholeBuilds;

namespace Lugwork.Tests.Catalogues;

/// <summary>A part on a shelf has no reading of a bicycle, and a bicycle's reading says nothing of another part.</summary>
public sealed class ReadingOnShelfTests
{
    private static Build Near(params string[] more) => Load("01", ["frame.frontCentre=630", .. more]);

    private static Crankset Read(Build build) => (Crankset)build[Slot.Crankset]! with { Name = "", ToeClearance = Known<Dimension>.Of(Dimension.OfMillimetres(130)) };

    [Fact]
    public void A_stored_part_is_kept_without_its_reading_and_judged_without_it()
    {
        Build build = Near();
        PartCatalogue catalogue = Shelves.Of(new CatalogueRow(1, Slot.Crankset, Read(build)), new CatalogueRow(2, Slot.Crankset, (Crankset)build[Slot.Crankset]! with { Name = "" }));
        Assert.Equal(1, catalogue.View.KindsOf(Slot.Crankset));
        Assert.Equal(KnownState.Unknown, ((Crankset)catalogue.View.Find(Slot.Crankset, 1)!).ToeClearance.State);
        SlotFitting fitting = catalogue.View.Fitting(build, Slot.Crankset, 10);
        Assert.Equal([1, 2], fitting.Open.Ids.Order());
        Assert.Contains(fitting.Open[0].Findings, f => f.Joint!.Id == "toe-clearance" && f.Verdict == Verdict.NeedsMeasuring);
        Assert.Equal(Verdict.NeedsMeasuring, catalogue.View.FittingGroups(build, Slot.Crankset).Single().Verdict);
    }

    [Fact]
    public void A_line_of_text_and_a_snapshot_are_read_without_it_too()
    {
        PartCatalogue catalogue = new();
        Assert.Empty(catalogue.LoadLines([new CatalogueLine(1, "crankset", "crank length 170; toe room 130"), new CatalogueLine(2, "seatpost", "31.6 x 400; binder gap 2")]).Problems);
        Assert.Equal(KnownState.Unknown, ((Crankset)catalogue.View.Find(Slot.Crankset, 1)!).ToeClearance.State);
        Assert.Equal(KnownState.Unknown, ((Seatpost)catalogue.View.Find(Slot.Seatpost, 2)!).BinderGap.State);
        Assert.Equal(400m, ((Seatpost)catalogue.View.Find(Slot.Seatpost, 2)!).Length.Value.Millimetres);
    }

    /// <summary>The bicycle's own room before the toes was read with the tyre that is there.</summary>
    [Fact]
    public void A_reading_of_the_bicycle_judges_no_other_part_in_any_answer()
    {
        Build measured = Near().WithMeasured(Slot.Crankset, "toeClearance", "130");
        PartCatalogue catalogue = Shelves.Of(new CatalogueRow(1, Slot.FrontTyre, Tyre.Read("66-622; tubeless; clincher")));
        Assert.Equal(Verdict.NeedsMeasuring, catalogue.View.Fitting(measured, Slot.FrontTyre, 1).Open[0].Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, catalogue.View.FittingGroups(measured, Slot.FrontTyre).Single().Verdict);
        Assert.Equal(FitRelations.NeedsOf(1, Near().WithoutReadings().WithMeasured(Slot.Seatpost, "binderGap", "2"), Slot.FrontTyre), FitRelations.NeedsOf(1, Near().WithoutReadings().WithMeasured(Slot.Seatpost, "binderGap", "2").WithMeasured(Slot.Crankset, "toeClearance", "130"), Slot.FrontTyre));
    }

    [Fact]
    public void Frames_are_sought_for_a_part_without_its_reading()
    {
        Frame frame = Frame.Read("seatTube 34.9");
        PartCatalogue catalogue = Shelves.Of(new CatalogueRow(1, Slot.Frame, frame));
        SlotFitting plain = catalogue.View.FramesFor(Seatpost.Read("30.9"), Slot.Seatpost, 1);
        SlotFitting read = catalogue.View.FramesFor(Seatpost.Read("30.9; binder gap none"), Slot.Seatpost, 1);
        Assert.Equal(Shelves.Told(plain), Shelves.Told(read));
        Assert.Equal(FitRelations.OfPart(1, Seatpost.Read("30.9"), Slot.Seatpost), FitRelations.OfPart(1, Seatpost.Read("30.9; binder gap none"), Slot.Seatpost));
    }

    [Fact]
    public void A_chooser_takes_an_offered_part_without_its_reading()
    {
        Build build = Near();
        Price price = new(90m, "EUR");
        ChoiceRequest request = new() { Build = build.Without(Slot.Crankset), Offers = [new ChoiceOffer("read", Slot.Crankset, Read(build)) { Price = price }] };
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(request).Cheapest().Status);
        Assert.Equal(ChoiceStatus.Impossible, BuildChooser.Of(request with { Offers = [new ChoiceOffer("unread", Slot.Crankset, build[Slot.Crankset]!) { Price = price }] }).Cheapest().Status);
        Build clear = Load("01");
        Assert.NotEqual(ChoiceStatus.Impossible, BuildChooser.Of(request with { Build = clear.Without(Slot.Crankset), AllowsUnpricedBridges = true }).Cheapest().Status);
    }

    /// <summary>Its text form would not let go of the reading: it is skipped with the reason where parts come in, each time, and keeps none where its like is kept.</summary>
    [Fact]
    public void A_part_that_contradicts_itself_keeps_no_reading_either()
    {
        Seatpost bad = Seatpost.Read("27.2; length 300") with { Mark = Known.Of(Dimension.OfMillimetres(310)), BinderGap = Known.Of(Dimension.OfMillimetres(2)) };
        CatalogueReport report = new PartCatalogue().Load([new(1, Slot.Seatpost, bad), new(2, Slot.Seatpost, bad)]);
        Assert.Equal((0, 2L), (report.Added, report.Skipped));
        Assert.All(report.Problems, p => Assert.Contains("mark", p.Reason, StringComparison.Ordinal));

        SlotTable table = new(Slot.Seatpost);
        KindReader reader = new(table);
        Assert.Equal(reader.Add(bad), reader.Add(bad with { BinderGap = default }));
        Seatpost kept = (Seatpost)table.View().PartOf(0);
        Assert.Equal((KnownState.Unknown, KnownState.Value), (kept.BinderGap.State, kept.Mark.State));
    }
}
