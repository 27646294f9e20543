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
    [InlineData("stem", "VORB;Schaftvorb. 22,2 mm;Lenker 25,4;silber;Lg A7;14,50", "bar=25.4 fixing=quill-22.2")]
    [InlineData("rear wheel", "HR;FH N3W;Alu-Nippel;7-4431;Bestand 2;229,00", "body=N3W")]
    [InlineData("frame", "RAHMEN;NB hi. 197;SA Ø12;Gr. L;Farbe sand;Art.0071;1", "rear=R197-12")]
    [InlineData("headset", "STS;o IS41/28.6;u IS52/40;sw;Art.1190;EAN 4099887766554;39,00", "crownRace=39.8 lowerCup=IS52 steerer=28.6 upperCup=IS41")]
    [InlineData("frame", "RAHMEN;HR 12x148 SA;o. Achse;beige;Art. 4-5566;1;299,-", "rear=R148-12")]
    [InlineData("frame", "RA;SR Ø inn. 26,4;weinrot;Art. 2-778;1;120 EUR", "seatTube=26.4")]
    [InlineData("frame", "FR;rear 12x148;st ø31.6;BSA 73;coal;#CF27;1 pc;£799", "rear=R148-12 seatTube=31.6 shell=BSA-73")]
    [InlineData("frame", "CADRES VILLE | t.s. 26,8mm | vert anis | réf 77-268 | qté 1 | 95 €", "seatTube=26.8")]
    [InlineData("bottom bracket", "INNENLAGER;4kt JIS;BSA;68;Art. 5309;Stk 14;12,50", "family=BSA narrowestShell=68 takes=square-JIS widestShell=68")]
    [InlineData("rear shock", "SHK|eyelet 230x65|h/w up. 30x8|h/w low. 25x8|orange|S/N on req.|$225", "lowerHardware=25x8 size=eyelet-230x65 upperHardware=30x8")]
    [InlineData("rear shock", "SHOCK;e2e 250;str 75;used;#D2;1 pc;€190", "size=eyelet-250x75")]
    [InlineData("fork", "FORK|trav 160|A-C 567|stealth blk|#7F|1 pc|£460", "axleToCrown=567 travel=160")]
    [InlineData("seatpost", "TIJA;27.2;350;aluminio;abraz. raíles 7x9;ref T-2735;negra;2 u.;29,90 €", "diameter=27.2 length=350 material=aluminium railClamp=7x9")]
    [InlineData("rear derailleur", "DERAILLEUR;12s;draadloos;zwart;1 st;329;art AD-12W", "chain=12 signal=wireless")]
    [InlineData("rear wheel", "BODY;voor XDR cassette;zwart;5 st;57,00;art BD-XDR;lade 12", "body=XDR")]
    [InlineData("rear rotor", "DISCHI;post. 200 mm;Center Lock;acciaio;cod. D200CL;5;24,50", "fixing=center-lock size=200")]
    [InlineData("crankset", "GUARNITURE;perno 28,99;corona diretta 8 viti;nera;cod. GU2899;190 €", "directMount=8-bolt spindle=28.99")]
    [InlineData("frame", "FRAME/HT up. ZS44/HT low. ZS56/rust/ID 5590/1 pc/$310", "headTubeLower=56 headTubeUpper=44")]
    [InlineData("frame", "FRAME/rear brk IS2000/dk red/#4402/1 pc/£120", "rearBrake=IS-rear")]
    [InlineData("front rotor", "DISC F/160/center lock/blk arms/#DK6/20 pcs/$24.99", "fixing=center-lock size=160")]
    [InlineData("crankset", "CRANK/BCD 130/5 arms/polished/#5521/2 sets/$60", "boltCircle=5x130")]
    [InlineData("frame", "Frame,rear OLD 141 QR,wht/blu,SKU FR0042,qty 6,199.00 USD", "rear=R141-QR")]
    [InlineData("frame", "FRAME FAT,TA 12x177 R,ice grey,FR-0441,qty 3,$1,050", "kind=fat rear=R177-12")]
    [InlineData("front rotor", "Rotor,140mm,Center Lock,silver/black,P/N 60441,10 pcs,$32.99", "fixing=center-lock size=140")]
    [InlineData("upper headset bearing", "RODAM DIR SUP,33.05x47x7,36/45°,10 uds,ref R-0447,8.90", "size=33.05x47x7-36/45")]
    [InlineData("frame", "RH;SA hi. 148x12;sw;Nr. 2-1481;1;1.799,00", "rear=R148-12")]
    [InlineData("frame", "21-3388|frame set|BB: T47-85.5|matt grey|1 pc|1.499,00", "shell=T47-85.5")]
    [InlineData("frame", "FRAMES;BB86;deep blue;RR-86;2;£ 1,190.00", "shell=PF41-86.5")]
    [InlineData("frame", "CADRE;12x142;tige 27,2;réf TI-885;1;2 450 €", "rear=R142-12 seatTube=27.2")]
    [InlineData("fork", "FOURCHE;Boost 15x110;axe trav.;noir;REF FK-551;x2;369,00 €", "front=F110-15B")]
    [InlineData("frame", "FRM-C;ZP 27.2;zwart;mt S;€ 1.350;vrrd 1", "seatTube=27.2")]
    [InlineData("frame", "TEL-55;RS 27.2;antracite;tg M;€ 640;1 disp.", "seatTube=27.2")]
    [InlineData("frame", "FAT-FRM;achter 177x12 steekas;groen;€ 560;showmodel;1", "rear=R177-12")]
    [InlineData("frame", "RH hi. Achsgewinde M12x1,0;Ersatzteil-Nr. 88-1001;sw;3 St.;€ 14,00", "rearAxleThread=M12x1.0")]
    [InlineData("front rotor", "RS-V;180;centerlock;rvs;€ 27,50;vrrd 11", "fixing=center-lock size=180")]
    [InlineData("handlebar", "Lenker;Kl. 25,4;Griffe 22,2;silber;Nr. 0041-L;6;24,50", "clamp=25.4 grip=22.2")]
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
    [InlineData("frame", "seat tube bore 28.6, outside 25.4")]
    [InlineData("seatpost", "27,2;6;39,90")]
    [InlineData("front tyre", "TYRE;23-622;28-622;qty 1;EUR 20")]
    [InlineData("rear wheel", "WHEEL/XD/XDR/blk/red/£200")]
    [InlineData("rear wheel", "WHEEL/HG or XD/blk/#44/£200")]
    [InlineData("frame", "FRAME/QR/TA/XL/blk/red/£200")]
    [InlineData("frame", "TELAI;post. 160;cod. 2;5;24,50")]
    [InlineData("frame", "FRAME;SR 56;BSA 68;Art 3;1;30,-")]
    [InlineData("seatpost", "POST,27.2,30.9,350,black,SKU 12,9.90 USD")]
    [InlineData("frame", "Frame,27.2,350,blk,SKU 55,9.90 USD")]
    [InlineData("seatpost", "POST/27.2/30.9/black/#12/1 pc/£20")]
    [InlineData("seatpost", "PEN;27.2;30.9;zwart;€ 1.100,00;vrrd 2")]
    [InlineData("front rotor", "RS-V;160;180;centerlock;€ 27,50;vrrd 11")]
    [InlineData("rear wheel", "WIEL;142x12;148x12;zwart;x2;€ 210,00")]
    [InlineData("frame", "FRM;ZP 27.2;RS 30.9;zwart;€ 350;vrrd 1")]
    [InlineData("chain", "KT;9sp;11sp;zilver;€ 12,95;vrrd 80")]
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
