using System.Reflection;
using System.Xml.Linq;
using UnitsNet;

namespace Lugwork.Tests.Architecture;

/// <summary>Documentation of sums: a formula, a unit, what is refused, and the source by its title or that there is none.</summary>
public sealed class SumDocumentationTests
{
    private static readonly string[] NoSource = ["no source", "derived", "arithmetic", "trigonometry", "from memory", "names its"];

    private static readonly string[] Units = ["mm", "millimet", "degrees", "pitch", "per cent", "bar", "teeth", "No unit"];

    private static readonly string[] Formulas = [" = ", "≤", "≥", " x ", " less ", " - "];

    private static readonly Dictionary<string, XElement> Documented = XDocument.Load(Path.ChangeExtension(typeof(Build).Assembly.Location, ".xml")).Descendants("member").ToDictionary(m => (string)m.Attribute("name")!);

    /// <summary>Types outside the root that take a quantity or come to a <see cref="SumCheck"/>.</summary>
    internal static Type[] SumTypes { get; } = [.. typeof(Build).Assembly.GetExportedTypes()
        .Where(t => t.Namespace is not ("Lugwork" or "Lugwork.Workshop") && t != typeof(Lugwork.Planning.BuildChooser) && t != typeof(Lugwork.Planning.ChoiceWish) && t.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly).Any(m => m switch
        {
            MethodInfo method => (!method.IsSpecialName && method.Name is not "Deconstruct" && method.GetParameters().Any(p => IsQuantity(p.ParameterType))) || method.ReturnType == typeof(SumCheck),
            _ => false,
        }))];

    public static TheoryData<string> Names => [.. SumTypes.Select(t => t.FullName!)];

    [Fact]
    public void There_are_sums_to_look_at() => Assert.True(SumTypes.Length > 45, $"{SumTypes.Length}");

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sum_gives_formula_unit_and_source(string name)
    {
        string text = string.Join('\n', Documented.Where(d => d.Key == "T:" + name || d.Key[2..].StartsWith(name + ".", StringComparison.Ordinal)).Select(d => d.Value.ToString(SaveOptions.DisableFormatting)));
        string plain = XElement.Parse($"<all>{text}</all>").Value;
        Assert.True(Sources.All.Any(s => plain.Contains($"\"{s.Title}\"", StringComparison.Ordinal)) || NoSource.Any(plain.Contains), $"{name} names no source by its title, nor that there is none");
        Assert.True(Units.Any(plain.Contains), $"{name} names no unit");
        Assert.True(Formulas.Any(plain.Contains), $"{name} gives no formula");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_takes_a_quantity_says_what_it_refuses(string name)
    {
        foreach (MethodInfo method in SumTypes.Single(t => t.FullName == name).GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m => !m.IsSpecialName && m.Name is not ("Deconstruct" or "Equals" or "Identify") && m.GetParameters().Any(p => (Nullable.GetUnderlyingType(p.ParameterType) ?? p.ParameterType) is var plain && typeof(IQuantity).IsAssignableFrom(plain))))
        {
            XElement[] found = [.. Documented.Where(d => d.Key.StartsWith($"M:{name}.{method.Name}(", StringComparison.Ordinal)).Select(d => d.Value)];
            Assert.NotEmpty(found);
            Assert.All(found, f => Assert.True(f.Elements("exception").Any() || f.Value.Contains("null", StringComparison.Ordinal), $"{name}.{method.Name} does not say what it refuses"));
            Assert.All(found, f => Assert.True(f.Elements("param").Any(), $"{name}.{method.Name} does not say what it takes"));
        }
    }

    private static bool IsQuantity(Type type) => typeof(IQuantity).IsAssignableFrom(Nullable.GetUnderlyingType(type) ?? type);
}
