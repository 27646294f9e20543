using System.Text.Json.Nodes;

namespace Lugwork.Tests.Builds;

/// <summary>The thirty whole builds, with fields set or taken out.</summary>
internal static class WholeBuilds
{
    private static readonly string Folder = Path.Combine(BuildFileTests.Root(), "tests", "Lugwork.Tests", "Builds", "Whole");

    /// <summary>A build by the number that its file begins with: "frame.headAngle=65" sets a field, "-headset.code" takes one out.</summary>
    public static Build Load(string number, params string[] changes)
    {
        JsonNode file = JsonNode.Parse(File.ReadAllText(Directory.GetFiles(Folder, number + "-*.json").Single()))!;
        foreach (string change in changes)
        {
            string[] sides = change.TrimStart('-').Split('=', 2);
            string[] path = sides[0].Split('.');
            JsonObject part = file["parts"]![path[0]]!.AsObject();
            if (change[0] == '-')
            {
                Assert.True(part.Remove(path[1]), change);
            }
            else
            {
                part[path[1]] = sides[1];
            }
        }

        return BuildFile.Read(file.ToJsonString());
    }

    public static Fit Of(Build build, string joint) => build.Check().Findings.Single(f => f.Joint!.Id == joint);
}
