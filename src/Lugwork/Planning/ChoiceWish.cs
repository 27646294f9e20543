using UnitsNet;

namespace Lugwork.Planning;

/// <summary>Something that the part in one slot has to be, said over its typed interface values. A wish about a slot also asks that there is a part in it.</summary>
/// <remarks>What is not known never meets a wish over values: it is met where all that the value can be meets it.</remarks>
public sealed class ChoiceWish
{
    private readonly Func<Part, bool> _met;

    private ChoiceWish(Slot slot, string name, Func<Part, bool> met, bool keeps = false)
    {
        Slot = slot;
        Name = name;
        _met = met;
        Keeps = keeps;
    }

    /// <summary>The slot that it is about.</summary>
    public Slot Slot { get; }

    /// <summary>Its name, by which it is told where it cannot be met: "dropper of at least 170 mm".</summary>
    public string Name { get; }

    /// <summary>Only the owned part will do.</summary>
    internal bool Keeps { get; }

    internal bool IsMetBy(Part part) => _met(part);

    /// <summary>Anything that can be said of the typed part.</summary>
    /// <typeparam name="TPart">The kind of part in the slot.</typeparam>
    /// <param name="slot">The slot.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="met">Whether a part will do; it has to answer the same each time.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static ChoiceWish That<TPart>(Slot slot, string name, Func<TPart, bool> met)
        where TPart : Part
    {
        ArgumentNullException.ThrowIfNull(slot);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(met);
        return new(slot, name, p => p is TPart part && met(part));
    }

    /// <summary>An interface value that meets a condition; where it is one of several, all of them do. Unknown, none, a measured plain length and what is outside the library do not.</summary>
    /// <typeparam name="TPart">The kind of part in the slot.</typeparam>
    /// <typeparam name="TValue">The interface value.</typeparam>
    /// <param name="slot">The slot.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="field">The interface of the part.</param>
    /// <param name="met">Whether a value will do.</param>
    public static ChoiceWish Of<TPart, TValue>(Slot slot, string name, Func<TPart, Known<TValue>> field, Func<TValue, bool> met)
        where TPart : Part
        where TValue : IInterfaceValue<TValue>
    {
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(met);
        return That<TPart>(slot, name, p => field(p).Values is { IsEmpty: false } values && values.All(met));
    }

    /// <summary>A length of at least so much; where it was measured, at the lower end of what it can be.</summary>
    /// <typeparam name="TPart">The kind of part in the slot.</typeparam>
    /// <param name="slot">The slot.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="field">The length of the part.</param>
    /// <param name="least">The least length that will do.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is none: it is above 0 and at most 100 m.</exception>
    public static ChoiceWish AtLeast<TPart>(Slot slot, string name, Func<TPart, Known<Dimension>> field, Length least)
        where TPart : Part
    {
        ArgumentNullException.ThrowIfNull(field);
        long limit = Dimension.Of(least).FitCode;
        return That<TPart>(slot, name, p => Ends(field(p)) is { } ends && ends.Low >= limit);
    }

    /// <summary>A length of at most so much; where it was measured, at the upper end of what it can be.</summary>
    /// <typeparam name="TPart">The kind of part in the slot.</typeparam>
    /// <param name="slot">The slot.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="field">The length of the part.</param>
    /// <param name="most">The greatest length that will do.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is none: it is above 0 and at most 100 m.</exception>
    public static ChoiceWish AtMost<TPart>(Slot slot, string name, Func<TPart, Known<Dimension>> field, Length most)
        where TPart : Part
    {
        ArgumentNullException.ThrowIfNull(field);
        long limit = Dimension.Of(most).FitCode;
        return That<TPart>(slot, name, p => Ends(field(p)) is { } ends && ends.High <= limit);
    }

    /// <summary>There is a part in the slot, whichever.</summary>
    /// <param name="slot">The slot.</param>
    public static ChoiceWish Filled(Slot slot) => That<Part>(slot, $"a {slot?.Name}", _ => true);

    /// <summary>The owned part stays in its slot.</summary>
    /// <param name="slot">The slot.</param>
    public static ChoiceWish Keep(Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        return new(slot, $"keep the {slot.Name}", _ => true, keeps: true);
    }

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    private static (long Low, long High)? Ends(Known<Dimension> known) =>
        known.State is KnownState.Value or KnownState.OneOf or KnownState.Measured && known.ToCandidates() is var candidates ? (candidates.Low, candidates.High) : null;
}
