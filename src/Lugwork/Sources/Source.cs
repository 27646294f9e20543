namespace Lugwork;

/// <summary>A published source, or an honest statement that there is none. Closed set: see <see cref="Sources"/>.</summary>
public sealed class Source
{
    internal Source(string id, SourceKind kind, Confidence confidence, string title, string publisher = "", string year = "", string address = "")
    {
        Id = id;
        Kind = kind;
        Confidence = confidence;
        Title = title;
        Publisher = publisher;
        Year = year;
        Address = address;
    }

    /// <summary>Short stable id, upper case: "CFR-1512-15".</summary>
    public string Id { get; }

    /// <summary>What kind of thing it is.</summary>
    public SourceKind Kind { get; }

    /// <summary>How far it is trusted.</summary>
    public Confidence Confidence { get; }

    /// <summary>Title as printed.</summary>
    public string Title { get; }

    /// <summary>Publisher or site; empty for memory, derivation and common practice.</summary>
    public string Publisher { get; }

    /// <summary>Year or "undated"; may be empty.</summary>
    public string Year { get; }

    /// <summary>Where it was found; may be empty.</summary>
    public string Address { get; }

    /// <summary>How weak a leg it is: the lower of two is the weaker.</summary>
    internal int Strength => ((int)Confidence * 100) + (int)Kind;

    /// <summary>Memory or common practice: no page says it.</summary>
    internal bool IsUnpublished => Kind is SourceKind.Memory or SourceKind.CommonPractice;

    /// <summary>"Title, publisher, year".</summary>
    public override string ToString() =>
        Publisher.Length == 0 ? Title : Year.Length == 0 ? $"{Title}, {Publisher}" : $"{Title}, {Publisher}, {Year}";
}
