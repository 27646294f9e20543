using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Rows of a shop's export: numbers of articles, bar codes, stock and prices say nothing of the part, and every other figure still counts.</summary>
/// <remarks>The rows are our own; their shape is common practice, no source.</remarks>
public sealed class ExportRowTests
{
    [Theory]
    [InlineData("frame", "RAHMEN;StA hinten 142x12;schwarz;RN-1412;1;430,00", "rear=R142-12")]
    [InlineData("frame", "CDR-071|PEDALIER|BB30|73mm|rojo|499,00|1", "shell=BB30-73")]
    [InlineData("frame", "CADRE VTT;moyeu AR 12x148;noir;1;stk 2;1 350,00;CB 3700012148010", "rear=R148-12")]
    [InlineData("front tyre", "COPERTONI ANT;23-622;nero;cod. 6080;EUR 21;q 18", "size=23-622")]
    [InlineData("rear wheel", "MOZZI POST|190mm|QR|nero|cod. 7501|EUR 95", "hub=R190-QR")]
    [InlineData("rear tyre", "BUITENBAND;ETRTO 50-559;ZW;ART 3380;VRD 27;EUR 19,95", "size=50-559")]
    [InlineData("front rotor", "ROTOR F; 203mm; CENTER-LOCK; steel; qty 4; 50014; €54", "fixing=center-lock size=203")]
    [InlineData("chain", "CADENA;12V;plata;ref C12P;26,00;16", "size=12")]
    [InlineData("cassette", "KASS; HG; 9-f.; 11-34; silber; EAN 4000012345674; 3 Stk; 24,90", "pattern=HG-9")]
    [InlineData("headset", "SERIE STERZO|EC34/28.6|EC34/30|nera|cod. 1010|EUR 55", "crownRace=30 lowerCup=EC34 steerer=28.6 upperCup=EC34")]
    [InlineData("headset", "ART;EC34/28.6;EC34/30;noir;1;stk 8;129,00;réf. RAV12", "crownRace=30 lowerCup=EC34 steerer=28.6 upperCup=EC34")]
    [InlineData("fork", "HQ-2231 / EJE PAS. / 150x15 / negro / 1 ud / 12,00", "front=F150-15")]
    [InlineData("seatpost", "SATTELSTÜTZE;25,4x300;silber;SS-254;7;19,90", "diameter=25.4 length=300")]
    [InlineData("chain", "KETTE;11-f.;118 Gl.;silber;K-11118;10 Stk;26,95", "size=11")]
    [InlineData("fork", "GABEL;Ausfallende QR 9x100;rot;G-0100;1;60,-", "front=F100-QR9")]
    public void What_a_row_says_of_trade_says_nothing_of_the_part(string slot, string text, string expected)
    {
        SpecLine line = SpecLine.Read(Slot.All.Single(s => s.Name == slot), text);

        Assert.Equal(expected, string.Join(' ', line.Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal)));
    }

    /// <summary>A figure that is no sum and no count stays open, and two sizes stay two.</summary>
    [Theory]
    [InlineData("seatpost", "POST;27.2;30.9;black;ref P27;21,00;6")]
    [InlineData("frame", "FRAME;BB BSA 68;73 mm;blue;ref F68;450,00;1")]
    [InlineData("rear wheel", "WHEEL;142x12;148x12;black;qty 2;210,00")]
    [InlineData("front rotor", "ROTOR;160;180;six bolt;qty 4;12,00")]
    [InlineData("seatpost", "POST;27,20;30,90;black;ref P27;6")]
    [InlineData("chainring", "RING;BCD 110;130;5 arms;qty 4;30,00")]
    [InlineData("frame", "FRAME;148;142;qty 1;EUR 500")]
    [InlineData("front tyre", "TYRE;23-622;28-622;qty 1;EUR 20")]
    public void Two_sizes_in_a_row_stay_two(string slot, string text)
    {
        SpecLine line = SpecLine.Read(Slot.All.Single(s => s.Name == slot), text);

        Assert.Empty(line.Values);
    }

    /// <summary>A line of the corpus reads in a row as it reads alone, in eight shapes of rows.</summary>
    [Theory]
    [InlineData("TEIL;{0};schwarz;RE-5762;6;39,90")]
    [InlineData("PIEZA;{0};negro;ref C2847;4,90;80")]
    [InlineData("ART;{0};noir;1;stk 8;129,00;réf. RAV12")]
    [InlineData("{0}|nero|cod. 6067|EUR 33|q 9")]
    [InlineData("{0};ZW;ART 3303;VRD 6;EUR 33")]
    [InlineData("{0}; blk; qty 4; 50014; $54")]
    [InlineData("{0} | silver | 4012345678901 | 3 pcs | 21,90 EUR")]
    [InlineData("CAS-0933;12,95;{0};plata;8 uds")]
    public void A_line_reads_in_a_row_as_it_reads_alone(string row)
    {
        (int lines, int less) = (0, 0);
        foreach ((Slot? slot, string text) in SpecCorpus.Named("open").Texts.Where(t => t.Slot is not null && t.Text.Length < 200))
        {
            string[] alone = Told(SpecLine.Read(slot, text));
            string[] within = Told(SpecLine.Read(slot, string.Format(System.Globalization.CultureInfo.InvariantCulture, row, text)));

            Assert.Empty(within.Except(alone));
            lines += alone.Length > 0 ? 1 : 0;
            less += alone.Except(within).Any() ? 1 : 0;
        }

        Assert.True(lines > 300, $"{lines} lines");
        Assert.True(less <= lines / 50, $"{less} of {lines} lines say less in a row");
    }

    private static string[] Told(SpecLine line) => [.. line.Values.Select(v => $"{v.Slot.Key}.{v.Field}={v.Key}")];
}
