using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>A front derailleur on the frame and over the rings.</summary>
internal static class FrontDerailleurRelations
{
    // The least shortfall that a page names: 2.5 to 3.4 mm.
    private const decimal Short = 2.5m;

    private static readonly Reason SameMount = new("front-mount", "{1} on {0}.") { Sources = [Sources.FrontDerailleurs, Sources.FrontMountSpacing] };

    private static readonly Reason BandTooSmall = new("band-too-small", "{1} does not close round {0}.")
    {
        Mend = "a front derailleur for the frame's own tube or tab",
        Sources = [Sources.Derived],
    };

    private static readonly Reason BandOnTab = new("band-beside-tab", "{1} does not go on {0}: a shaped tube, or one with a tab, is no place for a band.")
    {
        Mend = "a front derailleur for the frame's own tab",
        Sources = [Sources.FrontDerailleurs, Sources.CommonPractice],
    };

    private static readonly Reason OtherHoles = new("other-front-mount", "{1} does not go on {0}: holes or tab are others.")
    {
        Mend = "a front derailleur for the frame's own mount",
        Sources = [Sources.FrontMountSpacing],
    };

    private static readonly Reason Reaches = new("front-derailleur-for-rings", "A front derailleur for {1} and {3} over rings for {0} and {2}.") { Sources = [Sources.FrontDerailleurs, Sources.CrankTable] };

    private static readonly Reason OneRing = new("nothing-to-shift", "Rings for {0} and a front derailleur for {1}: one ring, or a belt, is not shifted.") { Mend = "no front derailleur", Sources = [Sources.CommonPractice] };

    private static readonly Reason OtherSpeeds = new("other-cage-width", "A front derailleur for {1} over rings for {0}: its cage is made for another chain. Ask its maker.", Cautions.ShiftSetUp) { Sources = [Sources.CommonPractice] };

    private static readonly Reason TooShort = new("cage-too-short", "A front derailleur for {3} over a crank with {2}: the cage stops short of the outer ring.", Cautions.ShiftSetUp)
    {
        Mend = "the version of the front derailleur for the wider chainline",
        Sources = [Sources.CrankTable, Sources.ChainlineRoadDisc],
    };

    private static readonly Reason OtherChainline = new("other-chainline", "A front derailleur for {3} over a crank with {2}: no source says that the cage reaches both rings. Ask its maker, or try the swing by hand.", Cautions.ShiftSetUp) { Sources = [Sources.CrankTable] };

    /// <summary>Inputs: mount of the frame, mount of the derailleur.</summary>
    public static Relation OnFrame { get; } = new SameKey(
        0, 1, SameMount, Apart,
        [
            Shim(FrontDerailleurMount.Band31, FrontDerailleurMount.Band28, Verdict.NeedsPart, Sources.FrontDerailleurs, Sources.CommonPractice),
            Shim(FrontDerailleurMount.Band34, FrontDerailleurMount.Band31, Verdict.NeedsMeasuring, Sources.Memory),
            Shim(FrontDerailleurMount.Band34, FrontDerailleurMount.Band28, Verdict.NeedsMeasuring, Sources.Memory),
            Clamp(FrontDerailleurMount.Band28),
            Clamp(FrontDerailleurMount.Band31),
            Clamp(FrontDerailleurMount.Band34),
            Plate(FrontDerailleurMount.Band28),
            Plate(FrontDerailleurMount.Band31),
            Plate(FrontDerailleurMount.Band34),
        ]);

    /// <summary>Inputs: speeds of the rings, speeds of the derailleur, chainline of the crank, chainline of the derailleur.</summary>
    public static Relation WithCrank { get; } = new CageOverRings();

    private static Reason Apart(long frame, long derailleur)
    {
        (FrontDerailleurMount seat, FrontDerailleurMount part) = (FrontDerailleurMount.OfFitCode(frame), FrontDerailleurMount.OfFitCode(derailleur));
        return part.TubeMicrometres == 0 ? OtherHoles : seat.TubeMicrometres == 0 ? BandOnTab : BandTooSmall;
    }

    private static Bridge Shim(FrontDerailleurMount band, FrontDerailleurMount tube, Verdict result, params ImmutableArray<Source> sources) => new()
    {
        Id = $"front-derailleur-{band.FitKey}-on-{tube.FitKey}".ToLowerInvariant(),
        Kind = BridgeKind.Shim,
        Result = result,
        What = $"shim for {band.TradeName} on a tube of {tube.FitKey[5..]} mm",
        From = band.FitCode,
        To = tube.FitCode,
        Sources = sources,
    };

    private static Bridge Clamp(FrontDerailleurMount tube) => new()
    {
        Id = $"front-derailleur-braze-on-on-{tube.FitKey}".ToLowerInvariant(),
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = $"band-to-braze-on clamp for a tube of {tube.FitKey[5..]} mm",
        From = FrontDerailleurMount.BrazeOn.FitCode,
        To = tube.FitCode,
        Sources = [Sources.FrontMountSpacing],
    };

    private static Bridge Plate(FrontDerailleurMount tube) => new()
    {
        Id = $"front-derailleur-e-type-beside-{tube.FitKey}".ToLowerInvariant(),
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsMeasuring,
        What = "its plate under the drive-side cup, in the place of one 2.5 mm spacer, where there is one",
        From = FrontDerailleurMount.EType.FitCode,
        To = tube.FitCode,
        Caution = Cautions.GuidePlate,
        Sources = [Sources.FrontMountSpacing, Sources.CupSpacers],
    };

    private sealed class CageOverRings : Relation
    {
        public override string Kind => "same speeds, and a cage that reaches the chainline";

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long rings, long cage, long crank, long made) = (values[0], values[1], values[2], values[3]);
            if (rings == 0 || cage == 0 || crank == 0 || made == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (IsOne(rings) || IsOne(cage))
            {
                return new(Verdict.DoesNotFit, OneRing);
            }

            (decimal least, decimal most) = FrontChainline.OfFitCode(crank).Range;
            (decimal madeLeast, decimal madeMost) = FrontChainline.OfFitCode(made).Range;
            return least - madeMost >= Short ? new(Verdict.DoesNotFit, TooShort)
                : rings != cage ? new(Verdict.NeedsMeasuring, OtherSpeeds)
                : (least, most) != (madeLeast, madeMost) ? new(Verdict.NeedsMeasuring, OtherChainline)
                : new(Verdict.Fits, Reaches);
        }

        private static bool IsOne(long speeds) => speeds == SprocketClass.Eighth.FitCode || speeds == SprocketClass.Single332.FitCode || speeds == SprocketClass.Belt.FitCode;
    }
}
