namespace Lugwork.Drawing;

/// <summary>One of three tones, or the mark of a clash: a letter, a pattern and a colour each, so that none of them is the only sign.</summary>
internal sealed class DraftTone
{
    private DraftTone(string letter, string mark, double[] angles, double spacing)
    {
        Letter = letter;
        Mark = mark;
        Angles = angles;
        Spacing = spacing;
    }

    /// <summary>What is there: frame or fork. Hatched up to the right, blue.</summary>
    public static DraftTone Base { get; } = new("A", "a", [45], 1.8);

    /// <summary>What goes in or on. No hatching, orange.</summary>
    public static DraftTone Fitted { get; } = new("B", "b", [], 0);

    /// <summary>What stands between or beside. Hatched up to the left and wide apart, grey.</summary>
    public static DraftTone Between { get; } = new("C", "c", [135], 2.6);

    /// <summary>Where two things would be in one place. Crossed, in the colour of the lines.</summary>
    public static DraftTone Clash { get; } = new("X", "x", [45, 135], 1.1);

    /// <summary>The bare sheet, where something is open: no letter and no colour.</summary>
    public static DraftTone Bare { get; } = new("", "e", [], 0);

    public string Letter { get; }

    /// <summary>Last letter of its classes.</summary>
    public string Mark { get; }

    /// <summary>Angles of its hatching to the level, degrees.</summary>
    internal double[] Angles { get; }

    /// <summary>Between two lines of its hatching, millimetres of the sheet.</summary>
    public double Spacing { get; }
}
