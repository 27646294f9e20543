using System.Globalization;

namespace Lugwork.Benchmarks;

/// <summary>One line of the table: a job, its peer, and the ratio it must keep.</summary>
/// <param name="Number">Number of the row; several lines may share one.</param>
/// <param name="Job">What is done.</param>
/// <param name="Peer">What it is measured against in the same run.</param>
/// <param name="Limit">The ratio, or the size.</param>
/// <param name="Kind">How the limit is meant.</param>
/// <param name="NoBytes">It must allocate nothing beside.</param>
internal sealed record Claim(string Number, string Job, string Peer, double Limit, LimitKind Kind, bool NoBytes = false)
{
    public string Target => Kind switch
    {
        LimitKind.AtMostTimes => Text($"at most {Limit:0.##}x") + (NoBytes ? ", 0 bytes" : ""),
        LimitKind.AtLeastFaster => Text($"at least {Limit:0.##}x faster") + (NoBytes ? ", 0 bytes" : ""),
        LimitKind.AtMostBytes => Text($"at most {Limit:0.##} bytes"),
        LimitKind.UnderMilliseconds => Text($"under {Limit:0.##} ms"),
        _ => Text($"under {Limit:0.##} MB"),
    };

    /// <summary>Whether one repeat keeps it.</summary>
    public bool Holds(Measured measured) =>
        measured.Missing is null
        && (!NoBytes || measured.Bytes == 0)
        && Kind switch
        {
            LimitKind.AtMostTimes or LimitKind.AtMostBytes => measured.Value <= Limit,
            LimitKind.AtLeastFaster => measured.Value >= Limit,
            _ => measured.Value < Limit,
        };

    public string Show(Measured measured) =>
        measured.Missing
        ?? (measured.IsAtLeast ? "at least " : "") + Kind switch
        {
            LimitKind.AtMostTimes => Text($"{measured.Value:0.00}x"),
            LimitKind.AtMostBytes => Text($"{measured.Value:0.0} bytes"),
            LimitKind.AtLeastFaster => measured.Value < 1 ? Text($"{measured.Value:0.00}x") : Text($"{measured.Value:0.0}x"),
            LimitKind.UnderMilliseconds => Text($"{measured.Value:0.000} ms"),
            _ => Text($"{measured.Value:0.000} MB"),
        } + (NoBytes && measured.Bytes != 0 ? Text($" {measured.Bytes} bytes") : "");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>How a limit is meant.</summary>
internal enum LimitKind
{
    /// <summary>Time of the library by time of the peer.</summary>
    AtMostTimes,

    /// <summary>Time of the peer by time of the library.</summary>
    AtLeastFaster,

    /// <summary>A number of bytes, without a peer.</summary>
    AtMostBytes,

    /// <summary>A size in millions of bytes, without a peer.</summary>
    UnderMegabytes,

    /// <summary>Milliseconds, without a peer.</summary>
    UnderMilliseconds,
}

/// <summary>What one repeat measured.</summary>
/// <param name="Value">The ratio of medians, or the size.</param>
/// <param name="Bytes">Bytes that the library allocated.</param>
/// <param name="Missing">Why nothing was measured; null where it was.</param>
internal readonly record struct Measured(double Value, long Bytes = 0, string? Missing = null)
{
    /// <summary>The peer was stopped before it ended: the ratio is no less than this.</summary>
    public bool IsAtLeast { get; init; }
}

/// <summary>One or more lines that are measured together.</summary>
internal interface IRow
{
    IReadOnlyList<Claim> Claims { get; }

    /// <summary>Proves that all candidates give the same answers, before anything is timed.</summary>
    /// <exception cref="InvalidOperationException">They do not.</exception>
    void Prove();

    /// <summary>One repeat: library and peer in turn. As many results as there are claims.</summary>
    IReadOnlyList<Measured> Measure(Effort effort);

    /// <summary>What is worth saying below the table; may be empty.</summary>
    string Note => "";
}

/// <summary>How long to measure.</summary>
internal enum Effort
{
    Short,
    Full,
}
