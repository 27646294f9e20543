using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Rings in front of sprockets: how far each is out of line, at what angle the chain runs, and what would make the worst one least.</summary>
/// <remarks>
/// Deviation = sprocket less ring, each from the middle plane, mm; angle = atan(|deviation| / chainstay), degrees, by "Chainline, part 6: worked cases".
/// No limit of the angle is published, so none is set: angles are told and ranked. Rings within 3 mm of the middle of the sprockets work best by one page, which biases
/// the front outward ("Decoding fatbike hub spacing and drivetrain"). The rear is a model that is right to about 2 mm: measure it where it decides.
/// </remarks>
public sealed class ChainlineStudy
{
    /// <summary>By how much the middles may differ and work best, millimetres.</summary>
    public const double UsualMillimetres = 3;

    private readonly double _chainstay;

    private ChainlineStudy(ImmutableArray<Length> rings, RearChainline rear, double chainstay)
    {
        (Rings, Rear, _chainstay) = (rings, rear, chainstay);
        ImmutableArray<Length> sprockets = rear.Sprockets;
        ImmutableArray<ChainRun>.Builder runs = ImmutableArray.CreateBuilder<ChainRun>(rings.Length * sprockets.Length);
        for (int ring = 0; ring < rings.Length; ring++)
        {
            for (int sprocket = 0; sprocket < sprockets.Length; sprocket++)
            {
                runs.Add(new(ring + 1, sprocket + 1, sprockets[sprocket].Millimeters - rings[ring].Millimeters, chainstay));
            }
        }

        Runs = runs.ToImmutable();
    }

    /// <summary>What the sums rest on; those of the rear stand with it.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.FatHubSpacing, Lugwork.Sources.ChainAngle, Lugwork.Sources.Derived];

    /// <summary>Where the rings stand, outermost first.</summary>
    public ImmutableArray<Length> Rings { get; }

    /// <summary>Where the sprockets stand.</summary>
    public RearChainline Rear { get; }

    /// <summary>Every ring with every sprocket, ring by ring from outside, smallest sprocket first.</summary>
    public ImmutableArray<ChainRun> Runs { get; }

    /// <summary>The steepest run; of equal ones the first.</summary>
    public ChainRun Worst
    {
        get
        {
            ChainRun worst = Runs[0];
            foreach (ChainRun run in Runs)
            {
                worst = run.Degrees > worst.Degrees + 1e-9 ? run : worst;
            }

            return worst;
        }
    }

    /// <summary>How far the middle of the rings stands outside the middle of the sprockets; negative inside of it.</summary>
    public Length FromMiddle => Length.FromMillimeters(((Rings[0].Millimeters + Rings[^1].Millimeters) / 2) - Rear.Middle.Millimeters);

    /// <summary>The middles differ by 3 mm or less.</summary>
    public bool IsUsual => Math.Abs(FromMiddle.Millimeters) <= UsualMillimetres + 1e-9;

    /// <summary>How far all rings would have to move, outward positive, for the worst angle to be least: until the middles meet.</summary>
    public Length ShiftToMiddle => -FromMiddle;

    /// <summary>Studies rings and sprockets.</summary>
    /// <param name="rings">Where 1 to 3 rings stand, from the middle plane of the frame, outermost first: see <see cref="RingLine.Rings"/>.</param>
    /// <param name="rear">Where the sprockets stand: see <see cref="SprocketSpacing.InInnerGap"/>.</param>
    /// <param name="chainstay">From the bottom bracket to the rear axle, 200 to 2,000 mm.</param>
    /// <exception cref="ArgumentException">The rings do not stand in order.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static ChainlineStudy Of(ImmutableArray<Length> rings, RearChainline rear, Length chainstay)
    {
        ArgumentNullException.ThrowIfNull(rear);
        Given.Number(rings.IsDefault ? 0 : rings.Length, 1, 3, nameof(rings));
        double last = double.MaxValue;
        foreach (Length ring in rings)
        {
            double stands = Given.Millimetres(ring, 0, 300, nameof(rings));
            if (stands > last)
            {
                throw new ArgumentException("the outermost ring comes first", nameof(rings));
            }

            last = stands;
        }

        return new(rings, rear, Given.Millimetres(chainstay, 200, 2_000, nameof(chainstay)));
    }

