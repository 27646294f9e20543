using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Lugwork.Mutation;

/// <summary>Known changes of a known line are written, built and told apart from the line as it was.</summary>
internal static class SelfTest
{
    private const string Line = """
        internal static class Known
        {
            public static string Judge(int length, int limit) => limit == 0 || length <= limit + 2 ? "fits" : length is > 90 and < 100 ? "ask" : "does not fit";
        }
        """;

    public static int Run()
    {
        Place[] places = [.. MutantFinder.In("Known.cs", Line)];
        using StreamReader reader = new(typeof(SelfTest).Assembly.GetManifestResourceStream("Mutant")!);
        CSharpCompilation built = CSharpCompilation.Create(
            "Known",
            [CSharpSyntaxTree.ParseText(MutantWriter.Write(Line, places.Select((p, i) => (i, p)))), CSharpSyntaxTree.ParseText(reader.ReadToEnd())],
            [MetadataReference.CreateFromFile(typeof(object).Assembly.Location)],
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary));
        using MemoryStream stream = new();
        if (built.Emit(stream) is { Success: false } failed)
        {
            Console.Error.WriteLine(string.Join('\n', failed.Diagnostics));
            return 1;
        }

        Assembly assembly = Assembly.Load(stream.ToArray());
        MethodInfo judge = assembly.GetType("Known")!.GetMethod("Judge")!;
        FieldInfo on = assembly.GetType("Lugwork.Mutant")!.GetField("On", BindingFlags.Static | BindingFlags.NonPublic)!;
        int[][] asked = [[12, 10], [13, 10], [5, 0], [91, 10], [90, 10], [99, 10], [100, 10]];
        string Answers(int number)
        {
            on.SetValue(null, number);
            return string.Join(", ", asked.Select(a => judge.Invoke(null, [.. a.Cast<object>()])));
        }

        string before = Answers(-1);
        string[] unseen = [.. places.Where((_, i) => Answers(i) == before).Select(p => p.Change)];
        string expected = "fits, does not fit, fits, ask, does not fit, ask, does not fit";
        Console.WriteLine($"{places.Length} changes, {places.Length - unseen.Length} found; not found: {string.Join("; ", unseen)}");
        return before == expected && places.Length > 10 && unseen.Length == 0 ? 0 : 1;
    }
}
