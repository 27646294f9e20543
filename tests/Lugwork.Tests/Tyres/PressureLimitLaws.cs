using FsCheck;
using FsCheck.Xunit;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Tyres;

/// <summary>Laws of pressure limits.</summary>
public sealed class PressureLimitLaws
{
    private static readonly RimType?[] Types = [null, RimType.Hookless, RimType.TubelessCrochet, RimType.Crochet];

    [Property(MaxTest = 3_000)]
    public void What_fits_is_at_or_below_every_limit_and_nothing_is_unknown(DoNotSize<int> seed)
    {
        (double? tyre, double? rim, RimType? type, double? least, double bars) = Any(seed.Item);
        PressureLimits limits = Of(tyre, rim, type, least);
        Verdict verdict = limits.Check(Pressure.FromBars(bars)).Verdict;
        bool hookless = type == RimType.Hookless || type is null;
        bool within = least is not null && bars >= least && bars <= tyre && bars <= rim && (!hookless || bars <= 5);
        Assert.Equal(within, verdict == Verdict.Fits);
        Assert.True(limits.Most is not { } most || (most.Bars <= (tyre ?? 20) && most.Bars <= (rim ?? 20) && (!hookless || most.Bars <= 5)));
    }

    [Property(MaxTest = 3_000)]
    public void An_unknown_limit_has_the_common_verdict_of_all_that_it_can_be(DoNotSize<int> seed)
    {
        (double? tyre, double? rim, RimType? type, double? least, double bars) = Any(seed.Item);
        double[] all = [0.2, Math.Round(bars - 0.1, 2), bars, Math.Round(bars + 0.1, 2), 20];
        HashSet<Verdict> seen = [];
        foreach (double t in tyre is { } known ? [known] : all)
        {
            foreach (double r in rim is { } knownRim ? [knownRim] : all)
            {
                foreach (RimType? k in type is null ? [RimType.Hookless, RimType.Crochet] : new[] { type })
                {
                    foreach (double l in least is { } knownLeast ? new[] { knownLeast } : [0.2, Math.Round(bars + 0.1, 2)])
                    {
                        seen.Add(PressureLimits.Of(Pressure.FromBars(Math.Max(t, 0.2)), Pressure.FromBars(Math.Max(r, 0.2)), k, Pressure.FromBars(l)).Check(Pressure.FromBars(bars)).Verdict);
                    }
                }
            }
        }

        Assert.Equal(seen.Count == 1 ? seen.Single() : Verdict.NeedsMeasuring, Of(tyre, rim, type, least).Check(Pressure.FromBars(bars)).Verdict);
    }

    [Property(MaxTest = 3_000)]
    public void Units_in_change_nothing_and_no_cell_is_offered_above_a_limit(DoNotSize<int> seed)
    {
        (double? tyre, double? rim, RimType? type, double? least, double bars) = Any(seed.Item);
        PressureLimits limits = Of(tyre, rim, type, least);
        PressureLimits pascals = PressureLimits.Of(tyre is { } t ? Pressure.FromKilopascals(t * 100) : null, rim is { } r ? Pressure.FromKilopascals(r * 100) : null, type, least is { } l ? Pressure.FromKilopascals(l * 100) : null);
        Assert.Equal(limits.Most?.Bars ?? 0, pascals.Most?.Bars ?? 0, 1e-9);
        Assert.Equal(limits.Check(Pressure.FromBars(bars + 0.004)).Verdict, pascals.Check(Pressure.FromKilopascals((bars + 0.004) * 100)).Verdict);
        foreach (PressureByLoad cell in PressureByLoad.All)
        {
            Assert.True(cell.Within(limits) is not { } offered || (offered.Bars <= limits.Most!.Value.Bars && offered.Bars >= least && limits.IsComplete | offered.Bars <= 5));
        }
    }

    private static PressureLimits Of(double? tyre, double? rim, RimType? type, double? least) =>
        PressureLimits.Of(tyre is { } t ? Pressure.FromBars(t) : null, rim is { } r ? Pressure.FromBars(r) : null, type, least is { } l ? Pressure.FromBars(l) : null);

    /// <summary>Limits near each other, near 5 bar and near the pressure.</summary>
    private static (double? Tyre, double? Rim, RimType? Type, double? Least, double Bars) Any(int seed)
    {
        Random random = new(seed);
        double bars = Math.Round(random.Next(2) == 0 ? 5 + (random.Next(-2, 3) / 100.0) : 1 + (random.NextDouble() * 9), 2);
        double? Limit() => random.Next(4) switch { 0 => null, 1 => bars, 2 => Math.Round(bars + (random.Next(-2, 3) / 100.0), 2), _ => Math.Round(1 + (random.NextDouble() * 9), 2) };
        double? least = random.Next(5) switch { 0 => null, 1 => bars, 2 => Math.Round(bars + 0.01, 2), 3 => Math.Round(Math.Max(0.2, bars - 0.01), 2), _ => 0.2 };
        return (Limit(), Limit(), Types[random.Next(Types.Length)], least, bars);
    }
}
