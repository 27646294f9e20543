using System.Text.Json;
using System.Text.Json.Serialization;

namespace Lugwork.PublishedTables.Traps;

/// <summary>The edge cases, typed by hand, one file an area.</summary>
/// <remarks>
/// Rows of hubs (H), brakes (B), drivetrain (D) and tyres and rims (E) carry the ids of their tables. The table of headset, bottom bracket,
/// seat, fork and shock has none: its rows are C001, C002 ... in the order in which they stand there.
/// A refusal is <see cref="Verdict.DoesNotFit"/>, a question <see cref="Verdict.NeedsMeasuring"/>, danger <see cref="Verdict.Unsafe"/>,
/// rework "does not fit, leave it to a shop". Rows that only say how a text or a number is to be taken are not judged.
/// </remarks>
internal static class TrapTable
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        Converters = { new JsonStringEnumConverter(allowIntegerValues: false) },
    };

    /// <summary>The ids of the five tables: letter, number of rows, digits.</summary>
    private static readonly (char Letter, int Rows, int Digits)[] Published = [('H', 54, 2), ('B', 46, 2), ('D', 80, 2), ('E', 80, 2), ('C', 101, 3)];

    public static Trap[] All { get; } = [.. Files().SelectMany(Load)];

    public static string[] Ids { get; } = [.. Published.SelectMany(p => Enumerable.Range(1, p.Rows).Select(n => p.Letter + n.ToString("D" + p.Digits, null)))];

    private static IEnumerable<string> Files() =>
        typeof(TrapTable).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".json", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private static Trap[] Load(string name)
    {
        using Stream file = typeof(TrapTable).Assembly.GetManifestResourceStream(name)!;
        return JsonSerializer.Deserialize<Trap[]>(file, Options)!;
    }
}
