namespace Lugwork.Brakes;

/// <summary>Lever against brake, fluid against fluid, rim brake against bosses.</summary>
internal static class BrakeActionRelations
{
    /// <summary>Code of a lever or caliper without fluid, in the joint of the fluids.</summary>
    public const long ByCable = 101;

    /// <summary>Code of a lever without a cable, in the joint of lever and brake.</summary>
    public const long ByFluid = 101;

    private static readonly Reason SamePull = new("same-pull", "{1} under a lever of {0}.") { Sources = [Sources.LeverPull] };

    private static readonly Reason NewerPull = new("newer-road-pull", "{1} under a lever of {0}: both are listed with 8 mm of cable.", Cautions.BrakeWork) { Sources = [Sources.MechanicalBrakes] };

    private static readonly Bridge PullConverter = new()
    {
        Id = "pull-converter-short-to-long",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "a pull converter between lever and brake, from short to long pull",
        From = CablePull.Short.FitCode,
        To = BrakeType.DirectPull.FitCode,
        Caution = Cautions.BrakeWork,
        Sources = [Sources.BrakesBlog, Sources.LeverPull],
    };

    private static readonly Reason SameFluid = new("same-fluid", "Both take {0}; the grade is the maker's.", Cautions.BrakeWork) { Sources = [Sources.FluidGuide] };

    private static readonly Reason BothByCable = new("both-by-cable", "Neither lever nor caliper holds fluid: a cable joins them.") { Sources = [Sources.Derived] };

    private static readonly Reason BothByFluid = new("both-by-fluid", "{1} under a lever that holds fluid: no cable is pulled, the fluid is judged apart.") { Sources = [Sources.Derived] };

    private static readonly Reason OnBosses = new("on-bosses", "{1} on {0}.") { Sources = [Sources.BrazedOnBrakes] };

    /// <summary>Inputs: pull of the lever, brake type.</summary>
    public static Relation LeverAndBrake { get; } = new Matrix(0, 1, Pulled, [PullConverter], [Sources.LeverPull, Sources.BrakesBlog, Sources.MechanicalBrakes]);

    /// <summary>Inputs: fluid of the lever, fluid of the caliper.</summary>
    public static Relation Fluid { get; } = new Matrix(0, 1, Mixed, [], [Sources.FluidGuide]);

    /// <summary>Inputs: fluid of the lever, of the caliper, or that a cable works it.</summary>
    public static Relation FluidOrCable { get; } = new Matrix(0, 1, MixedOrCable, [], [Sources.FluidGuide]);

    /// <summary>Inputs: pull of the lever, or that it holds fluid, and brake type.</summary>
    public static Relation LeverOrFluid { get; } = new Matrix(0, 1, PulledOrPushed, [PullConverter], [Sources.LeverPull, Sources.BrakesBlog, Sources.MechanicalBrakes]);

    /// <summary>Inputs: bosses, brake type. The bead seat that the bosses stand for is another question.</summary>
    public static Relation BrakeOnBosses { get; } = new Matrix(0, 1, Held, [], [Sources.BrazedOnBrakes, Sources.BrakesBlog]);

    private static Outcome MixedOrCable(long lever, long caliper) =>
        lever != ByCable && caliper != ByCable ? Mixed(lever, caliper)
        : lever == caliper ? new(Verdict.Fits, BothByCable)
        : new(Verdict.DoesNotFit, Misfits.FluidAgainstCable);

    private static Outcome PulledOrPushed(long lever, long brake) =>
        lever != ByFluid ? Pulled(lever, brake)
        : BrakeType.OfFitCode(brake) == BrakeType.HydraulicDisc ? new(Verdict.Fits, BothByFluid)
        : new(Verdict.DoesNotFit, Misfits.FluidLever);

