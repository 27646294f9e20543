namespace Lugwork.Steering;

/// <summary>Stem on steerer: the kind must suit, and the size.</summary>
internal static class StemRelations
{
    private static readonly Reason RightKind = new("stem-of-its-kind", "{2} on {0}, {1}.") { Sources = [Sources.HeadsetArticle] };

    private static readonly Reason OnThreads = new("clamp-on-threads", "{2} would clamp a steerer that is {1}: the clamped part must carry no thread, it breaks there.", Cautions.SteeringCare)
    {
        Mend = "a quill stem, or a quill adapter for a clamped stem",
        Sources = [Sources.SteererRequirement],
    };

    private static readonly Reason QuillInThreadless = new("quill-in-threadless", "{2} in a steerer that is {1}: a threadless headset is held by the stem's clamp, a quill holds nothing.", Cautions.SteeringCare)
    {
        Mend = "a stem that clamps this steerer",
        Sources = [Sources.HeadsetArticle],
    };

    private static readonly Reason RightSize = new("stem-of-its-size", "{2} is made for {0}.") { Sources = [Sources.StemSizes, Sources.HeadsetArticle] };

    private static readonly Reason TooSmall = new("stem-too-small", "{2} does not go on {0}.", Cautions.SteeringCare)
    {
        Mend = "a stem of the steerer's own size",
        Sources = [Sources.StemSizes, Sources.HeadsetArticle],
    };

    private static readonly Reason TooLarge = new("stem-too-large", "{2} is loose on {0}; a bolt pulled tighter does not make up for it.", Cautions.SteeringCare)
    {
        Mend = "a stem of the steerer's own size",
        Sources = [Sources.StemSizes, Sources.HeadsetArticle],
    };

    private static readonly Reason QuillTooLarge = new("quill-too-large", "{2} does not go into {0}.", Cautions.SteeringCare)
    {
        Mend = "a quill of the steerer's own size",
        Sources = [Sources.StemSizes],
    };

    private static readonly Reason QuillLoose = new("quill-too-small", "{2} is loose in {0}: its wedge may not hold.", Cautions.SteeringCare)
    {
        Mend = "a quill of the steerer's own size",
        Sources = [Sources.StemSizes],
    };

    private static readonly Bridge Shim = new()
    {
        Id = "stem-28.6-on-steerer-25.4",
        Kind = BridgeKind.Shim,
        Result = Verdict.NeedsMeasuring,
        What = "steerer shim 25.4 to 28.6 over the full clamp height",
        From = StemFoot.Clamp28Point6.FitCode,
        To = SteererSize.Mm25Point4.FitCode,
        Caution = Cautions.SteeringCare,
        Sources = [Sources.Memory],
    };

    /// <summary>Inputs: steerer size, steerer kind, stem fixing.</summary>
    public static Relation OnSteerer { get; } = new AllOf(
        new Matrix(1, 2, Kind, [], [Sources.SteererRequirement, Sources.HeadsetArticle]),
        new Matrix(0, 2, Size, [Shim], [Sources.StemSizes, Sources.HeadsetArticle]));

    private static Outcome Kind(long kind, long foot) =>
        (kind == SteererKind.Threaded.FitCode) == StemFoot.OfFitCode(foot).IsQuill
            ? new(Verdict.Fits, RightKind)
            : kind == SteererKind.Threaded.FitCode ? new(Verdict.Unsafe, OnThreads) : new(Verdict.DoesNotFit, QuillInThreadless);

    private static Outcome Size(long steerer, long stem)
    {
        StemFoot foot = StemFoot.OfFitCode(stem);
        SteererSize size = SteererSize.OfFitCode(steerer);
        if (foot.Steerer == size)
        {
            return new(Verdict.Fits, RightSize);
        }

        if (foot == StemFoot.Clamp28Point6 && size == SteererSize.Mm25Point4)
        {
            return new(Verdict.NeedsMeasuring, Reasons.Check3, Shim);
        }

        bool larger = foot.Steerer.Hundredths > size.Hundredths;
        return new(Verdict.DoesNotFit, foot.IsQuill ? (larger ? QuillTooLarge : QuillLoose) : larger ? TooLarge : TooSmall);
    }
}
