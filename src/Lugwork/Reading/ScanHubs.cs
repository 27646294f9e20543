using System.Collections.Immutable;
using Lugwork.Hubs;

namespace Lugwork.Reading;

/// <summary>Hub ends and the threads of axles.</summary>
internal sealed partial class LineScan
{
    private static readonly decimal[] AxleSizes = [5m, 8m, 9m, 9.5m, 10m, 12m, 14m, 15m, 20m];

    /// <summary>Axle by width in any order, or a width beside a word for what holds it.</summary>
    private void ReadHub(string field, bool rear)
    {
        ReadHubNames(field, rear);
        List<(decimal Width, decimal Axle, int First, int Last)> found = [];
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (OtherEnd(i, rear))
            {
                continue;
            }

            bool slash = IsJoinedAxle(i, rear);
            int second = i + 2;
            if (slash || (Pair(i, out second) && !InTriple(i)) || IsPairInWords(i, rear, out second))
            {
                decimal a = _items[i].Value;
                decimal b = _items[second].Value;
                bool inch = _items[i].IsFraction || _items[second].IsFraction;
                (decimal axle, decimal width) = a < b ? (a, b) : (b, a);
                bool widths = width is >= 60 and <= 250 && (axle is >= 5 and <= 20 || (inch && axle is 0.375m or 0.3125m));
                bool impossible = (width > 250 && Array.IndexOf(AxleSizes, axle) >= 0 && HubTopic(i)) || (IsHubWidth(width, rear) && axle < 5 && !inch && (HubTopic(i) || _slot != Slot.RearThruAxle));
                if (widths && !(Hardware(i) && width < 70))
                {
                    found.Add((width, axle, i, second));
                    i = second;
                }
                else if (impossible)
                {
                    Refuse(field, i, second, "no hub has such an axle and width");
                    i = second;
                }
            }
        }

        HubInClause(rear, found);
        ReadWidths(field, rear, found);
        if (found.Exists(f => f.Width == 132.5m) && found.Exists(f => f.Width is 130 or 135))
        {
            // An end of 132.5 mm is made for wheels of 130 and of 135 mm.
            found.FindAll(f => f.Width is 130 or 135).ForEach(f => _items[f.First].Used = _items[f.Last].Used = true);
            found.RemoveAll(f => f.Width is 130 or 135);
        }

        if (found.Exists(f => f.Width == 145) && Anywhere("m:flex") >= 0 && found.Exists(f => f.Width is 142 or 148))
        {
            // An end of 145 mm that bends is made for wheels of 142 and of 148 mm.
            found.FindAll(f => f.Width is 142 or 148).ForEach(f => _items[f.First].Used = _items[f.Last].Used = true);
            found.RemoveAll(f => f.Width is 142 or 148);
        }

        if (found.Count == 0 && !Values.ContainsKey(field) && !Doubts.Exists(d => d.Field == field))
        {
            HubApart(rear, found);
        }

        foreach ((decimal width, decimal axle, int first, int last) in found)
        {
            if (Full || Counted())
            {
                break;
            }

            TakeHub(field, rear, width, axle, first, last);
        }

