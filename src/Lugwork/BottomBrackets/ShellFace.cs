using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.BottomBrackets;

/// <summary>What the end of a bottom-bracket shell offers an adapter to bear on. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<ShellFace>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShellFace>))]
public sealed class ShellFace : Standard<ShellFace>, IInterfaceValue<ShellFace>
{
    private ShellFace(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Bare metal, faced square.</summary>
    public static ShellFace Bare { get; } = new(1, "bare", "bare metal, faced", Sources.ShellAdapterReport, "faced", "bare metal");

    /// <summary>Paint or lacquer on the face.</summary>
    public static ShellFace Painted { get; } = new(2, "painted", "painted face", Sources.ShellAdapterReport, "paint", "lacquered");

    /// <summary>An insert that its maker made for outboard bearings.</summary>
    public static ShellFace OutboardInsert { get; } = new(3, "insert-for-outboard", "insert made for outboard bearings", Sources.ShellAdapterReport, "insert for outboard");

    /// <summary>An insert that was made for bearings inside the shell.</summary>
    public static ShellFace OtherInsert { get; } = new(4, "other-insert", "insert not made for outboard bearings", Sources.ShellAdapterReport, "insert for inboard", "unsupported insert");

    /// <summary>Every one.</summary>
    public static ImmutableArray<ShellFace> All { get; } = [Bare, Painted, OutboardInsert, OtherInsert];

    /// <inheritdoc/>
    public static string Called => "face of the shell";

    /// <inheritdoc/>
    public static ShellFace OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<ShellFace> Read(ReadOnlySpan<char> text) => ByName(text);
}
