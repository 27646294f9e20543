using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>The room that a frame and a rider leave a seatpost, rigid or dropper: rails above the collar, depth of the seat tube, least insertion.</summary>
/// <remarks>
/// I = L - A, I how deep a post of length L from rails to lower end sits with its rails A above the collar, mm; least insertion ≤ I ≤ open depth. The least is the deeper of the post's
/// mark, "16 CFR 1512.15 Requirements for seat", and the frame maker's figure, "Operation Manual 2015, pp. 94-95". Lengths above 0 to 100,000 mm; a default is not known, never 0.
/// An open depth above 1,000 mm and a least insertion below 40 mm were read wrongly, and count as not known (our own bounds, no source: no seat tube is so long, and two diameters of the thinnest post are 42 mm).
/// </remarks>
public sealed record SeatpostRoom
{
    private const decimal MostOpen = 1_000;

    private const decimal LeastAsked = 40;

    /// <summary>Middle of the rails above the collar at riding height.</summary>
    public required Dimension RailHeight { get; init; }

    /// <summary>How deep the seat tube is open below the collar: to a bend, pivot, bolt or narrowing.</summary>
    public required Dimension OpenDepth { get; init; }

    /// <summary>The deeper of the post's mark and the frame maker's least.</summary>
    public required Dimension LeastInsertion { get; init; }

    /// <summary>How deep a rigid post sits: its length less the height of the rails.</summary>
    /// <param name="postLength">From the rails to the lower end.</param>
    /// <returns>Negative where it does not reach the collar.</returns>
    /// <exception cref="ArgumentException">The post's length, or the height of the rails, is a default.</exception>
    public Length InsertionOf(Dimension postLength) => Length.FromMillimeters((double)(NotDefault(postLength, nameof(postLength)) - NotDefault(RailHeight, nameof(RailHeight))));

    /// <summary>The longest travel of a dropper, pushed in to its lip: height of the rails less the stack.</summary>
    /// <param name="stack">From the lip above the collar to the middle of the rails, fully down.</param>
    /// <returns>Zero or negative where the stack alone is too high for any. <see cref="DropperSize.LongestTravel"/> names the travel of the trade below it.</returns>
    /// <exception cref="ArgumentException">The stack, or the height of the rails, is a default.</exception>
    public Length LongestTravel(Dimension stack) => Length.FromMillimeters((double)(NotDefault(RailHeight, nameof(RailHeight)) - NotDefault(stack, nameof(stack))));

    /// <summary>Whether a rigid post goes in.</summary>
    /// <param name="postLength">From the rails to the lower end.</param>
    /// <returns>Unsafe where it sits less deep than it must; no fit where it is longer than the seat tube is open; needs measuring where a figure is a default.</returns>
    public SumCheck Check(Dimension postLength)
    {
        if (!IsWhole || postLength.FitCode == 0)
        {
            return new("seatpost-room", Verdict.NeedsMeasuring, "a length of post, rider or frame is not known, or is none that they have", "that length, by rule or caliper", Cautions.Insertion, [Sources.FrameManual]);
        }

        decimal insertion = postLength.Millimetres - RailHeight.Millimetres;
        SumCheck check = insertion < LeastInsertion.Millimetres
            ? new("seatpost-room", Verdict.Unsafe, string.Create(CultureInfo.InvariantCulture, $"the post sits {insertion:0.##} mm deep, {LeastInsertion.Millimetres:0.##} mm is the least: a longer one is needed"), "a longer post", Cautions.Insertion, [Sources.FrameManual, Sources.SeatRegulation])
            : insertion > OpenDepth.Millimetres
                ? new("seatpost-room", Verdict.DoesNotFit, string.Create(CultureInfo.InvariantCulture, $"the post would sit {insertion:0.##} mm deep, the seat tube is open for {OpenDepth.Millimetres:0.##} mm: a shorter one is needed"), "a shorter post; never one cut above its mark", Cautions.Insertion, [Sources.FrameManual])
                : new("seatpost-room", Verdict.Fits, string.Create(CultureInfo.InvariantCulture, $"the post sits {insertion:0.##} mm deep, of {LeastInsertion.Millimetres:0.##} to {OpenDepth.Millimetres:0.##} mm"), "", Cautions.Insertion, [Sources.FrameManual, Sources.SeatRegulation]);
        return check.Comparing(("insertion", (double)insertion, "mm"), ("least insertion", (double)LeastInsertion.Millimetres, "mm"), ("open depth", (double)OpenDepth.Millimetres, "mm"));
    }

    internal static decimal NotDefault(Dimension length, string name) =>
        length.FitCode == 0 ? throw new ArgumentException("a default is no length", name) : length.Millimetres;

    internal bool IsWhole => RailHeight.FitCode != 0 && IsDepth(OpenDepth) && IsLeast(LeastInsertion);

    /// <summary>A seat tube can be open so deep; a default is no depth.</summary>
    internal static bool IsDepth(Dimension open) => open.Millimetres is > 0 and <= MostOpen;

    /// <summary>A post or a frame can ask for so little; a default is not known.</summary>
    internal static bool IsLeast(Dimension insertion) => insertion.Millimetres >= LeastAsked;
}
