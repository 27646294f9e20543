using FsCheck;
using FsCheck.Xunit;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Tyres;

/// <summary>Laws of a tyre on a rim.</summary>
public sealed class MountedTyreLaws
{
    [Property(MaxTest = 2_000)]
    public void Units_in_change_nothing(DoNotSize<int> seed)
    {
        (TyreSize size, double rim) = Any(seed.Item);
        MountedTyre millimetres = MountedTyre.OnRim(size, Length.FromMillimeters(rim));
        MountedTyre inches = MountedTyre.OnRim(size, Length.FromInches(rim / 25.4));
        Assert.Equal(millimetres.MostWidth.Millimeters, inches.MostWidth.Millimeters, 1e-9);
        Assert.Equal(TyreClearance.EachSide(millimetres, Length.FromMillimeters(200)).Least.Millimeters, TyreClearance.EachSide(inches, Length.FromMeters(0.2)).Least.Millimeters, 1e-9);
    }

    [Property(MaxTest = 2_000)]
    public void The_likely_width_lies_between_and_grows_with_the_rim(DoNotSize<int> seed)
    {
        (TyreSize size, double rim) = Any(seed.Item);
        MountedTyre tyre = MountedTyre.OnRim(size, Length.FromMillimeters(rim));
        MountedTyre wider = MountedTyre.OnRim(size, Length.FromMillimeters(rim + 0.1));
        Assert.InRange(tyre.Width.Millimeters, tyre.LeastWidth.Millimeters + 2.999, tyre.MostWidth.Millimeters - 2.999);
        Assert.True(wider.Width > tyre.Width && wider.LeastWidth > tyre.LeastWidth && wider.MostWidth > tyre.MostWidth);
    }

    [Property(MaxTest = 2_000)]
    public void A_tyre_put_back_on_its_first_rim_is_as_wide_as_before(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        (double width, double first, double other) = (40 + (random.NextDouble() * 60), 15 + (random.NextDouble() * 20), 15 + (random.NextDouble() * 20));
        foreach (TyreGrowth rule in TyreGrowth.All)
        {
            Length there = rule.WidthOn(Length.FromMillimeters(width), Length.FromMillimeters(first), Length.FromMillimeters(other));
            Assert.Equal(width, rule.WidthOn(there, Length.FromMillimeters(other), Length.FromMillimeters(first)).Millimeters, 1e-9);
        }
    }

    [Property(MaxTest = 2_000)]
    public void Conventions_are_ordered_and_a_circle_is_pi_times_its_diameter(DoNotSize<int> seed)
    {
        (TyreSize size, double rim) = Any(seed.Item);
        MountedTyre tyre = MountedTyre.OnRim(size, Length.FromMillimeters(rim));
        foreach (SectionHeight convention in SectionHeight.All)
        {
            Assert.Equal(Math.PI * tyre.OutsideDiameter(convention).Millimeters, tyre.UnloadedCircumference(convention).Millimeters, 6);
            Assert.Equal((tyre.OutsideDiameter(convention).Millimeters - (double)size.Bead.FitCode) / 2, tyre.Height(convention).Millimeters, 1e-9);
            Assert.Equal(tyre.Height(convention).Millimeters, convention.Of(size.Width).Millimeters, 1e-9);
            LengthRange range = tyre.LoadedCircumference(convention);
            (Length least, Length most) = (range.Least, range.Most);
            Assert.True(least < most && most < tyre.UnloadedCircumference(convention));
        }

        Assert.True(tyre.Height(SectionHeight.EqualToWidth) <= tyre.Height(SectionHeight.OlderStandard));
        Assert.Equal(3, (tyre.Height(SectionHeight.UpperSize) - tyre.Height(SectionHeight.OlderStandard)).Millimeters, 1e-9);
        Assert.Equal(size.WidthMillimetres < 28, tyre.Height(SectionHeight.EqualToWidth) < tyre.Height(SectionHeight.OlderStandard));
    }

    [Property(MaxTest = 2_000)]
    public void Air_is_the_section_times_the_way_round_its_middle(DoNotSize<int> seed)
    {
        (TyreSize size, double rim) = Any(seed.Item);
        double radius = size.WidthMillimetres / 2.0;
        double round = Math.PI * ((double)size.Bead.FitCode + size.WidthMillimetres);
        Assert.Equal(Math.PI * radius * radius * round / 1e6, MountedTyre.OnRim(size, Length.FromMillimeters(rim)).AirVolume.Liters, 1e-9);
    }

    [Property(MaxTest = 2_000)]
    public void Room_is_judged_at_its_boundaries(DoNotSize<int> seed)
    {
        (TyreSize size, double rim) = Any(seed.Item);
        MountedTyre tyre = MountedTyre.OnRim(size, Length.FromMillimeters(rim));
        foreach (ClearanceRule rule in ClearanceRule.All)
        {
            double asked = 2 * rule.Least.Millimeters;
            Check(tyre, rule, tyre.MostWidth.Millimeters + asked + 0.001, rule == ClearanceRule.UnitedStates ? Verdict.NeedsMeasuring : Verdict.Fits);
            Check(tyre, rule, tyre.MostWidth.Millimeters + asked - 0.001, Verdict.NeedsMeasuring);
            Check(tyre, rule, tyre.LeastWidth.Millimeters + asked + 0.001, Verdict.NeedsMeasuring);
            Check(tyre, rule, tyre.LeastWidth.Millimeters + asked - 0.001, Verdict.DoesNotFit);
        }
    }

    private static void Check(MountedTyre tyre, ClearanceRule rule, double gap, Verdict expected)
    {
        SumCheck check = TyreClearance.EachSide(tyre, Length.FromMillimeters(gap)).Check(rule);
        Assert.True(check.Verdict == expected, $"{tyre}, {gap}: {check}");
    }

    private static (TyreSize Size, double Rim) Any(int seed)
    {
        Random random = new(seed);
        return (TyreSize.Of(random.Next(25, 110), BeadSeat.All[random.Next(BeadSeat.All.Length)]), 13 + (random.NextDouble() * 40));
    }
}
