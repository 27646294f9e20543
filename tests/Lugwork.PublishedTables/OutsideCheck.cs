using System.Reflection;
using System.Reflection.Emit;
using Xunit.Sdk;

namespace Lugwork.PublishedTables;

/// <summary>A check with its cases, the source named with each, and the interface values whose members it runs.</summary>
internal sealed record OutsideCheck(MethodInfo Method, Case[] Cases, Type[] Runs)
{
    private static readonly Assembly Here = typeof(OutsideCheck).Assembly;

    private static readonly OpCode[] Codes = [.. typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (OpCode)f.GetValue(null)!)];

    public static OutsideCheck[] All { get; } =
    [
        .. Here.GetTypes().Where(t => t.Name.EndsWith("Checks", StringComparison.Ordinal))
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(m => m.GetCustomAttribute<FactAttribute>() is not null)
            .Select(m => new OutsideCheck(m, [.. CasesOf(m)], [.. ValuesRunBy(m)])),
    ];

    /// <summary>A row names its source in the parameter "source", a whole check in <see cref="PrintedInAttribute"/>.</summary>
    private static IEnumerable<Case> CasesOf(MethodInfo method)
    {
        string[] whole = [.. method.GetCustomAttributes<PrintedInAttribute>().Select(p => p.Source)];
        int named = Array.FindIndex(method.GetParameters(), p => p.Name == "source");
        return method.GetCustomAttribute<TheoryAttribute>() is null
            ? [new Case(method.Name, whole)]
            : Rows(method).Select(row => new Case($"{method.Name}({string.Join(", ", row)})", named < 0 ? whole : [(string)row[named]!]));
    }

    private static IEnumerable<object?[]> Rows(MethodInfo method)
    {
        foreach (object attribute in method.GetCustomAttributes(false))
        {
            if (attribute is InlineDataAttribute inline)
            {
                yield return inline.Data ?? [null];
            }
            else if (attribute is MemberDataAttribute member)
            {
                object data = method.DeclaringType!.GetProperty(member.MemberName, BindingFlags.Public | BindingFlags.Static)!.GetValue(null)!;
                foreach (object? row in (System.Collections.IEnumerable)data)
                {
                    yield return ((ITheoryDataRow)row!).GetData();
                }
            }
        }
    }

    /// <summary>Follows the calls of a check through the helpers and lambdas of this assembly, and notes the interface values that they call into.</summary>
    private static HashSet<Type> ValuesRunBy(MethodInfo check)
    {
        HashSet<Type> runs = [];
        HashSet<MethodBase> seen = [];
        Stack<MethodBase> open = new([check]);
        while (open.TryPop(out MethodBase? method))
        {
            if (!seen.Add(method))
            {
                continue;
            }

            foreach (MethodBase called in CallsOf(method))
            {
                foreach (Type type in TypesIn(called))
                {
                    runs.Add(type);
                }

                if (called.DeclaringType!.Assembly == Here)
                {
                    open.Push(called);
                }
            }
        }

        return runs;
    }

    private static IEnumerable<Type> TypesIn(MethodBase method)
    {
        // What only asks a value for its name or figure runs nothing.
        if (method is { IsSpecialName: true, Name: var name } && name.StartsWith("get_", StringComparison.Ordinal) && method.DeclaringType!.Assembly != Here)
        {
            return [];
        }

        IEnumerable<Type> named = [method.DeclaringType!, .. method.DeclaringType!.GetGenericArguments(), .. method is MethodInfo { IsGenericMethod: true } ? method.GetGenericArguments() : []];
        return named.Where(InterfaceValues.All.Contains);
    }

    private static IEnumerable<MethodBase> CallsOf(MethodBase method)
    {
        byte[] body = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        Type[] ofType = method.DeclaringType!.GetGenericArguments();
        Type[] ofMethod = method is MethodInfo { IsGenericMethod: true } ? method.GetGenericArguments() : [];
        for (int at = 0; at < body.Length;)
        {
            short value = body[at] == 0xFE ? (short)(0xFE00 | body[at + 1]) : body[at];
            OpCode code = Codes.Single(c => c.Value == value);
            at += code.Size;
            if (code.OperandType == OperandType.InlineMethod)
            {
                yield return method.Module.ResolveMethod(BitConverter.ToInt32(body, at), ofType, ofMethod)!;
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
}

/// <summary>One case: what it is, and the sources named with it.</summary>
internal sealed record Case(string Name, string[] Sources)
{
    private static readonly string[] NotPrinted = ["from memory", "common practice", "arithmetic", "follows from"];

    /// <summary>The pages among the sources, by title alone: one page under two publishers counts once.</summary>
    public IEnumerable<string> Pages => Sources.Where(s => !NotPrinted.Any(n => s.StartsWith(n, StringComparison.Ordinal))).Select(Title);

    /// <summary>The titles of the library's register, where each has its publisher and address.</summary>
    private static readonly HashSet<string> Register = [.. Lugwork.Sources.All.Where(s => s.Kind is not (SourceKind.Memory or SourceKind.CommonPractice or SourceKind.Derived)).Select(s => Title(s.Title))];

    /// <summary>The pages among the sources that stand in the register.</summary>
    public IEnumerable<string> Registered => Pages.Where(Register.Contains);

    private static string Title(string source)
    {
        string title = source.Split(';')[0];
        int bracket = title.IndexOf(" (", StringComparison.Ordinal);
        return (bracket < 0 ? title : title[..bracket]).Trim().ToUpperInvariant();
    }
}

/// <summary>The public interface values of the library.</summary>
internal static class InterfaceValues
{
    public static HashSet<Type> All { get; } =
        [.. typeof(Build).Assembly.GetExportedTypes().Where(t => !t.IsAbstract && !t.IsGenericType && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IInterfaceValue<>)))];
}
