using System.Collections.Immutable;

namespace Lugwork;

/// <summary>What the schema of a build file says of a field's values.</summary>
/// <param name="Shape">The definition by which it is written, which tells the kinds of JSON that reading takes.</param>
/// <param name="Keys">Canonical texts to offer; empty where there is nothing to list.</param>
/// <param name="IsClosed">The keys are the whole set, not the usual sizes of an open one.</param>
internal sealed record FieldValues(string Shape, ImmutableArray<string> Keys, bool IsClosed)
{
    /// <summary>Text, a number, null or a list, never looked into.</summary>
    public const string AnyText = "text";

    /// <summary>An interface value in any state of knowledge.</summary>
    public const string AnyValue = "value";

    /// <summary>A plain length in any state of knowledge.</summary>
    public const string AnyLength = "length";

    /// <summary>A plain mass in any state of knowledge.</summary>
    public const string AnyMass = "mass";

    /// <summary>A plain angle in any state of knowledge.</summary>
    public const string AnyAngle = "angle";

    /// <summary>Words that no number alone can say, and that are not unknown.</summary>
    public const string OnlyWords = "words";

    public static FieldValues Text { get; } = new(AnyText, [], false);

    /// <summary>The same as it is asked for.</summary>
    public static Func<FieldValues> AsText { get; } = () => Text;

    public static FieldValues Words { get; } = new(OnlyWords, [], false);

    /// <summary>Of an interface value: a closed set is a class, an open dimension a struct.</summary>
    public static FieldValues Of<T>(Func<T, bool>? where)
        where T : IInterfaceValue<T> => new(
            T.IsPlainLength ? AnyLength : T.IsPlainMass ? AnyMass : T.IsPlainAngle ? AnyAngle : AnyValue,
            ListedValues.Keys(ListedValues.Where(T.All, where)),
            !typeof(T).IsValueType);
}

/// <summary>A field of any kind of part, as the schema sees it.</summary>
internal interface IPartField
{
    string Key { get; }

    ImmutableArray<string> Sets { get; }

    /// <summary>Words that may stand before the value in the short form.</summary>
    ImmutableArray<string> Words { get; }

    /// <summary>It may stand beside the fields that it sets.</summary>
    bool Rough { get; }

    string Expected { get; }

    /// <summary>It holds a value of its own and does not say those of others.</summary>
    bool HasOwnValue { get; }

    /// <summary>Asked for by the schema alone, so that a check never pays for it.</summary>
    Func<FieldValues> Values { get; }

    /// <summary>The interface type that it holds; null for one that only sets others.</summary>
    FieldType? Type { get; }
}

/// <summary>The interface type of a field: what it is called and how one value of it is read.</summary>
/// <param name="Name">Name of the type: "SeatTubeBore".</param>
/// <param name="Called">What a value is called: "seat-tube bore".</param>
/// <param name="Read">Reads text; several keys where it is ambiguous, none with the reason where it is refused.</param>
internal sealed record FieldType(string Name, string Called, Func<string, FieldReading> Read)
{
    public static FieldType Of<T>(Func<T, bool>? where)
        where T : IInterfaceValue<T> => new(typeof(T).Name, T.Called, text =>
        {
            TextReading<T> reading = T.Read(text);
            ImmutableArray<T> values = ListedValues.Where(reading.Values, where);
            return new(ListedValues.Keys(values), values.IsEmpty && !reading.Values.IsEmpty ? "this one does not go here" : reading.Reason);
        });
}

/// <summary>What a field read: the keys of its readings, and the reason where there is not one.</summary>
internal readonly record struct FieldReading(ImmutableArray<string> Keys, string Reason);
