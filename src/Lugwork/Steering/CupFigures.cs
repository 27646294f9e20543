namespace Lugwork.Steering;

/// <summary>Figures of one headset half, hundredths of a millimetre; told on demand.</summary>
/// <param name="LeastDiameter">Smallest printed outside diameter of cup or bearing.</param>
/// <param name="Diameter">Outside diameter of cup or bearing.</param>
/// <param name="DiameterSource">What the diameter rests on.</param>
/// <param name="Upper">Stack height as an upper half; null where none is known.</param>
/// <param name="Lower">Stack height as a lower half; null where none is known.</param>
/// <param name="StackSource">What the stack heights rest on.</param>
/// <param name="Bearings">Keys of the bearings that are usual in it, with blanks between.</param>
internal sealed record CupFigures(int LeastDiameter, int Diameter, Source DiameterSource, (int Least, int Most)? Upper, (int Least, int Most)? Lower, Source StackSource, string Bearings)
{
    private const string Of41 = "30.15x41x6.5-36/45";
    private const string Of52 = "40x52x6.5-36/45 40x52x7-45/45";

    /// <summary>The figures of a half by its code.</summary>
    public static CupFigures Of(long cup) => cup switch
    {
        1 => Pressed(3000, 3000, Sources.OneInchHeadsets, (1500, 2000), (900, 1300), ""),
        2 => Pressed(3020, 3020, Sources.OneInchHeadsets, (1500, 2000), (900, 1300), ""),
        3 => new(3400, 3405, Sources.HeadsetTypes, (1635, 1635), (1205, 1205), Sources.HeadsetGuide, Of41),
        4 => Pressed(3700, 3700, Sources.HeadsetTypes, (1400, 1800), (1000, 1300), "34x44x7-36/45"),
        5 => Pressed(4405, 4405, Sources.Memory, (1000, 1400), (1000, 1500), Of52),
        6 => Pressed(4960, 4965, Sources.HeadsetTypes, (1000, 1800), (1200, 1800), "40x52x7-45/45"),
        7 => Pressed(5600, 5600, Sources.Memory, null, (1000, 1400), Of52),
        8 => Pressed(4145, 4145, Sources.Memory, (500, 1500), (100, 400), Of41),
        9 => Pressed(4405, 4405, Sources.Memory, (600, 1600), (100, 400), Of41 + " 30.5x41.8x8-45/45 30.5x41.8x6-45/45"),
        10 => Pressed(4965, 4965, Sources.Memory, (600, 1600), (100, 500), Of41 + " 34x44x7-36/45"),
        11 => Pressed(5500, 5500, Sources.Memory, null, (100, 400), Of52),
        12 => Pressed(5600, 5600, Sources.Memory, (800, 1600), (100, 500), Of52),
        13 => Pressed(6200, 6200, Sources.Memory, null, (100, 500), ""),
        14 => Pressed(3800, 3800, Sources.Memory, (600, 1500), (0, 200), "28x38x7-36/45"),
        15 => Pressed(4100, 4100, Sources.BearingSeller, (600, 1500), (0, 200), Of41 + " 30.15x41x7-45/45"),
        16 => Pressed(4180, 4180, Sources.FrameBearingsMeasured, (600, 2500), (0, 200), "30.5x41.8x8-45/45 30.5x41.8x6-45/45"),
        17 => Pressed(4580, 4580, Sources.Memory, null, (0, 200), ""),
        18 => Pressed(4690, 4700, Sources.CarbonFrameBearings, null, (0, 200), "34.1x46.9x7-45/45 33.05x47x7-36/45"),
        19 => Pressed(4900, 4900, Sources.ForkCutting, null, (0, 200), "37x49x6.5-36/45"),
        20 => Pressed(5100, 5100, Sources.Memory, null, (0, 200), ""),
        _ => Pressed(5180, 5200, Sources.Memory, (800, 2500), (0, 200), Of52 + " 40x51.8x8-36/45"),
    };

    // Stack heights are from memory but for one published example.
    private static CupFigures Pressed(int least, int diameter, Source source, (int Least, int Most)? upper, (int Least, int Most)? lower, string bearings) =>
        new(least, diameter, source, upper, lower, Sources.Memory, bearings);
}
