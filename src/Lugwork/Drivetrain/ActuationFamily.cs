using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Family of indexed shifters and rear derailleurs: cable pulled a click, and how far the derailleur moves for it. Closed set, identity equality.</summary>
/// <remarks>The weakest figures of the library: most rest on one page. No family has a published pull and a published ratio, see <see cref="Indexing"/>.</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ActuationFamily>))]
[TypeConverter(typeof(InterfaceTypeConverter<ActuationFamily>))]
public sealed class ActuationFamily : Standard<ActuationFamily>, IInterfaceValue<ActuationFamily>
{
    private ActuationFamily(int code, string key, string name, decimal ratio, Source? ratioSource, ImmutableArray<decimal> pulls, Source? pullSource, params ImmutableArray<string> names)
        : base(code, key, name, pullSource ?? ratioSource ?? Sources.ThickPlates, names)
    {
        Ratio = ratio == 0 ? null : ratio;
        RatioSource = ratioSource;
        Pulls = pulls;
        PullSource = pullSource;
    }

    /// <summary>Older road and off-road up to 9 speeds, and road 10: a ratio of about 1.7.</summary>
    public static ActuationFamily Older { get; } = new(1, "R", "older road and off-road to 9 speeds, road 10", 1.7m, Sources.PullBlog, [], null, "road 10", "ratio 1.7");

    /// <summary>Off-road 10: a ratio of about 1.2, also quoted 1.1.</summary>
    public static ActuationFamily OffRoad10 { get; } = new(2, "M10", "off-road 10-speed", 1.2m, Sources.PullBlog, [], null, "off-road 10");

    /// <summary>Road 11: 2.7 mm a click; the ratio of 1.39 follows by arithmetic from a remembered pitch.</summary>
    public static ActuationFamily Road11 { get; } = new(3, "R11", "road 11-speed", 1.39m, Sources.Derived, [2.7m], Sources.PullBlog, "road 11");

    /// <summary>Off-road 11: 3.6 mm a click; the ratio of 1.08 follows by arithmetic.</summary>
    public static ActuationFamily OffRoad11 { get; } = new(4, "M11", "off-road 11-speed", 1.08m, Sources.Derived, [3.6m], Sources.PullBlog, "off-road 11");

    /// <summary>Older 1:1: a ratio of about 1.1, from memory.</summary>
    public static ActuationFamily OneToOne { get; } = new(5, "1:1", "older 1:1", 1.1m, Sources.Memory, [], null, "1 to 1");

    /// <summary>Ten speeds with uneven clicks: five of 2.5 mm, two of 3.0, two of 3.5.</summary>
    public static ActuationFamily Uneven10 { get; } = new(6, "U10", "10-speed with uneven clicks", 0, null, [2.5m, 2.5m, 2.5m, 2.5m, 2.5m, 3m, 3m, 3.5m, 3.5m], Sources.PullScience, "uneven 10");

    /// <summary>Thick plates: an own, even pull for 9, 10 and 11 speeds of one pitch. Only chain and rings cross over.</summary>
    public static ActuationFamily ThickPlate { get; } = new(7, "LG", "thick plates (LG)", 0, null, [], null, "thick plates", "thick-plate");

    /// <summary>Every family.</summary>
    public static ImmutableArray<ActuationFamily> All { get; } = [Older, OffRoad10, Road11, OffRoad11, OneToOne, Uneven10, ThickPlate];

    /// <inheritdoc/>
    public static string Called => "actuation family";

    /// <summary>How far the derailleur moves for a millimetre of cable; null where no figure is known.</summary>
    public decimal? Ratio { get; }

    /// <summary>Where the ratio comes from: published, by arithmetic or from memory; null where there is none.</summary>
    public Source? RatioSource { get; }

    /// <summary>Cable pulled a click, on average; null where no figure is known.</summary>
    public Length? Pull => MeanPull is { } pull ? Length.FromMillimeters((double)pull) : null;

    /// <summary>Where the pull comes from; null where there is none.</summary>
    public Source? PullSource { get; }

    /// <summary>Every click pulls the same length, as far as is known.</summary>
    public bool HasEvenClicks => Pulls.Length < 2;

    internal ImmutableArray<decimal> Pulls { get; }

    internal decimal? MeanPull => Pulls.IsEmpty ? null : Pulls.Sum() / Pulls.Length;

    internal bool HasPublishedRatio => IsPublished(RatioSource);

    internal bool HasPublishedPull => IsPublished(PullSource);

    /// <inheritdoc/>
    public static ActuationFamily OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<ActuationFamily> Read(ReadOnlySpan<char> text) => ByName(text);

    private static bool IsPublished(Source? source) => source is { Kind: not (SourceKind.Memory or SourceKind.Derived or SourceKind.CommonPractice) };
}
