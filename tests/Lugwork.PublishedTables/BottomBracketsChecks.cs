using Lugwork.BottomBrackets;

namespace Lugwork.PublishedTables;

/// <summary>Shells, bottom brackets, spindles and pedals: published cases, each with its source.</summary>
/// <remarks>
/// Judged otherwise than printed: a 24 mm off-road spindle across a BSA 68 shell is printed as a fit with three spacers and as a fit
/// with a part; the part stands. A JIS arm on an ISO spindle is printed as "check" and as "unsafe unless checked": it needs measuring
/// and carries the caution. A 9/16 in pedal in a French crank is printed as a danger, with tapping as the remedy: it is unsafe.
/// </remarks>
public sealed class BottomBracketsChecks
{
    private const string Threads = "Bottom Bracket Threading and Other Specifications; BikeRaceInfo";
    private const string Unthreaded = "Unthreaded Bicycle Bottom Bracket Crib Sheet; sheldonbrown.com";
    private const string CycleThreads = "On cycle threads; grubb1937.blogspot.com";
    private const string Chart24 = "24 mm Spacer Chart, P95-002-01108B-002; a crank maker";
    private const string Chart30 = "Spacers chart, 30 mm road axle (crro1004); a crank maker";
    private const string Overview = "28.99 mm spindle MTB bottom bracket overview; a crank maker";
    private const string Standards = "Bottom Bracket standards; dansbikestuff.blogspot.com";
    private const string Table = "MOBI, Bottom Bracket Standards; pardo.net";
    private const string Sense = "Making sense of bottom brackets, part 2; The Accidental Randonneur";
    private const string Misconceptions = "Three Common Bottom Bracket Misconceptions; a bottom-bracket maker";
    private const string Cranks = "What you should know about cranks and bottom brackets; a frame maker";
    private const string Guide = "The complete guide to bottom bracket standards; BikeRadar";
    private const string T47Width = "PSA: T47 internal BB width is now 85.5 mm; Custom Frame Forum";
    private const string T47Asymmetric = "T47-77 asymmetric bottom bracket spacing adaptation; a frame maker";
    private const string T47Woes = "Threaded #12: the woes of T47 bottom brackets; Escape Collective";
    private const string Bmx = "BMX Bottom Brackets; SkatePro";
    private const string Options = "Bicycle spindle options; Power Meter City FAQ";
    private const string Launch = "New cranks and bottom brackets with a 28.99 mm spindle; Pinkbike";
    private const string System = "28.99 mm spindle system launch; Enduro MTB";
    private const string Taper = "Square taper bottom brackets; moultoneer.wordpress.com";
    private const string Exchange = "Interchangeability of square-taper interfaces (in German); wikipedalia.de";
    private const string SpacerPost = "Post 1474018 (in German); globike.net";
    private const string CupSpacers = "External-cup crank spacer table; jitetan.com";
    private const string Glossary = "Splines of 5 and 9 mm (glossary entry, in Japanese); jitetan.com";
    private const string Types = "Bottom bracket: interface types; bike-mode.blogspot.com";
    private const string Osbb = "OSBB engineering guide; a bottom-bracket maker";
    private const string Detail = "Bottom bracket standards in detail; Cycletechreview";
    private const string PedalList = "Pedal threads (French vs English); Classic Rendezvous list archive";
    private const string Attachment = "Attachment of the pedals to the cranks; defietssite.nl";
    private const string OnePiecePedals = "Pedal (glossary quote); LFGSS forum";
    private const string Swiss = "35 x 1...; blackmountaincycles.blogspot.com";
    private const string Arithmetic = "arithmetic on the published sizes";

