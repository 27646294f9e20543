using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>Thread of a hub for a screwed freewheel, a fixed sprocket or its lockring, and of what screws on. Closed set, identity equality.</summary>
[JsonConverter(typeof(InterfaceJsonConverter<FreewheelThread>))]
[TypeConverter(typeof(InterfaceTypeConverter<FreewheelThread>))]
public sealed class FreewheelThread : Standard<FreewheelThread>, IInterfaceValue<FreewheelThread>
{
    private FreewheelThread(int code, string key, string name, int nanometres, decimal threadsPerInch, bool left, Source source, params ImmutableArray<string> names)
        : base(code, key, name, source, names)
    {
        CrestNanometres = nanometres;
        ThreadsPerInch = threadsPerInch;
        IsLeftHand = left;
    }

    /// <summary>1.375 in x 24: all recent freewheels and threaded hubs.</summary>
    public static FreewheelThread Iso { get; } = new(1, "1.375x24", "ISO, 1.375 in x 24 tpi", 34_925_000, 24m, false, Sources.Freewheels, "ISO", "ISO freewheel", "1.375 x 24 tpi", "1.375 in x 24 tpi", "1.375\" x 24", "BSC", "BSA");

    /// <summary>1.370 in x 24: older British; generally exchanges with the recent one.</summary>
    public static FreewheelThread British { get; } = new(2, "British-1.370x24", "British, 1.370 in x 24 tpi", 34_798_000, 24m, false, Sources.Freewheels, "British", "British freewheel", "British 1.370x24");

    /// <summary>35 mm x 24: older Italian; generally exchanges with the recent one.</summary>
    public static FreewheelThread Italian { get; } = new(3, "1.378x24", "Italian, 35 mm x 24 tpi", 35_001_200, 24m, false, Sources.Freewheels, "Italian", "Italian freewheel", "35x24", "35 mm x 24 tpi", "1.378 x 24 tpi", "1.378\" x 24");

    /// <summary>34.7 x 1 mm: old French; exchanges with none.</summary>
    public static FreewheelThread French { get; } = new(4, "34.7x1", "French, 34.7 x 1.0 mm", 34_700_000, 25.4m, false, Sources.Freewheels, "French", "French freewheel", "34.7x1.0", "34.7 x 1 mm");

    /// <summary>30 x 1 mm: BMX, for small freewheels.</summary>
    public static FreewheelThread Bmx { get; } = new(5, "30x1", "BMX, 30 x 1.0 mm", 30_000_000, 25.4m, false, Sources.Freewheels, "BMX", "BMX freewheel", "30x1.0", "30 x 1 mm", "M30x1");

    /// <summary>1.37 in x 24 of a fixed sprocket: the form of a freewheel's thread, shorter; from memory.</summary>
    public static FreewheelThread FixedSprocket { get; } = new(6, "track-1.37x24", "track sprocket, 1.37 in x 24 tpi", 34_798_000, 24m, false, Sources.Memory, "track", "track cog", "fixed cog", "fixed sprocket", "track sprocket");

    /// <summary>1.29 in x 24, left-hand: lockring of a fixed sprocket. The hand is published, the figure from memory.</summary>
    public static FreewheelThread TrackLockring { get; } = new(7, "lockring-1.29x24", "track lockring, 1.29 in x 24 tpi, left-hand", 32_766_000, 24m, true, Sources.Memory, "track lockring", "lockring", "1.29 x 24 tpi", "1.29\" x 24", "1.29x24");

    /// <summary>Every thread.</summary>
    public static ImmutableArray<FreewheelThread> All { get; } = [Iso, British, Italian, French, Bmx, FixedSprocket, TrackLockring];

    /// <inheritdoc/>
    public static string Called => "freewheel thread";

    /// <summary>Nominal diameter over the crests.</summary>
    public Length Diameter => Length.FromMillimeters(CrestNanometres / 1e6);

    /// <summary>Pitch: 1.058 mm for 24 threads to the inch.</summary>
    public Length Pitch => Length.FromMillimeters((double)(25.4m / ThreadsPerInch));

