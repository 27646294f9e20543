namespace Lugwork.Planning;

/// <summary>One thing that a slot can hold: an offer, or nothing. Price in ten-thousandths, mass in milligrams.</summary>
internal readonly record struct ChoiceEntry(ChoiceOffer? Offer, long Price, long Mass)
{
    /// <summary>No price or mass that can be reached; sums of fifty of them do not overflow.</summary>
    public const long Never = long.MaxValue / 128;

    public Part? Part => Offer?.Judged;

    public bool IsEmpty => Offer is null;
}

/// <summary>Entries of one slot that no joint, wish or need can tell apart, in their order.</summary>
internal sealed class ChoiceGroup(ChoiceEntry first)
{
    public List<int> Entries { get; } = [];

    /// <summary>Any of them, to be read by the joints.</summary>
    public Part? Part { get; } = first.Part;
}
