using System.Globalization;

namespace Lugwork.Fuzz;

/// <summary>Every type that text is read into, each with every text.</summary>
internal sealed class ValueTarget : TextTarget
{
    private static readonly ValueLaws[][] Laws = [.. Types.Select(t => LawsOf(t).ToArray())];

    public override string Name => "values";

    public override int MostBytes => 200;

    /// <summary>Texts that are nearly many things, and of each type its first and last value.</summary>
    public override IEnumerable<byte[]> Seeds => FuzzSeeds.Of(Name).SelectMany(Lines)
        .Concat(Laws.SelectMany(of => of.SelectMany(l => l.Texts).ToArray() is { Length: > 0 } texts ? new[] { $"{of[0].Called}\n{texts[0]}", $"{of[0].Called}\n{texts[^1]}" } : [$"{of[0].Called}\n12x142"]).Select(Bytes));

    public override IEnumerable<byte[]> Words => Laws.SelectMany(of => of.SelectMany(l => l.Texts)).Concat(Laws.Select(of => of[0].Called + "\n")).Distinct()
        .Concat(["mm", "in", "\"", "inch", "kg", "g", "deg", "tpi", "none", "unknown", "not covered", "frame-specific", " \u00B1 0.5", " | "]).Select(Bytes);

    /// <summary>The types that are read from text and written by formats.</summary>
    public static IEnumerable<Type> Types => typeof(Build).Assembly.GetExportedTypes()
        .Where(t => !t.IsAbstract && !t.IsGenericType && Implements(t, typeof(ISpanParsable<>)) && t.IsAssignableTo(typeof(ISpanFormattable)))
        .OrderBy(t => t.FullName, StringComparer.Ordinal);

    /// <summary>The type that the first line names; eight that the text draws where it names none.</summary>
    public override void Run(string text)
    {
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        string name = end > 0 ? text[..end] : "";
        int named = Array.FindIndex(Laws, of => of[0].Called == name);
        if (named >= 0)
        {
            Hold(Laws[named], text[(end + 1)..]);
            return;
        }

        int first = Draw(text, Laws.Length);
        for (int i = 0; i < 8; i++)
        {
            Hold(Laws[(first + i) % Laws.Length], text);
        }
    }

    private static void Hold(ValueLaws[] of, string text)
    {
        foreach (ValueLaws laws in of)
        {
            laws.Hold(text);
            if (Draw(text, 8) == 0)
            {
                laws.HoldOfAllPaths(text, CultureInfo.GetCultureInfo("fa-IR"));
            }
        }
    }

    private static IEnumerable<byte[]> Lines(byte[] file) => System.Text.Encoding.UTF8.GetString(file).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Bytes);

    private static IEnumerable<ValueLaws> LawsOf(Type type)
    {
        yield return Made(typeof(TextLaws<>), type);
        if (Implements(type, typeof(IInterfaceValue<>)))
        {
            yield return Made(typeof(InterfaceLaws<>), type);
        }

        if (Implements(type, typeof(IUtf8SpanParsable<>)))
        {
            yield return Made(typeof(Utf8Laws<>), type);
        }
    }

    private static ValueLaws Made(Type laws, Type of) => (ValueLaws)Activator.CreateInstance(laws.MakeGenericType(of))!;

    private static bool Implements(Type type, Type open) => type.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == open);
}
