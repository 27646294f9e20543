using System.Globalization;
using System.Text.Json;
using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Sentences of six languages, each with every value of its field: a word that is known beside one value is known beside all of them.</summary>
public sealed class SentenceTests
{
    [Fact]
    public void Every_sentence_is_read_with_every_value_of_its_field()
    {
        List<string> wrong = [];
        int sentences = 0;
        using JsonDocument families = JsonDocument.Parse(File.ReadAllText(Path.Combine(SpecCorpus.Folder, "..", "sentences.json")));
        foreach (JsonElement family in families.RootElement.EnumerateArray())
        {
            string? name = family.GetProperty("hint").GetString();
            Slot? hint = name is null ? null : Slot.All.Single(s => s.Name == name);
            foreach (JsonElement sentence in family.GetProperty("sentences").EnumerateArray())
            {
                foreach (JsonProperty value in family.GetProperty("values").EnumerateObject())
                {
                    string text = sentence.GetString()!.Replace("{}", value.Name, StringComparison.Ordinal);
                    string told = Told(SpecLine.Read(hint, text));
                    sentences++;
                    if (told != value.Value.GetString())
                    {
                        wrong.Add($"{name}: '{text}' says '{told}', not '{value.Value}'");
                    }
                }
            }
        }

        Assert.Empty(wrong);
        Assert.True(sentences > 10_000, sentences.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>What stands around a line in a list, a shop or an advertisement takes nothing from it and adds nothing.</summary>
    [Theory]
    [InlineData("1. {0}")]
    [InlineData("**{0}**")]
    [InlineData("*** {0} ***")]
    [InlineData(">>> {0} <<<")]
    [InlineData("~~ {0} ~~")]
    [InlineData("\u201C{0}\u201D")]
    [InlineData("<td>{0}</td>")]
    [InlineData("{0}, size M")]
    [InlineData("{0} taille M")]
    [InlineData("{0} talla L")]
    [InlineData("{0} maat XL")]
    [InlineData("{0} (2019)")]
    [InlineData("{0} - BJ 2018")]
    [InlineData("Modell 2020: {0}")]
    [InlineData("{0} qty 1")]
    [InlineData("{0} / Menge: 2")]
    [InlineData("SKU 99881: {0}")]
    [InlineData("Art.-Nr. 12345 {0}")]
    [InlineData("{0} 2 jaar garantie")]
    [InlineData("{0} f\u00FCr 30\u20AC")]
    [InlineData("{0} 450 Gramm")]
    [InlineData("{0} high quality")]
    [InlineData("{0} inkl. Rechnung")]
    public void What_stands_around_a_line_changes_nothing(string dress)
    {
        (string Slot, string Text)[] lines =
        [
            ("frame", "rear axle 12x142"), ("frame", "Tretlager T47 85,5"), ("frame", "tija de sill\u00EDn 27,2 mm"), ("frame", "flat mount 160"), ("frame", "split seat stay for belts"),
            ("fork", "pivot conique 1\"1/8 - 1\"1/2"), ("fork", "crown race seat 30.0 mm"), ("rear wheel", "corpetto XDR"), ("rear rotor", "140mm schijf, Centerlock"),
            ("headset", "ZS44/28.6 ZS56/40"), ("chain", "cha\u00EEne 11 vit."), ("rear tyre", "buitenband 37-622 zwart"), ("rear shock", "D\u00E4mpfer 210x55"), ("seat clamp", "collarino 34,9"),
        ];
        foreach ((string slot, string text) in lines)
        {
            Slot part = Slot.All.Single(s => s.Name == slot);
            string plain = Told(SpecLine.Read(part, text));
            string dressed = string.Format(CultureInfo.InvariantCulture, dress, text);
            Assert.NotEqual("", plain);
            Assert.True(Told(SpecLine.Read(part, dressed)) == plain, $"'{dressed}' says '{Told(SpecLine.Read(part, dressed))}', not '{plain}'");
        }
    }

    /// <summary>Sizes that a line leaves open stay open, however it writes them.</summary>
    [Theory]
    [InlineData("stem", "\u00D8 25,4 mm")]
    [InlineData("stem", "25.4")]
    [InlineData("front rim brake", "\u00E9trier grande port\u00E9e")]
    [InlineData("rear rim brake", "Bremse mit langem Schenkelma\u00DF")]
    [InlineData("rear rotor", "> 180 mm")]
    [InlineData("seatpost", "~27.2")]
    [InlineData("frame", "PM 160 / 180")]
    [InlineData("cassette", "XD / Micro Spline, 12-speed")]
    [InlineData("fork", "tapered 1-1/8\" or 1-1/2\"")]
    public void What_is_open_stays_open(string slot, string text) => Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    private static string Told(SpecLine line) => string.Join(" ", line.Values.Select(v => $"{v.Field}={v.Key}").Order(StringComparer.Ordinal));
}
