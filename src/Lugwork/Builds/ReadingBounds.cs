using System.Collections.Immutable;
using System.Globalization;

namespace Lugwork;

/// <summary>What a reading on the finished bicycle cannot be. No page prints such bounds: they are our own, wide enough for every bicycle that we know of, and catch a slip of the rule or of the unit.</summary>
internal static class ReadingBounds
{
    private const long Millimetre = Nanometres.PerMillimetre;
    private const string OwnBound = "our own bound, no source";

    /// <summary>A reading farther than this from the sum of the same parts is a slip, or one of the parts is not as stated.</summary>
    private const int MostApart = 60;

    /// <summary>A line of the rings farther than this outside the range of the crank's chainline.</summary>
    private const int MostLineApart = 20;

    /// <summary>How far a mounted tyre may be from its label: millimetres at least, else parts of a hundred of the label.</summary>
    private static readonly (int Millimetres, int Percent) Thinner = (8, 15);

    private static readonly (int Millimetres, int Percent) Wider = (10, 20);

    private static readonly ImmutableArray<(string Field, int Least, int Most, bool MayBeNone)> Ranges =
    [
        ("toeClearance", 1, 600, false),
        ("groundHeight", 10, 400, false),
        ("measuredChainline", 20, 110, false),
        ("cassetteChainline", 20, 110, false),
        ("mountedWidth", 10, 160, false),
        ("mountedRim", 8, 120, false),
        ("binderGap", 0, 20, true),
    ];

    /// <summary>A reading of this field is held to bounds.</summary>
    public static bool IsBounded(Slot slot, string field) => Ranges.Any(r => r.Field == field) && (!TakenWith.SlotsOf(slot, field).IsEmpty || slot == Slot.FrontTyre || slot == Slot.RearTyre);

    /// <summary>What the parts of a build say that cannot have been read on it, with the path in its file. What a file says how it was read is looked at there, each by itself; here only beside the other parts.</summary>
    public static IEnumerable<SpecProblem> Problems(Build build, HashSet<(string? Slot, string? Field)> said)
    {
        foreach (Slot slot in Slot.All)
        {
            if (build[slot] is { } part)
            {
                // A tyre that contradicts its label was refused where it was read.
                foreach (string field in Stated(part, slot).Where(f => !TakenWith.SlotsOf(slot, f).IsEmpty))
                {
                    string text = PartForms.Of(slot).TextOf(part, field)!;
                    if ((said.Contains((slot.Key, field)) ? null : Problem(part, new AsBuiltValue(slot, field, text, AsBuiltKind.Measured, "unknown", "", null))) is { } own)
                    {
                        yield return own with { Where = $"$.parts.{slot.Key}.{field}" };
                    }
                    else if (Problem(build, slot, field) is { } beside)
                    {
                        yield return beside with { Where = $"$.parts.{slot.Key}.{field}" };
                    }
                }
            }
        }
    }

    /// <summary>What a reading that holds says against its part or the parts it was taken with, once more is known of them; null where nothing.</summary>
    public static SpecProblem? ProblemOf(Build build, Slot changed, string field)
    {
        foreach (Slot slot in Slot.All)
        {
            foreach (string read in build[slot] is { } part ? Stated(part, slot) : [])
            {
                bool taken = TakenWith.SlotsOf(slot, read).Contains(changed);
                string text = PartForms.Of(slot).TextOf(build[slot]!, read)!;
                SpecProblem? wrong = slot == changed ? Problem(build[slot]!, new AsBuiltValue(slot, read, text, AsBuiltKind.Measured, "unknown", "", null)) : null;
                wrong ??= taken ? Problem(build, slot, read) : null;
                if (wrong is not null)
                {
                    return wrong with { Where = field };
                }
            }
        }

        return null;
    }

    /// <summary>A tyre whose width and label contradict each other is refused when it is read; one made in code is asked about and never fits.</summary>
    public static (string Field, string Reason, string Expected)? Contradiction(Tyre tyre) => Contradiction(tyre, Slot.FrontTyre);

    /// <summary>What a part says was read of it and cannot be, whatever stands beside it; null where nothing. A file with it is refused, and a part made in code is asked about and never fits.</summary>
    public static (string Field, string Reason, string Expected)? Contradiction(Part part, Slot slot)
    {
        // Every build is asked this, and almost none has a slip: nothing is written out as text before the codes say so.
        foreach ((string field, int least, int most, bool mayBeNone) in Ranges)
        {
            Candidates read = PartForms.Of(slot).CodesOf(part, field);
            if (IsStated(read) && (IsOut(read, least, most, mayBeNone) || (field == "mountedWidth" && IsBesideLabel(part, read)))
                && Problem(part, new AsBuiltValue(slot, field, PartForms.Of(slot).TextOf(part, field)!, AsBuiltKind.Measured, "unknown", "", null)) is { } wrong)
            {
                return (field, wrong.Reason, wrong.Expected);
            }
        }

        return null;
    }

