using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>What <see cref="Indexing"/> says of a shifter and a rear derailleur on sprockets, with the sum behind it.</summary>
public sealed class IndexingEstimate
{
    private readonly decimal? _pull;

    private readonly decimal? _travel;

    private readonly decimal? _pitch;

    private readonly int _steps;

    internal IndexingEstimate(Verdict verdict, string why, decimal? pull, decimal? ratio, decimal? travel, decimal? pitch, int steps, List<Source> sources)
    {
        Verdict = verdict;
        Why = why;
        Ratio = ratio;
        Sources = [.. sources];
        (_pull, _travel, _pitch, _steps) = (pull, travel, pitch, steps);
    }

    /// <summary>Needs measuring, or does not fit; a fit only where both sides are published.</summary>
    public Verdict Verdict { get; }

    /// <summary>Why, in one sentence.</summary>
    public string Why { get; }

    /// <summary>Cable a click: the shifter's figure, else what its ratio asks for on these sprockets; null where neither is known.</summary>
    public Length? Pull => Quantity(_pull);

    /// <summary>Ratio of the derailleur; null where it is not known.</summary>
    public decimal? Ratio { get; }

    /// <summary>How far the derailleur moves a click; null where pull or ratio is not known.</summary>
    public Length? Travel => Quantity(_travel);

    /// <summary>From one sprocket to the next; null where it is not known.</summary>
    public Length? Pitch => Quantity(_pitch);

    /// <summary>How far the derailleur is out at the last sprocket, after all clicks; negative where it falls short. Null where the sum cannot be done.</summary>
    public Length? MissAtLast => Quantity((_travel - _pitch) * _steps);

    /// <summary>What the sum and the verdict rest on.</summary>
    public ImmutableArray<Source> Sources { get; }

    /// <summary>"needs measuring: 2.7 mm x 1.39 = 3.753 mm against 3.74 mm; ...".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Word(Verdict)}: {Figure(_pull)} x {(Ratio is { } ratio ? ratio.ToString("0.##", CultureInfo.InvariantCulture) : "?")} = {Figure(_travel)} against {Figure(_pitch)}; {Why}");

    private static string Word(Verdict verdict) => verdict switch { Verdict.Fits => "fits", Verdict.DoesNotFit => "does not fit", _ => "needs measuring" };

    private static string Figure(decimal? millimetres) => millimetres is { } known ? known.ToString("0.###", CultureInfo.InvariantCulture) + " mm" : "? mm";

    private static Length? Quantity(decimal? millimetres) => millimetres is { } known ? Length.FromMillimeters((double)known) : null;
}
