using System.Globalization;
using Lugwork;
using Lugwork.Reading;
using nietras.SeparatedValues;

namespace SpecToNeeds;

/// <summary>A shop's list: article, part and text. The rows are invented; the same seed makes the same list.</summary>
internal static class ShopList
{
    private static readonly (string Part, string[] Texts)[] Kinds =
    [
        ("rearWheel", ["Hinterrad 12x148 Boost, XD, 6-Loch", "rear wheel 12x142, HG 11-speed road, center lock", "roue arrière 135 mm blocage rapide, HG 8/9/10", "rear wheel 135 mm", "rueda trasera 12x148 Boost Micro Spline", "rear wheel black"]),
        ("frontWheel", ["front wheel 15x110 Boost six-bolt", "Vorderrad 100 mm Schnellspanner", "ruota anteriore 12x100 center lock", "front wheel 100 mm"]),
        ("seatpost", ["Sattelstütze 27,2 x 350 mm", "seatpost 31.6 mm, 400 mm long", "tige de selle 30,9 x 400", "reggisella 27,2", "seatpost 27.2 or 31.6", "zadelpen zwart"]),
        ("cassette", ["cassette 9-speed HG 11-34", "Kassette 12-fach XD", "cassette 11-speed HG", "12v Micro Spline 10-51", "pacco pignoni 10v"]),
        ("chain", ["chain 11-speed", "Kette 9-fach", "chaîne 12 vitesses", "catena 10v", "chain 1/2 x 11/128"]),
        ("rearTyre", ["Reifen 37-622 faltbar", "pneu 700x25C", "tyre 700x28C", "cubierta 57-584", "copertone 28-622 rigido"]),
        ("frontRotor", ["rotor 180 mm six bolt", "Bremsscheibe 160 mm Center Lock", "disque 203 mm 6 trous", "rotor 170 mm"]),
        ("bottomBracket", ["bottom bracket BSA 68/73 mm, 24 mm spindle", "Innenlager BSA 68 mm Vierkant JIS", "movimento centrale ITA 70 mm, perno quadro ISO"]),
        ("handlebar", ["handlebar 31.8 mm, 780 mm wide", "Lenker 35 mm", "cintre 26,0 mm", "manillar 31,8 / 35 mm"]),
        ("frame", ["frame BSA 73, rear 12x148, seatpost 31.6", "Rahmen Einbaubreite 135 mm", "cadre carbone, axe 12x142, flat mount 140", "telaio acciaio, battuta 130 mm QR", "frame size L"]),
    ];

    public static IEnumerable<string> Make(int rows, int seed)
    {
        yield return "article;part;text";
        uint state = (uint)seed;
        for (int i = 1; i <= rows; i++)
        {
            state = Next(state);
            (string part, string[] texts) = Kinds[(state >> 16) % Kinds.Length];
            state = Next(state);
            yield return string.Create(CultureInfo.InvariantCulture, $"INV-{i:00000};{part};{texts[(state >> 16) % texts.Length]}");
        }
    }

    private static uint Next(uint state) => unchecked((state * 1_664_525u) + 1_013_904_223u);

    public static IEnumerable<SpecRow> Read(string path)
    {
        using SepReader reader = Sep.Reader(o => o with { Sep = new Sep(';') }).FromFile(path);
        List<SpecRow> rows = [];
        foreach (SepReader.Row row in reader)
        {
            rows.Add(new(Slot.Find(row["part"].ToString()), row["text"].ToString(), row["article"].ToString()));
        }

        return rows;
    }
}
