using FsCheck;
using FsCheck.Xunit;
using Lugwork.Geometry;
using static Lugwork.Tests.Geometry.Frames;

namespace Lugwork.Tests.Geometry;

/// <summary>What is true of every chart.</summary>
public sealed class ChartLaws
{
    [Property(MaxTest = 300)]
    public void A_frame_printed_whole_agrees_with_itself(DoNotSize<int> seed)
    {
        FrameGeometry frame = Any(new(seed.Item)).ToGeometry();
        ChartReading reading = Printed(frame).Solve();
        Assert.True(reading.Disagreements.IsEmpty && reading.Missing.IsEmpty, reading.ToString());
        Same(frame, reading.Frame!);
    }

    [Property(MaxTest = 300)]
    public void Rounding_to_the_grain_is_never_a_disagreement(DoNotSize<int> seed)
    {
        FrameChart whole = Printed(Any(new(seed.Item)).ToGeometry());
        FrameChart rounded = whole with
        {
            Reach = R(whole.Reach!.Value), Stack = R(whole.Stack!.Value), Chainstay = R(whole.Chainstay!.Value), BottomBracketDrop = R(whole.BottomBracketDrop!.Value),
            HeadTube = R(whole.HeadTube!.Value), LowerStack = R(whole.LowerStack!.Value), ForkAxialLength = R(whole.ForkAxialLength!.Value), AxleToCrown = R(whole.AxleToCrown!.Value),
            ForkOffset = R(whole.ForkOffset!.Value), RearRadius = R(whole.RearRadius!.Value), FrontRadius = R(whole.FrontRadius!.Value), Wheelbase = R(whole.Wheelbase!.Value),
            FrontCentre = R(whole.FrontCentre!.Value), EffectiveTopTube = R(whole.EffectiveTopTube!.Value), BottomBracketHeight = R(whole.BottomBracketHeight!.Value), Trail = R(whole.Trail!.Value),
            ChainstayHorizontal = null, FrontCentreHorizontal = null,
            HeadAngle = Deg(Math.Round(whole.HeadAngle!.Value.Degrees, 1)), SeatAngle = Deg(Math.Round(whole.SeatAngle!.Value.Degrees, 1)),
            LengthGrain = Mm(1.02), AngleGrain = Deg(0.102),
        };
        ChartReading reading = rounded.Solve();
        Assert.True(reading.Disagreements.IsEmpty, reading.ToString());
        Assert.Equal(rounded.HeadAngle.Value.Degrees, reading.Frame!.HeadAngle.Degrees, 1e-8);

        // What rounding leaves over turns nothing: both wheels stand on the ground as the chart is drawn.
        Same(reading.Frame, reading.Frame.WithForkLongerBy(UnitsNet.Length.Zero));
        Assert.Equal(reading.Frame.FrontRadius.Millimeters - reading.Frame.RearRadius.Millimeters, reading.Frame.FrontAxle.YMillimetres - reading.Frame.RearAxle.YMillimetres, 1e-6);

        static UnitsNet.Length R(UnitsNet.Length length) => Mm(Math.Round(length.Millimeters));
    }

