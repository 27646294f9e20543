using System.Collections.Immutable;

namespace Lugwork.Seating;

/// <summary>A saddle height against post, seat tube and dropper: rails above the collar = saddle height - seat tube - depth of the saddle.</summary>
internal static class SaddleSums
{
    private static readonly ImmutableArray<Source> Insertion = [Sources.SeatRegulation, Sources.FrameManual, Sources.DropperTips];

    /// <summary>Inputs: saddle height, post, seat tube, saddle depth, mark, the frame's least, two diameters of the post. How much deeper the post sits than it must; two diameters where no mark asks for more.</summary>
    public static SumRelation Least { get; } = new SumRelation(
            "post in by its mark and the frame's least at this saddle height", "mm",
            v => v[1] - v[0] + v[2] + v[3] - Math.Max(Math.Max(v[4], v[5]), v[6]), [-1, 1, 1, 1, -1, -1, -1],
            new(long.MinValue, new(Verdict.Unsafe, new Reason("post-too-short-for-height", "At a saddle height of {0} mm a post of {1} mm sits [over] mm less deep than its mark ({4} mm), the frame ({5} mm) and two of its diameters ({6} mm) ask for.", Cautions.Insertion) { Mend = "a longer post", Sources = Insertion })),
            new(0, new(Verdict.Fits, new Reason("post-long-enough", "At a saddle height of {0} mm a post of {1} mm sits [sum] mm deeper than it must.") { Sources = Insertion })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>Inputs: saddle height, post, seat tube, saddle depth, how deep the seat tube is open (none: no limit). Room below the post.</summary>
    public static SumRelation Most { get; } = new SumRelation(
            "post within the open seat tube at this saddle height", "mm",
            v => v[4] - v[1] + v[0] - v[2] - v[3], [1, -1, -1, -1, 1],
            new(long.MinValue, new(Verdict.DoesNotFit, new Reason("post-too-long-for-height", "At a saddle height of {0} mm a post of {1} mm goes [over] mm deeper than the seat tube is open ({4} mm).", Cautions.Insertion) { Mend = "a shorter post; a rigid metal post may be cut as its maker allows", Sources = Insertion })),
            new(0, new(Verdict.Fits, new Reason("post-short-enough", "At a saddle height of {0} mm a post of {1} mm stays within the {4} mm that the seat tube is open.") { Sources = Insertion })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate)
        .Without(4, Verdict.Fits, new Reason("nothing-limits-post", "At a saddle height of {0} mm nothing limits how deep a post of {1} mm goes.") { Sources = [Sources.FrameManual] });

    /// <summary>Farther apart, the measured depth and the sum are not of one saddle height. Our own bound, no source: two readings to 2 mm each.</summary>
    private const long SameHeight = 5 * Nanometres.PerMillimetre;

    private static readonly Reason Apart = new("insertion-of-another-height", "The post sits {0} mm deep, as measured, and a saddle height of {1} mm makes it [over] mm more or less by the lengths of post, seat tube and saddle: more than 5 mm apart (our own bound, no source). One of them is of another saddle height; measure both again.", Cautions.Insertion)
    {
        Sources = [Sources.CommonPractice, Sources.Derived],
        Asks = [0, 1],
    };

    /// <summary>Inputs: insertion as measured, saddle height, post, seat tube, saddle depth. How much deeper the post was measured than the saddle height makes it.</summary>
    public static SumRelation Read { get; } = new SumRelation(
            "insertion as measured within 5 mm of the one by the saddle height", "mm",
            v => v[0] - v[2] + v[1] - v[3] - v[4], [1, 1, -1, -1, -1],
            new(long.MinValue, new(Verdict.NeedsMeasuring, Apart)),
            new(-SameHeight, new(Verdict.Fits, new Reason("insertion-of-this-height", "The post sits {0} mm deep, as measured, which goes with a saddle height of {1} mm.") { Sources = [Sources.CommonPractice, Sources.Derived] })),
            new(SameHeight + 1, new(Verdict.NeedsMeasuring, Apart)))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate).Without(4, Verdict.DoesNotFit, Reasons.NothingToMate);

    /// <summary>Inputs: saddle height, travel, seat tube, saddle depth, stack. Post that shows above the collar.</summary>
    public static SumRelation Dropper { get; } = new SumRelation(
            "rails at least as high above the collar as the dropper stands fully up", "mm",
            v => v[0] - v[2] - v[3] - v[4] - v[1], [1, -1, -1, -1, -1],
            new(long.MinValue, new(Verdict.DoesNotFit, new Reason("dropper-too-long", "A dropper of {1} mm travel stands [over] mm too high for a saddle height of {0} mm even pushed in to its lip.", Cautions.Insertion) { Mend = "a dropper of less travel, or one whose travel can be shortened", Sources = [Sources.DropperTips] })),
            new(0, new(Verdict.Fits, new Reason("dropper-within-height", "A dropper of {1} mm travel reaches a saddle height of {0} mm with [sum] mm of post above the collar.") { Sources = [Sources.DropperTips] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.DoesNotFit, Reasons.NothingToMate).Without(2, Verdict.DoesNotFit, Reasons.NothingToMate).Without(3, Verdict.DoesNotFit, Reasons.NothingToMate).Without(4, Verdict.DoesNotFit, Reasons.NothingToMate);
}
