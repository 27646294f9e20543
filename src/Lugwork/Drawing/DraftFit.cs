namespace Lugwork.Drawing;

/// <summary>What the joints of a build say, one by one: a drawing tells of a few, and does not judge the rest.</summary>
internal static class DraftFit
{
    private static readonly Dictionary<string, int> Numbers = JointTable.All.Select((joint, number) => (joint.Id, number)).ToDictionary(StringComparer.Ordinal);

    /// <summary>The judged joint; null where a slot is empty, or where nobody looked at what it asks.</summary>
    public static Fit? Of(Build build, string id) =>
        Numbers.TryGetValue(id, out int number) ? build.FitAt(number) : throw new ArgumentException($"no joint has the id {id}", nameof(id));
}
