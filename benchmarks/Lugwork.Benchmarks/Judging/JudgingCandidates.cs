using BenchmarkDotNet.Attributes;
using FluentValidation;
using FluentValidation.Results;

namespace Lugwork.Benchmarks.Judging;

/// <summary>The candidates of rows 4 and 5: the same builds, the same joints, the same predicates.</summary>
public class JudgingCandidates
{
    private readonly IReadOnlyList<Build> _builds = KnownBuilds.All;
    private readonly Fit[] _fits = new Fit[JointTable.All.Length];
    private readonly byte[] _verdicts = new byte[JointTable.All.Length];
    private readonly JointValidator _validator = new();
    private readonly Floor _floor = new(KnownBuilds.All);
    private readonly int[][] _packed;

    public JudgingCandidates() => _packed = [.. _builds.Select(_floor.Pack)];

    [Benchmark(OperationsPerInvoke = KnownBuilds.Count)]
    public int Library()
    {
        int count = 0;
        for (int i = 0; i < KnownBuilds.Count; i++)
        {
            count += _builds[i].Judge(_fits);
        }

        return count;
    }

    [Benchmark(OperationsPerInvoke = KnownBuilds.Count)]
    public int Validation()
    {
        int failures = 0;
        for (int i = 0; i < KnownBuilds.Count; i++)
        {
            failures += _validator.Validate(_builds[i]).Errors.Count;
        }

        return failures;
    }

    [Benchmark(OperationsPerInvoke = KnownBuilds.Count)]
    public int LeastWork()
    {
        int sum = 0;
        for (int i = 0; i < KnownBuilds.Count; i++)
        {
            _floor.Judge(_packed[i], _verdicts);
            sum += _verdicts[0];
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = KnownBuilds.Count)]
    public int Report()
    {
        int count = 0;
        for (int i = 0; i < KnownBuilds.Count; i++)
        {
            count += _builds[i].Check().Findings.Length;
        }

        return count;
    }

    /// <summary>All three say the same of every joint of every build, and the builds differ. A joint that gives way to another row, or of which nobody said anything, is judged by the peers alone.</summary>
    /// <exception cref="InvalidOperationException">They do not.</exception>
    internal void Prove()
    {
        HashSet<Verdict> seen = [];
        for (int b = 0; b < _builds.Count; b++)
        {
            int count = _builds[b].Judge(_fits);
            _floor.Judge(_packed[b], _verdicts);
            HashSet<string> refused = [.. _validator.Validate(_builds[b]).Errors.Select(e => e.ErrorMessage)];
            int at = 0;
            for (int j = 0; j < JointTable.All.Length; j++)
            {
                Joint joint = JointTable.All[j];
                if (!joint.IsFilled(_builds[b]))
                {
                    continue;
                }

                Verdict verdict = at < count && _fits[at].Joint == joint ? _fits[at++].Verdict : Verdict.NotJudged;
                seen.Add(verdict);
                if (verdict == Verdict.NotJudged || (Verdict)_verdicts[j] != verdict || refused.Contains(joint.Id) != (verdict != Verdict.Fits))
                {
                    throw new InvalidOperationException($"the candidates differ on {joint} of build {b}");
                }
            }

            if (at != count || count < JointTable.All.Length - 13)
            {
                throw new InvalidOperationException($"build {b} has {count} joints that are judged, {at} of them in the table's order");
            }
        }

        if (seen.Count < 5)
        {
            throw new InvalidOperationException("the builds are too much alike");
        }
    }

    /// <summary>A rule a joint over the typed parts of a build.</summary>
    private sealed class JointValidator : AbstractValidator<Build>
    {
        public JointValidator()
        {
            foreach (Joint joint in JointTable.All)
            {
                RuleFor(build => build).Must(build => joint.Judge(build) == Verdict.Fits).WithMessage(joint.Id);
            }
        }
    }
}
