using UnitsNet;

namespace Lugwork.Planning;

/// <summary>A part that can be had for one slot: on a shop's list, in a box, or on the bicycle already.</summary>
/// <remarks>A part that suits two slots, such as a rotor, is offered once for each, and may then be taken for both: what is there only once says so by its <see cref="Item"/>.</remarks>
public sealed record ChoiceOffer
{
    private readonly Part _alone;

    /// <summary>A part for a slot.</summary>
    /// <param name="id">The offer's own id, such as a line of a list; told in errors and results.</param>
    /// <param name="slot">One of the part's places.</param>
    /// <param name="part">The part.</param>
    /// <exception cref="ArgumentException">The id is empty, or the part does not go to this slot.</exception>
    public ChoiceOffer(string id, Slot slot, Part part)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentNullException.ThrowIfNull(part);
        if (!part.Places.Contains(slot))
        {
            throw new ArgumentException($"{id}: a {part.GetType().Name} goes to {string.Join(" or ", part.Places)}, not to {slot}", nameof(slot));
        }

        Id = id;
        Slot = slot;
        Part = part;
        _alone = TakenWith.Alone(part, slot);
    }

    /// <summary>The offer's own id.</summary>
    public string Id { get; }

    /// <summary>The slot.</summary>
    public Slot Slot { get; }

    /// <summary>The part.</summary>
    public Part Part { get; }

    /// <summary>It is the part in its slot of the bicycle, and not one in a box.</summary>
    internal bool IsOnBicycle { get; init; }

    /// <summary>The part as it is chosen by: what one that is not on the bicycle states of a reading was read on another.</summary>
    internal Part Judged => IsOnBicycle ? Part : _alone;

    /// <summary>What it costs; null where that is not known, and then it is not chosen. An owned part costs nothing more.</summary>
    public Price? Price { get; init; }

    /// <summary>What it weighs; null where that is not known, and then it is not chosen where masses count.</summary>
    public Mass? Mass { get; init; }

    /// <summary>It is there already: it costs nothing, and of equal choices it comes first.</summary>
    public bool IsOwned { get; init; }

    /// <summary>
    /// Names a thing that is there once, such as the one tyre in a box: of offers for other slots with the same name, and of an owned part that has it by <see cref="ChoiceRequest.OwnedItems"/>,
    /// one is taken at most. Null, the default: there are as many as are asked for. Things with names are told apart, which takes longer than a shop's list without.
    /// </summary>
    public string? Item { get; init; }

    /// <summary>
    /// Names an article that fills more than one slot, such as a dropper, which is a seatpost too: it is offered for each of them under one name, and is taken for all of them or not at all. What
    /// it costs and weighs is the sum of its offers. Null, the default, for what fills one slot.
    /// </summary>
    public string? Article { get; init; }

    /// <summary>The same offer: id, slot, part, price, mass to the gram and all that is said of it.</summary>
    /// <param name="other">Another.</param>
    public bool Equals(ChoiceOffer? other) =>
        other is not null && Id == other.Id && Slot == other.Slot && Price == other.Price && IsOwned == other.IsOwned && Item == other.Item && Article == other.Article
        && Grams(Mass) == Grams(other.Mass) && Part == other.Part;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Slot, IsOwned);

    internal static long? Grams(Mass? mass) => mass is { } known ? (long)Math.Round(known.Grams) : null;

    /// <summary>"Seatpost A-0412 (seatpost, 24.90 EUR)".</summary>
    public override string ToString() => $"{Id} ({Slot.Name}{(IsOwned ? ", owned" : Price is { } price ? $", {price}" : ", no price")})";
}

/// <summary>What a bridge costs: an adapter, a shim, spacers, or shop work.</summary>
/// <param name="BridgeId">Id of the bridge, as <see cref="Bridge.Id"/> gives it.</param>
/// <param name="Price">Its price, not negative.</param>
public sealed record ChoiceBridgePrice(string BridgeId, Price Price)
{
    /// <summary>What it weighs; null where that is not known, and then it is not chosen where masses count.</summary>
    public Mass? Mass { get; init; }

    /// <summary>The same bridge at the same price, and of the same mass to the gram.</summary>
    /// <param name="other">Another.</param>
    public bool Equals(ChoiceBridgePrice? other) => other is not null && BridgeId == other.BridgeId && Price == other.Price && ChoiceOffer.Grams(Mass) == ChoiceOffer.Grams(other.Mass);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(BridgeId, Price);
}
