using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Brakes;

/// <summary>How a disc caliper is held. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<CaliperFoot>))]
[TypeConverter(typeof(InterfaceTypeConverter<CaliperFoot>))]
public sealed class CaliperFoot : Standard<CaliperFoot>, IInterfaceValue<CaliperFoot>
{
    private CaliperFoot(int code, string key, string name, int hundredths, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Hundredths = hundredths;
    }

    /// <summary>Post mount, holes 74 mm apart: nearly every caliper for posts and, on an adapter, for IS tabs.</summary>
    public static CaliperFoot Post { get; } = new(1, "post", "post mount caliper", 7420, Sources.MountTechInfo, "PM", "post mount");

    /// <summary>Flat mount.</summary>
    public static CaliperFoot Flat { get; } = new(2, "flat", "flat mount caliper", 3400, Sources.FlatMountProblem, "FM", "flat mount");

    /// <summary>Made for International Standard tabs without an adapter; old.</summary>
    public static CaliperFoot Tabs { get; } = new(3, "IS", "IS caliper", 5100, Sources.MountForum, "international standard");

    /// <summary>Every kind.</summary>
    public static ImmutableArray<CaliperFoot> All { get; } = [Post, Flat, Tabs];

    /// <inheritdoc/>
    public static string Called => "caliper mounting";

    /// <summary>Middle to middle of the caliper's two holes; 74.2 mm is often said to be 74, the 34 mm of flat mount are from memory.</summary>
    public Length HoleSpacing => Length.FromMillimeters(Hundredths / 100d);

    private int Hundredths { get; }

    /// <summary>What holds a caliper whose holes are this far apart; 68 mm and 22 mm are calipers of before 2000, for which there is no value here.</summary>
    /// <param name="holeSpacing">Middle to middle of the caliper's two holes.</param>
    /// <exception cref="ArgumentException">The reading is the default.</exception>
    public static Identification<CaliperFoot> Identify(MeasuredLength holeSpacing) => CaliperFootMeasures.Table.Identify(holeSpacing);

    /// <inheritdoc/>
    public static CaliperFoot OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<CaliperFoot> Read(ReadOnlySpan<char> text) => ByName(text);

    private static class CaliperFootMeasures
    {
        public static IdentificationTable<CaliperFoot> Table { get; } = new(
            [new("hole spacing", "caliper between the edges of the two holes, plus one hole")],
            [
                new(Post, [(74m, 74.2m)], "its bolts point at the rotor's middle plane"),
                new(Flat, [(34m, 34m)], "lies flat on the stay or on a plate"),
                new(Tabs, [(51m, 51m)], "its bolts run parallel to the axle"),
            ],
            foot => foot.FitKey);
    }
}
