using Lugwork.BottomBrackets;

namespace Lugwork.PublishedTables;

/// <summary>Shells, spindles and pedals as pages print their dimensions, put in as readings: each with its source.</summary>
/// <remarks>
/// A shell that a page prints as 86 wide is 86.5, and a BMX shell printed as 41 is printed as 41.2 elsewhere: both are found. A blog that groups Swiss shells with right-hand threads on both sides is not followed.
/// </remarks>
public sealed class MeasuredShellsChecks
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
    private const string Reamer = "The cutting tool problem; peterverdone.com";
    private const string T47Press = "Could a new bottom bracket end press-fit problems?; BikeRadar";
    private const string T47Width = "PSA: T47 internal BB width is now 85.5 mm; Custom Frame Forum";
    private const string T47Frames = "T47: the good, the bad and the availability; a bottom-bracket maker";
    private const string Osbb = "OSBB engineering guide; a bottom-bracket maker";
    private const string Swiss = "35 x 1...; blackmountaincycles.blogspot.com";
    private const string German = "Besonderheiten bei Gewinden; WikiPedalia";
    private const string Splines = "Splines of 5 and 9 mm (glossary entry, in Japanese); jitetan.com";
    private const string Hollow = "Splined bottom bracket, product text; a shop";
    private const string Cottered = "What are cottered cranks?; a copy";
    private const string Taper = "Square taper bottom brackets; moultoneer.wordpress.com";
    private const string TaperSums = "JIS taper, ISO taper (in Japanese); replica2st";
    private const string System = "28.99 mm spindle system launch; Enduro MTB";
    private const string Options = "Bicycle spindle options; Power Meter City FAQ";
    private const string Bmx = "BMX Bottom Brackets; SkatePro";
    private const string Pedals = "Pedal threads (French vs English); Classic Rendezvous list archive";
    private const string OnePiece = "Pedal (glossary quote); LFGSS forum";

    [Theory]
    [InlineData(34.7, 70, 24, "Italian-70", Threads)]
    [InlineData(33.7, 68, 24, "BSA-68", Threads)]
    [InlineData(33.7, 68, 25.4, "French-68", Threads)]
    [InlineData(33.7, 68, 25.4, "Swiss-68", Swiss)]
    [InlineData(33.7, 71, 26, "26tpi-71", German)]
    [InlineData(33.7, 76, 26, "26tpi-76", Unthreaded)]
    [InlineData(33.7, 76, 26, "26tpi-76", CycleThreads)]
    [InlineData(46, 68, 25.4, "T47-68", T47Frames)]
    [InlineData(46, 73, 25.4, "T47-73", T47Frames)]
    [InlineData(46, 85.5, 25.4, "T47-85.5", T47Width)]
    [InlineData(46, 86.5, 25.4, "T47-86.5", T47Width)]
    [InlineData(46, 68, 0, "PF30-68", T47Press)]
    [InlineData(46, 68, 0, "T47-68", T47Press)]
    [InlineData(41.96, 68, 0, "BB30-68", Table)]
    [InlineData(41.96, 73, 0, "BB30A-73", Table)]
    [InlineData(41.96, 83, 0, "BB30A-83", Table)]
    [InlineData(42, 68, 0, "BB30-68", Osbb)]
    [InlineData(46, 61, 0, "OSBB-61", Osbb)]
    [InlineData(46, 73, 0, "PF30-73", Osbb)]
    [InlineData(46, 61, 0, "OSBB-61", Chart24)]
    [InlineData(46, 86, 0, "PF30-86.5", Chart30)]
    [InlineData(46, 79, 0, "BBright-press-79", Chart30)]
    [InlineData(42, 79, 0, "BBright-direct-79", Standards)]
    [InlineData(41, 86, 0, "PF41-86.5", Chart24)]
    [InlineData(40.98, 86.5, 0, "PF41-86.5", Reamer)]
    [InlineData(41, 91.5, 0, "PF41-92", Sense)]
    [InlineData(41, 92, 0, "PF41-92", Overview)]
    [InlineData(41, 89.5, 0, "PF41-89.5", Overview)]
    [InlineData(41, 104.5, 0, "PF41-104.5", Overview)]
    [InlineData(41, 107, 0, "PF41-107", Overview)]
    [InlineData(41, 121, 0, "PF41-121", Overview)]
    [InlineData(37, 90, 0, "BB90-90", Chart24)]
    [InlineData(51.3, 65, 0, "American-65", Table)]
    [InlineData(51.3, 68, 0, "American-68", Table)]
    [InlineData(43, 65, 0, "small-one-piece-65", Table)]
    [InlineData(40, 70, 0, "Thompson-70", Unthreaded)]
    [InlineData(30, 68, 0, "pressed-30-68", Unthreaded)]
    [InlineData(37, 68, 0, "Spanish-68", Bmx)]
    [InlineData(41, 73, 0, "Mid-73", Bmx)]
    public void A_shell_is_told_by_its_printed_dimensions(double bore, double width, double threads, string key, string source) =>
        Among(Shell.Identify(Mm(bore), Mm(width), threads == 0 ? null : (decimal)threads), key, source, 0);

    [Theory]
    [InlineData(33.7, 68, 24, "French-68", Threads)]
    [InlineData(33.7, 71, 24, "26tpi-71", CycleThreads)]
    [InlineData(33.7, 70, 0, "Italian-70", Threads)]
    [InlineData(46, 68, 0, "BB30-68", "Three Common Bottom Bracket Misconceptions; a bottom-bracket maker")]
    public void A_shell_is_ruled_out_by_what_differs(double bore, double width, double threads, string key, string source) =>
        Assert.False(Shell.Identify(Mm(bore), Mm(width), threads == 0 ? null : (decimal)threads).Candidates.Any(c => c.Value.FitKey == key && c.DeviationMillimetres == 0), source);

    [Theory]
    [InlineData("outside", 24, "24", Sense)]
    [InlineData("outside", 30, "30", Sense)]
    [InlineData("outside", 28.99, "28.99", System)]
    [InlineData("outside", 19, "BMX-19", Bmx)]
    [InlineData("outside", 22, "BMX-22", Bmx)]
    [InlineData("outside", 22, "8-spline-long", Hollow)]
    [InlineData("outside", 15.5, "cottered", Cottered)]
    [InlineData("outside", 15.9, "cottered", Cottered)]
    [InlineData("other", 22, "24/22", Options)]
    [InlineData("length", 5, "8-spline-short", Splines)]
    [InlineData("length", 9, "8-spline-long", Splines)]
    [InlineData("width", 2.2, "8-spline-short", Splines)]
    [InlineData("width", 2.8, "8-spline-long", Splines)]
    [InlineData("flats", 12.7, "square-JIS", Taper)]
    [InlineData("flats", 12.63, "square-JIS", TaperSums)]
    [InlineData("flats", 12.5, "square-ISO", TaperSums)]
    public void A_spindle_is_told_by_its_printed_dimensions(string where, double size, string key, string source) => Among(
        SpindleSeat.Identify(At("outside", where, size), At("other", where, size), At("flats", where, size), At("length", where, size), At("width", where, size)), key, source, 0);

    [Theory]
    [InlineData(14.29, "9/16x20", Pedals)]
    [InlineData(14, "14x1.25", Pedals)]
    [InlineData(12.7, "1/2x20", OnePiece)]
    public void A_pedal_is_told_by_its_printed_diameter(double size, string key, string source) => Among(PedalThread.Identify(Mm(size)), key, source, 0.01m);

    private static MeasuredLength Mm(double millimetres) => MeasuredLength.OfMillimetres((decimal)millimetres);

    private static MeasuredLength? At(string where, string said, double size) => where == said ? Mm(size) : null;

    private static void Among<T>(Identification<T> found, string key, string source, decimal most)
        where T : Standard<T>, IInterfaceValue<T> =>
        Assert.True(found.Candidates.Any(c => c.Value.FitKey == key && c.DeviationMillimetres <= most), $"{source}: {key} is printed, found {string.Join(", ", found.Candidates)}");
}
