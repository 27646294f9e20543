using System.Diagnostics;

namespace Lugwork.Mutation;

/// <summary>The copy in which the changes are built. The folder that this program stands in is only read.</summary>
internal sealed class WorkingCopy
{
    /// <summary>The projects whose tests look for the changes.</summary>
    private static readonly string[] _tests = ["Lugwork.Tests", "Lugwork.PublishedTables"];

    /// <summary>Where something is judged or computed; what is built from these answers is asked for by itself.</summary>
    private static readonly string[] _areas = ["Fits", "Measures", "BottomBrackets", "Brakes", "Builds", "Cockpit", "Drivetrain", "Geometry", "Hubs", "Seating", "Steering", "Suspension", "Tyres"];

    /// <summary>What is built from these answers, changed by itself alone.</summary>
    private static readonly string[] _above = ["Catalogues", "Drawing", "Notebooks", "Planning", "Reading", "Sources", "Workshop"];

    private readonly string[] _changed;

    private readonly string _folder;
    private readonly string _copy;
    private readonly string _root = Root();

    public WorkingCopy(string folder, bool above)
    {
        _changed = above ? _above : _areas;
        _folder = folder;
        _copy = Path.Combine(folder, "copy");
        Directory.CreateDirectory(_copy);
    }

    /// <summary>The folders in which the built tests are.</summary>
    public IEnumerable<string> Built => _tests.Select(t => Path.Combine(_copy, "artifacts", "bin", t, "debug"));

    /// <summary>Files of tests that are not as they were in the run before.</summary>
    public List<string> Renewed { get; } = [];

    /// <summary>Every place that can be changed, in an order that stays: its index is the number of its switch.</summary>
    public List<Place> Places() => [.. _changed.SelectMany(Sources).SelectMany(f => MutantFinder.In(f, File.ReadAllText(Path.Combine(_root, f))))];

    /// <summary>Copies what is new, builds every change behind its switch, and says which of them are code.</summary>
    public HashSet<int> Build(List<Place> places)
    {
        string built = Path.Combine(_folder, "built.txt");
        bool again = File.Exists(built);
        string begun = Path.Combine(_folder, "begun.txt");
        HashSet<int> left = File.Exists(built) || File.Exists(begun) ? Numbers(again ? built : begun) : [.. Enumerable.Range(0, places.Count)];
        HashSet<string> changed = [.. _changed.SelectMany(Sources)];
        string[] files = Said(_root, "git", "ls-files -co --exclude-standard -- src/Lugwork tests/Lugwork.Tests tests/Lugwork.Fuzz/Targets tests/Lugwork.PublishedTables samples *.props *.json *.slnx *.md .editorconfig").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        foreach (string file in files.Where(f => File.Exists(Path.Combine(_root, f))))
        {
            bool isNew = Put(Path.Combine(changed.Contains(file) ? "../before" : ".", file), File.ReadAllBytes(Path.Combine(_root, file)));
            if (isNew && again && file.StartsWith("src/Lugwork/", StringComparison.Ordinal))
            {
                throw new InvalidOperationException($"{file} is not as it was when the copy was built: a new folder is needed");
            }

            if (isNew && again)
            {
                Renewed.Add(file);
            }
        }

        if (!again)
        {
            Put("src/Lugwork/Mutant.cs", Resource("Mutant"));
            Must("restore " + "src/Lugwork");
            BuildLibrary(places, left, begun);
        }

        if (!again || Renewed.Count > 0)
        {
            foreach (string test in _tests)
            {
                Must($"restore tests/{test}");
                Must($"build tests/{test} --no-restore -v q -clp:ErrorsOnly -p:RunAnalyzers=false -p:TreatWarningsAsErrors=false");
            }

            Keep(built, left);
        }

        return left;
    }

    private static HashSet<int> Numbers(string file) => [.. File.ReadLines(file).Select(int.Parse)];

    private static void Keep(string file, HashSet<int> numbers) => File.WriteAllLines(file, numbers.Order().Select(n => n.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    private void BuildLibrary(List<Place> places, HashSet<int> left, string begun)
    {
        for (int round = 0; round < 20; round++)
        {
            ILookup<string, int> ofFile = left.ToLookup(n => places[n].Path);
            foreach (string file in _changed.SelectMany(Sources))
            {
                string text = MutantWriter.Write(File.ReadAllText(Path.Combine(_folder, "before", file)), ofFile[file].Order().Select(n => (n, places[n])));
                Put(file, System.Text.Encoding.UTF8.GetBytes(text));
            }

            (int code, string said) = Start(_copy, "dotnet", "build src/Lugwork --no-restore -v q -clp:ErrorsOnly -p:RunAnalyzers=false -p:TreatWarningsAsErrors=false");
            if (code == 0)
            {
                return;
            }

            HashSet<int> wrong = Blame.Of(_copy, said);
            int before = left.Count;
            left.ExceptWith(wrong);
            Keep(begun, left);
            Console.WriteLine($"  round {round + 1}: {before - left.Count} changes are no code");
            if (before == left.Count)
            {
                throw new InvalidOperationException($"the copy does not build, and no change is to blame: {said[..Math.Min(said.Length, 2000)]}");
            }
        }

        throw new InvalidOperationException("the copy did not build after twenty rounds");
    }

    private IEnumerable<string> Sources(string area) =>
        Directory.GetFiles(Path.Combine(_root, "src", "Lugwork", area), "*.cs").Select(f => Path.GetRelativePath(_root, f).Replace('\\', '/')).Order(StringComparer.Ordinal);

    /// <summary>Writes a file of the copy where it is not the same already.</summary>
    private bool Put(string path, byte[] content)
    {
        string to = Path.GetFullPath(Path.Combine(_copy, path));
        if (File.Exists(to) && File.ReadAllBytes(to).AsSpan().SequenceEqual(content))
        {
            return false;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        File.WriteAllBytes(to, content);
        return true;
    }

    private void Must(string words)
    {
        (int code, string said) = Start(_copy, "dotnet", words);
        if (code != 0)
        {
            throw new InvalidOperationException($"dotnet {words}: exit {code}: {said}");
        }
    }

    private static string Said(string folder, string program, string words) => Start(folder, program, words).Said;

    private static (int Code, string Said) Start(string folder, string program, string words)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, words) { WorkingDirectory = folder, RedirectStandardOutput = true })!;
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said);
    }

    private static byte[] Resource(string name)
    {
        using Stream stream = typeof(WorkingCopy).Assembly.GetManifestResourceStream(name)!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private static string Root()
    {
        string at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "Lugwork.slnx")))
        {
            at = Path.GetDirectoryName(at) ?? throw new DirectoryNotFoundException("Lugwork.slnx is in no folder above this program");
        }

        return at;
    }
}
