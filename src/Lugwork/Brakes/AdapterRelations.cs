using System.Collections.Immutable;

namespace Lugwork.Brakes;

/// <summary>The adapter that is there, and two rotors beside each other.</summary>
internal static class AdapterRelations
{
    private static readonly ImmutableArray<Source> Arithmetic = [Sources.AdapterGuide, Sources.MountAnswer, Sources.Derived];

    private static readonly Reason Meets = new("adapter-meets-rotor", "{0} with an adapter of {2} holds the caliper for {1} rotor.") { Sources = Arithmetic };

    private static readonly Reason Misses = new("adapter-misses-rotor", "{0} with an adapter of {2} holds the caliper for another size than {1} rotor: part of the pad misses the track, or the caliper meets the rotor's edge.", Cautions.BrakeWork)
    {
        Mend = "the adapter whose increment and the mount's own rotor give this rotor, or a rotor of that size",
        Sources = Arithmetic,
    };

    private static readonly Reason FlatPlate = new("flat-mount-plate", "{0} takes a plate of its own, which is turned for the rotor and adds nothing: read its marking for {1} rotor.", Cautions.BrakeWork) { Sources = [Sources.FlatMountProblem] };

    private static readonly Reason NoneThere = new("no-adapter-there", "There is no adapter under the caliper: whether {0} takes one for {1} rotor is said where the caliper meets the mount.") { Sources = Arithmetic };

    /// <summary>Inputs: mount, rotor in nanometres, increment of the adapter (none without one: what is not there yet is asked for at the mount, once).</summary>
    public static Relation Meeting { get; } = new Computed("the mount's own rotor and the increment give the rotor", Meet, [], Arithmetic);

    private static readonly Reason Alike = new("rotors-alike", "{0} rotor in front and {1} behind.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason RearLarger = new("rear-rotor-larger", "{1} rotor behind is larger than {0} in front, where most of the braking is done: was it meant so?")
    {
        IsNote = true,
        Sources = [Sources.CommonPractice],
    };

    /// <summary>Inputs: front and rear rotor in nanometres. A note, never a refusal: both sizes are known, and no page says which is too large.</summary>
    public static Relation Pair { get; } = new Computed("a note where the rear rotor is the larger one", v => v[0] == 0 || v[1] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate) : v[0] >= v[1] ? new(Verdict.Fits, Alike) : new(Verdict.Fits, RearLarger), [], [Sources.CommonPractice]);

    private static Outcome Meet(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        BrakeMount mount = BrakeMount.OfFitCode(values[0]);
        if (mount.Form == MountForm.Flat && (mount.IsFront || values[2] != 0))
        {
            return new(Verdict.NeedsMeasuring, FlatPlate);
        }

        if (values[2] == 0)
        {
            return new(Verdict.Fits, NoneThere);
        }

        long own = mount.NativeRotorMillimetres + AdapterIncrement.OfFitCode(values[2]).Millimetres;
        return own * Nanometres.PerMillimetre == values[1] ? new(Verdict.Fits, Meets) : new(Verdict.DoesNotFit, Misses);
    }
}
