using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Hubs;

/// <summary>A thru-axle as a maker or help page prints it. Lengths of one size differ from frame to frame.</summary>
/// <remarks>An example or a search aid is never a fit value: ask for <see cref="Asked"/> of the frame itself.</remarks>
public sealed class ThruAxleExample
{
    private readonly int _length;
    private readonly int _thread;
    private readonly int _washer;
    private readonly string _standard;

    private ThruAxleExample(string standard, AxleThread? thread, int length, int threadLength, int washer, Source source)
    {
        _standard = standard;
        Thread = thread;
        _length = length;
        _thread = threadLength;
        _washer = washer;
        Source = source;
    }

    /// <summary>The printed ones.</summary>
    public static ImmutableArray<ThruAxleExample> All { get; } =
    [
        new("R142-12", AxleThread.M12Pitch1Point5, 163_000, 0, 0, Sources.ThruAxleMaker),
        new("R142-12", null, 171_000, 17_000, 1_500, Sources.ManyThruAxles),
        new("F100-15", AxleThread.M15Pitch1Point5, 127_000, 0, 0, Sources.ThruAxleHelp),
    ];

    /// <summary>What has to be known of a frame or fork before an axle is bought.</summary>
    public static ImmutableArray<string> Asked { get; } =
    [
        "axle diameter", "width over the end caps", "length under the head", "thread pitch", "thread length", "flat or conical seat under the head", "washer",
    ];

    /// <summary>The hub standard that it is for.</summary>
    public HubStandard Standard => HubStandard.Named(_standard);

    /// <summary>Its thread; null where the page does not say.</summary>
    public AxleThread? Thread { get; }

    /// <summary>From under the head to the tip.</summary>
    public Length Length => Length.FromMillimeters(_length / 1000d);

    /// <summary>Length of the thread; null where the page does not say.</summary>
    public Length? ThreadLength => _thread == 0 ? null : Length.FromMillimeters(_thread / 1000d);

    /// <summary>Thickness of its washer; null where the page does not say.</summary>
    public Length? Washer => _washer == 0 ? null : Length.FromMillimeters(_washer / 1000d);

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>Between what an axle for a hub standard is usually long: 20 to 30 mm more than its O.L.D. A search aid, not a fit value.</summary>
    /// <param name="standard">A standard that is held by a thru-axle.</param>
    /// <exception cref="ArgumentException">Its ends take no thru-axle, or no width is known.</exception>
    public static LengthRange UsualLength(HubStandard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return standard.OldMicrometres > 0 && standard.Attachments.Contains(HubAttachment.ThruAxle)
            ? new((standard.OldMicrometres + 20_000) / 1000d, (standard.OldMicrometres + 30_000) / 1000d)
            : throw new ArgumentException($"{standard.TradeName} is not held by a thru-axle of a known width", nameof(standard));
    }

    /// <summary>"12x142 thru-axle: 163 mm".</summary>
    public override string ToString() => FormattableString.Invariant($"{Standard.TradeName}: {_length / 1000m:0.#} mm");
}
