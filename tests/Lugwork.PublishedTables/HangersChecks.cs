using Lugwork.Drivetrain;

namespace Lugwork.PublishedTables;

/// <summary>Rear derailleurs on hangers: published cases, each with its source.</summary>
/// <remarks>A way out that waits for a measurement stands in the sentence, not among the remedies; it counts here.</remarks>
public sealed class HangersChecks
{
    private const string Escape = "At last, a universal derailleur hanger is coming; Escape to the Pyrenees";
    private const string Universal = "Do we need to eliminate the derailleur hanger and embrace UDH; ICAN Cycling";
    private const string Gravel = "So funktioniert der Universal Derailleur Hanger am Gravelbike; Velomotion";
    private const string DirectPart = "The (possibly) hard-to-find part you should have on hand; Canadian Cycling Magazine";
    private const string Plain = "Posts on unthreaded French dropouts; Classic Rendezvous list archive";
    private const string Demystified = "Derailleur Hangers Demystified; Red Clover Components";
    private const string Arithmetic = "follows from the published pairs";
    private const string Memory = "from memory";

    [Theory]
    [InlineData("D43", "M10x1", "hangerless", Verdict.DoesNotFit, "", Universal)]
    [InlineData("D43", "direct-mount", "hangerless", Verdict.DoesNotFit, "", Gravel)]
    [InlineData("D43", "plain", "hangerless", Verdict.DoesNotFit, "", Gravel)]
    [InlineData("D43", "no-hanger", "hangerless", Verdict.DoesNotFit, "", Universal)]
    [InlineData("hangerless", "UDH", "hangerless", Verdict.Fits, "", Universal)]
    [InlineData("D44", "UDH", "M10-bolt", Verdict.Fits, "", Gravel)]
    [InlineData("M10x1", "M10x1", "M10-bolt", Verdict.Fits, "", Escape)]
    [InlineData("replaceable", "replaceable", "M10", Verdict.Fits, "", Escape)]
    [InlineData("D45", "M10x1", "direct-mount", Verdict.NeedsPart, "link", DirectPart)]
    [InlineData("direct-mount", "direct-mount", "direct-mount", Verdict.Fits, "", DirectPart)]
    [InlineData("D46", "direct-mount", "M10-bolt", Verdict.DoesNotFit, "", DirectPart)]
    [InlineData("UDH with the link", "UDH", "direct-mount", Verdict.NeedsPart, "link", Arithmetic)]
    [InlineData("D47", "plain", "M10-bolt", Verdict.NeedsMeasuring, "", Plain)]
    [InlineData("mount not known", "UDH", "unknown", Verdict.NeedsMeasuring, "", Gravel)]
    [InlineData("hanger not known", "unknown", "hangerless", Verdict.NeedsMeasuring, "", Universal)]
    [InlineData("hanger not known", "unknown", "M10-bolt", Verdict.NeedsMeasuring, "", Escape)]
    public void A_derailleur_hangs_as_published(string row, string hanger, string mount, Verdict expected, string remedy, string source) =>
        Published.Says(On(hanger, mount, source), "derailleur-on-hanger", $"{row}, {source}", expected, remedy);

    [Theory]
    [InlineData("plain", "tapping the hole M10 x 1", Plain)]
    [InlineData("plain", "claw", Demystified)]
    [InlineData("no-hanger", "claw", Demystified)]
    [InlineData("M10x26", "chasing", Memory)]
    public void A_frame_without_the_thread_is_no_fit_and_the_way_out_is_told(string hanger, string words, string source)
    {
        Fit fit = Published.Of(On(hanger, "M10-bolt", source), "derailleur-on-hanger");

        Assert.True(fit.Verdict > Verdict.Fits, $"{source}: {fit}");
        Assert.Contains(fit.Remedies, r => r.Kind == RemedyKind.IfMeasured && r.What.Contains(words, StringComparison.Ordinal));
    }

    private static Build On(string hanger, string mount, string source) =>
        Build.From(Frame.Read($"hanger {Published.Key<Hanger>(hanger, source)}")).With(RearDerailleur.Read($"mount {Published.Key<DerailleurMount>(mount, source)}"), Slot.RearDerailleur);
}
