using System.Runtime.CompilerServices;

namespace Lugwork;

/// <summary>What one input of a joint can be: integer codes only, so that judging allocates nothing.</summary>
internal readonly struct Candidates(KnownState state, long low, long high, long[]? codes)
{
    public KnownState State { get; } = state;

    public long Low { get; } = low;

    public long High { get; } = high;

    public long[]? Codes { get; } = codes;

    /// <summary>Only the frame maker's own, or outside the library: completed like an unknown, and yet never a fit.</summary>
    public bool IsOutside => State.IsOutside();

    /// <summary>One value is left (none counts as the value 0).</summary>
    public bool IsSettled => State is KnownState.Value or KnownState.None || (State == KnownState.Measured && Low == High);
}

/// <summary>The inputs of one joint.</summary>
[InlineArray(Joint.MostInputs)]
internal struct CandidateRow
{
    private Candidates _first;
}
