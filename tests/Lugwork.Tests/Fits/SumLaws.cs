using System.Globalization;
using System.Reflection;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Suspension;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>What holds of every sum: the unit does not matter, and a figure that is none never ends as a fit or as a number.</summary>
public sealed class SumLaws
{
    private static readonly double[] Hostile = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e15, -1e15, 50_000, 0, -1];

    public static TheoryData<int> Sums => [.. Enumerable.Range(0, Sum.All.Length)];

    [Theory]
    [MemberData(nameof(Sums))]
    public void A_sum_of_figures_that_go_together_has_an_answer(int at) => Assert.All(Answers(Sum.All[at], new(Sum.All[at].Plain)), a => Assert.NotEmpty(a ?? []));

    [Theory]
    [MemberData(nameof(Sums))]
    public void Units_in_never_change_results(int at)
    {
        Sum sum = Sum.All[at];
        Random random = new(at);
        for (int i = 0; i < 20; i++)
        {
            // A little to each side, whole numbers as they are: whatever one unit refuses, the other refuses too.
            double[] near = [.. sum.Plain.Select(f => i == 0 || f == Math.Floor(f) ? f : f * (1 + (random.NextDouble() / 50)))];
            List<object>?[] plain = Answers(sum, new(near));
            List<object>?[] other = Answers(sum, new(near, other: true));
            Assert.Equal(plain.Select(a => a?.Count), other.Select(a => a?.Count));
            foreach ((object first, object second) in plain.SelectMany(a => a ?? []).Zip(other.SelectMany(a => a ?? [])))
            {
                Assert.True(first is double a && second is double b ? Math.Abs(a - b) <= 1e-6 * Math.Max(1, Math.Abs(a)) : first.Equals(second), $"{sum}: {first} and {second}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Sums))]
    public void A_figure_that_is_none_is_refused_or_asked_for_and_never_fits(int at)
    {
        Sum sum = Sum.All[at];
        List<object>?[] plain = Answers(sum, new(sum.Plain));
        List<string> faults = [];
        for (int i = 0; i < sum.Plain.Length; i++)
        {
            foreach (double hostile in Hostile)
            {
                double[] figures = [.. sum.Plain];
                figures[i] = hostile == -1 ? -Math.Abs(figures[i]) : hostile;
                if (figures[i] == sum.Plain[i] || (hostile == 0 && sum.ZeroIsOne.Contains(i)))
                {
                    continue;
                }

                List<object>?[] answers = Answers(sum, new(figures));
                for (int k = 0; k < answers.Length; k++)
                {
                    // Of several sums those that do not take the figure say what they said before.
                    if (answers[k] is { Count: > 0 } told && !(answers.Length > 1 && told.SequenceEqual(plain[k] ?? [])) && (!(Math.Abs(hostile) < 1e15) || IsBad(told)))
                    {
                        faults.Add($"{sum}, sum {k}, figure {i} as {figures[i]}: {string.Join(", ", told)}");
                    }
                }
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>A comma for a point in one half of a sentence would be another figure.</summary>
    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void What_a_sum_says_is_the_same_in_every_culture(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            string[] plain = Said();
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(plain, Said());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static string[] Said() =>
        [
            .. Sum.All.Select(s => s.Run(new(s.Plain))).OfType<SumCheck>().SelectMany(c => c.Figures.Select(f => f.ToString()).Prepend(c.Remedy ?? "").Prepend(c.ToString())),
            .. Spoken.Select(s => s().ToString()!),
        ];
    }

    private static readonly Func<object>[] Spoken =
    [
        () => SteererCut.Of(SteererLength.OfMillimetres(125.5m, 12.3m, 14.2m, 20, 40), Length.FromMillimeters(265.5), Material.Aluminium),
        () => SteererCut.Of(SteererLength.OfMillimetres(125.5m, 12.3m, 14.2m, 20, 40), Length.FromMillimeters(205.5), Material.Aluminium),
        () => HeadsetHeights.Measured(Length.FromMillimeters(14.5), Length.FromMillimeters(12.5)),
        () => StemShape.Of(Length.FromMillimeters(100.5), StemAngle.OfSquare(Angle.FromDegrees(-6.5))),
        () => Geometry.Frames.Drawn,
        () => GeometryDifference.Between(Geometry.Frames.Drawn, Geometry.Frames.Drawn.WithForkLongerBy(Length.FromMillimeters(20.5))),
        () => new Gear(46, 11),
        () => GearTable.Of([46, 30], [11, 36], Length.FromMillimeters(2_180.5)).ToString(GearMeasure.RolledGearInches),
        () => GearTable.Of([42], [17], Length.FromMillimeters(2_180.5), InternalHub.Find("14")),
        () => ChainRule.BigBig(Length.FromMillimeters(440.5), 32, 51, 2),
        () => SingleSpeedChain.ForFixedAxle(Length.FromMillimeters(425.5), 42, 17),
        () => ChainWear.Of(ChainSize.For11, Length.FromMillimeters(306.5), 24),
        () => ChainSpan.Of(Length.FromMillimeters(440.5), Length.FromMillimeters(440.5), [32], [11, 34], 39, 2),
        () => MountedTyre.OnRim(TyreSize.Parse("40-622", null), Length.FromMillimeters(25.5)),
        () => PressureLimits.Of(Pressure.FromBars(5.5), Pressure.FromBars(4.5), RimType.Hookless),
        () => RimWidthAdvice.For(Length.FromMillimeters(28)),
        () => MeanLeverage.Of(Length.FromMillimeters(150), Length.FromMillimeters(57.5)),
        () => RotorChange.Of(RotorSize.Parse("160", null), RotorSize.Parse("203", null)),
        () => SaddleHeightRule.Range(Length.FromMillimeters(815.5), Length.FromMillimeters(172.5)),
        () => CrankLengthRule.Range(Length.FromMillimeters(900)),
        () => EffectiveRimDiameter.OfSpokeEnds(Length.FromMillimeters(600.5)),
        () => RolloutLimit.PrintedUntilFebruary2025[0],
        () => AngleHeadset.Of(Angle.FromDegrees(1.5), Length.FromMillimeters(30.5)),
    ];

    /// <summary>A method that takes a quantity and is not in the list would escape both laws.</summary>
    [Fact]
    public void Every_method_that_takes_a_quantity_is_among_the_sums()
    {
        HashSet<string> covered = [.. Sum.All.SelectMany(s => s.Covers.Split(' '))];
        string[] taking = [.. typeof(Build).Assembly.GetExportedTypes()
            .Where(t => t.Namespace is not ("Lugwork" or "Lugwork.Workshop") && t != typeof(Lugwork.Planning.BuildChooser) && t != typeof(Lugwork.Planning.ChoiceWish))
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(m => !m.IsSpecialName && m.Name is not ("Deconstruct" or "Equals" or "Identify") && m.GetParameters().Any(p => IsQuantity(p.ParameterType)))
            .Select(m => $"{m.DeclaringType!.Name}.{m.Name}").Distinct()];
        Assert.True(taking.Length > 60, $"{taking.Length}");
        Assert.DoesNotContain(taking, t => !covered.Contains(t));
    }

    private static bool IsQuantity(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is var plain && (typeof(IQuantity).IsAssignableFrom(plain) || plain == typeof(Dimension) || plain == typeof(MeasuredLength));

    private static bool IsBad(List<object> told) =>
        told.Contains(Verdict.Fits) || told.OfType<double>().Any(d => !double.IsFinite(d)) || told.OfType<string>().Any(s => s.Contains("NaN", StringComparison.Ordinal) || s.Contains('∞', StringComparison.Ordinal));

    /// <summary>What each part of a sum says; null where it refuses, which only a bad argument may bring about.</summary>
    private static List<object>?[] Answers(Sum sum, SumInput input)
    {
        try
        {
            return sum.Run(input) is Func<object?>[] parts ? [.. parts.Select(Answer)] : [Answer(() => sum.Run(input))];
        }
        catch (ArgumentException)
        {
            return [null];
        }
    }

    private static List<object>? Answer(Func<object?> sum)
    {
        try
        {
            return SumInput.Told(sum());
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
