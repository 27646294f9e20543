namespace Lugwork.Reading;

/// <summary>Words beside a reading that say that another thing is meant, or that it is damaged or not sold with it.</summary>
internal sealed partial class LineScan
{
    /// <summary>What else on a frame or a fork stands apart: no mount of a disc brake.</summary>
    private static readonly HashSet<string> NotOfMount = new(StringComparer.Ordinal)
    {
        "stay", "stays", "seatstay", "seatstays", "chainstay", "chainstays", "seat", "chain", "leg", "legs", "stanchion", "stanchions", "crown", "hole", "holes", "rim", "bridge", "strebe", "streben", "sitzstreben", "kettenstreben", "standrohre", "loch", "felgenbremse", "hauban", "haubans", "bases", "trou", "tirantes", "vainas", "agujero", "foderi", "foro", "gat", "velgrem",
    };

    private static readonly HashSet<string> PostsOrTabs = new(StringComparer.Ordinal)
    {
        "post", "posts", "tab", "tabs", "ear", "ears", "eye", "eyes", "lug", "lugs", "mount", "mounts", "aufnahme", "aufnahmen", "scheibenaufnahme", "scheibenbremsaufnahme", "bremsaufnahme", "bohrungen", "osen", "sockel", "laschen", "pattes", "patte", "oreilles", "fixations", "fixation", "oeillets", "anclaje", "anclajes", "orejas", "orejetas", "soportes", "pestanas", "attacchi", "attacco", "orecchie", "alette", "linguette", "oren", "nokken", "lippen", "bevestiging", "bevestigingen", "bevestigingspunten",
    };

    /// <summary>Damage, want of work, small parts, and what comes or does not come in the box.</summary>
    private static readonly HashSet<string> OfHangerInDoubt = new(StringComparer.Ordinal)
    {
        "correctly", "properly", "stripped", "left", "needs", "need", "needed", "helicoil", "yet", "fixing", "axle", "bolt", "bolts", "screw", "screws", "damage", "damaged", "worn", "play", "alignment", "bent", "straightening", "replacement", "spare", "included", "supplied", "sold", "comes", "mounted", "fitted",
        "achse", "verbogen", "geliefert", "verkauft", "defekt", "kaputt", "ersatz", "beschadigt", "montiert", "dabei", "schraube", "abime", "abimee", "livre", "livree", "vendu", "fourni", "fournie", "rechange", "tordue", "faussee",
        "danada", "danado", "repuesto", "recambio", "doblada", "incluida", "incluido", "rovinato", "rovinata", "danneggiato", "ricambio", "montato", "incluso", "storto", "schade", "geleverd", "verkocht", "beschadigd", "verbogen", "reserve",
    };

    private static readonly HashSet<string> OfOtherPost = new(StringComparer.Ordinal)
    {
        "shim", "shims", "setback", "layback", "offset", "speed", "gang", "vitesses", "hulse", "reduzierhulse", "adapter", "sleeve", "recul", "versatz",
    };

    private static readonly HashSet<string> OfClosedHole = new(StringComparer.Ordinal)
    {
        "lever", "hebel", "remote", "closed", "plug", "plugged", "plugs", "rubber", "grommet", "sealed", "taped", "zugeklebt", "verschlossen", "geschlossen", "stopfen", "bouche", "bouchee", "bouchon", "tapado", "tapada", "tapon", "chiuso", "tappato", "tappo", "dicht", "dop",
    };

    /// <summary>A word of a list stands beside an item, in its clause or the next to it.</summary>
    private bool Mentions(int i, HashSet<string> words)
    {
        for (int j = Math.Max(0, i - Reach); j < _items.Count && j <= i + Reach; j++)
        {
            if (j != i && _items[j].Kind == SpecTokenKind.Word && Math.Abs(_items[j].Clause - _items[i].Clause) <= 1 && words.Contains(_items[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Posts 68 mm apart": a word for the posts or tabs of a disc brake stands by the figure, and none for another thing that stands apart.</summary>
    private bool IsBetweenMounts(int i)
    {
        if (Mentions(i, NotOfMount) || Anywhere("t:bosses") >= 0)
        {
            return false;
        }

        return Mentions(i, PostsOrTabs) || HasMark(i, "m:pm") || HasMark(i, "m:mounttabs");
    }

    /// <summary>"Hanger not threaded correctly, stripped", "no hanger play", "without a hanger, replacement costs 25".</summary>
    private bool IsHangerInDoubt(int i) => (_items[i].Is("v:Hanger=plain") || _items[i].Is("v:Hanger=no-hanger")) && Mentions(i, OfHangerInDoubt) && !_items.Exists(o => o.Text is "claw");

    /// <summary>"Fork max 203 mm": the size of a rotor in all likelihood, unless the fork is called sprung; and a quill has no travel.</summary>
    private bool IsSizeOfOther(int i)
    {
        bool sprung = false;
        foreach (SpecItem item in _items)
        {
            if (item.Text == "quill")
            {
                return true;
            }

            sprung |= item.Is("t:travel") || item.Text.StartsWith("feder", StringComparison.Ordinal) || WordLists.ScanOtherThingIsSizeOfOther.Contains(item.Text);
        }

        // What the frame says of crowns is about a fork that is sprung; a round travel beside it is no rotor.
        return !sprung && (_items[i].Value is 183 or 203 or 220 or 223 || (_items[i].Value is 140 or 160 or 180 or 200 && (!Values.ContainsKey("forkCrowns") || Anywhere("t:rotor") >= 0 || Anywhere("t:brake") >= 0)));
    }
}
