using System.Globalization;
using System.Text.RegularExpressions;
using Lugwork.PublishedTables.Coverage;
using Lugwork.Workshop;

namespace Lugwork.PublishedTables;

/// <summary>The torque tables of the facts and the library's rows, in both directions: each fact stands in a row, each row in a fact, bounds and marks of memory alike.</summary>
public sealed partial class TorqueFactTests
{
    private static readonly string[] Cockpit =
    [
        "stem-on-steerer", "stem-on-steerer-old", "stem-faceplate", "bar-binder-old", "quill-wedge", "headset-locknut", "top-cap", "expander-plug", "seat-binder-metal", "seat-collar-carbon",
        "saddle-clamp-nuts", "saddle-clamp-one-bolt", "saddle-clamp-two-bolts", "saddle-binder", "crank-square-taper", "crank-8-spline", "crank-pinch-bolts", "crank-10-spline", "crank-stepped", "crank-30", "crank-bolt",
        "ring-bolts-aluminium", "ring-bolts-steel", "bracket-square-taper", "bracket-8-spline", "bracket-outboard", "bracket-outboard-stepped", "bracket-cups", "bracket-eccentric", "pedal", "cassette-lockring",
        "rotor-lockring", "rotor-bolts", "caliper-bolts", "caliper-bolts", "adapter-bolts-m5", "rim-caliper-rear", "rim-caliper-front", "brake-arm-bolt", "pad-linear-pull", "pad-rim-caliper", "brake-cable", "lever-clamp", "shifter-clamp",
        "rear-derailleur", "rear-derailleur-cable", "pulley-bolt", "front-derailleur-band", "front-derailleur-braze-on", "front-derailleur-cable", "quick-release", "axle-nut", "thru-axle-front",
        "hanger-bolts", "universal-hanger-bolt", "bottle-cage", "hose-nut", "shock-bolts",
    ];

    private static readonly string[][] Brakes =
    [
        ["caliper-bolts"], ["caliper-body-bolts"], ["adapter-bolts-m5", "caliper-bolts"], ["rotor-bolts"], ["rotor-bolts"], ["rotor-lockring"], ["cassette-lockring"], ["crank-square-taper"], ["crank-pinch-bolts"], ["bracket-cups"], ["rear-derailleur"], ["pedal"], ["flat-mount-bolts"],
    ];

    /// <summary>Rows that split or repeat one of the facts: the carbon form of the stem's row, the rear form of the axle's, the cap that the note of the pinch bolts names.</summary>
    private static readonly string[] Split = ["stem-on-carbon-steerer", "thru-axle-rear", "crank-preload-cap"];

    [Fact]
    public void Each_fact_of_the_cockpit_table_is_held_with_both_bounds_and_its_sources()
    {
        FactFile file = FactFile.All.Single(f => f.Name == "cockpit-torque.csv");
        Assert.Equal(file.Rows.Count, Cockpit.Length);
        for (int i = 0; i < Cockpit.Length; i++)
        {
            TorqueFigure held = TorqueTable.Find(Cockpit[i])!;
            (int Least, int Most) fact = (Hundredths(file.Cell(file.Rows[i], "min_nm")), Hundredths(file.Cell(file.Rows[i], "max_nm")));
            TorqueRange[] cited = [.. held.Ranges.Where(r => file.Cell(file.Rows[i], "sources").Split(' ').Contains(r.Source.Id))];

            // One range as it is printed, or all that its sources print, from the least to the most.
            Assert.Contains(fact, held.Ranges.Select(r => (r.LeastHundredths, r.MostHundredths)).Append((cited.Select(r => r.LeastHundredths).DefaultIfEmpty().Min(), cited.Select(r => r.MostHundredths).DefaultIfEmpty().Max())));

            // A page that was found later may stand for what was from memory.
            Assert.True(file.Cell(file.Rows[i], "sources") == "MEMORY" || file.Cell(file.Rows[i], "sources").Split(' ').All(s => s is "THREAD-CONCEPTS" or "MEMORY" || held.Ranges.Any(r => r.Source.Id == s || (s == "OWNERS-TORQUES-2017" && r.Of == "taken from this page and an owner's manual of 2017 together"))), $"{file.Rows[i][0]}: {held}");
        }
    }

    [Fact]
    public void Each_figure_of_the_brake_table_is_a_bound_of_its_row()
    {
        FactFile file = FactFile.All.Single(f => f.Name == "brakes-torque.csv");
        Assert.Equal(file.Rows.Count, Brakes.Length);
        for (int i = 0; i < Brakes.Length; i++)
        {
            int[] bounds = [.. Brakes[i].SelectMany(id => TorqueTable.Find(id)!.Ranges).SelectMany(r => new[] { r.LeastHundredths, r.MostHundredths })];
            string printed = NotATorque().Replace(file.Cell(file.Rows[i], "torque"), "");
            Assert.All(Number().Matches(printed), m => Assert.Contains(Hundredths(m.Value), bounds));
        }
    }

    [Fact]
    public void Each_row_of_the_library_is_a_fact() =>
        Assert.Empty(TorqueTable.All.Select(t => t.Id).Except(Cockpit).Except(Brakes.SelectMany(b => b)).Except(Split));

    [Fact]
    public void What_the_facts_have_from_memory_alone_has_no_page_in_the_library_unless_a_later_check_found_one()
    {
        HashSet<string> confirmed = [.. TorqueTable.All.Where(t => t.Ranges.Any(r => r.Source == Sources.CarbonRoadTorques || r.Source == Sources.TopCapThread || r.Source == Sources.BoltTorqueGuide || r.Source == Sources.HexAxlePage || r.Source == Sources.DiscMakersSheet)).Select(t => t.Id)];
        FactFile file = FactFile.All.Single(f => f.Name == "cockpit-torque.csv");
        for (int i = 0; i < Cockpit.Length; i++)
        {
            Assert.True(file.Cell(file.Rows[i], "sources") != "MEMORY" || TorqueTable.Find(Cockpit[i])!.IsUnpublished != confirmed.Contains(Cockpit[i]), Cockpit[i]);
        }
    }

    [Fact]
    public void Every_range_of_a_page_is_checked_against_it()
    {
        object?[][] printed = [.. typeof(TorquesChecks).GetMethod(nameof(TorquesChecks.A_row_holds_what_its_page_prints))!.GetCustomAttributes(typeof(InlineDataAttribute), false).Cast<InlineDataAttribute>().Select(d => d.Data)];
        Assert.All(
            TorqueTable.All.SelectMany(t => t.Ranges.Where(r => !r.Source.IsUnpublished).Select(r => (Row: t.Id, Range: r))),
            held => Assert.True(
                printed.Any(d => (string)d[0]! == held.Row && ((string)d[3]!).StartsWith(held.Range.Source.Title, StringComparison.Ordinal) && (Printed(d[1]), Printed(d[2])) == (held.Range.LeastHundredths, held.Range.MostHundredths)),
                $"{held.Row}: {held.Range} by {held.Range.Source.Title} has no outside check"));
    }

    private static int Printed(object? figure) => (int)Math.Round(Convert.ToDouble(figure, CultureInfo.InvariantCulture) * 100);

    private static int Hundredths(string number) => (int)(decimal.Parse(number, CultureInfo.InvariantCulture) * 100);

    [GeneratedRegex(@"\(\d mm hex\)|12-speed|\bM\d+")]
    private static partial Regex NotATorque();

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}
