using System.Reflection;
using System.Runtime.Loader;

namespace Lugwork.Mutation;

/// <summary>The library and its tests, loaded afresh, so that every table is made again; what they use is loaded once.</summary>
internal sealed class TestBench : IDisposable
{
    /// <summary>What is loaded once: it takes long to start, and keeps nothing of what it was asked.</summary>
    private static readonly string[] _shared = ["xunit", "FsCheck", "FSharp", "UnitsNet"];

    private readonly Bench _alone;
    private readonly Dictionary<string, Assembly> _tests = [];
    private readonly bool[] _seen;

    /// <param name="folders">Where the built tests are; the first one's library is taken.</param>
    /// <param name="number">The change that is on; -1 for none.</param>
    public TestBench(string[] folders, int number)
    {
        _alone = new(folders);
        Type mutant = _alone.LoadFromAssemblyPath(Path.Combine(folders[0], "Lugwork.dll")).GetType("Lugwork.Mutant", throwOnError: true)!;
        mutant.GetField("On", BindingFlags.Static | BindingFlags.NonPublic)!.SetValue(null, number);
        _seen = (bool[])mutant.GetField("Seen", BindingFlags.Static | BindingFlags.NonPublic)!.GetValue(null)!;
        foreach (string folder in folders)
        {
            string name = Path.GetFileName(Path.GetDirectoryName(folder))!;
            _tests[name] = _alone.LoadFromAssemblyPath(Path.Combine(folder, name + ".dll"));
        }
    }

    /// <summary>What this program was built against is taken from beside the tests.</summary>
    public static void Share(string[] folders) => AssemblyLoadContext.Default.Resolving += (context, name) =>
        folders.Select(f => Path.Combine(f, name.Name + ".dll")).Where(File.Exists).Select(context.LoadFromAssemblyPath).FirstOrDefault();

    /// <summary>Folders whose tests ask for what is built from the judgement, and would take most of the time.</summary>
    private static readonly string[] _above = ["Catalogues", "Drawing", "Hostile", "Notebooks", "Planning", "Reading", "Workshop"];

    /// <summary>Folders whose tests go through all of the library, or hold it against what is published.</summary>
    private static readonly string[] _both = ["Architecture", "Docs", "PublishedTables"];

    /// <param name="above">The tests of what is built from the judgement; otherwise those of the judgement.</param>
    public IEnumerable<string> Classes(bool above) =>
        _tests.SelectMany(t => t.Value.GetTypes().Where(c => !c.IsAbstract && IsAsked(c.Namespace?.Split('.')[^1] ?? "", above) && TestRun.Of(c).Any()).Select(c => $"{t.Key}|{c.FullName}")).Order(StringComparer.Ordinal);

    private static bool IsAsked(string folder, bool above) => _both.Contains(folder) || above == _above.Contains(folder);

    /// <summary>A class of tests, which from now on finds its files where it was built.</summary>
    public Type Class(string name)
    {
        Assembly tests = _tests[name.Split('|')[0]];
        AppContext.SetData("APP_CONTEXT_BASE_DIRECTORY", Path.GetDirectoryName(tests.Location) + Path.DirectorySeparatorChar);
        return tests.GetType(name.Split('|')[1], throwOnError: true)!;
    }

    /// <summary>The changes come by since it was last asked.</summary>
    public IEnumerable<int> Seen()
    {
        for (int i = 0; i < _seen.Length; i++)
        {
            if (_seen[i])
            {
                _seen[i] = false;
                yield return i;
            }
        }
    }

    public void Dispose() => _alone.Unload();

    /// <summary>Looks beside the tests before it asks the process: what keeps a register, such as of schemas, is never shared.</summary>
    private sealed class Bench(string[] folders) : AssemblyLoadContext("bench", isCollectible: true)
    {
        protected override Assembly? Load(AssemblyName name) => _shared.Any(s => name.Name!.StartsWith(s, StringComparison.Ordinal))
            ? null
            : folders.Select(f => Path.Combine(f, name.Name + ".dll")).Where(File.Exists).Select(LoadFromAssemblyPath).FirstOrDefault();
    }
}
