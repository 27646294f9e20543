using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork.BottomBrackets;

/// <summary>An adapter between bottom bracket and shell, by where it bears. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<ShellAdapterKind>))]
[TypeConverter(typeof(InterfaceTypeConverter<ShellAdapterKind>))]
public sealed class ShellAdapterKind : Standard<ShellAdapterKind>, IInterfaceValue<ShellAdapterKind>
{
    private ShellAdapterKind(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Bears on the faces of the shell and carries the bearings outside.</summary>
    public static ShellAdapterKind Outboard { get; } = new(1, "outboard", "outboard adapter", Sources.ShellAdapterReport, "outboard cups adapter");

    /// <summary>Sits in the bore and does not bear on the faces.</summary>
    public static ShellAdapterKind Inside { get; } = new(2, "inside", "adapter inside the bore", Sources.CommonPractice, "reducer", "sleeve");

    /// <summary>Every one.</summary>
    public static ImmutableArray<ShellAdapterKind> All { get; } = [Outboard, Inside];

    /// <inheritdoc/>
    public static string Called => "bottom-bracket adapter";

    /// <inheritdoc/>
    public static ShellAdapterKind OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<ShellAdapterKind> Read(ReadOnlySpan<char> text) => ByName(text);
}
