using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Class of Q factor: the distance between the outer faces of the two arms, where the pedals screw in. Closed set, identity equality.</summary>
/// <remarks>The ranges are what is usual for the class, no limit of fit.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<QFactorClass>))]
[TypeConverter(typeof(InterfaceTypeConverter<QFactorClass>))]
public sealed class QFactor : Standard<QFactorClass>, IInterfaceValue<QFactorClass>
{
    private QFactor(int code, string key, string name, int least, int most, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        (LeastMillimetres, MostMillimetres) = (least, most);
    }

    /// <summary>Road cranks.</summary>
    public static QFactor Road { get; } = new(1, "road", "road, 145 to 146 mm", 145, 146, Sources.CrankTable);

    /// <summary>Gravel cranks.</summary>
    public static QFactor Gravel { get; } = new(2, "gravel", "gravel, 150 to 151 mm", 150, 151, Sources.CrankTable);

    /// <summary>Off-road cranks; from memory.</summary>
    public static QFactor OffRoad { get; } = new(3, "off-road", "off-road, 162 to 178 mm", 162, 178, Sources.Memory, "MTB");

    /// <summary>Cranks of fat bicycles; from memory.</summary>
    public static QFactor Fat { get; } = new(4, "fat", "fat, 203 to 230 mm", 203, 230, Sources.Memory);

    /// <summary>Every class, narrow before wide.</summary>
    public static ImmutableArray<QFactorClass> All { get; } = [Road, Gravel, OffRoad, Fat];

    /// <inheritdoc/>
    public static string Called => "Q factor";

    /// <summary>The narrowest that is usual.</summary>
    public Length Least => Length.FromMillimeters(LeastMillimetres);

    /// <summary>The widest that is usual.</summary>
    public Length Most => Length.FromMillimeters(MostMillimetres);

    internal int LeastMillimetres { get; }

    internal int MostMillimetres { get; }

    /// <inheritdoc/>
    public static QFactor OfFitCode(long code) => ByCode(code);

    /// <summary>The classes whose usual range is within the error of a measured width.</summary>
    /// <param name="millimetres">What was measured over the arms, millimetres.</param>
    /// <param name="error">How far it may be out to either side, millimetres.</param>
    public static ImmutableArray<QFactorClass> WithinError(decimal millimetres, decimal error) =>
        [.. All.Where(q => millimetres + error >= q.LeastMillimetres && millimetres - error <= q.MostMillimetres)];

    /// <inheritdoc/>
    public static TextReading<QFactorClass> Read(ReadOnlySpan<char> text) =>
        ByName(text) is { Values.IsEmpty: false } read ? read : SizedText.IsLength(text) ? TextReading<QFactorClass>.Refused("a class is expected, such as road or gravel; a figure in millimetres is measured, not read") : ByName(text);
}
