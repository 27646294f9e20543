using System.Collections.Immutable;

namespace Lugwork;

/// <summary>One typed standard or dimension at which a part meets another.</summary>
/// <remarks>
/// Formats: "G" or none is the key, "T" the trade name; "M" (millimetres) and "I" (inches: a fraction down to 1/64 where it is exact,
/// otherwise three places) where the value has one main diameter or width. Any other is refused with a <see cref="FormatException"/>.
/// The text is the same in every culture. The library's own types are all there are: members are added in minor versions, and a type
/// outside the library that implements it is not supported.
/// </remarks>
/// <typeparam name="TSelf">The type itself.</typeparam>
public interface IInterfaceValue<TSelf> : ISpanParsable<TSelf>, ISpanFormattable
    where TSelf : IInterfaceValue<TSelf>
{
    /// <summary>Canonical text; also the fit key for a database column. Parses back to the same value.</summary>
    string FitKey { get; }

    /// <summary>Stable positive integer code of the value; zero is never a value.</summary>
    long FitCode { get; }

    /// <summary>Every value of a closed set, or the nominal sizes of an open dimension; empty for a plain length.</summary>
    static abstract ImmutableArray<TSelf> All { get; }

    /// <summary>A plain length without nominal sizes, judged against limits.</summary>
    static virtual bool IsPlainLength => false;

    /// <summary>A plain mass without nominal sizes, judged against limits.</summary>
    static virtual bool IsPlainMass => false;

    /// <summary>A plain angle without nominal sizes, judged against limits.</summary>
    static virtual bool IsPlainAngle => false;

    /// <summary>What the value is called: "seatpost diameter".</summary>
    static abstract string Called { get; }

    /// <summary>Reads text tolerantly and keeps doubt: one value, several readings, or a reason.</summary>
    /// <param name="text">Any text.</param>
    static abstract TextReading<TSelf> Read(ReadOnlySpan<char> text);

    /// <summary>The value with this integer code.</summary>
    /// <param name="code">A code from <see cref="FitCode"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">No value has that code.</exception>
    static abstract TSelf OfFitCode(long code);

    /// <summary>The nominal values that a measurement could mean, given how far it may be out.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    static virtual ImmutableArray<TSelf> WithinError(decimal millimetres, decimal error) => [];
}

/// <summary>What a text was read as: one value, several readings, or none with the reason. The default is a refusal.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public readonly struct TextReading<T>
{
    private readonly ImmutableArray<T> _values;
    private readonly string? _reason;

    private Reading(ImmutableArray<T> values, string? reason, int position)
    {
        _values = values;
        _reason = reason;
        Position = position;
    }

    /// <summary>All readings; one where the text is clear, none where it was refused.</summary>
    public ImmutableArray<T> Values => _values.IsDefault ? [] : _values;

    /// <summary>Why the text was refused or is ambiguous; empty where one value was read.</summary>
    public string Reason => _reason ?? (Values.Length == 1 ? "" : "nothing was read");

    /// <summary>Where in the text, from 0.</summary>
    public int Position { get; }

    /// <summary>Exactly one value was read.</summary>
    public bool IsClear => Values.Length == 1;

    internal static TextReading<T> Of(T value) => new([value], null, 0);

    internal static TextReading<T> Several(ImmutableArray<T> values, string reason) => new(values, reason, 0);

    internal static TextReading<T> Refused(string reason, int position = 0) => new([], reason, position);

    internal static TextReading<T> Refused(Slip slip) => new([], slip.Reason, slip.Position);
}
