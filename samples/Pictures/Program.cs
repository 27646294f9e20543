using System.Collections.Immutable;
using System.Net;
using System.Text;
using Lugwork;
using Lugwork.Drawing;
using PicturesSample;

const string Help = """
    Pictures draws builds to scale: a page for each, with every drawing that the build has parts for.

    dotnet run --project samples/Pictures -- FOLDER FILE... [--charts] [--help]

      FOLDER    where the pages are written; made where it is not there
      FILE      build files (JSON); the page of x.json is x.html
      --charts  a page of charts too, charts.html: a frame before and after a change, gears, price and mass
      --help    this text

    Exit code: 0 the pages are written, 2 bad input.
    """;

bool charts = args.Contains("--charts");
string[] given = [.. args.Where(a => !a.StartsWith('-'))];
if (args.Any(a => a is "--help" or "-h"))
{
    Console.WriteLine(Help);
    return 0;
}

if (args.FirstOrDefault(a => a.StartsWith('-') && a != "--charts") is { } unknown)
{
    return Bad($"'{unknown}' is not understood; --help tells what is.");
}

if (given.Length < (charts ? 1 : 2))
{
    return Bad("a folder and at least one build file are expected; --help tells more.");
}

try
{
    Directory.CreateDirectory(given[0]);
    foreach (string file in given.Skip(1))
    {
        if (new FileInfo(file) is { Exists: true } found && found.Length > 2L * BuildFile.MostBytes)
        {
            return Bad($"{file}: the file is too large; a build file is at most 1 MB.");
        }

        if (!BuildFile.TryRead(File.ReadAllText(file), out Build? build, out ImmutableArray<SpecProblem> problems))
        {
            return Bad($"{file}: {string.Join(Environment.NewLine + "  ", problems.Select(p => p.ToString()))}");
        }

        Write(Path.GetFileNameWithoutExtension(file), build!.Name, Drawings.All(build));
    }

    if (charts)
    {
        Write("charts", "Charts", Charts.All);
    }

    return 0;
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    return Bad(e.Message);
}

void Write(string name, string title, ImmutableArray<LineDrawing> drawings)
{
    StringBuilder page = new($$"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8" />
        <meta name="color-scheme" content="light dark" />
        <title>{{WebUtility.HtmlEncode(title)}}</title>
        <style>
        :root { color-scheme: light dark; }
        body { margin: 5mm; font-family: sans-serif; }
        main { display: flex; flex-wrap: wrap; gap: 5mm; align-items: flex-start; }
        figure { margin: 0; border: 1px solid; break-inside: avoid; }
        figure svg { display: block; max-width: 100%; height: auto; }
        </style>
        </head>
        <body>
        <h1>{{WebUtility.HtmlEncode(title)}}</h1>
        <main>

        """);
    foreach (LineDrawing drawing in drawings)
    {
        page.Append("<figure>\n").Append(drawing.ToSvg()).Append("\n</figure>\n");
    }

    string path = Path.Combine(given[0], name + ".html");
    File.WriteAllText(path, page.Append("</main>\n</body>\n</html>\n").ToString());
    Console.WriteLine($"{path}: {drawings.Length} drawings, {drawings.Sum(d => d.Dimensions.Count(f => f.Figure is not null))} figures, {drawings.Sum(d => d.Dimensions.Count(f => f.Figure is null))} not known");
}

static int Bad(string message)
{
    Console.Error.WriteLine(message);
    return 2;
}
