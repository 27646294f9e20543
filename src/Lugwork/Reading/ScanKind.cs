using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>The kind of bicycle that a frame is for, where it stands right beside the word for the frame and something else was read.</summary>
internal sealed partial class LineScan
{
    private static readonly FrozenDictionary<string, string> Kinds = KindsOf(
        "track: track bahn piste pista baan", "BMX: bmx", "fat: fat fatbike fatty", "gravel: gravel", "touring: touring trekking toer reise cicloturismo cicloturistico",
        "road: road route course carretera strada corsa racefiets race koers renn rennrad", "city: city stads stadsfiets", "folding: folding pliant plegable pieghevole vouw vouwfiets falt faltrad klapp", "children's: kids enfant infantil bambino bimbo kinder", "hardtail: hardtail", "single-speed: singlespeed");

    /// <summary>"BMX-frame, 110 mm ...", "cadre de piste", "kinderframe alu", "telaio pieghevole in acciaio", "randonneuse acier": two kinds joined, or one denied, are none.</summary>
    private void KindOfFrame()
    {
        string kind = "";
        (int first, int last) = (-1, -1);
        for (int i = 0; i < _items.Count; i++)
        {
            string found = _items[i].Kind == SpecTokenKind.Word && !Negated(i) ? KindIn(_items[i].Text) : "";
            int beside = i;
            if (found.Length == 0 && _items[i].Text is "frame" or "rahmen" or "cadre" or "cuadro" or "telaio" or "frameset" && _items[i].Is("t:frame"))
            {
                beside = Before(i);
                found = KindAt(beside, -1);
                if (found.Length == 0)
                {
                    beside = i + (i + 2 < _items.Count && _items[i + 1] is { IsFraction: false, Text: "de" or "da" or "di" } ? 2 : 1);
                    found = KindAt(beside, 1);
                }
            }

            if (found.Length > 0 && kind.Length > 0 && kind != found)
            {
                return;
            }

            (kind, first, last) = found.Length > 0 ? (found, Math.Min(i, beside), Math.Max(i, beside)) : (kind, first, last);
        }

        if (first >= 0 && Anywhere("m:or") < 0 && !Clauses(_items[first].Clause).Any(o => SetAside.IsFor(o) || WordLists.ScanKindOfOther.Contains(o.Text)) && !(last + 1 < _items.Count && WordLists.ScanKindExcluded.Contains(_items[last + 1].Text)) && IsApart(first, -1) && IsApart(last, 1))
        {
            Keep("kind", kind, first, last);
        }
    }

    /// <summary>The word before the frame, without a dash or the word for a bicycle between.</summary>
    private int Before(int frame)
    {
        int at = frame - 1;
        at -= at > 0 && _items[at].IsSign('-') && _items[at].Glued ? 1 : 0;
        at -= at > 0 && _items[at].Text is "bike" or "bicycle" or "bici" ? 1 : 0;
        return at;
    }

    /// <summary>What stands beyond the kind and the frame leaves them alone: "frame kids seat mount", "wie ein Bahnrahmen", "track frame would be nice" and "gravel frame?" are of something else, or no word on this one.</summary>
    private bool IsApart(int beside, int step)
    {
        int i = beside + step;
        while (i >= 0 && i < _items.Count && (WordLists.ScanKindBeside.Contains(_items[i].Text) || _items[i].Start == _items[beside].Start))
        {
            i += step;
        }

        if (i < 0 || i >= _items.Count)
        {
            return true;
        }

        SpecItem item = _items[i];
        return item.Kind == SpecTokenKind.Sign ? !item.IsSign('?') && !(item.IsSign('-') && item.Glued) : item.IsNumber || item.Used || item.Is("c:colour") || item.Terms.Any(t => t.StartsWith("v:", StringComparison.Ordinal));
    }

    private string KindAt(int i, int step)
    {
        if (i < 0 || i >= _items.Count || Negated(i))
        {
            return "";
        }

        if (_items[i].IsFraction)
        {
            // "Telaio da corsa".
            return _items[i].Is("m:road") && _items[i].Text is "da" or "de" ? "road" : "";
        }

        int beyond = i + step;
        bool joined = beyond >= 0 && beyond < _items.Count && (_items[beyond].IsSign('/') || _items[beyond].IsSign('&') || _items[beyond].IsSign('+') || (_items[beyond].IsSign('-') && !_items[beyond].IsFraction) || _items[beyond].Is("m:or") || _items[beyond].Is("m:and"));
        return joined ? "" : Kinds.GetValueOrDefault(_items[i].Text, "");
    }

    /// <summary>Kinderframe, Bahnrahmen; a randonneuse is a bicycle for touring by its name.</summary>
    private static string KindIn(string word)
    {
        int length = word.EndsWith("frame", StringComparison.Ordinal) ? 5 : word.EndsWith("rahmen", StringComparison.Ordinal) ? 6 : 0;
        return word is "randonneuse" ? "touring" : length > 0 && word.Length > length + 2 ? Kinds.GetValueOrDefault(word[..^length], "") : "";
    }

    private static FrozenDictionary<string, string> KindsOf(params ReadOnlySpan<string> rows)
    {
        Dictionary<string, string> kinds = new(StringComparer.Ordinal);
        foreach (string row in rows)
        {
            int colon = row.IndexOf(':');
            foreach (string word in row[(colon + 2)..].Split(' '))
            {
                kinds[word] = row[..colon];
            }
        }

        return kinds.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
