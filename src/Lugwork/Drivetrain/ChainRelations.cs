using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>Chain on sprockets, on rings and through the derailleur.</summary>
internal static class ChainRelations
{
    private static readonly Reason Same = new("same-speeds", "{1} on {0}.") { Sources = [Sources.ChainWidths] };

    private static readonly Reason WideOnNarrowTooth = new("eighth-on-three-32", "{1} on {0}: goes on one sprocket, never with a derailleur.") { IsNote = true, Sources = [Sources.ChainCatalogue, Sources.ChainSizes] };

    private static readonly Reason NineOnEight = new("one-step-narrower", "{1} on {0}: it runs, shifts are slower.") { Sources = [Sources.ChainWidths, Sources.CommonPractice] };

    private static readonly Reason SameCage = new("same-cage", "{1} through a derailleur for {0}.") { Sources = [Sources.CommonPractice] };

    private static readonly ImmutableArray<Source> RestsOn = [Sources.ChainWidths, Sources.ChainCatalogue, Sources.ChainSizes, Sources.SprocketSpacing];

    /// <summary>Inputs: sprockets, chain.</summary>
    public static Relation OnSprockets { get; } = new Matrix(0, 1, Sprockets, [], RestsOn);

    /// <summary>Inputs: rings, chain.</summary>
    public static Relation OnRings { get; } = new Matrix(0, 1, Rings, [], RestsOn);

    /// <summary>Inputs: derailleur, chain.</summary>
    public static Relation ThroughDerailleur { get; } = new Matrix(0, 1, Cage, [], [Sources.CommonPractice, Sources.ChainSizes]);

    private static Outcome Sprockets(long sprockets, long chain)
    {
        if ((Belt(sprockets, chain) ?? Single(sprockets, chain)) is { } single)
        {
            return single;
        }

        int step = Speeds(chain) - ClassSpeeds(sprockets);
        return step switch
        {
            0 => new(Verdict.Fits, Same),
            1 when chain == ChainSize.For9.FitCode => new(Verdict.Fits, NineOnEight),
            > 0 => new(Verdict.NeedsMeasuring, Misfits.Narrower),

            // Outside widths against half the pitch (see the law): from 11 up the printed ranges straddle the limit.
            -1 when chain >= ChainSize.For10.FitCode => new(Verdict.NeedsMeasuring, Misfits.Borderline),
            -2 when chain >= ChainSize.For11.FitCode => new(Verdict.NeedsMeasuring, Misfits.Borderline),
            _ => new(Verdict.DoesNotFit, Misfits.Rubs),
        };
    }

    private static Outcome Rings(long rings, long chain)
    {
        if ((Belt(rings, chain) ?? Single(rings, chain)) is { } single)
        {
            return single;
        }

        int step = Speeds(chain) - ClassSpeeds(rings);
        return step == 0 ? new(Verdict.Fits, Same)
            : rings == SprocketClass.To8.FitCode ? new(Verdict.NeedsMeasuring, Misfits.ThickTeeth)
            : chain == ChainSize.To8.FitCode ? new(Verdict.NeedsMeasuring, Misfits.WiderOnRings)
            : new(Verdict.NeedsMeasuring, Misfits.RingsApart);
    }

    private static Outcome Cage(long derailleur, long chain) =>
        chain == ChainSize.Belt.FitCode || derailleur == ChainSize.Belt.FitCode ? new(Verdict.DoesNotFit, Misfits.BeltAndDerailleur)
        : chain == ChainSize.Eighth.FitCode || chain == ChainSize.Freight.FitCode ? new(Verdict.DoesNotFit, Misfits.NeverDerailleur)
        : derailleur == chain ? new(Verdict.Fits, SameCage) : new(Verdict.NeedsMeasuring, Misfits.OtherCage);

    /// <summary>Where a belt or a belt sprocket takes part; null where neither does.</summary>
    private static Outcome? Belt(long sprockets, long chain) =>
        (sprockets == SprocketClass.Belt.FitCode, chain == ChainSize.Belt.FitCode) switch
        {
            (true, true) => new(Verdict.NeedsMeasuring, Misfits.BeltSystems),
            (false, true) => new(Verdict.DoesNotFit, Misfits.BeltOnTeeth),
            (true, false) => new(Verdict.DoesNotFit, Misfits.ChainOnBeltTeeth),
            _ => null,
        };

    /// <summary>Where a 1/8 or 5/32 in chain or a single sprocket takes part; null where none does.</summary>
    private static Outcome? Single(long sprockets, long chain)
    {
        if (chain == ChainSize.Freight.FitCode)
        {
            bool one = sprockets == SprocketClass.Eighth.FitCode || sprockets == SprocketClass.Single332.FitCode;
            return one ? new(Verdict.NeedsMeasuring, Misfits.FreightOnSingle) : new(Verdict.DoesNotFit, Misfits.FreightOnMany);
        }

        bool eighth = chain == ChainSize.Eighth.FitCode;
        if (sprockets == SprocketClass.Eighth.FitCode)
        {
            return eighth ? new(Verdict.Fits, Same) : new(Verdict.DoesNotFit, Misfits.ToothTooThick);
        }

        if (sprockets == SprocketClass.Single332.FitCode)
        {
            return eighth ? new(Verdict.Fits, WideOnNarrowTooth)
                : chain == ChainSize.To8.FitCode ? new(Verdict.Fits, Same) : new(Verdict.NeedsMeasuring, Misfits.ThickTeeth);
        }

        return eighth ? new(Verdict.DoesNotFit, Misfits.EighthOnMany) : null;
    }

