namespace Lugwork.Tests.Builds;

/// <summary>
/// Which way each figure of a check goes, written down by hand from what a mechanic knows and not read off the checks: + where more of it never makes the verdict worse, - where
/// less of it never does, . where neither holds (a kind, a best value between two bad ones, or a figure that is first of all held against another).
/// </summary>
internal static class MoreIsNeverWorse
{
    public static Dictionary<string, string> Marks { get; } = new(StringComparer.Ordinal)
    {
        // capacity; largest ring; largest sprocket; smallest sprocket; smallest ring
        ["derailleur-capacity"] = "+--++",
        // the same of a bare crank
        ["derailleur-capacity-with-ring"] = "+--++",
        // what the derailleur takes; what there is
        ["largest-sprocket-of-derailleur"] = "+-",
        ["smallest-sprocket-of-derailleur"] = "-+",
        // difference allowed; largest ring; smallest ring
        ["front-difference"] = "+-+",
        // pitches; chainstay; largest ring; largest sprocket; allowance
        ["chain-reaches"] = "+----",
        // the same with the one ring, and the bare crank
        ["chain-reaches-with-ring"] = "+----.",
        // pitches; chainstay; smallest sprocket; largest ring; smallest ring; capacity; allowance
        ["chain-taken-up"] = "-++++++",
        // the same of a bare crank
        ["chain-taken-up-with-ring"] = "-++++++",
        // steerer; head tube; stem; lower; upper; spacers below; crowns
        ["steerer-reaches-stem"] = "+-----.",
        // steerer; head tube; stem; lower; upper; spacers below; spacers above; crowns
        ["gap-under-cap"] = "-++++++.",
        // material; steerer; spacers below; most spacers
        ["spacers-on-carbon-steerer"] = "..-+",
        // saddle height; post; seat tube; saddle; mark; frame's least; two diameters
        ["saddle-height-least-insertion"] = "-+++---",
        // saddle height; post; seat tube; saddle; open depth
        ["saddle-height-open-depth"] = "+---+",
        // saddle height; travel; seat tube; saddle; stack
        ["dropper-at-saddle-height"] = "+----",
        ["standover"] = "+-",
        // inseam; standover; fork; fork of the chart
        ["standover-with-fork"] = "+--+",
        // front centre; crank; tyre; room as measured; fork; fork of the chart; head angle
        ["toe-clearance"] = "+--++-+",
        // front tyre; rear tyre; fork; fork of the chart; wheelbase; chainstay; drop, which is only told; height as measured, which the row of pedals and ground judges
        ["bottom-bracket-with-fork-and-wheels"] = "+-+-+-..",
        // as measured; saddle height; post; seat tube; saddle: two depths that have to be alike
        ["insertion-at-saddle-height"] = ".....",
        // crank; drop; tyre; pedal; Q factor; reach; height as measured
        ["pedal-ground-clearance"] = "--+---+",
        // fork; frame's shortest
        ["fork-not-too-short"] = "+-",
        // fork; slackest; fork of the chart; angle of the chart; wheelbase. A chart beyond its own limit is asked, whatever the fork does.
        ["head-angle-not-too-slack"] = "-.+.+",
        // the same, and the lower half of the headset
        ["head-angle-with-headset"] = "-.+.+-",
        ["head-angle-not-too-steep"] = "+.-.+",
        // smallest outer ring of the tab; largest ring; mount
        ["front-derailleur-tab"] = "-+.",
        // knobs; lower stack; down tube
        ["crown-under-down-tube"] = "-+-",

        // Tyres: width; largest width; seat; seat of the largest; travel of the fork
        ["front-tyre-in-fork"] = "-+...",
        ["rear-tyre-in-frame"] = "-+..",
        // width (which says too on which rim it is measured); rim; largest; seats; width as measured; on which rim
        ["front-tyre-on-its-rim-in-fork"] = ".-+..-+",
        ["rear-tyre-on-its-rim-in-frame"] = ".-+..-+",

        // Lengths and loads of two parts
        ["front-rotor-within-limit"] = "-+",
        ["rear-rotor-within-limit"] = "-+",
        ["fork-length-within-limit"] = "-+-+",
        ["seatpost-room-in-seat-tube"] = "--+",
        ["front-valve-length"] = "+-",
        ["rear-valve-length"] = "+-",
        ["front-tube-valve-length"] = "+-",
        ["rear-tube-valve-length"] = "+-",
        ["upper-cup-depth-in-head-tube"] = "-+",
        ["lower-cup-depth-in-head-tube"] = "-+",
        ["ring-against-chainstay"] = "-+",
        ["chainring-against-chainstay"] = "-+",
        // rider; with luggage; with the bicycle; limit of what is carried; limit of everything
        ["rider-on-frame"] = "---++",
        ["rider-on-fork"] = "---++",
        ["rider-on-front-wheel"] = "---++",
        ["rider-on-rear-wheel"] = "---++",

        // Lines that meet, sizes that are alike, lists, hands: no figure of these has a better end.
        ["chainline"] = ".....",
        ["chainline-of-hangerless"] = "..",
        ["bottom-bracket-spacers"] = "...",
        ["bottom-bracket-spacers-with-guide"] = "....",
        ["bottom-bracket-spacers-with-front-derailleur"] = "....",
        ["wheels-of-one-size"] = "....",
        ["rotors-front-and-rear"] = "..",
        ["front-adapter-with-rotor"] = "...",
        ["rear-adapter-with-rotor"] = "...",
        ["chain-angle"] = "....",
        ["single-chainline"] = "..",
        ["crank-for-shell"] = "..",
        ["levers-one-each-side"] = "..",
        ["front-brake-hand"] = "..",
        ["brake-hands-together"] = "...",
        ["rear-hose-side"] = "..",
        ["rear-hose-side-of-rider"] = "...",
        ["rotor-fixings-front-and-rear"] = "..",
        ["tyres-front-and-rear"] = "..",
        ["front-adapters-stacked"] = ".",
        ["rear-adapters-stacked"] = ".",
    };

