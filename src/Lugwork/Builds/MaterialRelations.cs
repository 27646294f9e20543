using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;

namespace Lugwork;

/// <summary>Joints in which what a part is made of meets an interface of another area.</summary>
internal static class MaterialRelations
{
    private static readonly Reason NutInMetal = new("star-nut-in-metal", "{1} in a steerer of {0}.") { Sources = [Sources.ForkCutting, Sources.StarNutSetting] };

    /// <summary>Inputs: material of the steerer, star nut or expander, kind of steerer.</summary>
    public static Relation Preload { get; } = new Computed("from the table of the three together", JudgePreload, [], [Sources.ForkCutting, Sources.HeadsetArticle]);

    private static readonly Reason CarbonInCollar = new("carbon-post-in-collar", "A post of {0}; what holds it: {1}. Turn the slot of the collar away from the slot of the tube, and tighten it to the post maker's figure.", Cautions.CarbonPost) { Sources = [Sources.CarbonPostCracks] };

    private static readonly Reason MetalInTabs = new("metal-post-in-tabs", "A post of {0}; what holds it: {1}.") { Sources = [Sources.CarbonPostCracks] };

    /// <summary>Inputs: material of the post, binder.</summary>
    public static Relation PostInBinder { get; } = new Matrix(0, 1, MaterialCell, [], [Sources.CarbonPostCracks]);

    private static Outcome JudgePreload(ReadOnlySpan<long> values)
    {
        (long material, long preload, long kind) = (values[0], values[1], values[2]);
        return material == 0 || preload == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : preload == SteererPreload.StarNut.FitCode && material == Material.Carbon.FitCode ? new(Verdict.Unsafe, Misfits.NutInCarbon)
            : kind != SteererKind.Threadless.FitCode ? new(Verdict.DoesNotFit, Misfits.HasLocknut)
            : new(Verdict.Fits, preload == SteererPreload.StarNut.FitCode ? NutInMetal : PlugInside);
    }

    private static Outcome MaterialCell(long material, long binder) =>
        binder == SeatBinder.Collar.FitCode ? new(Verdict.Fits, material == Material.Carbon.FitCode ? CarbonInCollar : ByCollar)
        : material == Material.Carbon.FitCode ? new(Verdict.Unsafe, Misfits.CarbonInTabs)
        : new(Verdict.Fits, MetalInTabs);

    private static readonly Reason PlugInside = new("expander-in-steerer", "{1} in a steerer of {0}.") { Sources = [Sources.ForkCutting, Sources.StarNutSetting] };

    private static readonly Reason ByCollar = new("post-in-collar", "A post of {0}; what holds it: {1}.") { Sources = [Sources.CarbonPostCracks] };

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason NutInCarbon = new("star-nut-in-carbon", "{1} in a steerer of {0}: a star nut bites into metal, and carbon takes none.", Cautions.StarNutCare)
        {
            Mend = "the expander plug of the fork's maker",
            Sources = [Sources.ForkCutting],
        };

        public static readonly Reason HasLocknut = new("preload-by-locknut", "A steerer that is {2} is adjusted by the locknut of its headset: {1} has nothing to do in it.")
        {
            Mend = "leave it out",
            Sources = [Sources.HeadsetArticle],
        };

        public static readonly Reason CarbonInTabs = new("carbon-post-in-tabs", "A post of {0} in {1}: the ears pinch it beside the slot, and posts have cracked there.", Cautions.CarbonPost)
        {
            Mend = "a metal post",
            Sources = [Sources.CarbonPostCracks],
        };
    }
}
