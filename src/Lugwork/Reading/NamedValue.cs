using System.Globalization;

namespace Lugwork.Reading;

/// <summary>A line that is nothing but the name of one value, as the tables of the library write it: "157 DH", "M12 P1.5", "8-spline-long".</summary>
/// <remarks>It is asked only where nothing else was read, and taken only where one field of the part has one value of that name.</remarks>
internal static class NamedValue
{
    private const int Longest = 60;

    /// <summary>Fields whose names are words of everyday, or of which only some values belong to the part.</summary>
    private static readonly HashSet<string> Left = new(StringComparer.Ordinal) { "kind", "condition", "hubBrake", "chainGuideTabs", "rearHoseSide", "cableGuides", "hand", "frontBrakeHand", "adapter", "adapterOn", "secondAdapter", "material", "rimMaterial", "steererMaterial", "headsetCables", "valveHole", "withDerailleur", "withSprockets", "lockring" };

    /// <summary>"Bb axle 107": how long the spindle is, and no shell.</summary>
    private static readonly List<string> Spindles = ["axle", "spindle", "achse", "welle"];

    public static bool TryRead(Slot slot, ReadOnlySpan<char> text, out SpecField? field, out FieldReading reading)
    {
        field = null;
        reading = default;
        if (text.Length > 4 * Longest)
        {
            return false;
        }

        string line = SpecFold.Line(text);
        if (line.Length is 0 or > Longest || !IsName(line))
        {
            return false;
        }

        if (slot == Slot.Stem && (line.Contains("25.4", StringComparison.Ordinal) || line.Contains("25,4", StringComparison.Ordinal)))
        {
            // The clamp of a bar or that of a one-inch steerer.
            return false;
        }

        foreach (SpecField known in SpecFields.Of(slot).Values)
        {
            if (Left.Contains(known.Key) || known.Type.Name is nameof(Dimension) or nameof(Load))
            {
                continue;
            }

            FieldReading read = known.Read(line);
            if (read.Keys.IsEmpty || (known.Type.Name == "Shell" && Spindles.Exists(w => line.Contains(w, StringComparison.Ordinal))) || (known.Type.Name == "HubStandard" && read.Keys[0][0] != (slot == Slot.Frame || slot == Slot.RearWheel ? 'R' : 'F')))
            {
                continue;
            }

            if (field is not null || read.Keys.Length > 1)
            {
                return false;
            }

            (field, reading) = (known, read);
        }

        return field is not null;
    }

    /// <summary>Letters beside a unit, or two figures that a sign joins; a bare figure is of anything.</summary>
    private static bool IsName(string line)
    {
        int letters = 0;
        int figures = 0;
        bool figure = false;
        string plain = line.ToLower(CultureInfo.InvariantCulture).Replace("mm", "", StringComparison.Ordinal).Replace("inch", "", StringComparison.Ordinal).Replace("in ", "", StringComparison.Ordinal).Replace("zoll", "", StringComparison.Ordinal);
        plain = plain.EndsWith("in", StringComparison.Ordinal) && plain.Length > 2 && !char.IsLetter(plain[^3]) ? plain[..^2] : plain;
        foreach (char c in plain)
        {
            letters += char.IsLetter(c) && c is not ('x' or '\u00D7' or '\u00F8') ? 1 : 0;
            bool now = char.IsAsciiDigit(c) || c is '.' or ',';
            figures += now && !figure ? 1 : 0;
            figure = now;
        }

        return letters >= 2 || (letters == 0 && figures == 2 && !plain.Contains(' ', StringComparison.Ordinal) && !plain.Contains('"', StringComparison.Ordinal) && !plain.Contains('/', StringComparison.Ordinal)) || (letters == 1 && figures > 0);
    }
}
