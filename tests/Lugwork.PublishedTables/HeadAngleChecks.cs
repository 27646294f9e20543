namespace Lugwork.PublishedTables;

/// <summary>What a longer fork does to the head angle, against a limit of the frame's maker: published figures, each with its source.</summary>
public sealed class HeadAngleChecks
{
    private const string Travel = "Head Angle Change With Suspension Travel; PVD wiki, 2007-12";

    /// <summary>The page prints 0.0521 degrees for each millimetre at a wheelbase of 1058 mm; its head angle is taken as 74, as in the table of examples. Within 0.3 degrees of the limit it is asked.</summary>
    [Theory]
    [InlineData(Travel, 10, 0.521, -0.31, Verdict.Fits)]
    [InlineData(Travel, 10, 0.521, -0.29, Verdict.NeedsMeasuring)]
    [InlineData(Travel, 10, 0.521, 0.29, Verdict.NeedsMeasuring)]
    [InlineData(Travel, 10, 0.521, 0.31, Verdict.Unsafe)]
    [InlineData(Travel, 1, 0.0521, -0.301, Verdict.Fits)]
    [InlineData(Travel, 1, 0.0521, -0.299, Verdict.NeedsMeasuring)]
    public void The_head_angle_is_slacker_by_the_printed_figure(string source, int longer, double printed, double off, Verdict verdict)
    {
        Assert.NotEmpty(source);
        Frame frame = new()
        {
            DesignAxleToCrown = Known<Dimension>.Of(Dimension.OfMillimetres(450)),
            HeadAngle = Known<FrameAngle>.Of(FrameAngle.OfDegrees(74)),
            Wheelbase = Known<Dimension>.Of(Dimension.OfMillimetres(1_058)),
            SlackestHeadAngle = Known<FrameAngle>.Of(FrameAngle.OfDegrees(74 - (decimal)printed + (decimal)off)),
        };
        Build build = Build.From(frame).With(new Fork { AxleToCrown = Known<Dimension>.Of(Dimension.OfMillimetres(450 + longer)) });
        Assert.Equal(verdict, build.Check().Findings.Single(f => f.Joint!.Id == "head-angle-not-too-slack").Verdict);
    }
}
