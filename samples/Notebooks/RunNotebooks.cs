#:property PublishAot=false
// Runs the code cells of the notebooks in a folder without a notebook: as file-based programs against the package.
//
//   dotnet run RunNotebooks.cs -- FOLDER [--in FOLDER] [--write]
//
//   FOLDER     the notebooks (*.ipynb), each with a program of the same name (*.cs), which is its cells one after the other
//   --in       where the programs are compiled and run; a nuget.config there says where the package is. Else a folder of its own.
//   --write    writes outputs and programs; without it what is stored has to be what comes out
//
// Exit code: 0 all is fresh, 1 something is not, 2 bad input.
using System.Diagnostics;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

bool write = args.Contains("--write");
int inAt = Array.IndexOf(args, "--in");
if (args.Length == 0 || !Directory.Exists(args[0]) || inAt == args.Length - 1)
{
    Console.Error.WriteLine("dotnet run RunNotebooks.cs -- FOLDER [--in FOLDER] [--write]");
    return 2;
}

string work = inAt > 0 ? Path.GetFullPath(args[inAt + 1]) : Directory.CreateTempSubdirectory("notebooks").FullName;
Notebook[] notebooks = [.. Directory.GetFiles(args[0], "*.ipynb").Order(StringComparer.Ordinal).Select(Notebook.Read)];
if (notebooks.Length == 0)
{
    Console.Error.WriteLine($"{args[0]}: no notebook");
    return 2;
}

// All of them in one program that keeps what each cell shows, in both forms.
string all = Path.Combine(work, "AllNotebooks.cs");
File.WriteAllText(all, Programs.Recording(notebooks));
(int code, string shown) = Started.Dotnet(work, "run", all);
if (code != 0)
{
    Console.Error.WriteLine(shown);
    return 1;
}

JsonNode outputs = JsonNode.Parse(shown[shown.IndexOf('{', StringComparison.Ordinal)..])!;
int wrong = 0;
foreach (Notebook notebook in notebooks)
{
    JsonArray cells = outputs[notebook.Name]!.AsArray();
    string program = Programs.Plain(notebook);
    if (write)
    {
        notebook.Store(cells);
        File.WriteAllText(notebook.ProgramPath, program);
    }
    else
    {
        wrong += notebook.Differences(cells);
        if (!File.Exists(notebook.ProgramPath) || File.ReadAllText(notebook.ProgramPath) != program)
        {
            Console.Error.WriteLine($"{notebook.ProgramPath} is not the cells of {notebook.Name}");
            wrong++;
        }
    }

    // The program alone prints what the notebook shows as text.
    string alone = Path.Combine(work, Path.GetFileName(notebook.ProgramPath));
    File.WriteAllText(alone, program);
    (int exit, string printed) = Started.Dotnet(work, "run", alone);
    if (exit != 0 || printed.ReplaceLineEndings("\n") != Notebook.TextOf(cells))
    {
        Console.Error.WriteLine($"{alone} ends with {exit} and does not print what {notebook.Name} shows:\n{printed}");
        wrong++;
    }

    Console.WriteLine($"{notebook.Name}: {cells.Count} code cells, {cells.Sum(c => c!.AsArray().Count)} outputs{(write ? " written" : "")}");
}

Console.WriteLine(wrong == 0 ? "every stored output is what its cell gives" : $"{wrong} differ: run again with --write and look at the changes");
return wrong == 0 ? 0 : 1;

internal sealed class Notebook(string path, JsonNode root)
{
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, IndentSize = 1, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public string Name => Path.GetFileName(path);

    public string ProgramPath => Path.ChangeExtension(path, ".cs");

    public string[] Sources => [.. Code.Select(c => Whole(c["source"]))];

    private IEnumerable<JsonNode> Code => root["cells"]!.AsArray().Where(c => (string?)c!["cell_type"] == "code")!;

    public static Notebook Read(string path) => new(path, JsonNode.Parse(File.ReadAllText(path))!);

