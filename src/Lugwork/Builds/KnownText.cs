using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork;

/// <summary>Text of a property: a value, "unknown", "none", "frame-specific", "not covered", the name of a family that is one of the two, "a | b", or "27.18 ± 0.05" for something measured.</summary>
internal static class KnownText
{
    public static bool TryRead<T>(string text, Func<T, bool>? where, out Known<T> known, out int position, out string reason)
        where T : IInterfaceValue<T>
    {
        known = default;
        position = 0;
        reason = "";
        string trimmed = text.Trim();
        if (trimmed.Length > 2_000)
        {
            reason = "the text is longer than 2,000 characters";
            return false;
        }

        if (trimmed.Equals("unknown", StringComparison.OrdinalIgnoreCase) || trimmed == "?")
        {
            return true;
        }

        if (trimmed.Equals("none", StringComparison.OrdinalIgnoreCase))
        {
            known = Known<T>.None;
            return true;
        }

        if (KnownStates.Read(trimmed) is { } state)
        {
            known = Known<T>.Outside(state, new Evidence(EvidenceKind.Stated, trimmed));
            return true;
        }

        if (trimmed.Contains('\u00B1', StringComparison.Ordinal) || trimmed.Contains("+/-", StringComparison.Ordinal))
        {
            return TryMeasured(trimmed, where, out known, out position, out reason);
        }

        ImmutableArray<T> all = [];
        int at = 0;
        foreach (string piece in trimmed.Split('|'))
        {
            TextReading<T> reading = T.Read(piece);
            ImmutableArray<T> values = ListedValues.Where(reading.Values, where);
            if (values.IsEmpty && OutsideText.Read(trimmed) is { } outside)
            {
                known = outside.Of<T>(trimmed);
                return true;
            }

            if (values.IsEmpty)
            {
                position = at + reading.Position;
                reason = reading.Values.IsEmpty ? reading.Reason : "this one does not go here";
                return false;
            }

            all = all.AddRange(values);
            at += piece.Length + 1;
        }

        if (all.Length > Known<T>.MostValues)
        {
            reason = $"more than {Known<T>.MostValues} values; say unknown instead";
            return false;
        }

        known = Known<T>.OneOf(all, new Evidence(EvidenceKind.Stated, trimmed));
        return true;
    }

    private static bool TryMeasured<T>(string text, Func<T, bool>? where, out Known<T> known, out int position, out string reason)
        where T : IInterfaceValue<T>
    {
        known = default;
        if (T.IsPlainMass)
        {
            reason = "a mass is said without an error: for what is carried the most that it can be, for a limit the least";
            position = 0;
            return false;
        }

        if (T.IsPlainAngle)
        {
            reason = "an angle is said without an error: name both ends, such as 67 | 68";
            position = 0;
            return false;
        }

        reason = "a measured value is written as 27.18 ± 0.05 in millimetres, both figures above zero";
        TextCursor cursor = new(text);
        bool read = cursor.TryNumber(out long value);
        cursor.SkipMillimetres();
        string rest = cursor.Rest.ToString();
        int sign = rest.StartsWith("+/-", StringComparison.Ordinal) ? 3 : rest.StartsWith('\u00B1') ? 1 : 0;
        cursor.Position += sign;
        read &= sign > 0 && cursor.TryNumber(out _);
        position = cursor.Position;
        if (!read)
        {
            return false;
        }

        TextCursor again = new(text);
        again.TryNumber(out _);
        again.SkipMillimetres();
        again.Position += sign;
        again.TryNumber(out long error);
        again.SkipMillimetres();
        position = again.Position;
        if (!again.AtEnd || value <= 0 || value > 100_000 * Nanometres.PerMillimetre || error > 1_000 * Nanometres.PerMillimetre)
        {
            return false;
        }

        decimal millimetres = new Nanometres(value).Millimetres;
        decimal within = new Nanometres(error).Millimetres;
        if (!T.IsPlainLength)
        {
            ImmutableArray<T> near = ListedValues.Where(T.WithinError(millimetres, within), where);
            if (near.IsEmpty)
            {
                reason = string.Format(CultureInfo.InvariantCulture, "no {0} is told by {2} \u00B1 {1} mm; give its name{3}", T.Called, within, millimetres, T.All.IsEmpty ? "" : $", such as {T.All[0].FitKey}");
                position = 0;
                return false;
            }

            known = Known<T>.OneOf(near, new Evidence(EvidenceKind.Measured, text));
            return true;
        }

        known = Known<T>.Measured(millimetres, within, text);
        return true;
    }
}
