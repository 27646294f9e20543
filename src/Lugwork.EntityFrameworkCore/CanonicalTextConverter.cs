using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Lugwork.EntityFrameworkCore;

/// <summary>A value without fit key, such as an axle size or a headset pair, as its canonical text, and back.</summary>
/// <remarks>Text that is no such value is a <see cref="FormatException"/> of the query that reads it; the default, which is no value, is an <see cref="InvalidOperationException"/> of the save.</remarks>
/// <typeparam name="T">A value that reads and writes itself.</typeparam>
public sealed class CanonicalTextConverter<T> : ValueConverter<T, string>
    where T : struct, IParsable<T>, IFormattable
{
    /// <summary>The converter. It holds nothing.</summary>
    public CanonicalTextConverter()
        : base(value => Write(value), text => Read(text))
    {
    }

    private static T Read(string text) => T.Parse(text, null);

    private static string Write(T value) =>
        value.Equals(default(T)) ? throw FitKeyConverter<Dimension>.NoValue(typeof(T).Name) : value.ToString(null, null);
}
