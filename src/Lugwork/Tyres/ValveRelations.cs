using System.Collections.Immutable;

namespace Lugwork.Tyres;

/// <summary>Valve through rim: its hole, and whether enough of it stands out.</summary>
internal static class ValveRelations
{
    /// <summary>What a pump head takes hold of; common practice, no source.</summary>
    public const long Pump = 15 * Nanometres.PerMillimetre;

    private static readonly Reason Same = new("valve-of-the-hole", "{1} valve in a hole of {0}.") { Sources = [Sources.ValveArticle, Sources.WheelDataSheet, Sources.RimTable] };

    private static readonly Reason TooThick = new("valve-too-thick", "{1} valve does not go through a hole of {0}.", Cautions.ValveHole)
    {
        Mend = "a tube or valve of the rim's own kind",
        Sources = [Sources.WheelDataSheet, Sources.ValveArticle],
    };

    private static readonly Bridge Grommet = new()
    {
        Id = "valve-presta-in-8.5",
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = "valve-hole reducer, 8.5 to 6.5 mm: a collar for a Presta valve in a hole for Schrader",
        From = ValveStem.Presta.FitCode,
        To = ValveHole.Wide.FitCode,
        Sources = [Sources.ValveArticle, Sources.Memory],
    };

    /// <summary>Inputs: valve hole of the rim, valve.</summary>
    public static Relation ThroughRim { get; } = new Matrix(0, 1, Cell, [Grommet], [Sources.ValveArticle, Sources.WheelDataSheet, Sources.RimTable]);

    /// <summary>Inputs: length of the valve, depth of the rim.</summary>
    public static Relation Length { get; } = new Reach();

    private static Outcome Cell(long hole, long valve)
    {
        ValveStem stem = ValveStem.OfFitCode(valve);
        return stem.Hole.FitCode == hole ? new(Verdict.Fits, Same)
            : stem == ValveStem.Presta ? new(Verdict.NeedsPart, Reasons.Bridged, Grommet)
            : new(Verdict.DoesNotFit, TooThick);
    }

    private sealed class Reach : Relation, ICutsLengths
    {
        private static readonly Reason Enough = new("valve-long-enough", "The valve is {0} mm long and the rim {1} mm deep: a pump takes hold of it.") { Sources = [Sources.CommonPractice] };

        private static readonly Reason Hardly = new("valve-hardly-out", "The valve is {0} mm long and the rim {1} mm deep: less than 15 mm stand out, which not every pump head takes hold of. Try yours.")
        {
            Mend = "a longer valve, or an extender that its maker names for this valve",
            Sources = [Sources.CommonPractice],
        };

        private static readonly Reason Short = new("valve-too-short", "The valve is {0} mm long and the rim {1} mm deep: it does not come out.")
        {
            Mend = "a longer valve, or an extender that its maker names for this valve",
            Sources = [Sources.Derived],
        };

        public override string Kind => "at least, with room for a pump head";

        public override ImmutableArray<Source> RestsOn => [Sources.Derived, Sources.CommonPractice];

        public ImmutableArray<long> Cuts => [];

        public ImmutableArray<long> Gaps { get; } = [Pump, -Pump];

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            long clear = values[0] - values[1];
            return values[1] == 0 ? new(Verdict.Fits, Enough)
                : clear <= 0 ? new(Verdict.DoesNotFit, Short)
                : clear < Pump ? new(Verdict.NeedsMeasuring, Hardly)
                : new(Verdict.Fits, Enough);
        }
    }
}
