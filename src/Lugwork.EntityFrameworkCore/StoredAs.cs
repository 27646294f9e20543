namespace Lugwork.EntityFrameworkCore;

/// <summary>How an interface value stands in a column. Both forms are permanent: a key or code, once published, never changes its meaning.</summary>
public enum StoredAs
{
    /// <summary>
    /// The fit key, canonical text of at most <see cref="LugworkConventions.MostKeyLength"/> characters: "27.2", "BSA-68". It can be read by
    /// people and is the text of <see cref="FitKeys"/>; its order is that of text, so that nothing but equality means something.
    /// </summary>
    FitKey = 0,

    /// <summary>The fit code, a whole number of 64 bits: nanometres of a size, the number of a row in a closed set. Smaller, and it means something only to the library.</summary>
    FitCode = 1,
}
