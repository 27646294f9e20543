namespace Lugwork.Benchmarks.Reading;

/// <summary>Rows 1 to 3 for one kind of spec line: passes in turn in the short run, the harness in the full one.</summary>
/// <typeparam name="TReading">The candidates.</typeparam>
internal sealed class ReadingRow<TReading>(string kind) : IRow
    where TReading : ICandidates, new()
{
    private const int Rounds = 40;

    private readonly TReading _candidates = new();

    public IReadOnlyList<Claim> Claims { get; } =
    [
        new("1", $"read {SpecLines.Count:N0} spec lines: {kind}", "`double.Parse` of the numbers in them", 0.8, LimitKind.AtMostTimes, NoBytes: true),
        new("2", $"read {SpecLines.Count:N0} spec lines: {kind}", "source-generated regex with groups", 6, LimitKind.AtLeastFaster),
        new("3", $"refuse a bad line: {kind}", "one `FormatException` thrown and caught", 50, LimitKind.AtLeastFaster, NoBytes: true),
    ];

    public void Prove() => _candidates.Prove();

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        SpecTimes times = effort == Effort.Full ? Harness.Measure<TReading>() : _candidates.InTurn(Rounds);
        (long reading, long refusing) = _candidates.Bytes();
        return
        [
            new(times.Library / times.Numbers, reading),
            new(times.Expression / times.Library),
            new(times.Throwing / (times.Refusing / SpecLines.Count), refusing),
        ];
    }
}
