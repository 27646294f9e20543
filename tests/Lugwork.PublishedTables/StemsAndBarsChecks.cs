namespace Lugwork.PublishedTables;

/// <summary>Stems on steerers and bars in stems: published cases, each with its source.</summary>
/// <remarks>
/// Two shims are known from memory alone (28.6 clamp on a 1 in steerer, 31.8 bar in a 35.0 clamp): they need measuring and are named.
/// </remarks>
public sealed class StemsAndBarsChecks
{
    private const string Article = "Headset (bicycle part); Wikipedia";
    private const string StemSize = "Handlebar stem size; motorbicycling.com, 2009";
    private const string Standard = "TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4; Taiwan Bicycle Industry Standard";
    private const string CribSheet = "Bicycle Handlebar and Stem Dimensions; Love City Cycles";
    private const string Grip = "Which Grip Fits?; Velogear";
    private const string Mismatch = "26.0 and 25.4 stems interchangeable?; The Paceline Forum";
    private const string Quoted = "Handlebar sizes (quotes Wikipedia, Stem); Retrobike";
    private const string BarList = "Message on bar diameters; Classic Rendezvous list, 2007";
    private const string Arithmetic = "arithmetic on the published diameters";
    private const string Practice = "common practice, no source";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("28.6 clamp", "steerer 28.6; threadless", Verdict.Fits, "", Article)]
    [InlineData("28.6 clamp", "steerer shape tapered 1-1/8 to 1.5; threadless", Verdict.Fits, "", Article)]
    [InlineData("25.4 clamp", "steerer 25.4; threadless", Verdict.Fits, "", Article)]
    [InlineData("clamp-31.8", "steerer 1-1/4; threadless", Verdict.Fits, "", Article)]
    [InlineData("38.1 clamp", "steerer 1.5; threadless", Verdict.Fits, "", Article)]
    [InlineData("22.2 quill", "steerer 1 in; threaded", Verdict.Fits, "", StemSize)]
    [InlineData("25.4 quill", "steerer 1-1/8; threaded", Verdict.Fits, "", StemSize)]
    [InlineData("25.4 quill", "steerer 1 in; threaded", Verdict.DoesNotFit, "", StemSize)]
    [InlineData("28.6 quill", "steerer 1-1/8; threaded", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("28.6 clamp", "steerer 1-1/8; threaded", Verdict.Unsafe, "quill", Standard)]
    [InlineData("25.4 clamp", "steerer 1 in; threaded", Verdict.Unsafe, "quill", Standard)]
    [InlineData("28.6 clamp", "steerer 25.4; threadless", Verdict.NeedsMeasuring, "shim", Memory)]
    [InlineData("25.4 clamp", "steerer 28.6; threadless", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("28.6 clamp", "steerer shape tapered 1-1/4 to 1.5; threadless", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("28.6 clamp", "steerer 1.5; threadless", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("22.2 quill", "steerer 1 in; threadless", Verdict.Unsafe, "clamps this steerer", Practice)]
    [InlineData("21.1 quill", "steerer 1 in; threaded", Verdict.Unsafe, "own size", Arithmetic)]
    [InlineData("28.6 clamp", "steerer 28.6", Verdict.NeedsMeasuring, "", Standard)]
    [InlineData("fixing 25.4", "steerer 25.4; threadless", Verdict.NeedsMeasuring, "", Article)]
    public void A_stem_goes_on_a_steerer_as_published(string stem, string fork, Verdict expected, string remedy, string source) =>
        Published.Says(Build.From(Frame.Read("material steel")).With(Fork.Read(fork), Slot.Fork).With(Stem.Read(stem), Slot.Stem), "stem-on-steerer", source, expected, remedy);

    [Theory]
    [InlineData("22.0 quill", "steerer 1 in; threaded", Memory)]
    [InlineData("22.2 quill", "steerer 25.0; threaded", Memory)]
    [InlineData("22.2 quill", "steerer 1-1/8; threaded", Arithmetic)]
    [InlineData("clamp-31.8", "steerer 28.6; threadless", Arithmetic)]
    public void A_near_stem_is_no_fit(string stem, string fork, string source) =>
        Published.SaysNothingMilder(Build.From(Frame.Read("material steel")).With(Fork.Read(fork), Slot.Fork).With(Stem.Read(stem), Slot.Stem), "stem-on-steerer", source, Verdict.NeedsMeasuring);

    [Theory]
    [InlineData("31.8", "31.8", Verdict.Fits, "", BarList)]
    [InlineData("31.7", "31.8", Verdict.Fits, "", Grip)]
    [InlineData("26.0", "25.4", Verdict.Unsafe, "stem for this bar", Mismatch)]
    [InlineData("25.4", "26.0", Verdict.Unsafe, "stem for this bar", Mismatch)]
    [InlineData("25.4", "31.8", Verdict.NeedsPart, "shim", Quoted)]
    [InlineData("26.0", "31.8", Verdict.NeedsPart, "shim", Quoted)]
    [InlineData("31.8", "35.0", Verdict.NeedsMeasuring, "shim", Memory)]
    [InlineData("35.0", "31.8", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("25.8", "26.0", Verdict.NeedsMeasuring, "", CribSheet)]
    [InlineData("25.8", "25.4", Verdict.NeedsMeasuring, "", Quoted)]
    [InlineData("26.4", "26.0", Verdict.DoesNotFit, "", CribSheet)]
    [InlineData("22.2", "25.4", Verdict.NeedsPart, "shim", StemSize)]
    [InlineData("31.8", "25.4", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("31.8", "26.0", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("27.0", "26.0", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("25.0", "25.4", Verdict.DoesNotFit, "", Arithmetic)]
    [InlineData("25.6 ± 0.2", "25.4", Verdict.NeedsMeasuring, "", CribSheet)]
    [InlineData("unknown", "31.8", Verdict.NeedsMeasuring, "", CribSheet)]
    public void A_bar_goes_in_a_stem_as_published(string bar, string stem, Verdict expected, string remedy, string source) =>
        Published.Says(Build.From(Frame.Read("material steel")).With(Stem.Read($"bar {stem}"), Slot.Stem).With(Handlebar.Read($"clamp {bar}"), Slot.Handlebar), "bar-in-stem", source, expected, remedy);
}
