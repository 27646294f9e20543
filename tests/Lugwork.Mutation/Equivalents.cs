namespace Lugwork.Mutation;

/// <summary>Changes that change nothing that can be seen, each read by someone: file, change and reason, a line each in Equivalent.txt.</summary>
internal sealed class Equivalents
{
    private readonly HashSet<string> _all = [];

    public static Equivalents Read()
    {
        using StreamReader reader = new(typeof(Equivalents).Assembly.GetManifestResourceStream("Equivalent")!);
        Equivalents read = new();
        while (reader.ReadLine() is { } line)
        {
            string[] words = line.Split(" | ");
            if (words.Length == 3)
            {
                read._all.Add($"{words[0]} | {words[1]}");
            }
        }

        return read;
    }

    public bool Have(Place place) => _all.Contains($"{place.Path} | {place.Change}");
}
