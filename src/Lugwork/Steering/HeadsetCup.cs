using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>One half of a headset, by type and bore: EC external cup, ZS flush cup, IS bearing without a cup. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<HeadsetCup>))]
[TypeConverter(typeof(InterfaceTypeConverter<HeadsetCup>))]
public sealed class HeadsetCup : Standard<HeadsetCup>, IInterfaceValue<HeadsetCup>
{
    private HeadsetCup(int code, string key, string name, Source source, HeadTubeBore bore, bool upper, bool lower, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Bore = bore;
        IsUpper = upper;
        IsLower = lower;
    }

    /// <summary>External cup, 1 in JIS.</summary>
    public static HeadsetCup Ec29 { get; } = new(1, "EC29", "EC29", Sources.HeadsetGuide, HeadTubeBore.Ec29, true, true);

    /// <summary>External cup, 1 in ISO.</summary>
    public static HeadsetCup Ec30 { get; } = new(2, "EC30", "EC30", Sources.HeadsetGuide, HeadTubeBore.Ec30, true, true);

    /// <summary>External cup, 1-1/8 in.</summary>
    public static HeadsetCup Ec34 { get; } = new(3, "EC34", "EC34", Sources.HeadsetCodeNote, HeadTubeBore.Ec34, true, true);

    /// <summary>External cup, 1-1/4 in.</summary>
    public static HeadsetCup Ec37 { get; } = new(4, "EC37", "EC37", Sources.Memory, HeadTubeBore.Ec37, true, true);

    /// <summary>External cup for a 44 mm bore.</summary>
    public static HeadsetCup Ec44 { get; } = new(5, "EC44", "EC44", Sources.HeadTube44, HeadTubeBore.Bore44, true, true);

    /// <summary>External cup for a 49.6 mm bore.</summary>
    public static HeadsetCup Ec49 { get; } = new(6, "EC49", "EC49", Sources.Memory, HeadTubeBore.Bore49, true, true);

    /// <summary>External cup for a 56 mm bore; lower.</summary>
    public static HeadsetCup Ec56 { get; } = new(7, "EC56", "EC56", Sources.Memory, HeadTubeBore.Bore56, false, true);

    /// <summary>Flush cup for a 41.4 mm bore.</summary>
    public static HeadsetCup Zs41 { get; } = new(8, "ZS41", "ZS41", Sources.Memory, HeadTubeBore.Zs41, true, true);

    /// <summary>Flush cup for a 44 mm bore.</summary>
    public static HeadsetCup Zs44 { get; } = new(9, "ZS44", "ZS44", Sources.HeadsetChart, HeadTubeBore.Bore44, true, true);

    /// <summary>Flush cup for a 49.6 mm bore.</summary>
    public static HeadsetCup Zs49 { get; } = new(10, "ZS49", "ZS49", Sources.Memory, HeadTubeBore.Bore49, true, true);

    /// <summary>Flush cup for a 55 mm bore; lower.</summary>
    public static HeadsetCup Zs55 { get; } = new(11, "ZS55", "ZS55", Sources.Memory, HeadTubeBore.Zs55, false, true);

    /// <summary>Flush cup for a 56 mm bore.</summary>
    public static HeadsetCup Zs56 { get; } = new(12, "ZS56", "ZS56", Sources.HeadsetChart, HeadTubeBore.Bore56, true, true);

    /// <summary>Flush cup for a 62 mm bore.</summary>
    public static HeadsetCup Zs62 { get; } = new(13, "ZS62", "ZS62", Sources.Memory, HeadTubeBore.Zs62, true, true);

    /// <summary>Bearing of an IS38 seat.</summary>
    public static HeadsetCup Is38 { get; } = new(14, "IS38", "IS38", Sources.Memory, HeadTubeBore.Is38, true, true);

    /// <summary>Bearing of an IS41 seat.</summary>
    public static HeadsetCup Is41 { get; } = new(15, "IS41", "IS41", Sources.BearingSeller, HeadTubeBore.Is41, true, true);

    /// <summary>Bearing of an IS42 seat.</summary>
    public static HeadsetCup Is42 { get; } = new(16, "IS42", "IS42", Sources.Memory, HeadTubeBore.Is42, true, true);

    /// <summary>Bearing of an IS46 seat; lower.</summary>
    public static HeadsetCup Is46 { get; } = new(17, "IS46", "IS46", Sources.Memory, HeadTubeBore.Is46, false, true);

    /// <summary>Bearing of an IS47 seat.</summary>
    public static HeadsetCup Is47 { get; } = new(18, "IS47", "IS47", Sources.Memory, HeadTubeBore.Is47, true, true);

    /// <summary>Bearing of an IS49 seat; lower.</summary>
    public static HeadsetCup Is49 { get; } = new(19, "IS49", "IS49", Sources.ForkCutting, HeadTubeBore.Is49, false, true);

    /// <summary>Bearing of an IS51 seat; lower.</summary>
    public static HeadsetCup Is51 { get; } = new(20, "IS51", "IS51", Sources.Memory, HeadTubeBore.Is51, false, true);

    /// <summary>Bearing of an IS52 seat.</summary>
    public static HeadsetCup Is52 { get; } = new(21, "IS52", "IS52", Sources.CableHeadsets, HeadTubeBore.Is52, true, true);

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<HeadsetCup> All { get; } =
    [
        Ec29, Ec30, Ec34, Ec37, Ec44, Ec49, Ec56, Zs41,
        Zs44, Zs49, Zs55, Zs56, Zs62, Is38, Is41, Is42,
        Is46, Is47, Is49, Is51, Is52,
    ];

