using System.Collections.Immutable;
using Lugwork.Hubs;
using Lugwork.Steering;

namespace Lugwork;

/// <summary>Spacers below the stem on a carbon steerer, by the fork maker's figure or the rule of one diameter.</summary>
internal sealed class CarbonSpacers : Relation, ICutsLengths
{
    private static readonly ImmutableArray<Source> Rule = [Sources.SpacerLimitThread, Sources.SpacerColumn];

    private static readonly Reason NoneBelow = new("no-spacers-below", "No spacers below the stem.") { Sources = [Sources.SpacerColumn] };

    private static readonly Reason OtherMaterial = new("spacers-on-metal", "{2} mm of spacers on a steerer of {0}.") { Sources = [Sources.SpacerColumn] };

    private static readonly Reason Within = new("carbon-spacers-within", "{2} mm of spacers below the stem; the fork maker allows {3} mm.") { Sources = [Sources.SpacerColumn] };

    private static readonly Reason Ask = new("carbon-spacers-ask", "{2} mm of spacers below the stem on a carbon steerer of {1}, and the fork's maker prints no figure: others print 25 to 50 mm. Ask.", Cautions.CarbonSpacers) { Mend = "fewer spacers, or the fork maker's own figure", Sources = Rule };

    private static readonly Reason TooMany = new("carbon-spacers-too-many", "{2} mm of spacers below the stem on a carbon steerer of {1} are more than it is made for (the maker's figure: {3}).", Cautions.CarbonSpacers) { Mend = "fewer spacers and a stem that rises, or another fork", Sources = Rule };

    public static CarbonSpacers Below { get; } = new();

    public override string Kind => "at most the fork maker's figure, or one diameter";

    public override ImmutableArray<Source> RestsOn => Rule;

    ImmutableArray<long> ICutsLengths.Cuts => [25 * Nanometres.PerMillimetre, 30 * Nanometres.PerMillimetre];

    ImmutableArray<long> ICutsLengths.Gaps => [];

    /// <summary>Inputs: material, steerer, spacers (none without), the maker's most (none where it prints none).</summary>
    public override Outcome Judge(ReadOnlySpan<long> values) =>
        values[0] == 0 || values[1] == 0 ? new(Verdict.DoesNotFit, Reasons.NothingToMate)
        : values[2] == 0 ? new(Verdict.Fits, NoneBelow)
        : values[0] != Material.Carbon.FitCode ? new(Verdict.Fits, OtherMaterial)
        : values[3] != 0 ? (values[2] <= values[3] ? new(Verdict.Fits, Within) : new(Verdict.Unsafe, TooMany))
        : values[2] <= SteererSpacers.ByRule(SteererSize.OfFitCode(values[1])) * Nanometres.PerMillimetre ? new(Verdict.NeedsMeasuring, Ask)
        : new(Verdict.Unsafe, TooMany);
}
