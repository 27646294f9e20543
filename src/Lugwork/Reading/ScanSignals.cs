namespace Lugwork.Reading;

/// <summary>How shifting is worked, and what a word for that is of.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Electronic, cable": a cable that pulls or a wire; the line does not say which.</summary>
    private void ElectronicCable()
    {
        if (Anywhere("m:electronic") < 0)
        {
            if (Values.TryGetValue("signal", out LineFinding? pulled) && pulled.Key == "cable" && IsToBattery(pulled.Last))
            {
                Several("signal", ["cable", "wired"], pulled.First, pulled.Last, "a cable that goes to a battery does not pull");
            }

            return;
        }

        Predicate<LineDoubt> two = d => d is { Field: "signal", Kind: LineDoubtKind.Conflict } && d.Keys.Contains("wired") && d.Keys.Contains("cable");
        if (Doubts.Exists(two) && _items.TrueForAll(i => !i.Is("v:ShiftSignal=cable") || (i.IsFraction ? IsWithWord(i.Text) : i.Text is "kabel" or "cable" or "cables" or "cavo")))
        {
            // "Elektronisch, mit Kabel (wired)": a word for any cable, and one that only a wire has.
            int wire = Anywhere("v:ShiftSignal=wired");
            Doubts.RemoveAll(two);
            Values.Remove("signal");
            Keep("signal", "wired", wire, wire);
            return;
        }

        if (!Values.TryGetValue("signal", out LineFinding? signal))
        {
            WireOfElectronics();
        }
        else if (signal.Key == "cable" && IsCableOfElectronics(signal))
        {
            Values["signal"] = signal with { Key = "wired" };
        }
        else if (signal.Key == "cable" && !IsElectronicNext(signal))
        {
            Several("signal", ["cable", "wired"], signal.First, signal.Last, "electronic shifting has no cable that pulls");
        }
    }

    /// <summary>"Elektronisches Schaltwerk mit Kabel", "cambio 11v elettronico con cavo": the word for electronics stands before one for any cable.</summary>
    private bool IsCableOfElectronics(LineFinding signal)
    {
        SpecItem cable = _items[signal.First];
        bool plain = cable.IsFraction ? (cable.Text == "met" && cable.End - cable.Start == "met kabel".Length) || (cable.Text == "con" && cable.End - cable.Start == "con cavo".Length) : cable.Text is "kabel" or "cable" or "cavo";
        return plain && signal.First == signal.Last && IsWithElectronics(signal.First, cable.IsFraction) && _items.Count(i => i.Terms.Contains("v:ShiftSignal=cable")) == 1;
    }

    /// <summary>"Elektronische achterderailleur met draadje", "dérailleur électronique 12v avec fil": a wire, which no mechanical shifting is told by.</summary>
    private void WireOfElectronics()
    {
        for (int i = 1; i < _items.Count; i++)
        {
            bool wired = _items[i].IsFraction && IsWithWord(_items[i].Text) && _items[i].Is("v:TyreBead=wired");
            if (wired ? IsWithElectronics(i, true) : _items[i] is { Kind: SpecTokenKind.Word, IsFraction: false, Text: "leitung" or "draad" or "draadje" or "snoer" or "snoertje" or "kabeltje" or "draht" or "wire" or "wires" or "fil" or "fils" or "hilo" or "hilos" or "filo" or "fili" } && IsWithElectronics(i, false))
            {
                Keep("signal", "wired", i, i);
                return;
            }
        }
    }

    /// <summary>A word for electronics stands before the cable, with nothing between but the part, its speeds and the word for "with".</summary>
    private bool IsWithElectronics(int cable, bool with)
    {
        bool battery = IsToBattery(cable);
        with |= battery;
        for (int i = cable - 1; i >= 0 && i > cable - Reach; i--)
        {
            SpecItem item = _items[i];
            with |= IsWithWord(item.Text);
            if (item.Is("m:electronic"))
            {
                // "Elektrisch" is said of the motor too.
                bool own = battery || (i + 1 < cable && IsShifting(_items[i + 1])) || (i > 0 && IsShifting(_items[i - 1]));
                return with && !Negated(i) && (own || (!item.Text.Contains("ktri", StringComparison.Ordinal) && !item.Text.Contains("ctri", StringComparison.Ordinal) && !item.Text.Contains("ttri", StringComparison.Ordinal)));
            }

            bool told = IsWithWord(item.Text) || (item.IsSign(',') && with) || item.Text is "griff" or "a" or "einem" or "een" or "un" || item.Is("t:rearmech") || item.Is("t:frontmech") || item.Is("t:shifter") || item is { IsNumber: true, Unit: "speed" } || item.IsSign('-') || (item.IsSign('.') && i > 0 && (_items[i - 1].Is("m:electronic") || _items[i - 1].Text is "m" or "w"));
            if (!told)
            {
                return false;
            }
        }

        return false;
    }

    private static bool IsShifting(SpecItem item) => item.Is("t:rearmech") || item.Is("t:frontmech") || item.Is("t:shifter");

    /// <summary>"Kabel zum Akku", "wire to the battery", "cavo alla batteria": what goes to a battery is a wire.</summary>
    private bool IsToBattery(int cable)
    {
        for (int i = cable + 2; i < _items.Count && i <= cable + 3 && WordLists.ScanSignalsIsTo.Contains(_items[cable + 1].Text) && _items[i].Clause == _items[cable].Clause; i++)
        {
            if (WordLists.ScanSignalsIsBattery.Contains(_items[i].Text))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsWithWord(string word) => WordLists.ScanSignalsIsWithWord.Contains(word);

    /// <summary>"Lo cambi\u00E9 por la electr\u00F3nica", "switched to electronic": each word for electronics stands in another clause, without a figure, behind a word for going over to it.</summary>
    private bool IsElectronicNext(LineFinding signal)
    {
        for (int i = 0; i < _items.Count; i++)
        {
            if (!_items[i].Is("m:electronic"))
            {
                continue;
            }

            bool over = false;
            int clause = _items[i].Clause;
            for (int j = i - 1; j >= 0 && j >= i - 10 && _items[j].Clause == clause; j--)
            {
                over |= WordLists.ScanSignalsIsElectronicNext.Contains(_items[j].Text);
            }

            if (!over || clause == _items[signal.First].Clause || _items.Exists(k => k.Clause == clause && k.IsNumber && k.Unit is not "other"))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>"Cassette 11-speed": the one number of speeds stands right beside the name of another part, and the part itself is not named.</summary>
    private bool SpeedsOfOther(string other, string own)
    {
        int speeds = _items.FindIndex(i => i.Unit == "speed" && !i.Used);
        if (_slot == Slot.RearDerailleur && speeds >= 0 && speeds + 1 < _items.Count && IsSprockets(_items[speeds + 1].Text) && _items.FindAll(i => i.Is(other)) is { Count: <= 1 } named && named.TrueForAll(i => i == _items[speeds + 1]) && !_items.Exists(IsPulley))
        {
            // "Para siete piñones": over how many it shifts.
            return false;
        }

        return speeds >= 0 && _items.FindLastIndex(i => i.Unit == "speed" && !i.Used) == speeds && Clause(speeds, other) && Anywhere(own) < 0 && Anywhere("t:chain") < 0;
    }

    /// <summary>A small wheel of the cage, which has teeth of its own.</summary>
    private static bool IsPulley(SpecItem item) =>
        item.Kind == SpecTokenKind.Word && WordLists.ScanSignalsIsPulley.Contains(item.Text);

    /// <summary>"Hydraulisch gedämpft": of the cage.</summary>
    private static bool IsDamped(string word) =>
        word.StartsWith("gedam", StringComparison.Ordinal) || word.StartsWith("damp", StringComparison.Ordinal) || word.StartsWith("amort", StringComparison.Ordinal) || word.StartsWith("smorz", StringComparison.Ordinal) || word.StartsWith("gedemp", StringComparison.Ordinal) || word.StartsWith("demp", StringComparison.Ordinal) || word is "clutch" or "kupplung" or "cage" or "kafig";

    /// <summary>Hydraulic shifting; beside a word for a brake the hydraulics are of that.</summary>
    private void HydraulicOfBrake()
    {
        if (!Values.TryGetValue("signal", out LineFinding? signal) || signal.Key != "hydraulic")
        {
            return;
        }

        bool shifter = _slot == Slot.RearShifter || _slot == Slot.FrontShifter;
        bool alone = shifter && _items.Exists(i => i.Unit == "speed") && Clauses(_items[signal.First].Clause).All(i => i.Kind == SpecTokenKind.Sign || (i == _items[signal.First] && !i.IsFraction));
        if (signal.Last + 1 < _items.Count && IsDamped(_items[signal.Last + 1].Text))
        {
            Values.Remove("signal");
        }
        else if (alone || IsOnlyHydraulic(signal))
        {
            Several("signal", [signal.Key], signal.First, signal.Last, "the hydraulics can be those of the brake");
        }
        else if (shifter && _items.Exists(i => i.Is("t:brake") || i.Is("t:lever") || i.Is("t:caliper") || i.Is("t:rotor") || i.Terms.Any(t => t.StartsWith("v:Brake", StringComparison.Ordinal))))
        {
            Several("signal", [signal.Key], signal.First, signal.Last, "the hydraulics can be those of the brake");
        }
    }
}
