using Answers;

if (args is ["--help" or "-h"])
{
    Console.WriteLine("Answers runs the code of the pages in src/Lugwork/docs.\n\ndotnet run --project samples/Answers [-- NAME]\n\nNames: " + string.Join(", ", AnswerList.All.Keys.Order(StringComparer.Ordinal)));
    return 0;
}

if (args.Length > 1 || (args is [var name] && !AnswerList.All.ContainsKey(name)))
{
    Console.Error.WriteLine("One name is expected, or none for all; --help lists them.");
    return 2;
}

foreach (string one in args.Length == 1 ? args : [.. AnswerList.All.Keys.Order(StringComparer.Ordinal)])
{
    Console.WriteLine($"-- {one}");
    AnswerList.All[one]();
    Console.WriteLine();
}

return 0;
