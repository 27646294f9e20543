using System.Globalization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>What <see cref="Indexing"/> says of a shifter and a rear derailleur on sprockets, with the sum behind it. Immutable.</summary>
/// <remarks>Travel = pull x ratio against the pitch, mm: see <see cref="Indexing"/>. By "Bicycles/Maintenance and Repair/Gear-changing Dimensions (equation; tables not readable)".</remarks>
public sealed class IndexingEstimate
{
    private readonly decimal? _pull;

    private readonly decimal? _travel;

    private readonly decimal? _pitch;

    private readonly int _steps;

    internal IndexingEstimate(Verdict verdict, string why, string mend, decimal? pull, decimal? ratio, decimal? travel, decimal? pitch, int steps, List<Source> sources)
    {
        Ratio = ratio;
        (_pull, _travel, _pitch, _steps) = (pull, travel, pitch, steps);
        string sum = string.Create(CultureInfo.InvariantCulture, $"{Figure(pull)} x {(ratio is { } known ? known.ToString("0.##", CultureInfo.InvariantCulture) : "?")} = {Figure(travel)} against {Figure(pitch)}");
        Check = new SumCheck("indexing", verdict, $"{sum}; {why}", mend, Cautions.ShiftSetUp, [.. sources])
            .Comparing(("cable a click", (double?)pull, "mm"), ("ratio of the derailleur", (double?)ratio, ""), ("travel a click", (double?)travel, "mm"), ("pitch of the sprockets", (double?)pitch, "mm"), ("clicks", steps, ""));
    }

    /// <summary>Needs measuring, or does not fit; a fit only where both sides are published.</summary>
    public SumCheck Check { get; }

    /// <summary>Cable a click: the shifter's figure, else what its ratio asks for on these sprockets; null where neither is known.</summary>
    public Length? Pull => Quantity(_pull);

    /// <summary>Ratio of the derailleur; null where it is not known.</summary>
    public decimal? Ratio { get; }

    /// <summary>How far the derailleur moves a click, pull x ratio; null where pull or ratio is not known.</summary>
    public Length? Travel => Quantity(_travel);

    /// <summary>From one sprocket to the next; null where it is not known.</summary>
    public Length? Pitch => Quantity(_pitch);

    /// <summary>How far the derailleur is out at the last sprocket, after all clicks: (travel - pitch) x clicks; negative where it falls short. Null where the sum cannot be done.</summary>
    public Length? MissAtLast => Quantity((_travel - _pitch) * _steps);

    /// <summary>"needs measuring: 2.7 mm x 1.39 = 3.753 mm against 3.74 mm; ...".</summary>
    public override string ToString() => Check.ToString();

    private static string Figure(decimal? millimetres) => millimetres is { } known ? known.ToString("0.###", CultureInfo.InvariantCulture) + " mm" : "? mm";

    private static Length? Quantity(decimal? millimetres) => millimetres is { } known ? Length.FromMillimeters((double)known) : null;
}
