namespace Lugwork.Suspension;

/// <summary>A fork's length, travel and crowns against what the frame is made for.</summary>
internal static class ForkRelations
{
    private static readonly Reason Allowed = new("crown-allowed", "{1} on a frame rated for {0}.") { Sources = [Sources.CommonPractice] };

    private static readonly Reason WithinLimit = new("fork-within-limit", "A fork with axle to crown {0} mm and {2} mm of travel; the frame maker allows {1} mm and {3} mm of travel.") { Sources = [Sources.ForkTravel] };

    private static readonly Reason WithinLength = WithinLimit with { Template = "A fork with axle to crown {0} mm; the frame maker allows {1} mm." };

    private static readonly Reason WithinTravel = WithinLimit with { Template = "A fork with {2} mm of travel; the frame maker allows {3} mm." };

    private static readonly Reason NoLeast = new("no-shortest-fork", "A fork of {0} mm axle to crown, and the frame maker prints no shortest: ask.", Cautions.ForkClassCare) { Sources = [Sources.ForkTravel] };

    /// <summary>Inputs: axle to crown of the fork, the frame's longest, travel of the fork, the frame's most.</summary>
    public static Relation WithinFramesLimit { get; } = new ForkLimit();

    /// <summary>Inputs: the crowns that the frame is rated for, the fork's.</summary>
    public static Relation CrownOnFrame { get; } = new Matrix(0, 1, Cell, [], [Sources.CommonPractice]);

    /// <summary>Inputs: axle to crown of the fork, the frame's shortest.</summary>
    public static SumRelation NotTooShort { get; } = new SumRelation(
            "at least the frame's shortest", "mm", v => v[0] - v[1], [1, -1],
            new(long.MinValue, new(Verdict.DoesNotFit, new Reason("fork-too-short", "A fork of {0} mm axle to crown is [over] mm shorter than the {1} mm from which the frame maker allows: the steering becomes steeper and the pedals come closer to the ground.", Cautions.ForkClassCare) { Mend = "a longer fork, or the frame maker's word", Sources = [Sources.ForkTravel, Sources.Derived] })),
            new(0, new(Verdict.Fits, new Reason("fork-long-enough", "A fork of {0} mm axle to crown; the frame maker allows from {1} mm.") { Sources = [Sources.ForkTravel] })))
        .Without(0, Verdict.DoesNotFit, Reasons.NothingToMate).Without(1, Verdict.NeedsMeasuring, NoLeast);

    private static Outcome Cell(long frame, long fork) =>
        frame == CrownType.Single.FitCode && fork == CrownType.Dual.FitCode ? new(Verdict.Unsafe, Misfits.NotRated) : new(Verdict.Fits, Allowed);

    /// <summary>A limit of "none" is not printed. A limit of length is enough; one of travel is for suspension forks, and says nothing of a rigid one.</summary>
    private sealed class ForkLimit : Relation
    {
        public override string Kind => "at most, in length and in travel";

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long length, long longest, long travel, long most) = (values[0], values[1], values[2], values[3]);
            return length == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
                : longest != 0 && length > longest ? new(Verdict.Unsafe, Misfits.TooLong)
                : most != 0 && travel > most ? new(Verdict.Unsafe, Misfits.TooMuchTravel)
                : longest == 0 && (most == 0 || travel == 0) ? new(Verdict.NeedsMeasuring, Misfits.NoLimit)
                : new(Verdict.Fits, longest == 0 ? WithinTravel : most == 0 || travel == 0 ? WithinLength : WithinLimit);
        }
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason NotRated = new("dual-crown-not-rated", "{1} on a frame rated for {0}: the head tube may break. The frame's maker must allow it.", Cautions.ForkClassCare)
        {
            Mend = "a single-crown fork, or the frame maker's word",
            Sources = [Sources.CommonPractice],
        };

        public static readonly Reason TooLong = new("fork-too-long", "A fork of {0} mm axle to crown is longer than the {1} mm that the frame maker allows: it levers on the head tube and slackens the steering.", Cautions.ForkClassCare)
        {
            Mend = "a shorter fork, or the frame maker's word",
            Sources = [Sources.ForkTravel, Sources.Derived],
        };

        public static readonly Reason TooMuchTravel = TooLong with { Id = "fork-travel-too-much", Template = "A fork of {2} mm travel has more than the {3} mm that the frame maker allows: it levers on the head tube." };

        public static readonly Reason NoLimit = new("no-fork-limit", "A fork with axle to crown {0} mm, and the frame maker prints no limit: ask; a missing one is unknown, not unlimited.", Cautions.ForkClassCare) { Sources = [Sources.ForkTravel] };
    }
}
