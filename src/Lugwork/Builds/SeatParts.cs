using System.Collections.Immutable;
using Lugwork.Seating;

namespace Lugwork;

/// <summary>The collar round the seat tube.</summary>
public sealed record SeatClamp : Part
{
    /// <summary>The outside diameter of seat tube that it goes round.</summary>
    public Known<SeatClampSize> Size { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.SeatClamp];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "31.8".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static SeatClamp Read(string text) => PartForms.SeatClamp.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out SeatClamp part, out ImmutableArray<SpecProblem> problems) => PartForms.SeatClamp.TryRead(text, out part, out problems);
}

/// <summary>A saddle.</summary>
public sealed record Saddle : Part
{
    /// <summary>Its rails.</summary>
    public Known<SaddleRails> Rails { get; init; }

    /// <summary>From the middle of the rails to the top of the saddle.</summary>
    public Known<Dimension> Depth { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Saddle];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "7 mm round".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Saddle Read(string text) => PartForms.Saddle.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Saddle part, out ImmutableArray<SpecProblem> problems) => PartForms.Saddle.TryRead(text, out part, out problems);
}
