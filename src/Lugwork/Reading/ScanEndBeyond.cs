namespace Lugwork.Reading;

/// <summary>Hub ends in a sentence that is about other parts too.</summary>
internal sealed partial class LineScan
{
    /// <summary>"BSA 68 et l'arrière reste en 135 à blocage rapide", "135 à blocage rapide et une tige de 27,2": the word that the figure would be linked to stands beyond an "and", and a word for the end or for what holds the hub on this side of it.</summary>
    private bool IsBeyondAnd(int i, int link, bool rear)
    {
        if (link < 0 || _items[link].Clause != _items[i].Clause || Math.Abs(link - i) > Reach || TopicIn(_items[link]) is "t:axle" or "t:length" or "t:travel" or "t:axlelength" or "n:reach" or "n:size" or "t:insertion")
        {
            return false;
        }

        int step = link < i ? -1 : 1;
        bool told = false;
        for (int j = i + step; j != link; j += step)
        {
            if (IsAndWord(_items[j]))
            {
                return told || (step < 0 ? IsHeldBehind(i) : IsHeldBefore(i));
            }

            if (_items[j].IsNumber || _items[j].Is("m:or") || _items[j].Is("m:not") || _items[j].Is("m:adapt"))
            {
                return false;
            }

            told |= _items[j].Is(rear ? "m:rear" : "m:front") || IsHold(_items[j]);
        }

        return false;
    }

    /// <summary>"La trasera es de 135 con cierre rápido y el freno en post mount de 180": nothing says what the figure is of but the end before it and what holds the hub behind it.</summary>
    private bool IsOfEndHere(int i, int link, bool rear)
    {
        if (link <= i || _items[link].Clause != _items[i].Clause || !IsHeldBehind(i))
        {
            return false;
        }

        for (int j = i + 1; j < link; j++)
        {
            if (IsAndWord(_items[j]))
            {
                break;
            }

            if (j == link - 1)
            {
                return false;
            }
        }

        for (int j = i - 1; j >= 0 && j >= i - 5 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber && !_items[j].IsTopic; j--)
        {
            if (_items[j].Is(rear ? "m:rear" : "m:front"))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"Freno IS 2000, sgancio rapido 141": what holds the hub and its width, and the word for another part in the clause before.</summary>
    private bool IsHeldAlone(int i, int link) =>
        link >= 0 && link < i && _items[link].Clause != _items[i].Clause && (IsHeldBehind(i) || IsHeldBefore(i))
        && WordLists.ScanEndBeyondIsHeldAlone.Contains(TopicIn(_items[link]));

    /// <summary>An "and" stands between two items.</summary>
    private bool IsAndBetween(int first, int last)
    {
        for (int j = first + 1; j < last; j++)
        {
            if (IsAndWord(_items[j]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What holds the hub stands before the figure, with nothing but small words and the end between.</summary>
    private bool IsHeldBefore(int i)
    {
        for (int j = i - 1; j >= 0 && j >= i - 4 && _items[j].Clause == _items[i].Clause && _items[j].Kind == SpecTokenKind.Word; j--)
        {
            if (IsHold(_items[j]))
            {
                return true;
            }

            if (IsAndWord(_items[j]) || !(IsJoiningWord(_items[j]) || _items[j].Is("m:rear") || _items[j].Is("m:front")))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>What holds the hub stands behind the figure, with nothing but small words between.</summary>
    private bool IsHeldBehind(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 3 && _items[j].Clause == _items[i].Clause && _items[j].Kind == SpecTokenKind.Word; j++)
        {
            if (IsHold(_items[j]))
            {
                return true;
            }

            if (IsAndWord(_items[j]) || !(IsJoiningWord(_items[j]) || _items[j].Is("m:and")))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>"Perno passante da 12 su 177", "axe de 12 en 100 de large", "pasante de 15 sobre 110": an axle that is named before it, and a width of a hub that small words join to it. The length of the axle and the travel of a fork have words of their own behind them.</summary>
    private bool IsPairInWords(int i, bool rear, out int second)
    {
        second = -1;
        if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction || _items[i].Value is not (12 or 15 or 20) || !IsAxleBefore(i))
        {
            return false;
        }

        int at = i + 1;
        while (at < _items.Count && at <= i + 4 && _items[at].Clause == _items[i].Clause && _items[at].Kind == SpecTokenKind.Word && (IsJoiningWord(_items[at]) || _items[at].Is("m:and")) && !_items[at].Is("m:or"))
        {
            at++;
        }

        if (at == i + 1 || !Free(at) || _items[at].Clause != _items[i].Clause || !_items[at].IsMillimetre || _items[at].IsFraction || !IsHubWidth(_items[at].Value, rear) || JoinsClosely(at))
        {
            return false;
        }

        for (int j = at + 1; j < _items.Count && j <= at + 5 && _items[j].Clause == _items[at].Clause && !_items[j].IsNumber && !IsAndWord(_items[j]); j++)
        {
            if (_items[j].Is("t:length") || _items[j].Is("t:travel") || _items[j].Is("m:max") || _items[j].Is("m:or") || _items[j].Text is "long" or "lang" or "largo" or "lungo" or "lunga" or "larga" || (_items[j].IsTopic && TopicIn(_items[j]) is not ("n:width" or "t:spacing" or "t:hub" or "t:axle" or "n:apart" or "t:frame" or "t:fork")))
            {
                return false;
            }
        }

        second = at;
        return true;
    }

    private bool IsAxleBefore(int i)
    {
        // "Front hub: 15 on 100".
        bool on = i + 1 < _items.Count && _items[i + 1].Text is "on" or "su" or "sur" or "sobre" or "en";
        for (int j = i - 1; j >= 0 && j >= i - 4 && _items[j].Clause == _items[i].Clause && (_items[j].Kind == SpecTokenKind.Word || _items[j].IsSign(':')); j--)
        {
            if (_items[j].IsSign(':'))
            {
                continue;
            }

            if (_items[j].Is("m:thru") || _items[j].Is("t:axle") || (on && _items[j].Is("t:hub")))
            {
                return true;
            }

            if (!IsJoiningWord(_items[j]) && !_items[j].Is("m:front") && !_items[j].Is("m:rear"))
            {
                return false;
            }
        }

        return false;
    }

    private static bool IsHold(SpecItem item) => (item.Is("m:qr") && !item.Is("m:lockout")) || item.Is("m:thru") || item.Is("m:nutted");

    private static bool IsAndWord(SpecItem item) => item.Is("m:and") && WordLists.ScanEndBeyondIsAndWord.Contains(item.Text);

    private static bool IsJoiningWord(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanEndBeyondIsJoiningWord.Contains(item.Text);
}
