using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.Drivetrain;

/// <summary>Whether a closed loop can be led through the rear triangle of a frame. Closed set, identity equality.</summary>
/// <remarks>A chain has a link that opens; a belt is one piece, so the frame has to open for it.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<RearTriangle>))]
[TypeConverter(typeof(InterfaceTypeConverter<RearTriangle>))]
public sealed class RearTriangle : Standard<RearTriangle>, IInterfaceValue<RearTriangle>
{
    private RearTriangle(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>No joint on the drive side: every usual frame.</summary>
    public static RearTriangle Closed { get; } = new(1, "closed", "closed rear triangle", Sources.BeltConversion, "one piece", "does not open", "no opening", "not split");

    /// <summary>A joint in seat stay, chain stay or drop-out of the drive side that unbolts.</summary>
    public static RearTriangle Opens { get; } = new(2, "opens", "rear triangle that opens", Sources.SplitFrames, "open", "split", "splits", "splitter", "split stay", "split seat stay", "split chain stay", "split drop-out", "belt-ready");

    /// <summary>Both.</summary>
    public static ImmutableArray<RearTriangle> All { get; } = [Closed, Opens];

    /// <inheritdoc/>
    public static string Called => "rear triangle";

    /// <inheritdoc/>
    public static RearTriangle OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<RearTriangle> Read(ReadOnlySpan<char> text) => ByName(text);
}
