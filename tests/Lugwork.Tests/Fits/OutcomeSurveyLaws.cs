namespace Lugwork.Tests.Fits;

/// <summary>What has to be measured is the same from samples of a large field as from all of it.</summary>
public sealed class OutcomeSurveyLaws
{
    private const int MostWalked = 400_000;

    [Fact]
    public void An_input_that_matters_anywhere_is_found_from_samples()
    {
        int sampled = 0;
        foreach (Joint joint in JointTable.All.Where(j => j.Relation is not SumRelation))
        {
            for (int seed = 0; seed < 12; seed++)
            {
                Rows.Row drawn = Rows.Draw(joint, new Random(seed));
                CandidateRow row = default;
                for (int i = 0; i < drawn.Inputs.Length; i++)
                {
                    row[i] = drawn.Inputs[i];
                }

                // Two inputs unknown, so that many fields are too large to be gone through.
                row[seed % drawn.Inputs.Length] = default;
                row[(seed + 1) % drawn.Inputs.Length] = default;
                OutcomeSurvey whole = new(drawn.Inputs.Length);
                int walked = 0;
                joint.Visit(row, (values, outcome) => ++walked <= MostWalked && whole.Add(values, outcome));
                if (walked is <= Joint.MostTold or > MostWalked)
                {
                    continue;
                }

                OutcomeSurvey samples = new(drawn.Inputs.Length);
                joint.VisitSpread(row, samples.Add);
                sampled++;
                Assert.True(whole.Matters.SequenceEqual(samples.Matters), $"{drawn}: {string.Join(' ', whole.Matters)} against {string.Join(' ', samples.Matters)}");
                Assert.Equal(whole.Outcomes.Select(o => o.Verdict).Distinct().Order(), samples.Outcomes.Select(o => o.Verdict).Distinct().Order());
            }
        }

        Assert.True(sampled > 12, $"{sampled} sampled");
    }

    [Fact]
    public void A_finding_is_told_once_and_every_time_the_same()
    {
        Build build = Builds.Bicycles.Any(new Random(3));
        foreach (Fit fit in build.Check().Findings)
        {
            Assert.Same(fit.Sentence, fit.Sentence);
            Assert.Same(fit.Tell(), build.Check().Findings.Single(f => f == fit).Tell());
        }
    }
}
