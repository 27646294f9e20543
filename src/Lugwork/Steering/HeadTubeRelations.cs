namespace Lugwork.Steering;

/// <summary>Headset halves in a head tube.</summary>
internal static class HeadTubeRelations
{
    private static readonly Reason Same = new("cup-of-the-bore", "{1} half in {0}: pressed in, the cup up to 0.1 mm larger than the bore.")
    {
        Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart, Sources.PressFitRule],
    };

    private static readonly Reason SameSeat = new("bearing-of-the-seat", "{1} bearing laid in {0}.")
    {
        Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart],
    };

    private static readonly Reason Integrated = new("integrated-seat", "{1} half in {0}: the seat is part of the frame and takes no pressed cup and no other bearing.", Cautions.SteeringCare)
    {
        Mend = "the bearing of the frame's own seat",
        Sources = [Sources.HeadTubeComment, Sources.IntegratedHeadsets],
    };

    private static readonly Reason NoSeat = new("no-integrated-seat", "{1} half needs a seat cut in the frame; {0} has none.", Cautions.SteeringCare)
    {
        Mend = "Headset half with a cup for this bore",
        Sources = [Sources.IntegratedHeadsets],
    };

    private static readonly Reason OtherSeat = new("other-integrated-seat", "{1} bearing in {0}: diameter or contact angle differ.", Cautions.SteeringCare)
    {
        Mend = "the bearing of the frame's own seat, by diameter, height and both angles",
        Sources = [Sources.BearingSeller, Sources.BearingMeasure],
    };

    private static readonly Reason ReamOnly = new("ream-one-way", "{1} cup (30.2 mm) is too large for {0} (30.0 mm cups).", Cautions.SteeringCare)
    {
        Mend = "a JIS headset; or reaming the head tube of a metal frame from 30.0 to 30.2, which cannot be undone (leave it to a shop)",
        Sources = [Sources.OneInchHeadsets, Sources.FrontTriangleManual],
    };

    private static readonly Reason LooseJis = new("loose-cup", "{1} cup (30.0 mm) is loose in {0} (30.2 mm cups); never glue or shim it.", Cautions.SteeringCare)
    {
        Mend = "an ISO headset with 30.2 mm cups",
        Sources = [Sources.HeadsetGuide, Sources.OneInchHeadsets],
    };

    private static readonly Reason TooLarge = new("cup-too-large", "{1} cup is larger than {0}.", Cautions.SteeringCare)
    {
        Mend = "Headset half of the head tube's own bore",
        Sources = [Sources.PressFitRule, Sources.HeadsetChart],
    };

    private static readonly Reason TooSmall = new("cup-too-small", "{1} cup is loose in {0}.", Cautions.SteeringCare)
    {
        Mend = "Headset half of the head tube's own bore; reducing headsets are made for the bore, not for the cup",
        Sources = [Sources.PressFitRule, Sources.HeadsetChart],
    };

    /// <summary>Inputs: head tube end, headset half.</summary>
    public static Relation InTube { get; } = new Matrix(0, 1, Cell, [], [Sources.HeadsetCodeNote, Sources.HeadsetChart, Sources.PressFitRule]);

    private static Outcome Cell(long end, long half)
    {
        HeadTubeBore bore = HeadTubeBore.OfFitCode(end);
        HeadTubeBore made = HeadsetCup.OfFitCode(half).Bore;
        if (bore == made)
        {
            return new(Verdict.Fits, bore.IsIntegrated ? SameSeat : Same);
        }

        if (bore.IsIntegrated || made.IsIntegrated)
        {
            return new(Verdict.DoesNotFit, !bore.IsIntegrated ? NoSeat : made.IsIntegrated ? OtherSeat : Integrated);
        }

        return new(Verdict.DoesNotFit, bore == HeadTubeBore.Ec29 && made == HeadTubeBore.Ec30 ? ReamOnly
            : bore == HeadTubeBore.Ec30 && made == HeadTubeBore.Ec29 ? LooseJis
            : made.LeastHundredths > bore.LeastHundredths ? TooLarge : TooSmall);
    }
}
