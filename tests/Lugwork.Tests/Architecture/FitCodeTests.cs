using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Architecture;

/// <summary>
/// Keys and codes stand in databases: once in <c>fit-codes.txt</c> they never change and never vanish. A line is the type, the code and
/// the key, sorted by type, then code.
/// </summary>
public sealed class FitCodeTests
{
    private static readonly string Committed = Path.Combine(SchemaBench.Root, "tests", "Lugwork.Tests", "Architecture", "fit-codes.txt");

    private static readonly (string Type, long Code, string Key)[] Lines = [.. File.ReadAllLines(Committed).Select(Split)];

    [Fact]
    public void Every_line_still_holds()
    {
        Assert.NotEmpty(Lines);
        List<string> broken = [];
        foreach ((string type, long code, string key) in Lines)
        {
            string now = Values.InterfaceTypes.SingleOrDefault(t => t.FullName == type) is { } found ? KeyOf(found, code) : "the type is gone";
            if (now != key)
            {
                broken.Add($"{type} {code} was {key}, now: {now}");
            }
        }

        Assert.True(broken.Count == 0, $"Keys and codes are permanent. Give these back:\n{string.Join('\n', broken)}");
    }

    [Fact]
    public void Every_listed_value_is_in_the_file()
    {
        HashSet<(string Type, long Code, string Key)> frozen = [.. Lines];
        (string Type, long Code, string Key)[] missing = [.. Values.InterfaceTypes.SelectMany(Listed).Where(v => !frozen.Contains(v))];
        if (missing.Length == 0)
        {
            return;
        }

        // What was frozen stays in the text, whether it still holds or not: copying it over mends no broken line.
        string renewed = Path.Combine(AppContext.BaseDirectory, "fit-codes.txt");
        File.WriteAllText(renewed, string.Concat(Lines.Concat(missing).OrderBy(l => l.Type, StringComparer.Ordinal).ThenBy(l => l.Code).Select(l => Line(l) + "\n")), new UTF8Encoding(false));
        Assert.Fail($"{missing.Length} new values, such as {Line(missing[0])}. Look at them: their keys and codes are permanent from now on. Then copy {renewed} over {Committed}.");
    }

    [Fact]
    public void The_file_is_sorted_and_gives_no_code_and_no_key_twice()
    {
        Assert.Equal(Lines.OrderBy(l => l.Type, StringComparer.Ordinal).ThenBy(l => l.Code), Lines);
        Assert.Equal(Lines.Length, Lines.Select(l => (l.Type, l.Code)).Distinct().Count());
        Assert.Equal(Lines.Length, Lines.Select(l => (l.Type, l.Key)).Distinct().Count());
        Assert.All(Lines, l => Assert.True(l.Code > 0 && l.Key.Length > 0 && l.Key.Trim() == l.Key, Line(l)));
        Assert.DoesNotContain('\r', File.ReadAllText(Committed));
    }

    [Fact]
    public void Every_type_with_keys_is_in_the_file()
    {
        // An open size without nominal ones has examples there, written by hand.
        string[] types = [.. Lines.Select(l => l.Type).Distinct()];
        Assert.Equal(Values.InterfaceTypes.Select(t => t.FullName!).Order(StringComparer.Ordinal), types);
    }

    private static IEnumerable<(string Type, long Code, string Key)> Listed(Type type) =>
        from object value in (IEnumerable)type.GetProperty("All")!.GetValue(null)!
        select (type.FullName!, (long)type.GetProperty("FitCode")!.GetValue(value)!, (string)type.GetProperty("FitKey")!.GetValue(value)!);

    private static string KeyOf(Type type, long code)
    {
        try
        {
            object value = type.GetMethod("OfFitCode")!.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [code], null)!;
            long back = (long)type.GetProperty("FitCode")!.GetValue(value)!;
            return back == code ? (string)type.GetProperty("FitKey")!.GetValue(value)! : $"a value with the code {back}";
        }
        catch (ArgumentOutOfRangeException)
        {
            return "nothing has the code";
        }
    }

    private static (string Type, long Code, string Key) Split(string line) =>
        line.Split(' ', 3) is [var type, var code, var key] ? (type, long.Parse(code, CultureInfo.InvariantCulture), key) : throw new FormatException($"'{line}' is not a type, a code and a key");

    private static string Line((string Type, long Code, string Key) line) => string.Create(CultureInfo.InvariantCulture, $"{line.Type} {line.Code} {line.Key}");
}
