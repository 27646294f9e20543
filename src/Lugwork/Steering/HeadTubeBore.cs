using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Steering;

/// <summary>One end of a head tube, by what it takes. Closed set, identity equality.</summary>
/// <remarks>Named by the headset code that it takes. Bore ranges are the finished ones; <see cref="LimitsSource"/> says what they rest on.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<HeadTubeBore>))]
[TypeConverter(typeof(InterfaceTypeConverter<HeadTubeBore>))]
public sealed class HeadTubeBore : Standard<HeadTubeBore>, IInterfaceValue<HeadTubeBore>
{
    private readonly int _least;
    private readonly int _most;
    private readonly string[] _steerers;
    private readonly string[] _seats;

    private HeadTubeBore(int code, string key, string name, Source source, int leastHundredths, int mostHundredths, bool integrated, string steerers, string seats, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _least = leastHundredths;
        _most = mostHundredths;
        IsIntegrated = integrated;
        _steerers = steerers.Split(' ');
        _seats = seats.Split(' ');
    }

    /// <summary>1 in JIS, 29.85 to 29.90 mm.</summary>
    public static HeadTubeBore Ec29 { get; } = new(1, "EC29", "1 in JIS bore (29.9)", Sources.HeadsetGuide, 2985, 2990, false, "25.4", "26.4 27", "29.9", "JIS 1 in");

    /// <summary>1 in ISO, 30.05 to 30.10 mm.</summary>
    public static HeadTubeBore Ec30 { get; } = new(2, "EC30", "1 in ISO bore (30.1)", Sources.HeadsetGuide, 3005, 3010, false, "25.4", "26.4", "30.1", "ISO 1 in");

    /// <summary>1-1/8 in, 33.90 to 33.95 mm.</summary>
    public static HeadTubeBore Ec34 { get; } = new(3, "EC34", "34 mm bore (EC34)", Sources.HeadsetCodeNote, 3390, 3395, false, "28.6", "30", "34");

    /// <summary>1-1/4 in, 36.90 to 36.95 mm.</summary>
    public static HeadTubeBore Ec37 { get; } = new(4, "EC37", "37 mm bore (EC37)", Sources.HeadsetTypes, 3690, 3695, false, "31.8", "33", "37");

    /// <summary>Early semi-integrated, 41.35 to 41.40 mm; not the 41.1 mm seat of IS41. One table gives it to 1 in steerers, another to 1-1/8 in ones: the number behind the slash decides.</summary>
    public static HeadTubeBore Zs41 { get; } = new(5, "ZS41", "41.4 mm bore (ZS41)", Sources.HeadsetTypes, 4135, 4140, false, "25.4 28.6", "27 30");

    /// <summary>43.95 to 44.00 mm; takes ZS44 and EC44.</summary>
    public static HeadTubeBore Bore44 { get; } = new(6, "44", "44 mm bore (ZS44 or EC44)", Sources.HeadTubeReaming, 4395, 4400, false, "25.4 28.6", "26.4 30 33 39.8", "ZS44", "EC44", "44.0");

    /// <summary>49.57 to 49.61 mm; takes ZS49 and EC49.</summary>
    public static HeadTubeBore Bore49 { get; } = new(7, "49", "49.6 mm bore (ZS49 or EC49)", Sources.HeadTubeCutters, 4957, 4961, false, "28.6 38.1", "30 39.8", "ZS49", "EC49", "49.6");

    /// <summary>54.90 to 54.95 mm; rare, not to be rounded to 56.</summary>
    public static HeadTubeBore Zs55 { get; } = new(8, "ZS55", "55 mm bore (ZS55)", Sources.Memory, 5490, 5495, false, "", "39.8", "55");

    /// <summary>55.90 to 55.95 mm; takes ZS56 and EC56.</summary>
    public static HeadTubeBore Bore56 { get; } = new(9, "56", "56 mm bore (ZS56 or EC56)", Sources.HeadsetChart, 5590, 5595, false, "28.6 38.1", "30 39.8", "ZS56", "EC56", "56.0");

    /// <summary>61.90 to 61.95 mm. An outside reading of 62 is not this.</summary>
    public static HeadTubeBore Zs62 { get; } = new(10, "ZS62", "62 mm bore (ZS62)", Sources.Memory, 6190, 6195, false, "", "39.8");

