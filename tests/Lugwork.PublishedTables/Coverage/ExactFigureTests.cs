using System.Globalization;

namespace Lugwork.PublishedTables.Coverage;

/// <summary>A figure that rounds to the printed one is the printed one, to the last place, unless it is listed here with both.</summary>
public sealed class ExactFigureTests
{
    /// <summary>Where the library is finer than the column: property, printed and held. Inches that the column rounds, or a finer figure of another page.</summary>
    private static readonly HashSet<string> Finer =
    [
        "HubStandard AxleDiameters: 8 7.94", "HubStandard AxleDiameters: 9.5 9.53", "HubStandard AxleDiameters: 10 9.53",
        "HubAxleThread Diameter: 7.94 7.9375", "HubAxleThread Diameter: 9.53 9.525",
        "FreewheelThread Diameter: 34.92 34.925", "FreewheelThread Diameter: 34.80 34.798", "FreewheelThread Diameter: 35.0 35.0012", "FreewheelThread Diameter: 32.77 32.766",
        "SpindleSeat LeastOutside: 16 15.5", "SpindleSeat MostOutside: 16 15.9", "BrakeMount AxleToNearHole: 46 45.8",
    ];

    /// <summary>What is computed of another figure; the column prints it rounded.</summary>
    private const string Computed = "AdjacentHoles";

    [Fact]
    public void A_figure_is_the_printed_one_to_the_last_place()
    {
        HashSet<string> found = [];
        Dictionary<string, FactFile> files = FactFile.All.ToDictionary(f => f.Name);
        foreach (FigureColumn column in FactFigures.All.Where(c => c.Agreement != Agreement.Within))
        {
            FactFile file = files[column.File];
            foreach ((CoverageLine line, string[] row) in CoverageTests.LinesOf(file).Where(l => !l.Line.Differs.Contains(column.Column)))
            {
                decimal[] printed = column.Printed(file.Cell(row, column.Column));
                IEnumerable<object> values = line.Named.Select(Library.Find).OfType<object>().Where(v => v.GetType().Name == column.Type);
                foreach ((string property, decimal held) in values.SelectMany(v => column.Properties.Where(p => p != Computed).SelectMany(p => Library.Figures(v, p).Select(h => (p, h)))))
                {
                    decimal[] near = [.. printed.Where(p => FigureColumn.Is(p, held))];
                    if (near.Length > 0 && !near.Contains(held))
                    {
                        found.Add(string.Create(CultureInfo.InvariantCulture, $"{column.Type} {property}: {near[0]} {held / 1.000000000000m}"));
                    }
                }
            }
        }

        Assert.True(found.SetEquals(Finer), $"not listed: {string.Join("; ", found.Except(Finer))}. Listed and not so: {string.Join("; ", Finer.Except(found))}");
    }

    [Fact]
    public void A_fork_of_memory_is_usually_as_long_as_its_row_says_and_no_more()
    {
        int rows = 0;
        FactFile file = FactFile.All.Single(f => f.Name == "shock-fork-axle-crown.csv");
        foreach ((CoverageLine line, string[] row) in CoverageTests.LinesOf(file).Where(l => decimal.TryParse(file.Cell(l.Row, "tolerance_mm"), CultureInfo.InvariantCulture, out _)))
        {
            decimal middle = decimal.Parse(file.Cell(row, "axle_crown_mm"), CultureInfo.InvariantCulture);
            decimal off = decimal.Parse(file.Cell(row, "tolerance_mm"), CultureInfo.InvariantCulture);
            foreach (object value in line.Named.Select(Library.Find).OfType<object>().Where(v => v.GetType().Name == "ForkClass"))
            {
                rows++;
                Assert.True(
                    Library.Figures(value, "LeastAxleToCrown").SequenceEqual([middle - off]) && Library.Figures(value, "MostAxleToCrown").SequenceEqual([middle + off]),
                    $"{line}: {middle} to {off}, {string.Join(" to ", Library.Figures(value, "LeastAxleToCrown").Concat(Library.Figures(value, "MostAxleToCrown")))}");
            }
        }

        Assert.True(rows > 20, $"{rows} rows");
    }
}
