using System.Globalization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>Press fit of a headset part: a cup in its head tube, or a crown race on its seat.</summary>
/// <remarks>
/// Interference i = D - d is what the outer diameter exceeds the inner one by, mm: by "Headset Tech: preparation", "Fork crown race fitting" and "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese)". Up to 0.10 mm is the printed limit; up to 0.15 mm occurs in the published
/// sizes of 1 in head tubes and their cups, and goes with a caution; above that, or without any interference, the parts need work. The least
/// that is printed is 0.03 mm; how much less still holds stands on no page, so that between none and 0.03 mm the maker is asked. Sources
/// disagree on what is above 0.10 mm too: the maker's figure comes first.
/// </remarks>
public static class PressFit
{
    private const decimal LeastMillimetres = 0.03m;
    private const decimal MostMillimetres = 0.10m;
    private const decimal MostWithCautionMillimetres = 0.15m;

    /// <summary>Least interference that is printed as one to aim at, 0.03 mm.</summary>
    public static Length Least => Length.FromMillimeters((double)LeastMillimetres);

    /// <summary>Largest interference by the printed rule, 0.10 mm.</summary>
    public static Length Most => Length.FromMillimeters((double)MostMillimetres);

    /// <summary>Largest interference that occurs in published pairs, 0.15 mm.</summary>
    public static Length MostWithCaution => Length.FromMillimeters((double)MostWithCautionMillimetres);

    /// <summary>Interference: i = D - d, what the outer diameter exceeds the inner one by; below zero it is play. Of any press fit, a bearing in a shell too.</summary>
    /// <param name="larger">D, outside diameter of the part that goes in, 5 to 200 mm.</param>
    /// <param name="smaller">d, inside diameter of the part that takes it, 5 to 200 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is out of range or no number.</exception>
    public static Length Interference(Length larger, Length smaller) =>
        Length.FromMillimeters(NumberRange.Millimetres(larger, 5, 200) - NumberRange.Millimetres(smaller, 5, 200));

    /// <summary>Interference of two toleranced or measured diameters: from the smallest outer less the largest inner one to the largest less the smallest.</summary>
    /// <param name="larger">Outside diameter of the part that goes in.</param>
    /// <param name="smaller">Inside diameter of the part that takes it.</param>
    /// <returns>The least and the most.</returns>
    /// <exception cref="ArgumentException">A reading is a default.</exception>
    public static LengthRange InterferenceRange(MeasuredLength larger, MeasuredLength smaller)
    {
        (decimal least, decimal most) = Range(larger, smaller);
        return new((double)least, (double)most);
    }

    private static (decimal Least, decimal Most) Range(MeasuredLength larger, MeasuredLength smaller)
    {
        if (larger == default || smaller == default)
        {
            throw new ArgumentException("a default is no reading", larger == default ? nameof(larger) : nameof(smaller));
        }

        decimal middle = larger.Millimetres - smaller.Millimetres;
        decimal error = larger.ErrorMillimetres + smaller.ErrorMillimetres;
        return (middle - error, middle + error);
    }

    /// <summary>Judges a cup in a bore, or a seat in a race, by what both measure.</summary>
    /// <param name="larger">Outside diameter: of the cup, or of the crown-race seat.</param>
    /// <param name="smaller">Inside diameter: of the bore, or of the race.</param>
    /// <returns>Fits, with a caution above 0.10 mm; does not fit where it needs work; needs measuring where the errors of the readings leave it open, or where it is less than is printed.</returns>
    /// <exception cref="ArgumentException">A reading is a default.</exception>
    public static SumCheck Check(MeasuredLength larger, MeasuredLength smaller)
    {
        (decimal low, decimal high) = Range(larger, smaller);
        return Judge(low, high).Comparing(("least interference", (double)low, "mm"), ("most interference", (double)high, "mm"), ("least printed", (double)LeastMillimetres, "mm"), ("most printed", (double)MostMillimetres, "mm"));
    }

    private static SumCheck Judge(decimal low, decimal high)
    {
        string told = low == high
            ? string.Create(CultureInfo.InvariantCulture, $"interference is {low:0.###} mm")
            : string.Create(CultureInfo.InvariantCulture, $"interference is {low:0.###} to {high:0.###} mm");
        if (low > MostWithCautionMillimetres)
        {
            return new("press-fit", Verdict.DoesNotFit, $"{told}, above 0.15 mm: pressed in by force it splits the head tube or the race", "the part of the right size; or reaming or milling to size, which cannot be undone (leave it to a shop)", Cautions.PressFitCare, [Sources.PressFitRule, Sources.HeadsetGuide]);
        }

        if (high <= 0)
        {
            return new("press-fit", Verdict.DoesNotFit, $"{told}: the part is loose", "the part of the right size; never glue or shim it", Cautions.PressFitCare, [Sources.OneInchHeadsets]);
        }

        if (low < LeastMillimetres || high > MostWithCautionMillimetres)
        {
            return low > 0 && high < LeastMillimetres
                ? new("press-fit", Verdict.NeedsMeasuring, $"{told}: less than the 0.03 mm that is printed, and how little holds is not", "the headset maker's own figure", Cautions.PressFitCare, [Sources.RaceFitting, Sources.PressFitRule])
                : new("press-fit", Verdict.NeedsMeasuring, $"{told}: 0.03 to 0.15 mm is wanted, and the readings do not decide it", "both diameters by micrometer, in two directions, to 0.01 mm", Cautions.PressFitCare, [Sources.PressFitRule, Sources.RaceFitting, Sources.OneInchHeadsets]);
        }

        return high > MostMillimetres
            ? new("press-fit", Verdict.Fits, $"{told}: above the 0.10 mm of the printed rule, as published 1 in pairs are", "", Cautions.PressFitCare, [Sources.HeadsetGuide, Sources.OneInchHeadsets, Sources.FrontTriangleManual])
            : new("press-fit", Verdict.Fits, $"{told}, within the 0.10 mm of the printed rule", "", Cautions.PressFitCare, [Sources.PressFitRule, Sources.RaceFitting]);
    }
}
