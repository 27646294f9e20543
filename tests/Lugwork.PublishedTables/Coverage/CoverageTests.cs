using System.Globalization;
using Lugwork.Drivetrain;
using Lugwork.Tyres;

namespace Lugwork.PublishedTables.Coverage;

/// <summary>coverage.md against the committed facts and the library, both ways.</summary>
public sealed class CoverageTests
{
    private static readonly Dictionary<string, FactFile> Files = FactFile.All.ToDictionary(f => f.Name);

    [Fact]
    public void Every_row_of_the_facts_has_exactly_one_line()
    {
        List<string> faults = [];
        foreach (FactFile file in FactFile.All)
        {
            ILookup<string, CoverageLine> lines = CoveragePage.Lines.Where(l => l.File == file.Name)
                .SelectMany(l => CoveragePage.RowsOf(l, file).Select(id => (id, l))).ToLookup(p => p.id, p => p.l);
            faults.AddRange(file.Ids.GroupBy(i => i).Where(g => g.Count() > 1).Select(g => $"{file.Name} | {g.Key} is the id of {g.Count()} rows"));
            faults.AddRange(file.Ids.Where(id => lines[CoveragePage.AsWritten(id)].Count() != 1).Select(id => $"{file.Name} | {id} has {lines[CoveragePage.AsWritten(id)].Count()} lines"));
        }

        None(faults);
    }

    [Fact]
    public void Every_line_names_rows_that_exist() =>
        None(CoveragePage.Lines.Where(l => !Files.TryGetValue(l.File, out FactFile? file) || CoveragePage.RowsOf(l, file).Length == 0).Select(l => $"{l} is no row"));

    [Fact]
    public void The_run_of_rows_is_as_long_as_it_is_written()
    {
        // A row taken out of a run would otherwise leave no trace: a run says how many it has.
        None(CoveragePage.Lines.Where(l => l.From != l.To && !l.Remarks.Split("; ").Contains($"{CoveragePage.RowsOf(l, Files[l.File]).Length} rows"))
            .Select(l => $"{l} has {CoveragePage.RowsOf(l, Files[l.File]).Length} rows, its remarks say \"{l.Remarks}\""));
    }

    [Fact]
    public void Whatever_a_line_names_is_in_the_library() =>
        None(CoveragePage.Lines.SelectMany(l => l.Named.Where(n => Library.Find(n) is null).Select(n => $"{l}: \"{n}\" is not in the library")));

    [Fact]
    public void A_trap_that_runs_as_a_joint_is_not_said_to_be_not_taken()
    {
        Dictionary<string, string[]> joints = Traps.TrapTable.All.ToDictionary(t => t.Id, t => new Traps.TrapRun[] { t }.Concat(t.And).Select(r => r.Joint).OfType<string>().ToArray());
        (CoverageLine Line, string Id)[] lines = [.. CoveragePage.Lines.Where(l => l.File.EndsWith("-edge-cases.csv", StringComparison.Ordinal) && joints.ContainsKey(l.From)).Select(l => (l, l.From))];
        Assert.True(lines.Length > 200, $"{lines.Length} lines of traps");
        None(lines.Where(p => p.Line.Reason is not null && joints[p.Id].Length > 0).Select(p => $"{p.Line} runs as joint {string.Join(", ", joints[p.Id])} and is said to be not taken"));
    }

    [Fact]
    public void What_is_not_taken_has_a_reason() =>
        None(CoveragePage.Lines.Where(l => l.Where.Length == 0 || l.Reason is { Length: < 10 }).Select(l => $"{l} gives no reason"));

    [Fact]
    public void Every_value_of_the_areas_is_named_by_a_line_or_listed_without_a_row()
    {
        HashSet<string> named = [.. CoveragePage.Lines.SelectMany(l => l.Named)];
        List<string> listed = [.. CoveragePage.Without.SelectMany(w => w.Values.Split("; "))];
        List<string> values = [.. StandardTables.All.Concat(StandardTables.Nominal).Where(t => t.Home != "Lugwork").SelectMany(t => t.Rows.Select(r => $"{t.Name} {r.Key}"))];

        None([
            .. values.Where(v => !named.Contains(v) && !listed.Contains(v)).Select(v => $"{v} is named by no line and not listed without one"),
            .. listed.Where(v => !values.Contains(v)).Select(v => $"{v} is listed without a row and is no value"),
            .. listed.Where(named.Contains).Select(v => $"{v} is listed without a row and has one"),
            .. CoveragePage.Without.Where(w => w.Why.Length < 10).Select(w => $"{w.Values}: no reason"),
        ]);
    }

    [Fact]
    public void The_figures_of_the_facts_are_the_library_s()
    {
        List<string> faults = [];
        foreach (FigureColumn column in FactFigures.All)
        {
            int compared = 0;
            FactFile file = Files[column.File];
            Assert.Contains(column.Column, file.Columns);
            foreach ((CoverageLine line, string[] row) in LinesOf(file))
            {
                object[] values = [.. line.Named.Select(Library.Find).OfType<object>().Where(v => v.GetType().Name == column.Type)];
                decimal[] printed = column.Printed(file.Cell(row, column.Column));
                if (values.Length == 0 || printed.Length == 0)
                {
                    continue;
                }

                decimal[] held = [.. values.SelectMany(v => column.Properties.SelectMany(p => Library.Figures(v, p))).Distinct()];
                compared += held.Length > 0 ? 1 : 0;
                bool admitted = line.Differs.Contains(column.Column);
                if (column.Agrees(printed, held) == admitted)
                {
                    faults.Add($"{line}: {column.Column} \"{file.Cell(row, column.Column)}\", {column.Type} {string.Join('/', column.Properties)}: {string.Join(", ", held)}{(admitted ? "; said to differ and does not" : "")}");
                }
            }

            if (compared == 0)
            {
                faults.Add($"{column.File} {column.Column} and {column.Type}: no row is compared");
            }
        }

        None(faults);
    }

