namespace Lugwork.Reading;

/// <summary>How shifting is worked, and what a word for that is of.</summary>
internal sealed partial class LineScan
{
    /// <summary>"Electronic, cable": a cable that pulls or a wire; the line does not say which.</summary>
    private void ElectronicCable()
    {
        if (Anywhere("m:electronic") >= 0 && Values.TryGetValue("signal", out LineFinding? signal) && signal.Key == "cable" && !IsElectronicNext(signal))
        {
            Several("signal", ["cable", "wired"], signal.First, signal.Last, "electronic shifting has no cable that pulls");
        }
    }

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
                over |= _items[j].Text is "switched" or "switching" or "switch" or "moved" or "moving" or "upgraded" or "upgrading" or "changed" or "went" or "gone" or "going"
                    or "umgestiegen" or "umgestellt" or "umgerustet" or "wechsle" or "gewechselt" or "umstieg" or "wechsel" or "umstellung" or "passe" or "passee" or "passer" or "passage" or "pase" or "pasado" or "cambie" or "cambiado" or "pasar" or "passato" or "passata" or "passo" or "passaggio" or "passando" or "overgestapt" or "overgegaan" or "overstap" or "overgang" or "ponerme";
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
        item.Kind == SpecTokenKind.Word && item.Text is "pulley" or "pulleys" or "jockey" or "rolle" or "rollen" or "schaltrolle" or "schaltrollen" or "schaltrad" or "schaltradchen" or "leitrolle" or "spannrolle" or "galet" or "galets" or "roldana" or "roldanas" or "polea" or "poleas" or "puleggia" or "pulegge" or "rotellina" or "rotelline" or "wieltje" or "wieltjes" or "derailleurwieltje" or "derailleurwieltjes";

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
