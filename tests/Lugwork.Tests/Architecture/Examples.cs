using System.Collections;
using System.Collections.Immutable;
using System.Linq.Expressions;
using System.Reflection;
using Lugwork.Catalogues;

namespace Lugwork.Tests.Architecture;

/// <summary>One value of any type that a public method asks for.</summary>
internal static class Examples
{
    private static readonly Build Bare = Build.From(new Frame());

    /// <summary>A type of which no value can be made by its constructor needs a row here.</summary>
    private static readonly Dictionary<Type, Func<object>> Made = new()
    {
        [typeof(string)] = () => "27.2",
        [typeof(object)] = () => new object(),
        [typeof(Type)] = () => typeof(Build),
        [typeof(Build)] = () => Bare,
        [typeof(Part)] = () => new Fork(),
        [typeof(FitReport)] = () => Bare.Check(),
        [typeof(Joint)] = () => JointTable.All[0],
        [typeof(Slot)] = () => Slot.Fork,
        [typeof(CatalogueView)] = () => new PartCatalogue().View,
        [typeof(Stream)] = () => new MemoryStream(),
        [typeof(TextReader)] = () => new StringReader(""),
        [typeof(TextWriter)] = () => new StringWriter(),
        [typeof(IFormatProvider)] = () => System.Globalization.CultureInfo.InvariantCulture,
    };

    public static object? Of(Type type)
    {
        if (Made.TryGetValue(type, out Func<object>? made))
        {
            return made();
        }

        if (Nullable.GetUnderlyingType(type) is not null)
        {
            return null;
        }

        if (type.IsArray)
        {
            return Array.CreateInstance(type.GetElementType()!, 0);
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>))
        {
            return type.GetField("Empty")!.GetValue(null);
        }

        if (type.IsValueType)
        {
            return Activator.CreateInstance(type);
        }

        if (type.IsAssignableTo(typeof(Delegate)))
        {
            MethodInfo invoked = type.GetMethod("Invoke")!;
            return Expression.Lambda(type, Expression.Default(invoked.ReturnType), invoked.GetParameters().Select(p => Expression.Parameter(p.ParameterType))).Compile();
        }

        if (type.IsInterface && type.IsGenericType && Array.CreateInstance(type.GetGenericArguments()[0], 0) is { } empty && type.IsInstanceOfType(empty))
        {
            return empty;
        }

        if (type.GetProperty("All", BindingFlags.Public | BindingFlags.Static)?.GetValue(null) is IEnumerable all && all.Cast<object>().FirstOrDefault() is { } first && type.IsInstanceOfType(first))
        {
            return first;
        }

        return type.GetConstructor([]) is { } plain ? plain.Invoke([])
            : type.GetConstructors() is [{ } only, ..] ? only.Invoke([.. only.GetParameters().Select(p => Of(p.ParameterType))])
            : throw new InvalidOperationException($"no example of {type}: give it a row in {nameof(Examples)}");
    }
}
