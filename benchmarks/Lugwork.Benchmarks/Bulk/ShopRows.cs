using System.Globalization;
using Lugwork.Reading;

namespace Lugwork.Benchmarks.Bulk;

/// <summary>Invented rows of a shop, made one by one from a seed: nothing is held. Each is of a kind that the peer reads too.</summary>
internal static class ShopRows
{
    private static readonly Slot[] Slots = [Slot.Seatpost, Slot.RearTyre, Slot.Chain, Slot.Handlebar, Slot.FrontRotor];

    private static readonly string[] Posts = ["27.2", "27,2", "30.9", "30,9", "31.6", "31,6", "26.8", "28.6"];

    private static readonly string[] Tyres = ["37-622", "47-622", "28-622", "57-584", "50-559", "23-622", "40-635", "622-32"];

    private static readonly string[] Chains = ["9", "10", "11", "12"];

    private static readonly string[] Bars = ["31.8", "31,8", "25.4", "35", "26.0"];

    private static readonly string[] Rotors = ["140", "160", "180", "203", "220"];

    private static readonly string[] PostWords = ["seatpost ", "Sattelst\u00FCtze ", "tige de selle ", "reggisella ", ""];

    private static readonly string[] TyreWords = ["tyre ", "Reifen ", "pneu ", "copertone ", ""];

    private static readonly string[] ChainWords = ["-speed chain", "-fach Kette", " vitesses", "v", "-speed"];

    private static readonly string[] BarWords = ["handlebar ", "Lenker ", "cintre ", "manillar ", ""];

    private static readonly string[] RotorWords = ["rotor ", "Bremsscheibe ", "disque ", "disco ", ""];

    public static IEnumerable<SpecRow> Make(int count)
    {
        uint state = 42;
        for (int i = 0; i < count; i++)
        {
            Slot slot = Slots[Next(ref state, Slots.Length)];
            yield return new(slot, Text(slot, ref state), "");
        }
    }

    private static string Text(Slot slot, ref uint state)
    {
        if (slot == Slot.Seatpost)
        {
            return Of(PostWords, ref state) + Of(Posts, ref state) + (Next(ref state, 2) == 0 ? " mm" : string.Create(CultureInfo.InvariantCulture, $" x {250 + (10 * Next(ref state, 20))} mm"));
        }

        if (slot == Slot.RearTyre)
        {
            return Of(TyreWords, ref state) + Of(Tyres, ref state);
        }

        if (slot == Slot.Chain)
        {
            return Of(Chains, ref state) + Of(ChainWords, ref state);
        }

        return slot == Slot.Handlebar ? Of(BarWords, ref state) + Of(Bars, ref state) + " mm" : Of(RotorWords, ref state) + Of(Rotors, ref state) + " mm";
    }

    private static string Of(string[] words, ref uint state) => words[Next(ref state, words.Length)];

    private static int Next(ref uint state, int below)
    {
        state = unchecked((state * 1_664_525u) + 1_013_904_223u);
        return (int)((state >> 16) % (uint)below);
    }
}
