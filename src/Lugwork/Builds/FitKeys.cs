using System.Collections.Immutable;

namespace Lugwork;

/// <summary>One row by which a database finds parts: an interface value or a limit of a part.</summary>
public sealed record FitRow
{
    internal FitRow(string jointId, string field, string key, long code)
    {
        JointId = jointId;
        Field = field;
        Key = key;
        Code = code;
    }

    /// <summary>The joint it serves.</summary>
    public string JointId { get; internal init; }

    /// <summary>The field of the part.</summary>
    public string Field { get; internal init; }

    /// <summary>Canonical text; empty for a length or a load.</summary>
    public string Key { get; internal init; }

    /// <summary>Stable integer; for a length its nanometres, for a load its grams.</summary>
    public long Code { get; internal init; }
}

/// <summary>Parts and needs as keys for a database column.</summary>
public static class FitKeys
{
    /// <summary>The keys of a part in a slot: one a joint and possible value. A field that is unknown, the frame maker's own or not covered has no row.</summary>
    /// <param name="part">The part.</param>
    /// <param name="slot">One of its places.</param>
    public static ImmutableArray<FitRow> Of(Part part, Slot slot)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(slot);
        ImmutableArray<FitRow>.Builder keys = ImmutableArray.CreateBuilder<FitRow>();
        foreach (Joint joint in JointTable.All)
        {
            foreach (JointInput input in joint.Inputs.Where(i => i.Slot == slot && !HasTwin(joint, i)))
            {
                Candidates known = input.Read(part);
                foreach (long code in known.State == KnownState.Value ? [known.Low] : known.Codes ?? [])
                {
                    keys.Add(new(joint.Id, input.Field, input.Domain.IsEmpty ? "" : input.Show(code), code));
                }
            }
        }

        return keys.ToImmutable();
    }

    /// <summary>The keys that a slot of a build accepts, with or without a bridge, whatever else the part is: the accepted-keys list of a query.</summary>
    /// <remarks>
    /// A joint without a row accepts nothing, or cannot be decided by one key: where a field says two things at once, such as a tyre's
    /// width and bead seat, or two fields of the part decide together, such as size and kind of a steerer. The needs sheet tells which; check the build. What a part is by itself, its condition and wear, no other part asks for: it has no row.
    /// </remarks>
    /// <param name="build">The build.</param>
    /// <param name="slot">Any slot but the frame's.</param>
    /// <param name="worst">The worst verdict to accept.</param>
    public static ImmutableArray<FitRow> Accepted(Build build, Slot slot, Verdict worst = Verdict.NeedsMeasuring)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(slot);
        ImmutableArray<FitRow>.Builder keys = ImmutableArray.CreateBuilder<FitRow>();
        foreach (Joint joint in JointTable.All)
        {
            if (joint.IsOfCondition || joint.Inputs.FirstOrDefault(i => i.Slot == slot) is not { } input || HasTwin(joint, input))
            {
                continue;
            }

            NeedLine line = NeedLine.Of(joint, input, build);
            foreach (long code in input.Domain.Where(c => line.Judge(c) != Verdict.NotJudged && line.Judge(c) <= worst))
            {
                keys.Add(new(joint.Id, input.Field, input.Show(code), code));
            }
        }

        return keys.ToImmutable();
    }

    /// <summary>Another input of the joint is the same field of the same slot, so that one code would say half of it.</summary>
    private static bool HasTwin(Joint joint, JointInput input) => joint.Inputs.Any(i => i != input && i.Slot == input.Slot && i.Field == input.Field);
}
