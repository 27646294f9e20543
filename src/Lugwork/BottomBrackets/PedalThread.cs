using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.BottomBrackets;

/// <summary>Thread by which a pedal screws into a crank; right-hand on the right, left-hand on the left. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<PedalThread>))]
[TypeConverter(typeof(InterfaceTypeConverter<PedalThread>))]
public sealed class PedalThread : Standard<PedalThread>, IInterfaceValue<PedalThread>
{
    private readonly int _nanometres;

    private PedalThread(int code, string key, string name, int nanometres, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _nanometres = nanometres;
    }

    /// <summary>9/16 in x 20 tpi: three-piece cranks.</summary>
    public static PedalThread NineSixteenths { get; } = new(1, "9/16x20", "9/16 in x 20 tpi", 14_287_500, Sources.PedalAttachment, "9/16", "9/16 in", "9/16\"", "9/16\" x 20", "9/16 x 20 tpi");

    /// <summary>1/2 in x 20 tpi: one-piece cranks.</summary>
    public static PedalThread Half { get; } = new(2, "1/2x20", "1/2 in x 20 tpi", 12_700_000, Sources.OnePiecePedals, "1/2", "1/2 in", "1/2\"", "1/2\" x 20", "1/2 x 20 tpi");

    /// <summary>14 mm x 1.25 mm: old French cranks.</summary>
    public static PedalThread French { get; } = new(3, "14x1.25", "14 mm x 1.25 mm, French", 14_000_000, Sources.PedalThreadList, "French", "14 mm", "M14x1.25", "French 14x1.25");

    /// <summary>Every thread.</summary>
    public static ImmutableArray<PedalThread> All { get; } = [NineSixteenths, Half, French];

    /// <inheritdoc/>
    public static string Called => "pedal thread";

    /// <summary>Nominal diameter.</summary>
    public Length Diameter => new Nanometres(_nanometres).ToLength();

    /// <summary>Pitch: 1.27 mm for 20 threads to the inch.</summary>
    public Length Pitch => Length.FromMillimeters(this == French ? 1.25 : 1.27);

    internal long DiameterNanometres => _nanometres;

    internal override Nanometres? MainLength => new(_nanometres);

    /// <summary>What thread a measured pedal spindle can be, likeliest first. The pitches are too near to each other to tell.</summary>
    /// <param name="diameter">Over the crests of the pedal's thread; they measure up to 0.25 mm under its name (thread tolerance, from memory).</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<PedalThread> Identify(MeasuredLength diameter) => PedalsMeasured.Table.Identify(diameter);

    /// <inheritdoc/>
    public static PedalThread OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<PedalThread> Read(ReadOnlySpan<char> text) => ByName(text) is { Values.IsEmpty: false } read ? read : ByName(BracketText.Compact(text));

    private static class PedalsMeasured
    {
        public static readonly IdentificationTable<PedalThread> Table = new(
            [new("diameter", "caliper over the crests of the thread")],
            [
                Row(NineSixteenths, "pedals of three-piece cranks; 0.29 mm above the French thread"),
                Row(Half, "pedals of one-piece cranks"),
                Row(French, "old French cranks; 0.29 mm under 9/16 in"),
            ],
            t => t.FitKey);

        private static DimensionRow<PedalThread> Row(PedalThread thread, string apart)
        {
            decimal millimetres = thread._nanometres / (decimal)Nanometres.PerMillimetre;
            return new(thread, [ThreadCrests.Of(millimetres)], apart, millimetres);
        }
    }
}
