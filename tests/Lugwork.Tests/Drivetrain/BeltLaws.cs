using FsCheck;
using FsCheck.Xunit;
using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>What holds for every knowledge of chain and frame.</summary>
public sealed class BeltLaws
{
    /// <summary>The boundary is belt or no belt: a verdict other than a fit needs a belt among what the chain can be, and a fit with a belt alone needs a frame that opens.</summary>
    [Property(MaxTest = 4_000)]
    public bool The_frame_matters_exactly_where_a_belt_is_possible(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        ChainSize[] chains = [.. ChainSize.All.Where(_ => random.Next(4) == 0).DefaultIfEmpty(random.Next(2) == 0 ? ChainSize.Belt : ChainSize.For9)];
        RearTriangle[] frames = [.. RearTriangle.All.Where(_ => random.Next(2) == 0)];
        Build build = Build.From(new Frame { RearTriangle = frames.Length == 0 ? default : Known<RearTriangle>.OneOf([.. frames]) })
            .With(new Chain { Size = Known<ChainSize>.OneOf([.. chains]) });
        Verdict verdict = build.Check().Findings.Single(f => f.Joint!.Id == "belt-through-rear-triangle").Verdict;
        bool mayBeBelt = chains.Contains(ChainSize.Belt);
        bool isBelt = mayBeBelt && chains.Length == 1;
        return verdict == (!mayBeBelt || frames is [var only] && only == RearTriangle.Opens ? Verdict.Fits
            : isBelt && frames is [var closed] && closed == RearTriangle.Closed ? Verdict.DoesNotFit
            : Verdict.NeedsMeasuring);
    }

    /// <summary>No bicycle with a belt and something of a chain on it is ever better than a refusal.</summary>
    [Fact]
    public void A_belt_and_chain_teeth_are_refused_whatever_is_unknown()
    {
        foreach (string unknown in new[] { "unknown", "5-8 | 9 | 10 | 11 | 12 | 13 | 1/8" })
        {
            Build build = Build.From(new Frame()).With(Chain.Read("belt")).With(Cassette.Read("9-speed HG")).With(RearDerailleur.Read("chain " + unknown));
            FitReport report = build.Check();
            Assert.Equal(Verdict.DoesNotFit, report.Findings.Single(f => f.Joint!.Id == "chain-on-cassette").Verdict);
            Assert.Equal(Verdict.DoesNotFit, report.Findings.Single(f => f.Joint!.Id == "chain-through-derailleur").Verdict);
        }
    }
}
