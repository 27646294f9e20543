using System.Collections.Immutable;
using System.Text.Json;

namespace Lugwork.Fuzz;

/// <summary>Build files.</summary>
internal sealed class BuildTarget : TextTarget
{
    private static readonly JsonDocumentOptions AsRead = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    public override string Name => "build";

    public override int MostBytes => 8_000;

    public override IEnumerable<byte[]> Seeds => FuzzSeeds.Of(Name).Concat(FuzzSeeds.In("samples", "FrameUp", "builds"));

    public override IEnumerable<byte[]> Words => Slot.All.Select(s => $"\"{s.Key}\": {{}}, ")
        .Concat(Slot.All.SelectMany(s => PartForms.Of(s).Fields).Select(f => f.Key).Distinct())
        .Concat(["\"parts\": {", "\"format\": 1,", "\"smallParts\": [", "\"waivers\": [{\"joint\": ", "\"asBuilt\": [{\"slot\": ", "\"field\": ", "\"kind\": \"measured\"", "\"kind\": \"cut\"", "\"was\": ", "\"old\": true", "\"on\": \"2026-05-01\"", "\"cut\": {\"value\": ", "\"note\": \"\"", "null", "true", "[]", "{}", "\"unknown\"", "\"none\"", "\"\\uD800\"", "// x\n", "/* x */"]).Select(Bytes);

    /// <summary>The committed builds, as the library reads them.</summary>
    public static IEnumerable<Build> Builds => FuzzSeeds.In("samples", "FrameUp", "builds").Select(f => BuildFile.Read(System.Text.Encoding.UTF8.GetString(f)));

    public override void Run(string text)
    {
        bool good = BuildFile.TryRead(text, out Build? build, out ImmutableArray<SpecProblem> problems);
        Law.Holds(good == problems.IsEmpty && good == build is not null, "a build is refused with its problems", text);
        foreach (SpecProblem problem in problems)
        {
            Law.Holds(problem.Position >= 0 && problem.Reason.Length > 0 && problem.Where.Length > 0, "a problem of a build has place and reason", problem.ToString());
        }

        if (good)
        {
            Whole(build!);
            NothingLost(build!, text);
            Answers(build!, Draw(text, 8));
        }
    }

    /// <summary>What is written of a build reads back to the build.</summary>
    public static void Whole(Build build)
    {
        string written = BuildFile.Write(build);
        Law.Holds(BuildFile.TryRead(written, out Build? back, out ImmutableArray<SpecProblem> problems), "what is written of a build is read", $"{string.Join(", ", problems)} in {written}");
        Law.Same(written, BuildFile.Write(back!), "a build is written the same again");
        foreach (Slot slot in Slot.All)
        {
            Law.Holds(Equals(build[slot], back![slot]), "what is written of a build has the same parts", $"{build[slot]} and {back[slot]}");
        }
    }

    private static void NothingLost(Build build, string text)
    {
        using JsonDocument file = JsonDocument.Parse(text.TrimStart('\uFEFF'), AsRead);
        JsonElement root = file.RootElement;
        if (root.TryGetProperty("parts", out JsonElement parts))
        {
            foreach (JsonProperty part in parts.EnumerateObject().Where(p => p.Value.ValueKind != JsonValueKind.Null))
            {
                Law.Holds(build[Slot.Find(part.Name)!] is not null, "no part of a file is lost", part.Name);
            }
        }

        Law.Same(root.TryGetProperty("name", out JsonElement name) ? name.GetString() ?? "" : "", build.Name, "the name of a file is kept");
        Law.Holds(Count(root, "waivers") == build.Waivers.Length, "no waiver of a file is lost", text);
        Law.Holds(Count(root, "asBuilt") <= build.AsBuilt.Length + build.OldReadings.Length, "nothing measured or cut is lost", text);
    }

    private static int Count(JsonElement root, string property) => root.TryGetProperty(property, out JsonElement list) && list.ValueKind == JsonValueKind.Array ? list.GetArrayLength() : 0;

    /// <summary>What is asked of a build has an answer, whatever the build is.</summary>
    private static void Answers(Build build, int which)
    {
        FitReport report = build.Check();
        Law.Holds(report.ToString().Length > 0, "a report says something");
        switch (which)
        {
            case 0:
                Law.Holds(build.Needs().ToString().Length > 0, "a needs sheet says something");
                break;
            case 1:
                using (JsonDocument.Parse(ReportFile.Write(report)))
                {
                    break;
                }

            case 2:
                Law.Holds(build.WorkPlan().ToString().Length > 0, "a work plan says something");
                break;
            case 3:
                Law.Holds(!build.SmallParts().IsDefault, "a build has a list of small parts");
                break;
        }
    }
}
