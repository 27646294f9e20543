using System.Collections.Immutable;

namespace Lugwork.Seating;

/// <summary>The collars found on frames for one post. A guess before measuring, never a verdict: a collar follows the outside of the seat tube.</summary>
public sealed class SeatClampForPost
{
    private SeatClampForPost(decimal post, Source source, SeatClampSize? usual, params ImmutableArray<SeatClampSize> sizes)
    {
        Post = SeatpostDiameter.OfMillimetres(post);
        Source = source;
        Usual = usual;
        Sizes = sizes;
    }

    /// <summary>The post.</summary>
    public SeatpostDiameter Post { get; }

    /// <summary>The collar that is usual; null where one has to measure.</summary>
    public SeatClampSize? Usual { get; }

    /// <summary>Every collar that is found with this post, smallest first. For 33.9 in folding bicycles anything from 38 to 41 mm is said; these are the sizes in that range.</summary>
    public ImmutableArray<SeatClampSize> Sizes { get; }

    /// <summary>Where the row comes from.</summary>
    public Source Source { get; }

    /// <summary>Every post of the table.</summary>
    public static ImmutableArray<SeatClampForPost> All { get; } =
    [
        new(22.2m, Sources.ClampShop, SeatClampSize.Mm25Point4, SeatClampSize.Mm25Point4),
        new(25.4m, Sources.ClampShop, SeatClampSize.Mm28Point6, SeatClampSize.Mm28Point6),
        new(27.2m, Sources.ClampShop, SeatClampSize.Mm31Point8, SeatClampSize.Mm28Point6, SeatClampSize.Mm30, SeatClampSize.Mm31Point8),
        new(30.9m, Sources.Memory, SeatClampSize.Mm34Point9, SeatClampSize.Mm34Point9),
        new(31.6m, Sources.Memory, SeatClampSize.Mm34Point9, SeatClampSize.Mm34Point9, SeatClampSize.Mm36Point4),
        new(34.9m, Sources.Memory, SeatClampSize.Mm38Point6, SeatClampSize.Mm38Point6, SeatClampSize.Mm39, SeatClampSize.Mm40),
        new(26.8m, Sources.Memory, null, SeatClampSize.Mm28Point6, SeatClampSize.Mm30),
        new(30.0m, Sources.Memory, null, SeatClampSize.Mm34Point9),
        new(33.9m, Sources.Memory, null, SeatClampSize.Mm38Point6, SeatClampSize.Mm39, SeatClampSize.Mm40),
    ];

    /// <summary>The row of a post; null where there is none.</summary>
    /// <param name="post">The post.</param>
    public static SeatClampForPost? Of(SeatpostDiameter post)
    {
        foreach (SeatClampForPost row in All)
        {
            if (row.Post == post)
            {
                return row;
            }
        }

        return null;
    }

    /// <summary>"found with posts 27.2, 26.8".</summary>
    internal static string TellsApart(SeatClampSize size)
    {
        string posts = "";
        foreach (SeatClampForPost row in All)
        {
            posts += row.Sizes.Contains(size) ? (posts.Length == 0 ? "found with posts " : ", ") + row.Post.FitKey : "";
        }

        return posts;
    }
}
