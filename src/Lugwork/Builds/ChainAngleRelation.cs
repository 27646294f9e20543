using System.Collections.Immutable;
using System.Globalization;
using Lugwork.Drivetrain;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>The steepest angle of the chain over a cassette, by the model of the sprockets. No limit of it is published, so none is set: it is told.</summary>
internal sealed class ChainAngleRelation : Relation, ITells
{
    private static readonly ImmutableArray<Source> OfAngle = [Sources.ChainAngle, Sources.ChainlineFormula];

    private static readonly Reason NoModel = new("chain-angle-not-known", "A crank of {0}, a rear end of {1} and sprockets {2}: the sum knows no gap or no spacing for them, and tells no angle.") { Sources = OfAngle };

    private static readonly Reason Told = new("chain-angle-told", "From the ring of {0} to the farther end of {2} sprockets on a chainstay of {3} mm the chain runs at [sum] degrees at most; no limit is published.") { Sources = OfAngle };

    private static readonly Reason ToldFromMiddle = new("chain-angle-told-from-middle", "From the middle of the rings of {0} to the farther end of {2} sprockets on a chainstay of {3} mm the chain runs at [sum] degrees at most, and steeper from the ring that is farther off; no limit is published.") { Sources = OfAngle };

    public override string Kind => "angle of the chain from the rings to the farthest sprocket, told";

    public override ImmutableArray<Source> RestsOn => OfAngle;

    public override Outcome Judge(ReadOnlySpan<long> values) =>
        values[0] == 0 || values[1] == 0 ? new(Verdict.NeedsMeasuring, NoModel)
        : values[2] == 0 || values[3] == 0 || Farthest(values[0], values[1], values[2]) is null ? new(Verdict.Fits, NoModel)
        : new(Verdict.Fits, FrontChainline.OfFitCode(values[0]).MostRings > 1 ? ToldFromMiddle : Told);

    public string Tell(string sentence, ImmutableArray<JointInput> inputs, in CandidateRow row)
    {
        double least = double.MaxValue;
        double most = 0;
        foreach (long front in Of(row[0]))
        {
            foreach (long hub in Of(row[1]))
            {
                foreach (long spacing in Of(row[2]))
                {
                    foreach (long stay in new[] { row[3].Low, row[3].High })
                    {
                        if (front > 0 && hub > 0 && spacing > 0 && stay > 0 && Farthest(front, hub, spacing) is { } run)
                        {
                            double degrees = Math.Atan(run / (stay / 1_000d)) * 180 / Math.PI;
                            (least, most) = (Math.Min(least, degrees), Math.Max(most, degrees));
                        }
                    }
                }
            }
        }

        string shown = Shown(least) == Shown(most) ? Shown(most) : $"{Shown(least)} to {Shown(most)}";
        return sentence.Replace("[sum]", shown, StringComparison.Ordinal);
    }

    private static long[] Of(in Candidates input) => input.Codes ?? [input.Low];

    private static string Shown(double degrees) => degrees.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>The greatest run from the rings to a sprocket, micrometres; null where the model knows nothing.</summary>
    private static double? Farthest(long chainline, long hub, long spacing)
    {
        long gap = HubStandard.OfFitCode(hub).GapMicrometres;
        if (gap == 0 || SprocketSpacing.OfFitCode(spacing) is not { StackMicrometres: > 0 } sprockets)
        {
            return null;
        }

        FrontChainline front = FrontChainline.OfFitCode(chainline);
        double rings = (double)((front.Range.Least + front.Range.Most) * 500);
        double smallest = ((gap - sprockets.SprocketMicrometres) / 2d) - ((double)RearChainline.UsualEnd * 1_000);
        double largest = smallest - ((sprockets.Speeds - 1) * sprockets.MostMicrometres);
        return Math.Max(Math.Abs(smallest - rings), Math.Abs(rings - largest));
    }
}