    /// <summary>Integrated, 38.10 to 38.20 mm.</summary>
    public static HeadTubeBore Is38 { get; } = new(11, "IS38", "IS38 seat", Sources.HeadsetTypes, 3810, 3820, true, "25.4", "26.4");

    /// <summary>Integrated, 41.10 to 41.20 mm.</summary>
    public static HeadTubeBore Is41 { get; } = new(12, "IS41", "IS41 seat", Sources.BearingSeller, 4110, 4120, true, "28.6", "30");

    /// <summary>Integrated, 41.95 to 42.05 mm; other diameter and angle than IS41.</summary>
    public static HeadTubeBore Is42 { get; } = new(13, "IS42", "IS42 seat", Sources.Memory, 4195, 4205, true, "28.6", "30");

    /// <summary>Integrated, 45.95 to 46.05 mm.</summary>
    public static HeadTubeBore Is46 { get; } = new(14, "IS46", "IS46 seat", Sources.Memory, 4595, 4605, true, "", "33");

    /// <summary>Integrated, 47.05 to 47.15 mm.</summary>
    public static HeadTubeBore Is47 { get; } = new(15, "IS47", "IS47 seat", Sources.CarbonFrameBearings, 4705, 4715, true, "", "33");

    /// <summary>Integrated, 49.05 to 49.15 mm.</summary>
    public static HeadTubeBore Is49 { get; } = new(16, "IS49", "IS49 seat", Sources.ForkCutting, 4905, 4915, true, "", "37");

    /// <summary>Integrated, 50.95 to 51.05 mm.</summary>
    public static HeadTubeBore Is51 { get; } = new(17, "IS51", "IS51 seat", Sources.Memory, 5095, 5105, true, "", "39.8");

    /// <summary>Integrated, 52.05 to 52.15 mm.</summary>
    public static HeadTubeBore Is52 { get; } = new(18, "IS52", "IS52 seat", Sources.CableHeadsets, 5205, 5215, true, "28.6 38.1", "30 39.8");

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<HeadTubeBore> All { get; } =
    [
        Ec29, Ec30, Ec34, Ec37, Zs41, Bore44, Bore49, Zs55,
        Bore56, Zs62, Is38, Is41, Is42, Is46, Is47, Is49,
        Is51, Is52,
    ];

    /// <inheritdoc/>
    public static string Called => "head tube bore";

    /// <summary>The bearing sits straight in the frame; no cup can be pressed in.</summary>
    public bool IsIntegrated { get; }

    /// <summary>Smallest finished bore.</summary>
    public Length Least => Length.FromMillimeters(_least / 100d);

    /// <summary>Largest finished bore.</summary>
    public Length Most => Length.FromMillimeters(_most / 100d);

    /// <summary>The size that the trade names it by; of some it lies up to 0.05 mm above the finished bore.</summary>
    public Length Nominal => Length.FromMillimeters(HeadTubeFigures.Nominal(FitCode) / 100d);

    /// <summary>What the limits of the bore rest on.</summary>
    public Source LimitsSource => HeadTubeFigures.Limits(FitCode);

    /// <summary>Steerers for which upper halves of this bore are listed; empty where none is.</summary>
    public ImmutableArray<SteererSize> UpperSteerers
    {
        get
        {
            ImmutableArray<SteererSize>.Builder sizes = ImmutableArray.CreateBuilder<SteererSize>();
            foreach (SteererSize size in SteererSize.All)
            {
                if (TakesUpper(size))
                {
                    sizes.Add(size);
                }
            }

            return sizes.ToImmutable();
        }
    }

    /// <summary>Crown-race seats for which lower halves of this bore are listed.</summary>
    public ImmutableArray<CrownSeat> LowerSeats
    {
        get
        {
            ImmutableArray<CrownSeat>.Builder seats = ImmutableArray.CreateBuilder<CrownSeat>();
            foreach (CrownSeat seat in CrownSeat.All)
            {
                if (TakesLower(seat))
                {
                    seats.Add(seat);
                }
            }

            return seats.ToImmutable();
        }
    }

    internal int LeastHundredths => _least;

