using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>What another rotor asks of the caliper: how far it moves. Immutable.</summary>
/// <remarks>
/// Along the radius (D' - D) / 2. On posts, by the one drawing that was read, the pads move at 60 degrees to the face of the posts: square to it by
/// sin 60, along the row of the posts by cos 60 of that. Makers' drawings differ, so an adapter is named by its increment and never by a computed
/// thickness; the largest rotor of frame or fork is a limit of strength that no sum lifts.
/// D and D' the diameters, mm: the radius by "Interchangeability of 200mm and 203mm rotors", the posts by "The problem with flat mount".
/// </remarks>
public sealed class RotorChange
{
    private static readonly double SineOf60 = Math.Sqrt(3) / 2;

    private RotorChange(RotorSize from, RotorSize to)
    {
        From = from;
        To = to;
    }

    /// <summary>The rotor that the caliper stands right for.</summary>
    public RotorSize From { get; }

    /// <summary>The other rotor.</summary>
    public RotorSize To { get; }

    /// <summary>How far the pads move away from the axle along the radius; negative for a smaller rotor.</summary>
    public Length AlongRadius => Length.FromMillimeters(Grows / 2.0);

    /// <summary>How far a caliper on posts moves square to their face, by one drawing; no thickness of an adapter.</summary>
    public Length SquareToPosts => Length.FromMillimeters(Grows / 2.0 * SineOf60);

    /// <summary>How far a caliper on posts moves along the row of the posts, by one drawing. A plain washer does not do it.</summary>
    public Length AlongPosts => Length.FromMillimeters(Grows / 4.0);

    /// <summary>Ratio of the braking torques at the same lever force, new to old, nearly: it grows with the diameter.</summary>
    public double TorqueRatio => (double)To.FitCode / From.FitCode;

    /// <summary>The warning that goes with every change of rotor.</summary>
    public static Caution Caution => Cautions.Rotor;

    /// <summary>What the radius rests on.</summary>
    public static ImmutableArray<Source> Sources { get; } = [Lugwork.Sources.RotorInterchange, Lugwork.Sources.Derived];

    /// <summary>What the moves at posts rest on.</summary>
    public static Source PostSource => Lugwork.Sources.FlatMountBuilder;

    private long Grows => To.FitCode - From.FitCode;

    /// <summary>A change from one rotor to another.</summary>
    /// <param name="from">The rotor that the caliper stands right for.</param>
    /// <param name="to">The other rotor.</param>
    public static RotorChange Of(RotorSize from, RotorSize to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        return new(from, to);
    }

    /// <summary>"160 mm to 180 mm: the pads move 10 mm out".</summary>
    public override string ToString() => FormattableString.Invariant($"{From.TradeName} to {To.TradeName}: the pads move {Math.Abs(Grows) / 2m:0.#} mm {(Grows < 0 ? "in" : "out")}");
}
