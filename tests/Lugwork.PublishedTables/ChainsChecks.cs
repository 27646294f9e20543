using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables;

/// <summary>Chains on cassettes and rings and through derailleurs: published cases, each with its source.</summary>
/// <remarks>
/// A 9-speed chain on an 8-speed cassette is printed as a fit (D33); 9- to 12-speed chains on older thick teeth are to be measured (D31).
/// The first stands for the 9-speed chain on a cassette, the second for the narrower ones and for old rings.
/// </remarks>
public sealed class ChainsChecks
{
    private const string Widths = "Bicycle chain explained (width tables); Cycling Boutique";
    private const string Catalogue = "Chains; Velogear";
    private const string Sizes = "Chain sizes; Wikibooks";
    private const string Spacing = "New Shifters, and Nine Over Eight Gearing?; 2nd-gear.blogspot.com";
    private const string Arithmetic = "arithmetic on the published widths";
    private const string Practice = "common practice, no source";

    [Theory]
    [InlineData("D28", "sprockets 8", "1/8", Verdict.DoesNotFit, Sizes)]
    [InlineData("D28", "sprockets 9", "1/8", Verdict.DoesNotFit, Catalogue)]
    [InlineData("D28", "pattern 11-speed HG", "1/8", Verdict.DoesNotFit, Sizes)]
    [InlineData("D29", "sprockets 1/8", "3/32", Verdict.DoesNotFit, Catalogue)]
    [InlineData("D29", "sprockets 1/8", "8-speed", Verdict.DoesNotFit, Catalogue)]
    [InlineData("D29", "sprockets 1/8", "11", Verdict.DoesNotFit, Catalogue)]
    [InlineData("D30", "sprockets 3/32", "1/8", Verdict.Fits, Catalogue)]
    [InlineData("D30", "sprockets 3/32", "1/8", Verdict.Fits, Sizes)]
    [InlineData("same", "sprockets 1/8", "1/8", Verdict.Fits, Widths)]
    [InlineData("same", "sprockets 3/32", "3/32", Verdict.Fits, Widths)]
    [InlineData("D31", "sprockets 8", "10", Verdict.NeedsMeasuring, Widths)]
    [InlineData("D31", "sprockets 7", "11", Verdict.NeedsMeasuring, Widths)]
    [InlineData("D31", "sprockets 8", "12", Verdict.NeedsMeasuring, Widths)]
    [InlineData("D32", "sprockets 9", "8", Verdict.DoesNotFit, Widths)]
    [InlineData("D32", "pattern 9-speed HG", "8-speed", Verdict.DoesNotFit, Spacing)]
    [InlineData("D32", "sprockets 10", "8", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("D32", "sprockets 11", "7", Verdict.DoesNotFit, Arithmetic)]
    [InlineData("D33", "sprockets 8", "9", Verdict.Fits, Practice)]
    [InlineData("D33", "pattern 8-speed HG", "9-speed", Verdict.Fits, Widths)]
    [InlineData("same", "sprockets 8", "7-speed", Verdict.Fits, Widths)]
    [InlineData("same", "sprockets 9", "9", Verdict.Fits, Widths)]
    [InlineData("same", "sprockets 10", "10", Verdict.Fits, Widths)]
    [InlineData("same", "sprockets 11", "11", Verdict.Fits, Widths)]
    [InlineData("same", "sprockets 12", "12", Verdict.Fits, Widths)]
    [InlineData("same", "sprockets 13", "13", Verdict.Fits, Widths)]
    [InlineData("chain not known", "sprockets 9", "unknown", Verdict.NeedsMeasuring, Widths)]
    [InlineData("cassette not known", "sprockets unknown", "9", Verdict.NeedsMeasuring, Widths)]
    public void A_chain_runs_on_a_cassette_as_published(string row, string cassette, string chain, Verdict expected, string source) =>
        Published.Says(Bare.With(Cassette.Read(cassette), Slot.Cassette).With(Chain.Read($"size {chain}"), Slot.Chain), "chain-on-cassette", $"{row}, {source}", expected);

    /// <summary>No page says that a wider chain runs on closer sprockets.</summary>
    [Theory]
    [PrintedIn(Arithmetic)]
    [InlineData("10", "9")]
    [InlineData("11", "9")]
    [InlineData("11", "10")]
    [InlineData("12", "10")]
    [InlineData("12", "11")]
    [InlineData("13", "12")]
    public void A_wider_chain_is_no_fit(string cassette, string chain) =>
        Published.SaysNothingMilder(Bare.With(Cassette.Read($"sprockets {cassette}"), Slot.Cassette).With(Chain.Read($"size {chain}"), Slot.Chain), "chain-on-cassette", Arithmetic, Verdict.NeedsMeasuring);

    [Theory]
    [InlineData("D29, ring", "1/8", "3/32", Verdict.DoesNotFit, Catalogue)]
    [InlineData("D29, ring", "1/8", "9", Verdict.DoesNotFit, Catalogue)]
    [InlineData("D30, ring", "3/32", "1/8", Verdict.Fits, Sizes)]
    [InlineData("D31, ring", "8", "11", Verdict.NeedsMeasuring, Widths)]
    [InlineData("D31, ring", "7", "12", Verdict.NeedsMeasuring, Widths)]
    [InlineData("same", "1/8", "1/8", Verdict.Fits, Widths)]
    [InlineData("same", "8", "8", Verdict.Fits, Widths)]
    [InlineData("same", "11", "11", Verdict.Fits, Widths)]
    [InlineData("rings not known", "unknown", "11", Verdict.NeedsMeasuring, Widths)]
    public void A_chain_runs_on_rings_as_published(string row, string rings, string chain, Verdict expected, string source) =>
        Published.Says(Bare.With(Crankset.Read($"rings {Published.Key<SprocketClass>(rings, source)}"), Slot.Crankset).With(Chain.Read($"size {chain}"), Slot.Chain), "chain-on-rings", $"{row}, {source}", expected);

    [Theory]
    [InlineData("D28", "8", "1/8", Verdict.DoesNotFit, Sizes)]
    [InlineData("D28", "11", "1/8", Verdict.DoesNotFit, Sizes)]
    [InlineData("same", "9", "9", Verdict.Fits, Widths)]
    [InlineData("same", "12", "12", Verdict.Fits, Widths)]
    [InlineData("derailleur not known", "unknown", "9", Verdict.NeedsMeasuring, Widths)]
    public void A_chain_runs_through_a_derailleur_as_published(string row, string derailleur, string chain, Verdict expected, string source) =>
        Published.Says(Bare.With(RearDerailleur.Read($"chain {derailleur}"), Slot.RearDerailleur).With(Chain.Read($"size {chain}"), Slot.Chain), "chain-through-derailleur", $"{row}, {source}", expected);

    private static Build Bare => Build.From(Frame.Read("material steel"));
}
