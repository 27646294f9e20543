using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>Slips of the pen in short words: two letters exchanged, one doubled, or one left out of five and more. Only of the words that lines have most, and never where the slip is a word of one of the six languages.</summary>
internal static class ShortSlips
{
    private const string Known = "rear front fork frame wheel axle rotor boost cable crown head tube seat steel alloy ahead width depth inner outer upper lower thread road speed chain crank shell spoke valve stroke teeth clamp tube swiss nabe felge lenker gabel rahmen kurbel kette achse schaft welle reifen breite lange hinten vorne innen aussen unten stahl zahne cadre roue moyeu jante pneu selle cintre pivot acier largeur cuadro rueda buje llanta sillin telaio ruota mozzo sella perno canotto wiel naaf velg vork zadel stuur kabel draad achter voor";

    /// <summary>Slips that are words of their own, by published word lists for spelling.</summary>
    private const string Others = "acer ache aches acter ally boot boots bost breie brete brite cablee cade cader cadree camp clam clap cain cale carde care chan chin cintree cuado daad fame fege fele font framee gable gael heda jane janet jate kabbel kable kubel kurble lane langee larguer leker lener llana loer mozo nabbe nafa oter outre peno pero peron piot raer reda reien riefen roda roor rota rouee routa ruda schaaft schafft schat seed sell sellee seta stal stel stele stoke stroe stroek stur suur tubee valvee voorne vore voren weel weil wile zahe zahen zane";

    private static readonly ILookup<char, string> ByLetter = Known.Split(' ').ToLookup(w => w[0]);

    private static readonly FrozenSet<string> Own = FrozenSet.ToFrozenSet(Others.Split(' '), StringComparer.Ordinal);

    /// <summary>The word that the slip stands for; null where there is none, or several.</summary>
    public static string? Of(string word)
    {
        if (word.Length is < 4 or > 7 || Own.Contains(word))
        {
            return null;
        }

        string? found = null;
        foreach (string known in ByLetter[word[0]])
        {
            if (Math.Abs(known.Length - word.Length) <= 1 && NearWords.IsTyped(word, known))
            {
                if (found is not null)
                {
                    return null;
                }

                found = known;
            }
        }

        return found;
    }
}
