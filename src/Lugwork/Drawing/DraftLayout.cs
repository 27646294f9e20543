using System.Collections.Immutable;
using System.Text;

namespace Lugwork.Drawing;

/// <summary>
/// Puts a sheet together so that no text can stand on another: the view in the middle; level figures in lanes above and below it, one a lane; upright figures and notes in
/// a column on each side; rows, key and sentences below. Columns grow downwards and lanes never run into them, so the sheet grows with what has to be said.
/// </summary>
internal sealed class DraftLayout(DraftSheet sheet)
{
    private const double Margin = 6;
    private const double Lane = 5.6;
    private const double Upright = 4.4;
    private const double ColumnText = 46;
    private const double LeastWidth = 150;

    private readonly DraftPen _pen = new();
    private readonly List<DraftPlace> _placed = [];
    private readonly List<DrawnDimension> _dimensions = [];
    private readonly List<DraftPlace?[]> _cells = [];
    private readonly List<((double X, double Y) From, (double X, double Y) To)> _strokes = [];
    private double _first;
    private double _upper;
    private double _last;
    private double _lower;
    private double _viewLeft;
    private double _viewTop;
    private (double Left, double Top, double Right, double Bottom) _pad;

    private double ViewWidth => (_last - _first) * sheet.Scale;

    private double ViewHeight => (_lower - _upper) * sheet.Scale;

    public LineDrawing Drawing()
    {
        Bounds();
        Pad();
        List<DraftFigure> top = Level(DraftSide.Top);
        List<DraftFigure> bottom = Level(DraftSide.Bottom);
        List<DraftPlace> left = Column(DraftSide.Left, out double leftLanes);
        List<DraftPlace> right = Column(DraftSide.Right, out double rightLanes);
        double leftText = Widest(left);
        double rightText = Widest(right);
        double before = Margin + leftText + leftLanes + _pad.Left + 3;
        double width = before + ViewWidth + _pad.Right + rightLanes + rightText + 3 + Margin;
        double least = Math.Max(LeastWidth, Math.Max(LanesNeed(top), LanesNeed(bottom)));
        least = Math.Max(least, RowsNeed());
        if (width < least)
        {
            before += (least - width) / 2;
            width = least;
        }

        _viewLeft = before;
        double y = Head(width);
        _viewTop = y + 3 + (top.Count * Lane) + _pad.Top;
        double columnTop = _viewTop - _pad.Top;
        double columnFoot = _viewTop + ViewHeight + _pad.Bottom;
        Settle(left, right, leftLanes, rightLanes, columnTop, columnFoot, out double end);
        Draw();
        Lanes(top, columnTop - 3, -Lane, width);
        double below = Math.Max(columnFoot, end) + 4.5;
        Lanes(bottom, below, Lane, width);
        foreach (DraftFigure bar in sheet.Bars)
        {
            _pen.Line("lw-l lw-guide", OnSheet(bar.From), OnSheet(bar.To), bar.Size.Name);
            _dimensions.Add(new(bar.Size.Name, bar.Size.Figure, bar.Unit, bar.Size.Said, OnSheet(bar.From), OnSheet(bar.To), bar.PerSheet));
        }

        Uprights(DraftSide.Left, leftLanes, left);
        Uprights(DraftSide.Right, rightLanes, right);
        Labels();
        double foot = below + (bottom.Count * Lane) + 1;
        foot = Rows(foot);
        foot = Key(foot, width);
        foot = Sentences(foot, width);
        double height = foot + Margin - 2;
        foreach (DraftPlace place in _placed)
        {
            _pen.Write(place);
        }

        string description = Description();
        string title = DraftText.Clean(sheet.Title);
        double perMillimetre = sheet.Scale;
        return new(title, description, sheet.ScaleWords, Rounded(width), Rounded(height), [.. _dimensions], sheet.About, _pen.Sheet(title, description, sheet.ScaleWords, perMillimetre, Rounded(width), Rounded(height)));
    }

