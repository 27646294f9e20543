namespace Lugwork.Benchmarks.Processes;

/// <summary>Row 13: the first check in a process, everything compiled on the way.</summary>
internal sealed class FirstCheckRow : IRow
{
    private double _ours;
    private double _theirs;

    public IReadOnlyList<Claim> Claims { get; } =
        [new("13", "first check in a fresh process", "the same lengths as UnitsNet quantities from numbers", 10, LimitKind.AtLeastFaster)];

    public string Note => $"Row 13: the first check took {_ours / 1e6:0.0} ms, the quantities {_theirs / 1e6:0.0} ms (medians of the last repeat).";

    public void Prove()
    {
        foreach (decimal post in new[] { 27.2m, 27m, 30.9m })
        {
            FitReport report = Bicycles.Touring(post).Check();
            bool library = report.Verdict == Verdict.Fits;
            if (library != new UnitsBicycle((double)post).Fits() || library != (post == 27.2m))
            {
                throw new InvalidOperationException($"with a {post} post the candidates do not agree:\n{report}");
            }
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        double[] medians = Timing.InTurn(effort == Effort.Full ? 40 : 12, () => Started.Probe("probe-check"), () => Started.Probe("probe-units"));
        (_ours, _theirs) = (medians[0], medians[1]);
        return [new(_theirs / _ours)];
    }
}
