using System.Collections.Immutable;

namespace Lugwork.Drawing;

/// <summary>What a drawing is made of, gathered in millimetres of the thing that is drawn, y down. <see cref="DraftLayout"/> puts it on the sheet.</summary>
/// <param name="title">What it shows.</param>
/// <param name="view">From where, and what else a reader has to know first.</param>
/// <param name="scale">Millimetres of the sheet for one of the thing.</param>
/// <param name="scaleWords">The scale in words; null for a plain one.</param>
internal sealed class DraftSheet(string title, string view, double scale, string? scaleWords = null)
{
    public string Title { get; } = title;

    public string View { get; } = view;

    public double Scale { get; } = scale;

    public string ScaleWords { get; } = scaleWords ?? DraftScale.InWords(scale);

    /// <summary>The owner's name for the whole; stands below the title.</summary>
    public string Name { get; set; } = "";

    public List<DraftForm> Forms { get; } = [];

    public List<DraftFigure> Figures { get; } = [];

    /// <summary>Figures that are measured where they stand, on a bar or beside a point of a chart.</summary>
    public List<DraftFigure> Bars { get; } = [];

    public List<DraftNote> Notes { get; } = [];

    public List<DraftLabel> Labels { get; } = [];

    /// <summary>Texts that look for a free place near a point of the view.</summary>
    public List<DraftNote> Loose { get; } = [];

    public List<string> Sentences { get; } = [];

    public List<ImmutableArray<string>> Rows { get; } = [];

    public Verdict Worst { get; private set; }

    /// <summary>Id of the first joint that it tells: what is put together there is what it shows. Empty for a chart.</summary>
    public string About { get; private set; } = "";

    public void Box(string part, DraftTone? tone, double x1, double y1, double x2, double y2, bool open = false) =>
        Forms.Add(new(part, tone, open, DraftLine.Plain, [(Math.Min(x1, x2), Math.Min(y1, y2)), (Math.Max(x1, x2), Math.Max(y1, y2))], IsBox: true));

    /// <summary>A narrow box of the fitted tone with thin lines.</summary>
    public void Blade(string part, double x1, double y1, double x2, double y2, bool open) =>
        Forms.Add(new(part, DraftTone.Fitted, open, DraftLine.Thin, [(x1, y1), (x2, y2)], IsBox: true));

    /// <summary>A box on each side of the middle line x = 0.</summary>
    public void Pair(string part, DraftTone? tone, double inner, double y1, double outer, double y2, bool open = false)
    {
        Box(part, tone, -outer, y1, -inner, y2, open);
        Box(part, tone, inner, y1, outer, y2, open);
    }

    public void Area(string part, DraftTone? tone, bool open, params ImmutableArray<(double X, double Y)> points) =>
        Forms.Add(new(part, tone, open, DraftLine.Plain, points, IsClosed: true));

    public void Hollow(string part, DraftTone? tone, bool open, ImmutableArray<(double X, double Y)> outline, ImmutableArray<(double X, double Y)> hole) =>
        Forms.Add(new(part, tone, open, DraftLine.Plain, outline, IsClosed: true) { Hole = hole });

    public void Path(string part, DraftLine line, bool open, params ImmutableArray<(double X, double Y)> points) =>
        Forms.Add(new(part, null, open, line, points));

    public void Ring(string part, DraftTone? tone, double x, double y, double radius, bool open = false, DraftLine line = DraftLine.Plain, double band = 0) =>
        Forms.Add(new(part, tone, open, line, [(x, y)], Radius: radius, Band: band));

    public void Measure(DraftSize size, double x1, double y1, double x2, double y2, DraftSide side) =>
        Figures.Add(new(size, (x1, y1), (x2, y2), side, "mm", 1 / Scale));

    public void Measure(DraftSize size, double x1, double y1, double x2, double y2, DraftSide side, string unit, double perSheet) =>
        Figures.Add(new(size, (x1, y1), (x2, y2), side, unit, perSheet));

    public void Note(DraftTone? tone, string text, double x, double y, DraftSide side) =>
        Notes.Add(new(tone is null ? text : $"{tone.Letter}: {text}", (x, y), side));

    public void Label(string text, double x, double y, double right = 0, double down = 0, double align = 0) => Labels.Add(new(text, (x, y), right, down, align));

    public void Say(string sentence) => Sentences.Add(sentence);

    /// <summary>Tells what the joints say of what is drawn; the worst of them stands at the head.</summary>
    public void Tell(Build build, params ReadOnlySpan<string> joints)
    {
        foreach (string id in joints)
        {
            About = About.Length == 0 ? id : About;
            if (DraftFit.Of(build, id) is not { } fit)
            {
                continue;
            }

            Worst = Worst == Verdict.NotJudged ? fit.Verdict : Verdicts.Worse(Worst, fit.Verdict);
            if (fit.Verdict != Verdict.Fits)
            {
                Sentences.Add(fit.ToString());
            }
        }
    }

    /// <summary>Tells what a sum over a figure comes to that no part holds; it counts like a joint.</summary>
    public void Tell(SumCheck check)
    {
        Worst = Worst == Verdict.NotJudged ? check.Verdict : Verdicts.Worse(Worst, check.Verdict);
        Sentences.Add($"{char.ToUpperInvariant(check.ToString()[0])}{check.ToString()[1..]}.");
    }

    /// <summary>Names the parts as their owner does, each on a line of its own.</summary>
    public void Called(Build build, params ReadOnlySpan<Slot> slots)
    {
        Name = build.Name;
        foreach (Slot slot in slots)
        {
            Part? part = build[slot];
            if (part is null)
            {
                Sentences.Add($"The build has no {slot.Name} yet.");
            }
            else if (DraftText.Clean(part.Name).Length > 0)
            {
                Sentences.Add($"{char.ToUpperInvariant(slot.Name[0])}{slot.Name[1..]}: {part.Name}");
            }
        }
    }

    public LineDrawing Finish() => new DraftLayout(this).Drawing();
}
