namespace Lugwork;

/// <summary>Where and why a text was refused. A literal and a number: a refusal costs nothing until someone asks for its words.</summary>
internal readonly struct Slip(string reason, int position)
{
    /// <summary>Why; null where the text was read.</summary>
    public string? Reason { get; } = reason;

    /// <summary>Where, from 0, counted in the units of the text: characters or bytes.</summary>
    public int Position { get; } = position;
}
