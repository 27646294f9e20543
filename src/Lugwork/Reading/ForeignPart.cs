using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>A line that was given for one part and names only another, by a name that is of nothing else: nothing in it is of the part that was asked for.</summary>
/// <remarks>Only full names count. A word that is also one for a piece, a field or another thing ("collier", "comando", "hub", "bar", the stem of a valve) makes no line foreign.</remarks>
internal static class ForeignPart
{
    /// <summary>How far before a name the word may stand that says what the part goes to.</summary>
    private const int Reach = 3;

    /// <summary>Names in six languages without accents. A word of the trade is common practice, no source.</summary>
    private static readonly FrozenSet<string> Names = Split(
        "seatpost, seatposts, seat post, seat posts, dropper post, dropper seatpost, sattelstutze, sattelstutzen, variostutze, tige de selle, tija de sillin, tija sillin, tija del sillin, reggisella, cannotto reggisella, canotto reggisella, zadelpen, zadelpennen",
        "seat clamp, seat collar, seatpost clamp, sattelklemme, sattelrohrklemme, collier de selle, collier de tige de selle, abrazadera de sillin, abrazadera de tija, cierre de sillin, collarino reggisella, zadelklem, zadelpenklem",
        "saddle, sattel, selle, sillin, sella, zadel",
        "handlebar, handlebars, lenker, guidon, cintre, manillar, manubrio, stuur, stuurbocht",
        "vorbau, potence, potencia, attacco manubrio, pipa manubrio, stuurpen",
        "headset, headsets, steuersatz, jeu de direction, juego de direccion, serie sterzo, balhoofdstel, balhoofdset",
        "fork, forks, suspension fork, gabel, federgabel, starrgabel, fourche, horquilla, forcella, voorvork, vork, verende vork",
        "crankset, cranks, chainset, kurbelgarnitur, tretkurbel, pedalier complet, bielas, guarnitura, pedivelle, crankstel",
        "pedal, pedals, pedale, pedalen, pedales, pedali, pedaal",
        "bottom bracket, tretlager, innenlager, boitier de pedalier, jeu de pedalier, caja de pedalier, movimento centrale, trapas, trapaslager",
        "cassette, cassettes, kassette, kassetten, casete, casetes, ritzelpaket, pacco pignoni, tandwielcassette",
        "chain, chains, kette, fahrradkette, chaine, cadena, catena, ketting, fietsketting",
        "chainring, chain ring, kettenblatt, kettingblad",
        "rear derailleur, rear mech, schaltwerk, derailleur arriere, cambio trasero, cambio posteriore, achterderailleur, front derailleur, front mech, umwerfer, derailleur avant, desviador delantero, deragliatore anteriore, voorderailleur",
        "brake lever, brake levers, bremshebel, levier de frein, palanca de freno, maneta de freno, leva freno, remhendel, shifter, shifters, schalthebel, manette de vitesse, mando de cambio, comando cambio, versteller",
        "brake caliper, bremssattel, bremszange, etrier de frein, pinza de freno, pinza freno, remklauw, brake rotor, disc rotor, brake disc, bremsscheibe, disque de frein, disco de freno, disco freno, remschijf",
        "tyre, tyres, tire, tires, reifen, fahrradreifen, pneu, pneus, cubierta, cubiertas, copertone, copertoni, buitenband, buitenbanden",
        "inner tube, inner tubes, fahrradschlauch, schlauch, chambre a air, camara de aire, camera d'aria, binnenband",
        "rim tape, tubeless tape, felgenband, fond de jante, ruban de jante, cinta de llanta, fondo de llanta, nastro per cerchi, velglint, velgtape",
        "wheelset, wheel, wheels, laufrad, roue, rueda, ruota, wiel, front wheel, rear wheel, vorderrad, hinterrad, roue avant, roue arriere, rueda delantera, rueda trasera, ruota anteriore, ruota posteriore, voorwiel, achterwiel",
        "rear shock, dampfer, hinterbaudampfer, amortisseur, amortisseur arriere, amortiguador, amortiguador trasero, ammortizzatore, mono ammortizzatore, demper, achterdemper",
        "front hub, rear hub, nabe, vorderradnabe, hinterradnabe, moyeu, moyeu avant, moyeu arriere, buje, buje delantero, buje trasero, mozzo, mozzo anteriore, mozzo posteriore, naaf, voornaaf, achternaaf",
        "thru axle, thru axles, through axle, steckachse, steckachsen, axe traversant, eje pasante, perno passante, asse passante, steekas",
        "frame, frames, frameset, rahmen, rahmenset, cadre, kit cadre, cuadro, telaio, fietsframe",
        "grips, griffe, poignees, punos, manopole, handvatten");

