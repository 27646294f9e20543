using System.Net.Http.Json;
using System.Reflection;
using System.Text.Json;
using Lugwork.Tyres;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopWeb.Api;

namespace Lugwork.Browser;

/// <summary>An application that says nothing of interface values but their types.</summary>
public sealed class BindingApp : IAsyncLifetime
{
    private WebApplication? _app;
    private HttpClient? _client;

    internal static Type[] Types { get; } = [.. typeof(Build).Assembly.GetExportedTypes()
        .Where(t => !t.IsAbstract && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IInterfaceValue<>))).OrderBy(t => t.FullName, StringComparer.Ordinal)];

    public HttpClient Client => _client!;

    public async ValueTask InitializeAsync()
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Services.AddOpenApi(o => o.AddSchemaTransformer<InterfaceSchemas>());
        _app = builder.Build();
        _app.MapOpenApi();
        foreach (Type type in Types)
        {
            typeof(BindingApp).GetMethod(nameof(Map), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(type).Invoke(null, [_app]);
        }

        await _app.StartAsync();
        _client = new() { BaseAddress = new(_app.Urls.Single()) };
    }

    public async ValueTask DisposeAsync()
    {
        _client?.Dispose();
        if (_app is not null)
        {
            await _app.DisposeAsync();
        }
    }

    private static void Map<T>(IEndpointRouteBuilder routes)
        where T : IInterfaceValue<T>
    {
        string name = typeof(T).Name;
        routes.MapGet($"/route/{name}/{{value}}", (T value) => Results.Text(value.FitKey));
        routes.MapGet($"/query/{name}", (T value) => Results.Text(value.FitKey));
        routes.MapPost($"/json/{name}", (Held<T> held) => held);
    }
}

/// <summary>A body with one value.</summary>
internal sealed class Held<T>
{
    public T? Value { get; set; }
}

/// <summary>Every interface value of the library in an application that says nothing of them but their types.</summary>
public sealed class BindingTests(BindingApp app) : IClassFixture<BindingApp>
{
    private static Type[] Types => BindingApp.Types;

    private HttpClient Client => app.Client;

    [Fact]
    public void There_are_many_types() => Assert.True(Types.Length > 100, $"{Types.Length}");

    [Fact]
    public async Task They_bind_in_routes()
    {
        foreach ((Type type, string key) in Samples().Where(s => !s.Key.Contains('/', StringComparison.Ordinal)))
        {
            Assert.Equal(key, await Told(await Client.GetAsync($"/route/{type.Name}/{Uri.EscapeDataString(key)}"), type, key));
        }
    }

    [Fact]
    public async Task They_bind_in_queries()
    {
        foreach ((Type type, string key) in Samples())
        {
            Assert.Equal(key, await Told(await Client.GetAsync($"/query/{type.Name}?value={Uri.EscapeDataString(key)}"), type, key));
            using HttpResponseMessage wrong = await Client.GetAsync($"/query/{type.Name}?value=no%20such%20thing%20at%20all");
            Assert.Equal(400, (int)wrong.StatusCode);
        }
    }

    [Fact]
    public async Task They_bind_in_json()
    {
        foreach ((Type type, string key) in Samples())
        {
            using HttpResponseMessage answer = await Client.PostAsJsonAsync($"/json/{type.Name}", new { value = key });
            JsonElement held = await answer.Content.ReadFromJsonAsync<JsonElement>();
            Assert.Equal(key, held.GetProperty("value").GetString());
            using HttpResponseMessage wrong = await Client.PostAsJsonAsync($"/json/{type.Name}", new { value = "no such thing at all" });
            Assert.Equal(400, (int)wrong.StatusCode);
        }
    }

    [Fact]
    public void They_bind_in_configuration()
    {
        foreach ((Type type, string key) in Samples())
        {
            Call(nameof(Configured), type, key);
        }
    }

