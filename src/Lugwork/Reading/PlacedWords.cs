namespace Lugwork.Reading;

/// <summary>Short words that mean a thing by the place where they stand: letters for upper and lower in brackets, "post" of a brake, the Dutch "standaard" before a name, the "motor" of a bottom bracket.</summary>
internal static class PlacedWords
{
    /// <summary>How far the letter for the lower half may stand behind the one for the upper half, in items.</summary>
    private const int Apart = 14;

    /// <summary>"Livello olio min", "olio min. 50 ml", "öl min. 2 Jahre": the least of it, and no kind of oil.</summary>
    private static bool IsLeastOil(List<SpecItem> items, int i)
    {
        int behind = i + 1 < items.Count && (items[i + 1].IsSign('.') || items[i + 1].IsSign(':') || items[i + 1].IsSign('/')) ? i + 2 : i + 1;
        return (behind < items.Count && (items[behind].Is("m:max") || WordLists.PlacedWordsLeastOil.Contains(items[behind].Text) || (items[behind].IsNumber && items[behind].Clause == items[i].Clause)))
            || (i > 0 && WordLists.PlacedWordsLeastOil.Contains(items[i - 1].Text));
    }

    /// <summary>"PP 12-100", "12x142 PP", "PP 148": beside an axle and its width, or right before a width.</summary>
    private static bool IsOfPair(List<SpecItem> items, int i) =>
        (i + 1 < items.Count && items[i + 1].IsNumber && (items[i + 1].Value >= 100 || (i + 3 < items.Count && items[i + 2].Kind == SpecTokenKind.Sign && items[i + 3].IsNumber && items[i + 3].Value >= 100))) || (i > 2 && items[i - 1].IsNumber && items[i - 2].Kind == SpecTokenKind.Sign && items[i - 2].Glued && items[i - 3].IsNumber);

