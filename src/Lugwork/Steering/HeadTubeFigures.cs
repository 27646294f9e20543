namespace Lugwork.Steering;

/// <summary>Figures of the head tube ends beside their limits, by code; told on demand.</summary>
internal static class HeadTubeFigures
{
    /// <summary>The size that the trade names, hundredths of a millimetre; some lie just above the finished bore.</summary>
    public static int Nominal(long bore) => bore switch
    {
        1 => 2990,
        2 => 3010,
        3 => 3395,
        4 => 3695,
        5 => 4140,
        6 => 4400,
        7 => 4960,
        8 => 5500,
        9 => 5600,
        10 => 6200,
        11 => 3815,
        12 => 4115,
        13 => 4200,
        14 => 4600,
        15 => 4710,
        16 => 4910,
        17 => 5100,
        _ => 5210,
    };

    /// <summary>What the limits rest on, by the weaker of the two: where a reamer's size is known for one of them, the other is still from memory.</summary>
    public static Source Limits(long bore) => bore switch
    {
        1 or 2 => Sources.HeadsetGuide,
        6 => Sources.HeadTubeReaming,
        _ => Sources.Memory,
    };

    /// <summary>What a caliper at the bore does not show.</summary>
    public static string TellsApart(long bore) => bore switch
    {
        1 => "JIS: takes cups of 30.0 mm; the ISO bore is 0.2 mm larger, and its fork has a 26.4 mm seat instead of 27.0 mm",
        2 => "ISO and Italian: takes cups of 30.2 mm; the JIS bore is 0.2 mm smaller",
        5 => "a plain bore for a pressed cup; IS41 has a 45 degree seat cut into the tube",
        6 => "takes the flush and the external cup; about 50 mm outside",
        7 => "takes the flush and the external cup; about 62 mm outside",
        8 => "1 mm under 56: not to be rounded",
        9 => "takes the flush and the external cup",
        10 => "inside the tube: 62 mm outside is a head tube of 49.6 mm inside",
        11 or 14 or 15 or 16 => "a 45 degree seat cut into the tube; the bearing drops in without a cup",
        12 => "a 45 degree seat cut into the tube for a 41.0 mm bearing; ZS41 is a plain bore 0.25 mm larger",
        13 => "a seat cut into the tube for a 41.8 mm bearing",
        17 => "a seat for a 51 mm bearing, 1 mm under IS52",
        18 => "a 45 degree seat cut into the tube for a bearing of 52.0 or 51.8 mm",
        _ => "",
    };
}
