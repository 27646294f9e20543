using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Lugwork;

/// <summary>What is known of the state of a part. Nothing said is not "used": a part of which nothing is stated is taken as it is listed. Closed set, identity equality.</summary>
/// <remarks>What is to be looked at before a part is called inspected is told by <c>Build.ToInspect()</c>. A figure of wear is a field of its own: the length of a chain over 24 pitches, the thickness of a rotor, the wall of a rim.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<PartCondition>))]
[TypeConverter(typeof(InterfaceTypeConverter<PartCondition>))]
public sealed class PartCondition : Standard<PartCondition>, IInterfaceValue<PartCondition>
{
    private PartCondition(int code, string key, string name, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
    }

    /// <summary>Never ridden.</summary>
    public static PartCondition New { get; } = new(1, "new", "new", Sources.CommonPractice, "unused", "never ridden");

    /// <summary>Used, looked over by the list for its kind, and nothing found.</summary>
    public static PartCondition Inspected { get; } = new(2, "inspected", "used and inspected", Sources.CommonPractice, "used inspected", "used, inspected", "used, checked");

    /// <summary>Used, and nobody has looked.</summary>
    public static PartCondition Used { get; } = new(3, "used", "used, not inspected", Sources.CommonPractice, "second hand", "secondhand", "used not inspected");

    /// <summary>Looked over and found worn out: past its mark, teeth hooked, a bearing with play that no adjusting takes away.</summary>
    public static PartCondition Worn { get; } = new(4, "worn", "worn out", Sources.CommonPractice, "worn out");

    /// <summary>Looked over and found cracked, dented, bent, scored or corroded through.</summary>
    public static PartCondition Damaged { get; } = new(5, "damaged", "damaged", Sources.CommonPractice, "cracked", "bent", "dented");

    /// <summary>It went through a crash or took a hard blow, and its maker has not cleared it since. One that was cleared is inspected.</summary>
    public static PartCondition Crashed { get; } = new(6, "crashed", "from a crash", Sources.CarbonCrashManual, "from a crash", "after a crash", "crash damage");

    /// <summary>Its maker has called it back, and the remedy has not been carried out.</summary>
    public static PartCondition Recalled { get; } = new(7, "recalled", "under a recall", Sources.CommonPractice, "recall", "under recall");

    /// <summary>Somebody was asked, and nobody knows. Judged like used: a part of which this is said is not taken as it is listed. "unknown" reads as this one, where a field left out says nothing.</summary>
    public static PartCondition NotKnown { get; } = new(8, "not-known", "of unknown condition", Sources.CommonPractice, "not known", "condition unknown");

    /// <summary>Every one, in the order of their codes.</summary>
    public static ImmutableArray<PartCondition> All { get; } = [New, Inspected, Used, Worn, Damaged, Crashed, Recalled, NotKnown];

    /// <inheritdoc/>
    public static string Called => "condition";

    /// <inheritdoc/>
    public static PartCondition OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<PartCondition> Read(ReadOnlySpan<char> text) => ByName(text);
}
