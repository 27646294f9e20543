using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Lugwork.PublishedTables.Coverage;

/// <summary>What coverage.md names, found in the library by its text. Reflection is the test's alone.</summary>
internal static class Library
{
    private const BindingFlags Any = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance;

    private static readonly ILookup<string, Type> Types = typeof(Build).Assembly.GetTypes().Where(t => !t.IsNested).ToLookup(t => t.Name);

    private static readonly HashSet<string> Joints = [.. JointTable.All.Select(j => j.Id)];

    private static readonly HashSet<string> Bridges = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).Select(b => b.Id)];

    /// <summary>Every registered source, by its id.</summary>
    public static IReadOnlyDictionary<string, Source> Register { get; } = Sources.All.ToDictionary(s => s.Id);

    /// <summary>The value that a text names: the object; for a joint, bridge, source or member the text itself; null where there is none.</summary>
    public static object? Find(string text)
    {
        string[] words = text.Split(' ', 2);
        return words switch
        {
            ["joint", string id] => Joints.Contains(id) ? text : null,
            ["bridge", string id] => Bridges.Contains(id) ? text : null,
            ["source", string id] => Register.GetValueOrDefault(id),
            [string type, string key] => Value(type, key),
            _ => Member(text),
        };
    }

    /// <summary>The figures of a property (or of one behind another, "Family.LeastBore"), in millimetres, degrees or plain numbers; zero counts as none.</summary>
    public static IEnumerable<decimal> Figures(object value, string path)
    {
        foreach (string name in path.Split('.'))
        {
            PropertyInfo property = value.GetType().GetProperty(name, Any) ?? throw new InvalidOperationException($"{value.GetType().Name} has no {name}");
            if (property.GetValue(value) is not { } next)
            {
                return [];
            }

            value = next;
        }

        return Numbers(value).Where(n => n != 0);
    }

    /// <summary>The source of a value, where it has one.</summary>
    public static Source? SourceOf(object value) => value.GetType().GetProperty("Source", BindingFlags.Public | BindingFlags.Instance)?.GetValue(value) as Source;

    private static object? Value(string type, string key)
    {
        if (Types[type].SingleOrDefault() is not { } found || All(found) is not { } all)
        {
            return null;
        }

        object? value = all.Cast<object>().FirstOrDefault(v => (string)v.GetType().GetProperty("FitKey")!.GetValue(v)! == key);
        return value is not null && Equals(typeof(Library).GetMethod(nameof(Parsed), Any)!.MakeGenericMethod(found).Invoke(null, [key]), value) ? value : null;
    }

    private static object Parsed<T>(string key)
        where T : IParsable<T> => T.Parse(key, CultureInfo.InvariantCulture);

    private static object? Member(string text)
    {
        string[] parts = text.TrimEnd(']').Split('.', '[');
        if (parts.Length < 2 || Types[parts[0]].SingleOrDefault() is not { } type || type.GetMember(parts[1], Any | BindingFlags.FlattenHierarchy).Length == 0)
        {
            return null;
        }

        return parts.Length == 2 ? text
            : (type.GetProperty(parts[1], Any)?.GetValue(null) as IEnumerable)?.Cast<object>().ElementAtOrDefault(int.Parse(parts[2], CultureInfo.InvariantCulture));
    }

    private static IEnumerable? All(Type type) => type.GetProperty("All", BindingFlags.Public | BindingFlags.Static)?.GetValue(null) as IEnumerable;

    private static IEnumerable<decimal> Numbers(object value) => value switch
    {
        Length length => [Rounded(length.Millimeters)],
        Angle angle => [Rounded(angle.Degrees)],
        Pressure pressure => [Rounded(pressure.Bars)],
        decimal number => [number],
        double number => [Rounded(number)],
        int number => [number],
        string => throw new InvalidOperationException("a text has no figures"),
        LengthRange range => [.. Numbers(range.Least), .. Numbers(range.Most)],
        ITuple tuple => Enumerable.Range(0, tuple.Length).SelectMany(i => Numbers(tuple[i]!)),
        IEnumerable many => many.Cast<object>().SelectMany(Numbers),
        _ => Figures(value, "Diameter"),
    };

    private static decimal Rounded(double number) => decimal.Round((decimal)number, 6);
}