    public void Store(JsonArray cells)
    {
        foreach ((JsonNode cell, int at) in Code.Select((c, i) => (c, i)))
        {
            cell["execution_count"] = at + 1;
            cell["outputs"] = new JsonArray([.. cells[at]!.AsArray().Select(o => Split(o!.DeepClone()))]);
        }

        File.WriteAllText(path, root.ToJsonString(Layout) + "\n");
    }

    public int Differences(JsonArray cells)
    {
        int wrong = 0;
        foreach ((JsonNode cell, int at) in Code.Select((c, i) => (c, i)))
        {
            JsonArray stored = new([.. cell["outputs"]!.AsArray().Select(o => Joined(o!.DeepClone()))]);
            if (!JsonNode.DeepEquals(stored, cells[at]))
            {
                Console.Error.WriteLine($"{Name}, code cell {at + 1}: the stored output is not what it gives:\n{TextOf(new JsonArray(cells[at]!.DeepClone()))}");
                wrong++;
            }
        }

        return wrong;
    }

    public static string TextOf(JsonArray cells) =>
        string.Concat(cells.SelectMany(c => c!.AsArray()).Select(o => (string?)o!["output_type"] == "stream" ? Whole(o["text"]) : Whole(o["data"]!["text/plain"]) + "\n"));

    // The format keeps a long text as a list of its lines.
    private static string Whole(JsonNode? text) => text is JsonArray lines ? string.Concat(lines.Select(l => (string)l!)) : (string)text!;

    private static JsonArray Lines(JsonNode? text)
    {
        string[] lines = Whole(text).Split('\n');
        return new([.. lines.Select((l, i) => i < lines.Length - 1 ? l + "\n" : l).Where(l => l.Length > 0).Select(l => (JsonNode)l)]);
    }

    private static JsonNode Split(JsonNode output) => Each(output, t => Lines(t));

    private static JsonNode Joined(JsonNode output) => Each(output, t => (JsonNode)Whole(t));

    private static JsonNode Each(JsonNode output, Func<JsonNode?, JsonNode> change)
    {
        if (output["text"] is { } stream)
        {
            output["text"] = change(stream);
        }

        if (output["data"] is JsonObject data)
        {
            foreach (string form in data.Select(d => d.Key).ToArray())
            {
                data[form] = change(data[form]);
            }
        }

        return output;
    }
}

internal static class Programs
{
    private const string Package = "#r \"nuget: ";

    // A reader's program: the cells, and display as plain text.
    public static string Plain(Notebook notebook)
    {
        StringBuilder text = new();
        Head(text, [notebook]);
        text.Insert(text.ToString().IndexOf("using ", StringComparison.Ordinal), $"// The code cells of {notebook.Name}, one after the other. RunNotebooks.cs writes this file.\n");
        text.Append(string.Join("\n", Bodies(notebook).Where(b => b.Length > 0)));
        text.Append("\nstatic void display(object shown) => Console.WriteLine(shown is System.Collections.IEnumerable list ? string.Join('\\n', list.Cast<object>()) : shown);\n");
        return text.ToString();
    }

    // All notebooks, each a function; what a cell shows is kept as a notebook would keep it.
    public static string Recording(Notebook[] notebooks)
    {
        StringBuilder text = new();
        Head(text, notebooks);
        text.Insert(0, "#:property PublishAot=false\n#:property NoWarn=CS8321;IL2026;IL2070;IL2072;IL2075;IL3050\n");
        for (int i = 0; i < notebooks.Length; i++)
        {
            text.Append($"Notebook{i}();\n");
        }

        text.Append("Recorder.Write();\n");
        for (int i = 0; i < notebooks.Length; i++)
        {
            text.Append($"\nstatic void Notebook{i}()\n{{\nRecorder.Begin(\"{notebooks[i].Name}\");\n");
            foreach (string body in Bodies(notebooks[i]))
            {
                text.Append("Recorder.Cell();\n").Append(body);
            }

            text.Append("Recorder.End();\n}\n");
        }

        return text.Append("\nstatic void display(object shown) => Recorder.Show(shown);\n\n").Append(Recorder).ToString();
    }

