using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>What a frame maker allows. A limit that is not set is not known, and what is not known is never taken for allowed.</summary>
public sealed class FrameLimits
{
    private readonly double? _longestFork;
    private readonly double? _shortestFork;
    private readonly double? _largestFront;
    private readonly double? _largestRear;
    private readonly double? _leastHeight;
    private readonly double? _slackestHead;
    private readonly double? _mostHeadset;

    /// <summary>Longest fork, axle to crown, 150 to 900 mm.</summary>
    public Length? LongestFork { get => Told(_longestFork); init => _longestFork = NumberRange.Millimetres(value, 150, 900, nameof(LongestFork)); }

    /// <summary>Shortest fork, axle to crown, 150 to 900 mm.</summary>
    public Length? ShortestFork { get => Told(_shortestFork); init => _shortestFork = NumberRange.Millimetres(value, 150, 900, nameof(ShortestFork)); }

    /// <summary>Largest radius of the front wheel with its tyre, 100 to 500 mm.</summary>
    public Length? LargestFrontRadius { get => Told(_largestFront); init => _largestFront = NumberRange.Millimetres(value, 100, 500, nameof(LargestFrontRadius)); }

    /// <summary>Largest radius of the rear wheel with its tyre, 100 to 500 mm.</summary>
    public Length? LargestRearRadius { get => Told(_largestRear); init => _largestRear = NumberRange.Millimetres(value, 100, 500, nameof(LargestRearRadius)); }

    /// <summary>Least height of the bottom bracket, 50 to 600 mm.</summary>
    public Length? LeastBottomBracketHeight { get => Told(_leastHeight); init => _leastHeight = NumberRange.Millimetres(value, 50, 600, nameof(LeastBottomBracketHeight)); }

    /// <summary>Slackest steering axis, 30 to 110 degrees.</summary>
    public Angle? SlackestHeadAngle { get => ToldAngle(_slackestHead); init => _slackestHead = NumberRange.Degrees(value, 30, 110, nameof(SlackestHeadAngle)); }

    /// <summary>Most of an angle headset, to either side, 0 to 3 degrees; 0 where the maker forbids one.</summary>
    public Angle? MostHeadsetAngle { get => ToldAngle(_mostHeadset); init => _mostHeadset = NumberRange.Degrees(value, 0, 3, nameof(MostHeadsetAngle)); }

    /// <summary>Holds a changed frame against the limits.</summary>
    /// <param name="before">As the maker sells it; what stayed as it was is not asked for.</param>
    /// <param name="after">As it is to be.</param>
    /// <returns>Unsafe for each limit that is passed; a fit with a caution where one is just reached; needs measuring for each figure that changed without a known limit: ask the maker. Empty where nothing is touched.</returns>
    public ImmutableArray<GeometryFinding> Check(FrameGeometry before, FrameGeometry after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ImmutableArray<GeometryFinding>.Builder found = ImmutableArray.CreateBuilder<GeometryFinding>();
        double fork = after.AxleToCrown.Millimeters;
        double forkWas = before.AxleToCrown.Millimeters;
        Most("axle to crown", "mm", fork, _longestFork, fork > forkWas, Cautions.ForkClassCare);
        Least("axle to crown", "mm", fork, _shortestFork, fork < forkWas, Cautions.GeometryCare);
        Most("front wheel radius", "mm", after.FrontRadius.Millimeters, _largestFront, after.FrontRadius.Millimeters > before.FrontRadius.Millimeters, Cautions.TyreRoom);
        Most("rear wheel radius", "mm", after.RearRadius.Millimeters, _largestRear, after.RearRadius.Millimeters > before.RearRadius.Millimeters, Cautions.TyreRoom);
        double height = after.BottomBracketHeight.Millimeters;
        Least("bottom-bracket height", "mm", height, _leastHeight, height < before.BottomBracketHeight.Millimeters, Cautions.GroundAndToe);
        double head = after.HeadAngle.Degrees;
        Least("head angle", "degrees", head, _slackestHead, head < before.HeadAngle.Degrees, Cautions.GeometryCare);
        double headset = Math.Abs(after.HeadsetAngle.Degrees);
        Most("angle headset", "degrees", headset, _mostHeadset, headset > Math.Abs(before.HeadsetAngle.Degrees), Cautions.GeometryCare);
        return found.ToImmutable();

        void Most(string figure, string unit, double value, double? limit, bool moved, Caution caution) => Judge(figure, unit, "most", value, limit, moved, caution, 1);

        void Least(string figure, string unit, double value, double? limit, bool moved, Caution caution) => Judge(figure, unit, "least", value, limit, moved, caution, -1);

        void Judge(string figure, string unit, string end, double value, double? limit, bool moved, Caution caution, int sign)
        {
            if (limit is { } known)
            {
                long over = sign * (NumberRange.Nanometres(value) - NumberRange.Nanometres(known));
                if (over >= 0)
                {
                    found.Add(new(over > 0 ? Verdict.Unsafe : Verdict.Fits, figure, string.Create(CultureInfo.InvariantCulture, $"{figure} {value:0.##} {unit}, the frame maker's {end} is {known:0.##} {unit}"), caution, []));
                }
            }
            else if (moved && NumberRange.Nanometres(value) != 0)
            {
                found.Add(new(Verdict.NeedsMeasuring, figure, string.Create(CultureInfo.InvariantCulture, $"{figure} is now {value:0.##} {unit}; the frame maker's {end} is not known: ask for it"), caution, []));
            }
        }
    }

    private static Length? Told(double? millimetres) => millimetres is { } known ? Length.FromMillimeters(known) : null;

    private static Angle? ToldAngle(double? degrees) => degrees is { } known ? Angle.FromDegrees(known) : null;
}
