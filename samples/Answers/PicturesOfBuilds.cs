#region post
using Lugwork;
using Lugwork.Drawing;
#endregion

namespace Answers;

/// <summary>How do I draw it?</summary>
internal static class PicturesOfBuilds
{
    /// <summary>The picture of the README and of the page of drawings.</summary>
    public static LineDrawing InSeatTube => Drawings.Seatpost(Build.From(Frame.Read("seat tube 27.2; seat tube outside 28.6; least insertion 80; most insertion 210"))
        .With(Seatpost.Read("26.8 x 350; mark 75; insertion 110")));

    public static void Post()
    {
        #region post

        Build build = Build.From(Frame.Read("seat tube 27.2; seat tube outside 28.6; least insertion 80; most insertion 210"))
            .With(Seatpost.Read("26.8 x 350; mark 75; insertion 110"));

        LineDrawing drawing = Drawings.Seatpost(build);
        string svg = drawing.ToSvg();
        Console.WriteLine($"{drawing.Title}, {drawing.Scale}");
        foreach (DrawnDimension dimension in drawing.Dimensions)
        {
            Console.WriteLine($"  {dimension}");
        }
        #endregion

        _ = svg;
    }
}