    /// <summary>Names of a wheel or a hub with the end that it goes to: it is one that no fork and no part of the other end mates with.</summary>
    private static readonly FrozenSet<string> OfRear = Split("rear wheel, rear hub, hinterrad, hinterradnabe, hinterrad nabe, roue arriere, moyeu arriere, rueda trasera, buje trasero, ruota posteriore, mozzo posteriore, achterwiel, achternaaf");

    private static readonly FrozenSet<string> OfFront = Split("front wheel, front hub, vorderrad, vorderradnabe, vorderrad nabe, roue avant, moyeu avant, rueda delantera, buje delantero, ruota anteriore, mozzo anteriore, voorwiel, voornaaf");

    /// <summary>Whether the line names only other parts than the one that was asked for, and nothing that mates with it.</summary>
    public static bool IsOnly(Slot slot, List<SpecItem> items, ReadOnlySpan<char> text)
    {
        string kind = PartForms.Of(slot).Kind;
        string near = NamedParts.Of(slot).Near;
        if (IsOfOtherEnd(slot, items, text))
        {
            return true;
        }

        if (near.Length == 0)
        {
            return false;
        }

        HashSet<int> absent = [];
        foreach (SpecItem item in items)
        {
            if (LineScan.IsMate(item, near) || (IsAxle(item) && near.Contains("t:axle", StringComparison.Ordinal)) || IsOwnWord(item, slot))
            {
                return false;
            }

            if (IsNotThere(item))
            {
                absent.Add(item.Clause);
            }
        }

        for (int i = 0; i < items.Count; i++)
        {
            if (!absent.Contains(items[i].Clause) && IsForeign(kind, items[i], text) && !IsWhatItGoesTo(kind, items, i))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Rear hub, 135 mm" of a fork: a wheel or a hub of the other end is named, and its own end nowhere.</summary>
    private static bool IsOfOtherEnd(Slot slot, List<SpecItem> items, ReadOnlySpan<char> text)
    {
        bool isFront = slot == Slot.Fork || slot.Key.StartsWith("front", StringComparison.Ordinal);
        if (!isFront && !slot.Key.StartsWith("rear", StringComparison.Ordinal))
        {
            return false;
        }

        bool other = false;
        for (int i = 0; i < items.Count; i++)
        {
            SpecItem item = items[i];
            if (item.Is(isFront ? "m:front" : "m:rear") || IsNotThere(item))
            {
                return false;
            }

            bool isWheel = (item.Is("t:hub") || item.Is("t:wheel")) && !item.IsGuessed;
            other |= isWheel && ((isFront ? OfRear : OfFront).Contains(NameOf(item, text)) || (i > 0 && items[i - 1].Is(isFront ? "m:rear" : "m:front")));
        }

        return other;
    }

    private static string NameOf(SpecItem item, ReadOnlySpan<char> text) => SpecFold.Line(text[item.Start..item.End]).Replace('-', ' ');

    private static bool IsForeign(string kind, SpecItem item, ReadOnlySpan<char> text)
    {
        if (!LineScan.IsPart(item) && !IsAxle(item))
        {
            return false;
        }

        string name = NameOf(item, text);
        if (name == "sattel" && kind == "caliper")
        {
            // German for the caliper, too.
            return false;
        }

        return Names.Contains(name) || (name is "stem" or "stems" && kind is not ("inner tube" or "tubeless valve"));
    }

    private static bool IsAxle(SpecItem item) => item.Is("m:thru") && !item.IsGuessed;

    /// <summary>"Saddle not included", "with pedals": the clause is about what comes with the part or does not.</summary>
    private static bool IsNotThere(SpecItem item) => item.Is("m:not") || item.Is("d:kit") || item.Is("d:extra") || item.Is("d:option") || item.Is("d:past");

    /// <summary>"For tubeless tyres": a valve or a tape by what it is for.</summary>
    private static bool IsWhatItGoesTo(string kind, List<SpecItem> items, int at)
    {
        if (kind is not ("tubeless valve" or "rim tape") || !(items[at].Is("t:tyre") || items[at].Is("t:wheel")))
        {
            return false;
        }

        for (int i = at; i >= 0 && i >= at - Reach && items[i].Clause == items[at].Clause; i--)
        {
            if (WordLists.ForeignPartIsWhatItGoesTo.Contains(items[i].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A word that the user has given to a field of the part.</summary>
    private static bool IsOwnWord(SpecItem item, Slot slot)
    {
        foreach (string term in item.Terms)
        {
            if (term[0] is 'f' or 'w' && term.AsSpan(2).StartsWith(slot.Key, StringComparison.Ordinal) && term.Length > slot.Key.Length + 2 && term[slot.Key.Length + 2] == '.')
            {
                return true;
            }
        }

        return false;
    }

    private static FrozenSet<string> Split(params string[] rows) => rows.SelectMany(r => r.Split(", ")).ToFrozenSet(StringComparer.Ordinal);
}
