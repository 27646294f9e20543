using System.Collections.Immutable;

namespace Lugwork;

/// <summary>The interfaces of one component. Immutable; every property may be unknown.</summary>
public abstract record Part
{
    private protected Part()
    {
    }

    /// <summary>A name of the owner's own, shown in reports; may be empty. Never judged.</summary>
    public string Name { get; init; } = "";

    /// <summary>Its state, where that is stated; a default says nothing, not "used", and <see cref="PartCondition.NotKnown"/> says that nobody knows. A rider has none.</summary>
    public Known<PartCondition> Condition { get; init; }

    /// <summary>The slots that this kind of part can go to; more than one means that a slot has to be named.</summary>
    public ImmutableArray<Slot> Places => GoesInto;

    /// <summary>The same, for the kinds of the library alone: a part of another kind would meet no joint, so none can be made outside.</summary>
    private protected abstract ImmutableArray<Slot> GoesInto { get; }

    /// <summary>What the kind of part says of itself in its short form. Part and forms are apart: the forms know the kinds, and a part knows no form.</summary>
    private protected abstract string Told();

    /// <summary>The short form of what is known, as <c>PartText.Write</c> gives it, with its name before it where it has one: "the old post: diameter 27.2; length 350". "nothing known" where nothing is.</summary>
    public sealed override string ToString() => (Name.Length, Told()) switch
    {
        (0, "") => "nothing known",
        (0, var told) => told,
        (_, "") => $"{Name}: nothing known",
        (_, var told) => $"{Name}: {told}",
    };
}

/// <summary>The parts of a bicycle by slot, as the judge reads them.</summary>
internal interface IParts
{
    Part? At(Slot slot);

    /// <summary>The joint of a number, as a judgement keeps it.</summary>
    Joint JointAt(int number);

    /// <summary>The told form of a judgement; kept once it was asked for, since a reader asks for its sentence, remedies and sources one after the other.</summary>
    Account ToldAt(int number, Verdict verdict);
}
