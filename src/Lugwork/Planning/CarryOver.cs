using System.Collections.Immutable;
using System.Text;

namespace Lugwork.Planning;

/// <summary>What of an old bicycle goes onto a new frame: which parts move, which stay and why, what is still to buy, and what the old bicycle lacks then.</summary>
/// <remarks>
/// Parts are taken in the order of a build sheet, and what no bicycle has to have once more when all else is there. Each is judged by the same check that judges a build: with the new frame, with the parts that the new build has, which are kept, and with the
/// parts that moved before it, so that cassette and wheel, lever and caliper go together. Of two that clash the earlier one moves. A part that does not go to its own place is tried in its other
/// ones that are empty, and goes there only where it fits. A part that needs measuring moves in the plan; once it was measured, the whole is judged again. A dropper and its seatpost, and levers and shifters with their
/// controls, are one article and move together. Limits of load are judged with the rider of the new build, and where it has none with the donor's.
/// </remarks>
public sealed class CarryOver
{
    private ImmutableArray<Need> _toBuy;
    private ImmutableArray<Need> _unlessMeasured;
    private ImmutableArray<Need> _donorLacks;
    private ImmutableArray<SmallPart> _smallParts;
    private ImmutableArray<Joint> _donorOpens;

    internal CarryOver(Build donor, Build onto, Build moved, ImmutableArray<CarriedPart> parts)
    {
        (Donor, Onto, Moved, Parts) = (donor, onto, moved, parts);
        DonorLeft = parts.Where(p => p.Plan == CarryDecision.Moves).Aggregate(donor, (b, p) => b.Without(p.From));
        DonorLeft = moved.SmallPartsThere.Except(onto.SmallPartsThere).Aggregate(DonorLeft, (b, id) => b.WithoutSmallPart(id));
    }

    /// <summary>The old bicycle, whole.</summary>
    public Build Donor { get; }

    /// <summary>The new build as it was given, with the donor's rider where it has none.</summary>
    public Build Onto { get; }

    /// <summary>The new build with every part that moves, those that need measuring among them, and with the shims and adapters of the donor that they still ask for.</summary>
    public Build Moved { get; }

    /// <summary>The old bicycle without them.</summary>
    public Build DonorLeft { get; }

    /// <summary>Every part of the donor, in the order of a build sheet; its frame and rider left out.</summary>
    public ImmutableArray<CarriedPart> Parts { get; }

    /// <summary>What moves and fits, as it is or with a shim or adapter.</summary>
    public ImmutableArray<CarriedPart> WorthMoving => [.. Parts.Where(p => p.IsWorthMoving)];

    /// <summary>What moves once it was measured or looked over, or has nothing yet to be judged by.</summary>
    public ImmutableArray<CarriedPart> Open => [.. Parts.Where(p => p.Plan == CarryDecision.Moves && !p.IsWorthMoving)];

    /// <summary>What stays with the donor.</summary>
    public ImmutableArray<CarriedPart> Staying => [.. Parts.Where(p => p.Plan != CarryDecision.Moves)];

    /// <summary>Required slots for which nothing is there and nothing moves, with what goes there.</summary>
    public ImmutableArray<Need> ToBuy => _toBuy.IsDefault ? _toBuy = [.. Moved.Needs().Where(n => !n.IsFilled)] : _toBuy;

    /// <summary>Required slots for which a part moves that does not fit for certain, with what goes there if it does not.</summary>
    public ImmutableArray<Need> ToBuyUnlessMeasured => _unlessMeasured.IsDefault
        ? _unlessMeasured = [.. Open.OrderBy(p => p.Slot.Number).Select(p => Moved.Without(p.Slot).Needs().Of(p.Slot)).OfType<Need>()]
        : _unlessMeasured;

    /// <summary>What the new build needs beside its main parts, the bridges among it; what fills a slot of <see cref="ToBuy"/> is left out.</summary>
    public ImmutableArray<SmallPart> SmallParts => _smallParts.IsDefault ? _smallParts = [.. Moved.SmallParts().Where(p => p.Slot is null || !ToBuy.Any(n => n.Slot == p.Slot))] : _smallParts;

    /// <summary>Required slots of the donor that are empty once the parts have left, with what goes there; those that were empty before are among them.</summary>
    public ImmutableArray<Need> DonorLacks => _donorLacks.IsDefault ? _donorLacks = [.. DonorLeft.Needs().Where(n => !n.IsFilled)] : _donorLacks;

    /// <summary>Joints of the donor that were judged and lose a side, in the order of the joint table.</summary>
    public ImmutableArray<Joint> DonorOpens => _donorOpens.IsDefault ? _donorOpens = Opened() : _donorOpens;

    /// <summary>Judges the parts of an old bicycle against a new frame.</summary>
    /// <param name="donor">The old bicycle, as far as it is there.</param>
    /// <param name="frame">The new frame.</param>
    public static CarryOver Of(Build donor, Frame frame) => Of(donor, Build.From(frame));

    /// <summary>Judges the parts of an old bicycle against a new build.</summary>
    /// <param name="donor">The old bicycle, as far as it is there.</param>
    /// <param name="onto">The new frame with the parts that it has already; they are kept.</param>
    /// <param name="cancellationToken">Ends the work early.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static CarryOver Of(Build donor, Build onto, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(donor);
        ArgumentNullException.ThrowIfNull(onto);
        return CarrySteps.Run(donor, onto, cancellationToken);
    }

    /// <summary>What moves, what stays and why, what is still to buy, and what the donor lacks then.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        text.Append(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Parts.Length} parts: {WorthMoving.Length} worth moving, {Open.Length} open, {Staying.Length} stay.")).AppendLine();
        Listed(text, "Worth moving", WorthMoving.Select(p => p.ToString()));
        Listed(text, "To be measured, looked over or chosen first", Open.Select(p => p.ToString()));
        Listed(text, "Stays", Staying.Select(p => p.ToString()));
        Listed(text, "Still to buy", ToBuy.Select(Short));
        Listed(text, "And with them", SmallParts.Select(p => p.ToString()));
        Slot[] left = [.. DonorLacks.Select(n => n.Slot).Where(s => Donor[s] is not null)];
        Slot[] before = [.. DonorLacks.Select(n => n.Slot).Where(s => Donor[s] is null)];
        text.Append(left.Length == 0 ? "No required slot of the donor is emptied" : $"The donor then lacks: {string.Join(", ", left)}");
        return text.Append(before.Length == 0 ? "." : $"; it has no {string.Join(", ", before)} as it is.").ToString();
    }

    private ImmutableArray<Joint> Opened()
    {
        HashSet<Joint> left = [.. DonorLeft.Check().Findings.Select(f => f.Joint!)];
        return [.. Donor.Check().Findings.Select(f => f.Joint!).Where(j => !j.IsOfCondition && j.Slots.Length > 1 && !left.Contains(j))];
    }

    /// <summary>The first things that its neighbours ask of a slot; the whole need is in <see cref="ToBuy"/>.</summary>
    private static string Short(Need need)
    {
        const int Most = 3;
        NeedLine[] said = [.. need.Lines.Where(l => l.SaysSomething).DistinctBy(l => l.Field).Take(Most)];
        return said.Length == 0 ? need.Slot.Name : $"{need.Slot.Name}: {string.Join("; ", said.AsEnumerable())}";
    }

    private static void Listed(StringBuilder text, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            text.Append(title).AppendLine(":");
            foreach (string line in all)
            {
                text.Append("  ").AppendLine(line);
            }
        }
    }
}
