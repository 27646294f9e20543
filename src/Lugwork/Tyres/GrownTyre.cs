using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>A tyre with the width that it has on its rim, against the largest that the maker allows: reckoned from its label, or from a width that was measured.</summary>
internal sealed class GrownTyre : Relation, ICutsByOthers
{
    /// <summary>A tyre may measure this much less or more than its label: arithmetic refuses only beyond it, and a tyre that grows fits only this far within.</summary>
    public const long Tolerance = 3 * Nanometres.PerMillimetre;

    private static readonly Reason Inside = new("grown-within-limit", "{0} on a rim {1} mm wide inside stays within the largest that the maker allows, {2}.") { Sources = [Sources.MeasuringRims, Sources.WidthTolerance] };

    private static readonly Reason Maybe = new("grown-near-limit", "{0} on a rim {1} mm wide inside grows beyond its label, maybe beyond the largest that the maker allows, {2}: measure it when it is mounted.", Cautions.TyreRoom)
    {
        Mend = "a narrower tyre, or a narrower rim",
        Sources = [Sources.MeasuringRims, Sources.WidthTolerance],
        Asks = [5, 6],
    };

    private static readonly Reason Out = new("grown-above-limit", "{0} on a rim {1} mm wide inside grows beyond the largest that the maker allows, {2}, by more than tyres differ from their label.", Cautions.TyreRoom)
    {
        Mend = "a narrower tyre, or a narrower rim",
        Sources = [Sources.MeasuringRims, Sources.WidthTolerance],
    };

    private static readonly Reason MeasuredInside = new("mounted-within-limit", "{0}, measured {5} mm wide on a rim {6} mm wide inside, stays within the largest that the maker allows, {2}, on a rim of {1} mm.", Cautions.TyreRoom) { Sources = [Sources.MeasuringRims, Sources.WidthTolerance] };

    private static readonly Reason MeasuredNear = new("mounted-near-limit", "{0}, measured {5} mm wide on a rim {6} mm wide inside, may be wider on a rim of {1} mm than the largest that the maker allows, {2}, by no more than tyres differ from their label: measure the narrowest gap.", Cautions.TyreRoom)
    {
        Mend = "a narrower tyre, or a narrower rim",
        Sources = [Sources.MeasuringRims, Sources.WidthTolerance],
        Asks = [2, 5, 6],
    };

    private static readonly Reason MeasuredOut = new("mounted-above-limit", "{0}, measured {5} mm wide on a rim {6} mm wide inside, is on a rim of {1} mm wider than the largest that the maker allows, {2}, by more than tyres differ from their label.", Cautions.TyreRoom)
    {
        Mend = "a narrower tyre, or a narrower rim",
        Sources = [Sources.MeasuringRims, Sources.WidthTolerance],
    };

    private static readonly Reason OnWhichRim = new("mounted-on-which-rim", "{0} was measured {5} mm wide, and nobody said on which rim.", Cautions.TyreRoom) { Sources = [Sources.MeasuringRims], Asks = [6] };

    private static readonly Reason OtherWheel = TyreRoom.OtherWheel with { Template = "{0} where the maker's limit, {2}, is for another wheel size: ask the maker, and measure the mounted tyre." };

    private static readonly Reason TooWide = TyreRoom.TooWide with { Template = "{0} is wider than the largest that the maker allows, {2}, on any rim." };

    /// <summary>From which width, millimetres, a tyre is measured on which rim, millimetres inside.</summary>
    private static readonly (int From, int Rim)[] MeasuringRims =
        [(18, 15), (22, 17), (25, 19), (29, 21), (35, 23), (47, 25), (58, 30), (66, 35), (72, 45), (84, 76), (114, 94)];

    public override string Kind => "arithmetic: growth on a rim wider than the measuring rim, or than the rim on which the tyre was measured, within one wheel size";

    public override ImmutableArray<Source> RestsOn => [Sources.MeasuringRims, Sources.WidthTolerance];

