using System.Collections.Frozen;
using System.Collections.Immutable;
using static Lugwork.Workshop.TorqueTable;

namespace Lugwork.Workshop;

/// <summary>The torques that only makers name, each with the rows of fasteners that are like it. What was read of those is no figure for it: a torque outside all of them is asked about, and none is approved.</summary>
internal static class LikeTorques
{
    /// <summary>By the id of the figure; empty where no row that was read is like it.</summary>
    public static FrozenDictionary<string, ImmutableArray<TorqueFigure>> All { get; } = new Dictionary<string, ImmutableArray<TorqueFigure>>
    {
        ["pivot-torque"] = [],
        ["hanger-torque"] = [DriveTorques.HangerBolts, DriveTorques.UniversalHanger],
        ["stem-torque"] = [SteeringTorques.StemOnSteerer, SteeringTorques.StemOnCarbon, SteeringTorques.StemOnSteererOld, SteeringTorques.QuillWedge],
        ["binder-torque"] = [SteeringTorques.SeatBinder, SteeringTorques.SeatCollarCarbon],
        ["drop-lever-torque"] = [BrakeTorques.LeverClamp, DriveTorques.ShifterClamp],
        ["control-torque"] = [BrakeTorques.LeverClamp, DriveTorques.ShifterClamp],
        ["grip-torque"] = [BrakeTorques.LeverClamp, DriveTorques.ShifterClamp],
        ["ring-torque"] = [DriveTorques.RingBoltsAluminium, DriveTorques.RingBoltsSteel, DriveTorques.CassetteLockring],
        ["crank-torque"] = [DriveTorques.CrankSquare, DriveTorques.CrankEight, DriveTorques.CrankTen, DriveTorques.CrankPinch, DriveTorques.CrankStepped, DriveTorques.CrankThirty],
        ["locknut-torque"] = [],
        ["cotter-torque"] = [],
        ["guide-torque"] = [],
        ["sprocket-torque"] = [],
        ["tension-torque"] = [DriveTorques.BracketEccentric],
        ["triangle-torque"] = [],
        ["crown-torque"] = [],
        ["dropper-torque"] = [],
        ["expander-torque"] = [SteeringTorques.Expander],
        ["shell-adapter-torque"] = [DriveTorques.BracketCups],
        ["shift-cable-torque"] = [DriveTorques.RearCable, DriveTorques.FrontCable],
        ["front-derailleur-torque"] = [DriveTorques.FrontBand, DriveTorques.FrontBrazeOn],
        ["derailleur-torque"] = [],
        ["axle-torque"] = [BrakeTorques.AxleNut, BrakeTorques.FrontThruAxle, BrakeTorques.RearThruAxle],
        ["arm-torque"] = [],
        ["rim-brake-torque"] = [BrakeTorques.RimCaliperFront, BrakeTorques.RimCaliperRear, BrakeTorques.ArmBolt, BrakeTorques.PadLinear, BrakeTorques.PadCaliper],
        ["rotor-torque"] = [BrakeTorques.RotorBolts, BrakeTorques.RotorLockring],
        ["caliper-torque"] = [BrakeTorques.CaliperBolts, BrakeTorques.CaliperBody, BrakeTorques.FlatMountBolts, BrakeTorques.AdapterBolts],
        ["saddle-torque"] = [SteeringTorques.RailBolt, SteeringTorques.RailBolts, SteeringTorques.RailNuts, SteeringTorques.RailBinder, SteeringTorques.SeatCollarCarbon],
        ["cassette-torque"] = [DriveTorques.CassetteLockring],
        ["fixed-lockring-torque"] = [DriveTorques.CassetteLockring],
        ["bracket-torque"] = [DriveTorques.BracketSquare, DriveTorques.BracketEight, DriveTorques.BracketOutboard, DriveTorques.BracketStepped, DriveTorques.BracketCups],
    }.ToFrozenDictionary();

    /// <summary>What speaks against a torque that only the maker names; null where nothing does.</summary>
    public static string? Doubt(WorkTorque applied)
    {
        ImmutableArray<TorqueFigure> like = All.GetValueOrDefault(applied.FastenerId, []);
        TorqueRange[] read = [.. (like.IsEmpty ? TorqueTable.All : like).SelectMany(t => t.Ranges)];
        (int least, int most) = (read.Min(r => r.LeastHundredths), read.Max(r => r.MostHundredths));
        return applied.Thousandths >= least * 10 && applied.Thousandths <= most * 10 ? null
            : FormattableString.Invariant($"outside {(like.IsEmpty ? "the torques of every fastener that was read" : "what was read of like fasteners")} ({least / 100m:0.##} to {most / 100m:0.##} N m); look at the unit, and at the maker's figure");
    }
}
