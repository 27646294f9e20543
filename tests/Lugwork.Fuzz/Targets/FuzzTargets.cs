namespace Lugwork.Fuzz;

/// <summary>Every target.</summary>
internal static class FuzzTargets
{
    public static FuzzTarget[] All { get; } =
    [
        new ValueTarget(),
        new PartTarget(),
        new BuildTarget(),
        new LineTarget(),
        new SheetTarget(),
        new RecordTarget(),
        new SnapshotTarget(),
    ];
}
