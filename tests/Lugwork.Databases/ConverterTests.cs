using System.Reflection;
using Lugwork.EntityFrameworkCore;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Lugwork.Databases;

/// <summary>Every interface value goes into a column and comes back.</summary>
public sealed class ConverterTests
{
    private static readonly Type[] InterfaceTypes = [.. typeof(Build).Assembly.GetExportedTypes()
        .Where(t => !t.IsAbstract && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IInterfaceValue<>)))
        .OrderBy(t => t.FullName, StringComparer.Ordinal)];

    private static readonly Type[] TextTypes = [.. typeof(Build).Assembly.GetExportedTypes()
        .Where(t => !t.IsAbstract && !t.IsGenericType && !InterfaceTypes.Contains(t) && t.IsAssignableTo(typeof(ISpanFormattable)) && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(ISpanParsable<>)))];

    public static TheoryData<string> Names => [.. InterfaceTypes.Select(t => t.FullName!)];

    [Fact]
    public void No_interface_value_is_forgotten()
    {
        Visitor visited = new();
        InterfaceValueList.Visit(visited);
        Assert.Equal(InterfaceTypes, visited.Types.OrderBy(t => t.FullName, StringComparer.Ordinal));
        Assert.Equal([typeof(AxleSize), typeof(HeadsetHalf), typeof(HeadsetPair)], TextTypes.OrderBy(t => t.Name, StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_value_comes_back_from_its_key_and_its_code(string name) =>
        GetType().GetMethod(nameof(Back), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(InterfaceTypes.Single(t => t.FullName == name)).Invoke(null, BindingFlags.DoNotWrapExceptions, null, null, null);

    private static void Back<T>()
        where T : IInterfaceValue<T>
    {
        FitKeyConverter<T> key = new();
        FitCodeConverter<T> code = new();
        string[] samples = typeof(T) == typeof(TyreSize) ? ["37-622", "62-584"] : typeof(T) == typeof(DateMade) ? ["2019", "2019-05"] : ["0.5", "27.2", "100"];
        IEnumerable<T> values = T.All.IsEmpty ? samples.Select(s => T.Parse(s, null)) : T.All;
        foreach (T value in values)
        {
            string text = Assert.IsType<string>(key.ConvertToProvider(value));
            Assert.Equal(value.FitKey, text);
            Assert.InRange(text.Length, 1, LugworkConventions.MostKeyLength / 2);
            Assert.Equal(value, key.ConvertFromProvider(text));
            Assert.Equal(value.FitCode, code.ConvertToProvider(value));
            Assert.Equal(value, code.ConvertFromProvider(value.FitCode));
            Assert.True(new InterfaceValueComparer<T>().Equals(value, T.OfFitCode(value.FitCode)));
        }

        Assert.Throws<FormatException>(() => key.ConvertFromProvider("no such thing"));
        Assert.Throws<ArgumentOutOfRangeException>(() => code.ConvertFromProvider(0L));
        if (typeof(T).IsValueType)
        {
            Assert.Throws<InvalidOperationException>(() => key.ConvertToProvider(default(T)));
            Assert.Throws<InvalidOperationException>(() => code.ConvertToProvider(default(T)));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_key_is_short_plain_text_and_no_other_by_its_case(string name) =>
        GetType().GetMethod(nameof(Plain), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(InterfaceTypes.Single(t => t.FullName == name)).Invoke(null, BindingFlags.DoNotWrapExceptions, null, null, null);

    /// <summary>Some engines compare text without case, or without the blanks at its end, and count bytes for characters.</summary>
    private static void Plain<T>()
        where T : IInterfaceValue<T>
    {
        if (T.IsPlainLength || T.IsPlainMass || T.IsPlainAngle)
        {
            // Never stored as text.
            return;
        }

        string[] listed = [.. T.All.Select(v => v.FitKey)];
        Assert.Equal(listed.Length, listed.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        string[] extremes = [.. new[] { 18_000_001, 39_999_999, 499_999, 179_999_999, 99_999_999_999, 100_000_000_000 }.Select(Written<T>).OfType<string>()];
        Assert.True(listed.Length + extremes.Length > 0 || typeof(T) == typeof(TyreSize) || typeof(T) == typeof(DateMade), "no key was looked at");
        Assert.All(listed.Concat(extremes), key =>
        {
            Assert.InRange(key.Length, 1, LugworkConventions.MostKeyLength / 2);
            Assert.All(key, c => Assert.InRange(c, ' ', '~'));
            Assert.Equal(key.Trim(), key);
        });
    }

    /// <summary>The key of a code; null where the type has no such value.</summary>
    private static string? Written<T>(long code)
        where T : IInterfaceValue<T>
    {
        try
        {
            return T.OfFitCode(code).FitKey;
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    [Fact]
    public void The_longest_texts_of_values_without_code_have_room()
    {
        foreach (HeadsetStyle style in HeadsetStyle.All)
        {
            HeadsetHalf half = HeadsetHalf.OfMillimetres(style, 49.999999m, 39.999999m);
            string pair = HeadsetPair.Of(half, half).ToString();
            Assert.InRange(pair.Length, 30, LugworkConventions.MostKeyLength);
            Assert.Equal(pair, new CanonicalTextConverter<HeadsetPair>().ConvertToProvider(HeadsetPair.Parse(pair, null)));
        }

        Assert.InRange(AxleSize.OfMillimetres(14.999999m, 249.999999m).ToString().Length, 20, LugworkConventions.MostKeyLength);
    }

    [Fact]
    public void A_value_without_code_comes_back_from_its_text()
    {
        CanonicalTextConverter<HeadsetPair> pair = new();
        HeadsetPair value = HeadsetPair.Parse("ZS44/28.6|ZS56/40", null);
        Assert.Equal(value, pair.ConvertFromProvider(pair.ConvertToProvider(value)));
        Assert.Throws<InvalidOperationException>(() => pair.ConvertToProvider(default(HeadsetPair)));
        Assert.Throws<FormatException>(() => new CanonicalTextConverter<AxleSize>().ConvertFromProvider("12"));
    }

    [Theory]
    [InlineData(StoredAs.FitKey, typeof(string))]
    [InlineData(StoredAs.FitCode, typeof(long))]
    public void One_call_maps_every_property_nullable_ones_too(StoredAs stored, Type form)
    {
        using ModelStore store = new("SQLite", stored);
        using ShopModel shop = store.Open();
        IEntityType type = shop.Model.FindEntityType(typeof(Article))!;
        Type[] plain = [typeof(Dimension), typeof(Load), typeof(FrameAngle)];
        Type[] text = [typeof(HeadsetPair), typeof(AxleSize)];
        foreach (IProperty property in type.GetProperties().Where(p => p.Name != nameof(Article.Id)))
        {
            Type own = Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType;
            ValueConverter converter = property.GetTypeMapping().Converter!;
            Assert.Equal(plain.Contains(own) ? typeof(long) : text.Contains(own) ? typeof(string) : form, converter.ProviderClrType);
            Assert.Equal(converter.ProviderClrType == typeof(string) ? LugworkConventions.MostKeyLength : null, property.GetMaxLength());
            Assert.Equal(converter.ProviderClrType == typeof(string) ? false : null, property.IsUnicode());
            Assert.Equal(property.Name is not (nameof(Article.Diameter) or nameof(Article.Shell)), property.IsNullable);
        }
    }

    [Fact]
    public void Another_form_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
        {
            using ShopModel shop = new(o => o.UseSqlite("Data Source=:memory:"), (StoredAs)9);
            _ = shop.Model;
        });

    private sealed class Visitor : IInterfaceValueVisitor
    {
        public List<Type> Types { get; } = [];

        public void Visit<T>()
            where T : IInterfaceValue<T> => Types.Add(typeof(T));
    }
}
