using System.Collections.Immutable;
using Lugwork.BottomBrackets;

namespace Lugwork;

/// <summary>Text of the shell that a bottom bracket is made for: "BSA 68", "BB86" or "BSA 68-73" for a range of widths.</summary>
internal static class BracketShellText
{
    public static bool TryRead(string text, out Known<ShellFamily> family, out Known<Dimension> narrowest, out Known<Dimension> widest, out string reason)
    {
        family = default;
        narrowest = default;
        widest = default;
        if (OutsideText.Read(text) is { } outside)
        {
            family = outside.Of<ShellFamily>(text);
            narrowest = widest = outside.Of<Dimension>(text);
            reason = "";
            return true;
        }

        int cut = text.LastIndexOfAny(['-', '\u2013', '/']);
        Dimension? last = cut > 0 && char.IsAsciiDigit(text[cut - 1]) && Dimension.TryParse(text.AsSpan(cut + 1), null, out Dimension read) ? read : null;
        TextReading<Shell> reading = Shell.Read(text);
        if (reading.Values.IsEmpty && last is not null)
        {
            reading = Shell.Read(text.AsSpan(0, cut).TrimEnd());
        }
        else
        {
            last = null;
        }

        reason = reading.Reason;
        if (reading.Values.IsEmpty)
        {
            return false;
        }

        Evidence evidence = new(EvidenceKind.Stated, text);
        ImmutableArray<Shell> shells = reading.Values;
        if (ShellFamily.Read(text) is { IsClear: true } named && !named.Values[0].IsAsymmetric && shells.Any(s => s.Family == named.Values[0]))
        {
            // The name of a thread or bore alone is the symmetric one; those off centre carry names of their own.
            shells = [.. shells.Where(s => !s.Family.IsAsymmetric)];
        }

        ImmutableArray<Dimension> widths = [.. shells.Select(s => Dimension.OfFitCode(s.WidthNanometres))];
        if (last is { } most && widths.Any(w => w.FitCode > most.FitCode))
        {
            reason = "the second width of a range is the larger one";
            return false;
        }

        family = Known<ShellFamily>.OneOf([.. shells.Select(s => s.Family)], evidence);
        narrowest = Known<Dimension>.OneOf(widths, evidence);
        widest = last is { } to ? Known<Dimension>.Of(to, evidence) : narrowest;
        return true;
    }
}