    [Theory]
    [InlineData("BSA 68", "24 road", Verdict.Fits, "", Chart24)]
    [InlineData("BSA 68", "24 off-road", Verdict.NeedsPart, "three 2.5 mm", CupSpacers)]
    [InlineData("BSA 68", "24 off-road", Verdict.NeedsPart, "two on the drive side", SpacerPost)]
    [InlineData("BSA 73", "24 off-road", Verdict.Fits, "", SpacerPost)]
    [InlineData("BSA 73", "24 road", Verdict.DoesNotFit, "", Sense)]
    [InlineData("BSA 68", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("BSA 83", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("BSA 100", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("BSA 68", "30 long", Verdict.Fits, "", Chart30)]
    [InlineData("BSA 68", "30 short", Verdict.DoesNotFit, "", Cranks)]
    [InlineData("BSA 68", "JIS", Verdict.Fits, "", Guide)]
    [InlineData("BSA 73", "8-spline-long", Verdict.Fits, "", Guide)]
    [InlineData("BSA 100", "10-spline", Verdict.Fits, "", Guide)]
    [InlineData("Italian 70", "24 road", Verdict.Fits, "", Chart24)]
    [InlineData("Italian 70", "30 long", Verdict.Fits, "", Chart30)]
    [InlineData("BB30 68", "30 short", Verdict.Fits, "", Misconceptions)]
    [InlineData("BB30 68", "30 long", Verdict.NeedsPart, "conversion unit or spacer kit", Chart30)]
    [InlineData("BB30 68", "24 road", Verdict.NeedsPart, "24 mm reducer cups", Chart24)]
    [InlineData("BB30-73", "24 road", Verdict.DoesNotFit, "", Chart24)]
    [InlineData("BB30A 83", "24 road", Verdict.DoesNotFit, "", Chart24)]
    [InlineData("PF30 68", "24 road", Verdict.NeedsPart, "46-to-24", Chart24)]
    [InlineData("PF30 68", "30 short", Verdict.Fits, "", Chart30)]
    [InlineData("PF30 68", "30 long", Verdict.Fits, "", Chart30)]
    [InlineData("PF30-73", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("PF30A 83", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("BB386EVO", "24 road", Verdict.NeedsPart, "46-to-24", Chart24)]
    [InlineData("BB386EVO", "30 long", Verdict.Fits, "", Chart30)]
    [InlineData("BB386EVO", "30 short", Verdict.DoesNotFit, "", Cranks)]
    [InlineData("BBright press", "24 road", Verdict.NeedsPart, "asymmetric", Chart24)]
    [InlineData("BBright press", "30 long", Verdict.Fits, "", Chart30)]
    [InlineData("BBright press", "30 short", Verdict.DoesNotFit, "", Standards)]
    [InlineData("BBright direct", "30 short", Verdict.DoesNotFit, "", Standards)]
    [InlineData("BB86", "24 road", Verdict.Fits, "", Standards)]
    [InlineData("BB86", "30 long", Verdict.Fits, "", Chart30)]
    [InlineData("BB86", "28.99", Verdict.Fits, "", Launch)]
    [InlineData("BB92", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("BB92", "24 off-road", Verdict.Fits, "", Standards)]
    [InlineData("BB92", "30 long", Verdict.NeedsPart, "41-to-30", Launch)]
    [InlineData("BB89.5", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("PF121", "28.99", Verdict.Fits, "", Overview)]
    [InlineData("BB90", "24 road", Verdict.Fits, "", Chart24)]
    [InlineData("BB90", "24/22", Verdict.Fits, "", Options)]
    [InlineData("BB90", "30 long", Verdict.DoesNotFit, "", Chart30)]
    [InlineData("BB90", "30 short", Verdict.DoesNotFit, "", Options)]
    [InlineData("BB90", "28.99", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("T47 68", "24 road", Verdict.Fits, "", Chart24)]
    [InlineData("T47 85.5", "24 road", Verdict.Fits, "", Chart24)]
    [InlineData("T47 86.5", "24 road", Verdict.Fits, "", T47Width)]
    [InlineData("T47 77", "24 road", Verdict.Fits, "", T47Asymmetric)]
    [InlineData("American 68", "BMX-19", Verdict.Fits, "", Bmx)]
    [InlineData("Mid 73", "BMX-22", Verdict.Fits, "", Bmx)]
    [InlineData("Spanish 68", "BMX-24", Verdict.Fits, "", Bmx)]
    [InlineData("American 68", "one-piece", Verdict.Fits, "", Unthreaded)]
    [InlineData("BSA 68", "one-piece", Verdict.DoesNotFit, "", Table)]
    public void A_crank_goes_across_a_shell_as_published(string shell, string spindle, Verdict expected, string part, string source) =>
        AssertOutcome(BottomBracketRelations.Across.Judge([Shell.Parse(shell, null).FitCode, Spindle.Parse(spindle, null).FitCode]), expected, part, source);

    [Theory]
    [InlineData("Italian", "BSA", Verdict.DoesNotFit, "steel thread inserts", Threads)]
    [InlineData("Italian", "BSA", Verdict.DoesNotFit, "threadless expanding unit", Unthreaded)]
    [InlineData("French", "BSA", Verdict.DoesNotFit, "threadless expanding unit", Threads)]
    [InlineData("Swiss", "French", Verdict.DoesNotFit, "own thread", Swiss)]
    [InlineData("26tpi", "BSA", Verdict.DoesNotFit, "a new thread", CycleThreads)]
    [InlineData("English", "Euro BMX", Verdict.Fits, "", Bmx)]
    [InlineData("PF30", "BB30", Verdict.NeedsPart, "46-to-42", Misconceptions)]
    [InlineData("BB30", "PF30", Verdict.DoesNotFit, "", Misconceptions)]
    [InlineData("PF30", "T47", Verdict.DoesNotFit, "tapping to M47 x 1", T47Width)]
    [InlineData("PF30", "T47", Verdict.DoesNotFit, "metal shell with enough wall", T47Woes)]
    [InlineData("BSA", "T47", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("American", "BSA", Verdict.NeedsPart, "51.3", Table)]
    [InlineData("American", "Mid", Verdict.NeedsPart, "American-to-Mid", Unthreaded)]
    [InlineData("American", "Spanish", Verdict.NeedsPart, "American-to-Spanish", Unthreaded)]
    [InlineData("Mid", "PF41", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("Spanish", "BB90", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("BB30", "BB30A", Verdict.DoesNotFit, "", Guide)]
    [InlineData("OSBB", "OSBB", Verdict.NeedsMeasuring, "", Osbb)]
    public void A_bottom_bracket_goes_in_a_shell_as_published(string shell, string unit, Verdict expected, string part, string source) =>
        AssertOutcome(BottomBracketRelations.InShell.Judge([ShellFamily.Parse(shell, null).FitCode, ShellFamily.Parse(unit, null).FitCode]), expected, part, source);

    [Theory]
    [InlineData("T47-85.5", 86.5, 86.5, Verdict.NeedsMeasuring, "0.5 mm", T47Width)]
    [InlineData("T47-86.5", 85.5, 85.5, Verdict.NeedsMeasuring, "0.5 mm", T47Width)]
    [InlineData("T47-85.5", 68, 73, Verdict.DoesNotFit, "", T47Asymmetric)]
    [InlineData("PF41-86.5", 86, 86, Verdict.NeedsMeasuring, "", Chart24)]
    [InlineData("PF41-92", 91.5, 91.5, Verdict.NeedsMeasuring, "", Sense)]
    [InlineData("Spanish-68", 90, 90, Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("BSA-73", 68, 73, Verdict.Fits, "", CupSpacers)]
    public void A_width_is_judged_as_published(string shell, double least, double most, Verdict expected, string part, string source) =>
        AssertOutcome(BottomBracketRelations.Width.Judge([Shell.Parse(shell, null).WidthNanometres, (long)(least * 1e6), (long)(most * 1e6)]), expected, part, source);

    [Theory]
    [InlineData("30", "28.99", Verdict.DoesNotFit, "", Launch)]
    [InlineData("24", "28.99", Verdict.DoesNotFit, "", System)]
    [InlineData("24", "30", Verdict.DoesNotFit, "", Detail)]
    [InlineData("30", "24", Verdict.NeedsMeasuring, "only ones sold for that bearing", System)]
    [InlineData("28.99", "24", Verdict.NeedsMeasuring, "only ones sold for that bearing", System)]
    [InlineData("24", "24/22", Verdict.DoesNotFit, "a sleeve from 24 to 22 mm", Options)]
    [InlineData("JIS", "ISO", Verdict.NeedsMeasuring, "further out", Exchange)]
    [InlineData("ISO", "JIS", Verdict.NeedsMeasuring, "further in", Taper)]
    [InlineData("8-spline-long", "8-spline-short", Verdict.DoesNotFit, "", Glossary)]
    [InlineData("8-spline-short", "10-spline", Verdict.DoesNotFit, "", Types)]
    public void A_crank_goes_with_a_bottom_bracket_as_published(string bracket, string crank, Verdict expected, string part, string source) =>
        AssertOutcome(BottomBracketRelations.SpindleIn.Judge([SpindleSeat.Parse(bracket, null).FitCode, SpindleSeat.Parse(crank, null).FitCode]), expected, part, source);

    [Theory]
    [InlineData("1/2", "9/16", Verdict.DoesNotFit, "", OnePiecePedals)]
    [InlineData("French", "9/16", Verdict.Unsafe, "tapping the crank to 9/16 in", PedalList)]
    [InlineData("9/16", "9/16", Verdict.Fits, "", Attachment)]
    public void A_pedal_goes_in_a_crank_as_published(string crank, string pedal, Verdict expected, string part, string source)
    {
        Outcome outcome = BottomBracketRelations.Pedals.Judge([PedalThread.Parse(crank, null).FitCode, PedalThread.Parse(pedal, null).FitCode]);
        AssertOutcome(outcome, expected, part, source);
        Assert.Contains("left-hand thread", outcome.Reason!.Caution!.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("OSBB 61", "OSBB-61", Osbb)]
    [InlineData("OSBB 68", "BB30-68", Osbb)]
    [InlineData("OSBB mountain", "PF30-73", Osbb)]
    [InlineData("Euro BMX", "BSA-68", Bmx)]
    [InlineData("PF86", "PF41-86.5", Chart24)]
    [InlineData("pressfit 91.5", "PF41-92", Sense)]
    [InlineData("BB30A 83", "BB30A-83", Table)]
    [InlineData("36 x 24 tpi", "Italian-70", Threads)]
    public void A_name_means_the_published_shell(string text, string key, string source) =>
        Assert.True(Shell.Read(text) is { IsClear: true } reading && reading.Values[0].FitKey == key, $"{source}: {text} is {key}");

    [Theory]
    [InlineData("35 x 1", "French", "Swiss", Threads)]
    [InlineData("T47 86", "T47-85.5", "T47-86.5", T47Width)]
    [InlineData("BB30 73", "BB30-73", "BB30A-73", Table)]
    [InlineData("BB30", "BB30-68", "BB30-73", Cranks)]
    [InlineData("T47", "T47-68", "T47A-77", T47Asymmetric)]
    public void A_name_that_settles_nothing_keeps_the_published_doubt(string text, string one, string other, string source)
    {
        TextReading<Shell> reading = Shell.Read(text);
        Assert.False(reading.IsClear, source);
        Assert.Contains(reading.Values, s => s.FitKey.StartsWith(one, StringComparison.Ordinal));
        Assert.Contains(reading.Values, s => s.FitKey.StartsWith(other, StringComparison.Ordinal));
    }

    private static void AssertOutcome(Outcome outcome, Verdict expected, string part, string source)
    {
        Assert.True(expected == outcome.Verdict, $"{source}: {expected} is published, judged: {outcome.Verdict} ({outcome.Reason!.Id})");
        Assert.Contains(part, $"{outcome.Bridge?.What} | {outcome.Reason!.Mend} | {string.Join(" | ", outcome.Reason.Offers.Select(b => b.What))}", StringComparison.Ordinal);
    }
}
