using System.Collections.Immutable;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>A brake lever.</summary>
public sealed record BrakeLever : Part
{
    /// <summary>How much cable it pulls; none for a lever that holds fluid.</summary>
    public Known<CablePull> Pull { get; init; }

    /// <summary>The fluid that it holds; none for a lever that pulls a cable.</summary>
    public Known<BrakeFluid> Fluid { get; init; }

    /// <summary>The hand that it is made for.</summary>
    public Known<Hand> Hand { get; init; }

    /// <summary>Hose or housing from the lever to its brake; no joint reads it.</summary>
    public Known<Dimension> HoseLength { get; init; }

    /// <summary>The pull; where it is not said, none beside a known fluid.</summary>
    internal Known<CablePull> PullOrFluid => Pull.State == KnownState.Unknown && (Fluid.State is KnownState.Value or KnownState.OneOf) ? Known<CablePull>.None : Pull;

    /// <summary>The fluid; where it is not said, none beside a known pull.</summary>
    internal Known<BrakeFluid> FluidOrPull => Fluid.State == KnownState.Unknown && (Pull.State is KnownState.Value or KnownState.OneOf) ? Known<BrakeFluid>.None : Fluid;

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontBrakeLever, Slot.RearBrakeLever];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "pull short".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static BrakeLever Read(string text) => PartForms.BrakeLever.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out BrakeLever part, out ImmutableArray<SpecProblem> problems) => PartForms.BrakeLever.TryRead(text, out part, out problems);
}

/// <summary>A rim brake: a caliper on a bolt, or two arms on bosses.</summary>
public sealed record RimBrake : Part
{
    /// <summary>What kind of brake it is.</summary>
    public Known<BrakeType> Type { get; init; }

    /// <summary>Its reach, from the centre bolt to the pads; does not matter on bosses.</summary>
    public Known<RimBrakeReach> Reach { get; init; }

    /// <summary>Its centre bolt; does not matter on bosses.</summary>
    public Known<BrakeBolt> Bolt { get; init; }

    /// <summary>What track its pads are made for.</summary>
    public Known<RimPads> Pads { get; init; }

    /// <summary>The reach; none where the type says that bosses hold the brake, and never none of a brake that a bolt holds.</summary>
    internal Known<RimBrakeReach> ReachOnBolt => Reach.State is KnownState.Unknown or KnownState.None ? (OnBosses ? Known<RimBrakeReach>.None : default) : Reach;

    /// <summary>The bolt; none where the type says that bosses hold the brake, and never none of a brake that a bolt holds.</summary>
    internal Known<BrakeBolt> BoltOrBosses => Bolt.State is KnownState.Unknown or KnownState.None ? (OnBosses ? Known<BrakeBolt>.None : default) : Bolt;

    private bool OnBosses
    {
        get
        {
            if (Type.State == KnownState.Value)
            {
                return Type.Value.IsOnBosses;
            }

            return Type.Values is { IsEmpty: false } types && types.All(t => t.IsOnBosses);
        }
    }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontRimBrake, Slot.RearRimBrake];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "road caliper; reach 47-57; bolt recessed; pads for aluminium".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static RimBrake Read(string text) => PartForms.RimBrake.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out RimBrake part, out ImmutableArray<SpecProblem> problems) => PartForms.RimBrake.TryRead(text, out part, out problems);
}

/// <summary>The two nuts of a solid axle.</summary>
public sealed record AxleNuts : Part
{
    /// <summary>Their thread.</summary>
    public Known<HubAxleThread> Thread { get; init; }

    private protected override ImmutableArray<Slot> GoesInto => [Slot.FrontAxleNuts, Slot.RearAxleNuts];

    private protected override string Told() => PartText.Written(this);

    /// <summary>Reads the short form: "3/8x26".</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <exception cref="SpecException">With all problems at once.</exception>
    public static AxleNuts Read(string text) => PartForms.AxleNuts.Read(text);

    /// <summary>Reads the short form; problems as data.</summary>
    /// <param name="text">"key value" pieces with semicolons between.</param>
    /// <param name="part">The part, with what could be read.</param>
    /// <param name="problems">All problems; empty where true is returned.</param>
    public static bool TryRead(string text, out AxleNuts part, out ImmutableArray<SpecProblem> problems) => PartForms.AxleNuts.TryRead(text, out part, out problems);
}
