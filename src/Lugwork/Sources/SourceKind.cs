namespace Lugwork;

/// <summary>What kind of thing a source is. Kind and confidence are two properties: a maker's page can be misread, a forum post can be right.</summary>
public enum SourceKind
{
    /// <summary>From memory, no page read. Listed openly; never on its own makes a verdict milder where someone can be hurt.</summary>
    Memory = 0,

    /// <summary>Common practice of the trade, no source found.</summary>
    CommonPractice,

    /// <summary>Arithmetic on values that have sources of their own.</summary>
    Derived,

    /// <summary>A forum post, a list message or a private page.</summary>
    Community,

    /// <summary>A magazine or news page.</summary>
    Press,

    /// <summary>A maker's document or page.</summary>
    MakerDocument,

    /// <summary>A workshop handbook or an established trade reference.</summary>
    Handbook,

    /// <summary>A published standard or regulation.</summary>
    Standard,
}

/// <summary>How far a source is trusted for the value it supports.</summary>
public enum Confidence
{
    /// <summary>Single, indirect or from memory.</summary>
    Low = 0,

    /// <summary>One fair source, or several weak ones that agree.</summary>
    Medium,

    /// <summary>The standard itself, or independent good sources that agree.</summary>
    High,
}

/// <summary>Kinds of sources in words.</summary>
internal static class SourceKinds
{
    public static string InWords(SourceKind kind) => kind switch
    {
        SourceKind.Memory => "memory",
        SourceKind.CommonPractice => "common practice",
        SourceKind.Derived => "derived",
        SourceKind.Community => "community page",
        SourceKind.Press => "press",
        SourceKind.MakerDocument => "maker's document",
        SourceKind.Handbook => "handbook",
        _ => "standard",
    };
}
