using System.Collections.Immutable;

namespace Lugwork.Tests.Fits;

/// <summary>An unknown length is tried just below, at and just above each figure where a verdict changes: a band between two of them is never stepped over.</summary>
public sealed class CompletionTests
{
    private const int Lengths = 1;

    private static FieldInput<Frame, Dimension> Input() => new(Slot.Frame, "length", "length", _ => default, "caliper") { Family = Lengths };

    private static Candidates Value(long code) => new(KnownState.Value, code, code, null);

    private static Verdict Common(Relation relation, Candidates first, Candidates second)
    {
        CandidateRow row = default;
        (row[0], row[1]) = (first, second);
        return new Joint("band", "Band", relation, Input(), Input()) { Sources = [] }.Common(row);
    }

    [Fact]
    public void A_band_between_two_fixed_figures_is_found()
    {
        Band band = new([100, 102], [], v => v[0] is > 100 and < 102);
        Assert.Equal(Verdict.NeedsMeasuring, Common(band, default, Value(7)));
        Assert.Equal(Verdict.NeedsMeasuring, Common(band, new(KnownState.Measured, 95, 105, null), Value(7)));
        Assert.Equal(Verdict.Fits, Common(band, new(KnownState.Measured, 102, 105, null), Value(7)));
        Assert.Equal(Verdict.Fits, Common(band, new(KnownState.Measured, 95, 100, null), Value(7)));
        Assert.Equal(Verdict.Unsafe, Common(band, Value(101), default));
    }

    [Theory]
    [InlineData(49)]
    [InlineData(50)]
    [InlineData(51)]
    public void A_single_length_at_or_beside_a_gap_below_another_is_found(long off)
    {
        Band band = new([], [50], v => v[1] - v[0] == off);
        Assert.Equal(Verdict.NeedsMeasuring, Common(band, default, Value(200)));
        Assert.Equal(Verdict.NeedsMeasuring, Common(band, default, new(KnownState.OneOf, 200, 300, [200, 300])));
        Assert.Equal(Verdict.NeedsMeasuring, Common(band, default, new(KnownState.Measured, 200, 201, null)));
        Assert.Equal(Verdict.Unsafe, Common(band, Value(200 - off), Value(200)));
    }

    [Theory]
    [InlineData(200, 49)]
    [InlineData(200, 50)]
    [InlineData(200, 51)]
    [InlineData(210, 49)]
    [InlineData(210, 50)]
    [InlineData(210, 51)]
    public void A_gap_is_tried_below_both_ends_of_what_was_measured(long end, long off) =>
        Assert.Equal(Verdict.NeedsMeasuring, Common(new Band([], [50], v => v[1] == end && v[1] - v[0] == off), default, new(KnownState.Measured, 200, 210, null)));

    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(1)]
    public void A_single_length_at_or_beside_another_is_found(long off)
    {
        Band band = new([], [], v => v[0] == v[1] + off);
        Assert.Equal(Verdict.NeedsMeasuring, Common(band, default, Value(200)));
        Assert.Equal(Verdict.NeedsMeasuring, Common(band, default, new(KnownState.OneOf, 200, 300, [200, 300])));
        Assert.Equal(Verdict.Fits, Common(band, new(KnownState.Measured, 300, 310, null), Value(200)));
    }

    [Theory]
    [InlineData(30, 30, 25.5, "4.5 and 4.5", Verdict.Fits)]
    [InlineData(30, 31, 25.5, "4.5 to 5.5 and 4.5 to 5.5", Verdict.Fits)]
    [InlineData(20, 20, 25.5, "-5.5 and 5.5", Verdict.DoesNotFit)]
    [InlineData(20, 21, 25.5, "-5.5 to -4.5 and 4.5 to 5.5", Verdict.DoesNotFit)]
    [InlineData(25, 26, 25.5, "-0.5 to 0.5 and -0.5 to 0.5", Verdict.NeedsMeasuring)]
    [InlineData(25.5, 26, 25.5, "0 to 0.5 and 0 to 0.5", Verdict.Fits)]
    [InlineData(25, 25.49, 25.5, "-0.5 to -0.01 and 0.01 to 0.5", Verdict.DoesNotFit)]
    public void A_sum_tells_its_figure_or_its_range_and_what_is_over(double least, double most, double other, string told, Verdict verdict)
    {
        Reason reason = new("reason", "reason");
        SumRelation sum = new("difference", "mm", v => v[0] - v[1], [1, -1], new SumBand(long.MinValue, new(Verdict.DoesNotFit, reason)), new SumBand(0, new(Verdict.Fits, reason)));
        CandidateRow row = default;
        (row[0], row[1]) = (new(KnownState.Measured, Nanometres(least), Nanometres(most), null), Value(Nanometres(other)));
        Assert.Equal(told, sum.Tell("[sum] and [over]", [Input(), Input()], row));
        Assert.Equal(verdict, sum.Common([Input(), Input()], row));
    }

    private static long Nanometres(double millimetres) => (long)Math.Round(millimetres * 1_000_000);

    private sealed class Band(ImmutableArray<long> cuts, ImmutableArray<long> gaps, Func<long[], bool> isUnsafe) : Relation, ICutsLengths
    {
        private static readonly Reason Told = new("told", "told");

        public override string Kind => "band";

        public ImmutableArray<long> Cuts => cuts;

        public ImmutableArray<long> Gaps => gaps;

        public override Outcome Judge(ReadOnlySpan<long> values) => new(isUnsafe(values.ToArray()) ? Verdict.Unsafe : Verdict.Fits, Told);
    }
}
