using System.Collections.Immutable;
using FsCheck;
using FsCheck.Xunit;
using Lugwork.BottomBrackets;

namespace Lugwork.Tests.BottomBrackets;

/// <summary>What holds for every shell, spindle and width.</summary>
public sealed class BottomBracketLaws
{
    private static readonly (Relation Relation, long[] Seats, long[] Parts)[] Closed =
    [
        (BottomBracketRelations.InShell, Codes(ShellFamily.All), Codes(ShellFamily.All)),
        (BottomBracketRelations.SpindleIn, Codes(SpindleSeat.All), Codes(SpindleSeat.All)),
        (BottomBracketRelations.Across, Codes(Shell.All), Codes(Spindle.All)),
        (BottomBracketRelations.Pedals, Codes(PedalThread.All), Codes(PedalThread.All)),
    ];

    [Fact]
    public void Every_pair_has_a_verdict_and_a_sourced_reason_and_never_throws()
    {
        foreach ((Relation relation, long[] seats, long[] parts) in Closed)
        {
            foreach (long seat in seats.Prepend(0))
            {
                foreach (long part in parts.Prepend(0))
                {
                    Outcome outcome = relation.Judge([seat, part]);
                    Assert.NotEqual(Verdict.NotJudged, outcome.Verdict);
                    Assert.NotNull(outcome.Reason);
                    Assert.True(seat != 0 && part != 0 || outcome.Verdict == Verdict.DoesNotFit);
                    Assert.True(outcome.Verdict != Verdict.NeedsPart || outcome.Bridge is { Kind: not BridgeKind.MadeForBoth });
                    Assert.Equal(outcome.Reason.Template.Contains("[bridge]", StringComparison.Ordinal), outcome.Bridge is not null);
                    Assert.True(outcome.Verdict == Verdict.NeedsMeasuring || seat == 0 || part == 0 || outcome.Bridge is not null || outcome.Reason.Sources.Length > 0, outcome.Reason.Id);
                    Assert.True(outcome.Verdict != Verdict.DoesNotFit || seat == 0 || part == 0 || outcome.Reason.Mend.Length > 0, outcome.Reason.Id);
                }
            }
        }
    }

    [Fact]
    public void What_only_memory_supports_never_fits()
    {
        foreach ((Relation relation, long[] seats, long[] parts) in Closed)
        {
            foreach (Outcome outcome in seats.SelectMany(s => parts.Select(p => relation.Judge([s, p]))).Where(o => o.Verdict is Verdict.Fits or Verdict.NeedsPart))
            {
                ImmutableArray<Source> sources = outcome.Bridge?.Sources ?? outcome.Reason!.Sources;
                Assert.Contains(sources, s => s.Kind is not (SourceKind.Memory or SourceKind.CommonPractice));
            }
        }

        foreach (Shell shell in Shell.All.Where(s => s.Source == Sources.Memory))
        {
            Assert.All(Spindle.All, s => Assert.True(BottomBracketRelations.Across.Judge([shell.FitCode, s.FitCode]).Verdict >= Verdict.NeedsMeasuring));
        }
    }

    [Fact]
    public void Every_bridge_has_an_id_of_its_own_and_is_reached_from_its_own_side()
    {
        Bridge[] bridges = [.. Closed.SelectMany(c => c.Relation.Bridges), .. BottomBracketRelations.Width.Bridges];
        Assert.Equal(bridges.Length, bridges.Select(b => b.Id).Distinct().Count());
        foreach ((Relation relation, _, _) in Closed)
        {
            foreach (Bridge bridge in relation.Bridges)
            {
                Outcome forth = relation.Judge([bridge.To, bridge.From]);
                if (forth.Reason!.Offers.Contains(bridge))
                {
                    // Offered only: the pair stays refused or unsafe.
                    Assert.True(forth.Verdict >= Verdict.DoesNotFit && forth.Bridge is null);
                    continue;
                }

                Assert.Equal((bridge.Result, bridge), (forth.Verdict, forth.Bridge));
                if (relation is SameKey)
                {
                    Assert.NotSame(bridge, relation.Judge([bridge.From, bridge.To]).Bridge);
                    Assert.Equal(Verdict.Fits, relation.Judge([bridge.To, bridge.To]).Verdict);
                }
            }
        }
    }

