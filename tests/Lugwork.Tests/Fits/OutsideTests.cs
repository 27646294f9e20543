using Lugwork.Seating;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Fits;

/// <summary>What only the frame maker has, and what lies outside the library: said by name, never a fit, never measured.</summary>
public sealed class OutsideTests
{
    [Theory]
    [InlineData("frame-specific", KnownState.FrameSpecific, "frame-specific")]
    [InlineData(" Frame Specific ", KnownState.FrameSpecific, "frame-specific")]
    [InlineData("FRAME\u2011SPECIFIC", KnownState.FrameSpecific, "frame-specific")]
    [InlineData("not covered", KnownState.NotCovered, "not covered")]
    [InlineData("Not-Covered", KnownState.NotCovered, "not covered")]
    [InlineData("not\u00A0covered", KnownState.NotCovered, "not covered")]
    public void Either_is_read_from_its_words_and_written_back(string text, KnownState state, string written)
    {
        Frame frame = Frame.Read("seat tube " + text.Trim());
        Assert.Equal(state, frame.SeatTubeBore.State);
        Assert.Equal(written, frame.SeatTubeBore.ToString());
        Assert.Equal(EvidenceKind.Stated, frame.SeatTubeBore.Evidence!.Kind);
        Assert.Empty(frame.SeatTubeBore.Values);
        Assert.Throws<InvalidOperationException>(() => frame.SeatTubeBore.Value);
        Build back = BuildFile.Read(BuildFile.Write(Build.From(frame)));
        Assert.Equal(frame.SeatTubeBore, back.Frame.SeatTubeBore);
        Assert.Equal(state == KnownState.NotCovered ? Known<SeatTubeBore>.NotCovered : Known<SeatTubeBore>.FrameSpecific, frame.SeatTubeBore);
    }

    [Theory]
    [InlineData("not covered | 27.2")]
    [InlineData("frame-specific | none")]
    [InlineData("not covered ± 1")]
    [InlineData("notcovered27.2")]
    [InlineData("not")]
    [InlineData("frame")]
    public void Neither_is_one_of_several_or_near_to_a_value(string text) =>
        Assert.False(Frame.TryRead("seat tube " + text, out _, out _));

    [Fact]
    public void Neither_equals_unknown_or_none_or_the_other()
    {
        Known<Dimension>[] all = [Known<Dimension>.Unknown, Known<Dimension>.None, Known<Dimension>.FrameSpecific, Known<Dimension>.NotCovered];
        Assert.Equal(4, all.Distinct().Count());
        Assert.Equal(4, all.Select(k => k.ToString()).Distinct().Count());
        Assert.All(all[2..], k => Assert.True(k.ToCandidates().IsOutside && !k.ToCandidates().IsSettled));
        Assert.All(all[..2], k => Assert.False(k.ToCandidates().IsOutside));
    }