    /// <summary>The rim on which tyres of a width are measured, nanometres inside.</summary>
    public static long MeasuringRim(long width)
    {
        long rim = MeasuringRims[0].Rim;
        foreach ((int from, int inner) in MeasuringRims)
        {
            rim = width >= from * Nanometres.PerMillimetre ? inner : rim;
        }

        return rim * Nanometres.PerMillimetre;
    }

    /// <summary>The rims and mounted widths at which a tyre perhaps or surely leaves a known limit.</summary>
    public IEnumerable<long> CutsFor(int input, CandidateRow row, ImmutableArray<JointInput> inputs)
    {
        if (input is not (1 or 5 or 6))
        {
            yield break;
        }

        long[] mounted = input == 5 ? [0] : Ends(row[5]);
        foreach (long limit in Ends(row[2]))
        {
            foreach (long width in input == 1 && row[5].State == KnownState.None ? Ends(row[0]) : [])
            {
                yield return MeasuringRim(width);
                yield return TyreRoom.WidestRim(width, limit);
                yield return MeasuringRim(width) + ((limit + Tolerance - width) * 5 / 2);
            }

            foreach (long most in new[] { limit, limit + Tolerance })
            {
                foreach (long measured in mounted)
                {
                    foreach (long other in input == 1 ? Ends(row[6]) : input == 6 ? Ends(row[1]) : [0])
                    {
                        long off = input == 6 ? measured - most : most - measured;
                        foreach (long inner in input == 5 ? Ends(row[1]) : [0])
                        {
                            foreach (long rim in input == 5 ? Ends(row[6]) : [0])
                            {
                                yield return most - (inner - rim);
                                yield return most - ((inner - rim) * 2 / 5);
                            }
                        }

                        yield return other;
                        yield return other + off;
                        yield return other + (off * 5 / 2);
                    }
                }
            }
        }
    }

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        (long width, long inner, long largest, long mounted) = (values[0], values[1], values[2], values[5]);
        return width == 0 || values[3] == 0 ? new(Verdict.NeedsMeasuring, TyreRoom.NoSize)
            : inner == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
            : largest == 0 || values[4] == 0 ? new(Verdict.NeedsMeasuring, TyreRoom.NoLimit)
            : values[3] != values[4] ? new(Verdict.NeedsMeasuring, OtherWheel)
            : width > largest ? new(Verdict.DoesNotFit, TooWide)
            : mounted != 0 ? Measured(mounted, values[6], inner, largest)
            : ByLabel(width, inner, largest);
    }

    private static Outcome ByLabel(long width, long inner, long largest)
    {
        long grows = Math.Max(0, inner - MeasuringRim(width));
        return grows == 0 || width + grows + Tolerance <= largest ? new(Verdict.Fits, Inside)
            : width + (grows * 2 / 5) - Tolerance <= largest ? new(Verdict.NeedsMeasuring, Maybe)
            : new(Verdict.DoesNotFit, Out);
    }

    /// <summary>On the rim on which it was measured it is as wide as it was; on a wider one it grows and on a narrower one it shrinks, by 0.4 to 1.0 mm for each millimetre.</summary>
    private static Outcome Measured(long mounted, long rim, long inner, long largest)
    {
        if (rim == 0)
        {
            return new(Verdict.NeedsMeasuring, OnWhichRim);
        }

        long wider = inner - rim;
        long least = mounted + (wider < 0 ? wider : wider * 2 / 5);
        long most = mounted + (wider < 0 ? wider * 2 / 5 : wider);
        return most <= largest ? new(Verdict.Fits, MeasuredInside)
            : least <= largest + Tolerance ? new(Verdict.NeedsMeasuring, MeasuredNear)
            : new(Verdict.DoesNotFit, MeasuredOut);
    }

    private static long[] Ends(in Candidates own) => own.State switch
    {
        KnownState.OneOf => own.Codes!,
        KnownState.Value or KnownState.Measured => [own.Low, own.High],
        _ => [],
    };
}
