using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.Loader;
using System.Xml.Linq;

namespace Lugwork.Tests.Architecture;

/// <summary>How the house stands: statics, closed sets, sources, first touch, documentation.</summary>
public sealed class HouseTests
{
    private static readonly Assembly Library = typeof(Build).Assembly;

    private static readonly Type[] Standards =
        [.. Library.GetTypes().Where(t => t.BaseType is { IsGenericType: true } b && b.GetGenericTypeDefinition() == typeof(Standard<>))];

    public static TheoryData<string> StandardNames => [.. Standards.Select(t => t.FullName!)];

    [Fact]
    public void There_are_standards_to_check() => Assert.True(Standards.Length >= 11);

    [Theory]
    [MemberData(nameof(StandardNames))]
    public void Every_member_of_a_closed_set_is_in_All_with_a_key_and_code_of_its_own(string name)
    {
        Type type = Library.GetType(name)!;
        object[] all = [.. ((System.Collections.IEnumerable)type.GetProperty("All")!.GetValue(null)!).Cast<object>()];
        IEnumerable<object> named = type.GetProperties(BindingFlags.Public | BindingFlags.Static).Where(p => p.PropertyType == type).Select(p => p.GetValue(null)!);
        Assert.All(named, member => Assert.Contains(member, all));

        string[] keys = [.. all.Select(m => (string)type.GetProperty("FitKey")!.GetValue(m)!)];
        long[] codes = [.. all.Select(m => (long)type.GetProperty("FitCode")!.GetValue(m)!)];
        Assert.Equal(keys.Length, keys.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Equal(codes.Length, codes.Distinct().Count());
        Assert.All(codes, c => Assert.True(c > 0));
        Assert.All(all, m => Assert.Contains((Source)type.GetProperty("Source")!.GetValue(m)!, Sources.All));
        Assert.True(type.IsSealed);
        Assert.Empty(type.GetConstructors());
    }

    [Theory]
    [MemberData(nameof(StandardNames))]
    public void Every_spelling_of_a_member_reads_back_to_it(string name) =>
        GetType().GetMethod(nameof(Spellings), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(Library.GetType(name)!).Invoke(null, null);

    private static void Spellings<T>()
        where T : Standard<T>, IInterfaceValue<T>
    {
        foreach (T member in T.All)
        {
            foreach (string spelling in member.Names.Prepend(member.TradeName).Prepend(member.FitKey))
            {
                foreach (string text in new[] { spelling, spelling.ToUpperInvariant(), spelling.ToLowerInvariant(), $"  {spelling}\u00A0" })
                {
                    Assert.Contains(member, T.Read(text).Values);
                }
            }

            Assert.Same(member, T.Parse(member.ToString(), null));
            Assert.Same(member, T.OfFitCode(member.FitCode));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => T.OfFitCode(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => T.OfFitCode(-1));
    }

    [Fact]
    public void Every_source_is_registered_once()
    {
        Source[] named = [.. typeof(Sources).GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static).Where(f => f.FieldType == typeof(Source)).Select(f => (Source)f.GetValue(null)!)];
        Assert.Equal(named.Length, Sources.All.Length);
        Assert.Equal(named.Length, Sources.All.Select(s => s.Id).Distinct().Count());
        Assert.All(Sources.All, s => Assert.True(s.Publisher.Length > 0 || s.Kind is SourceKind.Memory or SourceKind.CommonPractice or SourceKind.Derived));
    }

    [Fact]
    public void Every_joint_and_bridge_is_sourced_and_has_an_id_of_its_own()
    {
        Assert.Equal(JointTable.All.Length, JointTable.All.Select(j => j.Id).Distinct().Count());
        Assert.All(JointTable.All, j => Assert.NotEmpty(j.Sources));
        Bridge[] bridges = [.. JointTable.All.SelectMany(j => j.Relation.Bridges).Distinct()];
        Assert.Equal(bridges.Length, bridges.Select(b => b.Id).Distinct().Count());
        Assert.All(bridges, b => Assert.NotEmpty(b.Sources));
        Assert.All(JointTable.All.SelectMany(j => j.Inputs), i => Assert.True(i.Measure.Length > 20));
    }

    [Fact]
    public void A_bridge_that_only_memory_or_practice_supports_never_reads_as_a_plain_fit() =>
        Assert.All(
            JointTable.All.SelectMany(j => j.Relation.Bridges).Where(b => b.Sources.All(s => s.Kind is SourceKind.Memory)),
            b => Assert.True(b.Result >= Verdict.NeedsMeasuring));

    [Fact]
    public void No_static_can_be_changed()
    {
        IEnumerable<FieldInfo> statics = Library.GetTypes()
            .Where(t => !t.Name.Contains('<', StringComparison.Ordinal) && t.Namespace?.StartsWith("Lugwork", StringComparison.Ordinal) == true && !t.IsAssignableTo(typeof(System.Text.Json.Serialization.JsonSerializerContext)))
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(f => !f.IsLiteral);
        Assert.All(statics, f => Assert.True(f.IsInitOnly, $"{f.DeclaringType}.{f.Name}"));
        Assert.All(statics.Where(f => f.IsPublic), f => Assert.False(f.FieldType.IsArray));
    }

    [Fact]
    public void Each_type_can_be_the_first_one_touched()
    {
        foreach (string name in Library.GetTypes().Where(t => !t.ContainsGenericParameters && t.Namespace?.StartsWith("Lugwork", StringComparison.Ordinal) == true).Select(t => t.FullName!))
        {
            AssemblyLoadContext alone = new(name, isCollectible: true);
            Type type = alone.LoadFromAssemblyPath(Library.Location).GetType(name)!;
            System.Runtime.CompilerServices.RuntimeHelpers.RunClassConstructor(type.TypeHandle);
            alone.Unload();
        }
    }

    [Fact]
    public void Nothing_public_is_undocumented()
    {
        string file = Path.ChangeExtension(Library.Location, ".xml");
        Assert.True(File.Exists(file), "the documentation file is beside the library");
        Dictionary<string, XElement> documented = XDocument.Load(file).Descendants("member").ToDictionary(m => (string)m.Attribute("name")!);
        foreach (Type type in Library.GetExportedTypes())
        {
            Assert.True(documented.ContainsKey("T:" + type.FullName!.Replace('+', '.')), $"{type} has no summary");
        }

        Assert.All(documented.Values, m => Assert.True(m.Elements().Any(e => e.Name == "inheritdoc" || (e.Name == "summary" && e.Value.Trim().Length > 0) || e.Name == "param"), (string)m.Attribute("name")!));
    }

    private static readonly Type[] Values =
        [.. Library.GetExportedTypes().Where(t => !t.IsAbstract && !t.IsGenericType && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IInterfaceValue<>)))];

