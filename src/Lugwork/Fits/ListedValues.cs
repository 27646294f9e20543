using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Lugwork;

/// <summary>
/// Lists of interface values, by loops. A query or a lambda over any of the ninety types would leave static fields for each of them, and a native program makes all of
/// these before its first line.
/// </summary>
internal static class ListedValues
{
    /// <summary>The values of which it holds; all of them where nothing is asked.</summary>
    public static ImmutableArray<T> Where<T>(ImmutableArray<T> values, Func<T, bool>? where)
    {
        if (where is null)
        {
            return values;
        }

        T[] held = new T[values.Length];
        int count = 0;
        foreach (T value in values)
        {
            if (where(value))
            {
                held[count++] = value;
            }
        }

        Array.Resize(ref held, count);
        return ImmutableCollectionsMarshal.AsImmutableArray(held);
    }

    /// <summary>It is one of them.</summary>
    public static bool Has<T>(ImmutableArray<T> values, T value)
        where T : class, IInterfaceValue<T>
    {
        foreach (T one in values)
        {
            if (ReferenceEquals(one, value))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Their keys.</summary>
    public static ImmutableArray<string> Keys<T>(ImmutableArray<T> values)
        where T : IInterfaceValue<T>
    {
        string[] keys = new string[values.Length];
        for (int i = 0; i < keys.Length; i++)
        {
            keys[i] = values[i].FitKey;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(keys);
    }

    /// <summary>The values of which these are the codes.</summary>
    public static ImmutableArray<T> OfCodes<T>(long[] codes)
        where T : IInterfaceValue<T>
    {
        T[] values = new T[codes.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = T.OfFitCode(codes[i]);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(values);
    }
}
