using System.Collections.Immutable;

namespace Lugwork.Planning;

/// <summary>Bridges that cost otherwise than their kind, by the start of their ids; the first row that matches counts.</summary>
/// <remarks>Common practice, no source, as the whole table.</remarks>
internal static class CostClassRows
{
    public static ImmutableArray<(string Start, CostClass Class)> Own { get; } =
    [
        // The rim is moved over by a wheel builder, or the frame is spread.
        ("hub-r126-in-r130", CostClass.Dear),
        ("hub-r135-qr-in-r130", CostClass.Dear),
        ("hub-r130-in-r135-qr", CostClass.Dear),

        // Washers, rings, collars and clamps.
        ("hub-r110-3/8-in-r110-14", CostClass.Cheap),
        ("valve-presta-in-8.5", CostClass.Cheap),
        ("cassette-8-spline-10-12-on-n3w", CostClass.Cheap),
        ("lockring-", CostClass.Cheap),
        ("crown-seat-30-in-lower-39.8", CostClass.Cheap),
        ("front-derailleur-braze-on-", CostClass.Cheap),
        ("front-derailleur-e-type-", CostClass.Cheap),
        ("derailleur-on-claw", CostClass.Cheap),

        // Main parts by themselves.
        ("bar-25.8-in-", CostClass.Dear),
        ("steerer-25.4-in-", CostClass.Dear),

        // Kits of a hub, and cups with spacers.
        ("hub-", CostClass.Moderate),
        ("bottom-bracket-92-in-89.5", CostClass.Moderate),

        // The shock is opened.
        ("shock-stroke-spacers", CostClass.Dear),
    ];
}
