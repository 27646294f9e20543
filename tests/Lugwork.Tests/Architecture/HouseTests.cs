using System.Reflection;
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
        Source[] named = [.. typeof(Sources).GetProperties().Where(p => p.PropertyType == typeof(Source)).Select(p => (Source)p.GetValue(null)!)];
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
            .Where(t => !t.Name.Contains('<', StringComparison.Ordinal) && t.Namespace?.StartsWith("Lugwork", StringComparison.Ordinal) == true && t != typeof(BuildJson))
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
}
