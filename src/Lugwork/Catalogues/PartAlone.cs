namespace Lugwork.Catalogues;

/// <summary>One part in its slot and nothing beside it, as the judge reads parts.</summary>
internal sealed class PartAlone(Slot slot, Part part) : IParts
{
    public Part? At(Slot place) => place == slot ? part : null;

    public Joint JointAt(int number) => JointTable.All[number];

    public Account ToldAt(int number, Verdict verdict) => Account.Of(JointTable.All[number], this, verdict);

    /// <summary>Something of the part is outside the library, or contradicts itself, where no joint reads it: it never fits before its maker is asked.</summary>
    public static bool IsAskedAbout(Slot slot, Part part) => UnjudgedFields.Asked(new PartAlone(slot, part)) is not null;
}
