using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How far sprockets stand from the middle plane of the frame, middle of the tooth.</summary>
/// <remarks>A model: half the inner gap, less what lies outside the smallest sprocket, less the sprockets. Right to about 2 mm, as only one measurement of the outer distance is published; no maker's figure.</remarks>
public sealed class RearChainline
{
    internal const decimal UsualEnd = 3m;

    private readonly decimal _smallest;

    private readonly decimal _largest;

    private RearChainline(decimal smallest, decimal largest) => (_smallest, _largest) = (smallest, largest);

    /// <summary>Smallest sprocket.</summary>
    public Length Smallest => Length.FromMillimeters((double)_smallest);

    /// <summary>Middle between the smallest and the largest sprocket.</summary>
    public Length Middle => Length.FromMillimeters((double)((_smallest + _largest) / 2));

    /// <summary>Largest sprocket.</summary>
    public Length Largest => Length.FromMillimeters((double)_largest);

    /// <summary>Where the sum and the one measurement of the outer distance come from; those of the pitch stand with the spacing.</summary>
    public static ImmutableArray<Source> RestsOn => [Sources.ChainlineFormula, Sources.TenSpeedExample, Sources.Derived];

    /// <summary>How far the model may be out to either side, 2 mm.</summary>
    public static Length Error => Length.FromMillimeters(2);

    /// <summary>Chainline of one sprocket, by the same sum: 120 mm between the ends and 17.5 mm from the end to the sprocket give 42.5.</summary>
    /// <param name="innerGap">Between the inner faces of the ends.</param>
    /// <param name="endToSprocket">From the inner face of the end to the middle of the sprocket.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sprocket would stand on the other side of the frame, or a length is a default.</exception>
    public static Length OfOneSprocket(Dimension innerGap, Dimension endToSprocket)
    {
        ArgumentOutOfRangeException.ThrowIfZero(endToSprocket.Millimetres, nameof(endToSprocket));
        decimal chainline = (innerGap.Millimetres / 2) - endToSprocket.Millimetres;
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(chainline, nameof(endToSprocket));
        return Length.FromMillimeters((double)chainline);
    }

    /// <summary>"61.2 to 25.65 mm, middle 43.425".</summary>
    public override string ToString() => FormattableString.Invariant($"{_smallest:0.###} to {_largest:0.###} mm, middle {(_smallest + _largest) / 2:0.###}");

    internal static RearChainline Of(SprocketSpacing sprockets, decimal gap, decimal end)
    {
        ArgumentOutOfRangeException.ThrowIfZero(gap);
        ArgumentOutOfRangeException.ThrowIfZero(end);
        decimal smallest = (gap / 2) - end - (sprockets.SprocketMicrometres / 2_000m);
        return new(smallest, smallest - ((sprockets.Speeds - 1) * sprockets.MostMicrometres / 1_000m));
    }
}
