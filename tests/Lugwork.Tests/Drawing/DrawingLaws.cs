using System.Collections.Immutable;
using System.Xml.Linq;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Tests.Builds;
using Lugwork.Tests.Geometry;
using UnitsNet;

namespace Lugwork.Tests.Drawing;

/// <summary>What holds of every drawing, over random bicycles, frames, gears and offers.</summary>
public sealed class DrawingLaws
{
    private const int Many = 60;

    private static IEnumerable<LineDrawing> Any(int seed)
    {
        Random random = new(seed);
        for (int i = 0; i < Many; i++)
        {
            Build build = Bicycles.Any(random);
            foreach (LineDrawing drawing in Subjects.Of(Named(build, random)))
            {
                yield return drawing;
            }

            FrameChart chart = Frames.Any(random);
            if (chart.Solve().Frame is { } frame)
            {
                yield return Drawings.Geometry(frame, random.Next(3) == 0 ? null : frame.WithForkLongerBy(Length.FromMillimeters(random.Next(-40, 41))));
            }

            yield return Drawings.Gears(Gears(random));
            yield return Drawings.PriceAndMass(Offers(random), random.Next(2) == 0 ? "EUR" : "a currency with a long name");
        }
    }

    /// <summary>Names of every length, so that texts of every width have to be placed.</summary>
    private static Build Named(Build build, Random random)
    {
        Build named = Build.From(build.Frame with { Name = Name(random) }, Name(random));
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            named = build[slot] is { } part ? named.With(part with { Name = Name(random) }, slot) : named;
        }

