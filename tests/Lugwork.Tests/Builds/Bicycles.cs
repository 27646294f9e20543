namespace Lugwork.Tests.Builds;

/// <summary>Bicycles made of parts that nearly mate.</summary>
internal static class Bicycles
{
    private static readonly string[] RearEnds = ["R135-QR", "R142-12", "R148-12", "R130", "R126", "unknown"];
    private static readonly string[] Materials = ["steel", "aluminium", "carbon", "unknown"];
    private static readonly string[] Bores = ["27.2", "30.9", "31.6", "27.2 | 27.4", "27.18 ± 0.05", "unknown"];
    private static readonly string[] Posts = ["27.2", "26.8", "27.4", "30.9", "31.6", "unknown"];
    private static readonly string[] RearMounts = ["IS-rear", "PM-160", "PM-180", "FM-rear-140", "none", "unknown"];
    private static readonly string[] FrontMounts = ["IS-front", "PM-160", "PM-180", "FM-front-140", "none", "unknown"];
    private static readonly string[] Limits = ["160", "180", "203", "unknown"];
    private static readonly string[] Bodies = ["HG-M", "HG-L", "HG", "XD", "unknown"];
    private static readonly string[] Patterns = ["HG-9", "HG-10-old-road", "HG-11-road", "XD", "unknown"];
    private static readonly string[] Depths = ["79", "80", "110", "210", "211", "unknown"];

    public static Frame Frame(Random random) => Lugwork.Frame.Read(
        $"rear {Of(random, RearEnds)}; material {Of(random, Materials)}; seatTube {Of(random, Bores)}; rearBrake {Of(random, RearMounts)}; largestRearRotor {Of(random, Limits)}; leastInsertion 80; mostInsertion 210");

    public static Part Part(Slot slot, Random random) =>
        slot == Slot.Fork ? Fork.Read($"front {Of(random, ["F100-QR9", "F100-12", "F110-15B", "unknown"])}; frontBrake {Of(random, FrontMounts)}; largestFrontRotor {Of(random, Limits)}")
        : slot == Slot.FrontWheel ? Wheel.Read($"hub {Of(random, ["F100-QR9", "F100-12", "F100-15", "unknown"])}; ends {Of(random, ["swappable", "fixed", "unknown"])}; {Rim(random)}")
        : slot == Slot.RearWheel ? Wheel.Read($"hub {Of(random, RearEnds)}; ends {Of(random, ["swappable", "fixed", "unknown"])}; body {Of(random, Bodies)}; {Rim(random)}")
        : slot == Slot.FrontTyre || slot == Slot.RearTyre ? Tyre.Read($"size {Of(random, ["28-622", "29-622", "37-622", "62-622", "40-635"])}; bead {Of(random, ["wired", "folding", "tubeless", "unknown"])}")
        : slot == Slot.Cassette ? Cassette.Read($"pattern {Of(random, Patterns)}")
        : slot == Slot.FrontRotor || slot == Slot.RearRotor ? Rotor.Read($"size {Of(random, ["140", "160", "180", "203", "unknown"])}; fixing {Of(random, ["six-bolt", "center-lock", "unknown"])}")
        : slot == Slot.FrontBrake || slot == Slot.RearBrake ? Caliper.Read($"mounting {Of(random, ["post", "flat", "unknown"])}")
        : Seatpost.Read($"diameter {Of(random, Posts)}; mark {Of(random, ["75", "90", "unknown"])}; insertion {Of(random, Depths)}");

    public static Build Any(Random random)
    {
        Build build = Build.From(Frame(random));
        foreach (Slot slot in Slot.All.Where(s => s != Slot.Frame))
        {
            build = random.Next(5) == 0 ? build : build.With(Part(slot, random), slot);
        }

        return build;
    }

    private static string Rim(Random random) =>
        $"rotorFixing {Of(random, ["six-bolt", "center-lock", "none", "unknown"])}; beadSeat {Of(random, ["622", "622", "635", "unknown"])}; innerWidth {Of(random, ["19", "23", "25", "25 ± 0.5", "unknown"])}; rimType {Of(random, ["C", "TC", "TSS", "unknown"])}";

    private static string Of(Random random, string[] some) => some[random.Next(some.Length)];
}
