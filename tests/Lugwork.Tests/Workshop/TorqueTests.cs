using Lugwork.Workshop;
using UnitsNet;
using UnitsNet.Units;

namespace Lugwork.Tests.Workshop;

/// <summary>Torque rows: sourced, in order, converted as the units library converts, and disagreement said.</summary>
public sealed class TorqueTests
{
    [Fact]
    public void Every_row_has_an_id_of_its_own_a_range_in_order_and_registered_sources()
    {
        Assert.Equal(TorqueTable.All.Length, TorqueTable.All.Select(t => t.Id).Distinct().Count());
        Assert.All(TorqueTable.All, t =>
        {
            Assert.Same(t, TorqueTable.Find(t.Id));
            Assert.NotEmpty(t.Ranges);
            Assert.All(t.Ranges, r => Assert.Contains(r.Source, Sources.All));
            Assert.All(t.Ranges, r => Assert.True(r.LeastHundredths > 0 && r.LeastHundredths <= r.MostHundredths && r.MostHundredths <= 7_000, t.Id));
            Assert.EndsWith("The maker's figure rules.", t.ToString(), StringComparison.Ordinal);
            Assert.Equal(t.Treatment == ThreadTreatment.AsMakerSays, t.TreatmentSource is null);
        });
        Assert.Null(TorqueTable.Find("ghost"));
    }

