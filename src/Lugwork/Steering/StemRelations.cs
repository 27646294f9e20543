namespace Lugwork.Steering;

/// <summary>Stem on steerer: the kind must suit, and the size.</summary>
internal static class StemRelations
{
    private static readonly Bridge QuillAdapter = new()
    {
        Id = "clamped-stem-on-threaded-steerer",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "a quill adapter: a quill of the steerer's own size with a plain post on top, of the size that the stem clamps; it goes in to its own mark",
        From = StemFixing.Clamp28Point6.FitCode,
        To = SteererSize.Mm25Point4.FitCode,
        Caution = Cautions.QuillInsertion,
        Sources = [Sources.SteererRequirement, Sources.CommonPractice],
    };

    private static readonly Reason RightSize = new("stem-of-its-size", "{2} is made for {0}.") { Sources = [Sources.StemSizes, Sources.HeadsetArticle] };

    private static readonly Bridge Shim = new()
    {
        Id = "stem-28.6-on-steerer-25.4",
        Kind = BridgeKind.Shim,
        Result = Verdict.NeedsMeasuring,
        What = "steerer shim 25.4 to 28.6 over the full clamp height",
        From = StemFixing.Clamp28Point6.FitCode,
        To = SteererSize.Mm25Point4.FitCode,
        Caution = Cautions.SteeringCare,
        Sources = [Sources.Memory],
    };

    /// <summary>Inputs: steerer size, steerer kind, stem fixing.</summary>
    public static Relation OnSteerer { get; } = new Computed(
        "from the table of size and kind; what goes in and does not hold is unsafe", Judge, [Shim, QuillAdapter], [Sources.SteererRequirement, Sources.HeadsetArticle, Sources.StemSizes, Sources.CommonPractice]);

    private static Outcome Judge(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0 || values[2] == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        StemFixing foot = StemFixing.OfFitCode(values[2]);
        SteererSize size = SteererSize.OfFitCode(values[0]);
        bool threaded = values[1] == SteererKind.Threaded.FitCode;
        return foot.IsQuill ? Quill(foot, size, threaded) : threaded ? new(Verdict.Unsafe, Misfits.OnThreads) : Clamp(foot, size);
    }

    /// <summary>A quill that its steerer is too small for does not go in; any other goes in, and holds only where steerer and size are its own.</summary>
    private static Outcome Quill(StemFixing foot, SteererSize size, bool threaded) =>
        foot.Steerer.Hundredths > size.Hundredths ? new(Verdict.DoesNotFit, Misfits.QuillTooLarge)
        : !threaded ? new(Verdict.Unsafe, Misfits.QuillInThreadless)
        : foot.Steerer == size ? new(Verdict.Fits, RightSize)
        : new(Verdict.Unsafe, Misfits.QuillLoose);

    private static Outcome Clamp(StemFixing foot, SteererSize size) =>
        foot.Steerer == size ? new(Verdict.Fits, RightSize)
        : foot == StemFixing.Clamp28Point6 && size == SteererSize.Mm25Point4 ? new(Verdict.NeedsMeasuring, Reasons.Check3, Shim)
        : new(Verdict.DoesNotFit, foot.Steerer.Hundredths > size.Hundredths ? Misfits.TooLarge : Misfits.TooSmall);

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason OnThreads = new("clamp-on-threads", "{2} would clamp a steerer that is {1}: the clamped part must carry no thread, it breaks there.", Cautions.SteeringCare)
        {
            Mend = "a quill stem",
            Offers = [QuillAdapter],
            Sources = [Sources.SteererRequirement],
        };

        public static readonly Reason QuillInThreadless = new("quill-in-threadless", "{2} goes into a steerer that is {1} and holds nothing: no locknut keeps this headset together, only the clamp of a stem does, and the steerer is not made for a wedge.", Cautions.SteeringCare)
        {
            Mend = "a stem that clamps this steerer",
            Sources = [Sources.HeadsetArticle, Sources.CommonPractice],
        };

        public static readonly Reason TooSmall = new("stem-too-small", "{2} does not go on {0}.", Cautions.SteeringCare)
        {
            Mend = "a stem of the steerer's own size",
            Sources = [Sources.StemSizes, Sources.HeadsetArticle],
        };

        public static readonly Reason TooLarge = new("stem-too-large", "{2} is loose on {0}; a bolt pulled tighter does not make up for it.", Cautions.SteeringCare)
        {
            Mend = "a stem of the steerer's own size",
            Sources = [Sources.StemSizes, Sources.HeadsetArticle],
        };

        public static readonly Reason QuillTooLarge = new("quill-too-large", "{2} does not go into {0}.", Cautions.SteeringCare)
        {
            Mend = "a quill of the steerer's own size",
            Sources = [Sources.StemSizes],
        };

        public static readonly Reason QuillLoose = new("quill-too-small", "{2} goes into {0} and is loose in it: the wedge presses on one side only, and the bar turns or the quill comes out.", Cautions.SteeringCare)
        {
            Mend = "a quill of the steerer's own size",
            Sources = [Sources.StemSizes, Sources.CommonPractice],
        };
    }
}
