namespace Lugwork.Reading;

/// <summary>The largest sprocket of a rear derailleur, said in a sentence: a sprocket and a limit stand in one clause with one figure.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Packt höchstens ein 46er Ritzel", "ein Ritzel mit maximal 46 Zähnen", "up to a 46 tooth sprocket", "pignon de 46 dents au maximum".</summary>
    private void MostOfSprocket()
    {
        for (int i = 0; i < _items.Count && !Values.ContainsKey("largestSprocket"); i++)
        {
            if (Free(i) && _items[i] is { Unit: "" or "teeth", IsFraction: false, Places: 0, Value: >= 23 and <= 56 } && !Joins(i) && HasMark(i, "m:max") && LimitOf(i) != "m:min" && IsOfSprocket(i) && IsOnlyLimit(i))
            {
                Take("largestSprocket", _items[i].Text, i, i);
            }
        }
    }

    /// <summary>The nearest word that names what is counted, with nothing but small words between, is one for a sprocket.</summary>
    private bool IsOfSprocket(int i)
    {
        for (int j = i + 1; j < _items.Count && j <= i + 3 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j++)
        {
            if (_items[j].Kind == SpecTokenKind.Word && IsSprocket(_items[j].Text))
            {
                return true;
            }

            if (_items[j].IsTopic)
            {
                break;
            }
        }

        for (int j = i - 1; j >= 0 && j >= i - 5 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j--)
        {
            if (_items[j].Kind == SpecTokenKind.Word && IsSprocket(_items[j].Text))
            {
                return true;
            }

            if (_items[j].IsTopic)
            {
                break;
            }
        }

        return false;
    }

    /// <summary>The clause has no other figure and speaks of no ring, no difference and no doubt.</summary>
    private bool IsOnlyLimit(int i)
    {
        foreach (SpecItem item in Clauses(_items[i].Clause))
        {
            bool other = item.IsNumber && item != _items[i] && item.Unit != "speed";
            bool ring = item.Is("t:chainring") || item.Is("t:crank") || item.Is("t:frontmech") || item.Is("t:capacity") || item.Is("t:difference") || item.Is("m:front");
            bool doubt = item.Is("m:not") || item.Is("m:or") || item.Is("m:min") || (item.Is("d:hedge") && !WordLists.ScanMostSprocketIsOnlyLimit.Contains(item.Text)) || item.Is("d:past") || item.Is("d:unsure") || item.Is("d:condition") || item.Is("m:adapt") || (item.Is("m:nothing") && item.Text == "\u0001");
            if (other || ring || doubt || WordLists.ScanMostSprocketIsOnlyLimit2.Contains(item.Text))
            {
                return false;
            }
        }

        return true;
    }
}
