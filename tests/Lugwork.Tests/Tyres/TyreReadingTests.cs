using System.Text;
using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

public sealed class TyreReadingTests
{
    [Theory]
    [InlineData("37-622", "37-622")]
    [InlineData("37x622", "37-622")]
    [InlineData("622 \u00D7 37 mm", "37-622")]
    [InlineData("37\u2013622", "37-622")]
    [InlineData("37,0 - 622", "37-622")]
    [InlineData("700x25C", "25-622")]
    [InlineData("700 x 25 mm c", "25-622")]
    [InlineData("700x47c mm", "47-622")]
    [InlineData("37-622 MM", "37-622")]
    [InlineData("94-110", "94-110")]
    [InlineData("37-700", "ISO 37-700")]
    [InlineData("37\u2013700", "ISO 37-700")]
    [InlineData("ISO 28-700", "ISO 28-700")]
    [InlineData("etrto: 40-622", "40-622")]
    [InlineData("ISO 700 x 28", "ISO 28-700")]
    [InlineData("25-700C", "25-622")]
    [InlineData("700-25C", "25-622")]
    public void It_reads_one_size_out_of_characters_and_bytes(string text, string written)
    {
        Assert.Equal(written, TyreSize.Parse(text, null).ToString());
        Assert.Equal(written, TyreSize.Parse(Encoding.UTF8.GetBytes(text), null).ToString());
    }

    [Theory]
    [InlineData("700x28C", "28-622 30-622")]
    [InlineData("700x42", "42-622 44-622 47-622")]
    [InlineData("28-700C", "28-622 30-622")]
    [InlineData("28-700", "28-622 30-622 28-647 ISO 28-700")]
    [InlineData("32-700", "32-622 32-647 ISO 32-700")]
    [InlineData("35 x 700", "35-622 37-622 35-647 ISO 35-700")]
    [InlineData("37 \u00D7 700", "37-622 37-647 ISO 37-700")]
    [InlineData("26-700C", "")]
    [InlineData("17-700", "")]
    [InlineData("700x26C", "")]
    [InlineData("28-622C", "")]
    [InlineData("37-622 mmC", "")]
    [InlineData("37.5-622", "")]
    [InlineData("17-622", "")]
    [InlineData("133-622", "")]
    [InlineData("37-621", "")]
    [InlineData("700x0", "")]
    [InlineData("700x64", "")]
    [InlineData("700x114", "")]
    [InlineData("37-999999999", "")]
    [InlineData("999999999-37", "")]
    public void Doubt_and_refusal_keep_their_readings(string text, string readings)
    {
        Assert.False(TyreSize.TryParse(text, null, out TyreSize none));
        Assert.Equal(default, none);
        TextReading<TyreSize> reading = TyreSize.Read(text);
        Assert.Equal(readings, string.Join(' ', reading.Values));
        Assert.NotEmpty(reading.Reason);
        Assert.Throws<FormatException>(() => TyreSize.Parse(text, null));
        Assert.Throws<FormatException>(() => TyreSize.Parse(Encoding.UTF8.GetBytes(text), null));
    }

    [Fact]
    public void Each_width_with_each_number_up_to_1100_is_a_size_just_where_a_rim_has_that_seat_and_700_is_no_label()
    {
        HashSet<long> seats = [.. BeadSeat.All.Select(b => b.FitCode)];
        for (int width = 17; width < 134; width++)
        {
            for (int bead = 90; bead < 1_100; bead++)
            {
                bool real = width is >= 18 and <= 132 && seats.Contains(bead) && (bead != 700 || width == 37);
                if (TyreSize.TryParse($"{width}-{bead}", null, out TyreSize size) != real || (real && size != TyreSize.Of(width, BeadSeat.OfFitCode(bead))))
                {
                    Assert.Fail($"{width}-{bead} is read as {size}");
                }
            }
        }
    }
}
