namespace Lugwork.Seating;

/// <summary>Seatpost against seat tube.</summary>
internal static class SeatpostRelations
{
    private static readonly Reason Same = new("same-size", "A {1} mm post goes in a seat tube made for {0} mm.") { Sources = [Sources.PostSizes] };

    private static readonly Reason TooLarge = new("too-large", "A {1} mm post is larger than the {0} mm that the seat tube takes; nothing makes a hole larger.", Cautions.NeverReamToSuit)
    {
        Mend = "a seatpost of the seat tube's own size",
        Sources = [Sources.PostSizes],
    };

    private static readonly Reason TooSmall = new("too-small", "A {1} mm post is loose in a seat tube made for {0} mm, and no shim for this pair is known here.")
    {
        Mend = "a seatpost of the seat tube's own size",
        Sources = [Sources.PostSizes],
    };

    private static readonly Reason Deep = new("insertion-within", "The post sits {0} mm deep: within its own mark ({1}), the frame's least ({2}) and the frame's most ({3}).");

    private static readonly Reason PostShort = new("above-the-mark", "The post sits {0} mm deep, but its own mark asks for {1} mm.", Cautions.Insertion)
    {
        Mend = "push the post in, or take a longer one",
        Sources = [Sources.SeatRegulation],
    };

    private static readonly Reason FrameShort = new("above-frame-least", "The post sits {0} mm deep, but the frame maker asks for at least {2} mm.", Cautions.Insertion)
    {
        Mend = "push the post in, or take a longer one",
        Sources = [Sources.FrameManual],
    };

    private static readonly Reason TooDeep = new("below-frame-most", "The post sits {0} mm deep, but only {3} mm of the seat tube is open.")
    {
        Mend = "a shorter seatpost, or one cut at its end with its mark moved as its maker says",
        Sources = [Sources.FrameManual],
    };

    private static readonly Reason NoWindow = new("no-insertion-possible", "No depth is right: the post's mark asks for {0} mm and the frame for {1} mm, but only {2} mm of the seat tube is open.", Cautions.Insertion)
    {
        Mend = "a seatpost with a mark that the open seat tube can reach",
        Sources = [Sources.FrameManual],
    };

    /// <summary>Inputs: bore, post.</summary>
    public static Relation InBore { get; } = new SameKey(0, 1, Same, (bore, post) => post > bore ? TooLarge : TooSmall, () => SeatpostShims.Table);

    private static readonly Reason TwoDiameters = new("less-than-two-diameters", "The post sits {0} mm deep: less than two diameters of the post ({4}), the least at which a mark may stand. A lower mark means a post that was cut.", Cautions.Insertion)
    {
        Mend = "push the post in, or take a longer one",
        Sources = [Sources.SeatRegulation],
    };

    /// <summary>Inputs: depth, post mark, frame least, frame most, two diameters of the post.</summary>
    public static Relation Depth { get; } = new AllOf(
        new AtLeast(0, 4, Deep, TwoDiameters, Verdict.Unsafe),
        new AtLeast(0, 1, Deep, PostShort, Verdict.Unsafe),
        new Within(0, 2, 3, Deep, FrameShort, Verdict.Unsafe, TooDeep, Verdict.DoesNotFit));

    private static readonly Reason RoomLeft = new("room-left", "The seat tube is open {2} mm deep: room for the post's mark ({0}) and the frame's least ({1}).");

    /// <summary>Inputs: post mark, frame least, frame most.</summary>
    public static Relation Room { get; } = new AllOf(
        new AtMost(0, 2, RoomLeft, NoWindow, Verdict.DoesNotFit, new Outcome(Verdict.Fits, RoomLeft)),
        new AtMost(1, 2, RoomLeft, NoWindow, Verdict.DoesNotFit, new Outcome(Verdict.Fits, RoomLeft)));
}
