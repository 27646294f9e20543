using System.Collections.Immutable;

namespace Lugwork;

/// <summary>The told form of a joint of which an input lies outside the library.</summary>
internal sealed partial class Account
{
    /// <summary>Null where every input is one that the library knows or could know.</summary>
    private static Account? OfOutside(Joint joint, in CandidateRow row)
    {
        List<(JointInput Input, KnownState State, OutsideFamily? Family)> outside = [];
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            JointInput input = joint.Inputs[i];
            if (row[i].IsOutside && !outside.Exists(o => o.Input.Slot == input.Slot && o.Input.Field == input.Field))
            {
                outside.Add((input, row[i].State, Outside.FamilyOf(row[i])));
            }
        }

        if (outside.Count == 0)
        {
            return null;
        }

        // What is outside the library says more than what only the frame maker has.
        bool notCovered = outside.Exists(o => o.State == KnownState.NotCovered);
        return new Account
        {
            Verdict = Verdict.NeedsMeasuring,
            Reason = KnownStates.Reason(notCovered ? KnownState.NotCovered : KnownState.FrameSpecific),
            Sentence = string.Join(' ', outside.Select(o => $"{char.ToUpperInvariant(o.Input.Slot.Name[0])}{o.Input.Slot.Name[1..]}, {o.Input.Called}{(o.Family is null ? "" : $", {o.Family.TradeName}")}: {KnownStates.Reason(o.State).Template}")),
            Measurements = [.. outside.Select(o => new Measurement(o.Input.Slot, o.Input.Field, o.Input.Called, KnownStates.Ask(o.State)))],
            Cautions = joint.Caution is { } caution ? [caution] : ImmutableArray<Caution>.Empty,
            Sources = [.. joint.Sources.OrderBy(s => s.Strength).ThenBy(s => s.Id, StringComparer.Ordinal)],
        };
    }
}
