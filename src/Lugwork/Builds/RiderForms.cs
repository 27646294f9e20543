namespace Lugwork;

/// <summary>Form of the rider, and the fields of load, use and age that several parts have.</summary>
internal static partial class PartForms
{
    private const string Masses = "a mass such as 120 kg, 265 lb or 18 st 13 lb, or none, or unknown";

    private const string Categories = "condition-1 to condition-5 of ASTM F2043, or none, or unknown";

    public static PartForm<Rider> Rider { get; } = new("rider", () => new Rider(),
        PartField<Rider>.Of("mass", Masses, p => p.Mass, (p, v) => p with { Mass = v }, [], bare: true),
        PartField<Rider>.Of("massWithLuggage", Masses, p => p.MassWithLuggage, (p, v) => p with { WithLuggage = v }, ["with luggage"]),
        PartField<Rider>.Of("system", Masses, p => p.System, (p, v) => p with { System = v }, ["with bicycle"]),
        PartField<Rider>.Of("use", Categories, p => p.Use, (p, v) => p with { Use = v }, ["ridden in"]),
        PartField<Rider>.Of("saddleHeight", Millimetres, p => p.SaddleHeight, (p, v) => p with { SaddleHeight = v }, ["saddle height"]),
        PartField<Rider>.Of("inseam", Millimetres, p => p.Inseam, (p, v) => p with { Inseam = v }, ["inside leg"]),
        PartField<Rider>.Of("frontBrakeHand", "left, right or either", p => p.FrontBrakeHand, (p, v) => p with { FrontBrakeHand = v }, ["front brake hand"]))
        {
            Contradiction = LighterThanItsPart,
        };

    private static PartField<TPart> LoadLimit<TPart>(Func<TPart, Known<Load>> get, Func<TPart, Known<Load>, TPart> with)
        where TPart : Part => PartField<TPart>.Of("loadLimit", Masses, get, with, ["load limit"]);

    private static PartField<TPart> RiderLimit<TPart>(Func<TPart, Known<Load>> get, Func<TPart, Known<Load>, TPart> with)
        where TPart : Part => PartField<TPart>.Of("riderLimit", Masses, get, with, ["rider limit"]);

    private static PartField<TPart> SystemLimit<TPart>(Func<TPart, Known<Load>> get, Func<TPart, Known<Load>, TPart> with)
        where TPart : Part => PartField<TPart>.Of("systemLimit", Masses, get, with, ["system limit"]);

    private static PartField<TPart> MadeOf<TPart>(Func<TPart, Known<DateMade>> get, Func<TPart, Known<DateMade>, TPart> with)
        where TPart : Part => PartField<TPart>.Of("made", "a year such as 2014, or year and month such as 2014-05, or unknown", get, with, ["year made", "made in"]);

    private static PartField<TPart> UseOf<TPart>(Func<TPart, Known<UseCategory>> get, Func<TPart, Known<UseCategory>, TPart> with)
        where TPart : Part => PartField<TPart>.Of("use", Categories, get, with, ["made for"]);

    /// <summary>Luggage and bicycle only add to the rider.</summary>
    private static (string Field, string Reason, string Expected)? LighterThanItsPart(Rider rider)
    {
        long mass = Said(rider.Mass);
        long loaded = Said(rider.MassWithLuggage);
        long system = Said(rider.System);
        return loaded > 0 && loaded < mass ? ("massWithLuggage", "rider and luggage would be lighter than the rider", "at least the mass of the rider")
            : system > 0 && system < Math.Max(mass, loaded) ? ("system", "everything would be lighter than what it carries", "at least the mass of rider and luggage")
            : null;
    }

    private static long Said(Known<Load> load) => load.State == KnownState.Value ? load.Value.FitCode : 0;
}
