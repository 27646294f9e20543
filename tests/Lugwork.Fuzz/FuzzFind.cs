using System.Globalization;
using System.Text;

namespace Lugwork.Fuzz;

/// <summary>An input that does what no input may do.</summary>
/// <param name="Kind">What tells it from others: the law, or the exception and the place that threw it.</param>
/// <param name="Input">The input, as short as it could be made.</param>
/// <param name="What">What came out.</param>
internal sealed record FuzzFind(string Kind, byte[] Input, string What)
{
    /// <summary>The failure of an input; null where it does what it should.</summary>
    public static FuzzFind? Of(FuzzTarget target, byte[] input)
    {
        try
        {
            target.Run(input);
            return null;
        }
        catch (Exception e)
        {
            string place = e is LawBrokenException law ? law.Law : e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("at Lugwork.", StringComparison.Ordinal))?.Trim() ?? "";
            return new($"{e.GetType().Name} {place}", input, e.ToString());
        }
    }

    /// <summary>The same failure with as little input as a few thousand tries find.</summary>
    public FuzzFind Shorter(FuzzTarget target)
    {
        FuzzFind least = this;
        int tries = 3_000;
        for (int size = Math.Max(1, Input.Length / 2); size > 0 && tries > 0; size /= 2)
        {
            for (int at = 0; at + size <= least.Input.Length && tries > 0; tries--)
            {
                byte[] without = [.. least.Input[..at], .. least.Input[(at + size)..]];
                if (Of(target, without) is { } same && same.Kind == Kind)
                {
                    least = same;
                }
                else
                {
                    at += size;
                }
            }
        }

        return least;
    }

    public void Save(string folder, string target, int number)
    {
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, $"{target}-{number.ToString(CultureInfo.InvariantCulture)}");
        File.WriteAllBytes(file + ".input", Input);
        File.WriteAllText(file + ".txt", $"{Kind}\n\n{Encoding.UTF8.GetString(Input)}\n\n{What}\n");
    }
}
