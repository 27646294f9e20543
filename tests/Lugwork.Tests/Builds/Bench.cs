namespace Lugwork.Tests.Builds;

/// <summary>Two parts on the bench: what one joint says of them.</summary>
internal static class Bench
{
    public static Fit Judge(string joint, string frame, params (Slot Slot, Part Part)[] parts)
    {
        Build build = Build.From(Frame.Read(frame));
        foreach ((Slot slot, Part part) in parts)
        {
            build = build.With(part, slot);
        }

        return build.Check().Fits.Single(f => f.Joint!.Id == joint);
    }

    public static Verdict RearWheel(string frame, string wheel) => Judge("rear-wheel-in-frame", frame, (Slot.RearWheel, Wheel.Read(wheel))).Verdict;

    public static Verdict FrontWheel(string fork, string wheel) =>
        Judge("front-wheel-in-fork", "material steel", (Slot.Fork, Fork.Read(fork)), (Slot.FrontWheel, Wheel.Read(wheel))).Verdict;

    public static Verdict Post(string frame, string post) => Judge("seatpost-in-seat-tube", frame, (Slot.Seatpost, Seatpost.Read(post))).Verdict;

    public static Verdict Insertion(string frame, string post) => Judge("seatpost-insertion", frame, (Slot.Seatpost, Seatpost.Read("27.2; " + post))).Verdict;

    public static Verdict Room(string frame, string post) => Judge("seatpost-room-in-seat-tube", frame, (Slot.Seatpost, Seatpost.Read(post))).Verdict;

    public static Verdict CassetteOn(string wheel, string cassette) =>
        Judge("cassette-on-freehub-body", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.Cassette, Cassette.Read(cassette))).Verdict;

    public static Verdict TyreBead(string wheel, string tyre) =>
        Judge("rear-tyre-bead-on-rim", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearTyre, Tyre.Read(tyre))).Verdict;

    public static Verdict TyreWidth(string wheel, string tyre) =>
        Judge("rear-tyre-width-on-rim", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearTyre, Tyre.Read(tyre))).Verdict;

    public static Verdict RotorLimit(string frame, string rotor) => Judge("rear-rotor-within-limit", frame, (Slot.RearRotor, Rotor.Read(rotor))).Verdict;

    public static Verdict Fixing(string wheel, string rotor) =>
        Judge("rear-rotor-on-hub", "material steel", (Slot.RearWheel, Wheel.Read(wheel)), (Slot.RearRotor, Rotor.Read(rotor))).Verdict;

    public static Verdict OnMount(string frame, string caliper, string rotor) =>
        Judge("rear-caliper-on-mount", frame, (Slot.RearBrake, Caliper.Read(caliper)), (Slot.RearRotor, Rotor.Read(rotor))).Verdict;
}
