using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;

namespace Lugwork.Benchmarks.Judging;

/// <summary>Rows 4 and 5: judging one build.</summary>
internal sealed class JudgingRow : IRow
{
    private const long MostReportBytes = 4_096;

    private double _nanoseconds;
    private double _leastNanoseconds;
    private long _reportBytes;

    public IReadOnlyList<Claim> Claims { get; } =
    [
        new("4", $"judge one build of {Slot.All.Length} parts, {JointTable.All.Length} joints", "FluentValidation over the same parts and predicates", 15, LimitKind.AtLeastFaster, NoBytes: true),
        new("4", "the same with its whole report", $"FluentValidation; at most {MostReportBytes:N0} bytes", 1, LimitKind.AtLeastFaster),
        new("5", $"judge one build of {Slot.All.Length} parts, {JointTable.All.Length} joints", "a table look-up a joint over packed offsets", 2.5, LimitKind.AtMostTimes, NoBytes: true),
    ];

    public string Note => FormattableString.Invariant($"Rows 4 and 5: {_nanoseconds / JointTable.All.Length:0.0} ns a joint, the look-up {_leastNanoseconds / JointTable.All.Length:0.0} ns; a report takes {_reportBytes:N0} bytes.");

    public void Prove() => new JudgingCandidates().Prove();

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        Job job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
            .WithWarmupCount(effort == Effort.Full ? 8 : 4)
            .WithIterationCount(effort == Effort.Full ? 20 : 8)
            .WithIterationTime(TimeInterval.FromMilliseconds(effort == Effort.Full ? 250 : 60));
        string folder = Directory.CreateTempSubdirectory("lugwork-benchmarks").FullName;
        try
        {
            ManualConfig config = ManualConfig.CreateEmpty().AddJob(job).AddDiagnoser(MemoryDiagnoser.Default).AddLogger(NullLogger.Instance).AddColumnProvider(DefaultColumnProviders.Instance).WithArtifactsPath(folder);
            return Ratios(BenchmarkRunner.Run<JudgingCandidates>(config));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private Measured[] Ratios(Summary summary)
    {
        (double library, long bytes) = Of(summary, nameof(JudgingCandidates.Library));
        (double validation, _) = Of(summary, nameof(JudgingCandidates.Validation));
        (double least, _) = Of(summary, nameof(JudgingCandidates.LeastWork));
        (double report, long reportBytes) = Of(summary, nameof(JudgingCandidates.Report));
        (_nanoseconds, _leastNanoseconds, _reportBytes) = (library, least, reportBytes);
        return
        [
            new(validation / library, bytes),
            new(reportBytes <= MostReportBytes ? validation / report : 0),
            new(library / least, bytes),
        ];
    }

    private static (double Median, long Bytes) Of(Summary summary, string method)
    {
        BenchmarkReport report = summary.Reports.Single(r => r.BenchmarkCase.Descriptor.WorkloadMethod.Name == method);
        return report.ResultStatistics is { } statistics
            ? (statistics.Median, report.GcStats.GetBytesAllocatedPerOperation(report.BenchmarkCase) ?? -1)
            : throw new InvalidOperationException($"{method} was not measured");
    }
}
