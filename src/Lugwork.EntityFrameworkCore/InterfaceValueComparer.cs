using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace Lugwork.EntityFrameworkCore;

/// <summary>Tells whether a value was changed: by the value's own equality. Values never change, so that a snapshot is the value itself.</summary>
/// <typeparam name="T">A value of the library.</typeparam>
public sealed class InterfaceValueComparer<T> : ValueComparer<T>
{
    /// <summary>The comparer. It holds nothing.</summary>
    public InterfaceValueComparer()
        : base((left, right) => EqualityComparer<T>.Default.Equals(left, right), value => value == null ? 0 : value.GetHashCode(), value => value)
    {
    }
}