    public static TheoryData<string> ValueNames => [.. Values.Select(t => t.FullName!)];

    [Theory]
    [MemberData(nameof(ValueNames))]
    public void Every_value_writes_and_reads_back(string name) =>
        GetType().GetMethod(nameof(RoundTrip), BindingFlags.NonPublic | BindingFlags.Static)!.MakeGenericMethod(Library.GetType(name)!).Invoke(null, null);

    private static void RoundTrip<T>()
        where T : IInterfaceValue<T>
    {
        Random random = new(1);
        long[] lengths = [1, 999_999, 27_200_000, 27_123_456, 100_000_000_000, .. Enumerable.Range(0, 500).Select(_ => random.NextInt64(1, 1_000_000_000))];
        IEnumerable<T> sizes = typeof(T) == typeof(Lugwork.Tyres.TyreSize)
            ? Lugwork.Tyres.BeadSeat.All.SelectMany(b => Enumerable.Range(18, 115).Select(w => (T)(object)Lugwork.Tyres.TyreSize.Of(w, b)))
            : T.IsPlainLength ? lengths.Select(T.OfFitCode)
            : T.IsPlainMass ? new long[] { 1, 999, 82_500, 499_999, 500_000 }.Concat(lengths.Select(l => 1 + (l % 500_000))).Select(T.OfFitCode)
            : T.IsPlainAngle ? new long[] { 1, 67_500_000, 180_000_000 }.Concat(lengths.Select(l => 1 + (l % 180_000_000))).Select(T.OfFitCode)
            : typeof(T) == typeof(DateMade) ? Enumerable.Range(1860, 241).SelectMany(y => new[] { y * 100L, (y * 100L) + 1, (y * 100L) + 12 }).Select(T.OfFitCode) : [];
        T[] all = [.. T.All, .. sizes];
        Assert.NotEmpty(all);
        foreach (T value in all)
        {
            string text = value.ToString(null, null);
            Assert.Equal(value.FitKey, text);
            Assert.Equal(value.FitKey, value.ToString("G", CultureInfo.GetCultureInfo("fa-IR")));
            Assert.Equal(value, T.Parse(text, null));
            Assert.Equal(value, T.Parse(text.AsSpan(), CultureInfo.GetCultureInfo("de-DE")));
            Assert.Equal(value, T.OfFitCode(value.FitCode));
            Assert.Equal(Known<T>.Of(value), Known<T>.OneOf([value]));

            char[] room = new char[text.Length];
            Assert.True(value.TryFormat(room, out int written, "", null));
            Assert.Equal(text, new string(room, 0, written));
            Assert.False(value.TryFormat(room.AsSpan(1), out written, "", null));
            Assert.Equal(0, written);
            Assert.Contains(value, T.Read(value.ToString("T", null)).Values);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => T.OfFitCode(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => T.OfFitCode(-1));
        if (!typeof(T).IsValueType)
        {
            Assert.Throws<FormatException>(() => all[0].ToString("X", null));
        }
    }

    [Fact]
    public void The_default_of_a_public_struct_never_reads_as_a_fit()
    {
        Type[] structs = [.. Library.GetExportedTypes().Where(t => t.IsValueType && !t.IsEnum)];
        Assert.True(structs.Length >= 6);
        foreach (Type open in structs)
        {
            Type type = open.IsGenericTypeDefinition ? open.MakeGenericType(typeof(Dimension)) : open;
            object none = Activator.CreateInstance(type)!;
            Assert.NotNull(none.ToString());
            foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
            {
                if (property.PropertyType == typeof(Verdict))
                {
                    Assert.Equal(Verdict.NotJudged, property.GetValue(none));
                }

                if (property.Name == nameof(Dimension.FitCode))
                {
                    Assert.True((long)property.GetValue(none)! <= 0, $"{type} has a default that is a value");
                }
            }
        }

        Assert.Equal(Verdict.NotJudged, default);
        Assert.Equal(KnownState.Unknown, default);
        Assert.False(default(TextReading<Dimension>).IsClear);
        Assert.False(default(Fit).ToString().Contains("fits", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_row_a_joint_rests_on_names_registered_sources()
    {
        foreach (Joint joint in JointTable.All)
        {
            Assert.All(joint.Sources.Concat(joint.Relation.RestsOn), s => Assert.Contains(s, Sources.All));
            Assert.All(joint.Relation.Bridges, b => Assert.All(b.Sources, s => Assert.Contains(s, Sources.All)));
            Assert.All(joint.Relation.Bridges, b => Assert.True(b.Id.Length > 0 && b.What.Length > 0 && b.Result != Verdict.NotJudged && !b.Sources.IsEmpty, b.Id));
            Assert.All(joint.Relation.Bridges, b => Assert.True(b.What.Length > 0 && b.Result is Verdict.Fits or Verdict.NeedsPart or Verdict.NeedsMeasuring, b.Id));
            Assert.All(Reached(joint), o => Assert.All(o.Outcome.Reason!.Sources, s => Assert.Contains(s, Sources.All)));
        }
    }

    [Fact]
    public void A_reason_names_only_inputs_that_its_joint_has()
    {
        foreach (Joint joint in JointTable.All)
        {
            foreach ((Outcome outcome, long[] values) in Reached(joint))
            {
                Assert.NotNull(outcome.Reason);
                Assert.NotEqual(Verdict.NotJudged, outcome.Verdict);
                object[] shown = [.. values.Select((v, i) => (object)(v == 0 ? "none" : joint.Inputs[i].Show(v)))];
                string told = string.Format(CultureInfo.InvariantCulture, outcome.Reason.Template, shown);
                Assert.DoesNotContain("{", told, StringComparison.Ordinal);
                Assert.True(outcome.Bridge is not null || !told.Contains("[bridge]", StringComparison.Ordinal), $"{joint}: {told}");
                Assert.True(outcome.Verdict != Verdict.NeedsPart || outcome.Bridge is { Kind: not BridgeKind.MadeForBoth } || outcome.Second is { Kind: not BridgeKind.MadeForBoth }, $"{joint}: {told}");
            }
        }
    }

    /// <summary>What a joint says at up to some thousand places: the whole product of small domains, a sample of large ones.</summary>
    internal static List<(Outcome Outcome, long[] Values)> Reached(Joint joint)
    {
        Random random = new(1);
        long[] lengths = [1, 18_000_000, 19_000_000, 24_000_000, 25_000_000, 29_000_000, 30_000_000, 75_000_000, 110_000_000, 160_000_000, 203_000_000];
        long[][] values = [.. joint.Inputs.Select(i => (long[])[0, .. i.IsLength ? lengths : i.Domain.AsSpan()])];
        long product = values.Aggregate(1L, (p, v) => p * v.Length);
        Dictionary<Outcome, long[]> reached = [];
        for (long n = 0; n < Math.Min(product, 60_000); n++)
        {
            long at = product <= 60_000 ? n : random.NextInt64(product);
            long[] point = new long[values.Length];
            for (int i = 0; i < point.Length; i++)
            {
                point[i] = values[i][at % values[i].Length];
                at /= values[i].Length;
            }

            reached.TryAdd(joint.Relation.Judge(point), point);
        }

        return [.. reached.Select(r => (r.Key, r.Value))];
    }

    [Fact]
    public void Nothing_exposes_a_list_that_can_be_changed()
    {
        IEnumerable<PropertyInfo> properties = Library.GetExportedTypes().SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly));
        Assert.All(properties, p => Assert.False(
            p.PropertyType.IsArray || (p.PropertyType.IsGenericType && p.PropertyType.GetGenericTypeDefinition() is { } g && (g == typeof(List<>) || g == typeof(Dictionary<,>) || g == typeof(HashSet<>))), $"{p.DeclaringType}.{p.Name}"));
        Assert.All(properties.Where(p => p.SetMethod is { IsPublic: true }), p => Assert.Contains(typeof(IsExternalInit), p.SetMethod!.ReturnParameter.GetRequiredCustomModifiers()));
        Assert.All(Library.GetExportedTypes().Where(t => !t.IsEnum).SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance)), f => Assert.True(f.IsLiteral || f.IsInitOnly));
    }

