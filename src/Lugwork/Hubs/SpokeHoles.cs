using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>Holes for spokes in hubs and rims, as published. Counts of hub and rim must be the same, except where a wheel is laced two to one.</summary>
public static class SpokeHoles
{
    /// <summary>Usual spoke hole in a hub flange, 2.6 mm.</summary>
    public static Length HubHole => Length.FromMillimeters(2.6);

    /// <summary>The usual circle of spoke holes in a flange, 38 to 67 mm.</summary>
    public static LengthRange FlangeCircle => new(38, 67);

    /// <summary>Where hole and circle come from.</summary>
    public static Source HubSource => Sources.HubMeasuring;

    /// <summary>Where a number of spoke holes in a rim comes from: 28, 32 and 36 are printed; 16 to 24 on light wheels, 40 and 48 on tandems are from memory.</summary>
    /// <param name="holes">How many holes the rim has.</param>
    /// <returns>The source; null where no row has that number.</returns>
    public static Source? CountSource(int holes) => holes switch
    {
        28 or 32 or 36 => Sources.RimTable,
        >= 16 and <= 24 or 40 or 48 => Sources.Memory,
        _ => null,
    };
}