    [Theory]
    [InlineData("rotor-bolts", TorqueAgreement.Overlap)]
    [InlineData("rotor-lockring", TorqueAgreement.Same)]
    [InlineData("lever-clamp", TorqueAgreement.Overlap)]
    [InlineData("crank-30", TorqueAgreement.OneSource)]
    [InlineData("hanger-bolts", TorqueAgreement.OneSource)]
    [InlineData("flat-mount-bolts", TorqueAgreement.NonePrinted)]
    [InlineData("caliper-bolts", TorqueAgreement.Apart)]
    [InlineData("front-derailleur-band", TorqueAgreement.Apart)]
    [InlineData("stem-on-steerer", TorqueAgreement.Overlap)]
    [InlineData("stem-faceplate", TorqueAgreement.OneSource)]
    [InlineData("pedal", TorqueAgreement.OneSource)]
    public void Disagreement_is_told(string id, TorqueAgreement expected)
    {
        TorqueFigure row = TorqueTable.Find(id)!;
        Assert.Equal(expected, row.Agreement);
        Assert.Equal(expected == TorqueAgreement.Apart, row.ToString().Contains("contradict", StringComparison.Ordinal));
        Assert.Equal(expected == TorqueAgreement.Overlap, row.ToString().Contains("sources differ", StringComparison.Ordinal));
        Assert.Equal(expected == TorqueAgreement.OneSource, row.ToString().Contains("One page alone", StringComparison.Ordinal));
        Assert.Equal(expected == TorqueAgreement.NonePrinted, row.ToString().Contains("No page was read", StringComparison.Ordinal));
        Assert.All(row.Ranges, r => Assert.Contains($"{r}", row.ToString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("rotor-lockring", ThreadTreatment.Grease, "a little grease")]
    [InlineData("rotor-bolts", ThreadTreatment.Threadlock, "thread lock")]
    [InlineData("cassette-lockring", ThreadTreatment.Grease, "a little grease")]
    [InlineData("quill-wedge", ThreadTreatment.Grease, "a little grease")]
    [InlineData("rear-derailleur", ThreadTreatment.Grease, "a little grease")]
    [InlineData("saddle-clamp-two-bolts", ThreadTreatment.Grease, "a little grease")]
    [InlineData("caliper-bolts", ThreadTreatment.AsMakerSays, "as the maker says")]
    public void A_thread_gets_in_the_row_what_it_gets_in_the_step(string id, ThreadTreatment treatment, string said)
    {
        TorqueFigure row = TorqueTable.Find(id)!;
        Assert.Equal(treatment, row.Treatment);
        Assert.Contains($"Thread: {said}", row.ToString(), StringComparison.Ordinal);
        Assert.Equal(treatment != ThreadTreatment.AsMakerSays, row.TreatmentSource == Sources.CommonPractice);
    }

    [Theory]
    [InlineData("seat-collar-carbon", true)]
    [InlineData("flat-mount-bolts", false)]
    public void A_page_for_other_parts_is_not_denied(string id, bool general) =>
        Assert.Equal(general, TorqueTable.Find(id)!.ToString().Contains("No page was read that prints it for the fastener in general.", StringComparison.Ordinal));

    [Fact]
    public void A_figure_of_other_parts_says_nothing_of_this_one()
    {
        Assert.False(TorqueTable.Find("rotor-bolts")!.IsWithinOne(Torque.FromNewtonMeters(3)));
        Assert.True(TorqueTable.Find("rotor-bolts")!.IsWithinOne(Torque.FromNewtonMeters(4)));
        Assert.False(TorqueTable.Find("seat-collar-carbon")!.IsWithinOne(Torque.FromNewtonMeters(8)));
    }

    [Fact]
    public void Memory_is_marked_in_the_text_of_a_row()
    {
        Assert.All(TorqueTable.All.Where(t => t.IsUnpublished), t => Assert.Contains("No page was read", t.ToString(), StringComparison.Ordinal));
        Assert.Contains(TorqueTable.All, t => t is { IsUnpublished: true, Id: "flat-mount-bolts" });
        Assert.DoesNotContain(TorqueTable.All, t => t is { IsUnpublished: true, Id: "pedal" });
    }

    [Fact]
    public void A_range_converts_as_the_units_library_does()
    {
        foreach (TorqueRange range in TorqueTable.All.SelectMany(t => t.Ranges))
        {
            (double least, double most) = (range.Least.As(TorqueUnit.PoundForceInch), range.Most.As(TorqueUnit.PoundForceInch));
            string pounds = FormattableString.Invariant($"{least:0.#}");
            Assert.StartsWith(pounds, range.ToString(TorqueScale.InchPounds), StringComparison.Ordinal);
            Assert.Contains(FormattableString.Invariant($"{most:0.#} in\u00B7lbf"), range.ToString(TorqueScale.InchPounds), StringComparison.Ordinal);
            Assert.Contains(FormattableString.Invariant($"{range.Most.As(TorqueUnit.KilogramForceCentimeter):0} kgf\u00B7cm"), range.ToString(TorqueScale.KilogramForceCentimetres), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(TorqueScale.NewtonMetres, "5 to 6.2 N m")]
    [InlineData(TorqueScale.InchPounds, "44.3 to 54.9 in·lbf")]
    [InlineData(TorqueScale.KilogramForceCentimetres, "51 to 63 kgf·cm")]
    public void A_range_is_printed_in_the_unit_asked_for(TorqueScale scale, string expected) =>
        Assert.Equal(expected, TorqueTable.Find("rotor-bolts")!.Ranges[0].ToString(scale));

    [Fact]
    public void A_torque_is_within_a_row_in_any_unit_and_what_is_none_is_refused()
    {
        TorqueFigure row = TorqueTable.Find("pedal")!;
        Assert.True(row.IsWithinOne(Torque.FromNewtonMeters(34.7)));
        Assert.True(row.IsWithinOne(Torque.FromPoundForceInches(310)));
        Assert.False(row.IsWithinOne(Torque.FromNewtonMeters(34.69)));
        Assert.False(row.IsWithinOne(Torque.FromNewtonMeters(39.51)));
        Assert.Throws<ArgumentOutOfRangeException>(() => row.IsWithinOne(Torque.FromNewtonMeters(301)));
        Assert.Throws<ArgumentOutOfRangeException>(() => row.IsWithinOne(Torque.FromNewtonMeters(-1)));
    }

    [Fact]
    public void A_unit_that_is_none_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TorqueTable.Find("pedal")!.Ranges[0].ToString((TorqueScale)9));

    [Fact]
    public void The_bolts_of_a_24_mm_crank_are_its_pinch_bolts_and_a_square_taper_has_its_own()
    {
        string[] Of(string crank) => [.. Build.From(Frame.Read("material steel")).With(Crankset.Read(crank)).WorkPlan().Find("fit-crankset")!.Torques.Select(t => t.Id)];
        Assert.Equal(["crank-preload-cap", "crank-pinch-bolts"], Of("spindle 24-road"));
        Assert.Equal(["crank-square-taper"], Of("spindle square-JIS"));
        Assert.Equal(["crank-stepped"], Of("spindle 24/22"));
        Assert.Equal(["crank-bolt"], Of("spindle BMX-19"));
        Assert.Empty(Of("rings 9"));
        Assert.Empty(Of("spindle cottered"));
    }
}
