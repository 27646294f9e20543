using System.Globalization;

namespace Lugwork;

/// <summary>A finding that someone accepted, and why. It is reported as waived; verdict and exit code stay, and it lapses when a part of the joint changes.</summary>
public sealed class Waiver
{
    /// <summary>Longest reason, characters.</summary>
    public static int MostReason => ReasonLimit;

    // For patterns and attributes, which take constants alone; a public one would be copied into callers.
    internal const int ReasonLimit = 500;

    internal Waiver(string joint, string reason, string parts) => (JointId, Reason, Parts) = (joint, reason, parts);

    /// <summary>Id of the joint or check whose finding is accepted.</summary>
    public string JointId { get; }

    /// <summary>Why it is accepted, in the words of whoever accepted it.</summary>
    public string Reason { get; }

    /// <summary>Sixteen hexadecimal digits of the parts as they were when it was accepted: another part, or another figure of one, gives others.</summary>
    internal string Parts { get; }

    /// <summary>"seatpost-in-seat-tube: the reason".</summary>
    public override string ToString() => $"{JointId}: {Reason}";

    internal static Joint? JointOf(string id) => JointTable.All.FirstOrDefault(j => j.Id == id);

    /// <summary>FNV-1a over every slot and stated field of the joint's parts, and the names too where it is about their condition, by which a change of either is seen. Not made to keep anyone from forging it.</summary>
    internal static string PartsOf(Joint joint, Build build) => PartsOf(joint.Slots, build, named: IsOfArticle(joint), static (_, _) => false);

    /// <summary>A condition is of the one article that was looked over: another one of the same figures, and so of another name, is not it. A figure is the same on both.</summary>
    private static bool IsOfArticle(Joint joint) => joint.IsOfCondition || joint.Relation is WornSetRelation;

    /// <summary>The same of some slots, with the names of the parts: where another part with the same figures counts as another.</summary>
    internal static string PartsOf(IEnumerable<Slot> slots, Build build) => PartsOf(slots, build, static (_, _) => false);

    /// <summary>The same, with some fields left out.</summary>
    internal static string PartsOf(IEnumerable<Slot> slots, Build build, Func<Slot, string, bool> leftOut) => PartsOf(slots, build, named: true, leftOut);

    private static string PartsOf(IEnumerable<Slot> slots, Build build, bool named, Func<Slot, string, bool> leftOut)
    {
        ulong hash = 14_695_981_039_346_656_037;
        void Add(string text)
        {
            foreach (char letter in text.Append('\n'))
            {
                hash = (hash ^ (byte)letter) * 1_099_511_628_211;
                hash = (hash ^ (byte)(letter >> 8)) * 1_099_511_628_211;
            }
        }

        foreach (Slot slot in slots)
        {
            Add(slot.Key);
            if (build[slot] is { } part)
            {
                // A name is never judged, so that giving one takes nothing back.
                foreach ((string field, string value) in PartForms.Of(slot).Write(named ? part : part with { Name = "" }))
                {
                    if (leftOut(slot, field))
                    {
                        continue;
                    }

                    Add(field);
                    Add(value);
                }
            }
        }

        return hash.ToString("x16", CultureInfo.InvariantCulture);
    }
}

/// <summary>A finding that stands, and was accepted.</summary>
public sealed record WaivedFit
{
    internal WaivedFit(Fit fit, string reason)
    {
        Fit = fit;
        Reason = reason;
    }

    /// <summary>The finding; its verdict counts as before.</summary>
    public Fit Fit { get; internal init; }

    /// <summary>Why it was accepted.</summary>
    public string Reason { get; internal init; }

    /// <summary>"Chainline: needs measuring, waived: the reason".</summary>
    public override string ToString() => $"{Fit.Joint?.Name}: {Verdicts.InWords(Fit.Verdict)}, waived: {Reason}";
}
