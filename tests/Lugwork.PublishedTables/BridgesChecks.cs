namespace Lugwork.PublishedTables;

/// <summary>Adapters and shop work that a page names: each is offered as a row, and changes no verdict that the page does not.</summary>
public sealed class BridgesChecks
{
    private const string Blog = "Brakes; bikeheights.blogspot.com";
    private const string DiscMounts = "Disc mounts, an explanation; BikeRadar forum";
    private const string FlatMount = "The problem with flat mount; peterverdone.com";
    private const string Hangers = "Derailleur Hangers Demystified; Red Clover Components";
    private const string Paterek = "The Paterek Manual, ch. 6, The Front Triangle; T. Paterek";
    private const string Jis = "Column of 2 Oct 2022: 1-inch headset, Italian vs JIS (in Japanese); Overwheel";
    private const string Unthreaded = "Unthreaded Bicycle Bottom Bracket Crib Sheet; sheldonbrown.com (J. Allen)";
    private const string T47 = "Threaded #12: the woes of T47 bottom brackets; Escape Collective";
    private const string Spindles = "Bicycle spindle options; Power Meter City FAQ";
    private const string Shocks = "Ultimate guide: metric shock sizing; Worldwide Cyclery";
    private const string FrenchPedals = "Pedal threads (French vs English); Classic Rendezvous list archive";
    private const string Steerers = "TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4 and figure 4; Taiwan Bicycle Industry Standard";
    private const string Practice = "common practice, no source";
    private const string Memory = "from memory";

    public static TheoryData<string, string, Verdict, string, string> Rows => new()
    {
        { "front-lever-with-rim-brake", "frontBrakeLever: pull short | frontRimBrake: direct-pull", Verdict.Unsafe, "pull-converter-short-to-long", Blog },
        { "front-caliper-on-mount", "fork: front brake PM-160 | frontCaliper: mounting IS | frontRotor: 180", Verdict.NeedsMeasuring, "brake-adapter-tabs-on-post-plus-20", DiscMounts },
        { "front-caliper-on-mount", "fork: front brake IS-front-DH | frontCaliper: post | frontRotor: 203", Verdict.NeedsMeasuring, "brake-adapter-is-front-downhill", DiscMounts },
        { "rear-caliper-on-mount", "frame: rear brake FM-rear-140 | rearCaliper: post | rearRotor: 160", Verdict.NeedsMeasuring, "brake-adapter-post-on-flat", FlatMount },
        { "rear-caliper-on-mount", "frame: rear brake PM-200 | rearCaliper: post | rearRotor: 203", Verdict.NeedsMeasuring, "brake-adapter-post-200-plus-3", Practice },
        { "derailleur-on-hanger", "frame: hanger no-hanger | rearDerailleur: M10 bolt", Verdict.NeedsMeasuring, "derailleur-on-claw", Hangers },
        { "derailleur-on-hanger", "frame: hanger plain | rearDerailleur: M10 bolt", Verdict.NeedsMeasuring, "derailleur-on-tapped-hole", Hangers },
        { "headset-lower-in-head-tube", "frame: head tube lower EC29 | headset: lower EC30/26", Verdict.DoesNotFit, "head-tube-30.0-reamed-to-30.2", Paterek },
        { "headset-on-crown", "fork: crown seat 27 | headset: crown race 26.4", Verdict.DoesNotFit, "crown-seat-27.0-milled-to-26.4", Jis },
        { "steerer-through-head-tube", "frame: head tube upper 44 | fork: steerer 25.4", Verdict.NeedsMeasuring, "steerer-25.4-in-44", Memory },
        { "steerer-through-head-tube", "frame: head tube upper EC34 | fork: steerer 25.4", Verdict.NeedsMeasuring, "steerer-25.4-in-ec34", Memory },
        { "stem-on-steerer", "fork: steerer 25.4; steerer kind threaded | stem: 28.6 clamp", Verdict.Unsafe, "clamped-stem-on-threaded-steerer", Steerers },
        { "bottom-bracket-in-shell", "frame: shell Italian 70 | bottomBracket: shell BSA 68", Verdict.DoesNotFit, "italian-shell-with-inserts", Unthreaded },
        { "bottom-bracket-in-shell", "frame: shell French 68 | bottomBracket: shell BSA 68", Verdict.DoesNotFit, "threadless-expanding-unit", Unthreaded },
        { "bottom-bracket-in-shell", "frame: shell PF30 68 | bottomBracket: shell T47 68", Verdict.DoesNotFit, "pf30-shell-tapped-to-t47", T47 },
        { "spindle-in-bottom-bracket", "bottomBracket: takes 24 | crankset: spindle 24/22", Verdict.DoesNotFit, "spindle-24-22-in-24-sleeve", Spindles },
        { "shock-in-frame", "frame: shock 210x50 | shock: size 210x55", Verdict.Unsafe, "shock-stroke-spacers", Shocks },
        { "pedals-in-cranks", "crankset: pedals French | pedals: 9/16", Verdict.Unsafe, "french-crank-tapped-to-9-16", FrenchPedals },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_bridge_that_is_named_is_offered(string joint, string parts, Verdict expected, string bridge, string source)
    {
        Build build = Build.From(new Frame());
        foreach (string[] piece in parts.Split(" | ").Select(p => p.Split(": ", 2)))
        {
            Slot slot = Slot.Find(piece[0])!;
            Assert.True(PartForms.Of(slot).TryReadAny(piece[1], out Part part, out var problems), string.Join(" | ", problems));
            build = slot == Slot.Frame ? Build.From((Frame)part) : build.With(part, slot);
        }

        Fit fit = Published.Of(build, joint);
        Assert.True(expected == fit.Verdict, $"{source}: {fit}");
        Remedy remedy = Assert.Single(fit.Remedies, r => r.Bridge?.Id == bridge);
        Assert.True(remedy.Kind != RemedyKind.ShopWork || remedy.Bridge!.Kind == BridgeKind.ShopWork, source);
        Assert.Contains(JointTable.All.Single(j => j.Id == joint).Relation.Bridges, b => b.Id == bridge);
        Assert.Contains($"{bridge}: ", fit.Explain(), StringComparison.Ordinal);
    }
}
