using System.Text;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Architecture;

/// <summary>
/// A judgement changes knowingly or not at all: <c>verdicts.txt</c> has a line for each joint that any other answer of it changes. It says nothing
/// of what is right, which the checks against sources do.
/// </summary>
public sealed class VerdictRecordTests
{
    private static readonly string Committed = Path.Combine(SchemaBench.Root, "tests", "Lugwork.Tests", "Architecture", "verdicts.txt");

    public static TheoryData<string> Joints => [.. JointTable.All.Select(j => j.Id)];

    [Theory]
    [MemberData(nameof(Joints))]
    public void A_joint_says_what_it_said(string id)
    {
        VerdictRecord now = VerdictRecord.Of(JointTable.All.Single(j => j.Id == id));
        string? then = File.ReadLines(Committed).SingleOrDefault(l => l.StartsWith(id + " ", StringComparison.Ordinal));
        if (now.Line == then)
        {
            return;
        }

        string folder = Path.Combine(AppContext.BaseDirectory, "verdicts");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, id + ".txt"), now.Told, new UTF8Encoding(false));
        Assert.Fail($"{id} answers otherwise than {Committed} has it.\nThen: {then}\nNow:  {now.Line}\nEvery answer of now stands in {folder}; the same test on the commit before, with its line taken out, writes those of then. If it is meant, copy the line over, and CHANGELOG.md has a row for it.");
    }

    [Fact]
    public void Each_line_is_of_a_joint() =>
        Assert.Equal(JointTable.All.Select(j => j.Id).Order(StringComparer.Ordinal), File.ReadLines(Committed).Select(l => l.Split(' ')[0]));
}
