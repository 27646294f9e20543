using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Lugwork;

/// <summary>How much is known of a property.</summary>
public enum KnownState
{
    /// <summary>Nothing is known. The default.</summary>
    Unknown = 0,

    /// <summary>The part has none: a frame without disc tabs, a maker that prints no limit.</summary>
    None,

    /// <summary>One value.</summary>
    Value,

    /// <summary>One of several values.</summary>
    OneOf,

    /// <summary>A measured length with its error; matches every nominal size within the error.</summary>
    Measured,

    /// <summary>Only the frame maker's own part goes here: an integrated front end, an aero seatpost. No fit with any other, and nothing to measure.</summary>
    FrameSpecific,

    /// <summary>A family outside this library: motor mounts, cargo, what a maker keeps to itself. No fit, and nothing to measure: its maker has to be asked.</summary>
    NotCovered,
}

/// <summary>How a value came to be known.</summary>
public enum EvidenceKind
{
    /// <summary>Printed or said by someone.</summary>
    Stated = 0,

    /// <summary>Measured on the part.</summary>
    Measured,

    /// <summary>Taken for granted.</summary>
    Assumed,
}

/// <summary>Where a value came from.</summary>
/// <param name="Kind">Stated, measured or assumed.</param>
/// <param name="Words">The words it was read from; empty where it was given as a value.</param>
public sealed record Evidence(EvidenceKind Kind, string Words)
{
    internal static Evidence AsValue { get; } = new(EvidenceKind.Stated, "");

    /// <summary>It was measured or cut on a bicycle, and that bicycle remembers it.</summary>
    internal bool IsAsBuilt { get; init; }
}

/// <summary>What is known of a property, made without naming its type: <c>Known.Of(SeatpostDiameter.OfMillimetres(27.2m))</c>.</summary>
public static class Known
{
    /// <summary>One value is known, stated by whoever says so.</summary>
    /// <typeparam name="T">An interface value.</typeparam>
    /// <param name="value">The value.</param>
    /// <exception cref="ArgumentException">The value is a default, which is no value.</exception>
    public static Known<T> Of<T>(T value)
        where T : IInterfaceValue<T> => Known<T>.Of(value);
}

