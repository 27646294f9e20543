using System.ComponentModel;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json.Serialization;

namespace Lugwork.Tests.Architecture;

/// <summary>What is asked for and is not there is said at once, by its name. Left out are positional records, which hold what they are given, converters, generic methods and what takes spans.</summary>
public sealed class NullArgumentTests
{
    private static readonly NullabilityInfoContext Nullability = new();

    private static readonly MethodBase[] Methods =
    [
        .. typeof(Build).Assembly.GetExportedTypes()
            .Where(t => !t.IsInterface && !t.ContainsGenericParameters && !t.IsAssignableTo(typeof(Delegate)) && !t.IsAssignableTo(typeof(JsonConverter)) && !t.IsAssignableTo(typeof(TypeConverter)))
            .SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .OfType<MethodBase>()
            .Where(m => !m.IsAbstract && !m.ContainsGenericParameters && m.GetCustomAttribute<CompilerGeneratedAttribute>() is null && m.Name is not ("Deconstruct" or "op_Equality" or "op_Inequality"))
            .Where(m => !m.IsSpecialName || m.IsConstructor || m.Name.StartsWith("op_", StringComparison.Ordinal))
            .Where(m => !IsOfRecord(m) && m.GetParameters().All(p => !p.ParameterType.IsByRefLike && p.ParameterType.GetElementType() is not { IsByRefLike: true })),
    ];

    public static TheoryData<string> Asked => [.. Methods.SelectMany(m => m.GetParameters().Where(IsAsked).Select(p => NameOf(m, p))).Distinct()];

    [Theory]
    [MemberData(nameof(Asked))]
    public void What_is_not_there_is_named(string name)
    {
        (MethodBase method, ParameterInfo asked) = Methods.SelectMany(m => m.GetParameters().Where(IsAsked).Select(p => (m, p))).First(a => NameOf(a.m, a.p) == name);
        object? target = method.IsStatic || method.IsConstructor ? null : Examples.Of(method.DeclaringType!);
        object?[] arguments = [.. method.GetParameters().Select(p => p == asked ? null : p.IsOut ? null : Examples.Of(p.ParameterType.IsByRef ? p.ParameterType.GetElementType()! : p.ParameterType))];
        Exception? thrown = Record.Exception(() => Answer(method is ConstructorInfo made ? made.Invoke(BindingFlags.DoNotWrapExceptions, null, arguments, null) : method.Invoke(target, BindingFlags.DoNotWrapExceptions, null, arguments, null)));
        Assert.True(thrown is ArgumentNullException missing && missing.ParamName == asked.Name, $"{name}: {thrown?.ToString() ?? "nothing is said"}");
    }

    [Fact]
    public void There_are_many() => Assert.True(Asked.Count > 200, $"{Asked.Count} arguments");

    /// <summary>A task says it when it is waited for, lines that come one by one with the first; a list when it is asked for, not when it is gone through.</summary>
    private static void Answer(object? given)
    {
        if (given is Task task)
        {
            task.GetAwaiter().GetResult();
        }
        else if (given?.GetType().GetInterfaces().FirstOrDefault(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IAsyncEnumerable<>)) is { } lines)
        {
            object one = lines.GetMethod("GetAsyncEnumerator")!.Invoke(given, [CancellationToken.None])!;
            ((ValueTask<bool>)typeof(IAsyncEnumerator<>).MakeGenericType(lines.GetGenericArguments()).GetMethod("MoveNextAsync")!.Invoke(one, null)!).AsTask().GetAwaiter().GetResult();
        }
    }

    private static bool IsAsked(ParameterInfo parameter) =>
        !parameter.IsOut && !parameter.ParameterType.IsByRef && !parameter.ParameterType.IsValueType && Nullability.Create(parameter).WriteState == NullabilityState.NotNull;

    /// <summary>A positional record has a constructor that takes what it is given.</summary>
    private static bool IsOfRecord(MethodBase method) =>
        method.IsConstructor && method.DeclaringType!.GetMethod("Deconstruct")?.GetParameters().Length == method.GetParameters().Length;

    private static string NameOf(MethodBase method, ParameterInfo parameter) =>
        $"{method.DeclaringType!.FullName}.{method.Name}({string.Join(", ", method.GetParameters().Select(p => p.ParameterType.Name))}) {parameter.Name}";
}