    [Fact]
    public void No_public_member_is_undocumented()
    {
        XElement[] members = [.. XDocument.Load(Path.ChangeExtension(Library.Location, ".xml")).Descendants("member")];
        string[] documented = [.. members.Select(m => ((string)m.Attribute("name")!).Split('(')[0].Split('~')[0])];
        HashSet<string> names = [.. documented];
        List<string> bare = [];
        foreach (Type type in Library.GetExportedTypes())
        {
            string home = type.FullName!.Replace('+', '.');
            foreach (MemberInfo member in type.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            {
                bool made = member.IsDefined(typeof(CompilerGeneratedAttribute)) || member is Type || (member is FieldInfo { IsSpecialName: true })
                    || (member is ConstructorInfo c && (type.IsValueType || c.GetParameters().Length == 0 || type.GetMethod("<Clone>$") is not null))
                    || (member is MethodBase m && (m.Name is "Deconstruct" or "<Clone>$" || (m.IsSpecialName && !m.Name.StartsWith("op_", StringComparison.Ordinal) && m is not ConstructorInfo)));
                string letter = member switch { PropertyInfo => "P", FieldInfo => "F", EventInfo => "E", _ => "M" };
                string called = member is ConstructorInfo ? "#ctor" : member.Name;
                bool generic = member is MethodInfo { IsGenericMethodDefinition: true };
                if (!made && !names.Contains($"{letter}:{home}.{called}") && !(generic && documented.Any(d => d.StartsWith($"{letter}:{home}.{called}``", StringComparison.Ordinal))))
                {
                    bare.Add($"{letter}:{home}.{called}");
                }
            }
        }

        Assert.Empty(bare);
    }
}
