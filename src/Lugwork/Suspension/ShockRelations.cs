using System.Collections.Immutable;

namespace Lugwork.Suspension;

/// <summary>A rear shock in a frame: its size, its hardware and its bush.</summary>
internal static class ShockRelations
{
    private static readonly Reason Same = new("shock-of-the-size", "{1} in a frame for {0}.") { Sources = [Sources.ShockMeasuring, Sources.InchShockSizes] };

    private static readonly Reason OtherMount = new("other-shock-mount", "{1} does not go in a frame for {0}: one end is held in another way.", Cautions.ShockSizeCare)
    {
        Mend = "a shock of the frame's own mount",
        Sources = [Sources.InlineShockSizes, Sources.Memory],
    };

    private static readonly Reason Longer = new("shock-too-long", "{1} is longer than the {0} that the frame is made for.", Cautions.ShockSizeCare)
    {
        Mend = "a shock of the frame's own length",
        Sources = [Sources.ShockMeasuring],
    };

    private static readonly Reason Shorter = Longer with { Id = "shock-too-short", Template = "{1} is shorter than the {0} that the frame is made for." };

    private static readonly Bridge StrokeSpacers = new()
    {
        Id = "shock-stroke-spacers",
        Kind = BridgeKind.Spacers,
        Result = Verdict.NeedsPart,
        What = "stroke spacers of the shock's maker inside the shock, for the frame's own stroke, where they exist (leave it to a shop)",
        Caution = Cautions.ShockSizeCare,
        Sources = [Sources.MetricShockSizes, Sources.CommonPractice],
    };

    private static readonly Reason MoreStroke = new("shock-stroke-too-long", "{1} has more stroke than the {0} that the frame is made for: something may meet at full travel.", Cautions.ShockSizeCare)
    {
        Mend = "a shock with the frame's own stroke",
        Offers = [StrokeSpacers],
        Sources = [Sources.MetricShockSizes],
    };

    private static readonly Reason LessStroke = new("shock-stroke-shorter", "{1} has less stroke than the {0} that the frame is made for: it goes in and shortens the travel. Ask the frame's maker.", Cautions.ShockSizeCare)
    {
        Mend = "the frame's own stroke",
        Sources = [Sources.CommonPractice],
    };

    private static readonly Reason SameHardware = new("hardware-of-the-frame", "{1} hardware in a frame for {0}.") { Sources = [Sources.ShockMeasuring, Sources.EyeletBushings] };

    private static readonly Reason OtherHardware = new("other-hardware", "{1} hardware in a frame for {0}: width and bolt are the frame's.", Cautions.ShockSizeCare)
    {
        Mend = "reducers of the frame's own width and bolt for the eyelet of the shock",
        Sources = [Sources.ShockMeasuring, Sources.EyeletBushings],
    };

    private static readonly Reason SameBush = new("bush-of-the-eyelet", "{1} in an eyelet for {0}.") { Sources = [Sources.EyeletBushings] };

    private static readonly Reason OtherBush = new("other-bush", "{1} in an eyelet for {0}: two sizes are made and neither goes in the other's eyelet.", Cautions.ShockSizeCare)
    {
        Mend = "a bush of the shock's own size",
        Sources = [Sources.EyeletBushings],
    };

    private static readonly Reason HardwareMissing = new("shock-hardware-missing", "A shock without hardware, as shocks are sold, in a frame for {0}: it takes [bridge].", Cautions.ShockSizeCare) { Sources = [Sources.ShockMeasuring, Sources.EyeletBushings] };

    private static readonly Bridge MissingHardware = Missing("shock-hardware-of-frame", "reducers of the frame's own width and bolt, for the eyelet of the shock", Sources.EyeletBushings);

    private static readonly Reason BushMissing = new("shock-bush-missing", "The eyelet is bare: {0} goes in, and it takes [bridge].", Cautions.ShockSizeCare) { Sources = [Sources.EyeletBushings] };

    private static readonly Bridge MissingBush = Missing("shock-bush-of-eyelet", "a bush of the eyelet's own size, pressed in", Sources.EyeletBushings);

    private static Bridge Missing(string id, string what, Source source) => new()
    {
        Id = id,
        Kind = BridgeKind.Adapter,
        Result = Verdict.NeedsPart,
        What = what,
        Caution = Cautions.ShockSizeCare,
        Sources = [source],
    };

    /// <summary>Inputs: the size that the frame is made for, the shock.</summary>
    public static Relation InFrame { get; } = new Matrix(0, 1, Cell, [StrokeSpacers], [Sources.ShockMeasuring, Sources.MetricShockSizes, Sources.InchShockSizes]);

    /// <summary>Inputs: the frame's width and bolt, the hardware.</summary>
    public static Relation Hardware { get; } = new SameKey(0, 1, SameHardware, (_, _) => OtherHardware, []) { Lacks = (1, HardwareMissing, MissingHardware) };

    /// <summary>The same at the upper end, where a trunnion has none on either side. Third input: the shock.</summary>
    public static Relation UpperHardware { get; } = new WhereNotTrunnion();

    /// <summary>Inputs: the bush that the eyelet is made for, the bush.</summary>
    public static Relation Bush { get; } = new SameKey(0, 1, SameBush, (_, _) => OtherBush, []) { Lacks = (1, BushMissing, MissingBush) };

    private static readonly Reason NoHardware = new("no-upper-hardware", "Neither frame nor shock has hardware at the upper end: a trunnion is screwed in.") { Sources = [Sources.InlineShockSizes] };

    private sealed class WhereNotTrunnion : Relation
    {
        public override string Kind => "the same hardware, or none on either side of a trunnion";

        public override ImmutableArray<Bridge> Bridges => Hardware.Bridges;

        public override Outcome Judge(ReadOnlySpan<long> values) => values[0] == 0 && values[1] == 0 && values[2] != 0 && ShockSize.OfFitCode(values[2]).Mount == ShockMount.Trunnion ? new(Verdict.Fits, NoHardware) : Hardware.Judge(values);
    }

    private static Outcome Cell(long frame, long shock)
    {
        ShockSize made = ShockSize.OfFitCode(frame);
        ShockSize size = ShockSize.OfFitCode(shock);
        if (made.Mount != size.Mount)
        {
            return new(Verdict.DoesNotFit, OtherMount);
        }

        return made.Eye != size.Eye ? new(Verdict.DoesNotFit, size.Eye > made.Eye ? Longer : Shorter)
            : size.Shaft > made.Shaft ? new(Verdict.Unsafe, MoreStroke)
            : size.Shaft < made.Shaft ? new(Verdict.NeedsMeasuring, LessStroke)
            : new(Verdict.Fits, Same);
    }
}
