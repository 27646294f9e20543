using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork.Drivetrain;

/// <summary>Which cassette goes on which freehub body: a cell for every pair.</summary>
internal static class CassetteOnBody
{
    private static readonly Reason Goes = new("on-body", "Cassette {1} goes straight on {0}.");

    private static readonly Reason WithSpacer = new("with-spacer", "Cassette {1} goes on {0} with [bridge].");

    private static readonly Reason TooShort = new("body-too-short", "{0} is too short for cassette {1}: the lockring would not hold.")
    {
        Mend = "a freehub body of the right length for this hub, or a cassette for this body",
    };

    private static readonly Reason OtherSplines = new("other-splines", "Cassette {1} has other splines or threads than {0}.")
    {
        Mend = "a freehub body for this cassette if the hub maker sells one, or a cassette for this body",
    };

    private static readonly Reason NoBody = new("hub-without-body", "{0} takes no cassette {1}: the hub has a thread for a freewheel and no body that could be changed.")
    {
        Mend = "a wheel whose hub has a freehub body for this cassette, or a screwed freewheel",
    };

    private static readonly Reason NoRoomForNine = new("no-room-for-nine-teeth", "Cassette {1} has the splines of {0}, and its 9-tooth sprocket does not clear that body, which is 4.4 mm too long.")
    {
        Mend = "the shorter body for this cassette if the hub maker sells one, or a cassette for this body",
    };

    private static readonly Reason FewTurns = new("few-turns", "Cassette {1} on {0}: the fixed side of a track hub has a shorter thread, and fewer turns hold the freewheel. Ask the maker of the hub.", Cautions.FreewheelThread);

    private static readonly Reason AskMaker = new("ask-maker", "No source says whether cassette {1} goes on {0}: ask the maker of the body.");

    private static readonly Reason OneMaker = new("one-maker", "{1} on {0}: carriers of different hubs are not the same. Compare the maker's name on both, or ask the hub's maker.");

    private static readonly Reason Screwed = new("screwed-on", "{1} is screwed on {0}; whether the threads mate is judged apart.", Cautions.FreewheelThread);

    private static readonly Reason Unscrews = new("fixed-without-lockring", "{1} on {0}: without a second, left-hand thread for a lockring it unscrews under back-pedalling.", Cautions.FixedLockring)
    {
        Mend = "a track hub with a left-hand lockring, or a freewheel",
    };

    private static readonly Reason TallSplines = new("tall-splines", "Cassette {1} on {0}: the smallest sprocket may meet the ends of the splines before the rest is clamped, and the cassette stays loose at full torque.")
    {
        Mend = "a spacer of 0.3 to 0.5 mm behind the cassette first; see that the lockring still has enough thread",
    };

    private static readonly Reason MeasureOld = new("measure-old-body", "Cassette {1} goes on {0} where its splines are 36 mm long; the body for 7 speeds is 5 mm shorter. Measure it.");

    private static readonly Cells Said = Fill();

    /// <summary>Inputs: body, cassette.</summary>
    public static Relation Table { get; } = new Matrix(
        0, 1,
        (body, cassette) => Said[cassette, body],
        Said.Bridges,
        [Sources.FreehubTypes, Sources.FreehubPage, Sources.Derived]);

