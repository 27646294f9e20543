using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>How the sprockets of a cassette stand beside each other, as far as its pattern says it.</summary>
internal static class CassetteSpacing
{
    private static readonly ImmutableArray<(CassettePattern Pattern, SprocketSpacing Spacing, Known<SprocketSpacing> Known)> Table =
    [
        Row(CassettePattern.Hg7, "7"),
        Row(CassettePattern.Hg8, "8"),
        Row(CassettePattern.Hg9, "9"),
        Row(CassettePattern.Hg10, "10"),
        Row(CassettePattern.Hg10OldRoad, "10"),
        Row(CassettePattern.Hg11Wide, "11-wide"),
        Row(CassettePattern.Hg11Road, "11-close"),
        Row(CassettePattern.Hg12Fit, "12"),
        Row(CassettePattern.MicroSpline12, "12"),
        Row(CassettePattern.EightSpline9, "9-8-spline"),
        Row(CassettePattern.ThreeLug, "single"),
        Row(CassettePattern.HubGearOwn, "single"),
        Row(CassettePattern.FixedSprocket, "single"),
    ];

    /// <summary>The stated spacing, else the pattern's; both where they have different numbers of sprockets.</summary>
    public static Known<SprocketSpacing> Of(Known<CassettePattern> pattern, Known<SprocketSpacing> stated)
    {
        if (stated.State == KnownState.Unknown)
        {
            return pattern.State.IsOutside() ? Known<SprocketSpacing>.Outside(pattern.State, pattern.Evidence!, pattern.Family) : Of(pattern);
        }

        return stated.State == KnownState.Value && pattern.State == KnownState.Value && (Find(pattern.Value) is not { } row || row.Spacing.Speeds == stated.Value.Speeds)
            ? stated
            : Compared(Of(pattern), stated);
    }

    // Apart from the settled path, so that its closure is not made there.
    private static Known<SprocketSpacing> Compared(Known<SprocketSpacing> pattern, Known<SprocketSpacing> stated) =>
        stated.Values is { IsEmpty: false } said && pattern.Values is { IsEmpty: false } made && !said.All(s => made.Any(m => m.Speeds == s.Speeds))
            ? Known<SprocketSpacing>.OneOf([.. made.Concat(said).Distinct()], stated.Evidence)
            : stated;

    /// <summary>Unknown where one of the patterns says nothing of it, such as a screwed freewheel or one for 12 speeds whose pitch is not published.</summary>
    public static Known<SprocketSpacing> Of(Known<CassettePattern> pattern)
    {
        if (pattern.State == KnownState.Value)
        {
            return Find(pattern.Value)?.Known ?? default;
        }

        if (pattern.State != KnownState.OneOf)
        {
            return default;
        }

        List<SprocketSpacing> found = [];
        foreach (CassettePattern one in pattern.Values)
        {
            if (Find(one) is not { } row)
            {
                return default;
            }

            if (!found.Contains(row.Spacing))
            {
                found.Add(row.Spacing);
            }
        }

        return Known<SprocketSpacing>.OneOf([.. found], pattern.Evidence);
    }

    private static (CassettePattern Pattern, SprocketSpacing Spacing, Known<SprocketSpacing> Known)? Find(CassettePattern pattern)
    {
        foreach ((CassettePattern Pattern, SprocketSpacing Spacing, Known<SprocketSpacing> Known) row in Table)
        {
            if (row.Pattern == pattern)
            {
                return row;
            }
        }

        return null;
    }

    private static (CassettePattern Pattern, SprocketSpacing Spacing, Known<SprocketSpacing> Known) Row(CassettePattern pattern, string key)
    {
        SprocketSpacing spacing = SprocketSpacing.Find(key)!;
        return (pattern, spacing, Known<SprocketSpacing>.Of(spacing, new Evidence(EvidenceKind.Assumed, pattern.TradeName)));
    }
}
