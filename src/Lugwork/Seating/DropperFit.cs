using System.Globalization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>A dropper in the room that frame and rider leave: how deep it sits, how far it must be shimmed down in travel, what is left over.</summary>
/// <remarks>
/// Travel T, stack S, total length L, actuator a, rails above the collar A, depth D open, least insertion I. A shim takes r off the upper end of the travel, so that post and travel
/// become shorter by it: r = max(0, S + T - A, L + a - A - D). It then sits L - r - A deep, which must be at least I. How far a post can be shimmed is its maker's figure.
/// All in mm; the way of measuring by "Choosing a dropper: ride height and insertion", the conditions are arithmetic on it.
/// </remarks>
public sealed class DropperFit
{
    private readonly decimal? _shim;
    private readonly decimal? _travel;
    private readonly decimal? _insertion;
    private readonly decimal? _spare;
    private readonly decimal? _below;

    private DropperFit(SumCheck check, decimal? shim = null, decimal? travel = null, decimal? insertion = null, decimal? spare = null, decimal? below = null)
    {
        Check = check;
        _shim = shim;
        _travel = travel;
        _insertion = insertion;
        _spare = spare;
        _below = below;
    }

    /// <summary>Whether it goes in, and why.</summary>
    public SumCheck Check { get; }

    /// <summary>How much travel has to be shimmed away, in whole steps where the step is known; 0 where none has, null where a length is not known.</summary>
    public Length? ShimDown => Told(_shim);

    /// <summary>The travel that is left; null where a length is not known.</summary>
    public Length? Travel => Told(_travel);

    /// <summary>How deep the post sits, without actuator; null where a length is not known.</summary>
    public Length? Insertion => Told(_insertion);

    /// <summary>How far the lip stays above the collar with the rails at riding height: room for a post of that much more travel; null where a length is not known.</summary>
    public Length? Leftover => Told(_spare);

    /// <summary>What is left of the open seat tube below post and actuator; null where a length is not known.</summary>
    public Length? LeftoverBelow => Told(_below);

    /// <summary>Works it out.</summary>
    /// <param name="post">The dropper.</param>
    /// <param name="room">What frame and rider leave it.</param>
    /// <param name="mostShim">How far its maker lets it be shimmed down; null where that is not known.</param>
    /// <param name="shimStep">The step in which it can be shimmed, 0 to 100 mm, 0 where any is possible; null where that is not known.</param>
    /// <returns>The check fits without a shim, needs a part within what the maker lets be shimmed, rounded up to whole steps, needs measuring where either or the actuator is not known or a figure is a default, does not fit beyond it, and is unsafe where the post would sit too high.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The shim is negative or above 400 mm, or the step above 100 mm.</exception>
    public static DropperFit Of(DropperSize post, SeatpostRoom room, Length? mostShim = null, Length? shimStep = null)
    {
        ArgumentNullException.ThrowIfNull(post);
        ArgumentNullException.ThrowIfNull(room);
        decimal? most = NumberRange.Millimetres(mostShim, 0, 400, nameof(mostShim)) is { } given ? (decimal)given : null;
        decimal? step = NumberRange.Millimetres(shimStep, 0, 100, nameof(shimStep)) is { } stepGiven ? (decimal)stepGiven : null;
        if (!room.IsWhole || !post.IsWhole)
        {
            return new(new("dropper-fit", Verdict.NeedsMeasuring, "a length of post, rider or frame is not known, or is none that they have", "that length, by rule or from the maker's drawing", Cautions.Insertion, DropperSize.Sources));
        }

        decimal rails = room.RailHeight.Millimetres;
        decimal length = post.TotalLength.Millimetres;
        decimal travel = post.Travel.Millimetres;
        decimal actuator = post.ActuatorMillimetres ?? 0;
        decimal forRider = post.LeastRailHeight.Millimetres - rails;
        decimal forTube = length + actuator - rails - room.OpenDepth.Millimetres;
        decimal least = Math.Max(0, Math.Max(forRider, forTube));
        decimal shim = step is > 0 ? Math.Ceiling(least / step.Value) * step.Value : least;
        decimal insertion = length - shim - rails;
        SumCheck check = Judge(room, shim, travel, insertion, most, step, forTube > forRider);
        if (post.ActuatorMillimetres is null)
        {
            // More room below can only make it worse: what is refused without any stays refused, nothing else is settled.
            return new(check.Verdict > Verdict.NeedsMeasuring ? check : new("dropper-fit", Verdict.NeedsMeasuring, "the room that actuator and hose take below the post is not known", "the post maker's drawing, or the actuator with its hose by rule", Cautions.Insertion, DropperSize.Sources));
        }

        check = check.Comparing(("rails above collar", (double)rails, "mm"), ("shim", (double)shim, "mm"), ("insertion", (double)insertion, "mm"), ("least insertion", (double)room.LeastInsertion.Millimetres, "mm"), ("open depth", (double)room.OpenDepth.Millimetres, "mm"));
        return new(check, shim, travel - shim, insertion, shim - forRider, shim - forTube);
    }

