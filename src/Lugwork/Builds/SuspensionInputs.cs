using Lugwork.Suspension;
using Lugwork.Tyres;

namespace Lugwork;

/// <summary>Inputs of fork limits and rear suspension.</summary>
internal static partial class JointInputs
{
    private const int HardwareSizes = 3;

    private const string HardwareOfFrame = "Caliper between the frame's faces where the shock sits, to 0.1 mm, and on the bolt.";

    private const string HardwareOfShock = "Caliper over both reducers in the eyelet, to 0.1 mm, and in their bore.";

    public static readonly JointInput ShockOfFrame = Input<Frame, ShockSize>(Slot.Frame, "shock", "shock that the frame is made for", p => p.Shock, "The frame maker's figure: eye to eye, stroke and mount; the old shock may be the wrong one.");
    public static readonly JointInput SizeOfShock = Input<Shock, ShockSize>(Slot.Shock, "size", "shock size", p => p.Size, "Rule between the middles of its two fixings, without load, to 0.5 mm; stroke on the shaft, air or spring out.");
    public static readonly JointInput LowerOfFrame = Input<Frame, ShockHardware>(Slot.Frame, "lowerShockHardware", "lower shock hardware of the frame", p => p.LowerShockHardware, HardwareOfFrame, HardwareSizes);
    public static readonly JointInput LowerOfShock = Input<Shock, ShockHardware>(Slot.Shock, "lowerHardware", "lower hardware of the shock", p => p.LowerHardware, HardwareOfShock, HardwareSizes);
    public static readonly JointInput UpperOfFrame = Input<Frame, ShockHardware>(Slot.Frame, "upperShockHardware", "upper shock hardware of the frame", p => p.UpperShockHardware, HardwareOfFrame, HardwareSizes);
    public static readonly JointInput UpperOfShock = Input<Shock, ShockHardware>(Slot.Shock, "upperHardware", "upper hardware of the shock", p => p.UpperHardware, HardwareOfShock, HardwareSizes);
    public static readonly JointInput Eyelet = Input<Shock, ShockBush>(Slot.Shock, "eyelet", "bush that the eyelets are made for", p => p.Eyelet, "Inside caliper in the bare eyelet: about 15.0 mm takes the 12.7 bush, 14.0 the 12.0.");
    public static readonly JointInput Bush = Input<Shock, ShockBush>(Slot.Shock, "bush", "bush", p => p.Bush, "Inside caliper in the bush, to 0.05 mm: 12.7 or 12.0.");
    public static readonly JointInput LongestFork = Input<Frame, Dimension>(Slot.Frame, "longestFork", "longest fork that the frame allows", p => p.LongestFork, "Ask the frame maker for the longest fork, axle to crown; \"none\" if the maker prints none. Do not guess.", Lengths);
    public static readonly JointInput MostForkTravel = Input<Frame, Dimension>(Slot.Frame, "mostForkTravel", "most fork travel that the frame allows", p => p.MostForkTravel, "Ask the frame maker for the most travel; \"none\" if the maker prints none. Do not guess.", Lengths);
    public static readonly JointInput AxleToCrown = Input<Fork, Dimension>(Slot.Fork, "axleToCrown", "fork length, axle to crown", p => p.AxleToCrown, "Rule from the middle of the axle to the seat of the crown race, along the steering axis, without load, to 1 mm.", Lengths);

    /// <summary>The length of the fork. It counts, and is asked for, where the frame says which fork its chart holds for.</summary>
    public static JointInput LengthOfFork { get; } = new LengthOfEvery(AxleToCrown);

    public static readonly JointInput ForkTravel = Input<Fork, Dimension>(Slot.Fork, "travel", "fork travel", p => p.Travel, "Rule on the stanchion, full length to fully in, air or spring out, to 1 mm.", Lengths);
    public static readonly JointInput Telescopes = new OwnInput<Fork, Dimension>(Slot.Fork, "travel", "fork with or without travel", p => p.Travel, "Look: a fork with stanchions has travel.")
    {
        Reads = p => p.Travel.State switch
        {
            KnownState.None => new(KnownState.Value, TyreRoom.Rigid, TyreRoom.Rigid, null),
            KnownState.Value or KnownState.Measured or KnownState.OneOf => new(KnownState.Value, TyreRoom.Telescopic, TyreRoom.Telescopic, null),
            _ => p.Travel.ToCandidates(),
        },
        Lists = () => [TyreRoom.Telescopic, TyreRoom.Rigid],
        IsLength = false,
        Shows = code => code == TyreRoom.Rigid ? "rigid" : "with travel",
        Tells = known => known.State == KnownState.None ? "rigid" : known.InTradeWords(),
    };
    public static readonly JointInput CrownsAllowed = Input<Frame, CrownType>(Slot.Frame, "forkCrowns", "crowns that the frame allows", p => p.ForkCrowns, "Ask the frame maker: two crowns only where the maker says so in print.");
    public static readonly JointInput CrownsOfFork = Input<Fork, CrownType>(Slot.Fork, "crowns", "crowns of the fork", p => p.CrownsOrRigid, "Look: one crown below the head tube, or a second one above it.");
}
