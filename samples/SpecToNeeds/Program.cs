using Lugwork;
using Lugwork.Reading;
using SpecToNeeds;

// A spec sheet in, the frame as JSON and its needs sheet out; or a shop's list in, and what of it can be read.
const string Help = """
    Use: SpecToNeeds SHEET
           reads a frame's spec sheet (.txt, .html or .md): what was read, what is in doubt or left over,
           the frame as a build file, what it needs, and what to ask next
         SpecToNeeds LIST.csv
           reads a shop's list with the columns article;part;text: how many rows can be read, and why not the rest
         SpecToNeeds --ask
           asks one question about a frame after the other and says how each answer was understood, then writes
           the build file and what the frame needs; Enter passes a question, "done" ends
         SpecToNeeds --make-list LIST.csv
           writes an invented list of 5,000 rows, always the same
         SpecToNeeds --help, -h
           prints this

    Exit codes: 0 done, also where something on the sheet stays in doubt; 2 wrong use, or no such file.
    """;
switch (args)
{
    case ["--help" or "-h"]:
        Console.WriteLine(Help);
        return 0;
    case ["--ask"]:
        Dialogue.Run(Console.In, Console.Out);
        return 0;
    case ["--make-list", var path]:
        File.WriteAllLines(path, ShopList.Make(5_000, seed: 5));
        return 0;
    case [var file] when !File.Exists(file):
        Console.Error.WriteLine($"There is no file {file}.");
        return 2;
    case [var file] when file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase):
        SpecSummary summary = SpecReader.Read(ShopList.Read(file));
        Console.WriteLine(summary);
        return 0;
    case [var file]:
        SheetReport.Write(SpecSheet.ReadFrame(SheetFile.Text(file)), Console.Out);
        return 0;
    default:
        Console.Error.WriteLine(Help);
        return 2;
}
