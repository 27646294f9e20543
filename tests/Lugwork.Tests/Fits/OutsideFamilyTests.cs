using Lugwork.BottomBrackets;
using Lugwork.Tests.Builds;

namespace Lugwork.Tests.Fits;

/// <summary>Families outside the library, named where a shop writes them.</summary>
public sealed class OutsideFamilyTests
{
    [Theory]
    [InlineData("shell motor mount", "motor", KnownState.NotCovered)]
    [InlineData("shell Mid-Drive", "motor", KnownState.NotCovered)]
    [InlineData("shell mid_drive motor", "motor", KnownState.NotCovered)]
    [InlineData("shell e\u2011bike", "motor", KnownState.NotCovered)]
    [InlineData("shell proprietary", "proprietary", KnownState.NotCovered)]
    [InlineData("shell proprietary bottom bracket shell", "proprietary", KnownState.NotCovered)]
    [InlineData("shell maker\u2019s own", "proprietary", KnownState.NotCovered)]
    [InlineData("shell gearbox mount", "gearbox", KnownState.NotCovered)]
    [InlineData("shell frame maker's own shell", "own-part", KnownState.FrameSpecific)]
    [InlineData("motor mount", "motor", KnownState.NotCovered)]
    public void A_shell_is_told_by_its_family(string text, string key, KnownState state)
    {
        Known<Shell> shell = Frame.Read(text).Shell;
        Assert.Equal((state, key), (shell.State, shell.Family!.FitKey));
        Assert.Equal(key, shell.ToString());
        Assert.Equal(EvidenceKind.Stated, shell.Evidence!.Kind);
        Assert.Equal(text.StartsWith("shell ", StringComparison.Ordinal) ? text[6..] : text, shell.Evidence.Words);
    }

    [Theory]
    [InlineData("frame-specific seatpost", KnownState.FrameSpecific)]
    [InlineData("not covered part", KnownState.NotCovered)]
    public void The_plain_states_may_have_the_part_behind_them(string text, KnownState state)
    {
        Frame frame = Frame.Read("seat tube " + text);
        Assert.Equal((state, null), (frame.SeatTubeBore.State, frame.SeatTubeBore.Family));
    }

    [Theory]
    [InlineData("shell no motor")]
    [InlineData("shell without motor mount")]
    [InlineData("shell BSA 68 motor")]
    [InlineData("shell motor | BSA 68")]
    [InlineData("shell motor ± 1")]
    [InlineData("shell mount")]
    [InlineData("shell motormount with clip")]
    public void Other_words_stay_refused(string text) => Assert.False(Frame.TryRead(text, out _, out _));

    [Fact]
    public void A_name_alone_goes_to_the_field_it_belongs_to()
    {
        Assert.Equal("hub-motor", Wheel.Read("motor hub; bead seat 622").Hub.Family!.FitKey);
        Assert.Equal("cargo", Frame.Read("cargo bike; rear 12x142").Kind.Family!.FitKey);
        Assert.Equal("shaped-seatpost", Frame.Read("aero seatpost").SeatTubeBore.Family!.FitKey);
        Assert.Equal("shaped-seatpost", Seatpost.Read("aero").Diameter.Family!.FitKey);
        Frame front = Frame.Read("integrated front end");
        Assert.Equal(("integrated-front-end", "integrated-front-end"), (front.HeadTubeUpper.ToString(), front.HeadTubeLower.ToString()));
        Assert.False(Frame.TryRead("proprietary", out _, out var problems));
        Assert.Contains("could be", Assert.Single(problems).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_name_stands_in_the_sentence_and_its_maker_is_asked()
    {
        Build build = Build.From(Frame.Read("shell mid-drive")).With(BottomBracket.Read("shell BSA 68; takes 24"));
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == "bottom-bracket-in-shell");
        Assert.Equal((Verdict.NeedsMeasuring, "not-covered"), (fit.Verdict, fit.ReasonId));
        Assert.Equal("Frame, shell thread or bore, motor: this family is outside the library; ask its maker.", fit.Sentence);
        Assert.StartsWith("Ask its maker", Assert.Single(fit.Measurements).How, StringComparison.Ordinal);
        Assert.Contains("motor (not covered); stated: \"mid-drive\"", fit.Explain(), StringComparison.Ordinal);
        Assert.Contains("thread or bore, motor:", build.Check().ToJson(), StringComparison.Ordinal);
        Assert.Contains("motor: outside this library, ask its maker", Build.From(Frame.Read("shell mid-drive")).Needs().Of(Slot.BottomBracket)!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bicycle_of_a_kind_outside_the_library_never_fits_though_every_joint_does()
    {
        Build whole = Bench.WholeBicycle();
        Assert.Equal(Verdict.Fits, whole.Check().Verdict);
        FitReport report = Rebuilt(whole, whole.Frame with { Kind = Known<BicycleKind>.OfFamily(OutsideFamily.Cargo) }).Check();
        Assert.All(report.Findings, f => Assert.Equal(Verdict.Fits, f.Verdict));
        Assert.Equal(Verdict.NeedsMeasuring, report.Verdict);
        Assert.Contains("Ask: frame, bicycle kind, cargo bicycle: Ask its maker", report.ToString(), StringComparison.Ordinal);
        Assert.Equal("kind", Assert.Single(report.ToMeasure).What.Field);
        Assert.Contains("cargo bicycle", report.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_family_is_kept_by_a_build_file_and_families_differ()
    {
        Build build = Build.From(Frame.Read("kind cargo; shell motor; seat tube aero post"));
        Build back = BuildFile.Read(BuildFile.Write(build));
        Assert.Equal(build.Frame.Shell, back.Frame.Shell);
        Assert.Equal(OutsideFamily.Cargo, back.Frame.Kind.Family);
        Assert.NotEqual(Known<Shell>.OfFamily(OutsideFamily.Motor), Known<Shell>.OfFamily(OutsideFamily.Gearbox));
        Assert.NotEqual(Known<Shell>.NotCovered, Known<Shell>.OfFamily(OutsideFamily.Motor));
        Assert.Null(Known<Shell>.NotCovered.Family);
        Assert.Throws<ArgumentNullException>(() => Known<Shell>.OfFamily(null!));
    }

    private static Build Rebuilt(Build build, Frame frame) =>
        Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Aggregate(Build.From(frame), (b, s) => b.OfFile(build[s]!, s));
}
