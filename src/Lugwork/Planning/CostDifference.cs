using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>One slot in which two bicycles differ.</summary>
public sealed class CostDifference
{
    internal CostDifference(Slot slot, Part? ours, Part? theirs, ImmutableArray<CostField> fields)
    {
        Slot = slot;
        Ours = ours;
        Theirs = theirs;
        Fields = fields;
    }

    /// <summary>The slot.</summary>
    public Slot Slot { get; internal init; }

    /// <summary>Our part; null where there is none.</summary>
    public Part? Ours { get; internal init; }

    /// <summary>The other's part; null where there is none.</summary>
    public Part? Theirs { get; internal init; }

    /// <summary>The fields that are stated otherwise; empty where a part is missing on one side or only the names differ.</summary>
    public ImmutableArray<CostField> Fields { get; internal init; }

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
public sealed record CostField
{
    internal CostField(string field, string ours, string theirs)
    {
        Field = field;
        Ours = ours;
        Theirs = theirs;
    }

    /// <summary>Its key in a build file.</summary>
    public string Field { get; internal init; }

    /// <summary>What ours states; "not stated" where nothing.</summary>
    public string Ours { get; internal init; }

    /// <summary>What the other states; "not stated" where nothing.</summary>
    public string Theirs { get; internal init; }

    /// <summary>"hub R142-12 against R135-QR".</summary>
    public override string ToString() => $"{Field} {Ours} against {Theirs}";
}
