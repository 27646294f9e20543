namespace Lugwork.Steering;

/// <summary>Headset and stem on a fork.</summary>
internal static class SteererRelations
{
    private static readonly Reason SameSize = new("steerer-passes", "The upper half is made for {0} and the fork has {1}.")
    {
        Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart],
    };

    private static readonly Reason SteererLarger = new("steerer-too-large", "The fork's {1} does not pass an upper half made for {0}.", Cautions.SteeringCare)
    {
        Mend = "a headset with an upper half for this steerer, if the head tube has room for one, or another fork",
        Sources = [Sources.HeadsetChart, Sources.OneInchAgainstLarger],
    };

    private static readonly Reason SteererSmaller = new("steerer-too-small", "The fork's {1} has no seat in an upper half made for {0}.", Cautions.SteeringCare)
    {
        Mend = "an upper half of the same bore for this steerer",
        Sources = [Sources.HeadsetChart],
    };

    private static readonly Bridge CentringRing = new()
    {
        Id = "steerer-28.6-in-38.1-upper",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsMeasuring,
        What = "28.6 centring ring of the same headset and cover system",
        From = SteererSize.Mm28Point6.FitCode,
        To = SteererSize.Mm38Point1.FitCode,
        Caution = Cautions.SteeringCare,
        Sources = [Sources.CableHeadsets],
    };

    /// <summary>Inputs: what the upper half is made for, the fork's steerer.</summary>
    public static Relation OnSteerer { get; } = new SameKey(0, 1, SameSize, (made, steerer) => Size(steerer) > Size(made) ? SteererLarger : SteererSmaller, [CentringRing]);

    private static readonly Reason SameKind = new("same-steerer-kind", "Headset and steerer are both {0}.") { Sources = [Sources.HeadsetArticle] };

    private static readonly Reason OtherKind = new("other-steerer-kind", "Headset that is {1} does not go on a steerer that is {0}: one needs threads for its locknut, the other must not have them where the stem clamps.", Cautions.SteeringCare)
    {
        Mend = "a headset of the fork's own kind",
        Sources = [Sources.SteererRequirement, Sources.HeadsetArticle],
    };

    /// <summary>Inputs: fork's kind, headset's kind.</summary>
    public static Relation OfKind { get; } = new SameKey(0, 1, SameKind, (_, _) => OtherKind, []);

    private static readonly Reason SameSeat = new("same-crown-seat", "The lower half has {0} and the fork has {1}.")
    {
        Sources = [Sources.HeadsetChart, Sources.HeadsetCodeNote],
    };

    private static readonly Reason RaceLoose = new("race-loose", "{0} is loose on the fork's {1}; never shim it.", Cautions.SteeringCare)
    {
        Mend = "a crown race, or a lower half, of the fork's own seat",
        Sources = [Sources.OneInchHeadsets, Sources.HeadsetArticle],
    };

    private static readonly Bridge Milling = new()
    {
        Id = "crown-seat-27.0-milled-to-26.4",
        Kind = BridgeKind.ShopWork,
        Result = Verdict.NeedsPart,
        What = "milling the seat of a metal fork from 27.0 to 26.4, which cannot be undone (leave it to a shop)",
        From = CrownSeat.Mm27.FitCode,
        To = CrownRace.Mm26Point4.FitCode,
        Caution = Cautions.SteeringCare,
        Sources = [Sources.OneInchHeadsets, Sources.HeadsetArticle],
    };

    private static readonly Reason MillSeat = new("race-too-small-27", "{0} does not go on the fork's {1}.", Cautions.SteeringCare)
    {
        Mend = "a 27.0 race",
        Offers = [Milling],
        Sources = [Sources.OneInchHeadsets, Sources.HeadsetArticle],
    };

    private static readonly Reason RaceSmall = new("race-too-small", "{0} does not go on the fork's {1}.", Cautions.SteeringCare)
    {
        Mend = "a lower half of the same bore for this seat, where one exists, or another fork",
        Sources = [Sources.HeadsetChart, Sources.CrownRaceGuide],
    };

    private static readonly Bridge ReducerRace = new()
    {
        Id = "crown-seat-30-in-lower-39.8",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "reducer crown race from 40 to 30 for this lower half (or a lower half built for /30)",
        From = CrownSeat.Mm30.FitCode,
        To = CrownRace.Mm39Point8.FitCode,
        Caution = Cautions.SteeringCare,
        Sources = [Sources.StraightInTapered],
    };

    private static readonly Reason RaceMissing = new("crown-race-missing", "The headset comes without a crown race, and a seat of {1} takes [bridge].") { Sources = [Sources.HeadsetChart, Sources.HeadsetCodeNote] };

    private static readonly Bridge MissingRace = new()
    {
        Id = "crown-race-for-seat",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "a crown race of the headset's own bearing, for the fork's seat",
        Sources = [Sources.HeadsetChart],
    };

    /// <summary>Inputs: what the lower half is made for, the fork's seat.</summary>
    public static Relation OnCrown { get; } = new SameKey(0, 1, SameSeat, NoRace, [ReducerRace]) { Offered = [Milling], Lacks = (0, RaceMissing, MissingRace) };

    private static Reason NoRace(long race, long seat) =>
        CrownRace.OfFitCode(race).Hundredths > CrownSeat.OfFitCode(seat).Hundredths ? RaceLoose
        : race == CrownRace.Mm26Point4.FitCode && seat == CrownSeat.Mm27.FitCode ? MillSeat : RaceSmall;

    private static int Size(long code) => SteererSize.OfFitCode(code).Hundredths;
}
