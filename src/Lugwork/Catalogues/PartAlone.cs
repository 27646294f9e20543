namespace Lugwork.Catalogues;

/// <summary>One part in its slot and nothing beside it, as the judge reads parts.</summary>
internal sealed class PartAlone(Slot slot, Part part) : IParts
{
    public Part? At(Slot place) => place == slot ? part : null;

    public Joint JointAt(int number) => JointTable.All[number];

    public Account ToldAt(int number, Verdict verdict) => Account.Of(JointTable.All[number], this, verdict);

    /// <summary>Something of the part is outside the library, or contradicts itself, where no joint reads it: it never fits before its maker is asked.</summary>
    public static bool IsAskedAbout(Slot slot, Part part) => UnjudgedFields.Asked(new PartAlone(slot, part)) is not null;

    /// <summary>What is to be said of a part whatever it meets: the joints that ask for nothing but the part, and whether its maker is asked.</summary>
    public static Verdict VerdictOf(Slot slot, Part part)
    {
        Verdict worst = IsAskedAbout(slot, part) ? Verdict.NeedsMeasuring : Verdict.NotJudged;
        foreach (Joint joint in JointTable.All)
        {
            // What another part may take the word from is not said of the part alone.
            if (joint.Inputs.Any(i => i.Slot != slot) || !joint.GivesWay.IsEmpty)
            {
                continue;
            }

            CandidateRow row = default;
            uint stated = 0;
            for (int i = 0; i < joint.Inputs.Length; i++)
            {
                row[i] = joint.Inputs[i].Read(part);
                stated |= joint.IsOnlyWhereLooked && joint.IsStated(i, part) ? 1u << i : 0;
            }

            if (joint.IsSeen(stated) && joint.Common(row) is var verdict && verdict > worst)
            {
                worst = verdict;
            }
        }

        return worst;
    }
}