        return named;
    }

    private static string Name(Random random) => string.Join(' ', Enumerable.Range(0, random.Next(0, 12)).Select(_ => new string((char)random.Next('A', 'z'), random.Next(1, 30))));

    private static GearTable Gears(Random random)
    {
        int[] rings = [.. Enumerable.Range(0, 40).Select(i => 20 + i).OrderBy(_ => random.Next()).Take(random.Next(1, 5))];
        int[] sprockets = [.. Enumerable.Range(0, 45).Select(i => 9 + i).OrderBy(_ => random.Next()).Take(random.Next(1, 15))];
        return GearTable.Of(rings, sprockets, Length.FromMillimeters(random.Next(600, 3_000)), random.Next(8) == 0 ? InternalHub.Find("14") : null);
    }

    private static ImmutableArray<(string Name, decimal Price, decimal Kilograms)> Offers(Random random)
    {
        // Some of them in one place: their numbers have to stand apart all the same.
        int apart = random.Next(1, 40);
        return [.. Enumerable.Range(0, random.Next(1, 60)).Select(_ => (Name(random), 100m + (random.Next(apart) * 37), 7m + (random.Next(apart) * 0.21m)))];
    }

    /// <summary>Of every kind of drawing, and told by kind: a fault of the layout is one of all of them, a fault of one form is one of its own.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void No_text_stands_on_another_or_leaves_the_sheet(int seed)
    {
        SortedDictionary<string, int> texts = new(StringComparer.Ordinal);
        SortedDictionary<string, string> collisions = new(StringComparer.Ordinal);
        foreach (LineDrawing drawing in Any(seed).Concat(Subjects.All))
        {
            SvgSheet sheet = new(drawing);
            texts[drawing.Title] = texts.GetValueOrDefault(drawing.Title) + sheet.Texts.Length;
            if (sheet.Collisions() is [var first, ..])
            {
                collisions.TryAdd(drawing.Title, first);
            }
        }

        Assert.True(collisions.Count == 0, string.Join("; ", collisions.Select(c => $"{c.Key}: {c.Value}")));
        Assert.Equal(Kinds.Order(StringComparer.Ordinal), texts.Keys);
        Assert.All(texts.Values, count => Assert.True(count > 3 * Many / 4, $"{count}"));
    }

    /// <summary>Titles of every kind that there is.</summary>
    private static readonly ImmutableArray<string> Kinds =
    [
        "Head tube and headset", "Seatpost in the seat tube", "Bottom bracket in the shell", "Rear hub, sprockets and chainline", "Front tyre, rim and fork", "Rear tyre, rim and frame",
        "Front rotor, adapter and caliper", "Rear rotor, adapter and caliper", "Frame geometry", "Frame geometry, before and after", "Gears", "Price and mass",
    ];

    /// <summary>The text of a drawing is what the library of the platform writes of the same elements, letter for letter.</summary>
    [Fact]
    public void The_svg_is_written_as_xml_is_written()
    {
        int count = 0;
        foreach (LineDrawing drawing in Any(6).Concat(Subjects.All))
        {
            string svg = drawing.ToSvg();
            Assert.Equal(XDocument.Parse(svg, LoadOptions.PreserveWhitespace).Root!.ToString(SaveOptions.DisableFormatting), svg);
            count++;
        }

        Assert.True(count > 8 * Many, $"{count}");
    }

    /// <summary>The line of a figure is as long in the SVG as the figure says, and joins the points that are told.</summary>
    [Fact]
    public void Every_figure_is_measured_back()
    {
        int known = 0;
        SortedDictionary<string, string> wrong = new(StringComparer.Ordinal);
        foreach (LineDrawing drawing in Any(3).Concat(Subjects.All))
        {
            SvgSheet sheet = new(drawing);
            Assert.Equal(drawing.Dimensions.Length, sheet.All("line").Count(l => l.Attribute("data-dimension") is not null));
            foreach (DrawnDimension dimension in drawing.Dimensions)
            {
                double told = double.Hypot(dimension.To.X - dimension.From.X, dimension.To.Y - dimension.From.Y);
                Assert.InRange(sheet.Measured(dimension.Name) * sheet.Scale, told - 0.002, told + 0.002);
                if (dimension.Figure is { } figure)
                {
                    known++;
                    if (Math.Abs((told * dimension.PerSheetMillimetre) - Math.Abs(figure)) >= 1e-6 * Math.Max(1, Math.Abs(figure)))
                    {
                        wrong.TryAdd(drawing.Title, $"{dimension} is drawn {told * dimension.PerSheetMillimetre}");
                    }
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join("; ", wrong.Select(w => $"{w.Key}: {w.Value}")));
        Assert.True(known > 20 * Many, $"{known}");
    }

    /// <summary>Nothing that is not known has a figure in the text alternative or a solid line.</summary>
    [Fact]
    public void A_figure_that_is_not_known_is_dashed_and_a_known_one_is_not()
    {
        int open = 0;
        foreach (LineDrawing drawing in Any(4))
        {
            SvgSheet sheet = new(drawing);
            foreach (DrawnDimension dimension in drawing.Dimensions)
            {
                open += dimension.Figure is null ? 1 : 0;
                Assert.Equal(dimension.Figure is null, sheet.IsOpen(dimension.Name));
            }
        }

        Assert.True(open > 5 * Many, $"{open}");
    }

    /// <summary>What a drawing says of a joint is what the report says of it.</summary>
    [Fact]
    public void The_word_at_the_head_is_the_worst_of_the_joints_that_are_drawn()
    {
        Random random = new(5);
        int worse = 0;
        for (int i = 0; i < Many; i++)
        {
            Build build = Bicycles.Any(random);
            Fit[] fits = [.. build.Check().Findings.Where(f => f.Joint!.Id is "seatpost-in-seat-tube" or "seatpost-room-in-seat-tube" or "seatpost-insertion" or "binder-on-post" or "seat-clamp-on-seat-tube")];
            string description = Drawings.Seatpost(build).Description;
            if (fits.Length == 0)
            {
                Assert.DoesNotContain("Together:", description, StringComparison.Ordinal);
                continue;
            }

            Verdict worst = fits.Max(f => f.Verdict);
            worse += worst > Verdict.Fits ? 1 : 0;
            Assert.Contains($"Together: {Verdicts.InWords(worst)}.", description, StringComparison.Ordinal);
            Assert.All(fits.Where(f => f.Verdict != Verdict.Fits), f => Assert.Contains(f.ToString(), description, StringComparison.Ordinal));
        }

        Assert.True(worse > Many / 4, $"{worse}");
    }

    /// <summary>The number of an offer stands at its point or is said to have no room.</summary>
    [Fact]
    public void Every_offer_is_in_the_rows_and_at_its_point_or_told()
    {
        ImmutableArray<(string Name, decimal Price, decimal Kilograms)> crowd = [.. Enumerable.Range(0, Drawings.MostOffers).Select(i => ($"offer {i}", 1_000m, 9m))];
        SvgSheet sheet = new(Drawings.PriceAndMass(crowd, "EUR"));
        Assert.Empty(sheet.Collisions());
        for (int i = 1; i <= crowd.Length; i++)
        {
            Assert.True(sheet.Texts.Contains($"{i}") || sheet.Texts.Any(t => t.StartsWith($"There is no room for {i} ", StringComparison.Ordinal)), $"{i}");
            Assert.Contains(sheet.Texts, t => t.StartsWith($"{i}: ", StringComparison.Ordinal) || t.StartsWith($"{i}*: ", StringComparison.Ordinal));
        }
    }
}
