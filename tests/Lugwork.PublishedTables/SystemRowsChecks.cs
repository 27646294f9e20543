namespace Lugwork.PublishedTables;

/// <summary>Checks over several parts, judged as rows of a build: each on the example that a page prints, at its figure and beside it, or listed as one for which no example was found.</summary>
public sealed class SystemRowsChecks
{
    private const string Velogear = "Chain-wrap capacity note; Velogear";
    private const string Depot = "Rear Derailleur Capacity; Cycle Depot blog, 2012";
    private const string Tkacz = "Rear derailleur capacity - calculation; tkacz.pro";
    private const string Glossary = "Total capacity glossary entry; jitetan.com";
    private const string Example = "All forked up, part 1; myrambouilletbuild.blogspot.com, 2008";
    private const string Standard = "TBIS 4210-2:2018 (text of ISO 4210-2:2014), clause 4.7.4; Taiwan Bicycle Industry Standard";
    private const string Gap = "Cutting a steerer: why subtract 3 mm?; RoadBikeReview archive, 2003";
    private const string Quoted = "Spacers under the stem; The Paceline Forum, 2012";
    private const string Column = "Technical FAQ: headset spacer stack height; VeloNews";
    private const string Regulation = "16 CFR 1512.15 Requirements for seat; US Code of Federal Regulations";
    private const string Manual = "Operation Manual 2015, pp. 94-95; a bicycle maker";
    private const string Tips = "Dropper post tips; Bicycle Times";
    private const string Choosing = "Choosing a dropper: ride height and insertion; dirtlifebike.com";
    private const string Clearance = "16 CFR 1512.17 Other requirements; US Code of Federal Regulations";
    private const string Travel = "Head Angle Change With Suspension Travel; PVD wiki, 2007-12";
    private const string Upgrades = "Bike hack: spacer upgrades; Bike Magazine";
    private const string SpacerPost = "Post 1474018 (in German); globike.net";
    private const string Guide = "Double chain-guide fitting on an external-cup crank; rideitfixit.blogspot.com";
    private const string Hulk = "Derailleurs (direct-mount hole spacing); Hulk Bike";
    private const string Table = "Kettenlinienstandards (Tabelle); WikiPedalia";
    private const string FatFrames = "Understanding Drivetrain and Rear Tire Capacity; a frame maker";
    private const string Radavist = "55mm Chainline; The Radavist";
    private const string BigBig = "Chain sizing by big-big; derived from the printed rule, the loop by the roller-chain formula of a passage on machine chains";

    // The fork of the page is the rigid one of a road bicycle.
    private const string Steered = "frame: head tube length 110.2 | headset: lower stack 10.9; upper stack 16.5 | stem: clamp height 40; spacers below 25.3; spacers above none | fork: threadless; travel none; steerer length ";
    private const string Double = "crankset: largest ring 53; smallest ring 39 | rearDerailleur: capacity ";

