using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>A class of forks by wheel, travel or purpose, with the length from axle to crown that is usual for it. Closed set, identity equality.</summary>
/// <remarks>
/// Lengths are what forks of the class measure, from memory with 10 to 12 mm to either side; published figures stand beside them where any were found;
/// they help to tell a fork, not to choose one. A suspension fork rides 20 to 30 percent of its travel lower. Whether a fork suits a frame
/// follows from the frame maker's own limits.
/// </remarks>
[JsonConverter(typeof(InterfaceJsonConverter<ForkClass>))]
[TypeConverter(typeof(InterfaceTypeConverter<ForkClass>))]
public sealed class ForkClass : Standard<ForkClass>, IInterfaceValue<ForkClass>
{
    private readonly int _travel;
    private readonly int _corrected;
    private readonly int _least;
    private readonly int _most;
    private readonly int _publishedLeast;
    private readonly int _publishedMost;

    private ForkClass(int code, string key, string name, Source source, int travel, int corrected, CrownType? crown, int leastTenths, int mostTenths, int publishedLeast, int publishedMost, Source? published, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        _travel = travel;
        _corrected = corrected;
        Crown = crown;
        _least = leastTenths;
        _most = mostTenths;
        _publishedLeast = publishedLeast;
        _publishedMost = publishedMost;
        PublishedSource = published;
    }

