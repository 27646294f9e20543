namespace Lugwork.Brakes;

/// <summary>Lever against brake, fluid against fluid, rim brake against bosses.</summary>
internal static class BrakeActionRelations
{
    private static readonly Reason SamePull = new("same-pull", "{1} under a lever of {0}.") { Sources = [Sources.LeverPull] };

    private static readonly Reason TooLittleCable = new("too-little-cable", "{1} wants about twice the cable that a lever of {0} pulls: the lever reaches the bar before the brake holds.", Cautions.BrakeWork)
    {
        Mend = "a long-pull lever, or a pull converter between them",
        Sources = [Sources.BrakesBlog, Sources.LeverPull],
    };

    private static readonly Reason TooLittleForDisc = new("too-little-cable-for-disc", "{1} wants more cable than a lever of {0} pulls.", Cautions.BrakeWork)
    {
        Mend = "the version of the caliper for road pull",
        Sources = [Sources.LeverPull],
    };

    private static readonly Reason TooMuchCable = new("too-much-cable", "A lever of {0} pulls about twice the cable that {1} wants, at half the force: hard lever, weak braking.", Cautions.BrakeWork)
    {
        Mend = "a short-pull lever",
        Sources = [Sources.BrakesBlog, Sources.LeverPull],
    };

    private static readonly Reason AskPull = new("ask-pull", "Whether a lever of {0} works {1} is not known here: ask the makers of both.", Cautions.BrakeWork) { Sources = [Sources.Memory] };

    private static readonly Reason NoCable = new("no-cable", "{1} has no cable that a lever of {0} could pull.") { Mend = "the lever or hub that the brake is made with", Sources = [Sources.Derived] };

    private static readonly Reason SameFluid = new("same-fluid", "Both take {0}; the grade is the maker's.", Cautions.BrakeWork) { Sources = [Sources.FluidGuide] };

    private static readonly Reason OtherFluid = new("other-fluid", "{1} against {0}: seals made for one swell and fail in the other.", Cautions.BrakeWork)
    {
        Mend = "lever and caliper for the same fluid",
        Sources = [Sources.FluidGuide],
    };

    private static readonly Reason OnBosses = new("on-bosses", "{1} on {0}.") { Sources = [Sources.BrazedOnBrakes] };

    private static readonly Reason OtherBosses = new("other-bosses", "{1} does not go on {0}: bosses below the rim and above it are two places.", Cautions.BrakeWork)
    {
        Mend = "a brake made for these bosses",
        Sources = [Sources.BrakesBlog, Sources.BrazedOnBrakes],
    };

    private static readonly Reason NotOnBosses = new("not-on-bosses", "{1} is not held by bosses.") { Mend = "a brake made for these bosses", Sources = [Sources.Derived] };

    /// <summary>Inputs: pull of the lever, brake type.</summary>
    public static Relation LeverAndBrake { get; } = new Matrix(0, 1, Pulled, [], [Sources.LeverPull, Sources.BrakesBlog]);

    /// <summary>Inputs: fluid of the lever, fluid of the caliper.</summary>
    public static Relation Fluid { get; } = new Matrix(0, 1, Mixed, [], [Sources.FluidGuide]);

    /// <summary>Inputs: bosses, brake type. The bead seat that the bosses stand for is another question.</summary>
    public static Relation BrakeOnBosses { get; } = new Matrix(0, 1, Held, [], [Sources.BrazedOnBrakes, Sources.BrakesBlog]);

    private static Outcome Pulled(long lever, long brake)
    {
        CablePull pull = CablePull.OfFitCode(lever);
        BrakeType type = BrakeType.OfFitCode(brake);
        if (type.IsWithoutCable)
        {
            return new(Verdict.DoesNotFit, NoCable);
        }

        // That a newer road lever pulls a little more rests on memory: it counts as short where that is the worse case.
        if (type.Pull is null || (pull == CablePull.NewerRoad && type.Pull == CablePull.Short))
        {
            return new(Verdict.NeedsMeasuring, AskPull);
        }

        return type.Pull == pull ? new(Verdict.Fits, SamePull)
            : pull == CablePull.Long ? new(Verdict.Unsafe, TooMuchCable)
            : type == BrakeType.OffRoadCableDisc ? new(Verdict.DoesNotFit, TooLittleForDisc)
            : new(Verdict.Unsafe, TooLittleCable);
    }

    private static Outcome Mixed(long lever, long caliper) => lever == caliper ? new(Verdict.Fits, SameFluid) : new(Verdict.Unsafe, OtherFluid);

    private static Outcome Held(long bosses, long brake) => BrakeType.OfFitCode(brake).Place switch
    {
        BrakePlace.BossesBelowRim => BrakeBoss.OfFitCode(bosses).IsBelowRim ? new(Verdict.Fits, OnBosses) : new(Verdict.DoesNotFit, OtherBosses),
        BrakePlace.BossesAboveRim => BrakeBoss.OfFitCode(bosses).IsBelowRim ? new(Verdict.DoesNotFit, OtherBosses) : new(Verdict.Fits, OnBosses),
        _ => new(Verdict.DoesNotFit, NotOnBosses),
    };
}