    private static Cells Fill()
    {
        Cells cells = new(CassettePattern.All.Length, FreehubBody.All.Length);

        void Say(CassettePattern cassette, FreehubBody body, Verdict verdict, Reason reason, params ImmutableArray<Source> sources) =>
            cells[cassette.FitCode, body.FitCode] = new(verdict, reason with { Sources = sources });

        void SayEach(ImmutableArray<CassettePattern> cassettes, FreehubBody body, Verdict verdict, Reason reason, params ImmutableArray<Source> sources)
        {
            Outcome said = new(verdict, reason with { Sources = sources });
            foreach (CassettePattern cassette in cassettes)
            {
                cells[cassette.FitCode, body.FitCode] = said;
            }
        }

        void Spacer(CassettePattern cassette, FreehubBody body, decimal millimetres, params ImmutableArray<Source> sources) =>
            cells[cassette.FitCode, body.FitCode] = new(Verdict.NeedsPart, WithSpacer, Behind(cassette, body, millimetres, sources));

        // What no row below says: other splines, or another thing altogether.
        Outcome other = new(Verdict.DoesNotFit, OtherSplines with { Sources = [Sources.Derived, Sources.FreehubPage] });
        foreach (CassettePattern cassette in CassettePattern.All)
        {
            foreach (FreehubBody body in FreehubBody.All)
            {
                cells[cassette.FitCode, body.FitCode] = other;
            }
        }

        SayEach(CassettePattern.All, FreehubBody.FreewheelThread, Verdict.DoesNotFit, NoBody, Sources.Freewheels);

        ImmutableArray<CassettePattern> hg = [CassettePattern.Hg7, CassettePattern.Hg8, CassettePattern.Hg9, CassettePattern.Hg10, CassettePattern.Hg10OldRoad, CassettePattern.Hg11Wide, CassettePattern.Hg11Road, CassettePattern.Hg12Road, CassettePattern.Hg12Fit];
        SayEach(hg, FreehubBody.HgShort, Verdict.DoesNotFit, TooShort, Sources.FreehubTypes, Sources.Derived);
        SayEach(hg, FreehubBody.Symmetric, Verdict.NeedsMeasuring, AskMaker, Sources.Memory);
        SayEach(hg, FreehubBody.SingleSpeed, Verdict.DoesNotFit, TooShort, Sources.Memory);
        SayEach(hg, FreehubBody.HgTall, Verdict.NeedsMeasuring, TallSplines, Sources.TallSplines);

        Say(CassettePattern.Hg7, FreehubBody.HgShort, Verdict.Fits, Goes, Sources.FreehubTypes);
        Spacer(CassettePattern.Hg7, FreehubBody.HgMedium, 4.5m, Sources.CassetteFaq);
        Spacer(CassettePattern.Hg7, FreehubBody.HgLong, 6.35m, Sources.CassetteFaq, Sources.Derived);
        foreach (CassettePattern cassette in new[] { CassettePattern.Hg8, CassettePattern.Hg9, CassettePattern.Hg10, CassettePattern.Hg11Wide })
        {
            Say(cassette, FreehubBody.HgMedium, Verdict.Fits, Goes, Sources.FreehubTypes);
            Spacer(cassette, FreehubBody.HgLong, 1.85m, Sources.FreehubTypes);
        }

        Spacer(CassettePattern.Hg10OldRoad, FreehubBody.HgMedium, 1.0m, Sources.FreehubTypes, Sources.FreehubPage);
        Spacer(CassettePattern.Hg10OldRoad, FreehubBody.HgLong, 2.85m, Sources.FreehubTypes, Sources.FreehubPage);
        Say(CassettePattern.Hg10OldRoad, FreehubBody.HgTenOnly, Verdict.Fits, Goes, Sources.TwelveGuide, Sources.FreehubLengths);
        Say(CassettePattern.Hg10, FreehubBody.HgTenOnly, Verdict.NeedsMeasuring, AskMaker, Sources.TwelveGuide);
        Say(CassettePattern.Hg11Road, FreehubBody.HgLong, Verdict.Fits, Goes, Sources.FreehubTypes);
        Say(CassettePattern.Hg11Road, FreehubBody.HgMedium, Verdict.DoesNotFit, TooShort, Sources.FreehubTypes, Sources.FreehubPage);
        Say(CassettePattern.Hg11Road, FreehubBody.Hg12Road, Verdict.DoesNotFit, OtherSplines, Sources.FreehubTypes, Sources.TwelveGuide);
        Say(CassettePattern.Hg12Road, FreehubBody.Hg12Road, Verdict.Fits, Goes, Sources.FreehubTypes);
        Say(CassettePattern.Hg12Road, FreehubBody.HgLong, Verdict.Fits, Goes, Sources.FreehubTypes, Sources.TwelveGuide);
        Say(CassettePattern.Hg12Road, FreehubBody.HgMedium, Verdict.DoesNotFit, TooShort, Sources.FreehubTypes);
        Say(CassettePattern.Hg12Fit, FreehubBody.HgMedium, Verdict.Fits, Goes, Sources.CassetteWidths);
        Spacer(CassettePattern.Hg12Fit, FreehubBody.HgLong, 1.85m, Sources.TwelveOnEleven);
        Say(CassettePattern.MicroSpline12, FreehubBody.MicroSpline, Verdict.Fits, Goes, Sources.FreehubTypes);
        Say(CassettePattern.MicroSpline12, FreehubBody.HgMedium, Verdict.DoesNotFit, OtherSplines, Sources.CassetteWidths, Sources.FreehubTypes);
        Say(CassettePattern.MicroSpline12, FreehubBody.HgLong, Verdict.DoesNotFit, OtherSplines, Sources.FreehubTypes);
        Say(CassettePattern.Xd, FreehubBody.Xd, Verdict.Fits, Goes, Sources.XdExplained);
        Spacer(CassettePattern.Xd, FreehubBody.Xdr, 1.85m, Sources.XdrExplained);
        Say(CassettePattern.Xdr, FreehubBody.Xdr, Verdict.Fits, Goes, Sources.XdrExplained);
        Say(CassettePattern.Xdr, FreehubBody.Xd, Verdict.DoesNotFit, TooShort, Sources.XdrExplained, Sources.Derived);
        // The old body came for 7 speeds too, 5 mm shorter, under the same name.
        Say(CassettePattern.EightSpline8, FreehubBody.EightSplineOld, Verdict.NeedsMeasuring, MeasureOld, Sources.FreehubLengths, Sources.EightSpline);
        Say(CassettePattern.EightSpline8, FreehubBody.EightSpline, Verdict.DoesNotFit, OtherSplines, Sources.EightSpline, Sources.FreehubLengths);
        Say(CassettePattern.EightSpline8, FreehubBody.N3w, Verdict.DoesNotFit, OtherSplines, Sources.EightSpline, Sources.Derived);
        Say(CassettePattern.EightSpline9, FreehubBody.EightSplineOld, Verdict.DoesNotFit, OtherSplines, Sources.EightSpline, Sources.FreehubLengths);
        Say(CassettePattern.EightSpline9, FreehubBody.EightSpline, Verdict.Fits, Goes, Sources.EightSpline, Sources.FreehubLengths);
        Say(CassettePattern.EightSpline9, FreehubBody.N3w, Verdict.NeedsMeasuring, AskMaker, Sources.N3wPage);
        Say(CassettePattern.EightSpline10To12, FreehubBody.EightSpline, Verdict.Fits, Goes, Sources.EightSpline, Sources.FreehubLengths);
        Spacer(CassettePattern.EightSpline10To12, FreehubBody.N3w, 4.4m, Sources.N3wPage);
        Say(CassettePattern.EightSpline13, FreehubBody.N3w, Verdict.Fits, Goes, Sources.N3wPage);
        Say(CassettePattern.EightSpline13, FreehubBody.EightSpline, Verdict.DoesNotFit, NoRoomForNine, Sources.N3wPage, Sources.Derived);
        Say(CassettePattern.Freewheel, FreehubBody.FreewheelThread, Verdict.Fits, Screwed, Sources.Freewheels);
        Say(CassettePattern.FixedSprocket, FreehubBody.FreewheelThread, Verdict.Unsafe, Unscrews, Sources.FixedLockring, Sources.CommonPractice);
        Say(CassettePattern.FixedSprocket, FreehubBody.Track, Verdict.Fits, Screwed with { Caution = Cautions.FixedLockring }, Sources.FixedLockring);
        Say(CassettePattern.ThreeLug, FreehubBody.ThreeLug, Verdict.Fits, Goes, Sources.HubGearPage);
        Say(CassettePattern.ThreeLug, FreehubBody.HubGearOwn, Verdict.DoesNotFit, OtherSplines, Sources.HubGearPage);
        Say(CassettePattern.HubGearOwn, FreehubBody.ThreeLug, Verdict.DoesNotFit, OtherSplines, Sources.HubGearPage);
        Say(CassettePattern.HubGearOwn, FreehubBody.HubGearOwn, Verdict.NeedsMeasuring, OneMaker, Sources.HubGearPage);
        Say(CassettePattern.Freewheel, FreehubBody.Track, Verdict.NeedsMeasuring, FewTurns, Sources.Memory);
        return cells;
    }

    private static Bridge Behind(CassettePattern cassette, FreehubBody body, decimal millimetres, ImmutableArray<Source> sources)
    {
        string thickness = millimetres.ToString("0.##", CultureInfo.InvariantCulture);
        bool ring = body == FreehubBody.N3w;
        return new Bridge
        {
            Id = $"cassette-{cassette.FitKey}-on-{body.FitKey}".ToLowerInvariant(),
            Kind = ring ? BridgeKind.Adapter : BridgeKind.Spacers,
            Result = Verdict.NeedsPart,
            What = ring ? $"{thickness} mm adapter ring for this body" : $"cassette spacer {thickness} mm behind the cassette" + (millimetres == 2.85m ? " (1.85 and 1.0 mm)" : ""),
            From = cassette.FitCode,
            To = body.FitCode,
            Sources = sources,
        };
    }
}