        if (found.Count == 0 && rear && !Values.ContainsKey(field) && Anywhere("m:superboost") is >= 0 and int super)
        {
            Keep(field, "R157-12W", super, super);
        }
    }

    private void TakeHub(string field, bool rear, decimal width, decimal axle, int first, int last)
    {
        int qr = Near(first, last, "m:qr");
        if (qr >= 0 && axle is 12 or 15 or 20 && ((qr + 1 < _items.Count && _items[qr + 1] is { IsNumber: true, Glued: true }) || (qr > 0 && _items[qr].Glued && _items[qr - 1].IsNumber)))
        {
            // "QR15" is a thru-axle that opens with a lever.
            qr = -1;
        }

        if (qr >= 0 && axle == 0 && _items[qr].Is("m:lockout") && _slot == Slot.Fork && Anywhere("t:wheel") < 0 && Anywhere("t:hub") < 0)
        {
            // "Horquilla con blocaje, 100 mm": what locks the travel of a fork has the same name.
            qr = -1;
        }

        int thru = Near(first, last, "m:thru");
        int thruBolt = axle is 12 or 15 or 20 ? -1 : Near(first, last, "m:thrubolt");
        int nutted = Near(first, last, "m:nutted");
        nutted = nutted >= 0 && axle is 12 or 15 or 20 && _items[nutted].Is("t:nuts") ? -1 : nutted;
        int super = Near(first, last, "m:superboost");
        int boost = Near(first, last, "m:boost");
        int road = boost > 0 && _items[boost - 1].Is("m:road") ? boost - 1 : boost >= 0 && boost + 1 < _items.Count && _items[boost + 1].Is("m:road") && !(boost + 2 < _items.Count && _items[boost + 2].IsTopic) ? boost + 1 : -1;
        int narrow = Near(first, last, "m:dh");
        narrow = narrow >= 0 && ((!rear && _items[narrow].Text is "dh" or "downhill") || (width is not (150 or 157) && IsRideDown(narrow))) ? -1 : narrow;
        int wide = Near(first, last, "m:wideflange");
        int pre = Near(first, last, "m:preboost");
        List<string> words = [];
        bool skewer = (qr >= 0 && axle is 0 or 5 or 9 or 10) || (axle == 5 && nutted < 0 && thru < 0);
        if (axle == 5 && skewer && qr < 0)
        {
            words.Add("QR");
        }

        string size = axle == 0 || skewer ? ItemCutter.Plain(width) : axle == 0.375m ? $"3/8x{ItemCutter.Plain(width)}" : axle == 0.3125m ? $"5/16x{ItemCutter.Plain(width)}" : $"{ItemCutter.Plain(axle)}x{ItemCutter.Plain(width)}";
        Say(words, qr, "QR");
        Say(words, thru, "thru");
        Say(words, nutted, "nutted");
        Say(words, Near(first, last, "m:tandem") is >= 0 and int tandem && (_items[tandem].Clause == _items[last].Clause || width is 140 or 145 or 160) ? tandem : -1, "tandem");
        Say(words, Near(first, last, "m:flex"), "flex");
        Say(words, road, "road");
        if (road < 0 && !rear && width == 110 && axle == 12)
        {
            // A front hub of 12x110 is road Boost and nothing else.
            words.Add("road");
        }

        Say(words, width == 120 && axle == 0 ? FindMark(first, "m:track", 0) : -1, "track");
        if (super < 0 && (boost >= 0 || road >= 0))
        {
            words.Add("Boost");
        }

        int from = first;
        int to = last;
        foreach (int mark in new[] { qr, thru, nutted, boost, super, narrow, wide })
        {
            if (mark >= 0 && mark >= first - 3 && mark <= last + 3)
            {
                from = Math.Min(from, mark);
                to = Math.Max(to, mark);
            }
        }

        ImmutableArray<string> keys = [.. HubStandard.Read($"{size} {string.Join(' ', words)}".Trim()).Values
            .Where(h => h.IsRear == rear && (narrow < 0 || h.FitKey is "R157-12DH" or "R150-12" or "R150-10") && (wide < 0 || h.FitKey is "R157-12W" or "F110-20B" or "F110-15B")
                && (super < 0 || h.FitKey == "R157-12W") && (pre < 0 || h.FitKey is not ("R148-12" or "R141-QR" or "R157-12W" or "F110-15B" or "F110-20B")) && (thruBolt < 0 || h.FitKey is "F100-TB9" or "R135-10"))
            .Select(h => h.FitKey)];
        if (axle is 0.375m or 0.3125m)
        {
            int micrometres = axle == 0.375m ? 9530 : 7940;
            keys = [.. HubStandard.All.Where(h => h.IsRear == rear && h.OldMicrometres == width * 1000 && h.Axles.Contains(micrometres)).Select(h => h.FitKey)];
        }

        if (keys.Length > 1 && rear && width == 120 && axle == 0 && nutted < 0 && (Anywhere("m:track") >= 0 || (Anywhere("m:fixedhub") >= 0 && Anywhere("m:lockringthread") >= 0) || (Anywhere("v:FreehubBody=TRACK") >= 0 && Anywhere("t:hub") >= 0) || _items.Exists(i => i.Is("v:DropoutSlot=horizontal") && i.Text is "track" or "bahnausfallenden" or "bahnausfaller" or "baanpatten")))
        {
            // "120 track" is what it is called.
            keys = ["R120"];
        }

        if (keys.Length > 1 && axle is 0.375m or 0.3125m)
        {
            // The name without a size beside the one with it.
            keys = keys.Remove("F100-N");
        }

        if (keys.IsEmpty && qr >= 0 && width == 135 && !rear && axle is 0 or 9 or 10)
        {
            keys = ["F135-QR"];
        }

        if (rear && width == 135 && axle == 10 && thru >= 0 && qr < 0 && nutted < 0 && (Anywhere("m:openslots") >= 0 || _items[thru].Text == "bolt"))
        {
            // A bolt that goes through, in open slots.
            keys = ["R135-10"];
        }

        if (keys.IsEmpty && rear && width == 145 && axle is 0 or 10 && Near(first, last, "m:tandem") >= 0)
        {
            keys = ["R140-145t"];
        }

        if (keys.IsEmpty && wide >= 0 && width == 110 && !rear)
        {
            keys = [.. HubStandard.Read(size + " Boost").Values.Where(h => !h.IsRear).Select(h => h.FitKey)];
        }

        if (pre >= 0 && keys.IsEmpty && width == 110 && axle == 20 && !rear)
        {
            keys = ["F110-20"];
        }

        if (keys is ["R135-QR"] or ["R135-10"] && (_offset ??= Enumerable.Range(0, _items.Count).FirstOrDefault(o => _items[o].Is("n:offset") && OffsetFigure(o) >= 0, -1)) is >= 0 and int side && OffsetFigure(side) is >= 0 and int figure)
        {
            Keep(field, "R135-OFF", Math.Min(first, Math.Min(side, figure)), Math.Max(last, Math.Max(side, figure)));
            _items[figure].Used = true;
            return;
        }

        if (keys is ["R135-QR"] && FindMark(first, "n:offset", 1) is >= 0 and int off && _items[off].Text is "offset" or "versatz")
        {
            Several(field, ["R135-QR", "R135-OFF"], first, Math.Max(last, off), "a rear end with an offset is another standard");
            return;
        }

        if (keys is ["F110-15B"] && LargeCaps() is >= 0 and int caps)
        {
            keys = ["F110-15B-31"];
            MarkCaps(caps);
        }

        if (keys is [string key])
        {
            Keep(field, key, first, last);
            MarkUsed(from, to);
        }
        else if (keys.IsEmpty)
        {
            Refuse(field, first, last, "no hub of this end has this axle, width and way of holding");
        }
        else
        {
            Several(field, keys, first, last, "several hub standards share these figures");
        }
    }

    private bool? _onlyHub;

    /// <summary>The word for an offset that has its figure, looked for once; -1 where there is none.</summary>
    private int? _offset;
}
