using System.Collections.Immutable;

namespace Lugwork;

/// <summary>How several published figures of one fastener stand to each other.</summary>
public enum TorqueAgreement
{
    /// <summary>Only one page prints a figure.</summary>
    OneSource = 0,

    /// <summary>All print the same.</summary>
    Same,

    /// <summary>They differ and have some torque in common.</summary>
    Overlap,

    /// <summary>They contradict each other: no torque is within all.</summary>
    Apart,
}

/// <summary>How tight one fastener goes, by every page that was read. The maker's figure rules. Closed set, identity equality; see <see cref="TorqueTable"/>.</summary>
public sealed class TorqueFigure
{
    private const int RoundingPercent = 1;

    internal TorqueFigure(string id, string fastener, params ImmutableArray<TorqueRange> ranges)
    {
        Id = id;
        Fastener = fastener;
        Ranges = ranges;
    }

    /// <summary>Permanent id: "rotor-bolts".</summary>
    public string Id { get; }

    /// <summary>The fastener.</summary>
    public string Fastener { get; }

    /// <summary>Every published figure, each with its source; nothing is averaged and none is chosen.</summary>
    public ImmutableArray<TorqueRange> Ranges { get; }

    /// <summary>What the thread gets.</summary>
    public ThreadTreatment Treatment { get; internal init; }

    /// <summary>Where the treatment comes from; null where it is the maker's to say.</summary>
    public Source? TreatmentSource { get; internal init; }

    /// <summary>What to mind with it; may be empty.</summary>
    public string Note { get; internal init; } = "";

    /// <summary>It is closed by hand or until play is gone: no torque wrench is set for it.</summary>
    internal bool IsByHand { get; init; }

    /// <summary>How the figures stand to each other. Figures within 1 % of each other are roundings of one, such as 40 and 40.2 N m (our own bound, no source).</summary>
    public TorqueAgreement Agreement =>
        Ranges.Length == 1 ? TorqueAgreement.OneSource
        : Ranges.All(r => r.LeastHundredths == Ranges[0].LeastHundredths && r.MostHundredths == Ranges[0].MostHundredths) ? TorqueAgreement.Same
        : Ranges.Max(r => r.LeastHundredths) * 100L <= Ranges.Min(r => r.MostHundredths) * (100L + RoundingPercent) ? TorqueAgreement.Overlap
        : TorqueAgreement.Apart;

    /// <summary>No page was read that prints it: memory or common practice alone.</summary>
    public bool IsUnpublished => Ranges.All(r => r.Source.IsUnpublished);

    /// <summary>A torque is within one of the figures. Says nothing of the part: its maker's figure rules.</summary>
    /// <param name="newtonMetres">The torque, N m.</param>
    public bool IsWithinOne(decimal newtonMetres) => Ranges.Any(r => newtonMetres * 100 >= r.LeastHundredths && newtonMetres * 100 <= r.MostHundredths);

    /// <summary>"six-bolt rotor bolts: 5 to 6.2 N m (page); 2 to 4 N m (page). The sources contradict each other. The maker's figure rules."</summary>
    public override string ToString() => $"{Fastener}: {Said}";

    internal string Said
    {
        get
        {
            string agree = Agreement switch
            {
                TorqueAgreement.Overlap => " The sources differ.",
                TorqueAgreement.Apart => " The sources contradict each other.",
                _ => "",
            };
            string unread = IsUnpublished ? " No page was read that prints it." : "";
            string note = Note.Length > 0 ? $" {Note}" : "";
            return $"{string.Join("; ", Ranges.Select(Told))}.{agree}{unread} Thread: {InWords(Treatment)}.{note} The maker's figure rules.";
        }
    }

    private static string Told(TorqueRange range) => $"{range} ({range.ToString(TorqueScale.InchPounds)}{(range.Of.Length > 0 ? $"; {range.Of}" : "")}; {range.Source})";

    internal static string InWords(ThreadTreatment treatment) => treatment switch
    {
        ThreadTreatment.Dry => "clean and dry",
        ThreadTreatment.Grease => "a little grease",
        ThreadTreatment.AssemblyPaste => "assembly paste between the clamped surfaces, none on the thread",
        _ => "as the maker says",
    };
}
