using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Lugwork;
using Lugwork.Tyres;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace ShopWeb.Api;

/// <summary>
/// Interface values in an OpenAPI document: a string with a pattern of its keys, and a key as example. This one file can be taken over as it
/// is: <c>builder.Services.AddOpenApi(o => o.AddSchemaTransformer&lt;InterfaceSchemas&gt;())</c>.
/// </summary>
internal sealed class InterfaceSchemas : IOpenApiSchemaTransformer
{
    private static readonly ConcurrentDictionary<Type, Shape?> Shapes = new();

    /// <summary>What a value looks like.</summary>
    internal sealed record Shape(string Called, string Pattern, string Example, ImmutableArray<string> Keys);

    public Task TransformAsync(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(schema);
        ArgumentNullException.ThrowIfNull(context);

        // What is parsed out of a route or a query is a plain string to the explorer; the parameter knows what it becomes.
        Type? parameter = context.JsonPropertyInfo is null ? context.ParameterDescription?.ParameterDescriptor?.ParameterType : null;
        foreach (Type type in new[] { context.JsonTypeInfo.Type, parameter }.OfType<Type>())
        {
            if (Of(Nullable.GetUnderlyingType(type) ?? type) is { } shape)
            {
                bool mayBeNull = schema.Type is { } before && before.HasFlag(JsonSchemaType.Null);
                schema.Type = mayBeNull ? JsonSchemaType.String | JsonSchemaType.Null : JsonSchemaType.String;
                schema.Pattern = shape.Pattern;
                schema.Examples = [JsonValue.Create(shape.Example)];
                schema.Description ??= $"A {shape.Called} by its key. Other spellings of the trade are read too; this one is written.";
            }
        }

        return Task.CompletedTask;
    }

    /// <summary>The shape of an interface value; null for any other type.</summary>
    internal static Shape? Of(Type type) => Shapes.GetOrAdd(type, static t =>
        t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IInterfaceValue<>) && i.GenericTypeArguments[0] == t)
            ? (Shape)typeof(InterfaceSchemas).GetMethod(nameof(Shaped), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(t).Invoke(null, null)!
            : null);

    private static Shape Shaped<T>()
        where T : IInterfaceValue<T>
    {
        ImmutableArray<string> keys = typeof(T) == typeof(TyreSize) ? [.. BeadSeat.All.Select(b => TyreSize.Of(37, b).FitKey)] : [.. T.All.Select(v => v.FitKey)];
        if (keys.IsEmpty)
        {
            // A plain quantity: any figure in its unit; a date: a year, and a month.
            string example = typeof(T) == typeof(DateMade) ? "2014-05" : T.IsPlainLength ? Example<T>(80_000_000) : T.IsPlainMass ? Example<T>(120_000) : Example<T>(67_500_000);
            return new(T.Called, typeof(T) == typeof(DateMade) ? "^[0-9]{4}(-[0-9]{2})?$" : OfFigures([example]), example, []);
        }

        bool isClosed = typeof(T).BaseType is { IsGenericType: true };
        string common = keys[keys.Length / 2];
        return new(T.Called, isClosed ? $"^({string.Join('|', keys.Select(Escaped))})$" : OfFigures(keys), common, isClosed ? keys : []);
    }

    private static string Example<T>(long code)
        where T : IInterfaceValue<T> => T.OfFitCode(code).FitKey;

    /// <summary>A pattern in which every figure of the samples may be any other.</summary>
    private static string OfFigures(IEnumerable<string> samples) =>
        $"^({string.Join('|', samples.Select(Shapeless).Distinct().Order(StringComparer.Ordinal))})$";

    private static string Shapeless(string sample)
    {
        StringBuilder pattern = new();
        foreach (Match piece in Regex.Matches(sample, @"[0-9]+(\.[0-9]+)?|[^0-9]+"))
        {
            pattern.Append(char.IsAsciiDigit(piece.ValueSpan[0]) ? @"[0-9]+(\.[0-9]+)?" : Escaped(piece.Value));
        }

        return pattern.ToString();
    }

    /// <summary>The text itself, in the regular expressions that a schema has.</summary>
    private static string Escaped(string text) => Regex.Replace(text, @"[\\^$.|?*+()\[\]{}/]", @"\$0");
}
