namespace Lugwork.Mutation;

/// <summary>Changes that change nothing that can be seen, each read by someone: file, line of code, change and reason, parted by tabs, a line each in Equivalent.txt.</summary>
internal sealed class Equivalents
{
    private readonly HashSet<string> _all = [];

    public static Equivalents Read()
    {
        using StreamReader reader = new(typeof(Equivalents).Assembly.GetManifestResourceStream("Equivalent")!);
        Equivalents read = new();
        while (reader.ReadLine() is { } line)
        {
            string[] words = line.Split('\t');
            if (words.Length == 4)
            {
                read._all.Add(string.Join('\t', words[..3]));
            }
        }

        return read;
    }

    public bool Have(Place place) => _all.Contains($"{place.Path}\t{place.Code}\t{place.Change}");
}
