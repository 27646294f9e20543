using System.Reflection;

namespace Lugwork.PublishedTables.Coverage;

/// <summary>What a table says with yes and no, or with a word of two, is what the library says of the value.</summary>
public sealed class FactFlagTests
{
    [Theory]
    [InlineData("bb-shells.csv", "asymmetric", "ShellFamily", "IsAsymmetric", "yes", "no")]
    [InlineData("hubs-old.csv", "position", "HubStandard", "IsRear", "rear", "front")]
    [InlineData("headset-codes.csv", "positions", "HeadsetCup", "IsUpper", "upper", "lower")]
    public void A_word_of_a_row_is_a_property_of_its_values(string name, string column, string type, string property, string yes, string no)
    {
        FactFile file = FactFile.All.Single(f => f.Name == name);
        List<string> faults = [];
        HashSet<bool> seen = [];
        foreach ((CoverageLine line, string[] row) in CoverageTests.LinesOf(file))
        {
            string cell = file.Cell(row, column);
            if (!cell.StartsWith(yes, StringComparison.Ordinal) && !cell.StartsWith(no, StringComparison.Ordinal))
            {
                continue;
            }

            foreach (object value in line.Named.Select(Library.Find).OfType<object>().Where(v => v.GetType().Name == type))
            {
                bool held = (bool)value.GetType().GetProperty(property, BindingFlags.Public | BindingFlags.Instance)!.GetValue(value)!;
                seen.Add(held);
                if (held != cell.StartsWith(yes, StringComparison.Ordinal))
                {
                    faults.Add($"{line}: {column} \"{cell}\", {property} is {held}");
                }
            }
        }

        Assert.Empty(faults);
        Assert.Equal(2, seen.Count);
    }
}
