using Lugwork.Hubs;
using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

public sealed class RimTableTests
{
    [Theory]
    [InlineData("622x19C", "622x19C")]
    [InlineData("622 \u00D7 19 c", "622x19C")]
    [InlineData("622x19 TC", "622x19TC")]
    [InlineData("TC 622x19", "622x19TC")]
    [InlineData("tss 622 - 25", "622x25TSS")]
    [InlineData("SS 400x20", "400x20SS")]
    [InlineData("19-622", "622x19")]
    [InlineData("19C-622", "")]
    [InlineData("559 x 30,5 mm", "559x30.5")]
    [InlineData("622x19CC", "")]
    [InlineData("SS 622x19C", "")]
    [InlineData("SS 622x19SS", "622x19SS")]
    [InlineData("HB 372x20", "")]
    [InlineData("621x19", "")]
    [InlineData("622x9.9", "")]
    [InlineData("622x100.1", "")]
    [InlineData("622x100", "622x100")]
    [InlineData("622x19.05", "")]
    [InlineData("622", "")]
    [InlineData("93x94", "93x94 94x93")]
    [InlineData("94x94", "94x94")]
    [InlineData("94-559", "559x94")]
    [InlineData("", "")]
    public void A_rim_is_diameter_by_width_with_its_letters(string text, string sizes)
    {
        TextReading<RimSize> reading = RimSize.Read(text);
        Assert.Equal(sizes, string.Join(' ', reading.Values));
        Assert.Equal(reading.IsClear, RimSize.TryParse(text, null, out _));
        Assert.NotEqual(reading.IsClear, reading.Reason.Length > 0);
    }

    [Fact]
    public void Every_seat_width_and_type_has_a_text_and_a_code_of_its_own()
    {
        HashSet<string> keys = [];
        HashSet<long> codes = [];
        foreach (BeadSeat seat in BeadSeat.All)
        {
            foreach (int tenths in new[] { 100, 130, 190, 305, 999, 1_000 })
            {
                foreach (RimType? type in RimType.All.Where(t => t != RimType.HookedBead).Append(null))
                {
                    RimSize size = RimSize.Of(seat, tenths / 10m, type);
                    Assert.True(keys.Add(size.FitKey) && codes.Add(size.FitCode), size.FitKey);
                    Assert.Equal(size, RimSize.OfFitCode(size.FitCode));
                    Assert.Contains(size, RimSize.Read(size.FitKey).Values);
                    Assert.Equal((tenths / 10m, type), (size.InnerWidthMillimetres, size.Type));
                }
            }
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => RimSize.Of(BeadSeat.OfFitCode(622), 19.05m));
        Assert.Throws<ArgumentOutOfRangeException>(() => RimSize.Of(BeadSeat.OfFitCode(622), 19m, RimType.HookedBead));
        Assert.Throws<ArgumentOutOfRangeException>(() => RimSize.OfFitCode(6_000_000_000L));
    }

    /// <summary>Ranges and cells were typed apart: the ends of a range are the outermost allowed cells.</summary>
    [Fact]
    public void The_cells_of_2006_span_the_ranges_of_their_editions()
    {
        int[] tyres = [18, 20, 23, 25, 28, 32, 35, 37, 40, 44, 47, 50, 54, 57, 60, 62];
        foreach (int rim in new[] { 13, 15, 17, 19, 21, 23, 25, 27, 29 })
        {
            int[] now = [.. tyres.Where(t => WidthCells2006.Of(rim, t) is WidthCell.Before2006 or WidthCell.Since2006)];
            int[] before = [.. tyres.Where(t => WidthCells2006.Of(rim, t) is WidthCell.Before2006)];
            TyreWidthRange range = TyreWidthRange.Of(WidthEdition.Etrto2006, rim)!;
            TyreWidthRange old = TyreWidthRange.Of(WidthEdition.Before2006, rim)!;
            Assert.Equal((now[0], now[^1]), ((int)range.Least!.Value.Millimeters, (int)range.Most!.Value.Millimeters));
            Assert.Equal(before.Length == 0, old.Least is null);
            Assert.All(tyres, t => Assert.Equal(now.Contains(t), range.Holds(t)));
            Assert.All(tyres, t => Assert.Equal(before.Contains(t), old.Holds(t)));
            Assert.Equal(range.IsReconstructed, WidthCells2006.IsReconstructed(rim));
        }

        Assert.Equal(WidthCell.NotListed, WidthCells2006.Of(14, 25));
        Assert.Equal(WidthCell.NotListed, WidthCells2006.Of(17, 26));
        Assert.Equal(WidthCell.NotListed, default);
    }

