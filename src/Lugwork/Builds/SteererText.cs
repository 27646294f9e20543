using Lugwork.Steering;

namespace Lugwork;

/// <summary>Text of a steerer's shape: what its top and its crown-race seat follow from.</summary>
internal static class SteererText
{
    private static readonly (string Words, SteererSize Top, CrownSeat[] Seats)[] Shapes =
    [
        ("straight 1", SteererSize.Mm25Point4, [CrownSeat.Mm26Point4, CrownSeat.Mm27]),
        ("straight 1-1/8", SteererSize.Mm28Point6, [CrownSeat.Mm30]),
        ("straight 1-1/4", SteererSize.Mm31Point8, [CrownSeat.Mm33]),
        ("straight 1.5", SteererSize.Mm38Point1, [CrownSeat.Mm39Point8]),
        ("tapered 1-1/8 to 1-1/4", SteererSize.Mm28Point6, [CrownSeat.Mm33]),
        ("tapered 1-1/8 to 1-3/8", SteererSize.Mm28Point6, [CrownSeat.Mm37]),
        ("tapered 1-1/8 to 1.5", SteererSize.Mm28Point6, [CrownSeat.Mm39Point8]),
        ("tapered 1-1/4 to 1.5", SteererSize.Mm31Point8, [CrownSeat.Mm39Point8]),
    ];

    public static bool TryRead(string text, out Known<SteererSize> top, out Known<CrownSeat> seat, out string reason)
    {
        top = default;
        seat = default;
        reason = "one of " + string.Join(", ", Shapes.Select(s => s.Words)) + " is expected, or tapered alone";
        if (OutsideText.Read(text) is { } outside)
        {
            (top, seat) = (outside.Of<SteererSize>(text), outside.Of<CrownSeat>(text));
            return true;
        }

        string plain = Plain(text);
        bool anyTaper = plain is "TAPERED";
        (string Words, SteererSize Top, CrownSeat[] Seats)[] found = [.. Shapes.Where(s => anyTaper ? s.Words.StartsWith("tapered", StringComparison.Ordinal) : Plain(s.Words) == plain)];
        if (found.Length == 0)
        {
            return false;
        }

        Evidence evidence = new(EvidenceKind.Stated, text);
        top = Known<SteererSize>.OneOf([.. found.Select(f => f.Top)], evidence);
        seat = Known<CrownSeat>.OneOf([.. found.SelectMany(f => f.Seats)], evidence);
        return true;
    }

    private static string Plain(string text) =>
        text.ToUpperInvariant()
            .Replace("1-1/2", "1.5", StringComparison.Ordinal)
            .Replace("INCH", "", StringComparison.Ordinal)
            .Replace("IN", "", StringComparison.Ordinal)
            .Replace("\"", "", StringComparison.Ordinal)
            .Replace("TO", "-", StringComparison.Ordinal)
            .Replace(" ", "", StringComparison.Ordinal)
            .Replace("-", "", StringComparison.Ordinal);
}
