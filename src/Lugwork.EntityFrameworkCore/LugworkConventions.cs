using Lugwork.Hubs;
using Lugwork.Steering;
using Microsoft.EntityFrameworkCore;

namespace Lugwork.EntityFrameworkCore;

/// <summary>Interface values as columns.</summary>
public static class LugworkConventions
{
    /// <summary>The longest text of a value, in characters, and so the length of its column where the database has one. The longest key of the library is less than half of it, and every text is plain ASCII.</summary>
    public const int MostKeyLength = 64;

    /// <summary>
    /// Maps every interface value of the library, so that an entity has <c>SeatpostDiameter Diameter</c> and, where it may be unknown,
    /// <c>SeatpostDiameter? Diameter</c>. Call it in <c>ConfigureConventions</c> of the context; what a model says of a property later wins.
    /// </summary>
    /// <remarks>
    /// <see cref="Dimension"/>, <see cref="Load"/> and <see cref="FrameAngle"/> are stored as whole nanometres, grams and millionths of a
    /// degree in either form, so that a query may ask for a range. <see cref="AxleSize"/>, <see cref="HeadsetHalf"/> and
    /// <see cref="HeadsetPair"/> have no code and are stored as text in either form.
    /// </remarks>
    /// <param name="configuration">The conventions of a context.</param>
    /// <param name="stored">The form of all other values; the one that a table has stays its form for good.</param>
    /// <returns>The same conventions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such form.</exception>
    public static ModelConfigurationBuilder UseLugwork(this ModelConfigurationBuilder configuration, StoredAs stored = StoredAs.FitKey)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        if (stored is not (StoredAs.FitKey or StoredAs.FitCode))
        {
            throw new ArgumentOutOfRangeException(nameof(stored), stored, "fit key or fit code");
        }

        InterfaceValueList.Visit(new Columns(configuration, stored));
        Text<AxleSize>(configuration);
        Text<HeadsetHalf>(configuration);
        Text<HeadsetPair>(configuration);
        return configuration;
    }

    private static void Text<T>(ModelConfigurationBuilder configuration)
        where T : struct, IParsable<T>, IFormattable
    {
        configuration.Properties<T>().HaveConversion<CanonicalTextConverter<T>, InterfaceValueComparer<T>>().HaveMaxLength(MostKeyLength).AreUnicode(false);
        configuration.DefaultTypeMapping<T>().HasConversion<CanonicalTextConverter<T>>();
    }

    private sealed class Columns(ModelConfigurationBuilder configuration, StoredAs stored) : IInterfaceValueVisitor
    {
        public void Visit<T>()
            where T : IInterfaceValue<T>
        {
            // The mapping by default is that of a value in a query beside which no property stands.
            if (stored == StoredAs.FitCode || T.IsPlainLength || T.IsPlainMass || T.IsPlainAngle)
            {
                configuration.Properties<T>().HaveConversion<FitCodeConverter<T>, InterfaceValueComparer<T>>();
                configuration.DefaultTypeMapping<T>().HasConversion<FitCodeConverter<T>>();
            }
            else
            {
                configuration.Properties<T>().HaveConversion<FitKeyConverter<T>, InterfaceValueComparer<T>>().HaveMaxLength(MostKeyLength).AreUnicode(false);
                configuration.DefaultTypeMapping<T>().HasConversion<FitKeyConverter<T>>();
            }
        }
    }
}
