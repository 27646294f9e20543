using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>What lets a bottom bracket into a shell of another family.</summary>
internal static class ShellSleeves
{
    public static ImmutableArray<Bridge> Table { get; } =
    [
        Adapter(ShellFamily.Bb30, ShellFamily.Pf30, Verdict.NeedsPart, "46-to-42 mm sleeve, pressed in for the BB30 bearings", Sources.BracketMisconceptions, Sources.Memory),
        Adapter(ShellFamily.Bsa, ShellFamily.American, Verdict.NeedsPart, "51.3 mm adapter threaded inside for a BSA unit", Sources.UnthreadedShells, Sources.BracketTable),
        Adapter(ShellFamily.Mid, ShellFamily.American, Verdict.NeedsPart, "American-to-Mid adapter", Sources.UnthreadedShells, Sources.Memory),
        Adapter(ShellFamily.Spanish, ShellFamily.American, Verdict.NeedsPart, "American-to-Spanish adapter", Sources.UnthreadedShells, Sources.Memory),
        Adapter(ShellFamily.Bsa, ShellFamily.T47, Verdict.NeedsMeasuring, "T47-to-BSA reducer sleeve, which is rare, for this width", Sources.Memory),
    ];

    private static Bridge Adapter(ShellFamily unit, ShellFamily shell, Verdict result, string what, params ImmutableArray<Source> sources) => new()
    {
        Id = $"bottom-bracket-{unit.FitKey}-in-{shell.FitKey}".ToLowerInvariant(),
        Kind = BridgeKind.Adapter,
        Result = result,
        What = what,
        From = unit.FitCode,
        To = shell.FitCode,
        Sources = sources,
    };
}
