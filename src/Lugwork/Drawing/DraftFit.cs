namespace Lugwork.Drawing;

/// <summary>What the joints of a build say, one by one: a drawing tells of a few, and does not judge the rest.</summary>
internal static class DraftFit
{
    /// <summary>The judged joint; null where a slot is empty, or where nobody looked at what it asks.</summary>
    public static Fit? Of(Build build, string id)
    {
        for (int i = 0; i < JointTable.All.Length; i++)
        {
            Joint joint = JointTable.All[i];
            if (joint.Id == id)
            {
                return joint.IsFilled(build) ? new Fit(build, i, joint.Judge(build)) : null;
            }
        }

        throw new ArgumentException($"no joint has the id {id}", nameof(id));
    }
}