    /// <summary>Take one figure out: the rest still gives the frame, and the figure comes back. Then say it wrong: it is found, with its size.</summary>
    [Property(MaxTest = 100)]
    public void A_figure_left_out_comes_back_and_a_wrong_one_is_found(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameGeometry frame = Any(random).ToGeometry();
        FrameChart whole = Printed(frame);
        (FrameChart Without, FrameChart Wrong, FrameFigure Figure)[] cases =
        [
            (whole with { Reach = null }, whole with { Reach = whole.Reach + Mm(9) }, FrameFigure.Reach),
            (whole with { Stack = null }, whole with { Stack = whole.Stack + Mm(9) }, FrameFigure.Stack),
            (whole with { HeadAngle = null }, whole with { HeadAngle = whole.HeadAngle + Deg(1) }, FrameFigure.HeadAngle),
            (whole with { Chainstay = null }, whole with { Chainstay = whole.Chainstay + Mm(9) }, FrameFigure.Chainstay),
            (whole with { BottomBracketDrop = null }, whole with { BottomBracketDrop = whole.BottomBracketDrop + Mm(9) }, FrameFigure.BottomBracketDrop),
            (whole with { HeadTube = null }, whole with { HeadTube = whole.HeadTube + Mm(9) }, FrameFigure.HeadTube),
            (whole with { ForkAxialLength = null }, whole with { ForkAxialLength = whole.ForkAxialLength + Mm(9) }, FrameFigure.ForkAxialLength),
            (whole with { ForkOffset = null }, whole with { ForkOffset = whole.ForkOffset + Mm(9) }, FrameFigure.ForkOffset),
            (whole with { RearRadius = null }, whole with { RearRadius = whole.RearRadius + Mm(9) }, FrameFigure.RearRadius),
            (whole with { FrontRadius = null }, whole with { FrontRadius = whole.FrontRadius + Mm(9) }, FrameFigure.FrontRadius),
            (whole with { Wheelbase = null }, whole with { Wheelbase = whole.Wheelbase + Mm(9) }, FrameFigure.Wheelbase),
            (whole with { SeatAngle = null }, whole with { SeatAngle = whole.SeatAngle + Deg(1) }, FrameFigure.SeatAngle),
        ];
        foreach ((FrameChart without, FrameChart wrong, FrameFigure figure) in cases)
        {
            Same(frame, without.ToGeometry(), 1e-5);
            ChartReading reading = wrong.Solve();
            Assert.Null(reading.Frame);
            Assert.Contains(reading.Disagreements, d => d.Figures.Contains(figure));
        }

        ChartDisagreement wheelbase = (whole with { Wheelbase = whole.Wheelbase + Mm(9) }).Solve().Disagreements.Single();
        Assert.Equal(9, wheelbase.Size.Millimeters, 1e-6);
    }

    /// <summary>What is asked for is enough, and none of it too much.</summary>
    [Property(MaxTest = 300)]
    public void What_is_missing_completes_the_chart_and_nothing_less_does(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        FrameChart whole = Printed(Any(random).ToGeometry());
        FrameChart chart = whole;
        for (int i = random.Next(3, 17); i > 0; i--)
        {
            chart = Without(chart, FrameFigure.All[random.Next(20)]);
        }

        ChartReading reading = chart.Solve();
        Assert.Equal(reading.Missing.IsEmpty, reading.Frame is not null);
        FrameChart filled = chart;
        foreach (FrameFigure figure in reading.Missing)
        {
            filled = With(filled, whole, figure);
        }

        Assert.NotNull(filled.Solve().Frame);
        foreach (FrameFigure figure in reading.Missing)
        {
            Assert.Null(Without(filled, figure).Solve().Frame);
        }
    }

    private static FrameChart Without(FrameChart chart, FrameFigure figure) => With(chart, new(), figure);

    private static FrameChart With(FrameChart chart, FrameChart from, FrameFigure figure) => FrameFigure.All.IndexOf(figure) switch
    {
        0 => chart with { Reach = from.Reach },
        1 => chart with { Stack = from.Stack },
        2 => chart with { HeadAngle = from.HeadAngle },
        3 => chart with { SeatAngle = from.SeatAngle },
        4 => chart with { Chainstay = from.Chainstay },
        5 => chart with { BottomBracketDrop = from.BottomBracketDrop },
        6 => chart with { HeadTube = from.HeadTube },
        7 => chart with { LowerStack = from.LowerStack },
        8 => chart with { ForkAxialLength = from.ForkAxialLength },
        9 => chart with { AxleToCrown = from.AxleToCrown },
        10 => chart with { ForkOffset = from.ForkOffset },
        11 => chart with { RearRadius = from.RearRadius },
        12 => chart with { FrontRadius = from.FrontRadius },
        13 => chart with { Wheelbase = from.Wheelbase },
        14 => chart with { FrontCentre = from.FrontCentre },
        15 => chart with { EffectiveTopTube = from.EffectiveTopTube },
        16 => chart with { BottomBracketHeight = from.BottomBracketHeight },
        17 => chart with { Trail = from.Trail },
        18 => chart with { ChainstayHorizontal = from.ChainstayHorizontal },
        _ => chart with { FrontCentreHorizontal = from.FrontCentreHorizontal },
    };
}
