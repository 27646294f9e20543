using System.Collections.Immutable;

namespace Lugwork.Steering;

/// <summary>One half of a headset, by type and bore: EC external cup, ZS flush cup, IS bearing without a cup. Closed set, identity equality.</summary>
public sealed class HeadsetCup : Standard<HeadsetCup>, IInterfaceValue<HeadsetCup>
{
    private HeadsetCup(int code, string key, string name, Source source, HeadTubeBore bore, bool upper, bool lower, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        Bore = bore;
        IsUpper = upper;
        IsLower = lower;
    }

    /// <summary>External cup, 1 in JIS.</summary>
    public static HeadsetCup Ec29 { get; } = new(1, "EC29", "EC29", Sources.HeadsetGuide, HeadTubeBore.Ec29, true, true);

    /// <summary>External cup, 1 in ISO.</summary>
    public static HeadsetCup Ec30 { get; } = new(2, "EC30", "EC30", Sources.HeadsetGuide, HeadTubeBore.Ec30, true, true);

    /// <summary>External cup, 1-1/8 in.</summary>
    public static HeadsetCup Ec34 { get; } = new(3, "EC34", "EC34", Sources.HeadsetCodeNote, HeadTubeBore.Ec34, true, true);

    /// <summary>External cup, 1-1/4 in.</summary>
    public static HeadsetCup Ec37 { get; } = new(4, "EC37", "EC37", Sources.Memory, HeadTubeBore.Ec37, true, true);

    /// <summary>External cup for a 44 mm bore.</summary>
    public static HeadsetCup Ec44 { get; } = new(5, "EC44", "EC44", Sources.HeadTube44, HeadTubeBore.Bore44, true, true);

    /// <summary>External cup for a 49.6 mm bore.</summary>
    public static HeadsetCup Ec49 { get; } = new(6, "EC49", "EC49", Sources.Memory, HeadTubeBore.Bore49, true, true);

    /// <summary>External cup for a 56 mm bore; lower.</summary>
    public static HeadsetCup Ec56 { get; } = new(7, "EC56", "EC56", Sources.Memory, HeadTubeBore.Bore56, false, true);

    /// <summary>Flush cup for a 41.4 mm bore.</summary>
    public static HeadsetCup Zs41 { get; } = new(8, "ZS41", "ZS41", Sources.Memory, HeadTubeBore.Zs41, true, true);

    /// <summary>Flush cup for a 44 mm bore.</summary>
    public static HeadsetCup Zs44 { get; } = new(9, "ZS44", "ZS44", Sources.HeadsetChart, HeadTubeBore.Bore44, true, true);

    /// <summary>Flush cup for a 49.6 mm bore.</summary>
    public static HeadsetCup Zs49 { get; } = new(10, "ZS49", "ZS49", Sources.Memory, HeadTubeBore.Bore49, true, true);

    /// <summary>Flush cup for a 55 mm bore; lower.</summary>
    public static HeadsetCup Zs55 { get; } = new(11, "ZS55", "ZS55", Sources.Memory, HeadTubeBore.Zs55, false, true);

    /// <summary>Flush cup for a 56 mm bore.</summary>
    public static HeadsetCup Zs56 { get; } = new(12, "ZS56", "ZS56", Sources.HeadsetChart, HeadTubeBore.Bore56, true, true);

    /// <summary>Flush cup for a 62 mm bore.</summary>
    public static HeadsetCup Zs62 { get; } = new(13, "ZS62", "ZS62", Sources.Memory, HeadTubeBore.Zs62, true, true);

    /// <summary>Bearing of an IS38 seat.</summary>
    public static HeadsetCup Is38 { get; } = new(14, "IS38", "IS38", Sources.Memory, HeadTubeBore.Is38, true, true);

    /// <summary>Bearing of an IS41 seat.</summary>
    public static HeadsetCup Is41 { get; } = new(15, "IS41", "IS41", Sources.BearingSeller, HeadTubeBore.Is41, true, true);

    /// <summary>Bearing of an IS42 seat.</summary>
    public static HeadsetCup Is42 { get; } = new(16, "IS42", "IS42", Sources.Memory, HeadTubeBore.Is42, true, true);

    /// <summary>Bearing of an IS46 seat; lower.</summary>
    public static HeadsetCup Is46 { get; } = new(17, "IS46", "IS46", Sources.Memory, HeadTubeBore.Is46, false, true);

    /// <summary>Bearing of an IS47 seat.</summary>
    public static HeadsetCup Is47 { get; } = new(18, "IS47", "IS47", Sources.Memory, HeadTubeBore.Is47, true, true);

    /// <summary>Bearing of an IS49 seat; lower.</summary>
    public static HeadsetCup Is49 { get; } = new(19, "IS49", "IS49", Sources.ForkCutting, HeadTubeBore.Is49, false, true);

    /// <summary>Bearing of an IS51 seat; lower.</summary>
    public static HeadsetCup Is51 { get; } = new(20, "IS51", "IS51", Sources.Memory, HeadTubeBore.Is51, false, true);

    /// <summary>Bearing of an IS52 seat.</summary>
    public static HeadsetCup Is52 { get; } = new(21, "IS52", "IS52", Sources.CableHeadsets, HeadTubeBore.Is52, true, true);

    /// <summary>Every one, in the order of the table.</summary>
    public static ImmutableArray<HeadsetCup> All { get; } =
    [
        Ec29, Ec30, Ec34, Ec37, Ec44, Ec49, Ec56, Zs41,
        Zs44, Zs49, Zs55, Zs56, Zs62, Is38, Is41, Is42,
        Is46, Is47, Is49, Is51, Is52,
    ];

    /// <inheritdoc/>
    public static string Called => "headset cup";

    /// <summary>The head tube end that it is made for.</summary>
    public HeadTubeBore Bore { get; }

    /// <summary>Made as an upper half.</summary>
    public bool IsUpper { get; }

    /// <summary>Made as a lower half.</summary>
    public bool IsLower { get; }

    /// <inheritdoc/>
    public static HeadsetCup OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static Reading<HeadsetCup> Read(ReadOnlySpan<char> text) => ByName(text);
}
