using System.Reflection;
using System.Reflection.Emit;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using UnitsNet;

namespace Lugwork.Tests.Architecture;

/// <summary>What the documentation of a public member has to say: the unit of every bare number or what it counts, and every exception that the member itself throws.</summary>
public sealed partial class CommentTests
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<string, XElement> Documented = XDocument.Load(Path.ChangeExtension(typeof(Build).Assembly.Location, ".xml")).Descendants("member").ToDictionary(m => (string)m.Attribute("name")!);

    private static readonly Type[] Numbers = [typeof(int), typeof(long), typeof(double), typeof(decimal), typeof(float), typeof(short), typeof(byte), typeof(uint), typeof(ulong)];

    private static readonly Type[] Public = [.. typeof(Build).Assembly.GetExportedTypes().Where(t => !t.IsEnum && !typeof(Delegate).IsAssignableFrom(t))];

    /// <summary>Members whose meaning is that of an interface of the platform.</summary>
    private static readonly string[] OfThePlatform = ["Equals", "GetHashCode", "CompareTo", "TryFormat", "Deconstruct", "get_Item", "GetEnumerator"];

    [Fact]
    public void Every_bare_number_names_its_unit_or_what_it_counts()
    {
        List<string> wrong = [];
        int looked = 0;
        foreach (Type type in Public)
        {
            foreach (PropertyInfo property in type.GetProperties(Declared).Where(p => IsNumber(p.PropertyType) && p.GetIndexParameters().Length == 0 && !OfThePlatform.Contains("get_" + p.Name)))
            {
                Look($"P:{Name(type)}.{property.Name}", "summary", null);
            }

            foreach (MethodBase method in type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared)).Where(m => (!m.IsSpecialName || m.IsConstructor) && !OfThePlatform.Contains(m.Name) && m.GetCustomAttribute<CompilerGeneratedAttribute>() is null))
            {
                foreach (ParameterInfo parameter in method.GetParameters().Where(p => IsNumber(p.ParameterType)))
                {
                    Look(Id(method), "param", parameter.Name);
                }
            }
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} of {looked} numbers name no unit and do not say that they count:\n{string.Join('\n', wrong)}");
        Assert.True(looked > 300, $"{looked} numbers");

        void Look(string id, string element, string? parameter)
        {
            if (Said(id, element, parameter) is { } said)
            {
                looked++;
                if (!Unit().IsMatch(said))
                {
                    wrong.Add($"{id} {parameter}: {said}");
                }
            }
        }
    }

    /// <summary>Null is not told everywhere: the annotations say it.</summary>
    [Fact]
    public void Every_exception_that_a_member_throws_itself_is_told()
    {
        List<string> wrong = [];
        int thrown = 0;
        foreach (Type type in Public)
        {
            foreach (MethodBase method in type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared)).Where(m => !m.IsAbstract && m.GetCustomAttribute<CompilerGeneratedAttribute>() is null && !OfThePlatform.Contains(m.Name)))
            {
                foreach (Type exception in ThrownBy(method).Where(e => e != typeof(ArgumentNullException) && e.FullName != "System.Runtime.CompilerServices.SwitchExpressionException" && e != typeof(System.Diagnostics.UnreachableException)).Distinct())
                {
                    thrown++;
                    string[] told = [.. Docs(method).SelectMany(d => d.Elements("exception")).Select(e => ((string?)e.Attribute("cref") ?? "")[2..])];
                    if (!told.Any(t => exception.FullName == t || (typeof(Exception).Assembly.GetType(t) is { } above && above.IsAssignableFrom(exception))) && !IsInherited(method))
                    {
                        wrong.Add($"{Id(method)} throws {exception.Name}");
                    }
                }
            }
        }

        Assert.True(thrown > 100, $"{thrown} throws");
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {thrown} throws are told nowhere:\n{string.Join('\n', wrong)}");
    }

    [Fact]
    public void Every_quantity_that_is_taken_says_what_is_refused()
    {
        List<string> wrong = [];
        int looked = 0;
        foreach (MethodBase method in Public.SelectMany(t => t.GetMethods(Declared).Cast<MethodBase>().Concat(t.GetConstructors(Declared)))
            .Where(m => (!m.IsSpecialName || m.IsConstructor) && !OfThePlatform.Contains(m.Name) && m.GetCustomAttribute<CompilerGeneratedAttribute>() is null && m.GetParameters().Any(p => IsQuantity(p.ParameterType))))
        {
            looked++;
            XElement[] docs = Docs(method);
            if (docs.Length > 0 && !docs.Any(d => d.Elements("exception").Any() || d.Value.Contains("null", StringComparison.Ordinal) || d.Element("inheritdoc") is not null))
            {
                wrong.Add(Id(method));
            }
        }

        Assert.True(looked > 100, $"{looked} members");
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {looked} members take a quantity and say of none that it is refused:\n{string.Join('\n', wrong)}");
    }

    [GeneratedRegex(@"\b(mm|millimetres?|nanometres?|metres?|inch(es)?|(micro)?degrees?|grams?|kilograms?|kg|N m|newton[ -]?metres?|newtons?|bar|per cent|pitch(es)?|teeth|tooth|characters?|bytes?|seconds?|years?|months?|numbers?|how many|codes?|from 0|from 1|ratio|no unit|hours?|currency|places?)\b|1/\d+ in|thousandths", RegexOptions.IgnoreCase)]
    private static partial Regex Unit();

    private static bool IsNumber(Type type) => Numbers.Contains(Plain(type));

    private static bool IsQuantity(Type type) => typeof(IQuantity).IsAssignableFrom(Plain(type));

    private static Type Plain(Type type)
    {
        type = type.IsByRef ? type.GetElementType()! : type;
        return Nullable.GetUnderlyingType(type) ?? type;
    }

    /// <summary>The words of a comment; null where the member takes those of another.</summary>
    private static string? Said(string id, string element, string? parameter)
    {
        XElement[] docs = [.. Documented.Where(d => d.Key == id || d.Key.StartsWith(id + "(", StringComparison.Ordinal)).Select(d => d.Value)];
        XElement[] told = [.. docs.Elements(element).Where(e => parameter is null || (string?)e.Attribute("name") == parameter)];
        return docs.Length == 0 || docs.Any(d => d.Element("inheritdoc") is not null) ? null : string.Join(' ', told.Select(t => string.Concat(t.DescendantNodes().Select(n => n is XText text ? text.Value : n is XElement { Name.LocalName: "see" } see ? " " + (string?)see.Attribute("cref") : ""))));
    }

    /// <summary>The comments of all members of the name: which overload it is does not matter here.</summary>
    private static XElement[] Docs(MethodBase method)
    {
        string id = method.IsSpecialName && !method.IsConstructor && Accessor(method) is { } property ? $"P:{Name(method.DeclaringType!)}.{property}" : Id(method);
        return [.. Documented.Where(d => d.Key == id || d.Key.StartsWith(id + "(", StringComparison.Ordinal) || d.Key.StartsWith(id + "``", StringComparison.Ordinal)).Select(d => d.Value)];
    }

    private static bool IsInherited(MethodBase method) => Docs(method) is var docs && (docs.Length == 0 || docs.Any(d => d.Element("inheritdoc") is not null));

    private static string? Accessor(MethodBase method) => method.Name.Split('_', 2) is ["get" or "set", var name] ? name : null;

    private static string Id(MethodBase method) => $"M:{Name(method.DeclaringType!)}.{(method.IsConstructor ? "#ctor" : method.Name)}";

    private static string Name(Type type) => (type.IsGenericType ? type.GetGenericTypeDefinition() : type).FullName!.Replace('+', '.');

    /// <summary>What a method throws in its own body, by a throw or by a guard of the platform or of the library.</summary>
    private static IEnumerable<Type> ThrownBy(MethodBase method)
    {
        foreach (MethodBase called in CalledBy(method))
        {
            if (called.IsConstructor && typeof(Exception).IsAssignableFrom(called.DeclaringType))
            {
                yield return called.DeclaringType!;
            }
            else if (called.Name.StartsWith("ThrowIf", StringComparison.Ordinal) && typeof(Exception).IsAssignableFrom(called.DeclaringType))
            {
                yield return called.Name is "ThrowIfNullOrEmpty" or "ThrowIfNullOrWhiteSpace" ? typeof(ArgumentException) : called.DeclaringType!;
            }
            else if (called.DeclaringType?.Name is "Given" or "NumberRange" && called.Name is not ("Nanometres" or "Tenths"))
            {
                yield return typeof(ArgumentOutOfRangeException);
            }
        }
    }

    private static IEnumerable<MethodBase> CalledBy(MethodBase method)
    {
        byte[] body = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        Type[]? ofType = method.DeclaringType!.IsGenericType ? method.DeclaringType.GetGenericArguments() : null;
        Type[]? ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (int at = 0; at < body.Length;)
        {
            OpCode code = body[at] == 0xFE ? Codes[(short)(0xFE00 | body[at + 1])] : Codes[body[at]];
            at += code.Size;
            if (code.OperandType == OperandType.InlineMethod && method.Module.ResolveMethod(BitConverter.ToInt32(body, at), ofType, ofMethod) is { } called)
            {
                yield return called;
            }

            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(body, at)),
                _ => 4,
            };
        }
    }

    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (OpCode)f.GetValue(null)!).ToDictionary(c => c.Value);
}