    private static Outcome Pulled(long lever, long brake)
    {
        CablePull pull = CablePull.OfFitCode(lever);
        BrakeType type = BrakeType.OfFitCode(brake);
        if (type.IsWithoutCable)
        {
            return new(Verdict.DoesNotFit, Misfits.NoCable);
        }

        if (pull == CablePull.NewerRoad && type == BrakeType.RoadCableDisc)
        {
            return new(Verdict.Fits, NewerPull);
        }

        // A newer road lever pulls a little more: it counts as short where that is the worse case.
        if (type.Pull is null || (pull == CablePull.NewerRoad && type.Pull == CablePull.Short))
        {
            return new(Verdict.NeedsMeasuring, Misfits.AskPull);
        }

        return type.Pull == pull ? new(Verdict.Fits, SamePull)
            : pull == CablePull.Long ? new(Verdict.Unsafe, Misfits.TooMuchCable)
            : type == BrakeType.OffRoadCableDisc ? new(Verdict.DoesNotFit, Misfits.TooLittleForDisc)
            : new(Verdict.Unsafe, Misfits.TooLittleCable);
    }

    private static Outcome Mixed(long lever, long caliper) => lever == caliper ? new(Verdict.Fits, SameFluid) : new(Verdict.Unsafe, Misfits.OtherFluid);

    private static Outcome Held(long bosses, long brake) => BrakeType.OfFitCode(brake).Place switch
    {
        BrakePlace.BossesBelowRim => BrakeBoss.OfFitCode(bosses).IsBelowRim ? new(Verdict.Fits, OnBosses) : new(Verdict.DoesNotFit, Misfits.OtherBosses),
        BrakePlace.BossesAboveRim => BrakeBoss.OfFitCode(bosses).IsBelowRim ? new(Verdict.DoesNotFit, Misfits.OtherBosses) : new(Verdict.Fits, OnBosses),
        _ => new(Verdict.DoesNotFit, Misfits.NotOnBosses),
    };

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason TooLittleCable = new("too-little-cable", "{1} wants about twice the cable that a lever of {0} pulls: the lever reaches the bar before the brake holds.", Cautions.BrakeWork)
        {
            Mend = "a long-pull lever",
            Offers = [PullConverter],
            Sources = [Sources.BrakesBlog, Sources.LeverPull],
        };

        public static readonly Reason TooLittleForDisc = new("too-little-cable-for-disc", "{1} wants more cable than a lever of {0} pulls.", Cautions.BrakeWork)
        {
            Mend = "the version of the caliper for road pull",
            Sources = [Sources.LeverPull],
        };

        public static readonly Reason TooMuchCable = new("too-much-cable", "A lever of {0} pulls about twice the cable that {1} wants, at half the force: hard lever, weak braking.", Cautions.BrakeWork)
        {
            Mend = "a short-pull lever",
            Sources = [Sources.BrakesBlog, Sources.LeverPull],
        };

        public static readonly Reason AskPull = new("ask-pull", "Whether a lever of {0} works {1} is not known here: ask the makers of both.", Cautions.BrakeWork) { Sources = [Sources.Memory] };

        public static readonly Reason NoCable = new("no-cable", "{1} has no cable that a lever of {0} could pull.") { Mend = "the lever or hub that the brake is made with", Sources = [Sources.Derived] };

        public static readonly Reason OtherFluid = new("other-fluid", "{1} against {0}: seals made for one swell and fail in the other.", Cautions.BrakeWork)
        {
            Mend = "lever and caliper for the same fluid",
            Sources = [Sources.FluidGuide],
        };

        public static readonly Reason FluidAgainstCable = new("fluid-against-cable", "{1} against {0}: one is worked by fluid, the other by a cable.", Cautions.BrakeWork)
        {
            Mend = "lever and caliper that are both worked by fluid, or both by a cable",
            Sources = [Sources.Derived],
        };

        public static readonly Reason FluidLever = new("fluid-lever", "A lever that holds fluid has no cable to pull {1} with.", Cautions.BrakeWork)
        {
            Mend = "a lever that pulls the cable that this brake wants",
            Sources = [Sources.Derived],
        };

        public static readonly Reason OtherBosses = new("other-bosses", "{1} does not go on {0}: bosses below the rim and above it are two places.", Cautions.BrakeWork)
        {
            Mend = "a brake made for these bosses",
            Sources = [Sources.BrakesBlog, Sources.BrazedOnBrakes],
        };

        public static readonly Reason NotOnBosses = new("not-on-bosses", "{1} is not held by bosses.") { Mend = "a brake made for these bosses", Sources = [Sources.Derived] };
    }
}
