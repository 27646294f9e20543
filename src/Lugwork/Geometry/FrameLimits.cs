using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>What a frame maker allows. A limit that is not set is not known, and what is not known is never taken for allowed.</summary>
/// <remarks>Least ≤ figure after the change ≤ most, mm and degrees; every limit is the frame maker's own, there is no source for another frame's.</remarks>
public sealed class FrameLimits
{
    private readonly double? _longestFork;
    private readonly double? _shortestFork;
    private readonly double? _largestFront;
    private readonly double? _largestRear;
    private readonly double? _leastHeight;
    private readonly double? _slackestHead;
    private readonly double? _mostHeadset;
    private readonly double? _smallestFront;
    private readonly double? _smallestRear;
    private readonly double? _steepestHead;
    private readonly double? _leastOffset;
    private readonly double? _mostOffset;
    private readonly double? _leastTrail;

    /// <summary>Longest fork, axle to crown, 150 to 900 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? LongestFork { get => Told(_longestFork); init => _longestFork = NumberRange.Millimetres(value, 150, 900, nameof(LongestFork)); }

    /// <summary>Shortest fork, axle to crown, 150 to 900 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? ShortestFork { get => Told(_shortestFork); init => _shortestFork = NumberRange.Millimetres(value, 150, 900, nameof(ShortestFork)); }

    /// <summary>Largest radius of the front wheel with its tyre, 100 to 500 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? LargestFrontRadius { get => Told(_largestFront); init => _largestFront = NumberRange.Millimetres(value, 100, 500, nameof(LargestFrontRadius)); }

    /// <summary>Largest radius of the rear wheel with its tyre, 100 to 500 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? LargestRearRadius { get => Told(_largestRear); init => _largestRear = NumberRange.Millimetres(value, 100, 500, nameof(LargestRearRadius)); }

    /// <summary>Smallest radius of the front wheel with its tyre, 100 to 500 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? SmallestFrontRadius { get => Told(_smallestFront); init => _smallestFront = NumberRange.Millimetres(value, 100, 500, nameof(SmallestFrontRadius)); }

    /// <summary>Smallest radius of the rear wheel with its tyre, 100 to 500 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? SmallestRearRadius { get => Told(_smallestRear); init => _smallestRear = NumberRange.Millimetres(value, 100, 500, nameof(SmallestRearRadius)); }

    /// <summary>Least height of the bottom bracket, 50 to 600 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? LeastBottomBracketHeight { get => Told(_leastHeight); init => _leastHeight = NumberRange.Millimetres(value, 50, 600, nameof(LeastBottomBracketHeight)); }

    /// <summary>Slackest steering axis, 30 to 110 degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Angle? SlackestHeadAngle { get => ToldAngle(_slackestHead); init => _slackestHead = NumberRange.Degrees(value, 30, 110, nameof(SlackestHeadAngle)); }

    /// <summary>Steepest steering axis, 30 to 110 degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Angle? SteepestHeadAngle { get => ToldAngle(_steepestHead); init => _steepestHead = NumberRange.Degrees(value, 30, 110, nameof(SteepestHeadAngle)); }

    /// <summary>Least offset of the fork, 0 to 120 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? LeastForkOffset { get => Told(_leastOffset); init => _leastOffset = NumberRange.Millimetres(value, 0, 120, nameof(LeastForkOffset)); }

    /// <summary>Most offset of the fork, 0 to 120 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? MostForkOffset { get => Told(_mostOffset); init => _mostOffset = NumberRange.Millimetres(value, 0, 120, nameof(MostForkOffset)); }

    /// <summary>Least trail, above 0 to 300 mm: without any the steering is unsafe, whatever is allowed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Length? LeastTrail { get => Told(_leastTrail); init => _leastTrail = NumberRange.Millimetres(value, 0.001, 300, nameof(LeastTrail)); }

    /// <summary>Most of an angle headset, to either side, 0 to 3 degrees; 0 where the maker forbids one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    public Angle? MostHeadsetAngle { get => ToldAngle(_mostHeadset); init => _mostHeadset = NumberRange.Degrees(value, 0, 3, nameof(MostHeadsetAngle)); }

