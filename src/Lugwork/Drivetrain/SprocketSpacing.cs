using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>How the sprockets of one family stand beside each other: thickness, spacer, pitch. Closed set, identity equality.</summary>
/// <remarks>Figures of 11 speeds and of the 8-spline family are the weakest: several pages differ, and where steps are not all alike the pitch is an average. Pitch = sprocket + spacer, mm, by "Frame/hub spacing and sprocket spacing crib sheet" and others: each row names its source; where it stands in a frame, see <see cref="RearChainline"/>.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<SprocketSpacing>))]
[TypeConverter(typeof(InterfaceTypeConverter<SprocketSpacing>))]
public sealed class SprocketSpacing : Standard<SprocketSpacing>, IInterfaceValue<SprocketSpacing>
{
    private SprocketSpacing(int code, string key, string name, int speeds, int sprocket, int spacer, (int Least, int Most) pitch, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Speeds = speeds;
        (SprocketMicrometres, SpacerMicrometres, LeastMicrometres, MostMicrometres) = (sprocket, spacer, pitch.Least, pitch.Most);
    }

    /// <summary>Every spacing, few speeds before many; the 8-spline family, the thick plates and one sprocket last.</summary>
    public static ImmutableArray<SprocketSpacing> All { get; } =
    [
        Of(1, "5-freewheel", "5-speed freewheel", 5, 2_000, 3_500, Sources.SpacingCribSheet),
        Of(2, "5-freewheel-narrow", "5-speed freewheel, narrow sprockets", 5, 1_850, 3_500, Sources.SpacingCribSheet),
        Of(3, "6-freewheel", "6-speed freewheel", 6, 2_000, 3_500, Sources.SprocketSpacing, "6", "6-speed"),
        Of(4, "7", "7-speed freewheel or HG", 7, 1_800, 3_200, Sources.SprocketSpacing, "7-speed", "7-speed HG"),
        Of(5, "8", "8-speed HG", 8, 1_800, 3_000, Sources.SprocketSpacing),
        Of(6, "9", "9-speed HG", 9, 1_800, 2_540, Sources.SprocketSpacing),
        Of(7, "10", "10-speed HG", 10, 1_600, 2_350, Sources.TenSpeedExample),
        new(8, "11-close", "11-speed HG, close road", 11, 1_600, 2_140, (3_690, 3_740), Sources.Memory, "11-speed close"),
        Of(9, "11-wide", "11-speed, wide range", 11, 1_600, 2_300, Sources.CassetteWidths, "11-speed wide"),
        Of(10, "12", "12-speed HG-fit and off-road", 12, 1_600, 2_000, Sources.CassetteWidths, "12-speed"),
        Of(11, "9-8-spline", "9-speed 8-spline", 9, 1_750, 2_800, Sources.Memory),
        new(12, "10-8-spline", "10-speed 8-spline", 10, 0, 2_550, (4_150, 4_250), Sources.CassetteSpacers),
        new(13, "11-8-spline", "11-speed 8-spline", 11, 1_600, 0, (3_760, 3_850), Sources.CogPitch),
        new(14, "LG-9", "9-speed thick plates", 9, 0, 0, default, Sources.ThickPlates),
        new(15, "LG-10", "10-speed thick plates", 10, 0, 0, default, Sources.ThickPlates),
        new(16, "LG-11", "11-speed thick plates", 11, 0, 0, default, Sources.ThickPlates),
        new(17, "single", "one sprocket", 1, 0, 0, default, Sources.HubGearPage, "1-speed", "single-speed", "single speed", "hub gear"),
    ];

    /// <inheritdoc/>
    public static string Called => "sprocket spacing";

    /// <summary>One sprocket, with nothing beside it: gears, if there are any, are inside the hub.</summary>
    public static SprocketSpacing Single => All[16];

    /// <summary>Number of sprockets.</summary>
    public int Speeds { get; }

    /// <summary>Thickness of one sprocket; null where it is not known.</summary>
    public Length? Sprocket => Quantity(SprocketMicrometres);

    /// <summary>Thickness of one spacer; null where it is not known, or not all are alike.</summary>
    public Length? Spacer => Quantity(SpacerMicrometres);

    /// <summary>Smallest printed distance from one sprocket to the next, middle to middle; null where it is not known.</summary>
    public Length? LeastPitch => Quantity(LeastMicrometres);

    /// <summary>Largest printed distance from one sprocket to the next, middle to middle; null where it is not known. Equal to the smallest where the pages agree.</summary>
    public Length? MostPitch => Quantity(MostMicrometres);

    /// <summary>All steps are equal. The 11-speed 8-spline family has unequal ones, and the pitch is their average.</summary>
    public bool HasEqualSteps => FitCode != 13;