    // 5 to 8 speeds count as 8.
    private static int Speeds(long chain) => (int)chain + 6;

    private static int ClassSpeeds(long sprockets) => (int)sprockets + 5;

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason Narrower = new("narrower-chain", "{1} on {0}: narrower than the spacing is made for. It often runs and shifts slower; ask the chain's maker.", Cautions.ChainOff) { Sources = [Sources.ChainWidths] };

        public static readonly Reason Rubs = new("chain-rubs", "{1} on {0}: its outside is too wide for the spacing and rubs on the next sprocket.", Cautions.ChainOff)
        {
            Mend = "a chain for the speeds of the sprockets",
            Sources = [Sources.ChainWidths, Sources.SprocketSpacing, Sources.Derived],
        };

        public static readonly Reason Borderline = new("chain-nearly-rubs", "{1} on {0}: by the printed widths its outside just about touches the next sprocket. Ask the chain's maker.", Cautions.ChainOff)
        {
            Sources = [Sources.ChainWidths, Sources.Derived],
        };

        public static readonly Reason EighthOnMany = new("eighth-on-many", "{1} on {0}: too wide outside for sprockets side by side.", Cautions.ChainOff)
        {
            Mend = "a chain for the speeds of the sprockets",
            Sources = [Sources.ChainSizes, Sources.ChainCatalogue],
        };

        public static readonly Reason FreightOnMany = EighthOnMany with { Sources = [Sources.Derived, Sources.ChainWidths, Sources.ChainSizes] };

        public static readonly Reason FreightOnSingle = new("freight-on-single", "{1} on {0}: 4.0 mm inside is wide for this tooth. Ask the chain's maker.", Cautions.ChainOff) { Sources = [Sources.ChainWidths] };

        public static readonly Reason ToothTooThick = new("tooth-too-thick", "{1} on {0}: the tooth is thicker than the chain is wide inside (2.38 or 2.18 against 3.18 mm).", Cautions.ChainOff)
        {
            Mend = "a 1/8 in chain, or a 3/32 in sprocket and ring",
            Sources = [Sources.ChainCatalogue],
        };

        public static readonly Reason ThickTeeth = new("measure-teeth", "{1} (2.18 mm inside) on {0}: teeth for 2.38 mm chains may be too thick. Measure a tooth.", Cautions.ChainOff) { Sources = [Sources.ChainWidths] };

        public static readonly Reason RingsApart = new("rings-apart", "{1} on {0}: one inside width, so it runs on a single ring; between two rings the spacing decides.", Cautions.ChainOff)
        {
            Sources = [Sources.ChainWidths],
        };

        public static readonly Reason WiderOnRings = new("wider-on-rings", "{1} on {0}: it goes over the teeth, but between rings it may rub. Ask the crank's maker.", Cautions.ChainOff)
        {
            Sources = [Sources.ChainWidths],
        };

        public static readonly Reason OtherCage = new("other-cage", "{1} through a derailleur for {0}: cage and pulleys are made for another chain. Ask the derailleur's maker.", Cautions.ChainOff)
        {
            Sources = [Sources.CommonPractice],
        };

        public static readonly Reason NeverDerailleur = new("never-with-derailleur", "{1} does not go through a derailleur for {0}.", Cautions.ChainOff)
        {
            Mend = "a chain for the speeds of the sprockets",
            Sources = [Sources.ChainSizes],
        };

        public static readonly Reason BeltOnTeeth = new("belt-on-chain-teeth", "{1} does not run on {0}: chain teeth cut a belt.", Cautions.ChainOff)
        {
            Mend = "belt sprockets front and rear, of the belt's own system, where hub and crank have them; else a chain",
            Sources = [Sources.BeltTracks, Sources.BeltConversion],
        };

        public static readonly Reason ChainOnBeltTeeth = new("chain-on-belt-teeth", "{1} does not run on {0}: belt teeth have another pitch and shape.", Cautions.ChainOff)
        {
            Mend = "a chain sprocket or ring, or a belt of the sprocket's system in a frame that opens",
            Sources = [Sources.BeltTracks, Sources.FlangedBelt],
        };

        public static readonly Reason BeltSystems = new("belt-systems", "{1} on {0}: only within one system. Belts differ in pitch, in width and in what keeps them on the sprocket, a flange or a track in the middle. Compare the names on both, or ask the belt's maker.", Cautions.BeltCare)
        {
            Sources = [Sources.BeltTracks, Sources.FlangedBelt],
        };

        public static readonly Reason BeltAndDerailleur = new("belt-with-derailleur", "{1} does not go through a derailleur for {0}: nothing shifts a belt between sprockets.", Cautions.ChainOff)
        {
            Mend = "a hub gear or one speed with the belt, or a chain with the derailleur",
            Sources = [Sources.CommonPractice],
        };
    }
}
