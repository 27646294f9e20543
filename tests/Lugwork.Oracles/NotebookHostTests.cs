using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using Lugwork.Workshop;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace Lugwork.Oracles;

/// <summary>What is shown richly, by the formatter of the notebooks itself and not by our reading of its convention.</summary>
public sealed class NotebookHostTests
{
    [Fact]
    public void The_notebooks_own_formatter_finds_both_forms()
    {
        Build build = Build.From(Frame.Read("seat tube 27.2; leastInsertion 80"), "<b>name</b>").With(Seatpost.Read("26.8 x 350"));
        FrameGeometry frame = new FrameChart { Reach = Mm(448), HeadAngle = Angle.FromDegrees(66.5), Chainstay = Mm(430), BottomBracketDrop = Mm(58), HeadTube = Mm(110), LowerStack = Mm(1), AxleToCrown = Mm(531), ForkOffset = Mm(44), FrontRadius = Mm(371), RearRadius = Mm(371) }.ToGeometry();
        foreach (object shown in new object[] { build.Check(), build.Needs(), GearTable.Of([46, 30], [11, 13, 15], Mm(2_180)), GeometryDifference.Between(frame, frame.WithForkLongerBy(Mm(20))), build.WorkPlan(), Drawings.Seatpost(build) })
        {
            Assert.StartsWith("<div class='lugwork'>", shown.ToDisplayString("text/html"), StringComparison.Ordinal);
            Assert.DoesNotContain("<b>", shown.ToDisplayString("text/html"), StringComparison.Ordinal);
            Assert.Equal(shown is NeedsSheet needs ? string.Join('\n', needs) : shown.ToString()!.ReplaceLineEndings("\n"), shown.ToDisplayString("text/plain"));
            Assert.Equal(["text/html", "text/plain"], Formatter.GetPreferredMimeTypesFor(shown.GetType()).Order());
        }
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
