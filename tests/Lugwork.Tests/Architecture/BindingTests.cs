using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Tyres;

namespace Lugwork.Tests.Architecture;

/// <summary>Every interface value binds by JSON and by type converters, without anything that is registered.</summary>
public sealed class BindingTests
{
    public static TheoryData<string> All => [.. Values.InterfaceTypes.Select(t => t.FullName!)];

    [Theory]
    [MemberData(nameof(All))]
    public void Json_holds_the_key_and_gives_the_value_back(string type) => Values.Check(typeof(BindingTests), nameof(Json), type);

    private static void Json<T>()
        where T : IInterfaceValue<T>
    {
        foreach (T value in Values.Of<T>())
        {
            string json = JsonSerializer.Serialize(value);
            Assert.Equal(value.FitKey, JsonSerializer.Deserialize<string>(json));
            Assert.Equal(value, JsonSerializer.Deserialize<T>(json));
            Assert.Equal(value, JsonSerializer.Deserialize<Held<T>>(JsonSerializer.Serialize(new Held<T> { Value = value }))!.Value);
            Dictionary<string, int> plain = new() { [value.FitKey] = 7 };
            Assert.Equal(value, AsKeys<T>(JsonSerializer.Serialize(plain)).Single());
        }

        foreach (string wrong in new[] { "\"\"", "\"no such thing at all\"", "{}", "[]", "true", "\"\\ud800\"", "-1", "\"" + new string('9', 10_000) + "\"" })
        {
            Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Held<T>>($$"""{"Value":{{wrong}}}"""));
        }
    }

    private static object[] AsKeys<T>(string json)
        where T : IInterfaceValue<T>
    {
        // A dictionary asks its keys not to be null; the values of a closed set never are.
        System.Reflection.MethodInfo read = typeof(BindingTests).GetMethod(nameof(Keyed), System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Static)!;
        return (object[])read.MakeGenericMethod(typeof(T)).Invoke(null, [json])!;
    }

    private static object[] Keyed<TKey>(string json)
        where TKey : notnull
    {
        Dictionary<TKey, int> read = JsonSerializer.Deserialize<Dictionary<TKey, int>>(json)!;
        Assert.Equal(json, JsonSerializer.Serialize(read));
        return [.. read.Keys.Select(k => (object)k)];
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_type_converter_reads_and_writes_the_key(string type) => Values.Check(typeof(BindingTests), nameof(FindsConverter), type);

    private static void FindsConverter<T>()
        where T : IInterfaceValue<T>
    {
        TypeConverter found = TypeDescriptor.GetConverter(typeof(T));
        Assert.Equal(typeof(InterfaceTypeConverter<T>).ToString(), found.GetType().ToString());
        Converts<T>(found);
        Converts<T>(new InterfaceTypeConverter<T>());
    }

    private static void Converts<T>(TypeConverter converter)
        where T : IInterfaceValue<T>
    {
        Assert.True(converter.CanConvertFrom(typeof(string)));
        Assert.False(converter.CanConvertFrom(typeof(int)));
        foreach (T value in Values.Of<T>())
        {
            string text = converter.ConvertToString(null, CultureInfo.GetCultureInfo("de-DE"), value)!;
            Assert.Equal(value.FitKey, text);
            Assert.Equal(value, converter.ConvertFromString(null, CultureInfo.GetCultureInfo("fa-IR"), text));
        }

        Assert.Throws<FormatException>(() => converter.ConvertFrom("no such thing at all"));
        Assert.Throws<NotSupportedException>(() => converter.ConvertFrom(7));
        Assert.Throws<NotSupportedException>(() => converter.ConvertTo(Values.Of<T>()[0], typeof(int)));
    }

    [Fact]
    public void A_number_is_read_as_its_text() => Assert.Equal(SeatpostDiameter.OfMillimetres(27.2m), JsonSerializer.Deserialize<SeatpostDiameter>("27.2"));

    [Fact]
    public void Null_is_no_value_and_is_kept_where_there_may_be_none()
    {
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<SeatpostDiameter>("null"));
        Assert.Null(JsonSerializer.Deserialize<SeatpostDiameter?>("null"));
        Assert.Null(JsonSerializer.Deserialize<Held<HubStandard>>("""{"Value":null}""")!.Value);
    }

    [Fact]
    public void A_default_is_not_written()
    {
        Assert.Throws<JsonException>(() => JsonSerializer.Serialize(default(TyreSize)));
        Assert.Throws<JsonException>(() => JsonSerializer.Serialize(new Dictionary<SeatpostDiameter, int> { [default] = 1 }));
        Assert.Throws<NotSupportedException>(() => TypeDescriptor.GetConverter(typeof(SeatpostDiameter)).ConvertToString(default(SeatpostDiameter)));
    }

    [Fact]
    public void A_refusal_says_where_and_why()
    {
        JsonException e = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Held<HubStandard>>("""{"Value":"10x135"}"""));
        Assert.Equal("$.Value", e.Path);
        Assert.Contains("It could be ", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Code_that_is_generated_at_compile_time_finds_the_converters()
    {
        Bound bound = new() { Post = SeatpostDiameter.OfMillimetres(27.2m), Hub = HubStandard.Find("R142-12")! };
        string json = JsonSerializer.Serialize(bound, BoundJson.Default.Bound);
        Assert.Equal("""{"Post":"27.2","Hub":"R142-12"}""", json);
        Assert.Equal(bound, JsonSerializer.Deserialize(json, BoundJson.Default.Bound));
    }

    private sealed class Held<T>
    {
        public T? Value { get; set; }
    }
}

/// <summary>Two interface values, one of an open and one of a closed set.</summary>
internal sealed record Bound
{
    public SeatpostDiameter Post { get; init; }

    public HubStandard? Hub { get; init; }
}

[JsonSerializable(typeof(Bound))]
internal sealed partial class BoundJson : JsonSerializerContext;