    [Fact]
    public void A_difference_that_a_line_admits_is_of_a_column_that_is_compared() =>
        None(CoveragePage.Lines.SelectMany(l => l.Differs.Where(d => !FactFigures.All.Any(c => c.File == l.File && c.Column == d)).Select(d => $"{l}: {d} is not compared")));

    [Fact]
    public void What_the_facts_have_from_memory_is_memory_in_the_library_unless_a_source_confirmed_it()
    {
        // Which sources some row gives for a value: only these can confirm it.
        ILookup<string, string> given = FactFile.All.SelectMany(f => LinesOf(f).SelectMany(p => p.Line.Named.SelectMany(n => f.Cell(p.Row, "sources").Split(' ').Select(s => (n, s)))))
            .ToLookup(p => p.n, p => p.s);
        List<string> faults = [];
        int memory = 0;
        foreach ((FactFile file, CoverageLine line, string[] row) in FactFile.All.SelectMany(f => LinesOf(f).Select(p => (f, p.Line, p.Row))))
        {
            if (file.Cell(row, "sources") != "MEMORY" && file.Cell(row, "confidence") != "M")
            {
                continue;
            }

            foreach (string named in line.Named.Where(n => !n.StartsWith("source ", StringComparison.Ordinal)))
            {
                if (Library.Find(named) is not { } value || Library.SourceOf(value) is not { Kind: var kind } source)
                {
                    continue;
                }

                memory++;
                if (kind != SourceKind.Memory && !(line.Confirmed.Contains(source.Id) && given[named].Contains(source.Id)))
                {
                    faults.Add($"{line}: from memory, and {named} rests on {source.Id}; given for it: {string.Join(' ', given[named].Distinct())}");
                }
            }
        }

        Assert.True(memory > 100, $"{memory} values of rows from memory");
        None(faults);
    }

    [Fact]
    public void Every_source_of_the_facts_is_in_the_register_or_said_not_to_be() =>
        None(FactFile.All.SelectMany(f => f.Rows.SelectMany(r => f.Cell(r, "sources").Split(' ')
            .Where(s => s.Length > 0 && s != "not-in-register" && !Library.Register.ContainsKey(s)).Select(s => $"{f.Name} | {r[0]}: {s}"))));

    [Fact]
    public void The_cells_of_the_width_matrix_are_the_library_s()
    {
        FactFile file = Files["tyres-rims-width-cells-2006.csv"];
        None(file.Rows.Where(r => WidthCells2006.Of(Whole(file, r, "rim_inner_mm"), Whole(file, r, "tyre_section_mm")) != file.Cell(r, "status") switch
        {
            "yes-before-2006" => WidthCell.Before2006,
            "yes-added-2006" => WidthCell.Since2006,
            _ => WidthCell.NotAllowed,
        }).Select(r => $"{r[0]}: {file.Cell(r, "status")}"));
    }

    [Fact]
    public void The_chainlines_of_the_rear_are_computed_as_in_the_facts()
    {
        FactFile file = Files["drivetrain-rear-chainline.csv"];
        List<string> faults = [];
        foreach ((CoverageLine line, string[] row) in LinesOf(file))
        {
            SprocketSpacing spacing = line.Named.Select(Library.Find).OfType<SprocketSpacing>().Single();
            RearChainline held = RearChainline.Of(spacing, Number(file, row, "inner_gap_mm"), Number(file, row, "assumed_gap_end_to_smallest_mm"));
            foreach ((string column, UnitsNet.Length length) in new[] { ("smallest_sprocket_mm", held.Smallest), ("cassette_middle_mm", held.Middle), ("largest_sprocket_mm", held.Largest) })
            {
                // Printed from pitches that were rounded first.
                if (Math.Abs((decimal)length.Millimeters - Number(file, row, column)) > 0.15m)
                {
                    faults.Add($"{line}: {column} {file.Cell(row, column)}, computed {length.Millimeters}");
                }
            }
        }

        None(faults);
    }

    internal static IEnumerable<(CoverageLine Line, string[] Row)> LinesOf(FactFile file)
    {
        Dictionary<string, string[]> rows = file.Rows.ToDictionary(r => CoveragePage.AsWritten(r[0]));
        return CoveragePage.Lines.Where(l => l.File == file.Name).SelectMany(l => CoveragePage.RowsOf(l, file).Select(id => (l, rows[id])));
    }

    private static int Whole(FactFile file, string[] row, string column) => int.Parse(file.Cell(row, column), CultureInfo.InvariantCulture);

    private static decimal Number(FactFile file, string[] row, string column) => decimal.Parse(file.Cell(row, column), CultureInfo.InvariantCulture);

    private static void None(IEnumerable<string> faults)
    {
        string[] found = [.. faults];
        Assert.True(found.Length == 0, $"{found.Length}:{Environment.NewLine}{string.Join(Environment.NewLine, found)}");
    }
}