    /// <summary>The fields of a part that are read on the finished bicycle and have a figure, or none.</summary>
    private static IEnumerable<string> Stated(Part part, Slot slot)
    {
        foreach ((string field, _, _, _) in Ranges)
        {
            if (IsStated(PartForms.Of(slot).CodesOf(part, field)))
            {
                yield return field;
            }
        }
    }

    /// <summary>What a value says that cannot be of its part; null where it can be.</summary>
    public static SpecProblem? Problem(Part part, AsBuiltValue value)
    {
        Candidates read = PartForms.Of(value.Slot).CodesOf(part, value.Field);
        foreach ((string field, int least, int most, bool mayBeNone) in Ranges)
        {
            if (field != value.Field)
            {
                continue;
            }

            if (read.State == KnownState.None && !mayBeNone)
            {
                return new(field, 0, "none is no reading: where nobody measured, the field is left out", "millimetres");
            }

            if (IsOut(read, least, most, mayBeNone))
            {
                return new(field, 0, string.Create(CultureInfo.InvariantCulture, $"{value.Value} mm cannot be: {least} to {most} mm ({OwnBound}); measure again, in millimetres"), string.Create(CultureInfo.InvariantCulture, $"{least} to {most}"));
            }
        }

        return value.Field == "mountedWidth" && part is Tyre { Size.State: KnownState.Value } tyre ? BesideLabel(tyre.Size.Value.WidthMillimetres, read, value) : null;
    }

    /// <summary>What a reading says against the other parts with which it was taken; null where nothing.</summary>
    public static SpecProblem? Problem(Build build, Slot slot, string field)
    {
        if (field == "measuredChainline")
        {
            return BesideChainline((Crankset)build[slot]!, field);
        }

        if (field is not ("toeClearance" or "groundHeight") || Waiver.JointOf(field == "toeClearance" ? "toe-clearance" : "pedal-ground-clearance") is not { Relation: SumRelation sum } joint || !joint.IsFilled(build))
        {
            return null;
        }

        CandidateRow row = default;
        joint.TryRead(build, ref row);
        long apart = sum.Apart(joint.Inputs, row);
        return apart <= MostApart * Millimetre ? null
            : new(field, 0, string.Create(CultureInfo.InvariantCulture, $"{PartForms.Of(slot).TextOf(build[slot]!, field)} mm is {apart / Millimetre} mm from what frame, crank and tyres give: more than {MostApart} mm apart ({OwnBound}); measure again, and correct first what of them is stated otherwise than it is"), "a reading that goes with the parts");
    }

    private static SpecProblem? BesideLabel(int label, in Candidates read, AsBuiltValue value)
    {
        (int least, int most) = OfLabel(label);
        return IsOut(read, least, most, mayBeNone: true)
            ? new(value.Field, 0, string.Create(CultureInfo.InvariantCulture, $"{value.Value} mm cannot be the width of a tyre labelled {label} mm: {least} to {most} mm on any rim ({OwnBound}); measure again, in millimetres"), string.Create(CultureInfo.InvariantCulture, $"{least} to {most}"))
            : null;
    }

    private static bool IsBesideLabel(Part part, in Candidates read) =>
        part is Tyre { Size.State: KnownState.Value } tyre && OfLabel(tyre.Size.Value.WidthMillimetres) is var (least, most) && IsOut(read, least, most, mayBeNone: true);

    private static (int Least, int Most) OfLabel(int label) =>
        (label - Math.Max(Thinner.Millimetres, label * Thinner.Percent / 100), label + Math.Max(Wider.Millimetres, label * Wider.Percent / 100));

    private static SpecProblem? BesideChainline(Crankset crank, string field)
    {
        Candidates read = crank.MeasuredChainline.ToCandidates();
        if (crank.Chainline.State != KnownState.Value || !IsFigure(read))
        {
            return null;
        }

        (decimal least, decimal most) = (crank.Chainline.Value.Range.Least - MostLineApart, crank.Chainline.Value.Range.Most + MostLineApart);
        return read.High < (long)(least * Millimetre) || read.Low > (long)(most * Millimetre)
            ? new(field, 0, string.Create(CultureInfo.InvariantCulture, $"{crank.MeasuredChainline} mm is no line of a crank of {crank.Chainline.InTradeWords()}: {least:0.##} to {most:0.##} mm ({OwnBound}); measure again, from the middle plane of the frame"), string.Create(CultureInfo.InvariantCulture, $"{least:0.##} to {most:0.##}"))
            : null;
    }

    private static bool IsStated(in Candidates read) => read.State == KnownState.None || IsFigure(read);

    private static bool IsOut(in Candidates read, int least, int most, bool mayBeNone) =>
        (read.State == KnownState.None && !mayBeNone) || (IsFigure(read) && (read.High < least * Millimetre || read.Low > most * Millimetre));

    private static bool IsFigure(in Candidates read) => read.State is KnownState.Value or KnownState.Measured or KnownState.OneOf;
}