    [Fact]
    public async Task The_document_shows_each_as_a_string_with_pattern_and_example()
    {
        JsonElement document = JsonDocument.Parse(await Client.GetStringAsync("/openapi/v1.json")).RootElement;
        foreach (Type type in Types)
        {
            JsonElement paths = document.GetProperty("paths");
            Check(type, Resolved(document, paths.GetProperty($"/route/{type.Name}/{{value}}").GetProperty("get").GetProperty("parameters")[0].GetProperty("schema")));
            Check(type, Resolved(document, paths.GetProperty($"/query/{type.Name}").GetProperty("get").GetProperty("parameters")[0].GetProperty("schema")));
            JsonElement body = Resolved(document, paths.GetProperty($"/json/{type.Name}").GetProperty("post").GetProperty("requestBody").GetProperty("content").GetProperty("application/json").GetProperty("schema"));
            Check(type, Resolved(document, body.GetProperty("properties").GetProperty("value")));
        }
    }

    private static void Check(Type type, JsonElement schema)
    {
        string written = $"{type.Name}: {schema.GetRawText()}";
        JsonElement kind = schema.GetProperty("type");
        Assert.True(kind.ValueKind == JsonValueKind.String ? kind.GetString() == "string" : kind.EnumerateArray().Any(k => k.GetString() == "string"), written);
        string pattern = schema.GetProperty("pattern").GetString()!;
        Assert.Matches(pattern, schema.GetProperty("examples")[0].GetString()!);
        Assert.DoesNotMatch(pattern, "no such thing at all");
        foreach ((_, string key) in Samples(type, int.MaxValue))
        {
            Assert.True(System.Text.RegularExpressions.Regex.IsMatch(key, pattern), $"{key} is not {pattern} of {type.Name}");
        }

        Call(nameof(Read), type, schema.GetProperty("examples")[0].GetString()!);
    }

    private static void Read<T>(string text)
        where T : IInterfaceValue<T> => Assert.Equal(text, T.Parse(text, null).FitKey);

    private static JsonElement Resolved(JsonElement document, JsonElement schema)
    {
        JsonElement inner = schema.TryGetProperty("oneOf", out JsonElement either) ? either.EnumerateArray().First(s => s.TryGetProperty("$ref", out _)) : schema;
        return inner.TryGetProperty("$ref", out JsonElement reference)
            ? document.GetProperty("components").GetProperty("schemas").GetProperty(reference.GetString()!.Split('/')[^1])
            : inner;
    }

    private static void Configured<T>(string key)
        where T : IInterfaceValue<T>
    {
        IConfiguration configuration = new ConfigurationBuilder().AddInMemoryCollection([new("Part:Value", key)]).Build();
        Assert.Equal(key, configuration.GetSection("Part").Get<Held<T>>()!.Value!.FitKey);
        IConfiguration wrong = new ConfigurationBuilder().AddInMemoryCollection([new("Part:Value", "no such thing at all")]).Build();
        Assert.Throws<InvalidOperationException>(() => wrong.GetSection("Part").Get<Held<T>>());
    }

    private static async Task<string> Told(HttpResponseMessage answer, Type type, string key)
    {
        using (answer)
        {
            string text = await answer.Content.ReadAsStringAsync();
            Assert.True(answer.IsSuccessStatusCode, $"{type.Name} {key}: {(int)answer.StatusCode} {text}");
            return text;
        }
    }

    private static IEnumerable<(Type Type, string Key)> Samples() => Types.SelectMany(t => Samples(t, 4));

    private static IEnumerable<(Type Type, string Key)> Samples(Type type, int most)
    {
        string[] keys = (string[])Call(nameof(Keys), type)!;
        return keys.Take(most).Select(key => (type, key));
    }

    private static string[] Keys<T>()
        where T : IInterfaceValue<T> => !T.All.IsEmpty ? [.. T.All.Select(v => v.FitKey)]
        : typeof(T) == typeof(DateMade) ? ["2014", "2014-05", "1999-12"]
        : typeof(T) == typeof(TyreSize) ? [.. BeadSeat.All.Select(b => TyreSize.Of(42, b).FitKey)]
        : typeof(T) == typeof(Load) ? [T.OfFitCode(1).FitKey, T.OfFitCode(120_000).FitKey, T.OfFitCode(93_500).FitKey]
        : [T.OfFitCode(1).FitKey, T.OfFitCode(80_000_000).FitKey, T.OfFitCode(67_500_000).FitKey];

    private static object? Call(string method, Type type, params object[] given) =>
        typeof(BindingTests).GetMethod(method, BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(type).Invoke(null, BindingFlags.DoNotWrapExceptions, null, given, null);
}
