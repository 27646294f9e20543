using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>From a saddle height to the height of the rails above the collar, which is what posts and droppers are measured by, and back.</summary>
/// <remarks>All along the seat tube: a saddle that stands behind the tube's line makes it differ by a millimetre or two. Rails = saddle height - seat tube - depth of the saddle, mm, by "Avoid dropper post installation mayhem".</remarks>
public static class SaddleHeight
{
    /// <summary>What the way of measuring rests on.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.DropperTips];

    /// <summary>Middle of the rails above the collar: saddle height less seat tube less depth of the saddle.</summary>
    /// <param name="saddleHeight">From the bottom bracket to the top of the saddle, 300 to 1,200 mm.</param>
    /// <param name="seatTube">From the bottom bracket to the top of the collar, 100 to 800 mm.</param>
    /// <param name="saddleDepth">From the middle of the rails to the top of the saddle, 20 to 120 mm.</param>
    /// <returns>Negative where the collar already stands too high.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range.</exception>
    public static Length RailsAboveCollar(Length saddleHeight, Length seatTube, Length saddleDepth) =>
        Length.FromMillimeters(NumberRange.Millimetres(saddleHeight, 300, 1_200, nameof(saddleHeight)) - Below(seatTube, saddleDepth));

    /// <summary>From the bottom bracket to the top of the saddle.</summary>
    /// <param name="railsAboveCollar">Middle of the rails above the collar, -100 to 600 mm.</param>
    /// <param name="seatTube">From the bottom bracket to the top of the collar, 100 to 800 mm.</param>
    /// <param name="saddleDepth">From the middle of the rails to the top of the saddle, 20 to 120 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range.</exception>
    public static Length Of(Length railsAboveCollar, Length seatTube, Length saddleDepth) =>
        Length.FromMillimeters(NumberRange.Millimetres(railsAboveCollar, -100, 600, nameof(railsAboveCollar)) + Below(seatTube, saddleDepth));

    private static double Below(Length seatTube, Length saddleDepth) =>
        NumberRange.Millimetres(seatTube, 100, 800, nameof(seatTube)) + NumberRange.Millimetres(saddleDepth, 20, 120, nameof(saddleDepth));
}
