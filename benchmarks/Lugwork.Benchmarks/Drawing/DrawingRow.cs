using System.Collections.Immutable;
using System.Globalization;
using Lugwork.Benchmarks.Judging;
using Lugwork.Drawing;
using Lugwork.Drivetrain;
using Lugwork.Geometry;
using UnitsNet;

namespace Lugwork.Benchmarks.Drawing;

/// <summary>What one drawing costs, from the build to its SVG as text: the middle of many, of the kind that takes longest.</summary>
internal sealed class DrawingRow : IRow
{
    private static readonly FrameGeometry Frame = new FrameChart
    {
        Reach = Mm(448), HeadAngle = Angle.FromDegrees(66.5), SeatAngle = Angle.FromDegrees(75), Chainstay = Mm(430), BottomBracketDrop = Mm(58), HeadTube = Mm(110),
        LowerStack = Mm(1), AxleToCrown = Mm(531), ForkOffset = Mm(44), FrontRadius = Mm(371), RearRadius = Mm(371),
    }.ToGeometry();

    private static readonly FrameGeometry Longer = Frame.WithForkLongerBy(Mm(20));
    private static readonly GearTable Table = GearTable.Of([46, 30], [11, 13, 15, 17, 19, 21, 24, 28, 32, 36], Mm(2_180));
    private static readonly ImmutableArray<(string Name, decimal Price, decimal Kilograms)> Offers = [.. Enumerable.Range(0, 20).Select(i => ($"offer {i}", 100m + (i * 37 % 200), 7m + (i * 13 % 20 * 0.2m)))];

    private static readonly (string Name, Func<Build, LineDrawing> Draw)[] Kinds =
    [
        ("head tube", Drawings.HeadTube), ("seatpost", Drawings.Seatpost), ("bottom bracket", Drawings.BottomBracket), ("rear hub", Drawings.RearHub),
        ("front tyre", b => Drawings.Tyre(b, Slot.FrontTyre)), ("rear tyre", b => Drawings.Tyre(b, Slot.RearTyre, 60, 2, 360)), ("front brake", b => Drawings.DiscBrake(b, Slot.FrontCaliper)), ("rear brake", b => Drawings.DiscBrake(b, Slot.RearCaliper)),
        ("geometry", _ => Drawings.Geometry(Frame, Longer)), ("gears", _ => Drawings.Gears(Table)), ("price and mass of 20", _ => Drawings.PriceAndMass(Offers, "EUR")),
    ];

    private string _each = "";

    public IReadOnlyList<Claim> Claims { get; } = [new("18", $"one drawing of a whole bicycle as SVG, the slowest of {Kinds.Length} kinds", "none", 1, LimitKind.UnderMilliseconds)];

    public string Note => $"Row 18, milliseconds of each kind: {_each}.";

    /// <summary>There is one candidate: it has to draw, and the same twice.</summary>
    public void Prove()
    {
        foreach ((string name, Func<Build, LineDrawing> draw) in Kinds)
        {
            foreach (Build build in KnownBuilds.All)
            {
                string svg = draw(build).ToSvg();
                if (svg != draw(build).ToSvg() || !svg.Contains("data-dimension", StringComparison.Ordinal))
                {
                    throw new InvalidOperationException($"{name}: nothing is drawn, or not the same twice");
                }
            }
        }
    }

    public IReadOnlyList<Measured> Measure(Effort effort)
    {
        int length = 0;
        int rounds = effort == Effort.Full ? 2_000 : 200;

        // Compiled to the end before any is timed; the compiler waits for a quiet moment.
        for (int round = 0; round < 4; round++)
        {
            foreach ((string _, Func<Build, LineDrawing> draw) in Kinds)
            {
                length += KnownBuilds.All.Sum(b => draw(b).ToSvg().Length);
            }

            Thread.Sleep(300);
        }

        double[] medians = [.. Kinds.Select(kind =>
        {
            int at = 0;
            return Timing.InTurn(rounds, () => Timing.Of(() => length += kind.Draw(KnownBuilds.All[at++ % KnownBuilds.Count]).ToSvg().Length))[0] / 1e6;
        })];
        _each = string.Join(", ", Kinds.Select((k, i) => string.Create(CultureInfo.InvariantCulture, $"{k.Name} {medians[i]:0.000}")));
        return [length > 0 ? new(medians.Max()) : new(0, Missing: "nothing was drawn")];
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
