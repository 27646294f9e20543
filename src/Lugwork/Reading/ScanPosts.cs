namespace Lugwork.Reading;

/// <summary>Seatposts, rails, handlebars and parts that one figure tells.</summary>
internal sealed partial class LineScan
{
    /// <summary>One figure that the part is told by, bare or beside one of its words.</summary>
    private void ReadOne(string field, params string[] topics)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit is not ("" or "mm" or "in") || TopicOf(i) is not string topic || (topic.Length > 0 && topic != "n:size" && Array.IndexOf(topics, topic) < 0 && !(_slot == Slot.SeatClamp && topic == "t:post" && _items[i].Value is 28.6m or 31.8m or 36.4m or 38.6m && _items[Link(i)].Clause != _items[i].Clause)))
            {
                continue;
            }

            bool inch = _items[i].IsInch || _items[i].IsFraction;
            if ((!inch && _items[i].Value is < 20 or > 60) || (_slot == Slot.Grips && i > 0 && _items[i - 1].Is("m:outside")))
            {
                continue;
            }

            Take(field, inch ? InchName(_items[i].Value) + " in" : _items[i].Text, i, i);
        }
    }

    private void ReadLengths(string field)
    {
        (decimal least, decimal most) = TopicFields.Range(_slot, field);
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            // Metres of tape and numbers of pieces are of no interface; a bare figure has to be a likely one.
            if (Free(i) && _items[i].IsMillimetre && !(field == "length" && _items[i].Value < 15) && !IsBar(i) && !TopicOf(i).StartsWith("n:bottle", StringComparison.Ordinal) && !(i + 1 < _items.Count && _items[i + 1].Text == "m")
                && (_items[i].Unit == "mm" || (_items[i].Value >= least && _items[i].Value <= most)) && !(i > 0 && _items[i - 1].IsSign('x') && _items[i].Unit.Length == 0) && TopicOf(i) is not ("t:valvehole" or "t:inner" or "t:rim") && !IsClampOfStem(i))
            {
                Length(field, i);
            }
        }
    }

    /// <summary>"Stem 31.8 mm" of a valve: the size of a bar or of a steerer, of the other thing that is called so.</summary>
    private bool IsClampOfStem(int i) =>
        _items[i].Value is 22.2m or 25.4m or 25.8m or 26 or 26.4m or 28.6m or 31.8m or 35 or 38.1m && _items[i].Value != 26m && TopicOf(i) == "t:stem" && (_items[i].Value != 35m || _items[i].Places > 0 || !(_namesValve ??= _items.Exists(o => o.Is("t:valve") || (!o.Terms.IsEmpty && o.Terms[0].StartsWith("v:ValveStem=", StringComparison.Ordinal)))));

    private bool? _namesValve;

    private void ReadSeatpost()
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool slash = Free(i) && i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i].Value < 40 && _items[i + 2].Value >= 200;
            int second = i + 2;
            if ((slash || (Pair(i, out second) && !InTriple(i))) && _items[i].IsMillimetre && _items[second].IsMillimetre && (!TopicOf(i).StartsWith("n:", StringComparison.Ordinal) || (TopicOf(i) == "n:size" && _items[i].Value >= 15 && _items[second].Value >= 15) || IsSizeBehindColour(i, second)) && TopicOf(i) is not "t:rails")
            {
                (int small, int large) = _items[i].Value < _items[second].Value ? (i, second) : (second, i);
                if (_items[large].Value < 40 && (TopicOf(i) is "" || _items[large].Value < 15))
                {
                    continue;
                }

                Take("diameter", _items[small].Text, small, small);
                Length("length", large);
            }
        }

        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || !_items[i].IsMillimetre || _items[i].IsFraction)
            {
                continue;
            }

            bool outside = (i + 1 < _items.Count && _items[i + 1].Is("m:outside")) || (_items[i - (i > 0 ? 1 : 0)].Is("m:outside"));
            if (outside && IsOnlyDiameter(i))
            {
                Take("diameter", _items[i].Text, i, i);
                continue;
            }

            if (outside)
            {
                _items[i].Used = true;
                continue;
            }

            if (_items[i].Value is >= 200 and <= 650 && !JoinsClosely(i) && i + 1 < _items.Count && _items[i + 1].Is("t:length") && _items[i + 1].Text.Length > 1 && _items[i + 1].Clause == _items[i].Clause && !(i + 2 < _items.Count && (_items[i + 2].IsNumber || _items[i + 2].IsSign(':'))))
            {
                // "34,9 dik en 420 lang".
                Length("length", i);
                continue;
            }

            string topic = TopicOf(i);
            topic = topic == "t:length" && _items[i].Value < 40 ? "" : topic;
            topic = Link(i) is >= 0 and int word && _items[word] is { IsFraction: false, Text: "canotto" or "cannotto" or "canoto" or "old" } && _items[i].Value is > 24 and < 36 && IsNominal(_items[i].Text) ? "t:post" : topic;
            bool own = topic is "" or "t:post" or "t:seattube" or "t:dropper" or "t:clamp" or "t:material" or "t:thickness" || (topic is "n:size" or "t:inner" && _items[i].Value is > 24 and < 36) || (topic is "t:frame" && Anywhere("d:loose") < 0 && _items[i] is { Places: 1, Value: > 24 and < 34 and not (28.6m or 30 or 31.8m) } && IsNominal(_items[i].Text));
            if (_items[i].IsDiameter || (own && _items[i].Value is > 18 and < 40))
            {
                Take("diameter", _items[i].Text, i, i);
            }
            else if (own && topic != "t:length" && _items[i].Value % 10 != 0 && IsNominal(ItemCutter.Plain(_items[i].Value / 10)))
            {
                Several("diameter", [ItemCutter.Plain(_items[i].Value / 10)], i, i, "the figure can be a diameter without its decimal point");
            }
            else if (topic == "t:length" || (own && _items[i].Unit == "mm" && _items[i].Value is >= 200 and <= 650))
            {
                Length("length", i);
            }
        }

        BareLengthOfPost();
        LengthOfPostByWord();
        if (!_items.Exists(i => i.Is("t:saddle") && i.Terms.Length == 1) || Values.Count == 0)
        {
            ReadRails("railClamp", bare: false);
        }

        Words("SaddleRails", "railClamp", i => _items[i].Is("v:SaddleRails=pivotal") || _items[i].Is("v:SaddleRails=single-rail"));
        Words("Material", "material", OfWhole);
        ReadUse();
    }

    /// <summary>"27.2 | 350", "27.2-350": of two bare figures one is a diameter, and the other can only be the length.</summary>
    private void BareLengthOfPost()
    {
        if (!Values.TryGetValue("diameter", out LineFinding? diameter) || Values.ContainsKey("length") || Doubts.Count > 0 || _items.Count(i => i.IsNumber) != 2 || _items.Count > 8 || Enumerable.Range(0, _items.Count).Any(i => !IsOfBarePost(_items[i]) && !IsSmallComma(i)))
        {
            return;
        }

        int at = _items.FindIndex(i => i is { IsNumber: true, Used: false, Unit: "", IsFraction: false, Value: >= 250 and <= 450 });
        if (at > diameter.Last && _items[at].Value % 10 == 0 && TopicOf(at) is "" or "t:post")
        {
            Length("length", at);
        }
    }

    /// <summary>"Color negro; 26,4 x 350 mm", "Maße: 27,2 x 350": a diameter and a length, and neither a colour nor a mass.</summary>
    private bool IsSizeBehindColour(int i, int second)
    {
        (decimal small, decimal large) = _items[i].Value < _items[second].Value ? (_items[i].Value, _items[second].Value) : (_items[second].Value, _items[i].Value);
        return small is > 20 and < 40 && large is >= 200 and <= 650 && IsNominal(ItemCutter.Plain(small)) && (TopicOf(i) == "n:colour" || _items[Link(i)].Text == "masse");
    }

    /// <summary>"27.2 en 350, noire", "Diam. 26,8": a comma before a colour, and the point of a word that is cut short.</summary>
    private bool IsSmallComma(int i) =>
        (_items[i].IsSign(',') || _items[i].IsSign('.')) && (i + 1 >= _items.Count || (_items[i + 1].Kind == SpecTokenKind.Word && (_items[i + 1].Is("c:colour") || _items[i + 1].Text is "lg")) || (_items[i].IsSign('.') && _items[i].Glued && i > 0 && _items[i - 1].Text is "diam" or "lg" or "d"));

    /// <summary>A figure, a sign that parts figures, a word for the post or its length, a material: a price, a number of an article or a comparison has another word or sign.</summary>
    private static bool IsOfBarePost(SpecItem item) => item.Kind switch
    {
        SpecTokenKind.Number => true,
        SpecTokenKind.Sign => item.Text[0] is ':' or '|' or '/' or '-' or 'x' or '\u2022' or '\u00F8' or '=',
        _ => (item.Is("t:post") || item.Is("t:length") || item.Is("c:colour") || WordLists.ScanPostsIsOfBarePost.Contains(item.Text) || (!item.Terms.IsEmpty && item.Terms[0].StartsWith("v:Material=", StringComparison.Ordinal))) && !item.Is("m:than"),
    };

    /// <summary>The outside of a post is its diameter, where no other figure of the line can be one and no shim is named.</summary>
    private bool IsOnlyDiameter(int i) =>
        _items[i].Value is > 18 and < 40 && IsNominal(_items[i].Text) && Anywhere("m:adapt") < 0 && !Values.ContainsKey("diameter")
        && !_items.Exists(o => o != _items[i] && o is { IsNumber: true, Value: > 18 and < 40 });

    /// <summary>Rails: 7 x 9, 7 mm round.</summary>
    private void ReadRails(string field, bool bare)
    {
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            bool rails = TopicOf(i) is "t:rails" || (_slot == Slot.Saddle && TopicOf(i) is "t:fork" && _items[Link(i)].Text == "forcella") || (TopicOf(i) is "t:thickness" && Clause(i, "t:rails")) || (TopicOf(i) is "t:clamp" && Clause(i, "t:rails")) || (_slot == Slot.Seatpost && TopicOf(i) is "t:seatclamp" && Pair(i, out _) && _items[i].Value is >= 6 and <= 12) || (Pair(i, out int width) && TopicOf(i) is "" && TopicOf(width) is "t:rails");
            bool topic = rails || (bare && TopicOf(i) is "" or "t:saddle" or "t:clamp");
            if (!topic || !Free(i) || _items[i].Value is < 6 or > 12 || (!rails && !Pair(i, out _) && (_items[i].Unit != "mm" || HasUnknownWord(i))))
            {
                continue;
            }

            if (Pair(i, out int second))
            {
                (decimal a, decimal b) = (_items[i].Value, _items[second].Value);
                Take(field, $"{ItemCutter.Plain(Math.Min(a, b))}x{ItemCutter.Plain(Math.Max(a, b))}", i, second);
            }
            else if (_slot == Slot.Saddle && HasMark(i, "m:oval") && i + 2 < _items.Count && _items[i + 1].IsSign('/') && Free(i + 2) && _items[i + 2].Value is 9 or 10 && _items[i].Value == 7 && FigureCount == 2)
            {
                // "Oval 7/9".
                Take(field, $"7x{ItemCutter.Plain(_items[i + 2].Value)}", i, i + 2);
            }
            else if ((HasMark(i, "m:oval") || _items[i].Value == 7) && OtherOfOval(i) is >= 0 and int other)
            {
                // "Oval, 7 and 9 high", "rails 7 wide 9 high".
                (decimal a, decimal b) = (_items[i].Value, _items[other].Value);
                Take(field, $"{ItemCutter.Plain(Math.Min(a, b))}x{ItemCutter.Plain(Math.Max(a, b))}", i, other);
                _items[other].Used = true;
            }
            else if (HasMark(i, "m:oval"))
            {
                Refuse(field, i, i, "the second figure of oval rails is missing");
            }
            else
            {
                Take(field, $"{_items[i].Text} mm round", i, i);
            }
        }
    }

    /// <summary>"10 mm de alto por 7 de ancho": the other figure of oval rails, the only one behind in the clause, with a word for height or width.</summary>
    private int OtherOfOval(int i)
    {
        int other = -1;
        bool named = false;
        for (int j = i + 1; j < _items.Count && j <= i + 8 && _items[j].Clause - _items[i].Clause <= 1; j++)
        {
            if (_items[j].IsNumber)
            {
                if (other >= 0 || !Free(j) || _items[j].Value is < 6 or > 12 || !_items[j].IsMillimetre || _items[j].Value == _items[i].Value)
                {
                    return -1;
                }

                other = j;
            }

            named |= _items[j].Is("n:width") || WordLists.ScanPostsOtherOfOval.Contains(_items[j].Text);
        }

        return named ? other : -1;
    }

    /// <summary>"Ø 31,8 Mitte, Ø 22,2 Enden": a word for the ends of a bar beside a figure, in a line with a figure for its middle.</summary>
    private bool IsAtEnds(int i)
    {
        bool sized = i > 1 && _items[i - 1].IsSign('\u00F8') && IsEnds(_items[i - 2].Text) && _items[i - 2].Clause == _items[i].Clause;
        bool behind = sized || (i + 1 < _items.Count && IsEnds(_items[i + 1].Text) && _items[i + 1].Clause == _items[i].Clause);
        bool before = i > 0 && IsEnds(_items[i - 1].Text) && _items[i - 1].Clause == _items[i].Clause;
        for (int j = i + 1; !behind && _items[i].Value is 22.2m or 23.8m && j < _items.Count && j <= i + 3 && _items[j].Clause == _items[i].Clause && !_items[j].IsNumber; j++)
        {
            // "22.2 alle manopole", "22,2 côté poignées".
            behind = _items[j].Is("t:grip") && !(j + 1 < _items.Count && (_items[j + 1].IsNumber || _items[j + 1].IsSign(':')));
        }

        return behind || before;
    }

    private static bool IsEnds(string word) => word is "ends" or "end" or "enden" or "ende" or "bouts" or "puntas" or "einden";

    /// <summary>"Pour potence 31,8", "para potencia de 31,8": the clamp of the stem that a bar goes into.</summary>
    private bool IsForStem(int i) => IsStemBehind(i) || Link(i) is > 0 and int stem && stem < i && _items[stem].Is("t:stem") && SetAside.IsFor(_items[stem - 1])
        && (stem == i - 1 || (stem == i - 2 && (_items[i - 1].Text is "de" or "with" or "mit" || _items[i - 1].Kind == SpecTokenKind.Sign || _items[i - 1].Is("m:oversize"))));

    /// <summary>"Für 31,8er Vorbau", "for a 31.8 stem", "Ø potence 25,4": the stem right behind the figure or, with a sign of diameter, before it.</summary>
    private bool IsStemBehind(int i)
    {
        int stem = i + 1 < _items.Count && _items[i + 1].Is("t:stem") ? i + 1 : -1;
        bool with = stem > 0 && i > 0 && (SetAside.IsFor(_items[i - 1]) || (i > 1 && _items[i - 1].Text is "a" or "un" or "una" or "ein" or "einen" or "een" && SetAside.IsFor(_items[i - 2])));
        int place = stem > 0 ? stem : Link(i);
        return with || (i > 1 && _items[i - 1].Is("t:stem") && _items[i - 2].IsSign('\u00F8')) || (place > 0 && _items[place].Clause == _items[i].Clause && SetAside.IsAtStem(_items, place) && !(_items[i].Places == 0 && place > 1 && _items[place - 2].Text is "sous" or "unter" or "onder" or "under" or "bajo"));
    }

    private void ReadHandlebar()
    {
        ReadUse();
        for (int i = 0; i < _items.Count && !Full; i++)
        {
            if (!Free(i) || _items[i].Unit is not ("" or "mm" or "in") || IsRise(i))
            {
                continue;
            }

            bool inch = _items[i].IsInch || _items[i].IsFraction;
            string topic = TopicOfBar(i);
            string text = inch ? InchName(_items[i].Value) + " in" : _items[i].Text;
            bool likely = inch ? _items[i].Value < 2 : _items[i].Value is > 20 and < 40;
            if (topic == "t:grip")
            {
                _claimed[Link(i)] = true;
                Take("grip", text, i, i);
            }
            else if (likely && IsAtEnds(i))
            {
                Take("grip", text, i, i);
            }
            else if (likely && (topic is "t:clamp" or "t:bar" or "" || (topic == "t:stem" && (Clause(i, "t:clamp") || (_items[i].Value is 25.4m or 25.8m or 26 or 31.8m or 35 && (HasMark(i, "m:needs") || IsForStem(i)))))))
            {
                if (topic.Length == 0 && _items[i].Value is 22.2m or 23.8m && !_items.Exists(o => o != _items[i] && o.IsNumber && !o.Unit.Equals("g", StringComparison.Ordinal)) && !_items.Exists(o => o.IsTopic))
                {
                    Several("clamp", [_items[i].Text], i, i, "the figure can be of the clamp or of the grips");
                }
                else
                {
                    Take("clamp", text, i, i);
                }
            }
        }
    }
}