    /// <summary>The same with all rings moved, as by another spindle, spacer or ring offset.</summary>
    /// <param name="shift">Outward positive, -50 to 50 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or a ring would stand on the other side.</exception>
    public ChainlineStudy Moved(Length shift)
    {
        double by = Given.Millimetres(shift, -50, 50, nameof(shift));
        Length[] moved = new Length[Rings.Length];
        for (int i = 0; i < moved.Length; i++)
        {
            moved[i] = Length.FromMillimeters(Rings[i].Millimeters + by);
        }

        return Of(ImmutableArray.Create(moved), Rear, Length.FromMillimeters(_chainstay));
    }

    /// <summary>What goes with every ranking: it is by the angle of the chain alone, and room between rings, arms and stays is not judged.</summary>
    public static Caution RankingCaution => Cautions.RingRanking;

    /// <summary>What is to be had, best first: least worst angle, then least distance of the middles, then as given. Whether ring and arm clear the chainstay is not judged: <see cref="RankingCaution"/>.</summary>
    /// <param name="choices">Names and how far each moves the rings outward: a ring with 3 mm less inward offset +3, a spindle 5 mm longer +2.5, a 2.5 mm spacer moved to the left -2.5. At most 1,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A shift is out of range, or there are too many.</exception>
    public ImmutableArray<ChainlineChoice> Rank(ImmutableArray<(string Name, Length Shift)> choices)
    {
        Given.Number(choices.IsDefault ? 0 : choices.Length, 1, 1_000, nameof(choices));
        List<(int At, ChainlineChoice Choice)> all = [];
        foreach ((string name, Length shift) in choices)
        {
            all.Add((all.Count, new(name, shift, Moved(shift))));
        }

        all.Sort(static (a, b) =>
        {
            int order = Rounded(a.Choice.Study.Worst.Degrees).CompareTo(Rounded(b.Choice.Study.Worst.Degrees));
            order = order != 0 ? order : Rounded(Math.Abs(a.Choice.Study.FromMiddle.Millimeters)).CompareTo(Rounded(Math.Abs(b.Choice.Study.FromMiddle.Millimeters)));
            return order != 0 ? order : a.At.CompareTo(b.At);
        });
        ImmutableArray<ChainlineChoice>.Builder ranked = ImmutableArray.CreateBuilder<ChainlineChoice>(all.Count);
        foreach ((_, ChainlineChoice choice) in all)
        {
            ranked.Add(choice);
        }

        return ranked.ToImmutable();
    }

    /// <summary>Degrees for each ring and sprocket, inward negative; then the worst run and how the middles stand.</summary>
    public override string ToString()
    {
        StringBuilder text = new("degrees, inward negative; sprocket 1 is the smallest\n");
        text.Append(' ', 13);
        for (int sprocket = 1; sprocket <= Rear.Sprockets.Length; sprocket++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{sprocket,6}");
        }

        foreach (ChainRun run in Runs)
        {
            if (run.Sprocket == 1)
            {
                text.Append(CultureInfo.InvariantCulture, $"\nring {run.Ring} {Rings[run.Ring - 1].Millimeters,6:0.0}");
            }

            text.Append(CultureInfo.InvariantCulture, $"{Math.CopySign(run.Degrees, run.Deviation.Millimeters),6:0.0}");
        }

        double off = FromMiddle.Millimeters;
        return text.Append(CultureInfo.InvariantCulture, $"\nworst: {Worst}; rings {Math.Abs(off):0.0} mm {(off < 0 ? "inside" : "outside")} the middle of the sprockets").ToString();
    }

    private static double Rounded(double value) => Math.Round(value, 6);
}

/// <summary>One choice of ring, spindle or spacer, and what it comes to.</summary>
public sealed class ChainlineChoice
{
    internal ChainlineChoice(string name, Length shift, ChainlineStudy study)
    {
        Name = name;
        Shift = shift;
        Study = study;
    }

    /// <summary>What it is.</summary>
    public string Name { get; internal init; }

    /// <summary>How far it moves the rings, outward positive.</summary>
    public Length Shift { get; internal init; }

    /// <summary>The rings there.</summary>
    public ChainlineStudy Study { get; internal init; }

    /// <summary>The warning that goes with it: the room at the chainstay is not judged.</summary>
    public Caution Caution { get; } = ChainlineStudy.RankingCaution;

    /// <summary>"3 mm ring (+3.0 mm): worst 2.88 degrees, rings 1.1 mm outside the middle".</summary>
    public override string ToString()
    {
        double off = Study.FromMiddle.Millimeters;
        return string.Create(CultureInfo.InvariantCulture, $"{Name} ({Shift.Millimeters:+0.0;-0.0;0.0} mm): worst {Study.Worst.Degrees:0.00} degrees, rings {Math.Abs(off):0.0} mm {(off < 0 ? "inside" : "outside")} the middle");
    }
}
