namespace Lugwork.Drawing;

/// <summary>The seatpost in its tube. y = 0 is the top of the collar; the post goes down from it.</summary>
internal static class SeatpostDraft
{
    private const string Tube = "seat tube of the frame";
    private const string Post = "seatpost";

    public static LineDrawing Of(Build build)
    {
        Frame frame = build.Frame;
        Seatpost post = build[Slot.Seatpost] as Seatpost ?? new();
        DraftSize bore = DraftSize.Of(frame.SeatTubeBore, b => (double)b.Millimetres, "seat tube bore", JointInputs.Bore, 27.2);
        DraftSize across = DraftSize.Of(post.Diameter, d => (double)d.Millimetres, "seatpost", JointInputs.Post, bore.Drawn);
        if (!bore.IsKnown && across.IsKnown)
        {
            bore = bore with { Drawn = across.Drawn };
        }

        DraftSize outside = DraftSize.Of(frame.SeatTubeOutside, s => s.Diameter.Millimeters, "seat tube outside", JointInputs.TubeOutside, bore.Drawn + 5);
        DraftSize least = DraftSize.Of(frame.LeastInsertion, "frame's least insertion", JointInputs.Least, 80);
        DraftSize most = DraftSize.Of(frame.MostInsertion, "open depth", JointInputs.Most, 240);
        DraftSize mark = DraftSize.Of(post.Mark, "mark, from the lower end", JointInputs.Mark, 75);
        DraftSize depth = DraftSize.Of(post.Insertion, "insertion", JointInputs.Depth, Math.Max(110, least.IsKnown ? least.Drawn : 0));
        DraftSize length = DraftSize.Of(post.Length, "length of the post", JointInputs.PostLength, Math.Max(350, depth.Drawn + 60));
        double above = Math.Max(length.Drawn - depth.Drawn, 20);
        double below = Math.Max(Math.Max(most.IsNone ? 0 : most.Drawn, depth.Drawn), least.Drawn) + 15;
        DraftSheet sheet = new("Seatpost in the seat tube", "Section of the seat tube, the post whole in it; above the line of the collar it stands out. Where no outside is stated the wall is drawn without a figure.", DraftScale.For(outside.Drawn + 20, above + below, 100, 190));

        double wall = (outside.IsKnown ? outside.Drawn : Math.Max(outside.Drawn, bore.Drawn + 1.2)) / 2;
        bool noWall = bore.IsKnown && outside.IsKnown && outside.Drawn <= bore.Drawn;
        sheet.Pair(Tube, noWall ? DraftTone.Clash : DraftTone.Base, Math.Min(bore.Drawn / 2, wall), 0, Math.Max(bore.Drawn / 2, wall), below, !bore.IsKnown || !outside.IsKnown);
        sheet.Box(Post, DraftTone.Fitted, -across.Drawn / 2, -above, across.Drawn / 2, depth.Drawn, !across.IsKnown || !depth.IsKnown || !length.IsKnown);
        sheet.Path("collar line", DraftLine.Heavy, false, (-wall - 6, 0), (-wall, 0));
        sheet.Path("", DraftLine.Axis, false, (0, -above - 5), (0, below + 5));
        if (!mark.IsNone)
        {
            double at = depth.Drawn - mark.Drawn;
            sheet.Path("insertion mark", DraftLine.Heavy, !mark.IsKnown, (-across.Drawn / 2, at), (across.Drawn / 2, at));
            sheet.Measure(mark, across.Drawn / 2, at, across.Drawn / 2, depth.Drawn, DraftSide.Right);
            if (at < 0 && mark.IsKnown && depth.IsKnown)
            {
                sheet.Box("mark above the collar", DraftTone.Clash, -across.Drawn / 2, at, across.Drawn / 2, 0);
                sheet.Note(DraftTone.Clash, $"the mark stands {DraftText.Number(-at, 1)} mm above the collar", -across.Drawn / 2, at, DraftSide.Left);
            }
        }

        if (!most.IsNone)
        {
            sheet.Path("end of the open depth", DraftLine.Heavy, !most.IsKnown, (-bore.Drawn / 2, most.Drawn), (bore.Drawn / 2, most.Drawn));
            sheet.Measure(most, -wall, 0, -wall, most.Drawn, DraftSide.Left);
        }

        if (noWall)
        {
            sheet.Note(DraftTone.Clash, "the bore is stated as wide as the tube outside or wider: one of both is wrong", wall, below * 0.8, DraftSide.Right);
        }

        Clashes(sheet, bore, across, depth, most);
        sheet.Measure(bore, -bore.Drawn / 2, 0, bore.Drawn / 2, 0, DraftSide.Top);
        sheet.Measure(across, -across.Drawn / 2, -above, across.Drawn / 2, -above, DraftSide.Top);
        if (!outside.IsNone)
        {
            sheet.Measure(outside, -wall, 0, wall, 0, DraftSide.Top);
        }

        if (!least.IsNone)
        {
            sheet.Path("frame's least insertion", DraftLine.Plain, !least.IsKnown, (bore.Drawn / 2, least.Drawn), (wall + 4, least.Drawn));
            sheet.Measure(least, wall, 0, wall, least.Drawn, DraftSide.Right);
        }

        sheet.Measure(depth, -wall, 0, -wall, depth.Drawn, DraftSide.Left);
        sheet.Measure(length, -across.Drawn / 2, -above, -across.Drawn / 2, depth.Drawn, DraftSide.Left);
        sheet.Note(DraftTone.Fitted, "seatpost", across.Drawn / 4, -above * 0.6, DraftSide.Right);
        sheet.Note(DraftTone.Base, "seat tube", wall - 0.8, below - 6, DraftSide.Right);
        sheet.Called(build, Slot.Frame, Slot.Seatpost);
        sheet.Tell(build, "seatpost-in-seat-tube", "seatpost-room-in-seat-tube", "seatpost-insertion", "binder-on-post", "seat-clamp-on-seat-tube");
        return sheet.Finish();
    }

    private static void Clashes(DraftSheet sheet, DraftSize bore, DraftSize across, DraftSize depth, DraftSize most)
    {
        double over = across.Drawn - bore.Drawn;
        if (bore.IsKnown && across.IsKnown && over > 1e-9)
        {
            sheet.Pair("post larger than bore", DraftTone.Clash, bore.Drawn / 2, 0, across.Drawn / 2, depth.Drawn);
            sheet.Note(DraftTone.Clash, $"the post is {DraftText.Number(over, 2)} mm larger than the bore", -across.Drawn / 2, depth.Drawn / 3, DraftSide.Left);
        }
        else if (bore.IsKnown && across.IsKnown && over < -1e-9)
        {
            sheet.Note(null, $"gap: the post is {DraftText.Number(-over, 2)} mm smaller", -across.Drawn / 2, depth.Drawn / 3, DraftSide.Left);
        }

        if (depth.IsKnown && most.IsKnown && depth.Drawn > most.Drawn)
        {
            sheet.Box("post deeper than the tube is open", DraftTone.Clash, -across.Drawn / 2, most.Drawn, across.Drawn / 2, depth.Drawn);
            sheet.Note(DraftTone.Clash, $"{DraftText.Number(depth.Drawn - most.Drawn, 1)} mm deeper than the tube is open", -across.Drawn / 2, (most.Drawn + depth.Drawn) / 2, DraftSide.Left);
        }
    }
}
