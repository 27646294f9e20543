using System.Collections.Immutable;
using Lugwork.Cockpit;

namespace Lugwork;

/// <summary>Who rides the bicycle, what it carries, and what it is ridden on.</summary>
public sealed record Rider : Part
{
    /// <summary>The rider as dressed for riding, with all that is worn or carried on the body.</summary>
    public Known<Load> Mass { get; init; }

    /// <summary>The rider and all luggage on the bicycle together; none where the bicycle carries nothing.</summary>
    public Known<Load> MassWithLuggage { get; init; }

    /// <summary>Rider, luggage and the bicycle itself together.</summary>
    public Known<Load> SystemMass { get; init; }

    /// <summary>The hardest riding that the bicycle is for.</summary>
    public Known<UseCategory> Use { get; init; }

    /// <summary>From the middle of the bottom bracket to the top of the saddle, along the seat tube, as it is ridden.</summary>
    public Known<Dimension> SaddleHeight { get; init; }

    /// <summary>From the floor to the crotch, in the shoes that are ridden.</summary>
    public Known<Dimension> Inseam { get; init; }

    /// <summary>The hand with which the rider brakes in front.</summary>
    public Known<Hand> FrontBrakeHand { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Rider];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "82 kg; with luggage 95 kg; system 108 kg; use 2".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Rider Read(string text) => PartForms.Rider.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Rider part, out ImmutableArray<SpecProblem> problems) => PartForms.Rider.TryRead(text, out part, out problems);
}
