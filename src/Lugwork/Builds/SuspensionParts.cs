using System.Collections.Immutable;
using Lugwork.Suspension;

namespace Lugwork;

/// <summary>A rear shock with its bushes and hardware.</summary>
public sealed record Shock : Part
{
    /// <summary>Mount, eye to eye and stroke.</summary>
    public Known<ShockSize> Size { get; init; }

    /// <summary>Width and bolt of the hardware in its lower eyelet.</summary>
    public Known<ShockHardware> LowerHardware { get; init; }

    /// <summary>Width and bolt of the hardware in its upper eyelet; none for a trunnion.</summary>
    public Known<ShockHardware> UpperHardware { get; init; }

    /// <summary>The bush that its eyelets are made for.</summary>
    public Known<ShockBush> Eyelet { get; init; }

    /// <summary>The bush that is in them, or is bought for them.</summary>
    public Known<ShockBush> Bush { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.Shock];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "210x55; lower hardware 22.2x8; upper hardware 22.2x8; eyelet 12.7; bush 12.7".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static Shock Read(string text) => PartForms.Shock.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out Shock part, out ImmutableArray<SpecProblem> problems) => PartForms.Shock.TryRead(text, out part, out problems);
}
