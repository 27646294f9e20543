using System.Globalization;
using System.Reflection;
using System.Text;
using System.Xml.Linq;
using Lugwork.Tests.Architecture;

namespace Lugwork.Tests.Docs;

/// <summary>sums.md: every sum with its formula, what it asks for in which unit and range, and its source, from the documentation of the code.</summary>
internal static class SumsPage
{
    private static readonly Dictionary<string, XElement> Documented = XDocument.Load(Path.ChangeExtension(typeof(Build).Assembly.Location, ".xml")).Descendants("member").ToDictionary(m => (string)m.Attribute("name")!);

    /// <summary>The types of sums, by area and name.</summary>
    public static Type[] Types { get; } = [.. SumDocumentationTests.SumTypes.OrderBy(t => t.Namespace, StringComparer.Ordinal).ThenBy(t => t.Name, StringComparer.Ordinal)];

    public static int Functions => Types.Sum(t => Methods(t).Length);

    public static string Write()
    {
        StringBuilder page = new();
        page.Append("# Which sums does it do?\n\n");
        page.Append(CultureInfo.InvariantCulture, $"Made from the documentation of the code. {Types.Length} sums with {Functions} functions. They take and give quantities, so a length may come in millimetres or inches; ranges are in the unit named. What is out of range is refused with an `ArgumentOutOfRangeException`. A sum that ends in a verdict gives a `SumCheck`: verdict, sentence, figures, sources.\n");
        foreach (IGrouping<string, Type> area in Types.GroupBy(t => t.Namespace!))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {area.Key}\n");
            foreach (Type type in area)
            {
                Append(page, type);
            }
        }

        return page.ToString();
    }

    private static void Append(StringBuilder page, Type type)
    {
        XElement? told = Documented.GetValueOrDefault($"T:{type.FullName}");
        page.Append(CultureInfo.InvariantCulture, $"\n### {type.Name}\n\n{Words(told?.Element("summary"))}\n\n");
        if (Words(told?.Element("remarks")) is { Length: > 0 } formula)
        {
            page.Append(CultureInfo.InvariantCulture, $"{formula}\n\n");
        }

        foreach (PropertyInfo given in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(p => p.SetMethod is { IsPublic: true }))
        {
            page.Append(CultureInfo.InvariantCulture, $"- takes `{given.Name}`: {Words(Documented.GetValueOrDefault($"P:{type.FullName}.{given.Name}")?.Element("summary"))}\n");
        }

        foreach (MethodInfo method in Methods(type))
        {
            XElement? of = Documented.GetValueOrDefault(Id(method));
            page.Append(CultureInfo.InvariantCulture, $"- `{method.Name}({string.Join(", ", method.GetParameters().Select(p => p.Name))})`: {Words(of?.Element("summary"))}\n");
            foreach (ParameterInfo parameter in method.GetParameters())
            {
                if (Words(of?.Elements("param").FirstOrDefault(p => (string?)p.Attribute("name") == parameter.Name)) is { Length: > 0 } words)
                {
                    page.Append(CultureInfo.InvariantCulture, $"  - {parameter.Name}: {words}\n");
                }
            }
        }

        Source[] sources = SourcesOf(type);
        page.Append(CultureInfo.InvariantCulture, $"- Sources: {(sources.Length == 0 ? "none named by a row; see the words above" : string.Join("; ", sources.Select(s => $"{MarkdownText.Plain(s.ToString())} ({s.Id})")))}.\n");
    }

    /// <summary>What can be asked: what is declared here, public, and neither an operator nor a form of text or equality.</summary>
    internal static MethodInfo[] Methods(Type type) =>
    [
        .. type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m => !m.IsSpecialName && !m.IsGenericMethodDefinition && m.Name is not ("Deconstruct" or "Equals" or "GetHashCode" or "ToString" or "TryFormat" or "Parse" or "TryParse" or "Read" or "TryRead" or "OfFitCode" or "Identify" or "CompareTo" or "Find" or "<Clone>$"))
            .OrderBy(m => m.Name, StringComparer.Ordinal).ThenBy(m => m.GetParameters().Length).ThenBy(Id, StringComparer.Ordinal),
    ];

    /// <summary>The rows that a type names in Sources, and the titles that its documentation quotes.</summary>
    internal static Source[] SourcesOf(Type type)
    {
        IEnumerable<Source> rows = type.GetProperty("Sources", BindingFlags.Public | BindingFlags.Static)?.GetValue(null) is IEnumerable<Source> all ? all : [];
        string text = string.Join('\n', Documented.Where(d => d.Key == $"T:{type.FullName}" || d.Key[2..].StartsWith($"{type.FullName}.", StringComparison.Ordinal)).Select(d => d.Value.Value));
        return [.. rows.Concat(Sources.All.Where(s => text.Contains($"\"{s.Title}\"", StringComparison.Ordinal))).Distinct().OrderByDescending(s => s.Strength).ThenBy(s => s.Id, StringComparer.Ordinal)];
    }

    /// <summary>The words of an element, as Markdown: names in code, no line ends.</summary>
    internal static string Words(XElement? element)
    {
        if (element is null)
        {
            return "";
        }

        StringBuilder words = new();
        foreach (XNode node in element.DescendantNodes())
        {
            words.Append(node switch
            {
                XText text when text.Parent!.Name.LocalName is "c" or "code" => $"`{text.Value}`",
                XText text => MarkdownText.Plain(text.Value),
                XElement { Name.LocalName: "see" } see => $"`{Named(see)}`",
                XElement { Name.LocalName: "paramref" or "typeparamref" } name => $"`{(string?)name.Attribute("name")}`",
                _ => "",
            });
        }

        return string.Join(' ', words.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string Named(XElement see)
    {
        string name = (string?)see.Attribute("cref") ?? (string?)see.Attribute("langword") ?? "";
        return name.Split('(')[0].Split(':')[^1] is var plain && plain.StartsWith("Lugwork.", StringComparison.Ordinal) ? string.Join('.', plain.Split('.')[^(see.Attribute("cref")!.Value[0] == 'T' ? 1 : 2)..]) : plain;
    }

    /// <summary>The id of a method in the documentation file.</summary>
    private static string Id(MethodInfo method)
    {
        string parameters = string.Join(',', method.GetParameters().Select(p => Id(p.ParameterType)));
        return $"M:{method.DeclaringType!.FullName!.Replace('+', '.')}.{method.Name}{(parameters.Length > 0 ? $"({parameters})" : "")}";
    }

    private static string Id(Type type) =>
        type.IsByRef ? Id(type.GetElementType()!) + "@"
        : type.IsArray ? Id(type.GetElementType()!) + "[]"
        : type.IsGenericType ? $"{type.Namespace}.{type.Name.Split('`')[0]}{{{string.Join(',', type.GenericTypeArguments.Select(Id))}}}"
        : type.FullName!.Replace('+', '.');
}
