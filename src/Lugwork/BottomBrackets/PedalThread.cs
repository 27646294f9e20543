using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.BottomBrackets;

/// <summary>Thread by which a pedal screws into a crank; right-hand on the right, left-hand on the left. Closed set, identity equality.</summary>
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
    public static PedalThread French { get; } = new(3, "14x1.25", "14 mm x 1.25 mm, French", 14_000_000, Sources.PedalThreadList, "French", "M14x1.25", "French 14x1.25");

    /// <summary>Every thread.</summary>
    public static ImmutableArray<PedalThread> All { get; } = [NineSixteenths, Half, French];

    /// <inheritdoc/>
    public static string Called => "pedal thread";

    /// <summary>Nominal diameter.</summary>
    public Length Diameter => new Nanometres(_nanometres).ToLength();

    internal long DiameterNanometres => _nanometres;

    internal override Nanometres? MainLength => new(_nanometres);

    /// <inheritdoc/>
    public static PedalThread OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static Reading<PedalThread> Read(ReadOnlySpan<char> text) => ByName(Find(text) is null ? BracketText.Compact(text) : text);
}
