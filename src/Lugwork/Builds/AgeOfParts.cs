using System.Collections.Immutable;
using Lugwork.Hubs;

namespace Lugwork;

/// <summary>When a part was made that the rider hangs on, and what may be said of it: a fact and a question, never a verdict.</summary>
internal static class AgeOfParts
{
    /// <summary>What it rests on: one page on the life of light-alloy parts, and one that quotes a parts catalogue.</summary>
    public static ImmutableArray<Source> Sources { get; } = [Lugwork.Sources.AlloyPartsLife, Lugwork.Sources.AlloyBarsAfterFall];

    /// <summary>What is told of a part whose date is stated; null where none is, and of steel and titanium, of whose age no page here speaks.</summary>
    public static string? Of(Part part)
    {
        (Known<DateMade> made, bool ages) = part switch
        {
            Frame frame => (frame.Made, Ages(frame.Material)),
            Fork fork => (fork.Made, Ages(fork.Material) || Ages(fork.SteererMaterial)),
            Stem stem => (stem.Made, Ages(stem.Material)),
            Handlebar bar => (bar.Made, Ages(bar.Material)),
            Seatpost post => (post.Made, Ages(post.Material)),
            Crankset crank => (crank.Made, Ages(crank.Material)),
            _ => (default, false),
        };
        return ages && !made.Values.IsEmpty
            ? $"Made {made.InTradeWords()}. Its maker sets how long such a part of carbon or light alloy may be ridden: look it up. The pages disagree: for bar and stem of light alloy they name two to ten years of use."
            : null;
    }

    /// <summary>It is carbon or light alloy, or nobody says that it is not.</summary>
    private static bool Ages(Known<Material> material) =>
        material.Values.IsEmpty || material.Values.Any(m => m == Material.Carbon || m == Material.Aluminium);
}