    private static double Rounded(double value) => Math.Ceiling(value * 10) / 10;

    private (double X, double Y) OnSheet((double X, double Y) point) => (_viewLeft + ((point.X - _first) * sheet.Scale), _viewTop + ((point.Y - _upper) * sheet.Scale));

    private ImmutableArray<(double X, double Y)> OnSheet(ImmutableArray<(double X, double Y)> points)
    {
        if (points.IsEmpty)
        {
            return points;
        }

        ImmutableArray<(double X, double Y)>.Builder placed = ImmutableArray.CreateBuilder<(double X, double Y)>(points.Length);
        foreach ((double X, double Y) point in points)
        {
            placed.Add(OnSheet(point));
        }

        return placed.MoveToImmutable();
    }

    private void Bounds()
    {
        (_first, _upper, _last, _lower) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (DraftForm form in sheet.Forms)
        {
            foreach ((double x, double y) in form.Points)
            {
                _first = Math.Min(_first, x - form.Radius);
                _last = Math.Max(_last, x + form.Radius);
                _upper = Math.Min(_upper, y - form.Radius);
                _lower = Math.Max(_lower, y + form.Radius);
            }
        }
    }

    /// <summary>Room round the view for the texts that stand in it.</summary>
    private void Pad()
    {
        foreach (DraftLabel label in sheet.Labels)
        {
            double x = ((label.At.X - _first) * sheet.Scale) + label.Right - (label.Align * DraftText.Width(label.Text, DraftStyle.Size));
            double y = ((label.At.Y - _upper) * sheet.Scale) + label.Down;
            double half = DraftStyle.Size * DraftStyle.Leading / 2;
            _pad.Left = Math.Max(_pad.Left, -x);
            _pad.Right = Math.Max(_pad.Right, x + DraftText.Width(label.Text, DraftStyle.Size) - ViewWidth);
            _pad.Top = Math.Max(_pad.Top, half - y);
            _pad.Bottom = Math.Max(_pad.Bottom, y + half - ViewHeight);
        }
    }

    /// <summary>Figures of a side, the shortest nearest to the view.</summary>
    private List<DraftFigure> Level(DraftSide side) => [.. sheet.Figures.Where(f => f.Side == side).OrderBy(f => Math.Abs(f.To.X - f.From.X))];

    private List<DraftFigure> Standing(DraftSide side) => [.. sheet.Figures.Where(f => f.Side == side).OrderBy(f => Math.Abs(f.To.Y - f.From.Y))];

    private List<DraftPlace> Column(DraftSide side, out double lanes)
    {
        List<DraftPlace> places = [];
        List<DraftFigure> standing = Standing(side);
        lanes = standing.Count == 0 ? 0 : (standing.Count * Upright) + 3;
        foreach (DraftFigure figure in standing)
        {
            places.Add(new(DraftText.Wrap(figure.Size.ToString(), ColumnText, DraftStyle.Size, 4), DraftStyle.Size) { Wanted = (((figure.From.Y + figure.To.Y) / 2) - _upper) * sheet.Scale });
        }

        foreach (DraftNote note in sheet.Notes.Where(n => n.Side == side))
        {
            places.Add(new(DraftText.Wrap(note.Text, ColumnText, DraftStyle.Size, 4), DraftStyle.Size) { Wanted = (note.At.Y - _upper) * sheet.Scale, Anchor = note.At });
        }

        return places;
    }

    private static double Widest(List<DraftPlace> places) => places.Count == 0 ? 0 : places.Max(p => p.Width) + 2;

    private static double LanesNeed(List<DraftFigure> figures) => figures.Count == 0 ? 0 : figures.Max(f => DraftText.Width(DraftText.Clean(f.Size.ToString()), DraftStyle.Size)) + (2 * Margin);

