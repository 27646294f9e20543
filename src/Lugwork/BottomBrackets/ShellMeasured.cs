using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>Which shell measured dimensions can be. Made when something is first identified.</summary>
internal static class ShellMeasured
{
    // Thompson shells come in several bores under one name.
    private static readonly ImmutableArray<int> ThompsonBores = [30_000, 33_000, 35_000, 38_000, 40_000, 45_000];

    private static readonly ImmutableArray<MeasuredDimension> Dimensions =
    [
        new("bore", "inside caliper, past the thread or the bearing seat, in two directions"),
        new("width", "caliper across the faces, cups out"),
        new("ten threads", "thread gauge or caliper over ten crests"),
    ];

    private static readonly IdentificationTable<Shell> Every = new(Dimensions, Rows(false), s => s.FitKey);

    private static readonly IdentificationTable<Shell> Tapped = new(Dimensions, Rows(true), s => s.FitKey);

    public static Identification<Shell> Identify(MeasuredLength? bore, MeasuredLength? width, decimal? threadsPerInch)
    {
        MeasuredLength? ten = null;
        if (threadsPerInch is { } count)
        {
            (decimal millimetres, decimal error) = ThreadCount.OverTen(count);
            ten = MeasuredLength.OfMillimetres(millimetres, error);
        }

        Identification<Shell> found = (ten is null ? Every : Tapped).Identify(bore, width, ten);
        ImmutableArray<Identified<Shell>> once = Once(found.Candidates);
        return new(once, found.Next.Length > 0 ? found.Next : ByLooking(once));
    }

    /// <summary>What no caliper tells: is it tapped, which way does the drive cup turn, where is the middle.</summary>
    private static string ByLooking(ImmutableArray<Identified<Shell>> found)
    {
        string thread = Parted(found, "look for a thread inside", s => s.IsThreaded ? "a tapped shell" : "a plain one");
        string hand = thread.Length > 0 ? thread : Parted(found, "hand of the thread of the drive cup", s => s.IsDriveCupLeftHand ? "left-hand" : "right-hand");
        return hand.Length > 0 ? hand : Parted(found, "middle of the shell against the middle of the frame", s => s.IsAsymmetric ? "off centre" : "centred");
    }

    private static string Parted(ImmutableArray<Identified<Shell>> found, string question, Func<ShellFamily, string> answer)
    {
        SortedDictionary<string, List<string>> groups = new(StringComparer.Ordinal);
        foreach (Identified<Shell> one in found)
        {
            string said = answer(one.Value.Family);
            if (!groups.TryGetValue(said, out List<string>? names))
            {
                groups.Add(said, names = []);
            }

            names.Add(one.Value.FitKey);
        }

        return groups.Count < 2 ? "" : $"{question}: {string.Join("; ", groups.Select(g => $"{g.Key} is {string.Join(" or ", g.Value)}"))}";
    }

    private static ImmutableArray<Identified<Shell>> Once(ImmutableArray<Identified<Shell>> found)
    {
        ImmutableArray<Identified<Shell>>.Builder once = ImmutableArray.CreateBuilder<Identified<Shell>>(found.Length);
        HashSet<Shell> seen = [];
        foreach (Identified<Shell> one in found)
        {
            if (seen.Add(one.Value))
            {
                once.Add(one);
            }
        }

        return once.ToImmutable();
    }

    private static ImmutableArray<DimensionRow<Shell>> Rows(bool tapped)
    {
        ImmutableArray<DimensionRow<Shell>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<Shell>>();
        foreach (Shell shell in Shell.All)
        {
            if (tapped && !shell.Family.IsThreaded && shell.Family != ShellFamily.Insert)
            {
                continue;
            }

            if (shell.Family == ShellFamily.Thompson)
            {
                foreach (int bore in ThompsonBores)
                {
                    rows.Add(Row(shell, (bore, bore)));
                }
            }
            else
            {
                // With its sleeve in, a frame of that kind takes a unit for 41 mm.
                rows.Add(Row(shell, ShellDimensions.Bore(shell.Family == ShellFamily.Insert && !tapped ? ShellFamily.Pf41 : shell.Family)));
            }
        }

        return rows.ToImmutable();
    }

    private static DimensionRow<Shell> Row(Shell shell, (int Least, int Most) bore)
    {
        decimal threads = ShellDimensions.ThreadsPerInch(shell.Family);
        decimal ten = threads == 0 ? 0 : ThreadCount.OverTen(threads).Millimetres;
        (int least, int most) = ShellDimensions.PrintedBores(shell.Family);
        return new(shell, [Range((least == 0 ? bore.Least : Math.Min(bore.Least, least), Math.Max(bore.Most, most))), Range(ShellDimensions.Width(shell)), ten == 0 ? null : (ten, ten)], Apart(shell));
    }

    private static (decimal Least, decimal Most)? Range((int Least, int Most) micrometres) =>
        micrometres.Least == 0 ? null : (micrometres.Least / 1_000m, micrometres.Most / 1_000m);

    private static string Apart(Shell shell)
    {
        ShellFamily family = shell.Family;
        string kind = family.IsThreaded ? $"tapped {family.Thread}, drive cup {(family.IsDriveCupLeftHand ? "left" : "right")}-hand" : family == ShellFamily.Insert ? "a removable sleeve" : "a plain bore";
        return family.IsAsymmetric ? kind + ", off centre" : kind;
    }
}
