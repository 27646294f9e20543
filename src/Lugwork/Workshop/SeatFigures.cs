using Lugwork.Seating;

namespace Lugwork.Workshop;

/// <summary>Figures of post, dropper and shock, by <see cref="SeatpostRoom"/> where a rider's height is known.</summary>
internal static class SeatFigures
{
    public static WorkFigure?[] OfPost(Build build)
    {
        if (build.As<Seatpost>(Slot.Seatpost) is not { } post)
        {
            return [];
        }

        return
        [
            Stated("post-mark", "least depth by the mark of the post", "the mark of the post, from its lower end", post.Mark).Into(Slot.Seatpost, "mark"),
            build.Frame.LeastInsertion.State == KnownState.None ? null : Stated("frame-least", "least depth by the frame maker", "the frame maker's least depth", build.Frame.LeastInsertion).Into(Slot.Frame, "leastInsertion"),
            post.Diameter.State == KnownState.Value ? WorkFigure.Of("two-diameters", "two diameters of the post", 2 * post.Diameter.Value.Diameter.Millimeters, "mm", Sources.SeatRegulation) : null,
            build.Frame.MostInsertion.State == KnownState.None ? null : Stated("open-depth", "how deep the seat tube is open", "the depth to which the seat tube is open", build.Frame.MostInsertion).Into(Slot.Frame, "mostInsertion"),
            Insertion(build, post),
        ];
    }

    /// <summary>How deep the post sits at the rider's height: its length less the height of the rails above the collar; where the height is not known, as deep as it is stated to sit.</summary>
    private static WorkFigure Insertion(Build build, Seatpost post)
    {
        FigureInputs given = new();
        decimal rails = Rails(build, given);
        decimal length = given.Millimetres("the length of the post", post.Length);
        WorkFigure found = given.Figure(
            "post-insertion", "how deep the post sits at this saddle height", "mm",
            () => new SeatpostRoom { RailHeight = Dimension.OfMillimetres(rails), OpenDepth = default, LeastInsertion = default }.InsertionOf(Dimension.OfMillimetres(length)).Millimeters, Sources.FrameManual);
        return (found.IsKnown || post.Insertion.State is not (KnownState.Value or KnownState.Measured) ? found : Stated("post-insertion", "how deep the post sits, as it is stated", "the depth of the post", post.Insertion)).Into(Slot.Seatpost, "insertion");
    }

    public static WorkFigure?[] OfDropper(Build build)
    {
        if (build.As<Dropper>(Slot.Dropper) is not { } dropper)
        {
            return [];
        }

        FigureInputs given = new();
        decimal rails = Rails(build, given);
        decimal stack = given.Millimetres("the stack of the dropper", dropper.Stack);
        return
        [
            Stated("dropper-travel", "travel of the dropper", "the travel of the dropper", dropper.Travel).Into(Slot.Dropper, "travel"),
            Line(build),
            Stated("dropper-stack", "least height of the rails above the collar, with the dropper fully in and up", "the stack of the dropper", dropper.Stack).Into(Slot.Dropper, "stack"),
            given.Figure(
                "longest-travel", "longest travel that this height has room for", "mm",
                () => new SeatpostRoom { RailHeight = Dimension.OfMillimetres(rails), OpenDepth = default, LeastInsertion = default }.LongestTravel(Dimension.OfMillimetres(stack)).Millimeters, Sources.DropperTips),
        ];
    }

    /// <summary>Housing of the dropper, as stated, else to be measured.</summary>
    public static WorkFigure? Line(Build build) =>
        build.HasDropperLine() ? Stated(LineEstimates.Dropper, "length of the housing of the dropper", RoutingFigures.Path, build.As<Dropper>(Slot.Dropper)!.HousingLength).Into(Slot.Dropper, "housingLength", isCut: true) : null;

    public static WorkFigure?[] OfShock(Build build) =>
        build.As<Shock>(Slot.Shock) is not { Size.State: KnownState.Value } shock ? [WorkFigure.Lacks("shock-size", "eye to eye and stroke of the shock", "the size of the shock, such as 210x55").Into(Slot.Shock, "size")]
        :
        [
            WorkFigure.Of("shock-length", "shock eye to eye", shock.Size.Value.EyeToEye.Millimeters, "mm", Sources.ShockMeasuring),
            WorkFigure.Of("shock-stroke", "stroke of the shock", shock.Size.Value.Stroke.Millimeters, "mm", Sources.ShockMeasuring),
        ];

    /// <summary>Middle of the rails above the collar: saddle height - seat tube - depth of the saddle, as the check of the saddle height has it.</summary>
    private static decimal Rails(Build build, FigureInputs given) =>
        given.Millimetres("the rider's saddle height", build.As<Rider>(Slot.Rider)?.SaddleHeight ?? default, most: 1_500)
        - given.Millimetres("the length of the seat tube", build.Frame.SeatTubeLength)
        - given.Millimetres("the depth of the saddle", build.As<Saddle>(Slot.Saddle)?.Depth ?? default);

    public static WorkFigure SaddleHeight(Build build)
    {
        WorkFigure height = Stated("saddle-height", "saddle height", "the rider's saddle height", build.As<Rider>(Slot.Rider)?.SaddleHeight ?? default);
        return build.Has(Slot.Rider) ? height.Into(Slot.Rider, "saddleHeight") : height;
    }

    public static WorkFigure Stated(string id, string name, string lacking, Known<Dimension> length)
    {
        FigureInputs given = new();
        decimal known = given.Millimetres(lacking, length, most: 100_000);
        return length.State == KnownState.None ? WorkFigure.Told(id, name, "none by its maker") : given.Figure(id, name, "mm", () => (double)known);
    }
}
