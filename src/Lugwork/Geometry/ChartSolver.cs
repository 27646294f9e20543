using System.Collections.Immutable;

namespace Lugwork.Geometry;

/// <summary>From the figures of a chart to all figures of a frame: whatever relation has one figure open gives it, until none does; the rest compare.</summary>
internal static class ChartSolver
{
    /// <summary>Without these there is no frame.</summary>
    private static readonly ImmutableArray<FrameFigure> Needed =
    [
        FrameFigure.RearRadius, FrameFigure.FrontRadius, FrameFigure.HeadAngle, FrameFigure.Reach, FrameFigure.Stack, FrameFigure.Chainstay, FrameFigure.BottomBracketDrop,
        FrameFigure.ForkOffset, FrameFigure.ForkAxialLength, FrameFigure.HeadTube, FrameFigure.LowerStack,
    ];

    /// <summary>What is asked for, in this order: what a chart prints or a rule measures comes first, and all of it together is enough.</summary>
    private static readonly ImmutableArray<FrameFigure> Asked =
    [
        FrameFigure.RearRadius, FrameFigure.FrontRadius, FrameFigure.HeadAngle, FrameFigure.Reach, FrameFigure.Chainstay, FrameFigure.BottomBracketDrop,
        FrameFigure.ForkOffset, FrameFigure.AxleToCrown, FrameFigure.HeadTube, FrameFigure.LowerStack, FrameFigure.Stack,
    ];

    public static ChartReading Solve(double?[] chart, double halfLength, double halfAngle)
    {
        Way way = new(chart);
        ImmutableArray<FrameFigure> missing = Missing(Mask(chart));
        List<ChartDisagreement> found = [];
        foreach (FrameRelation relation in FrameRelation.All)
        {
            bool misses = way.Misses.Contains(relation);
            if ((relation.Mask & ~way.Known) != 0 || (!misses && (relation.IsOnlyAWay || way.Used.Contains(relation))))
            {
                continue;
            }

            double rounding = Rounding(chart, way, relation, halfLength, halfAngle);
            double follows = relation.Follows(way.Figures);
            double stated = way.Figures[relation.Lead.Index];
            if (Math.Abs(stated - follows) > rounding + 1e-6)
            {
                found.Add(new(relation.Lead, stated, follows, rounding, Named(way.Basis(relation))));
            }
        }

        return new(missing.IsEmpty && found.Count == 0 ? FrameGeometry.OfFigures(way.Figures, (way.Known & FrameFigure.SeatAngle.Bit) != 0) : null, [.. found], missing);
    }

    /// <summary>How far half a step of the chart in each printed figure can move the two sides of a relation apart.</summary>
    private static double Rounding(double?[] chart, Way way, FrameRelation relation, double halfLength, double halfAngle)
    {
        double here = relation.Difference(way.Figures);
        double sum = 0;
        foreach (FrameFigure figure in Named(way.Basis(relation)))
        {
            double?[] moved = [.. chart];
            moved[figure.Index] += figure.IsAngle ? halfAngle : halfLength;
            sum += Math.Abs(relation.Difference(new Way(moved).Figures) - here);
        }

        return sum;
    }

    private static ImmutableArray<FrameFigure> Missing(int stated)
    {
        List<FrameFigure> asked = [];
        int known = stated;
        foreach (FrameFigure figure in Asked)
        {
            if ((Closed(known) & figure.Bit) == 0)
            {
                asked.Add(figure);
                known |= figure.Bit;
            }
        }

        // A later figure may have made an earlier one needless.
        for (int i = asked.Count - 1; i >= 0; i--)
        {
            if (IsWhole(Closed(known & ~asked[i].Bit)))
            {
                known &= ~asked[i].Bit;
                asked.RemoveAt(i);
            }
        }

        return [.. asked];
    }

    private static bool IsWhole(int known)
    {
        foreach (FrameFigure figure in Needed)
        {
            if ((known & figure.Bit) == 0)
            {
                return false;
            }
        }

        return true;
    }

    private static int Closed(int known)
    {
        bool more = true;
        while (more)
        {
            more = false;
            foreach (FrameRelation relation in FrameRelation.All)
            {
                if (relation.Open(known) is { } open)
                {
                    known |= open.Bit;
                    more = true;
                }
            }
        }

        return known;
    }

    private static int Mask(double?[] chart)
    {
        int mask = 0;
        for (int i = 0; i < chart.Length; i++)
        {
            mask |= chart[i] is null ? 0 : 1 << i;
        }

        return mask;
    }

    private static ImmutableArray<FrameFigure> Named(int mask)
    {
        ImmutableArray<FrameFigure>.Builder named = ImmutableArray.CreateBuilder<FrameFigure>();
        foreach (FrameFigure figure in FrameFigure.All)
        {
            if ((mask & figure.Bit) != 0)
            {
                named.Add(figure);
            }
        }

        return named.ToImmutable();
    }

    /// <summary>One way through the relations: every figure that can be had, and the printed ones on which each rests.</summary>
    private sealed class Way
    {
        private readonly int[] _basis;

        public Way(double?[] chart)
        {
            Figures = new double[chart.Length];
            _basis = new int[chart.Length];
            Known = Mask(chart);
            for (int i = 0; i < chart.Length; i++)
            {
                Figures[i] = chart[i] ?? 0;
                _basis[i] = chart[i] is null ? 0 : 1 << i;
            }

            bool more = true;
            while (more)
            {
                more = false;
                foreach (FrameRelation relation in FrameRelation.All)
                {
                    if (relation.Open(Known) is { } open)
                    {
                        Take(relation, open);
                        more = true;
                    }
                }
            }
        }

        public double[] Figures { get; }

        public int Known { get; private set; }

        public List<FrameRelation> Used { get; } = [];

        /// <summary>Relations whose open figure would have to be out of its range: it was set to the nearest end.</summary>
        public List<FrameRelation> Misses { get; } = [];

        public int Basis(FrameRelation relation)
        {
            int basis = 0;
            for (int i = 0; i < _basis.Length; i++)
            {
                basis |= (relation.Mask & (1 << i)) != 0 ? _basis[i] : 0;
            }

            return basis;
        }

        private void Take(FrameRelation relation, FrameFigure open)
        {
            bool misses = relation.SolveFor(Figures, open) != 0;
            _basis[open.Index] = Basis(relation);
            Known |= open.Bit;
            Used.Add(relation);
            if (misses)
            {
                Misses.Add(relation);
            }
        }
    }
}