    /// <summary>Threads to the inch; 25.4 is a pitch of 1 mm.</summary>
    public decimal ThreadsPerInch { get; }

    /// <summary>It tightens anticlockwise.</summary>
    public bool IsLeftHand { get; }

    internal int CrestNanometres { get; }

    internal override Nanometres? MainLength => new(CrestNanometres);

    /// <summary>Old British and Italian freewheels are said to go on ISO hubs and the other way round; no source says it of another pair.</summary>
    /// <param name="other">Another thread.</param>
    /// <returns>Whether one is said to go on the other; a thread always goes on itself.</returns>
    public bool Interchanges(FreewheelThread other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return this == other || (this == Iso && (other == British || other == Italian)) || (other == Iso && (this == British || this == Italian));
    }

    /// <inheritdoc/>
    public static FreewheelThread OfFitCode(long code) => ByCode(code);

    /// <summary>What thread measured dimensions of a hub can be, likeliest first, and what to measure next.</summary>
    /// <param name="diameter">Over the crests of the thread of the hub; they measure up to 0.25 mm under its name (thread tolerance, from memory).</param>
    /// <param name="threadsPerInch">Counted with a gauge, right to half a thread: 24, or 25.4 for a pitch of 1 mm; 4 to 100.</param>
    /// <exception cref="ArgumentException">Nothing was measured, or a reading is a default.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No such thread.</exception>
    public static Identification<FreewheelThread> Identify(MeasuredLength? diameter = null, decimal? threadsPerInch = null)
    {
        MeasuredLength? ten = null;
        if (threadsPerInch is { } count)
        {
            (decimal millimetres, decimal error) = ThreadCount.OverTen(count);
            ten = MeasuredLength.OfMillimetres(millimetres, error);
        }

        return ThreadsMeasured.Table.Identify(diameter, ten);
    }

    /// <summary>Reads a key or a name; "1.37 x 24" with or without a nought can be the ISO thread, the British one and the track sprocket; "English" the first two.</summary>
    /// <param name="text">Any text.</param>
    public static TextReading<FreewheelThread> Read(ReadOnlySpan<char> text)
    {
        string plain = text.Length > InchText.MostLetters ? "" : InchText.Plain(Trim(text)).Replace(" in", "", StringComparison.Ordinal);
        return Same(plain, "1.37x24") || Same(plain, "1.370x24")
            ? TextReading<FreewheelThread>.Several([Iso, British, FixedSprocket], "the trade writes so for the ISO thread of 1.375 in, the old British one and the track sprocket: measure over the crests with a caliper; a track hub has a smaller left-hand thread beside it")
            : Same(plain, "English") || Same(plain, "English freewheel")
            ? TextReading<FreewheelThread>.Several([Iso, British], "the ISO thread of 1.375 in and the old British one of 1.370 in are both called English: measure over the crests with a caliper")
            : ByName(text);
    }

    private static class ThreadsMeasured
    {
        public static readonly IdentificationTable<FreewheelThread> Table = new(
            [new("diameter", "caliper over the crests of the thread of the hub"), new("ten threads", "thread gauge or caliper over ten crests")],
            [
                Row(Iso, "all recent freewheels"),
                Row(British, "older; freewheels exchange with the ISO thread"),
                Row(Italian, "older; freewheels exchange with the ISO thread"),
                Row(French, "exchanges with none"),
                Row(Bmx, "for very small freewheels"),
                Row(FixedSprocket, "a smaller left-hand thread stands beside it"),
                Row(TrackLockring, "left-hand"),
            ],
            t => t.FitKey);

        private static DimensionRow<FreewheelThread> Row(FreewheelThread thread, string apart)
        {
            decimal diameter = thread.CrestNanometres / 1_000_000m;
            decimal ten = ThreadCount.OverTen(thread.ThreadsPerInch).Millimetres;
            return new(thread, [ThreadCrests.Of(diameter), (ten, ten)], apart, diameter);
        }
    }
}
