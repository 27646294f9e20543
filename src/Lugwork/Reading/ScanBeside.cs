namespace Lugwork.Reading;

/// <summary>Words that say a value of the part only where what stands beside them is of the part too.</summary>
internal sealed partial class LineScan
{
    /// <summary>"2 right cleats", "2x left pedals, 1 right": the sides of something that goes with pedals, or more than one word for a side.</summary>
    private bool IsOfPedals(int side)
    {
        // "One of a pair".
        if (side > 1 && _items[side - 1].Text is "of" or "from" && _items[side - 2].Text is "one" or "half" or "single" or "1")
        {
            return false;
        }

        for (int i = 0; i < _items.Count; i++)
        {
            if (i != side && (IsSide(_items[i].Text) || (_items[i].Kind == SpecTokenKind.Word && IsBesidePedals(_items[i].Text))))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsSide(string word) =>
        WordLists.ScanBesideIsSide.Contains(word);

    /// <summary>Cleats, tools, screws and reflectors.</summary>
    private static bool IsBesidePedals(string word) =>
        word.StartsWith("cleat", StringComparison.Ordinal) || word.StartsWith("schuhplatte", StringComparison.Ordinal) || word.StartsWith("pedalplatte", StringComparison.Ordinal) || word.StartsWith("schoenplaat", StringComparison.Ordinal) || word.StartsWith("reflector", StringComparison.Ordinal) || word.StartsWith("reflektor", StringComparison.Ordinal) || word.StartsWith("allen", StringComparison.Ordinal)
            || WordLists.ScanBesideIsBesidePedals.Contains(word);

    /// <summary>"8 spline long", "8 spline, short splines": the word is of the splines, and not of the axle, the guarantee or what else stands behind it.</summary>
    private bool IsOfSplines(int word, int splines)
    {
        string behind = word + 1 < _items.Count && _items[word + 1].Kind == SpecTokenKind.Word ? _items[word + 1].Text : "";
        bool named = WordLists.ScanBesideIsOfSplines.Contains(behind);
        bool closed = word + 1 >= _items.Count || _items[word + 1].Kind == SpecTokenKind.Sign || _items[word + 1] is { Unit: "mm", Value: 5 or 9 };
        return named || word == splines - 1 || (closed && (word == splines + 1 || (word == splines + 2 && _items[word - 1].Kind == SpecTokenKind.Sign)));
    }

    /// <summary>"Hydraulique 11v STI", "hydraulic road, 2x12": the bare word beside figures, a road lever or a flat bar, where hydraulics are those of a brake.</summary>
    private bool IsOnlyHydraulic(LineFinding signal) =>
        signal.First == signal.Last && !_items[signal.First].IsFraction && !Clause(signal.First, "t:rearmech") && !Clause(signal.First, "t:frontmech")
        && WordLists.ScanBesideIsOnlyHydraulic.Contains(_items[signal.First].Text)
        && _items.Exists(i => i.IsNumber || i.Unit == "speed" || i.Is("m:road") || i.Text is "sti" or "disc");

    /// <summary>A control for the other kind of bar, or a spare for it, is named beside.</summary>
    private bool IsOfControl(int i) =>
        !_items.Exists(o => o.Kind == SpecTokenKind.Word && (o.Text is "adapter" or "adaptateur" or "adaptador" or "adattatore" || o.Text.StartsWith("ersatz", StringComparison.Ordinal) || o.Text.StartsWith("gummi", StringComparison.Ordinal)))
        && !(i > 0 && _items[i - 1].Text is "routed" && _items[i - 1].Clause == _items[i].Clause);

    /// <summary>"Isis compatible": what a thing goes with, and not what it has.</summary>
    private bool IsOnlyCompatible(int i) =>
        i + 1 < _items.Count && _items[i + 1].Text is "compatible" or "compatibles" or "kompatibel" or "compatibel" or "compatibile" or "compatibili";
}