    /// <summary>Every class, in the order of the table: suspension forks by wheel, then rigid ones.</summary>
    public static ImmutableArray<ForkClass> All { get; } =
    [
        new(1, "29-100", "29 in suspension fork, 100 mm", Sources.Memory, 100, 0, CrownType.Single, 4990, 5230, 5040, 5060, Sources.ForkLengthGuide, "29x100", "29 100 mm", "29 in 100 mm"),
        new(2, "29-110", "29 in suspension fork, 110 mm", Sources.Memory, 110, 0, CrownType.Single, 5090, 5330, 0, 0, null, "29x110", "29 110 mm", "29 in 110 mm"),
        new(3, "29-120", "29 in suspension fork, 120 mm", Sources.Memory, 120, 0, CrownType.Single, 5190, 5430, 5250, 5250, Sources.CorrectedFork, "29x120", "29 120 mm", "29 in 120 mm"),
        new(4, "29-130", "29 in suspension fork, 130 mm", Sources.Memory, 130, 0, CrownType.Single, 5290, 5530, 0, 0, null, "29x130", "29 130 mm", "29 in 130 mm"),
        new(5, "29-140", "29 in suspension fork, 140 mm", Sources.Memory, 140, 0, CrownType.Single, 5390, 5630, 5500, 5500, Sources.ForkPair, "29x140", "29 140 mm", "29 in 140 mm"),
        new(6, "29-150", "29 in suspension fork, 150 mm", Sources.Memory, 150, 0, CrownType.Single, 5490, 5730, 0, 0, null, "29x150", "29 150 mm", "29 in 150 mm"),
        new(7, "29-160", "29 in suspension fork, 160 mm", Sources.Memory, 160, 0, CrownType.Single, 5590, 5830, 5671, 5671, Sources.ForkLengths2015, "29x160", "29 160 mm", "29 in 160 mm"),
        new(8, "29-170", "29 in suspension fork, 170 mm", Sources.Memory, 170, 0, CrownType.Single, 5700, 5940, 0, 0, null, "29x170", "29 170 mm", "29 in 170 mm"),
        new(9, "29-180", "29 in suspension fork, 180 mm", Sources.Memory, 180, 0, CrownType.Single, 5800, 6040, 0, 0, null, "29x180", "29 180 mm", "29 in 180 mm"),
        new(10, "27.5-100", "27.5 in suspension fork, 100 mm", Sources.Memory, 100, 0, CrownType.Single, 4790, 5030, 0, 0, null, "27.5x100", "27.5 100 mm", "27.5 in 100 mm"),
        new(11, "27.5-120", "27.5 in suspension fork, 120 mm", Sources.Memory, 120, 0, CrownType.Single, 4990, 5230, 0, 0, null, "27.5x120", "27.5 120 mm", "27.5 in 120 mm"),
        new(12, "27.5-130", "27.5 in suspension fork, 130 mm", Sources.Memory, 130, 0, CrownType.Single, 5090, 5330, 0, 0, null, "27.5x130", "27.5 130 mm", "27.5 in 130 mm"),
        new(13, "27.5-140", "27.5 in suspension fork, 140 mm", Sources.Memory, 140, 0, CrownType.Single, 5200, 5440, 5320, 5320, Sources.ForkPair, "27.5x140", "27.5 140 mm", "27.5 in 140 mm"),
        new(14, "27.5-150", "27.5 in suspension fork, 150 mm", Sources.Memory, 150, 0, CrownType.Single, 5300, 5540, 0, 0, null, "27.5x150", "27.5 150 mm", "27.5 in 150 mm"),
        new(15, "27.5-160", "27.5 in suspension fork, 160 mm", Sources.Memory, 160, 0, CrownType.Single, 5400, 5640, 5491, 5491, Sources.ForkLengths2015, "27.5x160", "27.5 160 mm", "27.5 in 160 mm"),
        new(16, "27.5-170", "27.5 in suspension fork, 170 mm", Sources.Memory, 170, 0, CrownType.Single, 5500, 5740, 5591, 5591, Sources.ForkLengths2015, "27.5x170", "27.5 170 mm", "27.5 in 170 mm"),
        new(17, "27.5-180", "27.5 in suspension fork, 180 mm", Sources.Memory, 180, 0, CrownType.Single, 5600, 5840, 0, 0, null, "27.5x180", "27.5 180 mm", "27.5 in 180 mm"),
        new(18, "26-80", "26 in suspension fork, 80 mm", Sources.Memory, 80, 0, CrownType.Single, 4390, 4630, 0, 0, null, "26x80", "26 80 mm", "26 in 80 mm"),
        new(19, "26-100", "26 in suspension fork, 100 mm", Sources.Memory, 100, 0, CrownType.Single, 4590, 4830, 0, 0, null, "26x100", "26 100 mm", "26 in 100 mm"),
        new(20, "26-120", "26 in suspension fork, 120 mm", Sources.Memory, 120, 0, CrownType.Single, 4790, 5030, 0, 0, null, "26x120", "26 120 mm", "26 in 120 mm"),
        new(21, "26-140", "26 in suspension fork, 140 mm", Sources.Memory, 140, 0, CrownType.Single, 4990, 5230, 0, 0, null, "26x140", "26 140 mm", "26 in 140 mm"),
        new(22, "26-160", "26 in suspension fork, 160 mm", Sources.Memory, 160, 0, CrownType.Single, 5290, 5530, 5364, 5364, Sources.ForkLengths2015, "26x160", "26 160 mm", "26 in 160 mm"),
        new(23, "26-180", "26 in suspension fork, 180 mm", Sources.Memory, 180, 0, CrownType.Single, 5490, 5730, 5564, 5564, Sources.ForkLengths2015, "26x180", "26 180 mm", "26 in 180 mm"),
        new(24, "27.5-dual-200", "27.5 in dual-crown fork, 200 mm", Sources.Memory, 200, 0, CrownType.Dual, 5640, 5880, 0, 0, null, "27.5 dual crown", "27.5 dual crown 200 mm", "27.5-200"),
        new(25, "29-dual-200", "29 in dual-crown fork, 200 mm", Sources.Memory, 200, 0, CrownType.Dual, 5900, 6140, 0, 0, null, "29 dual crown", "29 dual crown 200 mm", "29-200"),
        new(26, "700c-rim-brake", "700C rigid road fork, rim brake", Sources.Memory, 0, 0, null, 3570, 3770, 0, 0, null, "road rim brake", "700c road rim brake"),
        new(27, "700c-disc", "700C rigid road fork, disc brake", Sources.Memory, 0, 0, null, 3620, 3820, 0, 0, null, "700c road disc", "road disc"),
        new(28, "700c-cyclocross", "700C rigid cyclocross fork", Sources.Memory, 0, 0, null, 3850, 4050, 3950, 4000, Sources.CrossForks, "cyclocross"),
        new(29, "700c-gravel", "700C rigid gravel fork", Sources.Memory, 0, 0, null, 3850, 4050, 0, 0, null, "gravel"),
        new(30, "700c-touring", "700C rigid touring fork, steel", Sources.Memory, 0, 0, null, 3800, 4000, 0, 0, null, "touring", "700c touring steel"),
        new(31, "26-rigid", "26 in rigid fork, not corrected", Sources.Memory, 0, 0, null, 3850, 4050, 0, 0, null, "26 rigid uncorrected"),
        new(32, "26-rigid-80", "26 in rigid fork, corrected for 80 mm", Sources.Memory, 0, 80, null, 4150, 4350, 0, 0, null, "26 rigid corrected 80"),
        new(33, "26-rigid-100", "26 in rigid fork, corrected for 100 mm", Sources.Memory, 0, 100, null, 4300, 4500, 0, 0, null, "26 rigid corrected 100"),
        new(34, "29-rigid-80", "29 in rigid fork, corrected for 80 mm", Sources.Memory, 0, 80, null, 4580, 4780, 4650, 4700, Sources.ForkLengthBlog, "29 rigid corrected 80"),
        new(35, "29-rigid-100", "29 in rigid fork, corrected for 100 mm", Sources.Memory, 0, 100, null, 4730, 4930, 0, 0, null, "29 rigid corrected 100"),
        new(36, "29-rigid-120", "29 in rigid fork, corrected for 120 mm", Sources.CorrectedFork, 0, 120, null, 4900, 4900, 4900, 4900, Sources.CorrectedFork, "29 rigid corrected 120", "29 rigid long"),
        new(37, "20-bmx", "20 in BMX fork", Sources.Memory, 0, 0, null, 3050, 3250, 3100, 3200, Sources.BmxForkSizing, "BMX", "20 BMX"),
    ];

    /// <inheritdoc/>
    public static string Called => "fork class";

    /// <summary>It has a spring.</summary>
    public bool IsSuspension => _travel > 0;

