using Lugwork;
using Lugwork.Reading;
using SpecToNeeds;

// A spec sheet in, the frame as JSON and its needs sheet out; or a shop's list in, and what of it can be read.
const string Help = "Use: SpecToNeeds SHEET.txt|.html|.md, SpecToNeeds LIST.csv, SpecToNeeds --ask, or SpecToNeeds --make-list LIST.csv";
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
