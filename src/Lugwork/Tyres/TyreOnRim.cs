using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Tyre against rim: bead seat, and width by the edition that goes with the rim type.</summary>
internal static class TyreOnRim
{
    private static readonly Reason SameBead = new("same-bead-seat", "Tyre and rim share the bead seat {0} ({1}).") { Sources = [Sources.Iso5775Article] };

    private static readonly Reason OtherBead = new("other-bead-seat", "The rim's bead seat is {0}, the tyre's size is {1}: the second number must be the rim's.", Cautions.BeadSeat)
    {
        Mend = "a tyre whose second ISO number is the rim's",
        Sources = [Sources.Iso5775Article],
    };

    private static readonly Bridge Interchange = new()
    {
        Id = "bead-541-on-540",
        Kind = BridgeKind.MadeForBoth,
        Result = Verdict.Fits,
        What = "none: 540 and 541 are said to interchange",
        From = 541,
        To = 540,
        Caution = Cautions.BeadSeat,
        Sources = [Sources.BeadInterchange],
    };

    private static readonly Bridge Reverse = Interchange with
    {
        Id = "bead-540-on-541",
        Result = Verdict.NeedsMeasuring,
        What = "care: 540 on 541 is said to interchange, but no source mounts it this way round",
        From = 540,
        To = 541,
    };

    private static readonly Reason Stuck = new("tubular-has-no-bead", "A tubular is stuck on its rim: it has no beads, and no bead seat has to agree. Both must be made for one rim diameter.", Cautions.Tubular) { Sources = [Sources.Iso5775Part1Sample, Sources.CommonPractice] };

