using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>A chain guide on the frame's tabs, or under the drive-side cup.</summary>
internal static class GuideRelations
{
    private static readonly Reason NotUnderCup = new("guide-not-under-cup", "A guide for {0} has no plate under the cup.") { Sources = [Sources.ChainGuideTabs] };

    private static readonly Reason TakesSpacer = new("plate-takes-spacer", "The plate of the guide takes the place of a 2.5 mm spacer; there are {1} mm of spacers under the drive-side cup.", Cautions.GuidePlate) { Sources = [Sources.GuideOnBracket, Sources.CupSpacers] };

    private static readonly Reason NoSpacer = new("no-spacer-for-plate", "The plate of the guide wants the place of a 2.5 mm spacer, and under the drive-side cup there is none left ({1} mm): the chainline moves outward and the cup loses thread. Ask the crank's maker.", Cautions.GuidePlate)
    {
        Mend = "a guide for tabs or the front-derailleur mount, where the frame has them",
        Sources = [Sources.GuideOnBracket, Sources.CupSpacers],
    };

    private static readonly Reason OnTabs = new("guide-on-own-tabs", "A guide for {0} on tabs {1}.") { Sources = [Sources.ChainGuideTabs] };

    private static readonly Reason OtherTabs = new("other-guide-tabs", "A guide for {0} does not go on tabs {1}: the circles are 59.24 and 73 mm.")
    {
        Mend = "a guide for the frame's own tabs",
        Sources = [Sources.ChainGuideTabs],
    };

    private static readonly Reason NeedsNoTabs = new("guide-needs-no-tabs", "A guide for {0} needs no tabs.") { Sources = [Sources.GuideOnBracket] };

    private static readonly Reason NoSeatTubeMount = new("no-front-mount-for-guide", "The guide goes on a front-derailleur mount, and the frame has none.")
    {
        Mend = "a guide for tabs or the bottom bracket",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason CompareMount = new("compare-front-mount", "The guide goes on a front-derailleur mount, the frame has {2}: see that the guide is made for that one.") { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: mount of the guide, spacers under the drive-side cup.</summary>
    public static Relation UnderCup { get; } = new PlateUnderCup();

    /// <summary>Inputs: mount of the guide, tabs of the frame, front-derailleur mount of the frame.</summary>
    public static Relation OnFrame { get; } = new GuideOnFrame();

    private sealed class PlateUnderCup : Relation, ICutsLengths
    {
        private const long Plate = 5 * Nanometres.PerMillimetre / 2;

        public override string Kind => "at least the plate's thickness of spacers, where the guide has a plate";

        public ImmutableArray<long> Cuts { get; } = [Plate];

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values) =>
            values[0] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : values[0] != ChainGuideMount.Bracket.FitCode ? new(Verdict.Fits, NotUnderCup)
            : values[1] >= Plate ? new(Verdict.Fits, TakesSpacer)
            : new(Verdict.NeedsMeasuring, NoSpacer);
    }

    private sealed class GuideOnFrame : Relation
    {
        public override string Kind => "same tabs, where the guide needs tabs";

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long guide, long tabs, long mount) = (values[0], values[1], values[2]);
            return guide == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
                : guide == ChainGuideMount.Bracket.FitCode ? new(Verdict.Fits, NeedsNoTabs)
                : guide == ChainGuideMount.SeatTube.FitCode ? (mount == 0 ? new(Verdict.DoesNotFit, NoSeatTubeMount) : new(Verdict.NeedsMeasuring, CompareMount))
                : tabs == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
                : guide == tabs ? new(Verdict.Fits, OnTabs)
                : new(Verdict.DoesNotFit, OtherTabs);
        }
    }
}
