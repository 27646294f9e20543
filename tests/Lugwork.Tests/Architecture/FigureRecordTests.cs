using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Architecture;

/// <summary>
/// What a standard says of itself changes knowingly or not at all: <c>figures.txt</c> has a line for each type that any other figure, name or
/// formula of its values changes. It says nothing of what is right, which the checks against sources do.
/// </summary>
public sealed class FigureRecordTests
{
    private static readonly string Committed = Path.Combine(SchemaBench.Root, "tests", "Lugwork.Tests", "Architecture", "figures.txt");

    /// <summary>Every public type that lists all that there is of it; where one refers to another, it is by its key or its words.</summary>
    private static readonly Type[] Listed =
        [.. typeof(Build).Assembly.GetExportedTypes().Where(t => !t.ContainsGenericParameters && t.GetProperty("All", BindingFlags.Public | BindingFlags.Static) is { } all && typeof(IEnumerable).IsAssignableFrom(all.PropertyType)).OrderBy(t => t.FullName, StringComparer.Ordinal)];

    public static TheoryData<string> Types => [.. Listed.Select(t => t.FullName!)];

    [Theory]
    [MemberData(nameof(Types))]
    public void A_standard_says_what_it_said(string type)
    {
        string told = Told(Listed.Single(t => t.FullName == type));
        string now = $"{type} {told.Count(c => c == '\n')} {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(told)))[..16]}";
        string? then = File.ReadLines(Committed).SingleOrDefault(l => l.StartsWith(type + " ", StringComparison.Ordinal));
        if (now == then)
        {
            return;
        }

        string folder = Path.Combine(AppContext.BaseDirectory, "figures");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, type + ".txt"), told, new UTF8Encoding(false));
        Assert.Fail($"{type} says otherwise than {Committed} has it.\nThen: {then}\nNow:  {now}\nAll that it says now stands in {folder}. If it is meant, copy the line over, and CHANGELOG.md has a row for it.");
    }

    [Fact]
    public void Each_line_is_of_a_type() =>
        Assert.Equal(Types.Select(t => t.Data).Order(StringComparer.Ordinal), File.ReadLines(Committed).Select(l => l.Split(' ')[0]));

    /// <summary>A line for each public property of each value that the type lists.</summary>
    private static string Told(Type type)
    {
        StringBuilder told = new();
        foreach (object value in ((IEnumerable)type.GetProperty("All")!.GetValue(null)!).Cast<object>())
        {
            foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0).OrderBy(p => p.Name, StringComparer.Ordinal))
            {
                told.Append(CultureInfo.InvariantCulture, $"{value}.{property.Name} = {Written(property.GetValue(value))}\n");
            }
        }

        return told.ToString();
    }

    private static string Written(object? value) => value switch
    {
        null => "nothing",
        string text => text,
        UnitsNet.IQuantity quantity => string.Create(CultureInfo.InvariantCulture, $"{quantity.Value:R} {quantity.Unit}"),
        IEnumerable many => string.Join(", ", many.Cast<object?>().Select(Written)),
        IFormattable one => one.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };
}
