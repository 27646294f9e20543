using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>A chain on one ring and one sprocket: how many pitches, and where the axle stands or how much slack is left.</summary>
/// <remarks>
/// Without a tensioner the axle, or an eccentric, has to move until the chain is tight: 6.35 mm for a pitch. Where nothing moves, what rounding up leaves is slack;
/// about 10 mm of rise in the middle of the run is taken for usual (our own bound, no source), more wants a tensioner, an eccentric or other teeth. The rise is from the straight line to one side, half of the play from end to end. A chain is tight only at
/// one point of the turn: leave it play there.
/// Slack s = (n - N) p, n whole pitches, N those of the loop, p = 12.7 mm; rise = √(s (2L + s)) / 2, L the free run, mm. Arithmetic on <see cref="ChainLoop"/>: no page prints a worked example.
/// </remarks>
public sealed class SingleSpeedChain
{
    private const double Rise = 10;

    private readonly double _centre;

    private readonly double _slack;

    private readonly double _run;

    private readonly bool _isFixed;

    private SingleSpeedChain(int pitches, double centre, double slack, int ring, int sprocket, bool isFixed)
    {
        double difference = ChainLoop.Radius(ring) - ChainLoop.Radius(sprocket);
        (Pitches, _centre, _slack, _isFixed) = (pitches, centre, slack, isFixed);
        _run = Math.Sqrt((centre * centre) - (difference * difference));
    }

    /// <summary>Whole pitches of 12.7 mm.</summary>
    public int Pitches { get; }

    /// <summary>The number of pitches is odd: one cranked half link is in it.</summary>
    public bool HasCrankedLink => Pitches % 2 != 0;

    /// <summary>Between the axles: where the chain is tight, or the distance that is fixed.</summary>
    public Length CentreDistance => Length.FromMillimeters(_centre);

    /// <summary>How much longer the chain is than its loop; 0 where the axle moves.</summary>
    public Length Slack => Length.FromMillimeters(_slack);

    /// <summary>How far the middle of one run can be lifted out of its straight line to one side, if all slack is in that run: half of <see cref="PlayFromEndToEnd"/>.</summary>
    public Length RiseAtMidRun => PlayFromEndToEnd / 2;

    /// <summary>The rise that is taken for usual, 10 mm: our own bound, no source.</summary>
    public static Length UsualRise => Length.FromMillimeters(Rise);

    /// <summary>Whether the chain can be held tight where nothing moves: needs a part, a tensioner, above the usual rise; needs measuring up to it, for half a millimetre between the axles is all of it, and the ring's own run-out more. Where the axle moves it fits as soon as it is drawn tight, with the usual rise.</summary>
    public SumCheck Check
    {
        get
        {
            double rise = RiseAtMidRun.Millimeters;
            string told = FormattableString.Invariant($"{_slack:0.0} mm of slack, {rise:0.0} mm of rise at mid-run; about {Rise:0} mm is usual (our own bound, no source)");
            SumCheck check = !_isFixed ? new("single-speed-chain", Verdict.Fits, FormattableString.Invariant($"the axle is drawn back to {_centre:0.0} mm, and let in until the chain rises about {Rise:0} mm at its tightest (our own bound, no source)"), "", Cautions.ChainOff, Sources)
                : rise <= Rise ? new("single-speed-chain", Verdict.NeedsMeasuring, told + "; half a millimetre between the axles decides it", "the chain itself, turned once round at its tightest", Cautions.ChainOff, Sources)
                : new("single-speed-chain", Verdict.NeedsPart, told, "a chain tensioner, an eccentric, a cranked half link or other teeth", Cautions.ChainOff, Sources);
            return check.Comparing(("centre distance", _centre, "mm"), ("slack", _slack, "mm"), ("rise at mid-run", rise, "mm"), ("usual rise", Rise, "mm"));
        }
    }

    /// <summary>How far the chain can be moved in the middle of one run, from end to end, if all slack is in that run: √(s (2L + s)), with L the free run.</summary>
    public Length PlayFromEndToEnd => Length.FromMillimeters(Math.Sqrt(_slack * ((2 * _run) + _slack)));

    /// <summary>What the sums rest on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.Derived, Lugwork.Sources.CommonPractice];

    /// <summary>Every chain whose axle position lies in the slots, shortest first; empty where none does.</summary>
    /// <param name="shortest">Least distance between the axles that the slots or the eccentric allow.</param>
    /// <param name="longest">Largest distance, not below the shortest.</param>
    /// <param name="ring">Teeth in front.</param>
    /// <param name="sprocket">Teeth at the rear.</param>
    /// <param name="withCrankedLink">Odd numbers of pitches too.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ImmutableArray<SingleSpeedChain> ForSlots(Length shortest, Length longest, int ring, int sprocket, bool withCrankedLink = false)
    {
        double least = ChainLoop.Centre(shortest, ring, sprocket);
        double most = Given.Millimetres(longest, least, 5_000, nameof(longest));
        int step = withCrankedLink ? 1 : 2;
        ChainLength first = ChainLength.OfPitches(ChainLoop.ExactPitches(least, ring, sprocket));
        double last = ChainLoop.ExactPitches(most, ring, sprocket) + 1e-6;
        ImmutableArray<SingleSpeedChain>.Builder chains = ImmutableArray.CreateBuilder<SingleSpeedChain>();
        for (int pitches = withCrankedLink ? first.WholePitches : first.EvenPitches; pitches <= last; pitches += step)
        {
            double centre = ChainLoop.CentreDistance(ChainLength.OfPitches(Math.Max(pitches, first.Pitches)), ring, sprocket).Millimeters;
            chains.Add(new(pitches, Math.Clamp(centre, least, most), 0, ring, sprocket, false));
        }

        return chains.ToImmutable();
    }

    /// <summary>The shortest chain that closes where the axle cannot move, and its slack.</summary>
    /// <param name="centreDistance">Between the axles.</param>
    /// <param name="ring">Teeth in front.</param>
    /// <param name="sprocket">Teeth at the rear.</param>
    /// <param name="withCrankedLink">An odd number of pitches is allowed.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static SingleSpeedChain ForFixedAxle(Length centreDistance, int ring, int sprocket, bool withCrankedLink = false)
    {
        ChainLength loop = ChainLoop.Exact(centreDistance, ring, sprocket);
        int pitches = withCrankedLink ? loop.WholePitches : loop.EvenPitches;
        return new(pitches, centreDistance.Millimeters, Math.Max(0, pitches - loop.Pitches) * Given.PitchMillimetres, ring, sprocket, true);
    }

    /// <summary>"98 pitches, axles 405.2 mm apart: tight", "97 pitches with a cranked half link, axles 425.0 mm apart: 1.2 mm of slack, 16.2 mm of rise at mid-run".</summary>
    public override string ToString() => FormattableString.Invariant($"{Pitches} pitches{(HasCrankedLink ? " with a cranked half link" : "")}, axles {_centre:0.0} mm apart: {(_slack > 0 ? FormattableString.Invariant($"{_slack:0.0} mm of slack, {RiseAtMidRun.Millimeters:0.0} mm of rise at mid-run") : "tight")}");
}