    private double Head(double width)
    {
        double y = Margin;
        y = Block(sheet.Title, Margin, y, width - (2 * Margin), DraftStyle.TitleSize, true, 2);
        y = Block(sheet.Name, Margin, y, width - (2 * Margin), DraftStyle.HeadSize, false, 2);
        if (sheet.Worst != Verdict.NotJudged)
        {
            y = Block($"Together: {Verdicts.InWords(sheet.Worst)}.", Margin, y, width - (2 * Margin), DraftStyle.HeadSize, true, 1);
        }

        return Block(sheet.View, Margin, y, width - (2 * Margin), DraftStyle.Size, false, 3);
    }

    private double Block(string text, double left, double y, double width, double size, bool bold, int lines)
    {
        ImmutableArray<string> wrapped = DraftText.Wrap(text, bold ? width / 1.08 : width, size, lines);
        if (wrapped.IsEmpty)
        {
            return y;
        }

        DraftPlace place = new(wrapped, size, bold) { Left = left, Top = y };
        _placed.Add(place);
        return y + place.Height + 0.4;
    }

    private void Settle(List<DraftPlace> left, List<DraftPlace> right, double leftLanes, double rightLanes, double top, double foot, out double end)
    {
        double edge = _viewLeft - _pad.Left - leftLanes - 3;
        double start = _viewLeft + ViewWidth + _pad.Right + rightLanes + 3;
        end = top;
        foreach ((List<DraftPlace> places, bool isLeft) in new[] { (left, true), (right, false) })
        {
            foreach (DraftPlace place in places)
            {
                place.Wanted += _viewTop;
                place.Anchor = place.Anchor is { } at ? OnSheet(at) : null;
                place.Left = isLeft ? edge - place.Width : start;
            }

            end = Math.Max(end, DraftPlace.Spread(places, top, foot));
            _placed.AddRange(places);
            foreach (DraftPlace place in places)
            {
                if (place.Anchor is { } anchor)
                {
                    _pen.Line("lw-l lw-thin", (isLeft ? edge + 0.6 : start - 0.6, place.Top + (place.Height / 2)), anchor);
                    _pen.Dot(anchor);
                }
            }
        }
    }

    private void Draw()
    {
        foreach (DraftForm form in sheet.Forms)
        {
            ImmutableArray<(double X, double Y)> points = OnSheet(form.Points);
            ImmutableArray<(double X, double Y)> hole = OnSheet(form.Hole);
            string line = form.Line switch { DraftLine.Heavy => " lw-heavy", DraftLine.Thin => " lw-thin", DraftLine.Axis => " lw-axis", _ => "" } + (form.IsOpen ? " lw-open" : "") + (form.Tone == DraftTone.Clash ? " lw-heavy" : "");
            string marks = "lw-l" + line + (form.Tone is { } tone && form.Band == 0 ? $" lw-f{tone.Mark}" : "");
            if (form.Radius > 0)
            {
                _pen.Ring(form.Part, marks, points[0], form.Radius * sheet.Scale, form.Band * sheet.Scale);
            }
            else if (form.IsBox)
            {
                _pen.Box(form.Part, marks, points[0], points[1]);
            }
            else
            {
                _pen.Path(form.Part, marks, points.AsSpan(), form.IsClosed, hole.AsSpan());
            }

            if (form.Tone is { } hatched && form.Band == 0 && !form.IsOpen)
            {
                Hatch(hatched, form.IsBox ? [points[0], (points[1].X, points[0].Y), points[1], (points[0].X, points[1].Y)] : form.Radius > 0 ? Round(points[0], form.Radius * sheet.Scale) : points, hole);
            }
        }
    }

    private void Hatch(DraftTone tone, ImmutableArray<(double X, double Y)> outline, ImmutableArray<(double X, double Y)> hole)
    {
        _strokes.Clear();
        foreach (double angle in tone.Angles)
        {
            DraftHatch.Add(_strokes, outline.AsSpan(), hole.AsSpan(), angle, tone.Spacing);
        }

        _pen.Strokes("lw-h", _strokes);
    }

