using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Workshop;

/// <summary>How several published figures of one fastener stand to each other.</summary>
public enum TorqueAgreement
{
    /// <summary>One page alone that was read prints a figure, or several together give one.</summary>
    OneSource = 0,

    /// <summary>Several pages print the same, but for rounding.</summary>
    Same,

    /// <summary>They differ and have some torque in common.</summary>
    Overlap,

    /// <summary>They contradict each other: no torque is within all.</summary>
    Apart,

    /// <summary>No page was read that prints a figure for the fastener in general: memory and common practice alone.</summary>
    NonePrinted,
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

    /// <summary>Once the bicycle is together it lies under crank, cap or wheel: tightened at its step, and not reached by the last pass.</summary>
    internal bool IsCovered { get; init; }

    /// <summary>There may be none of it, since the row holds only of some of these parts: "where it is a part of its own". A note says so in a record. Empty where there always is one.</summary>
    internal string OnlyWhere { get; init; } = "";

    /// <summary>Rows of one word exclude each other: the bolts that are there decide which of them holds. Empty where a row stands alone.</summary>
    internal string Either { get; init; } = "";

    /// <summary>How the printed figures stand to each other; memory, common practice and figures of other parts neither agree nor contradict. Figures within 1 % of each other are roundings of one, such as 40 and 40.2 N m (our own bound, no source).</summary>
    public TorqueAgreement Agreement
    {
        get
        {
            TorqueRange[] printed = [.. Ranges.Where(r => !r.IsOfOtherParts && !r.Source.IsUnpublished)];
            return printed.Length == 0 ? TorqueAgreement.NonePrinted
                : printed.All(r => IsRounding(r.LeastHundredths, printed[0].LeastHundredths) && IsRounding(r.MostHundredths, printed[0].MostHundredths)) ? printed.DistinctBy(r => r.Source.Id).Count() == 1 ? TorqueAgreement.OneSource : TorqueAgreement.Same
                : printed.Max(r => r.LeastHundredths) * 100L <= printed.Min(r => r.MostHundredths) * (100L + RoundingPercent) ? TorqueAgreement.Overlap
                : TorqueAgreement.Apart;
        }
    }

    private static bool IsRounding(int one, int other) => Math.Abs(one - other) * 100L <= Math.Max(one, other) * (long)RoundingPercent;

    /// <summary>No page was read that prints it: memory or common practice alone.</summary>
    public bool IsUnpublished => Ranges.All(r => r.Source.IsUnpublished);

    /// <summary>A torque is within one of the figures, those of other parts left out, to the hundredth of a newton metre. Says nothing of the part: its maker's figure rules.</summary>
    /// <param name="torque">The torque, in any unit, 0 to 300 N m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The torque is no number, negative, or above 300 N m.</exception>
    public bool IsWithinOne(Torque torque)
    {
        _ = NumberRange.Checked(torque.NewtonMeters, 0, WorkRecord.MostTorque, "N m", nameof(torque));
        return Ranges.Any(r => !r.IsOfOtherParts && r.Holds(torque));
    }

    /// <summary>"six-bolt rotor bolts: 5 to 6.2 N m (page); 2 to 4 N m (page). The sources contradict each other. The maker's figure rules."</summary>
    public override string ToString() => $"{Fastener}: {Said}";

    internal string Said
    {
        get
        {
            string agree = Agreement switch
            {
                TorqueAgreement.OneSource => Ranges.Any(r => r.Of.EndsWith("together", StringComparison.Ordinal)) ? " Two pages together give it." : " One page alone was read that prints it.",
                TorqueAgreement.Overlap => " The sources differ, and have some torque in common.",
                TorqueAgreement.Apart => " The sources contradict each other.",
                TorqueAgreement.NonePrinted => IsUnpublished ? " No page was read that prints it." : " No page was read that prints it for the fastener in general.",
                _ => "",
            };
            string note = (OnlyWhere.Length > 0 ? $" Only {OnlyWhere}." : "") + (Note.Length > 0 ? $" {Note}" : "");
            return $"{string.Join("; ", Ranges.Select(Told))}.{agree} Thread: {InWords(Treatment)}{From}.{note} The maker's figure rules.";
        }
    }

    /// <summary>Every figure without its source: "six rotor bolts, T25: 5 to 6.2 N m; 4 to 6 N m; 2 to 4 N m (with a plate that locks them)".</summary>
    internal string Brief =>
        $"{Fastener}: {string.Join("; ", Ranges.Select(r => r.Of.Length > 0 ? $"{r} ({r.Of})" : r.ToString()).Distinct())}{(Agreement == TorqueAgreement.Apart ? " (the sources contradict each other)" : IsUnpublished ? " (no page was read that prints it)" : "")}{(OnlyWhere.Length > 0 ? $" ({OnlyWhere})" : "")}";

    private string From => TreatmentSource is { } source ? $" ({source})" : "";

    private static string Told(TorqueRange range) => $"{range} ({range.ToString(TorqueScale.InchPounds)}{(range.Of.Length > 0 ? $"; {range.Of}" : "")}; {range.Source})";

    internal static string InWords(ThreadTreatment treatment) => treatment switch
    {
        ThreadTreatment.Dry => "clean and dry",
        ThreadTreatment.Grease => "a little grease",
        ThreadTreatment.Threadlock => "thread lock, on bolts that come without it",
        ThreadTreatment.AssemblyPaste => "assembly paste between the clamped surfaces, none on the thread",
        _ => "as the maker says",
    };
}