    /// <inheritdoc/>
    public static string Called => "headset cup";

    /// <summary>The head tube end that it is made for.</summary>
    public HeadTubeBore Bore { get; }

    /// <summary>Made as an upper half.</summary>
    public bool IsUpper { get; }

    /// <summary>Made as a lower half.</summary>
    public bool IsLower { get; }

    /// <summary>How the bearing sits in the head tube, from the letters of the code.</summary>
    public HeadsetStyle Style => FitKey[0] switch
    {
        'E' => HeadsetStyle.ExternalCup,
        'Z' => HeadsetStyle.ZeroStack,
        _ => HeadsetStyle.Integrated,
    };

    /// <summary>Outside diameter of what goes into the frame: the pressed cup, or the bearing of an integrated half.</summary>
    public Length OutsideDiameter => Hundredths(CupFigures.Of(FitCode).Diameter);

    /// <summary>What the outside diameter rests on.</summary>
    public Source DiameterSource => CupFigures.Of(FitCode).DiameterSource;

    /// <summary>Smallest usual height above the head tube, as an upper half; null where none is known.</summary>
    public Length? LeastUpperStack => CupFigures.Of(FitCode).Upper is var (least, _) ? Hundredths(least) : null;

    /// <summary>Largest usual height above the head tube, as an upper half; null where none is known. The makers' own figure comes first.</summary>
    public Length? MostUpperStack => CupFigures.Of(FitCode).Upper is var (_, most) ? Hundredths(most) : null;

    /// <summary>Smallest usual height below the head tube, as a lower half; null where none is known.</summary>
    public Length? LeastLowerStack => CupFigures.Of(FitCode).Lower is var (least, _) ? Hundredths(least) : null;

    /// <summary>Largest usual height below the head tube, as a lower half; null where none is known. The makers' own figure comes first.</summary>
    public Length? MostLowerStack => CupFigures.Of(FitCode).Lower is var (_, most) ? Hundredths(most) : null;

    /// <summary>What the stack heights rest on; those of EC34 are one published example, not a range.</summary>
    public Source StackSource => CupFigures.Of(FitCode).StackSource;

    /// <summary>The bearings that are usual in it; empty where it has loose balls or none is listed. Measure the bearing itself: makers' versions differ.</summary>
    public ImmutableArray<HeadsetBearing> Bearings
    {
        get
        {
            string listed = CupFigures.Of(FitCode).Bearings;
            string[] keys = listed.Length == 0 ? [] : listed.Split(' ');
            ImmutableArray<HeadsetBearing>.Builder bearings = ImmutableArray.CreateBuilder<HeadsetBearing>(keys.Length);
            foreach (string key in keys)
            {
                bearings.Add(HeadsetBearing.Find(key)!);
            }

            return bearings.MoveToImmutable();
        }
    }

    /// <summary>What a half can be, from what is measured on it; the heights part flush from external cups of one diameter.</summary>
    /// <param name="diameter">Outside diameter of the pressed part, or of the bearing where there is no cup.</param>
    /// <param name="upperStack">Height above the head tube, of an upper half.</param>
    /// <param name="lowerStack">Height below the head tube, of a lower half.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<HeadsetCup> Identify(MeasuredLength? diameter = null, MeasuredLength? upperStack = null, MeasuredLength? lowerStack = null) =>
        HeadsetCupDimensions.Table.Identify(diameter, upperStack, lowerStack);

    private static Length Hundredths(int hundredths) => Length.FromMillimeters(hundredths / 100d);

    /// <inheritdoc/>
    public static HeadsetCup OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<HeadsetCup> Read(ReadOnlySpan<char> text) => ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class HeadsetCupDimensions
    {
        public static readonly IdentificationTable<HeadsetCup> Table = new(
            [
                new("diameter", "outside caliper on the part that sits in the frame, two directions"),
                new("upper stack", "depth gauge from the top of the head tube to where the stem or the first spacer sits"),
                new("lower stack", "depth gauge from the foot of the head tube to the seat on the fork crown"),
            ],
            Rows(),
            c => c.FitKey);

        private static ImmutableArray<DimensionRow<HeadsetCup>> Rows()
        {
            ImmutableArray<DimensionRow<HeadsetCup>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<HeadsetCup>>(All.Length);
            foreach (HeadsetCup cup in All)
            {
                CupFigures figures = CupFigures.Of(cup.FitCode);
                rows.Add(new(cup, [(figures.LeastDiameter / 100m, figures.Diameter / 100m), Stack(figures.Upper), Stack(figures.Lower)], Apart(cup)));
            }

            return rows.MoveToImmutable();
        }

        // One example is no range: it rules nothing out.
        private static (decimal Least, decimal Most)? Stack((int Least, int Most)? stack) =>
            stack is var (least, most) && least < most ? (least / 100m, most / 100m) : null;

        private static string Apart(HeadsetCup cup) => cup.Style.FitKey switch
        {
            "EC" => "the bearing sits outside the head tube",
            "ZS" => "a cup whose bearing sits inside the head tube",
            _ => "no cup: the bearing alone, on a seat of the frame",
        };
    }
}