    private static ImmutableArray<(double X, double Y)> Round((double X, double Y) middle, double radius)
    {
        ImmutableArray<(double X, double Y)>.Builder outline = ImmutableArray.CreateBuilder<(double X, double Y)>(48);
        for (int i = 0; i < 48; i++)
        {
            (double sin, double cos) = Math.SinCos(i * Math.PI / 24);
            outline.Add((middle.X + (radius * cos), middle.Y + (radius * sin)));
        }

        return outline.MoveToImmutable();
    }

    private void Lanes(List<DraftFigure> figures, double first, double step, double width)
    {
        for (int i = 0; i < figures.Count; i++)
        {
            DraftFigure figure = figures[i];
            double y = first + (i * step);
            (double X, double Y) from = OnSheet(figure.From);
            (double X, double Y) to = OnSheet(figure.To);
            Dimension(figure, (from.X, y), (to.X, y), from, to);
            string text = DraftText.Clean(figure.Size.ToString());
            DraftPlace place = new([text], DraftStyle.Size) { IsCovering = true, Top = y - 0.5 - (DraftStyle.Size * DraftStyle.Leading) };
            place.Left = Math.Clamp(((from.X + to.X) / 2) - (place.Width / 2), Margin, Math.Max(Margin, width - Margin - place.Width));
            _placed.Add(place);
        }
    }

    private void Uprights(DraftSide side, double lanes, List<DraftPlace> column)
    {
        List<DraftFigure> standing = Standing(side);
        bool isLeft = side == DraftSide.Left;
        for (int i = 0; i < standing.Count; i++)
        {
            DraftFigure figure = standing[i];
            double x = isLeft ? _viewLeft - _pad.Left - 3 - (i * Upright) : _viewLeft + ViewWidth + _pad.Right + 3 + (i * Upright);
            (double X, double Y) from = OnSheet(figure.From);
            (double X, double Y) to = OnSheet(figure.To);
            Dimension(figure, (x, from.Y), (x, to.Y), from, to);
            double edge = isLeft ? _viewLeft - _pad.Left - lanes - 2.4 : _viewLeft + ViewWidth + _pad.Right + lanes + 2.4;
            DraftPlace place = column[i];
            (double X, double Y) middle = (x, (from.Y + to.Y) / 2);
            _pen.Line("lw-l lw-thin", (edge, place.Top + (place.Height / 2)), middle);
            _pen.Dot(middle);
        }
    }

    /// <summary>The line between two points, its arrows and the thin lines from what is measured.</summary>
    private void Dimension(DraftFigure figure, (double X, double Y) from, (double X, double Y) to, (double X, double Y) fromForm, (double X, double Y) toForm)
    {
        bool known = figure.Size.IsKnown;
        Extend(fromForm, from);
        Extend(toForm, to);
        _pen.Line(known ? "lw-l lw-thin" : "lw-l lw-thin lw-open", from, to, figure.Size.Name);
        double length = double.Hypot(to.X - from.X, to.Y - from.Y);
        if (length > 0)
        {
            (double x, double y) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
            int inward = length < 5 ? -1 : 1;
            Arrow(from, x * inward, y * inward);
            Arrow(to, -x * inward, -y * inward);
            if (inward < 0)
            {
                _pen.Line("lw-l lw-thin", (from.X - (3 * x), from.Y - (3 * y)), from);
                _pen.Line("lw-l lw-thin", to, (to.X + (3 * x), to.Y + (3 * y)));
            }
        }

        _dimensions.Add(new(figure.Size.Name, figure.Size.Figure, figure.Unit, figure.Size.Said, from, to, figure.PerSheet));
    }

    private void Extend((double X, double Y) form, (double X, double Y) line)
    {
        double length = double.Hypot(line.X - form.X, line.Y - form.Y);
        if (length > 1.5)
        {
            (double x, double y) = ((line.X - form.X) / length, (line.Y - form.Y) / length);
            _pen.Line("lw-l lw-thin", (form.X + (0.8 * x), form.Y + (0.8 * y)), (line.X + x, line.Y + y));
        }
    }

