using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>Designated widths of splined spindles, measured bores of pressed shells, and adapters on their faces.</summary>
internal static class BracketPieces
{
    private static readonly Reason NoWidth = new("spindle-without-designation", "A spindle of the kind {0} is not sold by a designated width.") { Sources = [Sources.TenSplineFaq] };

    private static readonly Reason SameWidth = new("same-designated-width", "The crank is designed for a spindle of {1} mm and the bottom bracket is designated {2} mm.") { Sources = [Sources.TenSplineFaq] };

    /// <summary>Inputs: spindle that the bottom bracket carries, width of the crank, width of the bottom bracket.</summary>
    public static Relation DesignatedWidth { get; } = new Computed("same width, for ten splines only", JudgeWidth, [], [Sources.TenSplineFaq]);

    /// <summary>Inputs: shell that the bottom bracket is made for, measured bore.</summary>
    public static Relation MeasuredBore { get; } = new PressedBore();

    private static readonly Reason OnMetal = new("adapter-on-metal", "{1} on a face that is {0}.") { Sources = [Sources.ShellAdapterReport] };

    private static readonly Reason NotOnFace = new("adapter-off-the-face", "{1} does not bear on the face, which is {0}.") { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: face of the shell, adapter.</summary>
    public static Relation OnFace { get; } = new Matrix(0, 1, FaceCell, [], [Sources.ShellAdapterReport, Sources.CommonPractice]);

    private static Outcome JudgeWidth(ReadOnlySpan<long> values)
    {
        (long spindle, long crank, long bracket) = (values[0], values[1], values[2]);
        return spindle == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : spindle != SpindleSeat.TenSpline.FitCode ? new(Verdict.Fits, NoWidth)
            : crank == 0 || bracket == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : crank == bracket ? new(Verdict.Fits, SameWidth)
            : new(Verdict.NeedsMeasuring, Misfits.OtherWidth);
    }

    private static Outcome FaceCell(long face, long adapter) =>
        adapter != ShellAdapterKind.Outboard.FitCode ? new(Verdict.Fits, NotOnFace)
        : face == ShellFace.Painted.FitCode ? new(Verdict.Unsafe, Misfits.OnPaint)
        : face == ShellFace.OtherInsert.FitCode ? new(Verdict.Unsafe, Misfits.OnInsert)
        : new(Verdict.Fits, OnMetal);

    private sealed class PressedBore : Relation, ICutsLengths
    {
        // A bore this much over its largest is worn or reamed out; one this much under its least takes no unit.
        private const long Worn = 50_000;
        private const long Tight = 150_000;

        private static readonly Reason Threaded = new("shell-is-threaded", "{0} is threaded: nothing is pressed.") { Sources = [Sources.BracketGuide] };

        private static readonly Reason Within = new("bore-in-tolerance", "A bore of {1} mm is inside the usual limits of {0}.") { Sources = [Sources.CreakyBracket, Sources.Memory] };

        private static readonly Reason NotKnown = new("bore-limits-unknown", "No limits of {0} are known here: ask the maker of the bottom bracket whether it suits a bore of {1} mm.", Cautions.PressFitCare) { Sources = [Sources.Memory] };

        private static readonly Reason Above = new("bore-above-limit", "A bore of {1} mm is over the usual limit of {0}, by less than 0.05 mm: the limits differ from maker to maker. Ask the maker of the bottom bracket.", Cautions.WornBore)
        {
            Mend = "a unit whose two halves screw together, or what the frame's maker allows for an oversize bore",
            Sources = [Sources.CreakyBracket, Sources.Memory],
        };

        private static readonly Reason ReamedOut = new("bore-out-of-tolerance", "A bore of {1} mm is at least 0.05 mm too large for {0}: worn by many changes or reamed out. A pressed unit does not hold in it.", Cautions.WornBore)
        {
            Mend = "a unit whose two halves screw together, or a bonded one, where the frame's maker allows it; report the bore to that maker",
            Sources = [Sources.CreakyBracket, Sources.Memory],
        };

        private static readonly Reason Below = new("bore-below-limit", "A bore of {1} mm is under the usual limit of {0}: measure again at four places, and look for paint.", Cautions.PressFitCare)
        {
            Mend = "have a shop clean and ream a metal shell to the maker's figure; never a carbon one",
            Sources = [Sources.Memory],
        };

        private static readonly Reason TooTight = new("bore-too-small", "A bore of {1} mm is more than 0.15 mm too small for {0}.", Cautions.PressFitCare)
        {
            Mend = "a bottom bracket for the bore that the shell really has",
            Sources = [Sources.PressFitRule, Sources.Memory],
        };

        public override string Kind => "within limits of the family, for pressed shells only";

        public override ImmutableArray<Source> RestsOn => [Sources.CreakyBracket, Sources.Memory];

        public ImmutableArray<long> Cuts { get; } = EveryCut();

        public ImmutableArray<long> Gaps => [];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            if (values[0] == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            ShellFamily family = ShellFamily.OfFitCode(values[0]);
            if (family.IsThreaded)
            {
                return new(Verdict.Fits, Threaded);
            }

            (long least, long most) = Limits(family);
            long bore = values[1];
            return bore == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
                : least == 0 ? new(Verdict.NeedsMeasuring, NotKnown)
                : bore >= most + Worn ? new(Verdict.Unsafe, ReamedOut)
                : bore > most ? new(Verdict.NeedsMeasuring, Above)
                : bore >= least ? new(Verdict.Fits, Within)
                : bore >= least - Tight ? new(Verdict.NeedsMeasuring, Below)
                : new(Verdict.DoesNotFit, TooTight);
        }

        private static (long Least, long Most) Limits(ShellFamily family)
        {
            (int least, int most) = ShellDimensions.Bore(family);
            return (least * 1_000L, most * 1_000L);
        }

        private static ImmutableArray<long> EveryCut()
        {
            List<long> cuts = [];
            foreach (ShellFamily family in ShellFamily.All)
            {
                (long least, long most) = Limits(family);
                foreach (long cut in family.IsThreaded || least == 0 ? [] : new[] { least - Tight, least, most, most + Worn })
                {
                    if (!cuts.Contains(cut))
                    {
                        cuts.Add(cut);
                    }
                }
            }

            return [.. cuts];
        }
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason OtherWidth = new("other-designated-width", "The crank is designed for a spindle of {1} mm and the bottom bracket is designated {2} mm: the arms stand half the difference further in or out. Work out the chainline and look whether arms and rings clear the stays.")
        {
            Mend = "a bottom bracket of the width that the crank's maker names; the length over the ends says nothing",
            Sources = [Sources.TenSplineFaq, Sources.Derived],
        };

        public static readonly Reason OnPaint = new("adapter-on-paint", "{1} on a face that is {0}: it settles and works loose.", Cautions.ShellFace)
        {
            Mend = "have a shop face a metal shell to bare metal; or a bottom bracket of the shell's own kind without the adapter",
            Sources = [Sources.ShellAdapterReport],
        };

        public static readonly Reason OnInsert = new("adapter-on-insert", "{1} bears on an {0}: what it was not made to carry.", Cautions.ShellFace)
        {
            Mend = "a bottom bracket of the shell's own kind without the adapter",
            Sources = [Sources.ShellAdapterReport],
        };
    }
}