    /// <summary>What a joint of the build judges rests on the same rows.</summary>
    [Theory]
    [InlineData("C", 2)]
    [InlineData("TC", 3)]
    public void The_judge_and_the_ranges_agree(string type, long edition)
    {
        foreach (TyreWidthRange row in TyreWidthRange.All.Where(r => r.Edition.FitCode == edition))
        {
            foreach (int tyre in Enumerable.Range(18, 90))
            {
                Build build = Build.From(Frame.Read("material steel"))
                    .With(Wheel.Read(FormattableString.Invariant($"rimType {type}; innerWidth {row.InnerWidth.Millimeters}; beadSeat 622")), Slot.RearWheel)
                    .With(Tyre.Read($"size {tyre}-622; bead folding"), Slot.RearTyre);
                Verdict verdict = build.Check().Findings.Single(f => f.Joint!.Id == "rear-tyre-width-on-rim").Verdict;
                Assert.True(row.Holds(tyre) == (verdict == Verdict.Fits), $"{row}: {tyre} is judged {verdict}");
            }
        }
    }

    [Fact]
    public void Measuring_rims_cover_every_tyre_width_once()
    {
        for (int tyre = 18; tyre <= 132; tyre++)
        {
            MeasuringRim rim = MeasuringRim.For(tyre);
            Assert.Single(MeasuringRim.All, r => r.NarrowestTyre.Millimeters <= tyre && tyre <= r.WidestTyre.Millimeters);
            Assert.InRange(rim.InnerWidth.Millimeters / tyre, 0.4, 0.95);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuringRim.For(UnitsNet.Length.FromMillimeters(17)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasuringRim.For(UnitsNet.Length.FromMillimeters(133)));
    }

    [Fact]
    public void Only_a_published_hookless_minimum_is_in_force()
    {
        Assert.Equal(29, HooklessMinimum.InForce(UnitsNet.Length.FromMillimeters(25))!.LeastTyre.Millimeters);
        Assert.All(new[] { 19, 21, 23, 24, 30 }, inner => Assert.Null(HooklessMinimum.InForce(UnitsNet.Length.FromMillimeters(inner))));
        Assert.Equal(5, HooklessMinimum.MostPressure.Bars);
    }

    [Fact]
    public void Widths_of_a_rim_type_carry_their_source()
    {
        Assert.Equal([13, 15, 17, 19, 21, 23, 25, 27, 29], RimWidths.Of(RimType.Crochet).Select(w => (int)w.Millimeters));
        Assert.Empty(RimWidths.Of(RimType.Hookless));
        Assert.Same(Sources.Memory, RimWidths.SourceOf(RimType.StraightSide, UnitsNet.Length.FromMillimeters(30.5)));
        Assert.Same(Sources.Iso5775Part2Extract, RimWidths.SourceOf(RimType.StraightSide, UnitsNet.Length.FromMillimeters(20)));
        Assert.Null(RimWidths.SourceOf(RimType.Crochet, UnitsNet.Length.FromMillimeters(18)));
        Assert.Equal(SourceKind.Memory, SpokeHoles.CountSource(24)!.Kind);
        Assert.Null(SpokeHoles.CountSource(30));
    }
}
