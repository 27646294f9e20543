using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>The speeds that a cassette pattern stands for.</summary>
internal static class CassetteSpeeds
{
    private static readonly ImmutableArray<(CassettePattern Pattern, Known<SprocketClass> Speeds)> Table =
    [
        Row(CassettePattern.Hg7, SprocketClass.To8),
        Row(CassettePattern.Hg8, SprocketClass.To8),
        Row(CassettePattern.Hg9, SprocketClass.For9),
        Row(CassettePattern.Hg10, SprocketClass.For10),
        Row(CassettePattern.Hg10OldRoad, SprocketClass.For10),
        Row(CassettePattern.Hg11Wide, SprocketClass.For11),
        Row(CassettePattern.Hg11Road, SprocketClass.For11),
        Row(CassettePattern.Hg12Road, SprocketClass.For12),
        Row(CassettePattern.Hg12Fit, SprocketClass.For12),
        Row(CassettePattern.MicroSpline12, SprocketClass.For12),
        Row(CassettePattern.Xd, SprocketClass.For11, SprocketClass.For12),
        Row(CassettePattern.Xdr, SprocketClass.For12),
        Row(CassettePattern.EightSpline9, SprocketClass.For9),
        Row(CassettePattern.EightSpline10To12, SprocketClass.For10, SprocketClass.For11, SprocketClass.For12),
        Row(CassettePattern.EightSpline13, SprocketClass.For13),
        Row(CassettePattern.EightSpline8, SprocketClass.To8),
    ];

    /// <summary>The class of sprockets; unknown where the pattern says nothing of it, such as a screwed freewheel.</summary>
    public static Known<SprocketClass> Of(Known<CassettePattern> pattern)
    {
        if (pattern.State == KnownState.Value)
        {
            return Of(pattern.Value);
        }

        if (pattern.State != KnownState.OneOf)
        {
            return default;
        }

        ImmutableArray<SprocketClass>.Builder all = ImmutableArray.CreateBuilder<SprocketClass>();
        foreach (CassettePattern one in pattern.Values)
        {
            Known<SprocketClass> speeds = Of(one);
            if (speeds.State == KnownState.Unknown)
            {
                return default;
            }

            all.AddRange(speeds.Values);
        }

        return Known<SprocketClass>.OneOf(all.ToImmutable(), pattern.Evidence);
    }

    /// <summary>Every pattern that may have such sprockets; those that say nothing of their speeds among them.</summary>
    public static ImmutableArray<CassettePattern> With(ImmutableArray<SprocketClass> sprockets) =>
        [.. CassettePattern.All.Where(p => Of(p) is var speeds && (speeds.State == KnownState.Unknown || speeds.Values.Any(sprockets.Contains)))];

    private static Known<SprocketClass> Of(CassettePattern pattern)
    {
        foreach ((CassettePattern row, Known<SprocketClass> speeds) in Table)
        {
            if (row == pattern)
            {
                return speeds;
            }
        }

        return default;
    }

    private static (CassettePattern Pattern, Known<SprocketClass> Speeds) Row(CassettePattern pattern, params ImmutableArray<SprocketClass> classes) =>
        (pattern, Known<SprocketClass>.OneOf(classes, new Evidence(EvidenceKind.Assumed, pattern.TradeName)));
}
