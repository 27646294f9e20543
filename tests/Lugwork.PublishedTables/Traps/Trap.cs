namespace Lugwork.PublishedTables.Traps;

/// <summary>One thing to be run: a joint of a build, a relation that has no joint yet, a text, readings, or a figure.</summary>
public record TrapRun
{
    /// <summary>Id of the joint that is looked at.</summary>
    public string? Joint { get; init; }

    /// <summary>Short forms by slot key; a bare frame stands where none is named.</summary>
    public Dictionary<string, string> Parts { get; init; } = [];

    /// <summary>A relation of an area that no joint uses yet, judged on <see cref="Values"/>.</summary>
    public string? Relation { get; init; }

    /// <summary>Type that reads <see cref="Text"/>: an interface value, a pair of headset halves, or a part.</summary>
    public string? Read { get; init; }

    /// <summary>Every text gives the same readings.</summary>
    public string[] Text { get; init; } = [];

    /// <summary>Type that is told by <see cref="Readings"/>, millimetres with their error, by the name of the measurement.</summary>
    public string? Identify { get; init; }

    /// <summary>Measurements by name: "135 ± 0.5".</summary>
    public Dictionary<string, string> Readings { get; init; } = [];

    /// <summary>Name of a sum that the library has.</summary>
    public string? Figure { get; init; }

    /// <summary>What a relation or a figure is given.</summary>
    public string[] Values { get; init; } = [];

    /// <summary>All keys that come out; empty where the text is refused or nothing is found.</summary>
    public string[]? As { get; init; }

    /// <summary>Keys that are among several that come out.</summary>
    public string[]? Among { get; init; }

    /// <summary>A number that a figure gives instead of a verdict.</summary>
    public string? Gives { get; init; }

    /// <summary>A phrase that the told sentence, remedy, measurement or caution contains, or the id of a bridge.</summary>
    public string? Remedy { get; init; }

    /// <summary>The published verdict; of a further run, where it is another than the row's.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>It can be run today.</summary>
    public bool IsRun => (Joint ?? Relation ?? Read ?? Identify ?? Figure) is not null;
}

/// <summary>A published edge case: what is asked, the right answer, and how it is run.</summary>
public sealed record Trap : TrapRun
{
    /// <summary>Id of the row.</summary>
    public required string Id { get; init; }

    /// <summary>Area of the table that it comes from.</summary>
    public required string Area { get; init; }

    /// <summary>The situation, in our own words.</summary>
    public required string Says { get; init; }

    /// <summary>The row wants a warning beside its verdict.</summary>
    public bool Caution { get; init; }

    /// <summary>Verdict of the run where the row itself has none.</summary>
    public Verdict? Runs { get; init; }

    /// <summary>Further runs of the same row.</summary>
    public TrapRun[] And { get; init; } = [];

    /// <summary>The joint that is missing for this row.</summary>
    public string? Open { get; init; }

    /// <summary>The two interfaces that meet in the missing joint.</summary>
    public string[] Between { get; init; } = [];

    /// <summary>A check over three or more parts that is missing.</summary>
    public string? System { get; init; }

    /// <summary>A sum that is missing.</summary>
    public string? Sum { get; init; }

    /// <summary>How the library judges otherwise, and why.</summary>
    public Otherwise? Otherwise { get; init; }

    /// <summary>A standard, B maker, handbook or press, C community, D arithmetic, P common practice, M memory; of several sources the weakest where the table has no mark.</summary>
    public required string Confidence { get; init; }

    /// <summary>Titles and publishers.</summary>
    public required string Source { get; init; }

    /// <summary>The verdict that the run must give.</summary>
    public Verdict Expected => Otherwise?.Verdict ?? Runs ?? Verdict!.Value;
}

/// <summary>A judgement that differs from the row's.</summary>
/// <param name="Verdict">What the library says.</param>
/// <param name="Because">Why.</param>
/// <param name="Source">What that rests on.</param>
public sealed record Otherwise(Verdict Verdict, string Because, string Source);