    /// <summary>Draws figures of a joint near each other: of a size with what it measures, and none of what nobody measured half of the time.</summary>
    public static long[] Draw(Joint joint, Random random)
    {
        long unit = Units(joint.Inputs[0])[random.Next(3)];
        long centre = random.Next(20, 700);
        return [.. joint.Inputs.Select(i =>
            i.IsReadWhenBuilt && random.Next(2) == 0 ? 0
            : i.Field is "mark" or "leastInsertion" && random.Next(4) == 0 ? 0
            : i.Field == "pitches" ? random.Next(70, 135) * 12_700_000L
            : i.Field == "chainstay" ? random.Next(380, 460) * 1_000_000L
            : i.Called.Contains("bead seat", StringComparison.Ordinal) || i.Called.StartsWith("wheel size", StringComparison.Ordinal) ? random.Next(5) == 0 ? 584 : 622
            : IsTeeth(i) ? random.Next(8, 60)
            : !i.IsLength ? i.Domain[random.Next(i.Domain.Length)]
            : i.IsAngle ? random.Next(640, 760) * 100_000L
            : i.IsMass ? random.Next(60, 140) * 1_000L
            : random.Next(3) == 0 ? Math.Max(1, (centre + random.Next(-40, 41)) * unit)
            : random.Next(1, 700) * 1_000_000L)];
    }

    /// <summary>Values of one input from the least to the greatest, coarse ones and fine ones round what it is now.</summary>
    public static IEnumerable<long> Along(JointInput input, long now)
    {
        if (!input.IsLength)
        {
            return input.Domain.Where(c => c > 0).Order();
        }

        SortedSet<long> values = [];
        foreach (long unit in Units(input))
        {
            for (int step = -60; step <= 60; step++)
            {
                values.Add(Math.Max(1, now + (step * unit)));
            }
        }

        for (long mm = 5; mm <= 2_000 && !input.IsMass && !input.IsAngle; mm += 5)
        {
            values.Add(mm * 1_000_000);
        }

        return values;
    }

    private static bool IsTeeth(JointInput input) => input.Family == JointInputs.LargeRing.Family || input.Field is "teeth" or "largestRing" or "smallestOuterRing";

    private static long[] Units(JointInput input) => input.IsMass ? [1, 100, 1_000] : input.IsAngle ? [1, 10_000, 100_000] : [1, 50_000, 1_000_000];
}