    private void Arrow((double X, double Y) tip, double x, double y) =>
        _pen.Path("", "lw-dot", [tip, (tip.X + (1.7 * x) - (0.4 * y), tip.Y + (1.7 * y) + (0.4 * x)), (tip.X + (1.7 * x) + (0.4 * y), tip.Y + (1.7 * y) - (0.4 * x))], true);

    private void Labels()
    {
        foreach (DraftLabel label in sheet.Labels)
        {
            string text = DraftText.Clean(label.Text);
            (double X, double Y) at = OnSheet(label.At);
            DraftPlace place = new([text], DraftStyle.Size);
            place.Left = at.X + label.Right - (label.Align * place.Width);
            place.Top = at.Y + label.Down - (place.Height / 2);
            _placed.Add(place);
        }

        List<DraftPlace> inView = [.. _placed];
        foreach (DraftNote note in sheet.Loose)
        {
            (double X, double Y) at = OnSheet(note.At);
            DraftPlace place = new([DraftText.Clean(note.Text)], DraftStyle.Size);
            bool free = false;
            for (int step = 0; step < 400 && !free; step++)
            {
                free = Free(place, at, step, inView);
            }

            if (!free)
            {
                sheet.Say($"There is no room for {note.Text} beside its point: see the rows.");
                continue;
            }

            (double X, double Y) middle = (place.Left + (place.Width / 2), place.Top + (place.Height / 2));
            if (double.Hypot(middle.X - at.X, middle.Y - at.Y) > 4)
            {
                _pen.Line("lw-l lw-thin", middle, at);
            }

            inView.Add(place);
            _placed.Add(place);
        }
    }

