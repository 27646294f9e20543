using System.Globalization;

namespace Lugwork.Fuzz;

/// <summary>What was asked for on the command line.</summary>
internal sealed class FuzzArguments
{
    /// <summary>Name of a target, or "all".</summary>
    public string Target { get; private set; } = "";

    /// <summary>How long each target runs, seconds.</summary>
    public double Seconds { get; private set; } = 10;

    /// <summary>Start of the draws.</summary>
    public int Seed { get; private set; } = 1;

    /// <summary>Folder where inputs that reached something new are kept, and taken from by the next run; null keeps none.</summary>
    public string? Corpus { get; private set; }

    /// <summary>Folder for what went wrong.</summary>
    public string Finds { get; private set; } = Path.Combine("artifacts", "fuzz");

    /// <summary>A file to run once, as it is.</summary>
    public string? Replay { get; private set; }

    /// <summary>Inputs come from afl-fuzz, which started this process.</summary>
    public bool IsUnderAfl { get; private set; }

    public static FuzzArguments? Parse(string[] args)
    {
        FuzzArguments told = new();
        for (int i = 0; i < args.Length; i++)
        {
            string? next = i + 1 < args.Length ? args[i + 1] : null;
            switch (args[i])
            {
                case "--seconds" when double.TryParse(next, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double seconds):
                    told.Seconds = seconds;
                    i++;
                    break;
                case "--seed" when int.TryParse(next, NumberStyles.None, CultureInfo.InvariantCulture, out int seed):
                    told.Seed = seed;
                    i++;
                    break;
                case "--corpus" when next is not null:
                    told.Corpus = next;
                    i++;
                    break;
                case "--finds" when next is not null:
                    told.Finds = next;
                    i++;
                    break;
                case "--replay" when next is not null:
                    told.Replay = next;
                    i++;
                    break;
                case "--afl":
                    told.IsUnderAfl = true;
                    break;
                case var name when told.Target.Length == 0 && !name.StartsWith('-'):
                    told.Target = name;
                    break;
                default:
                    return null;
            }
        }

        return told.Target.Length > 0 ? told : null;
    }

    public static int Usage()
    {
        Console.Error.WriteLine("Lugwork.Fuzz TARGET|all [--seconds N] [--seed N] [--corpus FOLDER] [--finds FOLDER] | TARGET --replay FILE | TARGET --afl");
        return 2;
    }
}