    /// <summary>Thickness of all sprockets and spacers: pitches and one sprocket, by the largest pitch; null where one of both is not known.</summary>
    public Length? Stack => Quantity(StackMicrometres);

    /// <summary>From the middle of the first sprocket to the middle of the last, by the largest pitch; null where it is not known.</summary>
    public Length? FirstToLast => Quantity((Speeds - 1) * MostMicrometres);

    internal int SprocketMicrometres { get; }

    internal int SpacerMicrometres { get; }

    internal int LeastMicrometres { get; }

    internal int MostMicrometres { get; }

    internal int StackMicrometres => MostMicrometres == 0 || SprocketMicrometres == 0 ? 0 : ((Speeds - 1) * MostMicrometres) + SprocketMicrometres;

    /// <inheritdoc/>
    public static SprocketSpacing OfFitCode(long code) => ByCode(code);

    /// <summary>Where the sprockets stand in a frame, counted from the inner faces of its ends, by a model that is right to about 2 mm; null where the stack is not known.</summary>
    /// <remarks>The recess of a thru-axle end is not counted: it lies outside the inner face. By the width over the hub's end faces, recess counted: <see cref="InRecessedEnds"/>.</remarks>
    /// <param name="innerGap">Between the inner faces of the ends: 135 for a recessed 142, and the width over the locknuts where the ends have no recess.</param>
    /// <param name="innerFaceToSmallest">From the inner face of the end to the outer face of the smallest sprocket; 3 mm, the one published measurement, where it is left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is a default, or the largest sprocket would stand on the other side of the frame.</exception>
    public RearChainline? InInnerGap(Dimension innerGap, Dimension? innerFaceToSmallest = null) =>
        StackMicrometres == 0 ? null : RearChainline.Of(this, innerGap.Millimetres, innerFaceToSmallest?.Millimetres ?? RearChainline.UsualEnd);

    /// <summary>The same by the width over the hub's end faces, which stand in a recess of each end; null where the stack is not known.</summary>
    /// <param name="overEndFaces">Over the end faces of the hub: 142, 148, 157.</param>
    /// <param name="recessEachSide">How deep each end is recessed, 0 to 10 mm: 3.5 of a frame for 142, 148 or 157.</param>
    /// <param name="innerFaceToSmallest">From the inner face of the end, not from the hub's end face, to the outer face of the smallest sprocket; 3 mm where it is left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is a default or out of range, or the largest sprocket would stand on the other side of the frame.</exception>
    public RearChainline? InRecessedEnds(Dimension overEndFaces, Length recessEachSide, Dimension? innerFaceToSmallest = null)
    {
        decimal gap = overEndFaces.Millimetres - (2 * NumberRange.Exact(recessEachSide, 0, 10).Millimetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gap, nameof(overEndFaces));
        return InInnerGap(Dimension.OfMillimetres(gap), innerFaceToSmallest);
    }

    /// <summary>Reads a key or a name; a number of speeds that several families have is all of them.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<SprocketSpacing> Read(ReadOnlySpan<char> text)
    {
        const string Families = "families of this many speeds differ: say close or wide, 8-spline, or thick plates (LG)";
        ReadOnlySpan<char> said = Trim(text);
        if (said.Length < 10)
        {
            ReadOnlySpan<char> word = said.EndsWith("-speed", StringComparison.OrdinalIgnoreCase) || said.EndsWith(" speed", StringComparison.OrdinalIgnoreCase) ? said[..^6] : said.EndsWith("s", StringComparison.OrdinalIgnoreCase) ? said[..^1] : said;
            ImmutableArray<SprocketSpacing> several = word switch
            {
                "5" => [All[0], All[1]],
                "11" => [All[7], All[8], All[12], All[15]],
                "9" when word.Length < said.Length => [All[5], All[10], All[13]],
                "10" when word.Length < said.Length => [All[6], All[11], All[14]],
                _ => [],
            };
            if (!several.IsEmpty)
            {
                return TextReading<SprocketSpacing>.Several(several, Families);
            }

            if (word is "8" or "12")
            {
                return TextReading<SprocketSpacing>.Of(word is "8" ? All[4] : All[9]);
            }
        }

        return ByName(said);
    }

    private static SprocketSpacing Of(int code, string key, string name, int speeds, int sprocket, int spacer, Source source, params ImmutableArray<string> names) =>
        new(code, key, name, speeds, sprocket, spacer, (sprocket + spacer, sprocket + spacer), source, names);

    private static Length? Quantity(int micrometres) => micrometres == 0 ? null : Length.FromMicrometers(micrometres);
}
