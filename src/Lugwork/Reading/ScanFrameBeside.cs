namespace Lugwork.Reading;

/// <summary>Figures that a line of a frame says beside its interfaces.</summary>
internal sealed partial class LineScan
{
    private bool IsOfFrameBeside(int i) => IsWheelWord(i) || IsBoltOfTrial(i) || IsChainlineByLetters(i) || IsBoreOfShellRead(i) || IsTaperBesideCups(i) || IsBendOfEnd(i) || (IsSteererInch(i) && TopicOf(i) is "t:headset" or "t:headtube" or "t:steerer");

    /// <summary>29er, 27.5er: the wheels that the frame is built for, which are no field of it.</summary>
    private bool IsWheelWord(int i) =>
        _items[i] is { Value: 20 or 24 or 26 or 27.5m or 28 or 29, Unit: "" or "in" } && i + 1 < _items.Count && _items[i + 1] is { Glued: true, Text: "er" or "ers" };

    /// <summary>"Trial hub 129 mm, M10 bolts": the axle of a hub that has no other.</summary>
    private bool IsBoltOfTrial(int i) =>
        _items[i].Value == 10 && i > 0 && _items[i - 1].Text == "m" && _items[i].Glued && Values.TryGetValue("rear", out LineFinding? rear) && rear.Key is "R129" or "R116" && !Values.ContainsKey("hanger") && !Clause(i, "t:hanger");

    /// <summary>"CL=43.5", "CL: 49": a chainline.</summary>
    private bool IsChainlineByLetters(int i) =>
        i >= 2 && _items[i].Value is >= 38 and <= 62 && _items[i].IsMillimetre && (_items[i - 1].IsSign('=') || _items[i - 1].IsSign(':')) && _items[i - 2].Text == "cl";

    /// <summary>"BBright (46 mm)", "American shell 51.3 mm": the bore that the shell that was read is printed with.</summary>
    private bool IsBoreOfShellRead(int i) =>
        _items[i].IsMillimetre && !_items[i].IsFraction && !JoinsClosely(i) && Values.TryGetValue("shell", out LineFinding? said) && Math.Abs(_items[i].Clause - _items[said.First].Clause) <= 2 && TopicOf(i) is "" or "t:bb" or "t:shellbore" or "t:inner"
        && BottomBrackets.Shell.All.FirstOrDefault(s => s.FitKey == said.Key) is { } shell && HasBore(shell.Family, _items[i].Value);

    /// <summary>"Tapered head tube 1.125-1.5, IS42 and IS52": the sizes of the steerer that goes into the bores that were read.</summary>
    private bool IsTaperBesideCups(int i) =>
        Values.ContainsKey("headTubeUpper") && Values.ContainsKey("headTubeLower") && _items[i].Value is 1 or 1.125m or 1.25m or 1.375m or 1.5m && _items[i].Unit is "" or "in" && (Clause(i, "t:headtube") || Clause(i, "t:headset") || Clause(i, "t:steerer") || HasMark(i, "m:tapered"));

    /// <summary>"145 mm, bends 3 mm": how far the ends are bent to either hub.</summary>
    private bool IsBendOfEnd(int i) => _items[i].Value == 3 && _items[i].IsMillimetre && Values.TryGetValue("rear", out LineFinding? rear) && rear.Key == "R145-flex" && Clause(i, "m:flex");
}
