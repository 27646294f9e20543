namespace Lugwork.Reading;

/// <summary>Words with a slip of the pen stand for the word that they are near to, where there is one and they are no word of their own.</summary>
internal static class Misspelt
{
    public static void Mend(List<SpecToken> tokens, PhraseTree tree)
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            SpecToken token = tokens[i];
            if (token.Kind != SpecTokenKind.Word || token.Text.Length < 5 || tree.Knows(token.Text) || !tree.Inflected(token.Text).IsDefault || OtherWords.Has(token.Text) || tree.Near(token.Text) is not { } meant)
            {
                continue;
            }

            token.Text = meant;
            token.IsGuessed = true;
            tokens[i] = token;
        }
    }
}
