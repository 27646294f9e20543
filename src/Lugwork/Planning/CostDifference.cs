using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>One slot in which two bicycles differ.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Ours">Our part; null where there is none.</param>
/// <param name="Theirs">The other's part; null where there is none.</param>
/// <param name="Fields">The fields that are stated otherwise; empty where a part is missing on one side or only the names differ.</param>
public sealed record CostDifference(Slot Slot, Part? Ours, Part? Theirs, ImmutableArray<CostField> Fields)
{
    /// <summary>"rear wheel: ours, not theirs; hub R142-12 against R135-QR".</summary>
    public override string ToString() => $"{Slot.Name}: {Named(Ours)} against {Named(Theirs)}{(Fields.IsEmpty ? "" : "; ")}{string.Join(", ", Fields)}";

    /// <summary>What differs in a slot; null where nothing does. What is left out on both sides is no difference.</summary>
    internal static CostDifference? Of(Slot slot, Part? ours, Part? theirs)
    {
        if (ours is null || theirs is null)
        {
            return ours is null && theirs is null ? null : new(slot, ours, theirs, []);
        }

        Dictionary<string, string> mine = Stated(slot, ours);
        Dictionary<string, string> other = Stated(slot, theirs);
        ImmutableArray<CostField> fields =
        [
            .. mine.Keys.Union(other.Keys).Where(k => mine.GetValueOrDefault(k) != other.GetValueOrDefault(k)).Order(StringComparer.Ordinal)
                .Select(k => new CostField(k, mine.GetValueOrDefault(k, "not stated"), other.GetValueOrDefault(k, "not stated"))),
        ];
        return fields.IsEmpty && ours.Name == theirs.Name ? null : new(slot, ours, theirs, fields);
    }

    private static Dictionary<string, string> Stated(Slot slot, Part part) => PartForms.Of(slot).Write(part).Where(f => f.Key != "name").ToDictionary();

    private static string Named(Part? part) => part is null ? "none" : part.Name.Length > 0 ? part.Name : "one without a name";
}

/// <summary>One field that is stated otherwise on two parts.</summary>
/// <param name="Field">Its key in a build file.</param>
/// <param name="Ours">What ours states; "not stated" where nothing.</param>
/// <param name="Theirs">What the other states; "not stated" where nothing.</param>
public sealed record CostField(string Field, string Ours, string Theirs)
{
    /// <summary>"hub R142-12 against R135-QR".</summary>
    public override string ToString() => $"{Field} {Ours} against {Theirs}";
}
