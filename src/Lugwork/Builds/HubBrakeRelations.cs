using Lugwork.Brakes;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>A brake inside the hub, or on its side: the lever that works it, and the frame that holds its arm.</summary>
internal static class HubBrakeRelations
{
    /// <summary>Code of a hub that is known to have no brake.</summary>
    public const long NoBrake = 101;

    private static readonly Reason NoHubBrake = new("no-hub-brake", "There is no brake inside the hub that a lever could work.") { Sources = [Sources.Derived] };

    private static readonly Reason ByPedals = new("hub-brake-by-pedals", "A {1} is worked by the pedals: no lever takes part.", Cautions.ReactionArm) { Sources = [Sources.CoasterBrakes] };

    private static readonly Reason WithArm = new("hub-brake-with-lever", "A {1} under a lever of {0}.", Cautions.ReactionArm) { Sources = [Sources.MechanicalBrakes] };

    private static readonly Reason ArmHeld = new("reaction-arm-on-frame", "A {0} turns its arm against a frame of {1}: the arm is clamped to the stay with its own clip, or bolted to a tab of the frame.", Cautions.ReactionArm)
    {
        Sources = [Sources.DrumArmClip, Sources.DrumArmLoose, Sources.CommonPractice],
    };

    private static readonly Reason ArmOnCarbon = new("reaction-arm-on-carbon", "A {0} turns its arm against a stay of {1}, which a clip crushes: only where the frame's maker has a place for it.", Cautions.ReactionArm)
    {
        Mend = "a frame with a tab for the arm, or another brake",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason NoArm = new("no-reaction-arm", "No brake inside the hub: no arm has to be held.") { Sources = [Sources.Derived] };

    /// <summary>Inputs: pull of the lever, or that it holds fluid; brake of the hub, or that it has none.</summary>
    public static Relation WithLever { get; } = new Matrix(0, 1, Worked, [], [Sources.MechanicalBrakes, Sources.LeverPull]);

    /// <summary>Inputs: brake of the hub, or that it has none; material of the frame.</summary>
    public static Relation ArmOnFrame { get; } = new Matrix(0, 1, Held, [], [Sources.DrumArmClip, Sources.DrumArmLoose, Sources.CommonPractice]);

    private static Outcome Worked(long lever, long brake)
    {
        if (brake == NoBrake)
        {
            return new(Verdict.Fits, NoHubBrake);
        }

        if (brake == BrakeType.Coaster.FitCode)
        {
            return new(Verdict.Fits, ByPedals);
        }

        Outcome pulled = BrakeActionRelations.LeverOrFluid.Judge([lever, brake]);
        return pulled.Verdict == Verdict.Fits ? pulled with { Reason = WithArm } : pulled;
    }

    private static Outcome Held(long brake, long material) =>
        brake == NoBrake ? new(Verdict.Fits, NoArm)
        : material == Material.Carbon.FitCode ? new(Verdict.NeedsMeasuring, ArmOnCarbon)
        : new(Verdict.Fits, ArmHeld);
}