/// <summary>A property that may be unknown, absent, one value, one of several, or measured. The default is unknown.</summary>
/// <typeparam name="T">An interface value.</typeparam>
public readonly struct Known<T> : IEquatable<Known<T>>
    where T : IInterfaceValue<T>
{
    internal const int MostValues = 80;

    private readonly T? _value;
    private readonly long[]? _codes;
    private readonly long _low;
    private readonly long _high;

    private Known(KnownState state, T? value, long[]? codes, long low, long high, Evidence? evidence)
    {
        State = state;
        _value = value;
        _codes = codes;
        _low = low;
        _high = high;
        Evidence = evidence;
    }

    /// <summary>Nothing is known.</summary>
    public static Known<T> Unknown => default;

    /// <summary>The part has none.</summary>
    public static Known<T> None => new(KnownState.None, default, null, 0, 0, null);

    /// <summary>Only the frame maker's own part goes here. Never a fit, never to be measured.</summary>
    public static Known<T> FrameSpecific => Outside(KnownState.FrameSpecific, Lugwork.Evidence.AsValue);

    /// <summary>A family outside this library; its maker has to be asked. Never a fit, never to be measured.</summary>
    public static Known<T> NotCovered => Outside(KnownState.NotCovered, Lugwork.Evidence.AsValue);

    /// <summary>How much is known.</summary>
    public KnownState State { get; }

    /// <summary>The family outside the library that was named; null where none was.</summary>
    public OutsideFamily? Family => State.IsOutside() && _low > 0 ? OutsideFamily.OfFitCode(_low) : null;

    /// <summary>Where it came from; null where nothing is known.</summary>
    public Evidence? Evidence { get; }

    /// <summary>The value, where exactly one is known.</summary>
    /// <exception cref="InvalidOperationException">It is unknown, none, one of several, or outside the library.</exception>
    public T Value => State == KnownState.Value ? _value! : throw new InvalidOperationException($"The {T.Called} is {this}, not one value.");

    /// <summary>The value, where exactly one is known.</summary>
    /// <param name="value">The value; a default where false is returned.</param>
    public bool TryGetValue([MaybeNullWhen(false)] out T value)
    {
        value = _value;
        return State == KnownState.Value;
    }

    /// <summary>What was measured of a plain length, with its error; null where it was not measured, or where a nominal size came of it.</summary>
    public MeasuredLength? Reading => State != KnownState.Measured ? null
        : MeasuredLength.OfMillimetres((_low + _high) / 2m / Nanometres.PerMillimetre, (_high - _low) / 2m / Nanometres.PerMillimetre);

    /// <summary>Every value it can be; empty where unknown, none, a measured plain length, or outside the library.</summary>
    public ImmutableArray<T> Values
    {
        get
        {
            if (State == KnownState.Value)
            {
                return [_value!];
            }

            return _codes is null ? [] : ListedValues.OfCodes<T>(_codes);
        }
    }

    /// <summary>One value is known.</summary>
    /// <param name="value">The value.</param>
    /// <param name="evidence">Where it came from; stated, where left out.</param>
    /// <exception cref="ArgumentException">The value is a default, which is no value.</exception>
    public static Known<T> Of(T value, Evidence? evidence = null)
    {
        if (value is null || value.FitCode <= 0)
        {
            throw new ArgumentException($"a default is not a {T.Called}", nameof(value));
        }

        return new(KnownState.Value, value, null, value.FitCode, value.FitCode, evidence ?? Lugwork.Evidence.AsValue);
    }

    /// <summary>It is one of several. One alone is that value; the order does not matter.</summary>
    /// <param name="values">At least one value; repeated ones count once.</param>
    /// <param name="evidence">Where it came from.</param>
    /// <exception cref="ArgumentException">There is no value, or one is a default, or there are more than 80.</exception>
    public static Known<T> OneOf(ImmutableArray<T> values, Evidence? evidence = null)
    {
        if (values.IsDefaultOrEmpty)
        {
            throw new ArgumentException("at least one value is needed", nameof(values));
        }

        if (values.Length == 1)
        {
            return Of(values[0], evidence);
        }

        List<long> codes = [];
        foreach (T value in values)
        {
            long code = Of(value)._low;
            int at = codes.BinarySearch(code);
            if (at < 0)
            {
                codes.Insert(~at, code);
            }
        }

        if (codes.Count > MostValues)
        {
            throw new ArgumentException($"at most {MostValues} values; say unknown instead", nameof(values));
        }

        return codes.Count == 1
            ? Of(values[0], evidence)
            : new(KnownState.OneOf, default, [.. codes], codes[0], codes[^1], evidence ?? Lugwork.Evidence.AsValue);
    }

    /// <summary>It was measured: every nominal size within the error is possible; where none is, the measured size itself.</summary>
    /// <param name="millimetres">What was read, millimetres; above zero and at most 100,000.</param>
    /// <param name="error">How far it may be out to either side, millimetres; 0 to 1,000.</param>
    /// <param name="words">The words it was read from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range, or no value of this kind has such a size.</exception>
    public static Known<T> Measured(decimal millimetres, decimal error, string words = "")
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(millimetres, 0.000001m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(millimetres, 100_000m);
        ArgumentOutOfRangeException.ThrowIfNegative(error);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(error, 1_000m);
        Evidence evidence = new(EvidenceKind.Measured, words.Length > 0 ? words : FormattableString.Invariant($"{millimetres} \u00B1 {error} mm"));
        if (T.IsPlainLength)
        {
            long high = Nanometres.OfMillimetres(millimetres + error).Value;
            long low = Math.Max(2 - (high & 1), Nanometres.OfMillimetres(millimetres - error).Value);
            return new(KnownState.Measured, default, null, low, high, evidence);
        }

        ImmutableArray<T> near = T.WithinError(millimetres, error);
        if (near.IsEmpty)
        {
            throw new ArgumentOutOfRangeException(nameof(millimetres), millimetres, $"no {T.Called} is within {error} mm of this");
        }

        return OneOf(near, evidence);
    }

    /// <summary>It was measured: every nominal size within the error is possible; where none is, the measured size itself.</summary>
    /// <param name="reading">What was read, and how far it may be out.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is the default, or no value of this kind has such a size.</exception>
    public static Known<T> Measured(MeasuredLength reading) => Measured(reading.Millimetres, reading.ErrorMillimetres);

    /// <summary>It is of a family outside the library, which is named: frame-specific or not covered, as the family is.</summary>
    /// <param name="family">The family.</param>
    /// <param name="evidence">Where it came from; stated, where left out.</param>
    public static Known<T> OfFamily(OutsideFamily family, Evidence? evidence = null)
    {
        ArgumentNullException.ThrowIfNull(family);
        return Outside(family.State, evidence ?? Lugwork.Evidence.AsValue, family);
    }

    /// <summary>The code of the family stands where that of a value would: no joint reads it, what is told does.</summary>
    internal static Known<T> Outside(KnownState state, Evidence evidence, OutsideFamily? family = null) =>
        new(state, default, null, family?.FitCode ?? 0, family?.FitCode ?? 0, evidence);

    /// <summary>Same state and same values; evidence does not count.</summary>
    /// <param name="other">Another.</param>
    public bool Equals(Known<T> other) =>
        State == other.State && _low == other._low && _high == other._high
        && (_codes ?? []).AsSpan().SequenceEqual(other._codes ?? []);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Known<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(State, _low, _high);

    /// <summary>Same state and same values.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator ==(Known<T> left, Known<T> right) => left.Equals(right);

    /// <summary>Another state or other values.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">Another.</param>
    public static bool operator !=(Known<T> left, Known<T> right) => !left.Equals(right);

    /// <summary>"27.2", "27 | 27.2", "135 ± 0.5", "none", "frame-specific", "not covered", the key of a family that is one of the two ("motor-mount"), or "unknown". Reads back to the same knowledge.</summary>
    public override string ToString()
    {
        switch (State)
        {
            case KnownState.None:
                return "none";
            case KnownState.Value:
                return _value!.FitKey;
            case KnownState.OneOf:
                return string.Join(" | ", ListedValues.Keys(Values));
            case KnownState.Measured:
                decimal half = (_high - _low) / 2m / Nanometres.PerMillimetre;
                decimal middle = (_low + _high) / 2m / Nanometres.PerMillimetre;
                return FormattableString.Invariant($"{middle:0.######} \u00B1 {half:0.######}");
            case KnownState.FrameSpecific:
            case KnownState.NotCovered:
                return Family?.FitKey ?? KnownStates.InWords(State);
            default:
                return "unknown";
        }
    }

    /// <summary>As <see cref="ToString"/>, in the trade's names where there are such.</summary>
    internal string InTradeWords() => State switch
    {
        KnownState.Value => _value!.ToString("T", null),
        KnownState.OneOf => OneOrOther(),
        _ => Family is { } family ? $"{family.TradeName} ({KnownStates.InWords(State)})" : ToString(),
    };

    private string OneOrOther()
    {
        string[] names = new string[_codes!.Length];
        for (int i = 0; i < names.Length; i++)
        {
            names[i] = T.OfFitCode(_codes[i]).ToString("T", null);
        }

        return string.Join(" or ", names);
    }

    /// <summary>What the row of the one known value rests on; null where there is no one value or no row.</summary>
    internal Source? Row => State == KnownState.Value && _value is IRow row ? row.Source : null;

    /// <summary>The same with other evidence; what is unknown or none has none.</summary>
    internal Known<T> With(Evidence evidence) => State is KnownState.Unknown or KnownState.None ? this : new(State, _value, _codes, _low, _high, evidence);

    /// <summary>All that is known as one number; what is no single value is numbered.</summary>
    internal long Packed(OtherCodes others) => State switch
    {
        KnownState.Value => _low,
        KnownState.Unknown => 0,
        _ => others.Of(ToCandidates()),
    };

    internal void ToCandidates(ref Candidates into) => into = new(State, _low, _high, _codes);

    internal Candidates ToCandidates() => new(State, _low, _high, _codes);

    /// <summary>The knowledge of which these codes are, as they were stored. Its evidence is not stored: stated, or measured where it is a range.</summary>
    /// <exception cref="ArgumentException">A code stands for no value, or the codes are no such knowledge.</exception>
    internal static Known<T> OfCandidates(in Candidates codes)
    {
        switch (codes.State)
        {
            case KnownState.Unknown:
                return default;
            case KnownState.None:
                return None;
            case KnownState.Value:
                return Of(T.OfFitCode(codes.Low));
            case KnownState.OneOf when codes.Codes is { Length: > 1 } several:
                return OneOf(ListedValues.OfCodes<T>(several));
            case KnownState.Measured when T.IsPlainLength && codes.Low > 0 && codes.Low <= codes.High:
                Evidence evidence = new(EvidenceKind.Measured, "");
                return new(KnownState.Measured, default, null, T.OfFitCode(codes.Low).FitCode, T.OfFitCode(codes.High).FitCode, evidence);
            case KnownState.FrameSpecific or KnownState.NotCovered when codes.Low == 0 || OutsideFamily.OfFitCode(codes.Low).State == codes.State:
                return Outside(codes.State, Lugwork.Evidence.AsValue, codes.Low == 0 ? null : OutsideFamily.OfFitCode(codes.Low));
            default:
                throw new ArgumentException($"no {T.Called} is stored like this", nameof(codes));
        }
    }

    /// <summary>The same knowledge of a value that follows from this one, such as a tyre's width from its size.</summary>
    internal Candidates ToCandidates(Func<T, long> from)
    {
        if (State == KnownState.Value)
        {
            long code = from(_value!);
            return new(State, code, code, null);
        }

        return State == KnownState.OneOf ? SeveralFrom(from) : new(State, _low, _high, null);
    }

    private Candidates SeveralFrom(Func<T, long> from)
    {
        SortedSet<long> each = [];
        foreach (T value in Values)
        {
            each.Add(from(value));
        }

        long[] codes = [.. each];
        return codes.Length == 1 ? new(KnownState.Value, codes[0], codes[0], null) : new(KnownState.OneOf, codes[0], codes[^1], codes);
    }
}
