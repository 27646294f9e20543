using System.Collections.Immutable;
using Lugwork.Catalogues;

namespace Lugwork.Fuzz;

/// <summary>Parts in their short form; the first line says the slot.</summary>
internal sealed class PartTarget : TextTarget
{
    public override string Name => "parts";

    public override IEnumerable<byte[]> Seeds => FuzzSeeds.Of(Name).Concat(BuildTarget.Builds.SelectMany(b => Slot.All.Where(s => b[s] is not null).Select(s => Bytes($"{s.Key}\n{PartText.Write(s, b[s]!)}"))));

    public override IEnumerable<byte[]> Words => Slot.All.Select(s => s.Key + "\n")
        .Concat(Slot.All.SelectMany(s => PartForms.Of(s).Fields).SelectMany(f => new[] { f.Key + " ", f.Expected })).Distinct().Concat(["none", "unknown", "?", " \u00B1 0.5", " | ", "; "]).Select(Bytes);

    public override void Run(string text)
    {
        (Slot? named, string line) = WithSlot(text);
        Slot slot = named ?? Slot.All[Draw(text, Slot.All.Length)];
        bool good = PartText.TryRead(slot, line, out Part part, out ImmutableArray<SpecProblem> problems);
        Law.Holds(good == problems.IsEmpty, "a part is refused with its problems", line);
        foreach (SpecProblem problem in problems)
        {
            Law.Holds(problem.Position >= 0 && problem.Position <= line.Length && problem.Reason.Length > 0, "a problem of a part has place and reason", $"{problem} in '{line}'");
        }

        if (good)
        {
            Whole(slot, part, line);
            NothingLost(slot, part, line);
        }

        Law.Holds(new PartCatalogue().LoadLines([new(1, slot.Key, line)]).Added == (good ? 1 : 0), "a catalogue takes the lines that are read", line);
    }

    /// <summary>What is written of a part reads back to the part.</summary>
    public static void Whole(Slot slot, Part part, string from)
    {
        string written = PartText.Write(slot, part);
        if (written.Length > 0)
        {
            Law.Holds(PartText.TryRead(slot, written, out Part back, out ImmutableArray<SpecProblem> problems), "what is written of a part is read", $"{slot.Key}: '{from}' is written '{written}': {string.Join(", ", problems)}");
            Law.Holds(back == part with { Name = "" }, "what is written of a part is the same part", $"{slot.Key}: '{from}' is written '{written}' and comes back as '{back}'");
            Law.Same(written, PartText.Write(slot, back), "a part is written the same again");
        }
    }

    /// <summary>What a piece says by itself the whole says too, or more closely.</summary>
    private static void NothingLost(Slot slot, Part part, string line)
    {
        Dictionary<string, string> whole = PartForms.Of(slot).Write(part).ToDictionary();
        foreach (string piece in line.Split(';', '\n', '\r'))
        {
            if (PartText.TryRead(slot, piece, out Part alone, out _))
            {
                foreach ((string key, string value) in PartForms.Of(slot).Write(alone))
                {
                    Law.Holds(whole.TryGetValue(key, out string? said), "nothing that a piece says is lost", $"{slot.Key}: '{piece}' says {key} {value}, '{line}' does not");
                    string[] allowed = value.Split(" | ");
                    Law.Holds(Array.TrueForAll(said!.Split(" | "), allowed.Contains), "what a piece says is said no wider and no other way by the whole", $"{slot.Key}: '{piece}' says {key} {value}, '{line}' {said}");
                }
            }
        }
    }
}