    [Fact]
    public void A_larger_spindle_never_goes_in_a_smaller_system()
    {
        int larger = 0;
        foreach (SpindleSeat seat in SpindleSeat.All.Where(s => s.DriveSide is not null))
        {
            foreach (SpindleSeat crank in SpindleSeat.All.Where(s => s.DriveSide is not null))
            {
                if (crank.DriveMicrometres > seat.DriveMicrometres || crank.OtherMicrometres > seat.OtherMicrometres)
                {
                    larger++;
                    Assert.Equal(Verdict.DoesNotFit, BottomBracketRelations.SpindleIn.Judge([seat.FitCode, crank.FitCode]).Verdict);
                }
            }
        }

        Assert.True(larger > 30);
    }

    [Fact]
    public void A_spindle_of_28_99_mm_is_never_sleeved() =>
        Assert.All(SpindleSeat.All.Where(s => s != SpindleSeat.Mm2899), s => Assert.Equal(Verdict.DoesNotFit, BottomBracketRelations.SpindleIn.Judge([s.FitCode, SpindleSeat.Mm2899.FitCode]).Verdict));

    [Fact]
    public void A_bore_without_room_for_a_bearing_takes_no_such_spindle()
    {
        int tight = 0;
        foreach (Shell shell in Shell.All.Where(s => s.Family.Bore is not null))
        {
            foreach (Spindle spindle in Spindle.All.Where(s => s.Seat.DriveSide is not null))
            {
                int room = (shell.Family.BoreMicrometres - spindle.Seat.DriveMicrometres) / 2;
                Verdict verdict = BottomBracketRelations.Across.Judge([shell.FitCode, spindle.FitCode]).Verdict;
                tight += room <= 4_005 ? 1 : 0;
                Assert.True(room > 4_005 || verdict == Verdict.DoesNotFit || shell.Family.IsLoose, $"{shell} {spindle}: {verdict}");
            }
        }

        Assert.True(tight > 20);
    }

    [Fact]
    public void In_one_family_a_wider_shell_never_takes_a_spindle_that_the_narrower_was_too_wide_for()
    {
        foreach (Shell narrow in Shell.All)
        {
            foreach (Shell wide in Shell.All.Where(s => s.Family == narrow.Family && s.WidthNanometres > narrow.WidthNanometres))
            {
                // T47 has its cups outside up to 77 mm and inside above.
                if (narrow.Family == ShellFamily.T47 && narrow.WidthNanometres < 80_000_000 && wide.WidthNanometres > 80_000_000)
                {
                    continue;
                }

                foreach (Spindle spindle in Spindle.All.Where(s => s.Reach is not null))
                {
                    if (BottomBracketRelations.Across.Judge([narrow.FitCode, spindle.FitCode]) is { Verdict: Verdict.DoesNotFit, Reason.Id: "spindle-too-short" })
                    {
                        Assert.Equal(Verdict.DoesNotFit, BottomBracketRelations.Across.Judge([wide.FitCode, spindle.FitCode]).Verdict);
                    }
                }
            }
        }
    }

    [Property(MaxTest = 3_000)]
    public bool A_width_further_outside_is_never_milder(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        long least = random.Next(60, 130) * 500_000L;
        long most = least + (random.Next(0, 12) * 500_000L);
        long shell = most + random.Next(-1, 5) * 500_000L + random.Next(-1, 2);
        long further = shell + random.Next(1, 3) * (random.Next(2) == 0 ? 1 : 500_000L);
        Verdict near = BottomBracketRelations.Width.Judge([shell, least, most]).Verdict;
        Verdict far = BottomBracketRelations.Width.Judge([further, least, most]).Verdict;
        Verdict mirrored = BottomBracketRelations.Width.Judge([least - (shell - most), least, most]).Verdict;
        return (shell < least || far >= near) && (shell < most || mirrored == near);
    }

    [Property(MaxTest = 1_500)]
    public bool An_unknown_width_has_the_common_verdict_of_its_completions(DoNotSize<int> seed)
    {
        Random random = new(seed.Item);
        Fits.Rows.Row row = Fits.Rows.Draw(WidthJoint, random);
        HashSet<Verdict> all = Fits.Rows.Completions(row);
        Verdict common = all.Count == 1 ? all.Single() : Verdict.NeedsMeasuring;
        return row.Common() == common ? true : throw new InvalidOperationException($"{row}: {row.Common()} against {common}");
    }

    private static readonly Joint WidthJoint = new("shell-width", "Shell width", BottomBracketRelations.Width, Length(), Length(), Length()) { Sources = [Sources.Derived] };

    private static FieldInput<Frame, Dimension> Length() => new(Slot.Frame, "length", "length", _ => default, "caliper") { Family = 2 };

    private static long[] Codes<T>(ImmutableArray<T> all)
        where T : IInterfaceValue<T> => [.. all.Select(v => v.FitCode)];
}
