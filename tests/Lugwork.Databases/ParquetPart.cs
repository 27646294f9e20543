using Lugwork.Catalogues;

namespace Lugwork.Databases;

/// <summary>One of several processes: the candidates of some slots, out of Parquet files, as lines.</summary>
internal static class ParquetPart
{
    public static int Run(string folder, string[] slots)
    {
        using Engine engine = Engine.Open("DuckDB");
        engine.Run(Recipes.Of("parquet").Replace("{folder}", folder, StringComparison.Ordinal));
        string some = $"WHERE n.slot IN ({string.Join(", ", slots.Select(s => $"'{s}'"))})\nGROUP BY";
        foreach (Candidate found in engine.Candidates(FitRelations.CandidateQuery.Replace("GROUP BY", some, StringComparison.Ordinal)))
        {
            Console.Write(FormattableString.Invariant($"{found.Frame}\t{found.Slot}\t{found.Part}\n"));
        }

        return 0;
    }
}
