using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>The lengths of a dropper post that say whether it goes in a frame under a rider.</summary>
/// <remarks>Travel is measured from the lip of the post; some pages measure it elsewhere, so take the maker's drawing. Lowest rails = stack + travel; insertion = total length - rails; depth = insertion + actuator, mm, by "Choosing a dropper: ride height and insertion".</remarks>
public sealed record DropperSize
{
    private readonly decimal? _actuator;

    /// <summary>Where the way of measuring comes from; the conditions are arithmetic on it.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.DropperChoice];

    /// <summary>How far it goes down.</summary>
    public required DropperTravel Travel { get; init; }

    /// <summary>From the lip above the collar to the middle of the rails, fully down.</summary>
    public required Dimension Stack { get; init; }

    /// <summary>From the rails, fully up, to the lower end without actuator.</summary>
    public required Dimension TotalLength { get; init; }

    /// <summary>Room below the end for actuator and hose, 0 to 200 mm; 0 where it needs none or the total length counts it. Null where it is not known: then nothing fits before it was measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range or no number.</exception>
    public Length? Actuator
    {
        get => _actuator is { } known ? Length.FromMillimeters((double)known) : null;
        init => _actuator = NumberRange.Millimetres(value, 0, 200, nameof(Actuator)) is { } given ? (decimal)given : null;
    }

    internal decimal? ActuatorMillimetres => _actuator;

    /// <summary>Travel, stack and total length are all given; none is a default.</summary>
    internal bool IsWhole => Travel.FitCode != 0 && Stack.FitCode != 0 && TotalLength.FitCode != 0;

    /// <summary>The lowest riding height of the rails above the collar: stack and travel, the post pushed in to its lip.</summary>
    public Dimension LeastRailHeight => Dimension.OfMillimetres(Stack.Millimetres + Travel.Millimetres);

    /// <summary>How deep the post sits with the rails at a height above the collar; null where it does not come down so far, or does not reach.</summary>
    /// <param name="railHeight">Middle of the rails above the collar, at riding height.</param>
    public Dimension? InsertionAt(Dimension railHeight) =>
        railHeight.Millimetres < LeastRailHeight.Millimetres || railHeight.Millimetres >= TotalLength.Millimetres
            ? null
            : Dimension.OfMillimetres(TotalLength.Millimetres - railHeight.Millimetres);

    /// <summary>How deep the seat tube must be open with the rails at a height above the collar, actuator counted; null as for the insertion, and where the actuator is not known.</summary>
    /// <param name="railHeight">Middle of the rails above the collar, at riding height.</param>
    public Dimension? OpenDepthAt(Dimension railHeight) =>
        InsertionAt(railHeight) is { } insertion && _actuator is { } below ? Dimension.OfMillimetres(insertion.Millimetres + below) : null;

    /// <summary>Whether the post goes in: the rails come up to riding height, the seat tube is open deep enough, and the post sits as deep as post and frame ask.</summary>
    /// <param name="railHeight">Middle of the rails above the collar, at riding height.</param>
    /// <param name="openDepth">How deep the seat tube is open below the collar.</param>
    /// <param name="leastInsertion">The larger of the post's mark and the frame maker's least.</param>
    /// <returns>Unsafe where it would sit too high, no fit where it is too long for leg or tube; needs measuring where a figure of post, rider or frame is a default or none that a frame has (see <see cref="SeatpostRoom"/>), or the actuator is not known.</returns>
    public SumCheck Check(Dimension railHeight, Dimension openDepth, Dimension leastInsertion)
    {
        Verdict verdict = Judge(railHeight, openDepth, leastInsertion);
        decimal? sits = railHeight.FitCode != 0 && IsWhole ? TotalLength.Millimetres - railHeight.Millimetres : null;
        string sentence = verdict switch
        {
            Verdict.Unsafe => FormattableString.Invariant($"the post would sit {sits:0.##} mm deep, {leastInsertion.Millimetres:0.##} mm is the least"),
            Verdict.DoesNotFit when railHeight.Millimetres < LeastRailHeight.Millimetres => FormattableString.Invariant($"its rails come down to {LeastRailHeight.Millimetres:0.##} mm above the collar, fully up; {railHeight.Millimetres:0.##} mm is riding height"),
            Verdict.DoesNotFit => FormattableString.Invariant($"it needs the seat tube open for {sits + (_actuator ?? 0):0.##} mm, {openDepth.Millimetres:0.##} mm are"),
            Verdict.Fits => FormattableString.Invariant($"the post sits {sits:0.##} mm deep, of {leastInsertion.Millimetres:0.##} to {openDepth.Millimetres:0.##} mm"),
            _ => "a length of post, actuator, rider or frame is not known, or is none that they have",
        };
        string remedy = verdict switch { Verdict.Unsafe => "a longer post", Verdict.DoesNotFit => "a post of less travel or a shorter one, or travel shims of its maker", Verdict.Fits => "", _ => "the missing length, by rule or from the maker's drawing" };
        return new SumCheck("dropper-size", verdict, sentence, remedy, Cautions.Insertion, verdict == Verdict.Unsafe ? [.. Sources, Lugwork.Sources.FrameManual] : Sources)
            .Comparing(("insertion", (double?)sits, "mm"), ("least insertion", leastInsertion.FitCode == 0 ? null : (double)leastInsertion.Millimetres, "mm"), ("open depth", openDepth.FitCode == 0 ? null : (double)openDepth.Millimetres, "mm"), ("actuator", (double?)_actuator, "mm"));
    }

    private Verdict Judge(Dimension railHeight, Dimension openDepth, Dimension leastInsertion)
    {
        if (!IsWhole || railHeight.FitCode == 0 || !SeatpostRoom.IsDepth(openDepth) || !SeatpostRoom.IsLeast(leastInsertion))
        {
            return Verdict.NeedsMeasuring;
        }

        if (railHeight.Millimetres < LeastRailHeight.Millimetres)
        {
            return Verdict.DoesNotFit;
        }

        return InsertionAt(railHeight) is not { } insertion || insertion.Millimetres < leastInsertion.Millimetres ? Verdict.Unsafe
            : insertion.Millimetres + (_actuator ?? 0) > openDepth.Millimetres ? Verdict.DoesNotFit
            : _actuator is null ? Verdict.NeedsMeasuring
            : Verdict.Fits;
    }

    /// <summary>The longest travel of the trade under which the rails still come down to riding height; null where not even the shortest does.</summary>
    /// <param name="railHeight">Middle of the rails above the collar, at riding height.</param>
    /// <param name="stack">From the lip above the collar to the middle of the rails, fully down.</param>
    /// <exception cref="ArgumentException">A length is a default: without the stack every travel would come out too long.</exception>
    public static DropperTravel? LongestTravel(Dimension railHeight, Dimension stack)
    {
        SeatpostRoom.NotDefault(railHeight, nameof(railHeight));
        SeatpostRoom.NotDefault(stack, nameof(stack));
        DropperTravel? longest = null;
        foreach (DropperTravel travel in DropperTravel.All)
        {
            longest = travel.Millimetres + stack.Millimetres <= railHeight.Millimetres ? travel : longest;
        }

        return longest;
    }
}
