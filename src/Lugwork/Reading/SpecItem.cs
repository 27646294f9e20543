using System.Collections.Immutable;

namespace Lugwork.Reading;

/// <summary>A figure with its unit, a phrase of the vocabulary, a word that is not known, or a sign.</summary>
internal sealed class SpecItem
{
    public required SpecTokenKind Kind { get; init; }

    public required string Text { get; set; }

    public required int Start { get; init; }

    /// <summary>Behind the last character, with the unit of a figure.</summary>
    public required int End { get; set; }

    public required bool Glued { get; set; }

    public decimal Value { get; set; }

    public bool IsFraction { get; init; }

    /// <summary>How many figures are written behind the comma: one in "22,0".</summary>
    public int Places { get; init; }

    /// <summary>The first word of the unit as it is written: "bolt" or "arm" of <c>arms</c>.</summary>
    public string UnitWord { get; set; } = "";

    public bool IsBroken { get; set; }

    /// <summary>"mm", "in", "kg", "speed" and so on; empty where none stands behind the figure.</summary>
    public string Unit { get; set; } = "";

    /// <summary>A sign of diameter stands before the figure.</summary>
    public bool IsDiameter { get; set; }

    /// <summary>The word is misspelt, and what it stands for was guessed.</summary>
    public bool IsGuessed => Guess.Length > 0;

    /// <summary>What was guessed of a misspelt word, in words; empty where nothing was.</summary>
    public string Guess { get; set; } = "";

    /// <summary>What the vocabulary says of the phrase.</summary>
    public ImmutableArray<string> Terms { get; init; } = [];

    /// <summary>Number of the comma, bar or sentence part that it stands in.</summary>
    public int Clause { get; set; }

    /// <summary>A value was read from it, or it is known to say nothing.</summary>
    public bool Used { get; set; }

    public bool IsNumber => Kind == SpecTokenKind.Number;

    public bool IsInch => Unit == "in";

    public bool IsMillimetre => Unit is "mm" or "";

    public bool IsSign(char sign) => Kind == SpecTokenKind.Sign && Text[0] == sign;

    public bool Is(string term)
    {
        foreach (string known in Terms)
        {
            if (known == term)
            {
                return true;
            }
        }

        return false;
    }

    public bool IsTopic
    {
        get
        {
            foreach (string known in Terms)
            {
                if (known[0] is 't' or 'n' or 'f')
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>The figure as the readers of the library take it.</summary>
    public string Figure => Unit switch
    {
        "in" => Text + " in",
        "kg" => Text + " kg",
        "lb" => Text + " lb",
        _ => Text,
    };
}
