using System.Collections.Immutable;

namespace Lugwork.BottomBrackets;

/// <summary>Width of a shell against the widths that a bottom bracket is made for. Outside by at most a millimetre it has to be measured: printed widths of one standard differ by as much.</summary>
internal sealed class ShellWidth : Relation, ICutsLengths
{
    private const long Near = Nanometres.PerMillimetre;

    private static readonly Reason Inside = new("shell-width-within", "The shell, {0} mm wide, is within the {1} to {2} mm that the bottom bracket is made for.") { Sources = [Sources.SpacerChart24, Sources.T47Width] };

    private static readonly Reason Beside = new("shell-width-beside", "The shell, {0} mm wide, is up to 1 mm outside the {1} to {2} mm that the bottom bracket is made for. One standard is printed with several widths (86 and 86.5, 91.5 and 92): caliper the shell. If they do differ: [bridge].")
    {
        Sources = [Sources.T47Width, Sources.BracketSense],
    };

    private static readonly Reason Narrow = new("shell-too-narrow", "The shell, {0} mm wide, is narrower than the {1} mm that the bottom bracket is made for.") { Mend = "a bottom bracket made for the width of the shell", Sources = [Sources.SpacerChart24, Sources.T47Asymmetric] };

    private static readonly Reason Wide = new("shell-too-wide", "The shell, {0} mm wide, is wider than the {2} mm that the bottom bracket is made for.") { Mend = "a bottom bracket made for the width of the shell", Sources = [Sources.SpacerChart24, Sources.T47Asymmetric] };

    private static readonly Reason Open = new("shell-width-open", "The bottom bracket has no figure on this side of the shell, {0} mm wide ({1} to {2}): ask its maker for the widths it is made for.") { Sources = [Sources.CommonPractice] };

    private static readonly Bridge HalfSpacers = new()
    {
        Id = "bottom-bracket-spacers-0.5",
        Kind = BridgeKind.Spacers,
        Result = Verdict.NeedsMeasuring,
        What = "0.5 mm bottom-bracket spacers, one a side for 1 mm",
        Sources = [Sources.T47Width],
    };

    private static readonly Bridge WideSpacers = new()
    {
        Id = "bottom-bracket-92-in-89.5",
        Kind = BridgeKind.Spacers,
        Result = Verdict.NeedsMeasuring,
        What = "the cups for 92 mm with the spacers of the maker's chart for 89.5 mm",
        Sources = [Sources.Overview2899],
    };

    private const long Shell89 = 89_500_000;

    private const long Shell92 = 92_000_000;

    public override string Kind => "within, and to be measured up to 1 mm outside";

    public override ImmutableArray<Bridge> Bridges => [HalfSpacers, WideSpacers];

    public override ImmutableArray<Source> RestsOn => [Sources.T47Width, Sources.BracketSense];

    public ImmutableArray<long> Cuts { get; } = [Shell89, Shell92];

    public ImmutableArray<long> Gaps { get; } = [Near, -Near];

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        (long shell, long least, long most) = (values[0], values[1], values[2]);
        if (shell == 0)
        {
            return new(Verdict.DoesNotFit, Reasons.NothingToMate);
        }

        if (shell == Shell89 && least == Shell92)
        {
            return new(Verdict.NeedsMeasuring, Reasons.SpacedShell, WideSpacers);
        }

        Outcome below = least == 0 ? Unsaid(shell < most || most == 0) : Side(least - shell, Narrow);
        Outcome above = most == 0 ? Unsaid(shell > least) : Side(shell - most, Wide);
        return above.Verdict > below.Verdict ? above : below;
    }

    private static Outcome Side(long outside, Reason far) =>
        outside <= 0 ? new(Verdict.Fits, Inside) : outside <= Near ? new(Verdict.NeedsMeasuring, Beside, HalfSpacers) : new(Verdict.DoesNotFit, far);

    /// <summary>A missing figure is no licence: what lies on its side is open.</summary>
    private static Outcome Unsaid(bool onThatSide) => onThatSide ? new(Verdict.NeedsMeasuring, Open) : new(Verdict.Fits, Inside);
}
