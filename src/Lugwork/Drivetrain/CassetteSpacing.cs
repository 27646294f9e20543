using System.Collections.Immutable;

namespace Lugwork.Drivetrain;

/// <summary>How the sprockets of a cassette stand beside each other, as far as its pattern says it.</summary>
internal static class CassetteSpacing
{
    private static readonly ImmutableArray<(CassettePattern Pattern, string Spacing)> Table =
    [
        (CassettePattern.Hg7, "7"),
        (CassettePattern.Hg8, "8"),
        (CassettePattern.Hg9, "9"),
        (CassettePattern.Hg10, "10"),
        (CassettePattern.Hg10OldRoad, "10"),
        (CassettePattern.Hg11Wide, "11-wide"),
        (CassettePattern.Hg11Road, "11-close"),
        (CassettePattern.Hg12Fit, "12"),
        (CassettePattern.MicroSpline12, "12"),
        (CassettePattern.EightSpline9, "9-8-spline"),
        (CassettePattern.ThreeLug, "single"),
        (CassettePattern.HubGearOwn, "single"),
        (CassettePattern.FixedSprocket, "single"),
    ];

    /// <summary>The stated spacing, else the pattern's; both where they have different numbers of sprockets.</summary>
    public static Known<SprocketSpacing> Of(Known<CassettePattern> pattern, Known<SprocketSpacing> stated)
    {
        if (stated.State == KnownState.Unknown)
        {
            return pattern.State.IsOutside() ? Known<SprocketSpacing>.Outside(pattern.State, pattern.Evidence!, pattern.Family) : Of(pattern);
        }

        return stated.Values is { IsEmpty: false } said && Of(pattern).Values is { IsEmpty: false } made && !said.All(s => made.Any(m => m.Speeds == s.Speeds))
            ? Known<SprocketSpacing>.OneOf([.. made.Concat(said).Distinct()], stated.Evidence)
            : stated;
    }

    /// <summary>Unknown where one of the patterns says nothing of it, such as a screwed freewheel or one for 12 speeds whose pitch is not published.</summary>
    public static Known<SprocketSpacing> Of(Known<CassettePattern> pattern)
    {
        if (pattern.Values.IsEmpty)
        {
            return default;
        }

        List<SprocketSpacing> found = [];
        foreach (CassettePattern one in pattern.Values)
        {
            SprocketSpacing? spacing = Of(one);
            if (spacing is null)
            {
                return default;
            }

            if (!found.Contains(spacing))
            {
                found.Add(spacing);
            }
        }

        Evidence evidence = new(EvidenceKind.Assumed, pattern.ToString());
        return found.Count == 1 ? Known<SprocketSpacing>.Of(found[0], evidence) : Known<SprocketSpacing>.OneOf([.. found], evidence);
    }

    private static SprocketSpacing? Of(CassettePattern pattern)
    {
        foreach ((CassettePattern row, string spacing) in Table)
        {
            if (row == pattern)
            {
                return SprocketSpacing.Find(spacing);
            }
        }

        return null;
    }
}
