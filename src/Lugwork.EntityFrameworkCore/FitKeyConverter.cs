using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Lugwork.EntityFrameworkCore;

/// <summary>An interface value as its fit key, and back.</summary>
/// <remarks>
/// Written canonical, read as the library reads: a column that others fill may say "27,2", but a query by "27.2" does not find it.
/// Text that is no such value is a <see cref="FormatException"/> of the query that reads it; the default of a size, which is no size,
/// is an <see cref="InvalidOperationException"/> of the save. What is not known is null.
/// </remarks>
/// <typeparam name="T">An interface value.</typeparam>
public sealed class FitKeyConverter<T> : ValueConverter<T, string>
    where T : IInterfaceValue<T>
{
    /// <summary>The converter. It holds nothing.</summary>
    public FitKeyConverter()
        : base(value => Write(value), text => Read(text))
    {
    }

    private static T Read(string text) => T.Parse(text, null);

    private static string Write(T value) => value.FitCode > 0 ? value.FitKey : throw NoValue(T.Called);

    internal static InvalidOperationException NoValue(string called) =>
        new($"the default of a {called} is no {called} and is not stored; what is not known is null, in a nullable property");
}