    /// <summary>The stack of a post by the least height its page prints with the rails up, and its travel: the one less the other.</summary>
    /// <param name="leastRailHeight">Middle of the rails above the collar, post pushed in to its lip and fully up.</param>
    /// <param name="travel">Its travel.</param>
    /// <exception cref="ArgumentOutOfRangeException">The travel is not below the height.</exception>
    /// <exception cref="ArgumentException">The travel is a default.</exception>
    public static Dimension StackOf(Dimension leastRailHeight, DropperTravel travel)
    {
        if (travel.FitCode == 0)
        {
            throw new ArgumentException("a default is no travel", nameof(travel));
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(travel.Millimetres, leastRailHeight.Millimetres, nameof(travel));
        return Dimension.OfMillimetres(leastRailHeight.Millimetres - travel.Millimetres);
    }

    /// <summary>"needs a part: 10 mm of travel shimmed away leave 160 mm".</summary>
    public override string ToString() => Check.ToString();

    private static Length? Told(decimal? millimetres) => millimetres is { } known ? Length.FromMillimeters((double)known) : null;

    private static SumCheck Judge(SeatpostRoom room, decimal shim, decimal travel, decimal insertion, decimal? most, decimal? step, bool isTube)
    {
        string why = isTube ? "for the depth of the seat tube" : "for the rider";
        string told = string.Create(CultureInfo.InvariantCulture, $"{shim:0.##} mm of travel shimmed away {why} leave {travel - shim:0.##} mm");
        return insertion < room.LeastInsertion.Millimetres
                ? new("dropper-fit", Verdict.Unsafe, string.Create(CultureInfo.InvariantCulture, $"the post would sit {insertion:0.##} mm deep, {room.LeastInsertion.Millimetres:0.##} mm is the least"), "a longer post, or a frame with a longer seat tube", Cautions.Insertion, [.. DropperSize.Sources, Sources.FrameManual])
            : shim == 0 ? new("dropper-fit", Verdict.Fits, string.Create(CultureInfo.InvariantCulture, $"{travel:0.##} mm of travel; the post sits {insertion:0.##} mm deep"), "", Cautions.Insertion, DropperSize.Sources)
            : shim >= travel ? new("dropper-fit", Verdict.DoesNotFit, string.Create(CultureInfo.InvariantCulture, $"it is {shim:0.##} mm too long {why}, which is its whole travel"), "a post of less travel or a shorter one", Cautions.Insertion, DropperSize.Sources)
            : most is null ? new("dropper-fit", Verdict.NeedsMeasuring, told + "; whether it can be shimmed so far its maker says", "the post maker's largest shim", Cautions.Insertion, DropperSize.Sources)
            : step is null && shim <= most ? new("dropper-fit", Verdict.NeedsMeasuring, told + "; in which steps it is shimmed its maker says", "the steps of the post maker's shims", Cautions.Insertion, DropperSize.Sources)
            : shim <= most ? new("dropper-fit", Verdict.NeedsPart, told, "the post maker's travel shims", Cautions.Insertion, DropperSize.Sources)
            : new("dropper-fit", Verdict.DoesNotFit, string.Create(CultureInfo.InvariantCulture, $"it would have to be shimmed down by {shim:0.##} mm {why}; its maker allows {most:0.##} mm"), "a post of less travel or a shorter one", Cautions.Insertion, DropperSize.Sources);
    }
}