    /// <summary>Upper halves for this bore and steerer are listed.</summary>
    internal bool TakesUpper(SteererSize steerer) => Array.IndexOf(_steerers, steerer.FitKey) >= 0;

    /// <summary>Lower halves for this bore and crown seat are listed.</summary>
    internal bool TakesLower(CrownSeat seat) => Array.IndexOf(_seats, seat.FitKey) >= 0;

    /// <summary>What halves are made for this end is known from memory alone.</summary>
    internal bool PairsFromMemory => this == Ec37 || this == Zs41 || this == Bore49 || this == Zs55 || this == Zs62 || this == Is38 || this == Is46 || this == Is47 || this == Is51;

    /// <summary>That upper halves for this steerer are made is known from memory alone.</summary>
    internal bool UpperFromMemory(SteererSize steerer) =>
        PairsFromMemory || (steerer == SteererSize.Mm25Point4 && this == Bore44) || (steerer == SteererSize.Mm38Point1 && (this == Bore56 || this == Is52));

    /// <summary>That lower halves for this seat are made is known from memory alone.</summary>
    internal bool LowerFromMemory(CrownSeat seat) =>
        PairsFromMemory || (seat == CrownSeat.Mm33 && this == Bore44) || (seat == CrownSeat.Mm26Point4 && this == Bore44) || (seat == CrownSeat.Mm30 && this == Is42);

    /// <summary>Bore less another diameter, hundredths of a millimetre.</summary>
    internal int Room(int hundredths) => _least - hundredths;

    /// <summary>The ends whose finished bore lies within the error of a measured one. Inside the tube, never its outside: a reading of 62 is the outside of a 1.5 in head tube, so ZS62 has to be stated.</summary>
    /// <param name="millimetres">What was measured, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<HeadTubeBore> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(b => b != Zs62 && (millimetres - error) * 100m <= b._most && (millimetres + error) * 100m >= b._least)];

    /// <summary>What an end can be, from what is measured on it. The bore alone leaves some pairs open; the part that came out of it closes them. A reading of 62 alone is the outside of a 1.5 in head tube, never ZS62.</summary>
    /// <param name="bore">Inside diameter of the end, never the outside of the tube.</param>
    /// <param name="part">Outside diameter of the cup or the bearing that was in it.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<HeadTubeBore> Identify(MeasuredLength? bore = null, MeasuredLength? part = null) =>
        (part is null ? HeadTubeBoreDimensions.BoreAlone : HeadTubeBoreDimensions.Table).Identify(bore, part);

    /// <inheritdoc/>
    public static HeadTubeBore OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<HeadTubeBore> Read(ReadOnlySpan<char> text) => ByName(WithoutMillimetres(text));

    /// <summary>Made when something is first identified.</summary>
    private static class HeadTubeBoreDimensions
    {
        public static readonly IdentificationTable<HeadTubeBore> Table = Of(All);

        public static readonly IdentificationTable<HeadTubeBore> BoreAlone = Of(All.Remove(Zs62));

        private static IdentificationTable<HeadTubeBore> Of(ImmutableArray<HeadTubeBore> bores)
        {
            ImmutableArray<DimensionRow<HeadTubeBore>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<HeadTubeBore>>(bores.Length);
            foreach (HeadTubeBore bore in bores)
            {
                rows.Add(new(bore, [(bore._least / 100m, Math.Max(bore._most, HeadTubeFigures.Nominal(bore.FitCode)) / 100m), Part(bore)], HeadTubeFigures.TellsApart(bore.FitCode)));
            }

            return new(
                [
                    new("bore", "inside caliper in the end of the head tube, cups out, two directions"),
                    new("cup or bearing", "outside caliper on the cup or bearing that was in it"),
                ],
                rows.MoveToImmutable(),
                b => b.TradeName);
        }

        private static (decimal Least, decimal Most)? Part(HeadTubeBore bore)
        {
            int least = int.MaxValue;
            int most = 0;
            foreach (HeadsetCup cup in HeadsetCup.All)
            {
                if (cup.Bore == bore)
                {
                    CupFigures figures = CupFigures.Of(cup.FitCode);
                    least = Math.Min(least, figures.LeastDiameter);
                    most = Math.Max(most, figures.Diameter);
                }
            }

            return (least / 100m, most / 100m);
        }
    }
}