    /// <summary>Crowns of a suspension fork; null for a rigid one.</summary>
    public CrownType? Crown { get; }

    /// <summary>Travel; zero for a rigid fork.</summary>
    public Length Travel => Length.FromMillimeters(_travel);

    /// <summary>Travel of the suspension fork that a rigid one stands in for; null where it stands in for none.</summary>
    public Length? CorrectedFor => _corrected == 0 ? null : Length.FromMillimeters(_corrected);

    /// <summary>Smallest usual length from axle to crown, without load.</summary>
    public Length LeastAxleToCrown => Length.FromMillimeters(_least / 10d);

    /// <summary>Largest usual length from axle to crown, without load.</summary>
    public Length MostAxleToCrown => Length.FromMillimeters(_most / 10d);

    /// <summary>Smallest length that was found printed for such a fork; null where none was.</summary>
    public Length? LeastPublished => _publishedLeast == 0 ? null : Length.FromMillimeters(_publishedLeast / 10d);

    /// <summary>Largest length that was found printed for such a fork; null where none was.</summary>
    public Length? MostPublished => _publishedMost == 0 ? null : Length.FromMillimeters(_publishedMost / 10d);

    /// <summary>Who prints the published lengths; null where none was found.</summary>
    public Source? PublishedSource { get; }

    /// <summary>What a fork can be, from what it measures; those whose middle it is nearest to come first.</summary>
    /// <param name="axleToCrown">From the middle of the axle to the foot of the head tube's seat, along the steering axis, without load.</param>
    /// <param name="travel">Travel of a suspension fork; leave it out for a rigid one.</param>
    /// <exception cref="ArgumentException">Nothing was measured.</exception>
    public static Identification<ForkClass> Identify(MeasuredLength? axleToCrown = null, MeasuredLength? travel = null)
    {
        Identification<ForkClass> found = ForkClassDimensions.Table.Identify(axleToCrown, travel);
        return axleToCrown is not { } read
            ? found
            : new([.. found.Candidates.OrderBy(c => c.DeviationMillimetres).ThenBy(c => Math.Abs(((c.Value._least + c.Value._most) / 20m) - read.Millimetres))], found.Next);
    }

    /// <inheritdoc/>
    public static ForkClass OfFitCode(long code) => ByCode(code);

    /// <summary>Reads a key or a name: "29 x 120", "26 rigid corrected 80". A wheel alone, "29 rigid" and "road" keep every class that they leave open.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<ForkClass> Read(ReadOnlySpan<char> text)
    {
        ReadOnlySpan<char> plain = Trim(text);
        plain = plain.Length <= InchText.MostLetters && InchText.Plain(plain) is var inches && inches.EndsWith(" in", StringComparison.Ordinal) ? inches.AsSpan()[..^3] : plain;
        foreach (string wheel in (ReadOnlySpan<string>)["29", "27.5", "26", "700c", "29 rigid"])
        {
            if (plain.Equals(wheel, StringComparison.OrdinalIgnoreCase))
            {
                return TextReading<ForkClass>.Several(Under(wheel.Replace(' ', '-') + "-"), "say travel or purpose as well: forks for one wheel differ in length");
            }
        }

        return plain.Equals("road", StringComparison.OrdinalIgnoreCase) || plain.Equals("700c road", StringComparison.OrdinalIgnoreCase)
            ? TextReading<ForkClass>.Several([.. Under("700c-rim"), .. Under("700c-disc")], "say rim or disc brake")
            : ByName(text) is { Values.IsEmpty: false } || text.Length > InchText.MostLetters ? ByName(text)
            : ByName(InchText.Plain(text).Replace(" in x ", " in ", StringComparison.OrdinalIgnoreCase));
    }

    private static ImmutableArray<ForkClass> Under(string start)
    {
        ImmutableArray<ForkClass>.Builder found = ImmutableArray.CreateBuilder<ForkClass>();
        foreach (ForkClass fork in All)
        {
            if (fork.FitKey.StartsWith(start, StringComparison.Ordinal))
            {
                found.Add(fork);
            }
        }

        return found.ToImmutable();
    }

    /// <summary>Made when something is first identified.</summary>
    private static class ForkClassDimensions
    {
        public static readonly IdentificationTable<ForkClass> Table = new(
            [
                new("axle to crown", "rule from the middle of the axle to the seat of the lower bearing, along the steering axis, without load"),
                new("travel", "rule on the stanchion, full length to fully in"),
            ],
            Rows(),
            f => f.FitKey);

        private static ImmutableArray<DimensionRow<ForkClass>> Rows()
        {
            ImmutableArray<DimensionRow<ForkClass>>.Builder rows = ImmutableArray.CreateBuilder<DimensionRow<ForkClass>>(All.Length);
            foreach (ForkClass fork in All)
            {
                rows.Add(new(fork, [(fork._least / 10m, fork._most / 10m), fork.IsSuspension ? (fork._travel, fork._travel) : null], fork.IsSuspension ? "has a spring; the wheel that fits between crown and axle tells the wheel size" : "rigid"));
            }

            return rows.MoveToImmutable();
        }
    }
}
