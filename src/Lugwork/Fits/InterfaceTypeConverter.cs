using System.ComponentModel;
using System.Globalization;

namespace Lugwork;

/// <summary>An interface value from and to text, for what binds by type converters, such as configuration. Every interface value names it, so that nothing has to be registered.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public sealed class InterfaceTypeConverter<T> : TypeConverter
    where T : IInterfaceValue<T>
{
    /// <summary>Text can be read.</summary>
    /// <param name="context">Not used.</param>
    /// <param name="sourceType">From what.</param>
    public override bool CanConvertFrom(ITypeDescriptorContext? context, Type sourceType) => sourceType == typeof(string) || base.CanConvertFrom(context, sourceType);

    /// <summary>The value that a text is, the same in every culture.</summary>
    /// <param name="context">Not used.</param>
    /// <param name="culture">Not used.</param>
    /// <param name="value">The text.</param>
    /// <exception cref="FormatException">It is not one value; with the reason, the place and its readings.</exception>
    /// <exception cref="NotSupportedException">It is no text.</exception>
    public override object? ConvertFrom(ITypeDescriptorContext? context, CultureInfo? culture, object value) =>
        value is string text ? InterfaceText.Parse<T>(text) : base.ConvertFrom(context, culture, value);

    /// <summary>The key of a value, the same in every culture; empty for null.</summary>
    /// <param name="context">Not used.</param>
    /// <param name="culture">Not used.</param>
    /// <param name="value">The value.</param>
    /// <param name="destinationType">To what; text is known.</param>
    /// <exception cref="NotSupportedException">Another type is asked for, or it is a default, which is no value.</exception>
    public override object? ConvertTo(ITypeDescriptorContext? context, CultureInfo? culture, object? value, Type destinationType)
    {
        if (destinationType != typeof(string) || value is not T known)
        {
            return base.ConvertTo(context, culture, value, destinationType);
        }

        return known.FitCode > 0 ? known.FitKey : throw new NotSupportedException($"A default is not a {T.Called}.");
    }
}
