using System.Globalization;

namespace Lugwork.Fuzz;

/// <summary>Every type that text is read into, each with every text.</summary>
internal sealed class ValueTarget : TextTarget
{
    private static readonly ValueLaws[] Laws = [.. Types.SelectMany(LawsOf)];

    public override string Name => "values";

    public override int MostBytes => 200;

    public override IEnumerable<byte[]> Seeds => FuzzSeeds.Of(Name).SelectMany(Lines).Concat(Keys.Select(Bytes));

    public override IEnumerable<byte[]> Words => Keys.Concat(["mm", "in", "\"", "inch", "kg", "g", "deg", "tpi", "none", "unknown", "not covered", "frame-specific"]).Select(Bytes);

    /// <summary>The types that are read from text and written by formats.</summary>
    public static IEnumerable<Type> Types => typeof(Build).Assembly.GetExportedTypes()
        .Where(t => !t.IsAbstract && !t.IsGenericType && Implements(t, typeof(ISpanParsable<>)) && t.IsAssignableTo(typeof(ISpanFormattable)))
        .OrderBy(t => t.FullName, StringComparer.Ordinal);

    private static IEnumerable<string> Keys => Laws.SelectMany(l => l.Texts).Distinct();

    public override void Run(string text)
    {
        foreach (ValueLaws laws in Laws)
        {
            laws.Hold(text);
        }

        Laws[Draw(text, Laws.Length)].HoldOfAllPaths(text, CultureInfo.GetCultureInfo("fa-IR"));
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
