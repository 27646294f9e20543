namespace Lugwork;

/// <summary>Whether what is known of a value is one value of a closed set, or may be it.</summary>
internal static class KnownValues
{
    /// <summary>It is known to be just that.</summary>
    public static bool Is<T>(this Known<T> known, T value)
        where T : class, IInterfaceValue<T> => known.State == KnownState.Value && ReferenceEquals(known.Value, value);

    /// <summary>It is not known to be something else.</summary>
    public static bool MayBe<T>(this Known<T> known, T value)
        where T : class, IInterfaceValue<T> => known.State == KnownState.Unknown || ListedValues.Has(known.Values, value);
}
