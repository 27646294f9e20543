using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Workshop;

/// <summary>Length of the chain and limits of the gears, by <see cref="ChainRule"/>.</summary>
internal static class DriveFigures
{
    private const double Pitch = 12.7;

    public static WorkFigure? Chainline(FitReport report)
    {
        Fit fit = report.Findings.FirstOrDefault(f => f.Joint!.Id == "chainline");
        return fit.Joint is not null ? WorkFigure.Told("chainline", "chainline", $"{fit.Sentence} ({Verdicts.InWords(fit.Verdict)})", [.. fit.Sources])
            : report.Build.As<Crankset>(Slot.Crankset)?.Chainline is { State: KnownState.Value } line ? WorkFigure.Told("chainline", "chainline of the crank", line.InTradeWords(), line.Value.Source)
            : WorkFigure.Lacks("chainline", "chainline of the crank", "the crank maker's chainline");
    }

    /// <summary>Where the chain is cut, and the longest that the derailleur still takes up.</summary>
    public static WorkFigure?[] Chain(Build build)
    {
        const string Name = "pitches of the chain (a pitch is 12.7 mm; what is often called a link)";
        if (build.IsBelt())
        {
            return [WorkFigure.Lacks("chain-pitches", "length of the belt", "the belt maker's length for these pulleys and this chainstay")];
        }

        // A chain that is counted is known, and is not cut to that count while a derailleur may still come.
        if (build.HasFixedChain() is null)
        {
            return [WorkFigure.Lacks("chain-pitches", Name, "whether a derailleur comes: none is there, and this bicycle may need one").Into(Slot.Chain, "pitches") with { Unit = "pitches" }];
        }

        if (build.As<RearDerailleur>(Slot.RearDerailleur) is not { } derailleur)
        {
            return [WorkFigure.Lacks("chain-pitches", Name, "the chain laid round ring and sprocket, with what tensions it in the middle of its range: there is no derailleur to take it up").Into(Slot.Chain, "pitches", isCut: true) with { Unit = "pitches" }];
        }

        if (build.HasRearTravel() is not { } moves)
        {
            return [WorkFigure.Lacks("chain-pitches", Name, "whether the rear wheel moves on a shock: the chain is sized where it is longest").Into(Slot.Chain, "pitches", isCut: true) with { Unit = "pitches" }];
        }

        if (moves)
        {
            return [WorkFigure.Lacks("chain-pitches", Name, "the longest distance from bottom bracket to rear axle in the travel, measured with the shock empty or without its spring: the stated chainstay is that of a rear that stands still").Into(Slot.Chain, "pitches", isCut: true) with { Unit = "pitches" }];
        }

        FigureInputs given = new();
        Length chainstay = Length.FromMillimeters((double)given.Millimetres("the length of the chainstay", build.Frame.Chainstay));
        int ring = given.Teeth("the teeth of the largest ring that is on", LargestRing(build));
        int sprocket = given.Teeth("the teeth of the largest sprocket", build.As<Cassette>(Slot.Cassette)?.LargestSprocket ?? default);
        int added = Allowance(derailleur, given);
        WorkFigure least = given.Figure("chain-pitches", Name, "pitches", () => ChainRule.BigBig(chainstay, ring, sprocket, added).EvenPitches, [.. ChainRule.Sources]).Into(Slot.Chain, "pitches", isCut: true);
        Known<ToothCount> smallest = build.As<Crankset>(Slot.Crankset)?.SmallestRing ?? default;
        int inner = smallest.State == KnownState.None ? ring : given.Teeth("the teeth of the smallest ring", smallest);
        int small = given.Teeth("the teeth of the smallest sprocket", build.As<Cassette>(Slot.Cassette)?.SmallestSprocket ?? default);
        int capacity = given.Teeth("the capacity of the derailleur", derailleur.Capacity);
        WorkFigure most = given.Figure("chain-most", "most pitches that the derailleur takes up", "pitches", () => ChainRule.SmallSmall(chainstay, inner, small, capacity, added).EvenPitchesNotAbove, [.. ChainRule.Sources]);
        return
        [
            least, most,
            least.Value > most.Value ? WorkFigure.Told("chain-between", "no even number of pitches is within both", "take the longer, which never tears the derailleur off, and see whether it hangs slack on the smallest; the derailleur maker's rule decides", [.. ChainRule.Sources]) : null,
        ];
    }

    /// <summary>The derailleur maker's pitches in whole ones, rounded up; the general two where none are stated.</summary>
    private static int Allowance(RearDerailleur derailleur, FigureInputs given) =>
        derailleur.AllowanceOrGeneral.State == KnownState.None ? ChainRule.GeneralAllowancePitches
        : (int)Math.Ceiling(((double)given.Millimetres("the derailleur maker's allowance", derailleur.AllowanceOrGeneral) / Pitch) - 1e-6);

    /// <summary>The ring that is fitted as a part of its own counts before what the crank came with; unknown where they differ and either may be the large one.</summary>
    private static Known<ToothCount> LargestRing(Build build)
    {
        Crankset? crank = build.As<Crankset>(Slot.Crankset);
        Known<ToothCount> stated = crank?.LargestRing ?? default;
        if (build.As<Chainring>(Slot.Chainring) is not { } ring)
        {
            return stated;
        }

        return stated.State != KnownState.Value || crank!.SmallestRing.State == KnownState.None ? ring.Teeth
            : SameTeeth(ring.Teeth, stated) || SameTeeth(ring.Teeth, crank.SmallestRing) ? stated : default;
    }

    private static bool SameTeeth(Known<ToothCount> one, Known<ToothCount> other) =>
        one.State == KnownState.Value && other.State == KnownState.Value && one.Value.FitCode == other.Value.FitCode;
}
