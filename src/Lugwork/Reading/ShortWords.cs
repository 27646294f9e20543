using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>Words that lists and exports cut short, with or without a point behind them: "Seilz.", "6 TORN", "Lenkerkl. 35".</summary>
/// <remarks>Common practice, no source. A short form that is a word of its own in one of the six languages, or that two words are cut to, is none.</remarks>
internal static class ShortWords
{
    private static readonly FrozenDictionary<string, string> Whole = Rows.SelectMany(r => r.Short.Split(' ').Select(s => (Key: s, r.Word))).ToFrozenDictionary(r => r.Key, r => r.Word, StringComparer.Ordinal);

    /// <summary>The words and what they are cut to.</summary>
    public static ImmutableArray<(string Word, string Short)> Rows =>
    [
        ("tornillos", "torn tornil"),
        ("abrazadera", "abraz"),
        ("hidraulico", "hidr hidraul"),
        ("hydraulisch", "hydraul"),
        ("cubierta", "cubta"),
        ("delantero", "delt"),
        ("trasero", "trase trasr"),
        ("manillar", "manil manill"),
        ("potencia", "potenc"),
        ("velocidades", "veloc vels"),
        ("horquilla", "horq"),
        ("suspension", "suspens"),
        ("amortiguador", "amort"),
        ("rosca", "rosc"),
        ("aceite", "aceit"),
        ("aluminio", "alum"),
        ("seilzug", "seilz seilzg"),
        ("schnellspanner", "schnellspan"),
        ("steckachse", "stecka"),
        ("lenkerklemmung", "lenkerkl"),
        ("klemmung", "klemmg"),
        ("klemmdurchmesser", "klemmd klemmdm"),
        ("sattelstutze", "sattelstz"),
        ("innenlager", "innenl"),
        ("tretlager", "tretl"),
        ("tretlagergehause", "tretlagergeh"),
        ("lagergehause", "lagergeh"),
        ("kurbelgarnitur", "kurbelg"),
        ("kettenblatt", "kettenbl"),
        ("bremsscheibe", "bremssch"),
        ("bremsaufnahme", "bremsaufn"),
        ("scheibenbremse", "scheibenbr"),
        ("felgenbremse", "felgenbr"),
        ("schaltwerk", "schaltw"),
        ("umwerfer", "umwerf"),
        ("umwerferschelle", "umwerfersch umwerferschel"),
        ("vertikal", "vertik"),
        ("orizzontali", "orizz orizzont"),
        ("zahnkranz", "zahnkr"),
        ("steuersatz", "steuers"),
        ("steuerrohr", "steuerr"),
        ("unterrohr", "unterr"),
        ("sitzrohr", "sitzr"),
        ("einbauweite", "einbauw"),
        ("nabenbreite", "nabenbr"),
        ("achsbreite", "achsbr"),
        ("gabelschaft", "gabelsch"),
        ("gewindelos", "gewindel"),
        ("freilauf", "freil"),
        ("freilaufkorper", "freilaufk"),
        ("felgenband", "felgenb"),
        ("laufrad", "laufr"),
        ("hinterrad", "hinterr"),
        ("vorderrad", "vorderr"),
        ("kapazitat", "kapaz"),
        ("mineralol", "mineralo"),
        ("federgabel", "federg"),
        ("einstecktiefe", "einstt"),
        ("snelspanner", "snelsp"),
        ("steekas", "steekass"),
        ("schijfrem", "schijfr"),
        ("remschijf", "remsch"),
        ("remklauw", "remkl"),
        ("naafbreedte", "naafbr"),
        ("inbouwbreedte", "inbouwbr"),
        ("inbouwmaat", "inbouwm"),
        ("zadelpen", "zadelp"),
        ("zadelbuis", "zadelb"),
        ("balhoofdset", "balhfdset balhoofds"),
        ("trapaslager", "trapasl"),
        ("crankstel", "crankst"),
        ("kettingblad", "kettingbl"),
        ("achterderailleur", "achterder"),
        ("binnenband", "binnenb"),
        ("buitenband", "buitenb"),
        ("vouwband", "vouwb"),
        ("schroefdraad", "schroefdr"),
        ("escursione", "escurs escurz"),
        ("forcella", "forc forcel"),
        ("filettato", "filett"),
        ("manubrio", "manubr"),
        ("reggisella", "regg regis"),
        ("movimento", "movim"),
        ("guarnitura", "guarn"),
        ("corona", "coron"),
        ("passante", "passan"),
        ("sgancio", "sgan sganc"),
        ("ammortizzatore", "ammort"),
        ("idraulico", "idr idraul"),
        ("meccanico", "mecc meccan"),
        ("cerchio", "cerch"),
        ("inserimento", "inser"),
        ("olio", "oliomin"),
        ("boitier", "boit boitierp"),
        ("manette", "manet"),
        ("cintre", "cint"),
        ("fourche", "fourc"),
        ("jante", "jant"),
        ("pneumatique", "pneum"),
        ("chambre", "chamb"),
        ("vitesses", "vitess"),
        ("etrier", "etr"),
        ("traversant", "trav"),
        ("filetage", "filetag"),
        ("threaded", "thd thrd thrded"),
        ("threadless", "thdls thrdls"),
        ("tapered", "tapd tprd"),
        ("steerer", "steerr strr strtube"),
        ("derailleur", "derailr"),
        ("cassette", "cassett"),
        ("chainring", "chainr"),
        ("speeds", "spds"),
        ("clearance", "clr"),
        ("bracket", "brckt"),
        ("seatpost", "seatp sptpost stpst"),
        ("headset", "hdset hdst hset"),
        ("freewheel", "frwhl fwhl fwl"),
        ("freehub", "frhub"),
        ("rotor", "rtr"),
        ("caliper", "calipr"),
        ("tubular", "tublr"),
        ("clincher", "clnchr"),
        ("presta", "prsta"),
        ("schrader", "schrdr"),
        ("steel", "stl"),
        ("carbon", "carbn xcarbon"),
        ("copertone", "copert"),
    ];

    /// <summary>"(inf.) ZS56 — (sup.) ZS49": the point of a short word in brackets ends no sentence.</summary>
    public static void Bracketed(List<SpecToken> tokens)
    {
        for (int i = tokens.Count - 2; i > 1; i--)
        {
            if (tokens[i].Is('.') && tokens[i + 1].Is(')') && tokens[i - 2].Is('(') && tokens[i - 1].Text is "inf" or "sup" or "int" or "ext" or "tras")
            {
                tokens.RemoveAt(i);
            }
        }
    }

    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            SpecToken token = tokens[i];
            if (token.Kind != SpecTokenKind.Word || tree.Knows(token.Text) || !Whole.TryGetValue(token.Text, out string? word))
            {
                continue;
            }

            token.Text = word;
            tokens[i] = token;
            if (i + 1 < tokens.Count && tokens[i + 1].Is('.') && tokens[i + 1].Glued)
            {
                // The point is of the word and ends no sentence.
                tokens.RemoveAt(i + 1);
            }
        }
    }
}
