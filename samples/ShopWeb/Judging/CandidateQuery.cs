using Lugwork;
using Lugwork.Catalogues;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>The specs of a slot that a build may take, found by the relation part_fit: for each joint one of its keys, or a figure in its range.</summary>
internal static class CandidateQuery
{
    public static IQueryable<long> Of(ShopContext shop, Build build, Slot slot)
    {
        string place = slot.Key;
        IQueryable<long> specs = shop.Fits.Where(f => f.Slot == place && f.Joint == "").Select(f => f.SpecId);
        foreach (IGrouping<string, FrameNeedRow> need in FitRelations.NeedsOf(0, build, slot, Verdict.NeedsMeasuring).Where(n => n.JointId.Length > 0).GroupBy(n => n.JointId))
        {
            string joint = need.Key;
            List<string> keys = [.. need.Where(n => n.LimitMax == 0).Select(n => n.Key)];
            FrameNeedRow[] figures = [.. need.Where(n => n.LimitMax > 0)];
            if (figures.Length == 0)
            {
                specs = specs.Where(id => shop.Fits.Any(f => f.SpecId == id && f.Slot == place && f.Joint == joint && keys.Contains(f.Key)));
                continue;
            }

            // Several ranges are taken as the one that holds them all: too wide, never too narrow.
            string figure = figures[0].Key;
            long least = figures.Min(f => f.LimitMin);
            long most = figures.Max(f => f.LimitMax);
            specs = specs.Where(id => shop.Fits.Any(f => f.SpecId == id && f.Slot == place && f.Joint == joint
                && (keys.Contains(f.Key) || (f.Key == figure && f.LimitMin <= most && f.LimitMax >= least))));
        }

        return specs;
    }
}
