using System.Text;
using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

public sealed class TyreLabelTests
{
    [Theory]
    [InlineData("26 x 1.75", "26 x 1.75")]
    [InlineData("26x1,75\u2033", "26 x 1.75")]
    [InlineData("26\u2033 \u00D7 1.75\u2033", "26 x 1.75")]
    [InlineData("26 in x 1.75 in", "26 x 1.75")]
    [InlineData("26 x 1 3/4", "26 x 1 3/4")]
    [InlineData("26x1-3/4", "26 x 1 3/4")]
    [InlineData("26 x 1\u00BE", "26 x 1 3/4")]
    [InlineData("26 x 1 \u00BE", "26 x 1 3/4")]
    [InlineData("26 x 1 3/4 (S-7)", "26 x 1 3/4")]
    [InlineData("26 x 2.10", "26 x decimal")]
    [InlineData("26 x 3.0", "26 x decimal")]
    [InlineData("26 x 1.25", "26 x 1.25 old|26 x decimal")]
    [InlineData("26 x 1.25 old", "26 x 1.25 old")]
    [InlineData("26 x 1 3/8", "26 x 1 3/8 E.A.3|26 x 1 3/8 S-6")]
    [InlineData("26 x 1 3/8 (E.A.3.)", "26 x 1 3/8 E.A.3")]
    [InlineData("26x1 3/8 ea3", "26 x 1 3/8 E.A.3")]
    [InlineData("26x1 3/8 S6", "26 x 1 3/8 S-6")]
    [InlineData("28 x 1 5/8 x 1 3/8", "28 x 1 5/8 x 1 3/8")]
    [InlineData("28x1\u215Dx1\u215C", "28 x 1 5/8 x 1 3/8")]
    [InlineData("28 x 1 1/2", "28 x 1 1/2")]
    [InlineData("28 x 1 1/2 F13", "28 x 1 1/2 F.13")]
    [InlineData("29x2.4", "29 x decimal")]
    [InlineData("29 x 2", "29 x decimal")]
    [InlineData("29 x 2.00", "29 x 2.0")]
    [InlineData("27,5 x 2,25", "27.5 x decimal")]
    [InlineData("27 x 1", "27 x any")]
    [InlineData("650B", "650B")]
    [InlineData("650 x 47 b", "650B")]
    [InlineData("650x38B", "650 x 38B")]
    [InlineData("650 CS", "650 x 45C")]
    [InlineData("650", "650A|650B|650C|650 x 45")]
    [InlineData("700 x 25", "700")]
    [InlineData("500A", "500A")]
    [InlineData("12 1/2 x 2 1/4 (300 x 55A)", "12 1/2 x 2 1/4 (300 x 55A)")]
    [InlineData("12\u00BDx2\u00BC", "12 1/2 x 2 1/4")]
    [InlineData("28 x decimal", "28 x decimal")]
    public void A_label_is_read_in_every_spelling(string text, string labels) => Assert.Equal(labels, string.Join('|', TyreLabel.Read(text).Values));

    [Theory]
    [InlineData("26")]
    [InlineData("28")]
    [InlineData("20")]
    [InlineData("26 x")]
    [InlineData("26 x 2")]
    [InlineData("26 x 0.99")]
    [InlineData("26 x 3.01")]
    [InlineData("24 x 1.49")]
    [InlineData("24 x 2.126")]
    [InlineData("18 x 1.74")]
    [InlineData("26 x 1 3/7")]
    [InlineData("26 x 1 5/8")]
    [InlineData("26 x 2 x 1 3/4")]
    [InlineData("26 x 1 3/8 S-7")]
    [InlineData("700 x 25.5C")]
    [InlineData("640B")]
    [InlineData("-26 x 1.75")]
    public void What_no_table_has_is_refused_with_a_reason(string text)
    {
        TextReading<TyreLabel> reading = TyreLabel.Read(text);
        Assert.Empty(reading.Values);
        Assert.NotEmpty(reading.Reason);
    }