    /// <summary>Holds a changed frame against the limits.</summary>
    /// <remarks>
    /// A longer or shorter fork is counted with what the lower stack grew or shrank by, for both lift and turn the frame alike. Less trail is asked for; more of it comes of a slacker axis, a longer fork,
    /// a larger wheel or less offset, each of which is. A bottom bracket that comes up is asked for through the wheel or fork that lifts it.
    /// </remarks>
    /// <param name="before">As the maker sells it; what stayed as it was is not asked for.</param>
    /// <param name="after">As it is to be.</param>
    /// <returns>Unsafe for each limit that is passed and for a trail of zero or below; a fit with a caution where a limit is just reached; a fit for each figure that changed towards a limit and stays within it; needs measuring for each of these figures that changed towards a limit that is not known: ask the maker. Never empty: where nothing changed towards any limit, that is told.</returns>
    public ImmutableArray<SumCheck> Check(FrameGeometry before, FrameGeometry after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ImmutableArray<SumCheck>.Builder found = ImmutableArray.CreateBuilder<SumCheck>();
        double grown = after.LowerStack.Millimeters - before.LowerStack.Millimeters;
        Most("axle to crown", "mm", before.AxleToCrown.Millimeters, after.AxleToCrown.Millimeters + Math.Max(0, grown), _longestFork, Cautions.ForkClassCare, grown > 0 ? " with what the lower stack grew by" : "");
        Least("axle to crown", "mm", before.AxleToCrown.Millimeters, after.AxleToCrown.Millimeters + Math.Min(0, grown), _shortestFork, Cautions.GeometryCare, grown < 0 ? " less what the lower stack shrank by" : "");
        Most("front wheel radius", "mm", before.FrontRadius.Millimeters, after.FrontRadius.Millimeters, _largestFront, Cautions.TyreRoom);
        Least("front wheel radius", "mm", before.FrontRadius.Millimeters, after.FrontRadius.Millimeters, _smallestFront, Cautions.GeometryCare);
        Most("rear wheel radius", "mm", before.RearRadius.Millimeters, after.RearRadius.Millimeters, _largestRear, Cautions.TyreRoom);
        Least("rear wheel radius", "mm", before.RearRadius.Millimeters, after.RearRadius.Millimeters, _smallestRear, Cautions.GeometryCare);
        Least("bottom-bracket height", "mm", before.BottomBracketHeight.Millimeters, after.BottomBracketHeight.Millimeters, _leastHeight, Cautions.GroundAndToe);
        Least("head angle", "degrees", before.HeadAngle.Degrees, after.HeadAngle.Degrees, _slackestHead, Cautions.GeometryCare);
        Most("head angle", "degrees", before.HeadAngle.Degrees, after.HeadAngle.Degrees, _steepestHead, Cautions.GeometryCare);
        double headset = Math.Abs(after.HeadsetAngle.Degrees);
        bool isOtherHeadset = NumberRange.Nanometres(after.HeadsetAngle.Degrees) != NumberRange.Nanometres(before.HeadsetAngle.Degrees);
        Most("angle headset", "degrees", isOtherHeadset ? 0 : headset, headset, _mostHeadset, Cautions.GeometryCare);
        Least("fork offset", "mm", before.ForkOffset.Millimeters, after.ForkOffset.Millimeters, _leastOffset, Cautions.GeometryCare);
        Most("fork offset", "mm", before.ForkOffset.Millimeters, after.ForkOffset.Millimeters, _mostOffset, Cautions.GeometryCare);
        double trail = after.Trail.Millimeters;
        if (NumberRange.Nanometres(trail) <= 0)
        {
            found.Add(new SumCheck("frame-limits", Verdict.Unsafe, string.Create(CultureInfo.InvariantCulture, $"trail {trail:0.##} mm: the front wheel no longer follows its steering axis and turns away by itself"), "a fork with less offset, a slacker axis or a larger front wheel, as the frame maker allows", Cautions.GeometryCare, []).Comparing(("trail", trail, "mm")));
        }
        else
        {
            Least("trail", "mm", before.Trail.Millimeters, trail, _leastTrail, Cautions.GeometryCare);
        }

        if (found.Count == 0)
        {
            found.Add(new("frame-limits", Verdict.Fits, "nothing changed towards any limit of the frame", "", Cautions.GeometryCare, []));
        }

        return found.ToImmutable();

        void Most(string figure, string unit, double was, double value, double? limit, Caution caution, string with = "") => Judge(figure, unit, "most", was, value, limit, caution, 1, with);

        void Least(string figure, string unit, double was, double value, double? limit, Caution caution, string with = "") => Judge(figure, unit, "least", was, value, limit, caution, -1, with);

        void Judge(string figure, string unit, string end, double was, double value, double? limit, Caution caution, int sign, string with)
        {
            if (limit is { } known)
            {
                long over = sign * (NumberRange.Nanometres(value) - NumberRange.Nanometres(known));
                if (over >= 0 || IsTowards())
                {
                    found.Add(new SumCheck("frame-limits", over > 0 ? Verdict.Unsafe : Verdict.Fits, $"{figure} {Told(value, unit)}{with}, the frame maker's {end} is {Told(known, unit)}", over > 0 ? "what the frame maker allows" : "", caution, []).Comparing((figure, value, unit), ($"the frame maker's {end}", known, unit)));
                }
            }
            else if (IsTowards())
            {
                found.Add(new SumCheck("frame-limits", Verdict.NeedsMeasuring, $"{figure} is now {Told(value, unit)}{with}; the frame maker's {end} is not known: ask for it", $"the frame maker's {end}", caution, []).Comparing((figure, value, unit)));
            }

            bool IsTowards() => sign * (NumberRange.Nanometres(value) - NumberRange.Nanometres(was)) > 0;
        }
    }

    private static string Told(double value, string unit)
    {
        string number = value.ToString("0.##", CultureInfo.InvariantCulture);
        return $"{number} {(number == "1" && unit == "degrees" ? "degree" : unit)}";
    }

    private static Length? Told(double? millimetres) => millimetres is { } known ? Length.FromMillimeters(known) : null;

    private static Angle? ToldAngle(double? degrees) => degrees is { } known ? Angle.FromDegrees(known) : null;
}
