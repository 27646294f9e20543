using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Lugwork.EntityFrameworkCore;

/// <summary>An interface value as its fit code, and back: nanometres of a length, grams of a mass, millionths of a degree of an angle, the number of a row in a closed set.</summary>
/// <remarks>
/// A code that stands for nothing is an <see cref="ArgumentOutOfRangeException"/> of the query that reads it; the default of a size,
/// which is no size, is an <see cref="InvalidOperationException"/> of the save. What is not known is null.
/// </remarks>
/// <typeparam name="T">An interface value.</typeparam>
public sealed class FitCodeConverter<T> : ValueConverter<T, long>
    where T : IInterfaceValue<T>
{
    /// <summary>The converter. It holds nothing.</summary>
    public FitCodeConverter()
        : base(value => Write(value), code => Read(code))
    {
    }

    private static T Read(long code) => T.OfFitCode(code);

    private static long Write(T value) => value.FitCode is > 0 and long code ? code : throw FitKeyConverter<T>.NoValue(T.Called);
}
