using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>Offset of a fork, by the kind of bicycle: how far the axle stands in front of the steering axis. Closed set, identity equality.</summary>
/// <remarks>The ranges overlap: an offset alone does not tell the kind.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ForkOffset>))]
[TypeConverter(typeof(InterfaceTypeConverter<ForkOffset>))]
public sealed class ForkOffset : Standard<ForkOffset>, IInterfaceValue<ForkOffset>
{
    private readonly int _typical;
    private readonly int _least;
    private readonly int _most;

    private ForkOffset(int code, string key, string name, Source source, int typical, int least, int most, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _typical = typical;
        _least = least;
        _most = most;
    }

    /// <summary>Road bicycles.</summary>
    public static ForkOffset Road { get; } = new(1, "road", "road fork offset", Sources.Memory, 43, 40, 50);

    /// <summary>Gravel bicycles.</summary>
    public static ForkOffset Gravel { get; } = new(2, "gravel", "gravel fork offset", Sources.Memory, 50, 45, 55);

    /// <summary>29 in off-road forks of the 2010s.</summary>
    public static ForkOffset Mtb29 { get; } = new(3, "29", "29 in fork offset, 2010s", Sources.RakeAndTrail, 51, 46, 51, "29 long", "29 long offset");

    /// <summary>29 in off-road forks of short offset.</summary>
    public static ForkOffset Mtb29Short { get; } = new(4, "29-short", "29 in short fork offset", Sources.Memory, 44, 41, 44, "29 short offset");

    /// <summary>27.5 in off-road forks.</summary>
    public static ForkOffset Mtb27Point5 { get; } = new(5, "27.5", "27.5 in fork offset", Sources.Memory, 42, 37, 46);

    /// <summary>26 in off-road forks.</summary>
    public static ForkOffset Mtb26 { get; } = new(6, "26", "26 in fork offset", Sources.Memory, 40, 38, 41);

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<ForkOffset> All { get; } = [Road, Gravel, Mtb29, Mtb29Short, Mtb27Point5, Mtb26];

    /// <inheritdoc/>
    public static string Called => "fork offset";

    /// <summary>The usual offset.</summary>
    public Length Typical => Length.FromMillimeters(_typical);

    /// <summary>Smallest offset of the kind.</summary>
    public Length Least => Length.FromMillimeters(_least);

    /// <summary>Largest offset of the kind.</summary>
    public Length Most => Length.FromMillimeters(_most);

    /// <summary>What kinds have an offset; those whose usual offset it is come first.</summary>
    /// <param name="offset">From the steering axis to the axle, square to the axis.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<ForkOffset> Identify(MeasuredLength offset)
    {
        Identification<ForkOffset> found = ForkOffsetDimensions.Table.Identify(offset);
        decimal read = offset.Millimetres;
        return new([.. found.Candidates.OrderBy(c => c.DeviationMillimetres).ThenBy(c => Math.Abs(c.Value._typical - read))], found.Next);
    }

    /// <inheritdoc/>
    public static ForkOffset OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<ForkOffset> Read(ReadOnlySpan<char> text) =>
        ByName(text) is { Values.IsEmpty: false } read ? read : SizedText.IsLength(text) ? TextReading<ForkOffset>.Refused("a kind of fork is expected, such as road or 29; a figure in millimetres is measured, not read") : ByName(text);

    /// <summary>Made when something is first identified.</summary>
    private static class ForkOffsetDimensions
    {
        public static readonly IdentificationTable<ForkOffset> Table = new([new("offset", "rule from the steering axis to the axle, square to the axis")], Rows(), o => o.TradeName);

        private static ImmutableArray<DimensionRow<ForkOffset>> Rows()
        {
            ImmutableArray<DimensionRow<ForkOffset>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<ForkOffset>>(All.Length);
            foreach (ForkOffset kind in All)
            {
                rows.Add(new(kind, [(kind._least, kind._most)], FormattableString.Invariant($"usually {kind._typical} mm")));
            }

            return rows.MoveToImmutable();
        }
    }
}