    /// <summary>Tries the next of the places round a point, on rings that grow; says whether it is free and in the view.</summary>
    private bool Free(DraftPlace place, (double X, double Y) at, int step, List<DraftPlace> others)
    {
        (double sin, double cos) = Math.SinCos((step % 16 * Math.PI / 8) - (Math.PI / 4));
        double away = 3.1 + (step / 16 * 1.9);
        place.Left = at.X + (away * cos) - (place.Width / 2);
        place.Top = at.Y + (away * sin) - (place.Height / 2);
        if (place.Left < _viewLeft || place.Left + place.Width > _viewLeft + ViewWidth || place.Top < _viewTop || place.Top + place.Height > _viewTop + ViewHeight)
        {
            return false;
        }

        foreach (DraftPlace other in others)
        {
            if (place.Meets(other))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The cells of the rows, each measured once; null where one is empty.</summary>
    private List<DraftPlace?[]> Cells()
    {
        foreach (ImmutableArray<string> row in _cells.Count == 0 ? sheet.Rows : [])
        {
            DraftPlace?[] cells = new DraftPlace?[row.Length];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = DraftText.Wrap(row[i], 80, DraftStyle.Size, 1) is { IsEmpty: false } cell ? new(cell, DraftStyle.Size) : null;
            }

            _cells.Add(cells);
        }

        return _cells;
    }

    private double[] RowWidths()
    {
        double[] widths = new double[Cells().Select(r => r.Length).DefaultIfEmpty(0).Max()];
        foreach (DraftPlace?[] row in Cells())
        {
            for (int i = 0; i < row.Length; i++)
            {
                widths[i] = Math.Max(widths[i], row[i]?.Width ?? 0);
            }
        }

        return widths;
    }

    private double RowsNeed() => RowWidths().Sum(w => w + 5) + (2 * Margin);

    /// <summary>A plain table; the first column to the left, the others to the right.</summary>
    private double Rows(double y)
    {
        double[] widths = RowWidths();
        double line = (DraftStyle.Size * DraftStyle.Leading) + 0.5;
        foreach (DraftPlace?[] row in Cells())
        {
            double x = Margin;
            for (int i = 0; i < row.Length; i++)
            {
                if (row[i] is { } place)
                {
                    place.Top = y;
                    place.Left = i == 0 ? x : x + widths[i] - place.Width;
                    _placed.Add(place);
                }

                x += widths[i] + 5;
            }

            y += line;
        }

        return sheet.Rows.Count > 0 ? y + 1.5 : y;
    }

    /// <summary>What the tones mean, with letter and pattern; and that dashes are no figure.</summary>
    private double Key(double y, double width)
    {
        List<(DraftTone? Tone, string Text)> entries = [];
        foreach (DraftTone tone in new[] { DraftTone.Base, DraftTone.Fitted, DraftTone.Between, DraftTone.Clash })
        {
            List<string> parts = [];
            foreach (DraftForm form in sheet.Forms)
            {
                if (form.Tone == tone && !parts.Contains(form.Part))
                {
                    parts.Add(form.Part);
                }
            }

            if (parts.Count > 0)
            {
                entries.Add((tone, $"{tone.Letter}: {string.Join(", ", parts.Take(5))}"));
            }
        }

        if (sheet.Figures.Exists(f => !f.Size.IsKnown) || sheet.Forms.Exists(f => f.IsOpen))
        {
            entries.Add((null, "dashed: no figure is known, the size says nothing"));
        }

        double x = Margin;
        foreach ((DraftTone? tone, string words) in entries)
        {
            ImmutableArray<string> text = DraftText.Wrap(words, width - (2 * Margin) - 10, DraftStyle.Size, 1);
            DraftPlace place = new(text, DraftStyle.Size) { Top = y };
            if (x > Margin && x + 9 + place.Width > width - Margin)
            {
                (x, y) = (Margin, y + 5.2);
                place.Top = y;
            }

            (double X, double Y) from = (x, y + 0.1);
            (double X, double Y) to = (x + 7, y + 3.6);
            _pen.Box("", tone is null ? "lw-l lw-open" : $"lw-l lw-f{tone.Mark}", from, to);
            if (tone is not null)
            {
                Hatch(tone, [from, (to.X, from.Y), to, (from.X, to.Y)], []);
            }

            place.Left = x + 8.5;
            _placed.Add(place);
            x = place.Left + place.Width + 6;
        }

        return entries.Count > 0 ? y + 6 : y;
    }

    private double Sentences(double y, double width)
    {
        foreach (string sentence in sheet.Sentences)
        {
            y = Block(sentence, Margin, y, width - (2 * Margin), DraftStyle.Size, false, 8);
        }

        return Block($"Scale {sheet.ScaleWords}", Margin, y, width - (2 * Margin), DraftStyle.Size, false, 1) + 1;
    }

    private string Description()
    {
        StringBuilder text = new();
        Sentence(sheet.View);
        if (sheet.Worst != Verdict.NotJudged)
        {
            Sentence($"Together: {Verdicts.InWords(sheet.Worst)}");
        }

        Sentence(string.Join("; ", sheet.Figures.Where(f => f.Size.IsKnown).Select(f => f.Size.ToString())));
        Sentence(sheet.Rows.Count == 0 ? string.Join("; ", sheet.Bars.Select(b => b.Size.ToString())) : "");
        string[] open = [.. sheet.Figures.Where(f => !f.Size.IsKnown).Select(f => f.Size.Ask.Length > 0 ? $"{f.Size} ({f.Size.Ask.TrimEnd('.')})" : f.Size.ToString())];
        Sentence(open.Length > 0 ? "Not known and drawn dashed: " + string.Join("; ", open) : "");
        Sentence(string.Join("; ", sheet.Notes.Select(n => n.Text)));
        Sentence(string.Join("; ", sheet.Rows.Select(r => string.Join(" ", r.Where(c => c.Length > 0)))));
        foreach (string sentence in sheet.Sentences)
        {
            Sentence(sentence);
        }

        Sentence($"Scale {sheet.ScaleWords}");
        return text.ToString();

        void Sentence(string words)
        {
            string clean = DraftText.Clean(words);
            if (clean.Length > 0)
            {
                text.Append(text.Length > 0 ? " " : "").Append(clean).Append(clean[^1] is '.' or '?' or '!' ? "" : ".");
            }
        }
    }
}
