namespace Lugwork.Steering;

/// <summary>Headset halves in a head tube.</summary>
internal static class HeadTubeRelations
{
    private static readonly Reason SameSeat = new("bearing-of-the-seat", "{1} bearing laid in {0}.")
    {
        Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart],
    };

    private static readonly Bridge Reaming = new()
    {
        Id = "head-tube-30.0-reamed-to-30.2",
        Kind = BridgeKind.ShopWork,
        Result = Verdict.NeedsPart,
        What = "reaming the head tube of a metal frame from 30.0 to 30.2, which cannot be undone (leave it to a shop)",
        From = HeadTubeBore.Ec30.FitCode,
        To = HeadTubeBore.Ec29.FitCode,
        Caution = Cautions.SteeringCare,
        Sources = [Sources.OneInchHeadsets, Sources.FrontTriangleManual],
    };

    private static readonly Bridge OneInchIn44 = Reducer(HeadTubeBore.Bore44, "headset halves for a 1 in fork in a 44 mm bore, which are scarce", Sources.Memory);

    private static readonly Bridge OneInchIn34 = Reducer(HeadTubeBore.Ec34, "a reducing headset, or reducer rings, for a 1 in fork in a 34 mm bore", Sources.Memory);

    /// <summary>Inputs: head tube end, headset half.</summary>
    public static Relation InTube { get; } = new Matrix(0, 1, Cell, [Reaming], [Sources.HeadsetCodeNote, Sources.HeadsetChart, Sources.PressFitRule]);

    private static readonly Reason SomeUpper = new("upper-half-exists", "{1} through {0}: upper halves for this pair are made.") { Sources = [Sources.HeadsetChart, Sources.HeadsetCodeNote] };

    private static readonly Reason SomeLower = new("lower-half-exists", "Fork with {1} in {0}: lower halves for this pair are made.") { Sources = [Sources.HeadsetChart, Sources.HeadTube44, Sources.HeadTubeComment, Sources.StraightInTapered] };

    /// <summary>Inputs: upper end, steerer of the fork.</summary>
    public static Relation SteererThrough { get; } = new Matrix(0, 1, Upper, [OneInchIn44, OneInchIn34], [Sources.HeadsetChart, Sources.HeadsetCodeNote]);

    /// <summary>Inputs: lower end, crown-race seat of the fork.</summary>
    public static Relation ForkIn { get; } = new Matrix(0, 1, Lower, [], [Sources.HeadsetChart, Sources.HeadTubeComment]);

    private static Outcome Upper(long end, long steerer)
    {
        HeadTubeBore bore = HeadTubeBore.OfFitCode(end);
        SteererSize size = SteererSize.OfFitCode(steerer);
        return bore.TakesUpper(size) ? (bore.UpperFromMemory(size) ? new(Verdict.NeedsMeasuring, Misfits.FromMemory, OneInch(bore, size)) : new(Verdict.Fits, SomeUpper))
            : bore.Room(size.Hundredths) < Least(bore) || (bore == HeadTubeBore.Bore44 && size == SteererSize.Mm38Point1) ? new(Verdict.DoesNotFit, Misfits.NoUpper)
            : new(Verdict.NeedsMeasuring, Misfits.NotListed, OneInch(bore, size));
    }

    /// <summary>What is bought for a 1 in fork in a larger bore; known from memory alone, so that it only says what to look for.</summary>
    private static Bridge? OneInch(HeadTubeBore bore, SteererSize size) =>
        size != SteererSize.Mm25Point4 ? null : bore == HeadTubeBore.Bore44 ? OneInchIn44 : bore == HeadTubeBore.Ec34 ? OneInchIn34 : null;

    private static Bridge Reducer(HeadTubeBore bore, string what, Source source) => new()
    {
        Id = $"steerer-25.4-in-{bore.FitKey}".ToLowerInvariant(),
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsMeasuring,
        What = what,
        From = SteererSize.Mm25Point4.FitCode,
        To = bore.FitCode,
        Caution = Cautions.SteeringCare,
        Sources = [source],
    };

    private static Outcome Lower(long end, long seat)
    {
        HeadTubeBore bore = HeadTubeBore.OfFitCode(end);
        CrownSeat size = CrownSeat.OfFitCode(seat);
        return bore.TakesLower(size) ? (bore.LowerFromMemory(size) ? new(Verdict.NeedsMeasuring, Misfits.FromMemory) : new(Verdict.Fits, SomeLower))
            : bore.Room(size.Hundredths) < Least(bore) ? new(Verdict.DoesNotFit, Misfits.NoLower)
            : new(Verdict.NeedsMeasuring, Misfits.NotListed);
    }

    /// <summary>Least difference of diameters, hundredths: an integrated bearing fills it (the thinnest listed needs 10 mm), an external cup only has to pass (2.9 mm is the least listed).</summary>
    private static int Least(HeadTubeBore bore) => bore.IsIntegrated ? 1_000 : 250;

    private static Outcome Cell(long end, long half)
    {
        HeadTubeBore bore = HeadTubeBore.OfFitCode(end);
        HeadTubeBore made = HeadsetCup.OfFitCode(half).Bore;
        if (bore == made)
        {
            return new(Verdict.Fits, bore.IsIntegrated ? SameSeat : Misfits.Same);
        }

        if (bore.IsIntegrated || made.IsIntegrated)
        {
            return new(Verdict.DoesNotFit, !bore.IsIntegrated ? Misfits.NoSeat : made.IsIntegrated ? Misfits.OtherSeat : Misfits.Integrated);
        }

        return new(Verdict.DoesNotFit, bore == HeadTubeBore.Ec29 && made == HeadTubeBore.Ec30 ? Misfits.ReamOnly
            : bore == HeadTubeBore.Ec30 && made == HeadTubeBore.Ec29 ? Misfits.LooseJis
            : made.LeastHundredths > bore.LeastHundredths ? Misfits.TooLarge : Misfits.TooSmall);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason Same = new("cup-of-the-bore", "{1} half in {0}: pressed in, the cup up to 0.1 mm larger than the bore.")
        {
            Sources = [Sources.HeadsetCodeNote, Sources.HeadsetChart, Sources.PressFitRule],
        };

        public static readonly Reason Integrated = new("integrated-seat", "{1} half in {0}: the seat is part of the frame and takes no pressed cup and no other bearing.", Cautions.SteeringCare)
        {
            Mend = "the bearing of the frame's own seat",
            Sources = [Sources.HeadTubeComment, Sources.IntegratedHeadsets],
        };

        public static readonly Reason NoSeat = new("no-integrated-seat", "{1} half needs a seat cut in the frame; {0} has none.", Cautions.SteeringCare)
        {
            Mend = "a headset half with a cup for this bore",
            Sources = [Sources.IntegratedHeadsets],
        };

        public static readonly Reason OtherSeat = new("other-integrated-seat", "{1} bearing in {0}: diameter or contact angle differ.", Cautions.SteeringCare)
        {
            Mend = "the bearing of the frame's own seat, by diameter, height and both angles",
            Sources = [Sources.BearingSeller, Sources.BearingMeasure],
        };

        public static readonly Reason ReamOnly = new("ream-one-way", "{1} cup (30.2 mm) is too large for {0} (30.0 mm cups).", Cautions.SteeringCare)
        {
            Mend = "a JIS headset",
            Offers = [Reaming],
            Sources = [Sources.OneInchHeadsets, Sources.FrontTriangleManual],
        };

        public static readonly Reason LooseJis = new("loose-cup", "{1} cup (30.0 mm) is loose in {0} (30.2 mm cups); never glue or shim it.", Cautions.SteeringCare)
        {
            Mend = "an ISO headset with 30.2 mm cups",
            Sources = [Sources.HeadsetGuide, Sources.OneInchHeadsets],
        };

        public static readonly Reason TooLarge = new("cup-too-large", "{1} cup is larger than {0}.", Cautions.SteeringCare)
        {
            Mend = "a headset half of the head tube's own bore",
            Sources = [Sources.PressFitRule, Sources.HeadsetChart],
        };

        public static readonly Reason TooSmall = new("cup-too-small", "{1} cup is loose in {0}.", Cautions.SteeringCare)
        {
            Mend = "a headset half of the head tube's own bore; reducing headsets are made for the bore, not for the cup",
            Sources = [Sources.PressFitRule, Sources.HeadsetChart],
        };

        public static readonly Reason NoUpper = new("no-upper-half", "{1} through {0}: there is no room for a bearing between them.", Cautions.SteeringCare)
        {
            Mend = "a fork whose steerer this head tube takes",
            Sources = [Sources.OneInchAgainstLarger, Sources.Derived],
        };

        public static readonly Reason NoLower = new("no-lower-half", "Fork with {1} in {0}: there is no room for a bearing between them, and no cup makes any.", Cautions.SteeringCare)
        {
            Mend = "a fork whose crown seat this head tube takes",
            Sources = [Sources.HeadTubeComment, Sources.IntegratedHeadsets, Sources.Derived],
        };

        public static readonly Reason FromMemory = new("half-from-memory", "{1} in {0}: halves for this pair are known from memory alone. Look for one before buying.", Cautions.SteeringCare)
        {
            Sources = [Sources.Memory],
        };

        public static readonly Reason NotListed = new("half-not-listed", "{1} in {0}: no half for this pair is listed; some are made as reducing headsets. Look for one before buying.", Cautions.SteeringCare)
        {
            Sources = [Sources.Memory],
        };
    }
}
