using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How far sprockets stand from the middle plane of the frame, middle of the tooth. Every sum counts from the inner faces of the frame's ends: a recess in them is not counted.</summary>
/// <remarks>A model, offset of the k-th = gap / 2 - e - t / 2 - k x pitch, mm, by "Rear sprocket chainline measuring formula (toolmaker's page, quoted)": half the inner gap, less what lies outside the smallest sprocket, less the sprockets. Right to about 2 mm, as only one measurement of the outer distance is published; no maker's figure.</remarks>
public sealed class RearChainline
{
    internal const decimal UsualEnd = 3m;

    private readonly decimal _smallest;

    private readonly decimal _largest;

    private readonly int _count;

    private RearChainline(decimal smallest, decimal largest, int count) => (_smallest, _largest, _count) = (smallest, largest, count);

    /// <summary>Smallest sprocket.</summary>
    public Length Smallest => Length.FromMillimeters((double)_smallest);

    /// <summary>Middle between the smallest and the largest sprocket.</summary>
    public Length Middle => Length.FromMillimeters((double)((_smallest + _largest) / 2));

    /// <summary>Largest sprocket.</summary>
    public Length Largest => Length.FromMillimeters((double)_largest);

    /// <summary>Every sprocket, smallest first, in equal steps. Where the steps of a family differ, those between are out by a few tenths of a millimetre.</summary>
    public ImmutableArray<Length> Sprockets
    {
        get
        {
            Length[] all = new Length[_count];
            for (int i = 0; i < all.Length; i++)
            {
                all[i] = Length.FromMillimeters((double)At(i));
            }

            return ImmutableArray.Create(all);
        }
    }

    /// <summary>Where the sum and the one measurement of the outer distance come from; those of the pitch stand with the spacing.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.ChainlineFormula, Lugwork.Sources.TenSpeedExample, Lugwork.Sources.Derived];

    /// <summary>How far the model may be out to either side, 2 mm.</summary>
    public static Length Error => Length.FromMillimeters(ErrorMicrometres / 1_000.0);

    internal const int ErrorMicrometres = 2_000;

    /// <summary>Chainline of one sprocket, by the same sum: 120 mm between the ends and 17.5 mm from the end to the sprocket give 42.5.</summary>
    /// <param name="innerGap">Between the inner faces of the ends.</param>
    /// <param name="innerFaceToSprocket">From the inner face of the end to the middle of the sprocket.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sprocket would stand on the other side of the frame, or a length is a default.</exception>
    public static Length OfOneSprocketInInnerGap(Dimension innerGap, Dimension innerFaceToSprocket)
    {
        ArgumentOutOfRangeException.ThrowIfZero(innerFaceToSprocket.Millimetres, nameof(innerFaceToSprocket));
        decimal chainline = (innerGap.Millimetres / 2) - innerFaceToSprocket.Millimetres;
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(chainline, nameof(innerFaceToSprocket));
        return Length.FromMillimeters((double)chainline);
    }

    /// <summary>Sprockets of any stack: offset of the k-th = gap/2 - end - t/2 - k · pitch, with k = 0 for the smallest.</summary>
    /// <param name="innerGap">Between the inner faces of the ends, O.L.D. where they have no recess.</param>
    /// <param name="innerFaceToSmallest">From the inner face of the end to the outer face of the smallest sprocket.</param>
    /// <param name="sprocket">Thickness of a sprocket, t.</param>
    /// <param name="pitch">From one sprocket to the next, middle to middle.</param>
    /// <param name="sprockets">How many there are, 1 to 14.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or the largest sprocket would stand on the other side of the frame.</exception>
    public static RearChainline OfStackInInnerGap(Dimension innerGap, Dimension innerFaceToSmallest, Dimension sprocket, Dimension pitch, int sprockets)
    {
        ArgumentOutOfRangeException.ThrowIfZero(innerGap.Millimetres, nameof(innerGap));
        ArgumentOutOfRangeException.ThrowIfZero(innerFaceToSmallest.Millimetres, nameof(innerFaceToSmallest));
        ArgumentOutOfRangeException.ThrowIfZero(sprocket.Millimetres, nameof(sprocket));
        ArgumentOutOfRangeException.ThrowIfZero(pitch.Millimetres, nameof(pitch));
        Given.Number(sprockets, 1, 14, nameof(sprockets));
        decimal smallest = (innerGap.Millimetres / 2) - innerFaceToSmallest.Millimetres - (sprocket.Millimetres / 2);
        decimal largest = smallest - ((sprockets - 1) * pitch.Millimetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(largest, nameof(innerGap));
        return new(smallest, largest, sprockets);
    }

    /// <summary>Where a single ring belongs that is to be straight in the middle between two sprockets.</summary>
    /// <param name="first">The number of a sprocket, counted from 1, the smallest.</param>
    /// <param name="second">The number of the other sprocket.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such sprocket.</exception>
    public Length Between(int first, int second)
    {
        Given.Number(first, 1, _count, nameof(first));
        Given.Number(second, 1, _count, nameof(second));
        return Length.FromMillimeters((double)((At(first - 1) + At(second - 1)) / 2));
    }

    /// <summary>"61.2 to 25.65 mm, middle 43.425".</summary>
    public override string ToString() => FormattableString.Invariant($"{_smallest:0.###} to {_largest:0.###} mm, middle {(_smallest + _largest) / 2:0.###}");

    internal static RearChainline Of(SprocketSpacing sprockets, decimal gap, decimal end)
    {
        ArgumentOutOfRangeException.ThrowIfZero(gap);
        ArgumentOutOfRangeException.ThrowIfZero(end);
        decimal smallest = (gap / 2) - end - (sprockets.SprocketMicrometres / 2_000m);
        decimal largest = smallest - ((sprockets.Speeds - 1) * sprockets.MostMicrometres / 1_000m);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(largest, nameof(gap));
        return new(smallest, largest, sprockets.Speeds);
    }

    private decimal At(int index) => _count == 1 ? _smallest : _smallest - ((_smallest - _largest) * index / (_count - 1));
}
