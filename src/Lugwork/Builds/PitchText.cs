using System.Globalization;

namespace Lugwork;

/// <summary>Chain is counted in pitches and kept as a length: 12.7 mm, half an inch, for each.</summary>
internal static partial class PartForms
{
    internal const long PitchNanometres = 12_700_000;

    private const long MostPitches = 400;

    private static PartField<TPart> Pitches<TPart>(string key, string expected, Func<TPart, Known<Dimension>> get, Func<TPart, Known<Dimension>, TPart> with, string[] words)
        where TPart : Part => new()
        {
            Key = key,
            Words = [.. words],
            Expected = expected,
            Values = static () => FieldValues.Text,
            Mark = (part, evidence) => with(part, get(part).With(evidence)),
            Evidence = part => get(part).Evidence,
            Codes = (TPart part, ref Candidates into) => get(part).ToCandidates(ref into),
            Packs = (parts, into, apart, others) => PartField<TPart>.Pack(get, parts, into, apart, others),
            Take = (part, codes) => with(part, Known<Dimension>.OfCandidates(codes)),
            Write = part => Counted(get(part)),
            Read = (TPart part, string text, out TPart read, out int position, out string reason) =>
            {
                read = part;
                if (!KnownText.TryRead(text, null, out Known<Dimension> count, out position, out reason))
                {
                    return false;
                }

                if (count.State is KnownState.Value or KnownState.OneOf)
                {
                    if (text.Contains('m', StringComparison.OrdinalIgnoreCase) || count.Values.Any(v => v.Millimetres % 1 != 0 || v.Millimetres > MostPitches))
                    {
                        reason = "a whole number of pitches is expected, at most 400; a full link is two";
                        return false;
                    }

                    count = Known<Dimension>.OneOf([.. count.Values.Select(v => Dimension.OfFitCode((long)v.Millimetres * PitchNanometres))], count.Evidence);
                }
                else if (count.State == KnownState.Measured)
                {
                    reason = "pitches are counted, not measured";
                    return false;
                }

                read = with(part, count);
                return true;
            },
        };

    /// <summary>A length in pitches: "114".</summary>
    internal static string CountOf(long nanometres) => ((decimal)nanometres / PitchNanometres).ToString("0.##", CultureInfo.InvariantCulture);

    internal static string Counted(Known<Dimension> length) => length.State switch
    {
        KnownState.Value or KnownState.OneOf => string.Join(" | ", length.Values.Select(v => CountOf(v.FitCode))),
        KnownState.Measured => "unknown",
        _ => length.ToString(),
    };
}