    public static TheoryData<string, string, Verdict, string> Rows => new()
    {
        { "derailleur-capacity", Double + "25 | cassette: smallest sprocket 12; largest sprocket 23", Verdict.Fits, Velogear },
        { "derailleur-capacity", Double + "24 | cassette: smallest sprocket 12; largest sprocket 23", Verdict.DoesNotFit, Velogear },
        { "derailleur-capacity", Double + "27 | cassette: smallest sprocket 12; largest sprocket 25", Verdict.Fits, Depot },
        { "derailleur-capacity", Double + "26 | cassette: smallest sprocket 12; largest sprocket 25", Verdict.DoesNotFit, Depot },
        { "derailleur-capacity", "crankset: largest ring 50; smallest ring 34 | rearDerailleur: capacity 33 | cassette: smallest sprocket 12; largest sprocket 25", Verdict.Fits, Tkacz },
        { "derailleur-capacity", "crankset: largest ring 44; smallest ring 24 | rearDerailleur: capacity 38 | cassette: smallest sprocket 12; largest sprocket 34", Verdict.DoesNotFit, Glossary },
        { "chainline", "crankset: chainline road-2x | rearWheel: hub R130 | cassette: spacing 10", Verdict.Fits, Table },
        { "chainline", "crankset: chainline fat-offset-135 | rearWheel: hub R135-QR | cassette: spacing 9", Verdict.DoesNotFit, FatFrames },
        { "chainline-of-hangerless", "crankset: chainline off-road-1x-55 | rearDerailleur: hangerless", Verdict.Fits, Radavist },
        { "bottom-bracket-spacers", "frame: shell BSA 73 | crankset: spindle 24-MTB | bottomBracket: drive spacer 2.5", Verdict.Fits, Upgrades },
        { "bottom-bracket-spacers", "frame: shell BSA 68 | crankset: spindle 24-MTB | bottomBracket: drive spacer 5", Verdict.Fits, Upgrades },
        { "bottom-bracket-spacers", "frame: shell BSA 68 | crankset: spindle 24-MTB | bottomBracket: drive spacer none", Verdict.NeedsPart, SpacerPost },
        { "bottom-bracket-spacers-with-guide", "frame: shell BSA 73 | crankset: spindle 24-MTB | bottomBracket: drive spacer none | chainGuide: BB-mount", Verdict.Fits, SpacerPost },
        { "bottom-bracket-spacers-with-guide", "frame: shell BSA 68 | crankset: spindle 24-road | bottomBracket: drive spacer none | chainGuide: BB-mount", Verdict.NeedsMeasuring, Guide },
        { "bottom-bracket-spacers-with-front-derailleur", "frame: shell BSA 73 | crankset: spindle 24-MTB | bottomBracket: drive spacer none | frontDerailleur: E-type", Verdict.Fits, Hulk },
        { "steerer-reaches-stem", Steered + "199.9", Verdict.Fits, Example },
        { "gap-under-cap", Steered + "199.9", Verdict.Fits, Example },
        { "steerer-reaches-stem", Steered + "197.9", Verdict.Fits, Standard },
        { "steerer-reaches-stem", Steered + "197.8", Verdict.Unsafe, Standard },
        { "gap-under-cap", Steered + "202.9", Verdict.NeedsPart, Gap },
        { "spacers-on-carbon-steerer", "fork: steerer 28.6; steerer material carbon; most spacers 40 | stem: spacers below 40", Verdict.Fits, Quoted },
        { "spacers-on-carbon-steerer", "fork: steerer 28.6; steerer material carbon; most spacers 40 | stem: spacers below 41", Verdict.Unsafe, Quoted },
        { "spacers-on-carbon-steerer", "fork: steerer 28.6; steerer material carbon; most spacers none | stem: spacers below 50", Verdict.Unsafe, Column },
        { "saddle-height-least-insertion", "frame: seat tube length 500; leastInsertion none | saddle: depth 45 | rider: saddle height 740 | seatpost: 27.2 x 249.4; mark 54.4", Verdict.Fits, Regulation },
        { "saddle-height-least-insertion", "frame: seat tube length 500; leastInsertion none | saddle: depth 45 | rider: saddle height 740 | seatpost: 27.2 x 249.3; mark 54.4", Verdict.Unsafe, Regulation },
        { "saddle-height-least-insertion", "frame: seat tube length 500; leastInsertion 80 | saddle: depth 45 | rider: saddle height 740 | seatpost: 27.2 x 274; mark 54.4", Verdict.Unsafe, Manual },
        { "saddle-height-open-depth", "frame: seat tube length 500; mostInsertion 200 | saddle: depth 45 | rider: saddle height 740 | seatpost: 27.2 x 396", Verdict.DoesNotFit, Manual },
        { "dropper-at-saddle-height", "frame: seat tube length 500 | saddle: depth 45 | rider: saddle height 703 | dropper: travel 100; stack 58", Verdict.Fits, Tips },
        { "dropper-at-saddle-height", "frame: seat tube length 500 | saddle: depth 45 | rider: saddle height 702 | dropper: travel 100; stack 58", Verdict.DoesNotFit, Choosing },
        { "toe-clearance", "crankset: crank length 170; toe room 89 | frame: front centre 600 | fork: threadless | frontTyre: 28-622", Verdict.Fits, Clearance },
        { "toe-clearance", "crankset: crank length 170; toe room 88.9 | frame: front centre 600 | fork: threadless | frontTyre: 28-622", Verdict.DoesNotFit, Clearance },
        { "pedal-ground-clearance", "frame: bottom bracket drop 70 | crankset: crank length 170; Q factor 150 | pedals: height 20; reach 60; ground height 63 | rearTyre: 28-622", Verdict.Fits, Clearance },
        { "pedal-ground-clearance", "frame: bottom bracket drop 70 | crankset: crank length 170; Q factor 150 | pedals: height 20; reach 60; ground height 62.9 | rearTyre: 28-622", Verdict.Unsafe, Clearance },
        { "head-angle-not-too-slack", "frame: fork of the design 450; head angle 74; wheelbase 1058; slackest head angle 73.16 | fork: axle to crown 460", Verdict.Fits, Travel },
        { "head-angle-not-too-slack", "frame: fork of the design 450; head angle 74; wheelbase 1058; slackest head angle 73.8 | fork: axle to crown 460", Verdict.Unsafe, Travel },
        { "head-angle-not-too-steep", "frame: fork of the design 460; head angle 74; wheelbase 1058; steepest head angle 74.84 | fork: axle to crown 450", Verdict.Fits, Travel },
        { "head-angle-not-too-steep", "frame: fork of the design 460; head angle 74; wheelbase 1058; steepest head angle 74.2 | fork: axle to crown 450", Verdict.Unsafe, Travel },
    };