    [Fact]
    public void Only_the_frame_makers_own_part_goes_in_an_own_seat_tube()
    {
        FitReport report = Build.From(Frame.Read("seat tube frame-specific")).With(Seatpost.Read("27.2 x 350")).Check();
        Fit fit = report.Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube");
        Assert.Equal(Verdict.NeedsMeasuring, fit.Verdict);
        Assert.Equal("frame-specific", fit.ReasonId);
        Assert.Equal("Frame, seat tube bore: only the frame maker's own part goes here.", fit.Sentence);
        Measurement ask = Assert.Single(fit.Measurements);
        Assert.Equal(("seatTube", "Ask the frame maker for the frame's own part: no measurement makes another one fit."), (ask.Field, ask.How));
        Assert.Empty(fit.Remedies);
        Assert.Contains("frame-specific; stated: \"frame-specific\"", fit.Explain(), StringComparison.Ordinal);
        Assert.Contains("frame-specific", report.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_motor_is_answered_by_name_and_its_maker_is_asked()
    {
        Frame frame = Frame.Read("shell not covered");
        Build build = Build.From(frame).With(BottomBracket.Read("shell BSA 68; takes 24")).With(Crankset.Read("spindle 24-road"));
        FitReport report = build.Check();
        foreach (string id in new[] { "bottom-bracket-in-shell", "bottom-bracket-width", "crank-across-shell" })
        {
            Fit fit = report.Findings.Single(f => f.Joint!.Id == id);
            Assert.Equal((Verdict.NeedsMeasuring, "not-covered"), (fit.Verdict, fit.ReasonId));
            Assert.EndsWith("this family is outside the library; ask its maker.", fit.Sentence, StringComparison.Ordinal);
            Assert.StartsWith("Ask its maker", Assert.Single(fit.Measurements).How, StringComparison.Ordinal);
        }

        Assert.Contains("\nAsk: frame, shell", report.ToString().ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.StartsWith("Ask its maker", report.ToMeasure.Single(m => m.What.Field == "shell").What.How, StringComparison.Ordinal);
        Assert.Equal(["spindle-in-bottom-bracket", "splined-crank-with-spindle-width"], report.Findings.Where(f => f.Verdict == Verdict.Fits).Select(f => f.Joint!.Id));
        Assert.Empty(FitKeys.Accepted(Build.From(frame), Slot.BottomBracket, Verdict.NeedsPart).Where(k => k.JointId == "bottom-bracket-in-shell"));
        Assert.Empty(FitKeys.Of(BottomBracket.Read("family not covered"), Slot.BottomBracket));
    }

    [Fact]
    public void What_fits_with_no_value_at_all_stays_refused()
    {
        // A post that has no diameter of its own mates with no bore, whatever the frame has.
        Build build = Build.From(Frame.Read("seat tube not covered")).With(Seatpost.Read("diameter none; insertion 80"));
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube");
        Assert.Equal((Verdict.DoesNotFit, "nothing-to-mate"), (fit.Verdict, fit.ReasonId));
        Assert.Empty(fit.Measurements);
    }

    [Fact]
    public void What_is_outside_the_library_is_told_before_what_only_the_frame_maker_has()
    {
        Build build = Build.From(Frame.Read("seat tube frame-specific")).With(Seatpost.Read("diameter not covered"));
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube");
        Assert.Equal("not-covered", fit.ReasonId);
        Assert.Equal("Frame, seat tube bore: only the frame maker's own part goes here. Seatpost, seatpost diameter: this family is outside the library; ask its maker.", fit.Sentence);
        Assert.Equal(2, fit.Measurements.Length);
    }

    [Theory]
    [InlineData("frame-specific", "only the frame maker's own part")]
    [InlineData("not covered", "outside this library, ask its maker")]
    public void The_needs_sheet_says_so_instead_of_sizes(string text, string told)
    {
        Build build = Build.From(Frame.Read($"seat tube {text}; head tube {text}; hanger {text}"));
        Need post = build.Needs().Of(Slot.Seatpost)!;
        Assert.Contains($"seatpost diameter: {told}", post.ToString(), StringComparison.Ordinal);
        NeedLine line = post.Lines.Single(l => l.Joint.Id == "seatpost-in-seat-tube");
        Assert.Equal(told, line.OpenBecause);
        Assert.Empty(line.Accepted.Concat(line.WithBridge));
        Assert.Contains(build.Needs().Of(Slot.Headset)!.Lines, l => l.OpenBecause == told);
        Assert.Contains(build.Needs().Of(Slot.RearDerailleur)!.Lines, l => l.OpenBecause == told);
    }

    [Fact]
    public void A_field_that_says_several_says_it_of_each()
    {
        Frame frame = Frame.Read("head tube frame-specific");
        Assert.Equal((KnownState.FrameSpecific, KnownState.FrameSpecific), (frame.HeadTubeUpper.State, frame.HeadTubeLower.State));
        Frame lower = Frame.Read("head tube ZS44|not covered");
        Assert.Equal(("44", "not covered"), (lower.HeadTubeUpper.ToString(), lower.HeadTubeLower.ToString()));
        Fork fork = Fork.Read("steererShape not covered");
        Assert.Equal((KnownState.NotCovered, KnownState.NotCovered), (fork.Steerer.State, fork.CrownSeat.State));
        Headset headset = Headset.Read("code frame-specific");
        Assert.All([headset.UpperCup.State, headset.Steerer.State, headset.LowerCup.State, headset.CrownRace.State], s => Assert.Equal(KnownState.FrameSpecific, s));
        BottomBracket bracket = BottomBracket.Read("shell not covered");
        Assert.All([bracket.Family.State, bracket.NarrowestShell.State, bracket.WidestShell.State], s => Assert.Equal(KnownState.NotCovered, s));
        Assert.Equal(KnownState.NotCovered, Cassette.Read("pattern not covered").SprocketsOrPattern.State);
        Assert.Equal(KnownState.Value, Cassette.Read("pattern not covered; sprockets 9").SprocketsOrPattern.State);
    }

    [Fact]
    public void Every_field_that_keeps_knowledge_keeps_either()
    {
        int kept = 0;
        foreach ((Slot slot, IPartField field) in SchemaBench.Fields.Where(f => f.Field.Sets.IsEmpty))
        {
            foreach (string text in new[] { "frame-specific", "not covered" })
            {
                List<SpecProblem> problems = [];
                IPartForm form = PartForms.Of(slot);
                Part part = form.ReadProperties([new(field.Key, text)], "", problems);
                Assert.Empty(problems);
                Assert.Contains(new KeyValuePair<string, string>(field.Key, text), form.Write(part));
                Assert.True(SchemaBench.Takes(SchemaBench.With(slot, field.Key, $"\"{text}\"")));
                Assert.True(SchemaBench.Reads(SchemaBench.With(slot, field.Key, $"[\"{text}\"]")));
                kept++;
            }
        }

        Assert.True(kept > 100, $"{kept} kept");
        Assert.All(new[] { "frame-specific", "not covered" }, text => Assert.Equal(4, BuildFile.Schema.Split($"\\\"{text}\\\"").Length - 1));
    }
}
