namespace Lugwork.Drivetrain;

/// <summary>Does a click of the shifter move the rear derailleur by one sprocket: cable pull a click times ratio of the derailleur, against the pitch of the sprockets.</summary>
/// <remarks>
/// Travel a click = pull p x ratio r, mm, against the pitch P of the sprockets, mm; miss at the last of n sprockets = (p r - P)(n - 1), by
/// "Bicycles/Maintenance and Repair/Gear-changing Dimensions (equation; tables not readable)". An estimate, no promise. A fit is only said where pull and ratio of one family are both published and their rounding holds the pitch; no listed family
/// has both. Two families are refused where published figures of the same kind stand on both sides and miss the last sprocket by more than half a pitch,
/// or where their maker says that they do not cross over. Everything else needs measuring.
/// </remarks>
public static class Indexing
{
    /// <summary>Figures are printed to one decimal.</summary>
    private const decimal PullRounding = 0.05m;

    private const decimal RatioRounding = 0.05m;

    private const decimal HalfPitch = 0.5m;

    private const string ThickApart = "thick plates have a pull of their own: only chain and rings cross over";

    /// <summary>Judges a shifter and a derailleur on sprockets, and shows the sum.</summary>
    /// <param name="shifter">Family of the shifter.</param>
    /// <param name="derailleur">Family of the rear derailleur.</param>
    /// <param name="sprockets">Spacing of the sprockets; the shifter is taken to be made for as many speeds.</param>
    public static IndexingEstimate Estimate(ActuationFamily shifter, ActuationFamily derailleur, SprocketSpacing sprockets)
    {
        ArgumentNullException.ThrowIfNull(shifter);
        ArgumentNullException.ThrowIfNull(derailleur);
        ArgumentNullException.ThrowIfNull(sprockets);
        decimal? pitch = sprockets.MostMicrometres == 0 ? null : sprockets.MostMicrometres / 1_000m;
        decimal? pull = shifter.MeanPull ?? (pitch / shifter.Ratio);
        decimal? travel = pull * derailleur.Ratio;
        (Verdict verdict, string why) = Judge(shifter, derailleur, sprockets, pitch);
        string mend = verdict switch { Verdict.Fits => "", Verdict.DoesNotFit => "shifter and derailleur of one family, made for these sprockets", _ => "a list of its maker that names shifter, derailleur and sprockets together" };
        return new(verdict, why, mend, pull, derailleur.Ratio, travel, pitch, sprockets.Speeds - 1, Rests(shifter, derailleur, sprockets, shifter.MeanPull is null));
    }

    /// <summary>Pull and ratio are both published: is the pitch within their rounding, and if not, is the last sprocket missed.</summary>
    internal static Verdict OfPublished(decimal pull, decimal ratio, decimal pitch, int steps)
    {
        decimal least = (pull - PullRounding) * (ratio - RatioRounding);
        decimal most = (pull + PullRounding) * (ratio + RatioRounding);
        decimal away = pitch < least ? least - pitch : pitch > most ? pitch - most : 0;
        return away == 0 ? Verdict.Fits : away * steps > HalfPitch * pitch ? Verdict.DoesNotFit : Verdict.NeedsMeasuring;
    }

    /// <summary>By which factor the travel misses the pitch when a figure of the shifter's family stands against one of the derailleur's, the nearest that rounding allows.</summary>
    internal static decimal LeastMiss(decimal of, decimal against, decimal rounding)
    {
        decimal least = (of - rounding) / (against + rounding);
        decimal most = (of + rounding) / (against - rounding);
        return least > 1 ? least - 1 : most < 1 ? 1 - most : 0;
    }

    /// <summary>Why two families never work together over so many steps, whatever the sprockets: their maker says so, or published figures of one kind miss the last sprocket by more than half a pitch. Null where nothing published parts them.</summary>
    internal static string? NeverTogether(ActuationFamily shifter, ActuationFamily derailleur, int steps) =>
        (shifter == ActuationFamily.ThickPlate) != (derailleur == ActuationFamily.ThickPlate) ? ThickApart
        : shifter == derailleur ? null
        : shifter.HasPublishedRatio && derailleur.HasPublishedRatio && LeastMiss(derailleur.Ratio!.Value, shifter.Ratio!.Value, RatioRounding) * steps > HalfPitch ? "the ratios of the two families differ: the pitch is missed"
        : shifter.HasPublishedPull && derailleur.HasPublishedPull && LeastMiss(shifter.MeanPull!.Value, derailleur.MeanPull!.Value, PullRounding) * steps > HalfPitch ? "the pulls of the two families differ: the pitch is missed"
        : null;

    private static (Verdict Verdict, string Why) Judge(ActuationFamily shifter, ActuationFamily derailleur, SprocketSpacing sprockets, decimal? pitch)
    {
        int steps = sprockets.Speeds - 1;
        bool thick = sprockets.Source == Sources.ThickPlates;
        if (thick && shifter != ActuationFamily.ThickPlate)
        {
            return (Verdict.DoesNotFit, ThickApart);
        }

        if (NeverTogether(shifter, derailleur, steps) is { } never)
        {
            return (Verdict.DoesNotFit, never);
        }

        if (shifter == derailleur)
        {
            return pitch is { } known && shifter is { HasPublishedPull: true, HasPublishedRatio: true }
                ? (OfPublished(shifter.MeanPull!.Value, derailleur.Ratio!.Value, known, steps), "published pull and ratio of one family")
                : (Verdict.NeedsMeasuring, "pull and ratio of this family are not both published");
        }

        return (Verdict.NeedsMeasuring, "two families without published figures that could be set against each other");
    }

    private static List<Source> Rests(ActuationFamily shifter, ActuationFamily derailleur, SprocketSpacing sprockets, bool implied)
    {
        List<Source> rests = [Sources.GearEquation];
        foreach (Source? source in new[] { shifter.PullSource, implied ? shifter.RatioSource : null, implied ? Sources.Derived : null, derailleur.RatioSource, sprockets.Source, shifter.Source, derailleur.Source })
        {
            if (source is not null && !rests.Contains(source))
            {
                rests.Add(source);
            }
        }

        return rests;
    }
}
