using Lugwork.Hubs;

namespace Lugwork.Reading;

/// <summary>Widths of hubs and names of hub standards.</summary>
internal sealed partial class LineScan
{
    /// <summary>The keys of hub standards, as they are written by the library.</summary>
    private void ReadHubNames(string field, bool rear)
    {
        for (int i = 0; i + 1 < _items.Count; i++)
        {
            if (_items[i].Kind == SpecTokenKind.Word && _items[i].Text == (rear ? "r" : "f") && _items[i + 1] is { IsNumber: true, Glued: true })
            {
                for (int last = Math.Min(i + 5, _items.Count - 1); last > i; last--)
                {
                    if (Joined(i, last) is { } text && HubStandard.Find(text) is { } standard && standard.IsRear == rear)
                    {
                        Keep(field, standard.FitKey, i, last);
                        break;
                    }
                }
            }
        }
    }

    /// <summary>The items as one text, where no blank stands between them.</summary>
    private string? Joined(int first, int last)
    {
        string text = "";
        for (int i = first; i <= last; i++)
        {
            if (i > first && !_items[i].Glued)
            {
                return null;
            }

            text += _items[i].Text;
        }

        return text;
    }

    /// <summary>"Hub flange 58 mm", "Flanschabstand 60": a figure of the flanges is no width over the locknuts.</summary>
    private bool IsOfFlange(int i)
    {
        for (int j = Math.Max(0, i - 3); j < i; j++)
        {
            if (_items[j].Clause == _items[i].Clause && _items[j].Kind == SpecTokenKind.Word && WordLists.ScanWidthsIsOfFlange.Contains(_items[j].Text))
            {
                return true;
            }
        }

        return false;
    }

    private void ReadWidths(string field, bool rear, List<(decimal Width, decimal Axle, int First, int Last)> found)
    {
        for (int i = 0; i < _items.Count && found.Count < 20; i++)
        {
            SpecItem item = _items[i];
            if (!Free(i) || !item.IsMillimetre || item.IsFraction || item.Value is < 60 or > 260 || OtherEnd(i, rear) || IsTravelOfFork(i) || found.Exists(f => f.First <= i && i <= f.Last))
            {
                continue;
            }

            if (IsOfFlange(i))
            {
                item.Used = true;
                continue;
            }

            string topic = TopicOf(i);
            int of = Link(i);
            bool said = topic is "t:spacing" or "t:hub" or "t:axle" or "t:axlestandard" && !(of > i && IsAndBetween(i, of) && !IsHubWidth(item.Value, rear));
            int mark = HubMark(i);
            bool boost = (i > 0 && (_items[i - 1].Is("m:boost") || _items[i - 1].Is("m:superboost"))) || (i + 1 < _items.Count && (_items[i + 1].Is("m:boost") || _items[i + 1].Is("m:superboost")));
            bool ours = (of < 0 || (_items[of].Clause != item.Clause && (topic is "t:rim" or "t:freehub" or "t:thread" or "t:beadseat" || (topic is "t:rotor" && item.Value is not (140 or 160 or 180 or 200))))) || topic is "" or "t:frame" or "t:fork" or "t:wheel" || said || topic.StartsWith("n:width", StringComparison.Ordinal) || (topic is "n:offset" && of > i) || IsBeyondAnd(i, of, rear) || IsOfEndHere(i, of, rear) || IsHeldAlone(i, of) || (rear && mark >= 0 && _items[of].Is("m:chainstay") && (HasMark(i, "m:rear") || _items[of].Text is "carro")) || (topic is "t:hanger" && mark >= 0 && _items[of].Text is "patte" or "pat" or "patilla" or "forcellino" or "pad");
            bool trial = rear && item.Value == 116 && HasMark(i, "m:rear") && Anywhere("m:trial") >= 0 && (of < 0 || _items[of].Clause != item.Clause);
            if (!said && !boost && !trial && !(mark >= 0 && ours))
            {
                continue;
            }

            if (topic is "t:spacing" && _items[of].Text == "between" && Anywhere("t:bb") >= 0 && ShellSize(i))
            {
                // "68 mm between the faces" of a shell.
                continue;
            }

            if (!IsHubWidth(item.Value, rear))
            {
                // A width of no hub is refused only where the words leave no doubt that it is one; an axle has lengths too.
                if ((topic is "t:spacing" && !Clause(i, "t:shock")) || (topic is "t:hub" && item.Unit == "mm"))
                {
                    Refuse(field, i, i, "no hub of this end has this width");
                }

                continue;
            }

            if (topic is "t:axle" && (HasMark(i, "t:length") || _slot == Slot.RearThruAxle || _slot == Slot.FrontThruAxle))
            {
                continue;
            }

            int axle = AxleNear(i);
            found.Add((item.Value, axle < 0 ? 0 : _items[axle].Value, Math.Min(i, axle < 0 ? i : axle), Math.Max(i, axle)));
            if (axle >= 0)
            {
                _items[axle].Used = true;
            }
        }
    }
}
