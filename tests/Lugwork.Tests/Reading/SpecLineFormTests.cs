using System.Net;
using System.Text;
using System.Text.Json;
using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>The same line as it comes from the source of a page, from a file, from a table or from a list says the same.</summary>
public sealed class SpecLineFormTests
{
    /// <summary>Every line of the first open set that is read, with its signs by their names, read byte by byte in two other encodings, as a member of a file, as a field of a table, and with tabs for blanks.</summary>
    [Theory]
    [InlineData("names")]
    [InlineData("names of names")]
    [InlineData("bytes of Latin-1")]
    [InlineData("bytes of Windows-1252")]
    [InlineData("a field of a table")]
    [InlineData("an arrow before it")]
    public void A_line_in_another_form_says_the_same(string form)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        List<string> wrong = [];
        using JsonDocument lines = JsonDocument.Parse(File.ReadAllText(Path.Combine(SpecCorpus.Folder, "lines-open.json")));
        foreach (JsonElement line in lines.RootElement.EnumerateArray().Where(l => l.GetProperty("outcome").GetString() == "read"))
        {
            string text = line.GetProperty("text").GetString()!;
            string? hint = line.GetProperty("hint").GetString();
            string other = form switch
            {
                "names" => WebUtility.HtmlEncode(text),
                "names of names" => WebUtility.HtmlEncode(WebUtility.HtmlEncode(text)),
                "bytes of Latin-1" => Encoding.Latin1.GetString(Encoding.UTF8.GetBytes(text)),
                "bytes of Windows-1252" => Encoding.GetEncoding(1252).GetString(Encoding.UTF8.GetBytes(text)),
                "a field of a table" => text.Contains('"', StringComparison.Ordinal) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text,
                _ => "\u2192 " + text,
            };
            Slot? slot = hint is null ? null : Slot.All.Single(s => s.Name == hint);
            SpecLine read = SpecLine.Read(slot, other);
            if (Told(read) != Told(SpecLine.Read(slot, text)) || read.Values.Any(v => v.Words != other[v.Span.Start..v.Span.End]))
            {
                wrong.Add($"'{other}' says '{Told(read)}'");
            }
        }

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("frame", "Rear: 12&amp;times;148 &amp; BSA 73", "rear=R148-12 shell=BSA-73")]
    [InlineData("frame", "seatpost &Oslash; 27.2", "seatTube=27.2")]
    [InlineData("fork", "steerer 1 1/8&#8243; &ndash; 1.5&#x2033;", "steererShape=tapered-1-1/8-1.5")]
    [InlineData("frame", "Frein\u00C2 : post mount 160", "rearBrake=PM-160")]
    [InlineData("frame", "\u00C3  l'arri\u00C3\u00A8re 12x148", "rear=R148-12")]
    [InlineData("fork", "\"steerer\": \"tapered 1 1/8\\\" - 1 1/2\\\"\",", "steererShape=tapered-1-1/8-1.5")]
    [InlineData("frame", "\"seatpost\": \"27.2\",", "seatTube=27.2")]
    [InlineData("fork", "1 in.1/8-1 in.1/2", "steererShape=tapered-1-1/8-1.5")]
    [InlineData("rear shock", "7-7/8 in. x 2 in.", "size=eyelet-200x51")]
    [InlineData("frame", "disque arri\u00E8re 180 mm. maxi", "largestRearRotor=180")]
    [InlineData("front wheel", "rim 45 mm. deep, 622", "beadSeat=622 rimDepth=45")]
    [InlineData("frame", "1) PM160 rear", "rearBrake=PM-160")]
    [InlineData("cassette", "3. 8-fach HG Kassette 12-32", "pattern=HG-8")]
    [InlineData("frame", "axe traversant arr. \u2192 12\u2044142", "rear=R142-12")]
    [InlineData("stem", "QUILL \u230022,2 mm \u00BB bar \u230025,4", "bar=25.4 fixing=quill-22.2")]
    [InlineData("frame", "arri\u00E8re\t:\troad\tboost\t12\t\u00D7\t148", "rear=R148-12RB")]
    [InlineData("frame", "triangle\tarri\u00E8re\td'une\tpi\u00E8ce,\tne\ts'ouvre\tpas", "rearTriangle=closed")]
    [InlineData("stem", "bar clamp 31.8, steerer 1 - 1/8\"", "bar=31.8 fixing=clamp-28.6")]
    [InlineData("rear wheel", "Schraubkranz, Gewinde 1\u00B7375\" x 24", "thread=1.375x24")]
    [InlineData("cassette", "xdr - 12 velocit\u00E0 - 10\u00F736", "pattern=XDR speeds=12")]
    [InlineData("rear inner tube", "28/47 - 622, Schrader 40", "narrowestTyre=28 seat=622 valve=schrader valveLength=40 widestTyre=47")]
    public void A_form_says_what_it_stands_for(string slot, string text, string values) => Assert.Equal(values, Told(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text)));

    [Theory]
    [InlineData("fork", "steerer 3. 1 inch")]
    [InlineData("seatpost", "27. 2")]
    [InlineData("frame", "axle 15 mm \u2192 12 mm")]
    [InlineData("seatpost", "\"27\" 2\"")]
    [InlineData("frame", "rear axle 12 &\u0023177; 142")]
    public void A_form_that_can_be_another_thing_is_in_doubt(string slot, string text) => Assert.Equal("", Told(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text)));

    private static string Told(SpecLine line) => string.Join(" ", line.Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal));
}
