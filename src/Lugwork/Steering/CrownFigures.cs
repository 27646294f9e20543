namespace Lugwork.Steering;

/// <summary>What seats and races of each nominal size were found to measure, hundredths of a millimetre; told on demand.</summary>
/// <param name="Least">Smallest seen, or the nominal size.</param>
/// <param name="Most">Largest seen, or the nominal size.</param>
/// <param name="Source">What it rests on; null where only the nominal size is known.</param>
internal readonly record struct CrownFigures(int Least, int Most, Source? Source)
{
    /// <summary>Seats by code; a seat is turned larger than its name.</summary>
    public static CrownFigures Seat(long code) => code switch
    {
        1 => new(2640, 2652, Sources.Memory),
        2 => new(2650, 2650, null),
        3 => new(2700, 2710, Sources.Memory),
        4 => new(3000, 3010, Sources.RaceAndSeatPair),
        5 => new(3300, 3309, Sources.CrownRaceGuide),
        6 => new(3700, 3700, null),
        _ => new(3978, 3985, Sources.Memory),
    };

    /// <summary>Races by code, inside diameter.</summary>
    public static CrownFigures Race(long code) => code switch
    {
        1 => new(2640, 2643, Sources.RaceMilling),
        2 => new(2650, 2650, null),
        3 => new(2700, 2715, Sources.HeadsetTypes),
        4 => new(2992, 3015, Sources.HeadsetTypes),
        5 => new(3290, 3300, Sources.CrownRaceGuide),
        6 => new(3700, 3700, null),
        _ => new(3980, 3980, null),
    };

    /// <summary>Outside diameter of the steerer just above the seat, millimetres.</summary>
    public static decimal Steerer(long code) => code switch
    {
        1 or 3 => 25.4m,
        2 => 25.0m,
        4 => 28.6m,
        5 => 31.8m,
        6 => 34.9m,
        _ => 38.1m,
    };

    /// <summary>What a caliper at seat or race does not show.</summary>
    public static string TellsApart(long code) => code switch
    {
        1 => "1 in ISO and Italian: the head tube takes cups of 30.2 mm",
        2 => "French: the steerer is 25.0 mm, not 25.4 mm",
        3 => "1 in JIS: the head tube takes cups of 30.0 mm",
        4 => "the usual foot of a 28.6 mm steerer, which is straight although its seat is wider",
        5 => "1-1/4 in: a 31.8 mm steerer, or the foot of a tapered one",
        6 => "1-3/8 in: the foot of a tapered steerer",
        _ => "1.5 in; codes round it to 40",
    };
}