    private static readonly Reason OtherTubular = new("tubular-of-another-diameter", "The rim is for tubulars of {0}, the tyre for {1}: it goes on loose, or not at all.", Cautions.Tubular)
    {
        Mend = "a tubular of the rim's own diameter",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason TubularUnsized = new("tubular-without-diameter", "A tubular without an ISO size on a rim for tubulars: both are made for one diameter, 28 in class for most. Read it on the tyre and on the rim.", Cautions.Tubular)
    {
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason NotForTubulars = new("tubular-on-clincher-seat", "A tubular has no beads, and a rim for {2} has no bed to stick it on.", Cautions.Tubular)
    {
        Mend = "a tyre with beads in the rim's ISO size, or a wheel with a rim for tubulars",
        Sources = [Sources.Iso5775Part1Sample],
    };

    private static readonly SameKey BeadOnSeat = new(0, 1, SameBead, (_, _) => OtherBead, [Interchange, Reverse]);

    /// <summary>Inputs: rim bead seat, bead seat of the tyre size, how the rim holds a tyre, how the tyre is held.</summary>
    public static Relation Bead { get; } = new BeadRelation();

    /// <summary>Inputs: rim type, inner width, tyre width, tyre bead, how the tyre is held.</summary>
    public static Relation Width { get; } = new WidthRelation();

    /// <summary>Beads on their seat; a tubular on a rim for tubulars has none, and on another rim it does not hold.</summary>
    private sealed class BeadRelation : Relation
    {
        public override string Kind => "the same bead seat, or one known to go on; a tubular has no bead";

        public override ImmutableArray<Bridge> Bridges => BeadOnSeat.Bridges;

        public override ImmutableArray<Source> RestsOn => [Sources.Iso5775Part1Sample];

        public override Outcome Judge(ReadOnlySpan<long> values) =>
            values[3] != TyreHold.Tubular.FitCode ? BeadOnSeat.Judge(values)
            : values[2] != TyreHold.Tubular.FitCode ? new(Verdict.DoesNotFit, values[2] == 0 ? Reasons.NothingToMate : NotForTubulars)
            : values[0] != 0 && values[1] != 0 && values[0] != values[1] ? new(Verdict.DoesNotFit, OtherTubular)
            : values[0] == 0 || values[1] == 0 ? new(Verdict.NeedsMeasuring, TubularUnsized)
            : new(Verdict.Fits, Stuck);
    }

    private sealed class WidthRelation : Relation, ICutsLengths
    {
        private static readonly Reason StuckWidth = new("tubular-width", "A tubular is stuck on its rim: the ranges are of beads between flanges, and say nothing of it. The rim's maker names the widths.", Cautions.Tubular) { Sources = [Sources.Iso5775Part1Sample, Sources.CommonPractice] };

        private const int Millimetre = (int)Nanometres.PerMillimetre;

        // Inner width, least and most tyre width, millimetres. Crochet rims: 2006; the rows from 19 up are reconstructed.
        private static readonly Edition Edition2006 = new(
            [(13, 18, 25), (15, 23, 32), (17, 25, 50), (19, 28, 62), (21, 35, 62), (23, 37, 62), (25, 44, 62), (27, 47, 62), (29, 54, 62)]);

        private static readonly Edition Edition2022 = new(
            [(17, 20, 54), (19, 22, 63), (21, 25, 65), (23, 25, 65), (25, 28, 83), (28, 40, 83), (30, 47, 99)]);

        private static readonly Reason Fits2006 = new("width-2006", "A {2} tyre is inside the 2006 range of a {0} rim {1} mm wide inside.") { Sources = [Sources.WidthMatrix2006] };

        private static readonly Reason Fits2022 = new("width-2022", "A {2} tyre is inside the 2022 range of a {0} rim {1} mm wide inside.") { Sources = [Sources.WidthRanges2022] };

        private static readonly Reason Soft = new("width-soft", "A {2} tyre is inside the range of a {0} rim {1} mm wide inside, but more than twice as wide.", Cautions.WideTyre)
        {
            Sources = [Sources.WidthGuideline, Sources.WidthMatrix2006],
        };

        private static readonly Reason Out2006 = new("outside-2006", "A {2} tyre is outside the 2006 range of a {0} rim {1} mm wide inside.", Cautions.BeadSeat)
        {
            Mend = "a tyre inside the range, or a rim of another inner width",
            Sources = [Sources.WidthMatrix2006],
        };

        private static readonly Reason Out2022 = new("outside-2022", "A {2} tyre is outside the 2022 range of a {0} rim {1} mm wide inside.", Cautions.BeadSeat)
        {
            Mend = "a tyre inside the range, or a rim of another inner width",
            Sources = [Sources.WidthRanges2022],
        };

        private static readonly Reason NoRow = new("no-row", "No published row covers a {0} rim {1} mm wide inside with a {2} tyre: ask the rim maker for the tyre widths it allows.")
        {
            Sources = [Sources.WidthRanges2022],
        };

        private static readonly Reason HooklessNarrow = new("hookless-too-narrow", "A {2} tyre is too narrow for a hookless rim {1} mm wide inside: it can blow off.", Cautions.Hookless)
        {
            Mend = "a wider tyre: on 25 mm inside at least 29 mm, elsewhere at least 5 mm more than the rim is wide inside",
            Sources = [Sources.HooklessIso2023, Sources.HooklessGap],
        };

        private static readonly Reason HooklessBead = new("hookless-wrong-bead", "A hookless rim takes tubeless or tubeless-ready tyres only, even with a tube inside; this one is {3}.", Cautions.Hookless)
        {
            Mend = "a tubeless-ready tyre that its maker allows on hookless rims",
            Sources = [Sources.TyreStatement],
        };

        private static readonly Reason HooklessAllowed = new("hookless-width", "A {2} tyre is wide enough for a hookless rim {1} mm wide inside by the figures we have.", Cautions.Hookless)
        {
            Sources = [Sources.HooklessIso2023, Sources.HooklessGap],
        };

        private static readonly Reason BeadedOnly = new("beaded-edge-only", "A hooked-bead rim takes beaded-edge tyres of its own diameters only, no tyre with an ISO wired size.")
        {
            Mend = "another rim",
            Sources = [Sources.Iso5775Part2Extract, Sources.Iso5775Article],
        };

        private static readonly Reason RigidOnly = new("rigid-only", "A straight-side rim takes rigid wired beads only; this tyre is {3}.", Cautions.BeadSeat)
        {
            Mend = "a tyre with a rigid wired bead",
            Sources = [Sources.Iso5775Part2Extract],
        };

        public override string Kind => "from the tables of inner width and tyre width for each type of rim, which name what is unsafe";

        public override ImmutableArray<Source> RestsOn =>
            [Sources.WidthMatrix2006, Sources.WidthRanges2022, Sources.HooklessIso2023, Sources.HooklessGap];

        public ImmutableArray<long> Cuts { get; } = [.. Edition2006.Rims, .. Edition2022.Rims];

        public ImmutableArray<long> Gaps { get; } = [4L * Millimetre, 5L * Millimetre];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long type, long inner, long width, long bead) = (values[0], values[1], values[2], values[3]);
            if (values[4] == TyreHold.Tubular.FitCode)
            {
                return new(Verdict.Fits, StuckWidth);
            }

            if (type == 0 || inner == 0 || width == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (type == RimType.HookedBead.FitCode)
            {
                return new(Verdict.DoesNotFit, BeadedOnly);
            }

            if (type == RimType.StraightSide.FitCode)
            {
                return bead == TyreBead.Wired.FitCode ? new(Verdict.NeedsMeasuring, NoRow) : new(Verdict.DoesNotFit, RigidOnly);
            }

            if (type == RimType.Hookless.FitCode)
            {
                return Hookless(inner, width, bead);
            }

            bool old = type == RimType.Crochet.FitCode;
            bool? inside = Inside(old ? Edition2006 : Edition2022, inner, width);
            return inside switch
            {
                null when width <= inner => new(Verdict.DoesNotFit, old ? Out2006 : Out2022),
                null => new(Verdict.NeedsMeasuring, NoRow),
                false => new(Verdict.DoesNotFit, old ? Out2006 : Out2022),
                true => new(Verdict.Fits, width > 2 * inner ? Soft : old ? Fits2006 : Fits2022),
            };
        }

        private static Outcome Hookless(long inner, long width, long bead)
        {
            if (width < HooklessLeast(inner))
            {
                return new(Verdict.Unsafe, HooklessNarrow);
            }

            if (bead != TyreBead.Tubeless.FitCode)
            {
                return new(Verdict.Unsafe, HooklessBead);
            }

            // The published ranges do not say whether they cover hookless rims: up to 25 mm they only bound the wide side, above they are all there is.
            return Inside(Edition2022, inner, width, widest: inner <= 25L * Millimetre) switch
            {
                null => new(Verdict.NeedsMeasuring, NoRow),
                false => new(Verdict.DoesNotFit, Out2022),
                true => new(Verdict.Fits, HooklessAllowed),
            };
        }

        /// <summary>Published: 29 mm on 25 mm (2023), and a gap of 5 mm elsewhere; in between the stricter of both.</summary>
        private static long HooklessLeast(long inner) =>
            inner is > 23L * Millimetre and <= 25L * Millimetre ? Math.Max(29L * Millimetre, inner + (4L * Millimetre)) : inner + (5L * Millimetre);

        /// <summary>Between two listed rims the stricter of both counts; outside the list there is no answer.</summary>
        private static bool? Inside(Edition edition, long inner, long width, bool widest = false)
        {
            ReadOnlySpan<long> rims = edition.Rims;
            int above = 0;
            while (above < rims.Length && rims[above] < inner)
            {
                above++;
            }

            if (above == rims.Length || (above == 0 && rims[0] > inner))
            {
                return null;
            }

            int below = rims[above] == inner ? above : above - 1;
            return (widest || (width >= edition.Least[above] && width >= edition.Least[below])) && width <= edition.Most[above] && width <= edition.Most[below];
        }

        /// <summary>The rows of one edition in nanometres, narrow rims first: inner width, least and most tyre width.</summary>
        private sealed class Edition
        {
            public Edition((int Rim, int Least, int Most)[] rows)
            {
                (Rims, Least, Most) = (new long[rows.Length], new long[rows.Length], new long[rows.Length]);
                for (int i = 0; i < rows.Length; i++)
                {
                    Rims[i] = rows[i].Rim * (long)Millimetre;
                    Least[i] = rows[i].Least * (long)Millimetre;
                    Most[i] = rows[i].Most * (long)Millimetre;
                }
            }

            public long[] Rims { get; }

            public long[] Least { get; }

            public long[] Most { get; }
        }
    }
}
