using FsCheck;
using FsCheck.Xunit;

namespace Lugwork.Tests.Builds;

/// <summary>
/// What the rows of a threadless steerer say of a fork that may have two crowns. The same fork is drawn with one crown and with two, and what a row says of both is all that it may say of the one
/// of which nobody says how many it has.
/// </summary>
public sealed class SteererCrownLaws
{
    [Property(MaxTest = 400)]
    public void No_row_of_the_steerer_fits_a_fork_that_may_have_two_crowns(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        string Drawn(params string[] values) => values[random.Next(values.Length)];
        Frame frame = Frame.Read($"head tube length {Drawn("110", "130")}; fork crowns {Drawn("dual", "single", "unknown")}");
        Stem stem = Stem.Read($"clamp height 40; spacers below {Drawn("10", "none", "unknown")}; spacers above {Drawn("5", "none", "unknown")}");
        string fork = $"front brake hole {Drawn("unknown", "none", "nutted-6")}; steerer kind {Drawn("threadless", "unknown")}; steerer material {Drawn("aluminium", "carbon", "unknown")}; steerer length {random.Next(160, 215)}";
        FitReport With(string travel, string crowns) => Build.From(frame).With(Fork.Read($"{fork}; travel {travel}; crowns {crowns}")).With(Headset.Read("upper stack 12; lower stack 10")).With(stem).Check();

        foreach (string travel in new[] { "unknown", "not covered", "80", "130", "180", "63 | 203" })
        {
            FitReport open = With(travel, "unknown");
            FitReport[] kinds = [With(travel, "single"), With(travel, "dual")];
            foreach (Fit fit in open.Findings.Where(f => f.Verdict == Verdict.Fits && f.Joint!.Inputs.Any(i => i.Field == "steererLength")))
            {
                Assert.All(kinds, report => Assert.Contains(report.Findings, f => f.Joint!.Id == fit.Joint!.Id && f.Verdict == Verdict.Fits));
            }

            Assert.Contains(open.Findings, f => f.Joint!.Id == "steerer-reaches-stem" && f.Verdict == Verdict.NeedsMeasuring);
            Assert.Contains(open.ToMeasure, m => m.What.Slot == Slot.Fork && m.What.Field == "crowns");
        }
    }

    /// <summary>The law has both kinds of row to hold: one crown fits often enough, and of two nothing is said.</summary>
    [Fact]
    public void One_crown_may_fit_where_two_do_not()
    {
        static FitReport With(string crowns) => Build.From(Frame.Read("head tube length 110")).With(Fork.Read($"steerer length 179.5; {crowns}")).With(Headset.Read("upper stack 12; lower stack 10")).With(Stem.Read("clamp height 40; spacers below 10; spacers above none")).Check();
        Assert.Contains(With("crowns single").Findings, f => f.Joint!.Id == "steerer-reaches-stem" && f.Verdict == Verdict.Fits);
        Assert.DoesNotContain(With("crowns dual").Findings, f => f.Joint!.Id == "steerer-reaches-stem");
    }
}
