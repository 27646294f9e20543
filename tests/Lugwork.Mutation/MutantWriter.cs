using System.Globalization;
using System.Text;

namespace Lugwork.Mutation;

/// <summary>Writes mutants into the text of a file, each behind the switch: what stands inside another is written in the part that is not changed.</summary>
internal static class MutantWriter
{
    public static string Write(string text, IEnumerable<(int Number, Place Place)> mutants)
    {
        // From the inside out and from the back: a place that lies inside another is done before it, and moves only its end.
        List<(int Number, int Start, int Length, Place Place)> open = [.. mutants.Select(m => (m.Number, m.Place.Start, m.Place.Length, m.Place)).OrderBy(m => m.Length).ThenByDescending(m => m.Start)];
        StringBuilder changed = new(text);
        for (int i = 0; i < open.Count; i++)
        {
            (int number, int start, int length, Place place) = open[i];
            string there = changed.ToString(start, length);
            string so = string.Create(CultureInfo.InvariantCulture, $"global::Lugwork.Mutant.Is({number})");
            string written = place.IsStatement ? $"if (!{so}) {{ {there} }}" : $"({so} ? {place.Text} : {there})";
            changed.Remove(start, length).Insert(start, written);
            int more = written.Length - length;
            for (int j = i + 1; j < open.Count; j++)
            {
                (int n, int s, int l, Place p) = open[j];
                open[j] = s > start ? (n, s + more, l, p) : s + l >= start + length ? (n, s, l + more, p) : open[j];
            }
        }

        return changed.ToString();
    }
}
