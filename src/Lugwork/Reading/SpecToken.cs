namespace Lugwork.Reading;

/// <summary>What a token of a spec line is.</summary>
internal enum SpecTokenKind
{
    /// <summary>A sign such as a comma, a slash, a dash or a times sign ('x').</summary>
    Sign,

    /// <summary>Letters, folded to lower case without accents.</summary>
    Word,

    /// <summary>A figure: whole, decimal or a fraction.</summary>
    Number,
}

/// <summary>A word, figure or sign with its place in the original text.</summary>
internal struct SpecToken
{
    public SpecTokenKind Kind;

    /// <summary>The folded letters, the sign, or the canonical figure: "27.2", "1-1/8".</summary>
    public string Text;

    /// <summary>First character in the original text.</summary>
    public int Start;

    /// <summary>Behind the last character in the original text.</summary>
    public int End;

    /// <summary>No blank stands before it.</summary>
    public bool Glued;

    /// <summary>The figure, where it is one.</summary>
    public decimal Value;

    /// <summary>How many figures are written behind the comma.</summary>
    public int Places;

    /// <summary>It is written as a fraction.</summary>
    public bool IsFraction;

    /// <summary>Broken off, far too long, or with a letter where a figure belongs.</summary>
    public bool IsBroken;

    /// <summary>It is misspelt, and this is what it was taken for; null where it is not.</summary>
    public string? Meant;

    public readonly bool Is(char sign) => Kind == SpecTokenKind.Sign && Text[0] == sign;

    public readonly bool IsNumber => Kind == SpecTokenKind.Number;
}
