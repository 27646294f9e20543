using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>A piece of the original text.</summary>
public readonly record struct SpecSpan
{
    internal SpecSpan(int start, int length)
    {
        Start = start;
        Length = length;
    }

    /// <summary>First character, from 0.</summary>
    public int Start { get; internal init; }

    /// <summary>Number of characters.</summary>
    public int Length { get; internal init; }

    /// <summary>Behind the last character.</summary>
    public int End => Start + Length;
}

/// <summary>How sure a value is that was read.</summary>
public enum SpecConfidence
{
    /// <summary>The words and figures name one value.</summary>
    Stated = 0,

    /// <summary>One value is left, but something was taken for granted that the text does not say.</summary>
    Assumed,
}

/// <summary>A value that was read from a line, with the words it came from.</summary>
public sealed class SpecValue
{
    internal SpecValue()
    {
    }

    /// <summary>The part.</summary>
    public required Slot Slot { get; init; }

    /// <summary>Key of its field in a build file: "seatTube".</summary>
    public required string Field { get; init; }

    /// <summary>Name of the value's type: "SeatTubeBore".</summary>
    public required string Type { get; init; }

    /// <summary>Canonical text of the value, its fit key: "27.2".</summary>
    public required string Key { get; init; }

    /// <summary>Where in the text it was read.</summary>
    public required SpecSpan Span { get; init; }

    /// <summary>The words it was read from, exact to the character.</summary>
    public required string Words { get; init; }

    /// <summary>How sure it is.</summary>
    public SpecConfidence Confidence => Assumed.IsEmpty ? SpecConfidence.Stated : SpecConfidence.Assumed;

    /// <summary>What was taken for granted; empty where nothing was.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>The value itself.</summary>
    /// <typeparam name="T">The type that <see cref="Type"/> names.</typeparam>
    /// <exception cref="FormatException">The value is of another type that does not read this key.</exception>
    public T As<T>()
        where T : IInterfaceValue<T> => T.Parse(Key, null);

    /// <summary>The same at another place of a longer text.</summary>
    internal SpecValue At(SpecSpan span, string words) => new() { Slot = Slot, Field = Field, Type = Type, Key = Key, Span = span, Words = words, Assumed = Assumed };

    /// <summary>"frame.seatTube = 27.2, from 'Seatpost: 27,2 mm'".</summary>
    public override string ToString() => $"{Slot.Key}.{Field} = {Key}, from '{Words}'";
}

/// <summary>Why something in a line was not accepted.</summary>
public enum SpecDoubtKind
{
    /// <summary>It can be several values, which are given.</summary>
    Ambiguous = 0,

    /// <summary>The line says two different things.</summary>
    Contradiction,

    /// <summary>No such value is known.</summary>
    Refused,

    /// <summary>It belongs to a family outside the library, or only the frame maker's own part goes there.</summary>
    OutsideTheLibrary,

    /// <summary>A figure is broken off, marked as doubtful or far too long.</summary>
    BrokenFigure,

    /// <summary>No interface is named, or no part is.</summary>
    NothingNamed,

    /// <summary>The line names no part, and no slot was given.</summary>
    NoPart,
}

/// <summary>Something in a line that was not accepted: what it can be, and why not.</summary>
public sealed class SpecDoubt
{
    internal SpecDoubt()
    {
    }

    /// <summary>What kind of doubt it is.</summary>
    public required SpecDoubtKind Kind { get; init; }

    /// <summary>The part; null where none is named.</summary>
    public Slot? Slot { get; init; }

    /// <summary>Key of the field; empty where it is of none.</summary>
    public string Field { get; init; } = "";

    /// <summary>The fit keys it can be; empty where it can be none.</summary>
    public ImmutableArray<string> Readings { get; init; } = [];

    /// <summary>The reason in plain words.</summary>
    public required string Reason { get; init; }

    /// <summary>Where in the text.</summary>
    public required SpecSpan Span { get; init; }

    /// <summary>The words, exact to the character.</summary>
    public required string Words { get; init; }

    /// <summary>The same at another place of a longer text.</summary>
    internal SpecDoubt At(SpecSpan span, string words) => new() { Kind = Kind, Slot = Slot, Field = Field, Readings = Readings, Reason = Reason, Span = span, Words = words };

    /// <summary>"frame.rear: 135 mm can be R135-QR, R135-10 (several hub standards share these figures)".</summary>
    public override string ToString() =>
        $"{(Slot is null ? "" : Slot.Key + (Field.Length > 0 ? "." + Field : "") + ": ")}'{Words}'{(Readings.IsEmpty ? "" : " can be " + string.Join(", ", Readings))} ({Reason})";
}
