namespace Lugwork.Cockpit;

/// <summary>Which hand brakes which wheel, and on which side the rear hose or housing goes in.</summary>
internal static class HandRelations
{
    private static readonly Reason OneEach = new("levers-one-each", "Front brake by a lever for {0}, rear brake by one for {1}.") { Sources = [Sources.BrakeHands] };

    private static readonly Reason BothOne = new("levers-on-one-side", "Both levers are for the {0}: one grip has two and the other none.", Cautions.BrakeHands)
    {
        Mend = "a lever for the other hand, or one that is turned round",
        Sources = [Sources.BrakeHands],
    };

    private static readonly Reason AsUsed = new("front-brake-hand-as-used", "Front brake by a lever for {0}; the rider brakes in front with {1}.") { Sources = [Sources.BrakeHands, Sources.BrakeHandsByCountry] };

    private static readonly Reason OtherHand = new("front-brake-other-hand", "Front brake by a lever for {0}; the rider brakes in front with {1}.", Cautions.BrakeHands)
    {
        Mend = "the two hoses or cables changed over, or a front lever for the other hand",
        Sources = [Sources.BrakeHands, Sources.BrakeHandsByCountry],
    };

    private static readonly Reason Agreed = new("brake-hands-agree", "Front brake by a lever for {0}, rear brake by one for {1}; the rider brakes in front with {2}.") { Sources = [Sources.BrakeHands] };

    private static readonly Reason HandTaken = new("front-brake-hand-taken", "The rear lever is for the {1}, so the front one, for {0}, goes to the other side; the rider brakes in front with {2}.", Cautions.BrakeHands)
    {
        Mend = "the two hoses or cables changed over, or a rear lever for the other hand",
        Sources = [Sources.BrakeHands, Sources.BrakeHandsByCountry],
    };

    private static readonly Reason Sweeps = new("hose-sweeps-across", "The rear run goes into the frame on {0}, from a lever on {1}.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason Tight = new("hose-on-its-own-side", "The rear run goes into the frame on {0}, from a lever on the same side: it has to bend back in front of the head tube. Turn the bar fully both ways and see that nothing pulls, kinks or rubs.")
    {
        Mend = "a longer hose or housing, or the port on the other side",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason RunAgreed = new("hose-side-by-rider", "The rear run goes into the frame on {0}, from a lever for {1}; the rider brakes in front with {2}, so the rear lever is on the other side.") { Sources = [Sources.CommonPractice, Sources.BrakeHands] };

    private static readonly Reason RunFree = RunAgreed with { Id = "hose-side-free", Template = "The rear run goes into the frame on {0}, from a lever for {1}; the rider brakes in front with {2}: nothing here forces it to its own side." };

    private static readonly Reason RunTight = Tight with { Id = "hose-on-side-of-rider", Asks = [0], Template = "The rear run goes into the frame on {0}. The rear lever is for {1}, and the rider brakes in front with {2}, so it sits on the same side as the port: the run has to bend back in front of the head tube. Turn the bar fully both ways and see that nothing pulls, kinks or rubs." };

    /// <summary>Inputs: hand of the front lever, of the rear lever.</summary>
    public static Relation OneEachSide { get; } = new Matrix(0, 1, (front, rear) => front == rear && front != Hand.Either.FitCode ? new(Verdict.DoesNotFit, BothOne) : new(Verdict.Fits, OneEach), [], [Sources.BrakeHands]);

    /// <summary>Inputs: hand of the front lever, hand with which the rider brakes in front.</summary>
    public static Relation OfRider { get; } = new Matrix(0, 1, (lever, rider) => Agree(lever, rider) ? new(Verdict.Fits, AsUsed) : new(Verdict.DoesNotFit, OtherHand), [], [Sources.BrakeHands, Sources.BrakeHandsByCountry]);

    /// <summary>Inputs: hand of the front lever, of the rear lever, hand with which the rider brakes in front. A lever for either hand goes to the side that the other leaves; what two alone say against each other has rows of its own.</summary>
    public static Relation Together { get; } = new Computed(
        "a lever for either hand goes to the other's other side",
        v => v[0] == 0 || v[1] == 0 || v[2] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : v[0] == Hand.Either.FitCode && v[1] == v[2] && v[1] != Hand.Either.FitCode ? new(Verdict.DoesNotFit, HandTaken)
            : new(Verdict.Fits, Agreed),
        [],
        [Sources.BrakeHands, Sources.BrakeHandsByCountry]);

    /// <summary>Inputs: side of the frame on which the rear run goes in, hand of the rear lever.</summary>
    public static Relation RearRun { get; } = new Matrix(0, 1, (port, lever) => port == lever && port != Hand.Either.FitCode ? new(Verdict.NeedsMeasuring, Tight) : new(Verdict.Fits, Sweeps), [], [Sources.CommonPractice]);

    /// <summary>Inputs: side of the frame on which the rear run goes in, hand of the rear lever, hand with which the rider brakes in front. A rear lever for either hand goes to the hand that the front brake leaves; of a lever for one hand, <see cref="RearRun"/> says all.</summary>
    public static Relation RearRunOfRider { get; } = new Computed(
        "a rear lever for either hand goes to the hand that the front brake leaves",
        v => v[0] == 0 || v[1] == 0 || v[2] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : v[1] != Hand.Either.FitCode || v[2] == Hand.Either.FitCode || v[0] == Hand.Either.FitCode ? new(Verdict.Fits, RunFree)
            : v[0] == v[2] ? new(Verdict.Fits, RunAgreed)
            : new(Verdict.NeedsMeasuring, RunTight),
        [],
        [Sources.CommonPractice, Sources.BrakeHands]);

    private static bool Agree(long lever, long rider) => lever == rider || lever == Hand.Either.FitCode || rider == Hand.Either.FitCode;
}