    [Theory]
    [InlineData("28 x 1 5/8 x 1 3/8", "37-622")]
    [InlineData("650 x 42B", "44-584")]
    [InlineData("27 x 1 1/4", "32-630")]
    [InlineData("26 x 1 3/8 EA3", "37-590")]
    [InlineData("200 x 50", "50-94")]
    [InlineData("14 x 1 3/8", "37-298 37-288")]
    [InlineData("26 x 1.75", "44-559 47-559")]
    [InlineData("500A", "37-440 37-438")]
    [InlineData("29 x 2.0", "")]
    [InlineData("28 x 1 1/2", "")]
    [InlineData("26 x 1 3/8", "")]
    [InlineData("650 x 47B", "")]
    [InlineData("700B", "")]
    [InlineData("26 x 1.25", "")]
    public void A_label_is_a_tyre_size_only_where_one_is_printed_beyond_doubt(string text, string sizes)
    {
        TextReading<TyreSize> reading = TyreSize.Read(text);
        Assert.Equal(sizes, string.Join(' ', reading.Values));
        Assert.Equal(reading.IsClear, TyreSize.TryParse(text, null, out _));
        TextReading<TyreSize> bytes = TyreSize.Read(Encoding.UTF8.GetBytes(text));
        Assert.Equal(reading.Values, bytes.Values);
        Assert.Equal(reading.Reason, bytes.Reason);
    }

    [Theory]
    [InlineData("29 x 2.4", "622")]
    [InlineData("650 x 47B", "584")]
    [InlineData("26 x 2.10", "559")]
    [InlineData("26 x 1.25", "599 559")]
    [InlineData("26 x 1 3/8", "590 597")]
    [InlineData("28 x 1 1/2", "635 622")]
    [InlineData("500A", "440 438")]
    [InlineData("700C", "622")]
    [InlineData("700D", "")]
    [InlineData("16 x 1.35", "")]
    [InlineData("29 in", "622")]
    [InlineData("27.5", "584")]
    [InlineData("700", "622 647 ISO 700")]
    [InlineData("700 mm", "622 647 ISO 700")]
    [InlineData("650", "590 584 571 559")]
    [InlineData("650 CS", "571")]
    public void A_label_says_its_bead_seats(string text, string seats) => Assert.Equal(seats, string.Join(' ', BeadSeat.Read(text).Values));

    [Fact]
    public void A_refused_label_tells_the_seat_and_what_is_printed_with_it()
    {
        Assert.Contains("584 mm", TyreSize.Read("650 x 47B").Reason, StringComparison.Ordinal);
        Assert.Contains("52-622", TyreSize.Read("29 x 2.0").Reason, StringComparison.Ordinal);
        Assert.Contains("590 or 597", TyreSize.Read("26 x 1 3/8").Reason, StringComparison.Ordinal);
        Assert.Contains("587", BeadSeat.Read("700D").Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_row_stands_by_its_own_tables()
    {
        Assert.Equal(Enumerable.Range(1, TyreLabel.All.Length).Select(i => (long)i), TyreLabel.All.Select(l => l.FitCode));
        foreach (TyreLabel label in TyreLabel.All)
        {
            Assert.NotEmpty(label.Seats);
            Assert.All(label.Sizes, s => Assert.Contains(s.Bead, label.Seats));
            Assert.All(label.Seats, s => Assert.Contains(label, s.Labels));
            Assert.True(label.Seats.Length == 1 || label.IsDoubtful, label.FitKey);
        }
    }

    /// <summary>A decimal and the fraction of its value never share a row, nor a seat where both are in the tables.</summary>
    [Theory]
    [InlineData("26 x 1.75", "26 x 1 3/4")]
    [InlineData("26 x 1.5", "26 x 1 1/2")]
    [InlineData("26 x 1.375", "26 x 1 3/8")]
    [InlineData("26 x 1.25", "26 x 1 1/4")]
    [InlineData("26 x 1.0", "26 x 1")]
    [InlineData("20 x 1.75", "20 x 1 3/4")]
    [InlineData("16 x 1.75", "16 x 1 3/4")]
    public void A_fraction_is_not_the_decimal_of_its_value(string text, string fraction)
    {
        IEnumerable<BeadSeat> Seats(string of) => TyreLabel.Read(of).Values.SelectMany(l => l.Seats);
        Assert.NotEmpty(Seats(text));
        Assert.NotEmpty(Seats(fraction));
        Assert.Empty(Seats(text).Intersect(Seats(fraction)));
    }
}
