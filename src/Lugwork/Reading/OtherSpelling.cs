namespace Lugwork.Reading;

/// <summary>Words that are known in another spelling: the German ae, oe and ue, and keys of a map that are written in one, as in seatpostDiameter.</summary>
internal static class OtherSpelling
{
    private const int MostPieces = 5;

    public static void Mend(List<SpecToken> tokens, ReadOnlySpan<char> text, PhraseTree tree)
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            SpecToken token = tokens[i];
            if (token is { Text: "mmx" or "cx" or "bx", Glued: true } && i > 0 && i + 1 < tokens.Count && tokens[i - 1].IsNumber && tokens[i + 1] is { IsNumber: true, Glued: true } && (token.Text.Length == 3 || tokens[i - 1].Value is 650 or 700))
            {
                // "142MMX12MM", "700Cx25": a unit or a letter, and a times sign.
                tokens.Insert(i + 1, new() { Kind = SpecTokenKind.Sign, Text = "x", Start = token.End - 1, End = token.End, Glued = true });
                (token.Text, token.End) = (token.Text[..^1], token.End - 1);
                tokens[i] = token;
                continue;
            }

            if (token.Kind != SpecTokenKind.Word || token.Text.Length < 4 || tree.Knows(token.Text))
            {
                continue;
            }

            if (token.Text.IndexOf("nenn", StringComparison.Ordinal) is >= 0 and int nominal && (nominal == 0 || token.Text.Length > nominal + 7) && Known(token.Text.Remove(nominal, 4), tree) is { } size)
            {
                // "Nennbreite", "Sattelstützennenndurchmesser": the size itself.
                token.Text = size;
                tokens[i] = token;
            }
            else if (Collapsed(token.Text) is { } plain && tree.Knows(plain))
            {
                token.Text = plain;
                tokens[i] = token;
            }
            else if (token.End - token.Start is > 5 and < 60 && Pieces(text, token, tree) is { } pieces)
            {
                tokens.RemoveAt(i);
                tokens.InsertRange(i, pieces);
                i += pieces.Count - 1;
            }
        }
    }

    private static string? Known(string word, PhraseTree tree) => tree.Knows(word) || WordLists.ScanHubApartIsDiameterWord.Contains(word) ? word : null;

    private static string? Collapsed(string word)
    {
        if (!word.Contains('e', StringComparison.Ordinal))
        {
            return null;
        }

        string plain = word.Replace("ae", "a", StringComparison.Ordinal).Replace("oe", "o", StringComparison.Ordinal).Replace("ue", "u", StringComparison.Ordinal);
        return plain.Length < word.Length ? plain : null;
    }

    /// <summary>The words of a key, parted before each capital; null where one of them is not known.</summary>
    private static List<SpecToken>? Pieces(ReadOnlySpan<char> text, SpecToken token, PhraseTree tree)
    {
        List<SpecToken> pieces = [];
        int start = token.Start;
        for (int i = token.Start + 1; i <= token.End; i++)
        {
            if (i < token.End && !(char.IsLower(text[i - 1]) && char.IsUpper(text[i])))
            {
                continue;
            }

            List<SpecToken> piece = SpecLexer.Cut(text[start..i]);
            if (piece.Count != 1 || piece[0].Kind != SpecTokenKind.Word || !tree.Knows(piece[0].Text) || pieces.Count == MostPieces)
            {
                return null;
            }

            pieces.Add(new SpecToken { Kind = SpecTokenKind.Word, Text = piece[0].Text, Start = start, End = i, Glued = start == token.Start && token.Glued });
            start = i;
        }

        return pieces.Count > 1 ? pieces : null;
    }
}
