using UnitsNet;

namespace Lugwork;

/// <summary>A length as it was read off an instrument, with how far it may be out to either side.</summary>
/// <remarks>Above zero and at most 100,000 mm, error 0 to 1,000 mm; exact to the nanometre. A caliper in a workshop is out by 0.1 mm. The default is no reading: it is refused wherever one is asked for.</remarks>
public readonly record struct MeasuredLength
{
    private MeasuredLength(decimal millimetres, decimal error)
    {
        Millimetres = millimetres;
        ErrorMillimetres = error;
    }

    /// <summary>What was read, millimetres.</summary>
    public decimal Millimetres { get; }

    /// <summary>How far it may be out to either side, millimetres.</summary>
    public decimal ErrorMillimetres { get; }

    /// <summary>What was read.</summary>
    public Length Length => Length.FromMillimeters((double)Millimetres);

    /// <summary>A reading in millimetres.</summary>
    /// <param name="millimetres">What was read, millimetres, above zero, at most 100,000.</param>
    /// <param name="error">How far it may be out to either side, millimetres, 0 to 1,000; 0.1, the error of a caliper in use, where it is left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static MeasuredLength OfMillimetres(decimal millimetres, decimal error = 0.1m)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(millimetres, 0.000001m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, 100_000m);
        ArgumentOutOfRangeException.ThrowIfNegative(error);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(error, 1_000m);
        return new(decimal.Round(millimetres, 6), decimal.Round(error, 6));
    }

    /// <summary>"27.18 ± 0.05 mm".</summary>
    public override string ToString() => FormattableString.Invariant($"{Millimetres:0.######} \u00B1 {ErrorMillimetres:0.######} mm");

    /// <summary>How far the reading lies outside a range, millimetres; 0 inside it. Null where even its error does not reach it.</summary>
    internal decimal? Outside(decimal least, decimal most)
    {
        decimal away = Millimetres < least ? least - Millimetres : Millimetres > most ? Millimetres - most : 0;
        return away <= ErrorMillimetres ? away : null;
    }
}