    /// <summary>Run as edge cases of the published tables, each with its source, or in a check of its own.</summary>
    internal static Dictionary<string, string> RunElsewhere { get; } = new(StringComparer.Ordinal)
    {
        ["front-adapter-with-rotor"] = "B05, B06, B12",
        ["rear-adapter-with-rotor"] = "B13",
        ["single-chainline"] = "D75, D76",
        ["front-derailleur-tab"] = "D52",
        ["crank-for-shell"] = "H14",
        ["front-adapters-stacked"] = "B33",
        ["rear-adapters-stacked"] = "B33",
        ["crown-under-down-tube"] = "C094",
        ["front-brake-hand"] = nameof(HandsAndLinesChecks),
    };

    /// <summary>Rows for which no page with an example was found, each with what they rest on.</summary>
    internal static Dictionary<string, string> NoneFound { get; } = new(StringComparer.Ordinal)
    {
        ["largest-sprocket-of-derailleur"] = "the figure is the derailleur maker's own: the row holds one number against it",
        ["smallest-sprocket-of-derailleur"] = "the figure is the derailleur maker's own: the row holds one number against it",
        ["front-difference"] = "the figure is the derailleur maker's own: the row holds one difference against it",
        ["chain-reaches"] = "the rule is printed, and no page prints chainstay, teeth and pitches together without a slip: the sum is held against the printed roller-chain examples",
        ["chain-taken-up"] = "no page prints a chain that hangs slack with its figures",
        ["derailleur-capacity-with-ring"] = "the row of the capacity with one ring in a place of its own",
        ["chain-reaches-with-ring"] = "the row of the chain with one ring in a place of its own",
        ["chain-taken-up-with-ring"] = "the row of the chain with one ring in a place of its own",
        ["standover"] = "common practice, no source",
        ["standover-with-fork"] = "a bound on the same figure; no page prints a standover with two forks",
        ["head-angle-with-headset"] = "the row of the head angle with what a tall lower half adds; the chart's own half is printed by nobody",
        ["bottom-bracket-with-fork-and-wheels"] = "similar triangles; no page prints a bottom bracket with its fork, wheelbase and chainstay together",
        ["insertion-at-saddle-height"] = "one sum against a reading of the same thing; our own bound",
        ["wheels-of-one-size"] = "common practice, no source",
        ["rotors-front-and-rear"] = "common practice, no source",
        ["fork-not-too-short"] = "the figure is the frame maker's own: the row holds one number against it",
        ["chain-angle"] = "a printed angle is met by the sum; no page prints a limit",
        ["levers-one-each-side"] = "the pages say it in words, without a case",
        ["brake-hands-together"] = "the pages say it in words, without a case of both levers",
        ["rear-hose-side"] = "common practice, no source",
        ["rear-hose-side-of-rider"] = "common practice, no source",
        ["rotor-fixings-front-and-rear"] = "common practice, no source",
        ["tyres-front-and-rear"] = "common practice, no source",
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_row_says_what_the_page_prints(string joint, string parts, Verdict expected, string source)
    {
        Build build = Build.From(new Frame());
        foreach (string[] piece in parts.Split(" | ").Select(p => p.Split(": ", 2)))
        {
            Slot slot = Slot.Find(piece[0])!;
            Assert.True(PartForms.Of(slot).TryReadAny(piece[1], out Part part, out var problems), $"{source}: {string.Join(" | ", problems)}");
            build = slot == Slot.Frame ? Rebuilt((Frame)part, build) : build.OfFile(part, slot);
        }

        Fit fit = build.Check().Findings.SingleOrDefault(f => f.Joint!.Id == joint);
        Assert.True(expected == fit.Verdict, $"{source}: {expected} is printed, judged: {fit}");
    }

    /// <summary>The chain of the row is the shortest and the longest by the same loop as the printed sums: the example of the worked table is cut to the number that its note says.</summary>
    [Theory]
    [InlineData("chain-reaches", 435, "32; smallest ring none", 52, 114, Verdict.Fits, BigBig)]
    [InlineData("chain-reaches", 435, "32; smallest ring none", 52, 112, Verdict.Unsafe, BigBig)]
    [InlineData("chain-reaches", 410, "50; smallest ring 34", 34, 110, Verdict.Fits, BigBig)]
    [InlineData("chain-reaches", 410, "50; smallest ring 34", 34, 108, Verdict.Unsafe, BigBig)]
    public void A_chain_is_as_long_as_the_sum_of_the_worked_table(string joint, int chainstay, string rings, int sprocket, int pitches, Verdict expected, string source) =>
        A_row_says_what_the_page_prints(joint, $"frame: chainstay {chainstay} | crankset: largest ring {rings} | cassette: largest sprocket {sprocket} | rearDerailleur: chain allowance 2 | chain: pitches {pitches}", expected, source);

    private static Build Rebuilt(Frame frame, Build build) => Slot.All.Where(s => s != Slot.Frame && build[s] is not null).Aggregate(Build.From(frame), (b, s) => b.OfFile(build[s]!, s));
}
