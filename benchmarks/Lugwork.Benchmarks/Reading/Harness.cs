using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;

namespace Lugwork.Benchmarks.Reading;

/// <summary>The same candidates under BenchmarkDotNet, in this process. It runs one after the other, so it wants a quiet machine.</summary>
internal static class Harness
{
    public static SpecTimes Measure<TReading>()
    {
        Job job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
            .WithUnrollFactor(1)
            .WithWarmupCount(6)
            .WithIterationCount(15)
            .WithIterationTime(TimeInterval.FromMilliseconds(250));
        string folder = Directory.CreateTempSubdirectory("lugwork-benchmarks").FullName;
        try
        {
            ManualConfig config = ManualConfig.CreateEmpty().AddJob(job).AddLogger(NullLogger.Instance).AddColumnProvider(DefaultColumnProviders.Instance).WithArtifactsPath(folder);
            Summary summary = BenchmarkRunner.Run<TReading>(config);
            return new(Of("Library"), Of("Numbers"), Of("Expression"), Of("Refusing"), Of("Throwing"));

            double Of(string name) =>
                summary.Reports.Single(r => r.BenchmarkCase.Descriptor.WorkloadMethod.Name == name).ResultStatistics?.Median
                ?? throw new InvalidOperationException($"{name} was not measured");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