    private static void Head(StringBuilder text, Notebook[] notebooks)
    {
        string[] lines = [.. notebooks.SelectMany(n => n.Sources).SelectMany(s => s.Split('\n'))];
        foreach (string package in lines.Where(l => l.StartsWith(Package, StringComparison.Ordinal)).Distinct())
        {
            text.Append($"#:package {package[Package.Length..].TrimEnd('"').Replace(", ", "@", StringComparison.Ordinal)}\n");
        }

        foreach (string used in lines.Where(IsUsing).Distinct())
        {
            text.Append(used).Append('\n');
        }

        text.Append('\n');
    }

    private static IEnumerable<string> Bodies(Notebook notebook) =>
        notebook.Sources.Select(s => string.Join('\n', s.Split('\n').Where(l => !IsUsing(l) && !l.StartsWith('#'))).Trim('\n')).Select(b => b.Length > 0 ? b + "\n" : b);

    private static bool IsUsing(string line) => line.StartsWith("using ", StringComparison.Ordinal) && line.EndsWith(';') && !line.Contains('=', StringComparison.Ordinal);

    // How a notebook finds the forms of a value: by the plain name of an attribute, whoever declares it.
    private const string Recorder = """
        internal static class Recorder
        {
            private static readonly TextWriter Out = Console.Out;
            private static readonly System.Text.Json.Nodes.JsonObject All = [];
            private static System.Text.Json.Nodes.JsonArray _notebook = [];
            private static System.Text.Json.Nodes.JsonArray _cell = [];
            private static StringWriter _printed = new();

            public static void Begin(string name) => All[name] = _notebook = [];

            public static void Cell()
            {
                End();
                _notebook.Add((System.Text.Json.Nodes.JsonNode)(_cell = []));
            }

            public static void End()
            {
                if (_printed.ToString() is { Length: > 0 } text)
                {
                    _cell.Add((System.Text.Json.Nodes.JsonNode)new System.Text.Json.Nodes.JsonObject { ["name"] = "stdout", ["output_type"] = "stream", ["text"] = text });
                }

                Console.SetOut(_printed = new StringWriter { NewLine = "\n" });
            }

            public static void Show(object shown)
            {
                End();
                System.Text.Json.Nodes.JsonObject data = [];
                foreach (object attribute in shown.GetType().GetCustomAttributes(true).Where(a => a.GetType().Name == "TypeFormatterSourceAttribute"))
                {
                    object source = Activator.CreateInstance((Type)attribute.GetType().GetProperty("FormatterSourceType")!.GetValue(attribute)!)!;
                    foreach (object form in (System.Collections.IEnumerable)source.GetType().GetMethod("CreateTypeFormatters")!.Invoke(source, null)!)
                    {
                        StringWriter written = new();
                        if (form.GetType().GetMethod("Format")!.Invoke(form, [shown, written]) is true)
                        {
                            data[(string)form.GetType().GetProperty("MimeType")!.GetValue(form)!] = written.ToString();
                        }
                    }
                }

                if (data.Count != 2)
                {
                    throw new InvalidOperationException($"{shown.GetType()} is not shown as HTML and plain text");
                }

                _cell.Add((System.Text.Json.Nodes.JsonNode)new System.Text.Json.Nodes.JsonObject { ["data"] = data, ["metadata"] = new System.Text.Json.Nodes.JsonObject(), ["output_type"] = "display_data" });
            }

            public static void Write() => Out.WriteLine(All.ToJsonString());
        }
        """;
}

internal static class Started
{
    public static (int Code, string Output) Dotnet(string folder, params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet", arguments) { WorkingDirectory = folder, RedirectStandardOutput = true };
        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }
}