    public static void Mend(List<SpecItem> items)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].Kind != SpecTokenKind.Word)
            {
                continue;
            }

            switch (items[i].Text)
            {
                case "o":
                    Letters(items, i);
                    break;
                case "b" when i > 0 && items[i - 1].IsSign('(') && i + 3 < items.Count && items[i + 1].IsSign('/') && items[i + 2].Text == "o" && items[i + 3].IsSign(')'):
                    // "IS41 / IS52 (b/o)": in Dutch, upper before lower, as the codes stand.
                    items[i] = Word(items[i], "m:nothing");
                    items[i + 2] = Word(items[i + 2], "m:nothing");
                    break;
                case "pen" when items[i].Terms.IsEmpty && IsPostByLetter(items, i):
                    items[i] = Word(items[i], "t:post");
                    break;
                case "hueco" when i > 0 && items[i - 1].Text == "eje":
                    // "Eje hueco": a hollow axle, and no room for a tyre.
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "corsa" when i > 0 && items[i - 1].Kind == SpecTokenKind.Word && WordLists.PlacedWordsIsOfRoad.Contains(items[i - 1].Text) && !(i + 1 < items.Count && items[i + 1].IsNumber && items.Exists(o => o.Is("t:shock"))):
                    // "Mozzo corsa da 130": of a road bicycle, and no travel.
                    items[i] = Word(items[i], "m:road");
                    break;
                case "course" when i > 0 && WordLists.PlacedWordsCourse.Contains(items[i - 1].Text) && !items.Exists(o => o.Is("t:shock") || o.Is("t:fork")):
                    // "Cadre course": of a road bicycle, and no travel.
                    items[i] = Word(items[i], "m:road");
                    break;
                case "pinon" or "pinones" when items[i].Is("v:CassettePattern=freewheel") && items.Exists(o => o.Text is "fijo" or "fija" || (o.Text == "rueda" && o.End - o.Start == "rueda fija".Length)):
                    // "Piñón a rosca fijo": screwed on, and fixed.
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "pas" when items[i].Is("v:Hanger=no-hanger") && i + 1 < items.Count && (items[i + 1].IsSign(':') || items[i + 1].IsNumber):
                    // "Pas de la patte : 10x1": its pitch.
                    items[i] = Word(items[i], "t:hanger");
                    break;
                case "olio" or "huile" or "aceite" or "min" or "ol" when items[i].Is("v:BrakeFluid=mineral-oil") && items[i].End - items[i].Start <= "aceite min.".Length && IsLeastOil(items, i):
                case "pp" when items[i].Is("m:thru") && !IsOfPair(items, i):
                case "screwed" when items[i].Is("m:threaded") && i + 1 < items.Count && items[i + 1].Text is "together" or "in" or "into" or "on" or "onto" or "down" or "to" or "up":
                    // "Olio min. e max.": marks of a reservoir. "Screwed together": how it is held, and no thread of a steerer. "135, 20 pp": by the piece.
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "american" when items[i].Is("v:Shell=American-68") && i + 1 < items.Count && (items[i + 1].Is("t:frame") || items[i + 1].Text is "bike" or "bikes" or "brand" or "company"):
                case "fold" when items[i].Is("v:TyreBead=folding") && i + 1 < items.Count && items[i + (items[i + 1].IsSign('.') && i + 2 < items.Count ? 2 : 1)].Text is "bike" or "bicycle" or "bikes" or "bici":
                    // "An American BMX frame": where it is from. "Fold. bike": what the tyre is for.
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "viaje" when i > 1 && items[i - 1].Text == "de" && items[i - 2] is { IsNumber: true, Unit: "" or "mm", IsFraction: false, Value: >= 60 and <= 220 }:
                    // "120 de viaje": the travel of a fork, behind its figure.
                    items[i] = Word(items[i], "t:travel");
                    break;
                case "post" when IsPostOfBrake(items, i):
                    items[i] = Word(items[i], "m:pm");
                    break;
                case "standaard" when i + 1 < items.Count && items[i + 1] is { Kind: SpecTokenKind.Word, Terms.IsEmpty: false } named && named.Terms.Any(t => t.StartsWith("v:Shell", StringComparison.Ordinal) || t.StartsWith("v:Hanger", StringComparison.Ordinal)):
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "old" when items[i].Is("t:spacing") && i + 1 < items.Count && items[i + 1] is { IsNumber: true } figure && (figure.IsInch || figure.IsFraction):
                    // "Old 1 inch threaded": an adjective, for no hub is measured in inches over its locknuts.
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "old" when items[i].Is("t:spacing") && i > 0 && items[i - 1].Text is "plain" or "good" or "same" or "ordinary" or "an" or "my" or "very":
                    // "A plain old 73 mm BSA".
                    items[i] = Word(items[i], "m:nothing");
                    break;
                case "franzosisch" or "francais" or "francese" or "frances" or "frans" when !items[i].Is("v:ShellFamily=French") && IsOfThread(items, i):
                    items[i] = Word(items[i], "v:ShellFamily=French");
                    break;
                case "frans" or "franz" or "francais" or "francese" or "frances" or "french" when IsBeforeOldWidth(items, i):
                    items[i] = Word(items[i], "v:ShellFamily=French");
                    break;
                case "schweizerisch" or "suisse" or "svizzero" or "suizo" or "zwitsers" when items[i].Terms.IsEmpty && IsOfThread(items, i):
                    items[i] = Word(items[i], "v:ShellFamily=Swiss");
                    break;
                case "englisch" or "anglais" or "inglese" or "ingles" or "engels" or "english" when items[i].Terms.IsEmpty && IsOfThread(items, i):
                    items[i] = Word(items[i], "v:ShellFamily=BSA");
                    break;
            }
        }
    }

    /// <summary>The words that mean a thing by the place where they stand on a frame.</summary>
    public static void MendFrame(List<SpecItem> items)
    {
        OfThisFrame(items);
        WithoutCups(items);
        bool? band = null;
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i] is { Kind: SpecTokenKind.Word, IsFraction: false, Text: "schelle" or "klemme" or "klem" or "collar" or "collier" or "collarino" or "abrazadera" } && !items[i].Is("t:seatclamp") && (band ??= items.Exists(o => o.Is("t:post")) && !items.Exists(o => o.Is("t:frontmech"))) == true)
            {
                // "Stütze mit 26,8 und Schelle 30,0".
                items[i] = Word(items[i], "t:seatclamp");
            }
            else if (items[i] is { Kind: SpecTokenKind.Word, IsFraction: false, Text: "einbaubreite" or "einbaumass" or "einbauweite" or "inbouwbreedte" or "inbouwmaat" or "largo" or "larga" } && (IsOfShell(items, i + 1) || (i + 1 < items.Count && items[i + 1].Kind == SpecTokenKind.Sign && IsOfShell(items, i + 2)) || IsOfShell(items, i - 1)))
            {
                // "PF30, Einbaubreite 73", "68 largo, PF30": of a shell, for no hub is that narrow.
                items[i] = Word(items[i], "n:width");
            }
        }

        int spanner = items.FindIndex(o => o is { Text: "spanner" or "cierre", IsFraction: false });
        bool skewer = spanner > 1 && spanner + 1 < items.Count && items[spanner + 1] is { IsNumber: true, Value: 5 or 9 };
        if (spanner > 1 && (skewer || (items[spanner].Text is "spanner" && (spanner + 1 >= items.Count || items[spanner + 1].Kind == SpecTokenKind.Sign))) && items.Exists(o => o.Is("t:spacing") && WordLists.PlacedWordsIsEndOfFrame.Contains(o.Text)))
        {
            // "Ausfallenden 135 mm, Spanner 5 mm", "punteras 135 mm, cierre 5 mm": the quick release, short.
            items[spanner] = Word(items[spanner], "m:qr");
        }

        bool? isSpanish = null;
        for (int i = 0; i < items.Count && isSpanish != false; i++)
        {
            if (items[i] is { Kind: SpecTokenKind.Word, Text: "motor" } && IsBeforeShell(items, i) && (isSpanish ??= IsOfBicycleInSpanish(items)))
            {
                items[i] = Word(items[i], "t:bb");
            }
        }
    }

    private static bool IsOfShell(List<SpecItem> items, int i) => i >= 0 && i < items.Count && items[i] is { IsNumber: true, IsFraction: false, Unit: "" or "mm", Value: >= 65 and < 95 };

    /// <summary>"T47 86,5 sin cazoletas": a frame that is sold without the cups of its bottom bracket, which says nothing of the shell.</summary>
    private static void WithoutCups(List<SpecItem> items)
    {
        for (int i = 0; i + 1 < items.Count; i++)
        {
            if (!items[i].Is("m:not") || items[i].Text is not ("ohne" or "sans" or "sin" or "senza" or "zonder" or "without"))
            {
                continue;
            }

            int cups = items[i + 1].Text is "les" or "las" or "le" or "the" or "die" or "de" && i + 2 < items.Count ? i + 2 : i + 1;
            bool bracket = items[cups].Kind == SpecTokenKind.Word && items[cups].Text is "schalen" or "cuvettes" or "cazoletas" or "calotte" or "cups" or "coppe";
            if (bracket && (cups + 1 >= items.Count || items[cups + 1].Clause != items[cups].Clause || !items[cups + 1].IsNumber) && items.Exists(o => o.Terms.Any(t => t.StartsWith("v:ShellFamily=", StringComparison.Ordinal))) && !items.Exists(o => o.Is("t:headset") || o.Is("t:headtube")))
            {
                items[i] = Word(items[i], "m:nothing");
                items[cups] = Word(items[cups], "m:nothing");
            }
        }
    }

    /// <summary>"31.6er mit 150 Hub": on a post the German word behind a figure is how far it drops. "Telaio 7x9": on a saddle the Italian word is of its rails.</summary>
    public static void MendSeat(List<SpecItem> items, bool saddle)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (saddle && items[i] is { Kind: SpecTokenKind.Word, Text: "telaio" or "forcellino" or "forcellini" })
            {
                items[i] = Word(items[i], "t:rails");
            }
            else if (saddle && items[i].Is("m:oversize"))
            {
                // "Oversize rails": of the rails, and no bar.
                items[i] = Word(items[i], "m:nothing");
            }
            else if (!saddle && i > 0 && items[i] is { Kind: SpecTokenKind.Word, Text: "hub" } && items[i - 1].IsNumber)
            {
                items[i] = Word(items[i], "n:reach");
            }
        }
    }

    /// <summary>"Straight 1.5\" tube", "tige 1\" filetée", "oversize taper": of a fork the tube is its steerer. "PM 160 post": of the mount. "Grips a 1 1/8 steerer": what a stem does.</summary>
    public static void MendSteering(List<SpecItem> items, bool stem)
    {
        for (int i = 0; i < items.Count; i++)
        {
            SpecItem item = items[i];
            if (item.Kind != SpecTokenKind.Word || (item.IsFraction && !item.Is("t:headtube")))
            {
                continue;
            }

            if (stem)
            {
                if (item.Text is "grips" or "gripping" && i + 1 < items.Count && ((items[i + 1].IsNumber && (items[i + 1].IsFraction || items[i + 1].IsInch)) || items[i + 1].Text is "a" or "an" or "the" or "onto" or "round" or "around"))
                {
                    items[i] = Word(item, "m:nothing");
                }
                else if (item.Text is "penmaat" || (item.Text is "post" && i + 1 < items.Count && items[i + 1].IsNumber && items[i + 1].Value is 22.2m or 21.15m))
                {
                    // "Post 22.2": the shaft of a quill.
                    items[i] = Word(item, "m:quill");
                }
            }
            else if (item.Is("m:oversize") || (item.Text is "post" or "posts" && i > 1 && items[i - 1].IsNumber && items[i - 2].Is("m:pm")) || (item.Text is "post" && i + 1 < items.Count && items[i + 1].Is("m:pm")))
            {
                items[i] = Word(item, "m:nothing");
            }
            else if (item.Text is "post" && i > 1 && (IsOfBrake(items[i - 1]) || (items[i - 1].Kind == SpecTokenKind.Sign && (IsOfBrake(items[i - 2]) || (i > 2 && IsOfBrake(items[i - 3]))))))
            {
                // "Caliper pad: post".
                items[i] = Word(item, "m:pm");
            }
            else if ((item.Text is "tube" or "tige" && IsBesideSteererSize(items, i)) || (item.Text is "tubo" && item.Is("t:headtube") && !items.Exists(o => o.Is("t:frame") || o.Is("t:steerer") || SetAside.IsFor(o))))
            {
                items[i] = Word(item, "t:steerer");
            }
        }
    }

    /// <summary>A size of steerers in inches, or 28.6, close to the word and in its clause.</summary>
    private static bool IsBesideSteererSize(List<SpecItem> items, int i)
    {
        for (int j = Math.Max(0, i - 3); j < items.Count && j <= i + 3; j++)
        {
            if (items[j].IsNumber && items[j].Clause == items[i].Clause && (items[j] is { Unit: "" or "mm", Value: 28.6m } || ((items[j].IsInch || items[j].IsFraction || items[j].Value == 1.125m) && items[j].Value is 1m or 1.125m or 1.25m or 1.5m)))
            {
                return !(j > 1 && items[j - 1].IsSign('x')) && !(j + 1 < items.Count && items[j + 1].IsSign('x'));
            }
        }

        return false;
    }

    /// <summary>"STECKACHSE HR;M12x1,75": the letters for a wheel say the end that an axle goes to.</summary>
    public static void MendEnds(List<SpecItem> items)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i] is { Kind: SpecTokenKind.Word, IsFraction: false, Text: "hr" or "vr" } letters && letters.Is("t:wheel"))
            {
                items[i] = Word(letters, letters.Text == "hr" ? "m:rear" : "m:front");
            }
        }
    }

    /// <summary>"Zadelpen in dat frame is 27.2", "die Stütze im Rahmen hat 31,6": where a line about the frame says that another word is of it, the word says nothing more.</summary>
    private static void OfThisFrame(List<SpecItem> items)
    {
        int topic = -1;
        for (int i = 0; i < items.Count; i++)
        {
            if (items[i].Is("t:frame") && topic >= 0 && items[topic].Clause == items[i].Clause && i - topic <= 4 && IsBehindPreposition(items, i, topic))
            {
                items[i] = Word(items[i], "m:nothing");
            }
            else if (items[i].IsTopic)
            {
                topic = i;
            }
            else if (items[i].IsNumber)
            {
                topic = -1;
            }
        }
    }

    private static bool IsBehindPreposition(List<SpecItem> items, int i, int after)
    {
        int at = i - 1;
        at -= at > after && WordLists.PlacedWordsIsBehindPreposition.Contains(items[at].Text) ? 1 : 0;
        return at > after && WordLists.PlacedWordsIsBehindPreposition2.Contains(items[at].Text);
    }

    /// <summary>"IS41 (o.), IS52 (u.)", "IS41/IS52 (o/u)": upper and lower in German, each by its letter in brackets.</summary>
    private static void Letters(List<SpecItem> items, int upper)
    {
        int lower = -1;
        for (int j = upper + 1; lower < 0 && j < items.Count && j <= upper + Apart && IsInBrackets(items, upper); j++)
        {
            lower = items[j] is { Kind: SpecTokenKind.Word, Text: "u" } ? j : -1;
        }

        if (lower > 0 && IsInBrackets(items, lower))
        {
            items[upper] = Word(items[upper], "m:upper");
            items[lower] = Word(items[lower], "m:lower");
            return;
        }

        // "ZS44 (b) / ZS56 (o)": in Dutch the letter is of the lower end, beside one for the upper.
        bool brackets = IsInBrackets(items, upper);
        for (int j = upper - 1; lower < 0 && brackets && j >= 0 && j >= upper - Apart; j--)
        {
            if (items[j] is { Kind: SpecTokenKind.Word, Text: "b" or "u" } other && IsInBrackets(items, j))
            {
                // "EC34/30 (u.), EC34/28.6 (o.)": in German the letter is of the upper end.
                items[j] = Word(other, other.Text == "b" ? "m:upper" : "m:lower");
                items[upper] = Word(items[upper], other.Text == "b" ? "m:lower" : "m:upper");
                return;
            }
        }
    }

    private static bool IsInBrackets(List<SpecItem> items, int i)
    {
        int close = i + 1 < items.Count && items[i + 1].IsSign('.') ? i + 2 : i + 1;
        return i > 0 && items[i - 1].IsSign('(') && close < items.Count && items[close].IsSign(')');
    }

    /// <summary>"Rear brake: post 140", "disc mount rear - post 180mm": behind the brake and its sign, and before the size of a rotor.</summary>
    private static bool IsPostOfBrake(List<SpecItem> items, int i) =>
        IsPostBehindRotor(items, i) || i > 1 && i + 1 < items.Count && items[i + 1] is { IsNumber: true, Unit: "" or "mm", Value: 140 or 160 or 180 or 200 or 203 } && (i + 2 >= items.Count || items[i + 2].IsSign(',') || items[i + 2].IsSign(';') || items[i + 2].IsSign(')') || items[i + 2].IsSign('.'))
        && (items[i - 1].IsSign(':') || items[i - 1].IsSign('-') || items[i - 1].IsSign('='))
        && (IsOfBrake(items[i - 2]) || (i > 2 && items[i - 2].Kind == SpecTokenKind.Word && (items[i - 2].Is("m:rear") || items[i - 2].Is("m:front") || items[i - 2].Text is "mount" or "type" or "standard") && IsOfBrake(items[i - 3])));

    /// <summary>"Caliper bosses: 6 in post", "rear brake: 160 post": behind the size of a rotor, where the brake and its sign stand before.</summary>
    private static bool IsPostBehindRotor(List<SpecItem> items, int i) =>
        i > 2 && items[i - 1] is { IsNumber: true, IsFraction: false } size && (size is { IsInch: true, Value: 5 or 6 or 7 or 8 } || size is { Unit: "" or "mm", Value: 140 or 160 or 180 or 200 or 203 }) && items[i - 2].IsSign(':') && IsOfBrake(items[i - 3]) && (i + 1 >= items.Count || items[i + 1].Kind == SpecTokenKind.Sign);

    /// <summary>"Innenlagergewinde: französisch": behind the name of the bottom bracket and its sign, or behind a verb; "Frans trapasdraad": right before the name.</summary>
    private static bool IsOfThread(List<SpecItem> items, int i)
    {
        if (i > 1 && (items[i - 1].IsSign(':') || items[i - 1].IsSign('=') || items[i - 1].IsSign('-')) && items[i - 2].Is("t:bb"))
        {
            return true;
        }

        if (i + 1 < items.Count && items[i + 1].Clause == items[i].Clause && items[i + 1].Is("t:bb") && items[i].Text is "frans" or "franzosisch" or "engels" or "englisch" or "zwitsers" or "schweizerisch" && (i == 0 || items[i - 1].Kind == SpecTokenKind.Sign || items[i - 1].Text is "een" or "het" or "met" or "en" or "ein" or "mit" or "und"))
        {
            return true;
        }

        int at = i - 1;
        while (at > 0 && i - at <= 3 && items[at].Clause == items[i].Clause && WordLists.PlacedWordsIsOfThread.Contains(items[at].Text))
        {
            at--;
        }

        bool made = i + 1 < items.Count && items[i + 1].Kind == SpecTokenKind.Word && WordLists.PlacedWordsIsOfThread2.Contains(items[i + 1].Text);
        return !made && at >= 0 && at < i && items[at].Is("t:bb") && items[at].Clause == items[i].Clause;
    }

    /// <summary>"Een pen van 26,8 mm": the Dutch word for a pin, before the size of a seat post.</summary>
    private static bool IsPostByLetter(List<SpecItem> items, int i)
    {
        int size = i + 1 < items.Count && items[i + 1].Text is "van" or "is" ? i + 2 : i + 1;
        return i > 0 && items[i - 1].Text is "een" or "de" or "en" && size > i + 1 && size < items.Count && items[size] is { IsNumber: true, IsFraction: false, Value: > 25.5m and < 35, Places: 1, Unit: "" or "mm" };
    }

    /// <summary>"Frans 68", "franz. 68": right before the width that the old threads are cut in.</summary>
    private static bool IsBeforeOldWidth(List<SpecItem> items, int i)
    {
        int width = i + 1 < items.Count && items[i + 1].IsSign('.') ? i + 2 : i + 1;
        return items[i].Terms.IsEmpty && width < items.Count && items[width] is { IsNumber: true, Value: 68, Unit: "" or "mm" } && !(width + 1 < items.Count && items[width + 1].IsSign('x'));
    }

    private static bool IsOfBrake(SpecItem item) => item.Is("t:brake") || item.Is("t:caliper") || item.Is("m:disc") || item.Is("m:mounttabs");

    /// <summary>"Motor BSA de 68", "el motor es T47", "motor inglés": where the name of a shell follows, the word is the bottom bracket of South America and no motor.</summary>
    private static bool IsBeforeShell(List<SpecItem> items, int i)
    {
        int name = i + 1 < items.Count && items[i + 1].Text is "es" or "de" or "tipo" or "va" or "con" ? i + 2 : i + 1;
        return name < items.Count && items[name].Terms.Any(t => t.StartsWith("v:ShellFamily=", StringComparison.Ordinal));
    }

    /// <summary>The line has Spanish words and none of an electric motor.</summary>
    private static bool IsOfBicycleInSpanish(List<SpecItem> items)
    {
        bool electric = items.Exists(o => WordLists.PlacedWordsIsOfBicycleInSpanish.Contains(o.Text) || o.Is("u:w") || o.Unit is "w" or "V" or "other");
        return !electric && items.Exists(o => o.Kind == SpecTokenKind.Word && WordLists.PlacedWordsIsOfBicycleInSpanish2.Contains(o.Text));
    }

    private static SpecItem Word(SpecItem item, string term) =>
        new() { Kind = SpecTokenKind.Word, Text = item.Text, Start = item.Start, End = item.End, Glued = item.Glued, Clause = item.Clause, Terms = [term] };
}
