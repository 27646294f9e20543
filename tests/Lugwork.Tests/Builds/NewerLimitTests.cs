using Lugwork.BottomBrackets;
using Lugwork.Brakes;
using Lugwork.Cockpit;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Steering;

namespace Lugwork.Tests.Builds;

/// <summary>The limits of the relations over several parts, each at its figure and one nanometre to either side, so that no limit can move unseen.</summary>
public sealed class NewerLimitTests
{
    private const long Spacer = 2_500_000;

    [Theory]
    [InlineData("BSA-73", "24-MTB", 0, Verdict.NeedsPart)]
    [InlineData("BSA-73", "24-MTB", 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-73", "24-MTB", Spacer - 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-73", "24-MTB", Spacer, Verdict.Fits)]
    [InlineData("BSA-73", "24-MTB", Spacer + 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-68", "24-road", 0, Verdict.Fits)]
    [InlineData("BSA-68", "24-road", 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-68", "24-MTB", 0, Verdict.NeedsPart)]
    [InlineData("BSA-68", "24-MTB", 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-68", "24-MTB", Spacer - 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-68", "24-MTB", Spacer, Verdict.NeedsPart)]
    [InlineData("BSA-68", "24-MTB", Spacer + 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-68", "24-MTB", 2 * Spacer, Verdict.Fits)]
    [InlineData("BSA-68", "24-MTB", (2 * Spacer) + 1, Verdict.NeedsMeasuring)]
    [InlineData("BSA-68", "30-long", 0, Verdict.NeedsPart)]
    [InlineData("BSA-68", "30-long", 2 * Spacer, Verdict.NeedsMeasuring)]
    [InlineData("BB30-68", "24-road", 0, Verdict.NeedsPart)]
    [InlineData("BB30-68", "24-road", Spacer, Verdict.NeedsMeasuring)]
    [InlineData("BB30-73", "24-road", Spacer, Verdict.DoesNotFit)]
    public void Spacers_under_the_cups_are_as_the_chart_says(string shell, string spindle, long spacers, Verdict verdict) =>
        Assert.Equal(verdict, SpacersOnShell.UnderCups.Judge([Shell.Parse(shell, null).FitCode, Spindle.Parse(spindle, null).FitCode, spacers]).Verdict);

    /// <summary>The plate of a guide or of an E-type front derailleur stands in the place of one spacer; with all the spacers beside it one has to come out.</summary>
    [Theory]
    [InlineData("BSA 73", "24-MTB", "none", Verdict.Fits)]
    [InlineData("BSA 73", "24-MTB", "2.5", Verdict.NeedsMeasuring)]
    [InlineData("BSA 73", "24-MTB", "2.4", Verdict.NeedsMeasuring)]
    [InlineData("BSA 73", "24-MTB", "5", Verdict.NeedsMeasuring)]
    [InlineData("BSA 68", "24-MTB", "none", Verdict.NeedsPart)]
    [InlineData("BSA 68", "24-MTB", "2.5", Verdict.Fits)]
    [InlineData("BSA 68", "24-MTB", "5", Verdict.NeedsMeasuring)]
    [InlineData("BSA 68", "24-MTB", "7.5", Verdict.NeedsMeasuring)]
    [InlineData("BSA 68", "24-road", "none", Verdict.NeedsMeasuring)]
    [InlineData("BSA 68", "24-road", "2.5", Verdict.NeedsMeasuring)]
    [InlineData("BSA 68", "30-long", "none", Verdict.NeedsMeasuring)]
    [InlineData("BSA 73", "24-MTB", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("BSA 73", "24-road", "none", Verdict.DoesNotFit)]
    public void A_plate_under_the_cup_stands_for_a_spacer(string shell, string spindle, string spacers, Verdict verdict)
    {
        Build bare = Build.From(Frame.Read($"shell {shell}")).With(Crankset.Read($"spindle {spindle}")).With(BottomBracket.Read($"drive spacer {spacers}"));
        foreach ((Build build, string row) in new[] { (bare.With(ChainGuide.Read("BB-mount")), "bottom-bracket-spacers-with-guide"), (bare.With(FrontDerailleur.Read("E-type")), "bottom-bracket-spacers-with-front-derailleur") })
        {
            Fit[] said = [.. build.Check().Findings.Where(f => f.Joint!.Id.StartsWith("bottom-bracket-spacers", StringComparison.Ordinal) || f.Joint.Id == "guide-on-bottom-bracket")];
            Assert.Equal((row, verdict), (Assert.Single(said).Joint!.Id, said[0].Verdict));
        }
    }

    /// <summary>A guide on tabs and a derailleur on a band leave the spacers to the row without a plate, and a guide of one of two mounts leaves it open where it matters.</summary>
    [Theory]
    [InlineData("ISCG05", "bottom-bracket-spacers", Verdict.NeedsPart)]
    [InlineData("ISCG05 | BB-mount", "bottom-bracket-spacers-with-guide", Verdict.NeedsMeasuring)]
    public void A_guide_without_a_plate_stands_for_no_spacer(string mount, string row, Verdict verdict)
    {
        Build build = Build.From(Frame.Read("shell BSA 73")).With(Crankset.Read("spindle 24-MTB")).With(BottomBracket.Read("drive spacer none")).With(ChainGuide.Read($"mount {mount}"));
        Assert.Equal((row, verdict), build.Check().Findings.Where(f => f.Joint!.Id.StartsWith("bottom-bracket-spacers", StringComparison.Ordinal)).Select(f => (f.Joint!.Id, f.Verdict)).Single());
        Assert.Equal("bottom-bracket-spacers", build.With(FrontDerailleur.Read("31.8")).Without(Slot.ChainGuide).Check().Findings.Single(f => f.Joint!.Id.StartsWith("bottom-bracket-spacers", StringComparison.Ordinal)).Joint!.Id);
    }

    /// <summary>A spacer that is lacking is a thing to buy, once; where nobody said what stands there, the list asks for what the table says, and for none in the place of a plate that is there.</summary>
    [Theory]
    [InlineData("BSA 73", "drive spacer none", "", "bottom-bracket-spacers:bracket-spacer-drive-side")]
    [InlineData("BSA 73", "drive spacer 2.5", "", "")]
    [InlineData("BSA 73", "drive spacer unknown", "", "bottom-bracket-spacers")]
    [InlineData("BSA 73", "drive spacer unknown", "BB-mount", "")]
    [InlineData("BSA 68", "drive spacer none", "", "bottom-bracket-spacers:bracket-spacers-three")]
    [InlineData("BSA 68", "drive spacer 5", "", "")]
    [InlineData("BSA 68", "drive spacer unknown", "", "crank-across-shell:crank-24-mtb-across-bsa-68")]
    [InlineData("BSA 68", "drive spacer none", "BB-mount", "bottom-bracket-spacers-with-guide:bracket-spacer-each-side")]
    public void A_spacer_that_is_lacking_is_on_the_list(string shell, string bracket, string guide, string ids)
    {
        Build build = Build.From(Frame.Read($"shell {shell}")).With(Crankset.Read("spindle 24-MTB")).With(BottomBracket.Read(bracket));
        build = guide.Length == 0 ? build : build.With(ChainGuide.Read(guide));
        Assert.Equal(ids.Split(' ', StringSplitOptions.RemoveEmptyEntries), build.SmallParts().Select(p => p.Id).Where(i => i.Contains("bracket-spacer", StringComparison.Ordinal) || i.StartsWith("crank-across", StringComparison.Ordinal)));
    }

    /// <summary>Both lines measured say what no list says: within 3 mm it runs, farther out it takes a moved ring, beside all sprockets it runs on none. A crank that is sold for the rear end needs no measuring.</summary>
    [Theory]
    [InlineData("46", "46", Verdict.Fits)]
    [InlineData("49", "46", Verdict.Fits)]
    [InlineData("43", "46", Verdict.Fits)]
    [InlineData("49.1", "46", Verdict.NeedsPart)]
    [InlineData("42.9", "46", Verdict.NeedsPart)]
    [InlineData("66", "46", Verdict.NeedsPart)]
    [InlineData("69", "46", Verdict.DoesNotFit)]
    [InlineData("49", "unknown", Verdict.NeedsMeasuring)]
    [InlineData("unknown", "46", Verdict.NeedsMeasuring)]
    [InlineData("46 \u00B1 2", "46", Verdict.Fits)]
    [InlineData("48 \u00B1 2", "46", Verdict.NeedsMeasuring)]
    public void Two_lines_that_were_measured_settle_the_chainline(string ring, string cassette, Verdict verdict)
    {
        Build build = Build.From(new Frame()).OfFile(Crankset.Read($"chainline gravel-1x-49.7; ring line {ring}"), Slot.Crankset).OfFile(Wheel.Read($"hub R135-QR; cassette line {cassette}"), Slot.RearWheel).With(Cassette.Read("spacing 11-close"));
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == "chainline");
        Assert.Equal(verdict, fit.Verdict);
        Assert.Equal(ring == "unknown" && verdict == Verdict.NeedsMeasuring, fit.Measurements.Any(m => m.Field == "measuredChainline") && ring == "unknown");
    }

    /// <summary>A crank that is sold for the rear end runs there as its maker has it, within 3 mm of its own chainline; rings that were measured elsewhere are not those that it is sold with.</summary>
    [Theory]
    [InlineData("49.7", "44", Verdict.Fits)]
    [InlineData("52.7", "44", Verdict.Fits)]
    [InlineData("52.8", "44", Verdict.NeedsPart)]
    [InlineData("46.7", "52", Verdict.Fits)]
    [InlineData("46.6", "52", Verdict.NeedsPart)]
    [InlineData("68", "44", Verdict.DoesNotFit)]
    [InlineData("68", "unknown", Verdict.Fits)]
    public void Rings_that_were_measured_elsewhere_are_not_those_that_the_crank_is_sold_with(string ring, string cassette, Verdict verdict)
    {
        Build build = Build.From(new Frame()).OfFile(Crankset.Read($"chainline gravel-1x-49.7; ring line {ring}"), Slot.Crankset).OfFile(Wheel.Read($"hub R142-12; cassette line {cassette}"), Slot.RearWheel).With(Cassette.Read("spacing 11-close"));
        Assert.Equal(verdict, build.Check().Findings.Single(f => f.Joint!.Id == "chainline").Verdict);
    }

    [Theory]
    [InlineData("25.4", 25_000_000, 0, Verdict.NeedsMeasuring)]
    [InlineData("25.4", 25_000_001, 0, Verdict.Unsafe)]
    [InlineData("28.6", 30_000_000, 0, Verdict.NeedsMeasuring)]
    [InlineData("28.6", 30_000_001, 0, Verdict.Unsafe)]
    [InlineData("28.6", 40_000_000, 40_000_000, Verdict.Fits)]
    [InlineData("28.6", 40_000_001, 40_000_000, Verdict.Unsafe)]
    [InlineData("28.6", 10_000_000, 9_999_999, Verdict.Unsafe)]
    [InlineData("28.6", 0, 0, Verdict.Fits)]
    public void Spacers_on_a_carbon_steerer_end_at_their_figure(string steerer, long spacers, long most, Verdict verdict) =>
        Assert.Equal(verdict, CarbonSpacers.Below.Judge([Material.Carbon.FitCode, SteererSize.Parse(steerer, null).FitCode, spacers, most]).Verdict);

    [Theory]
    [InlineData("11", 306_323_999, Verdict.Fits)]
    [InlineData("11", 306_324_000, Verdict.NeedsMeasuring)]
    [InlineData("9", 307_085_999, Verdict.Fits)]
    [InlineData("9", 307_086_000, Verdict.NeedsMeasuring)]
    [InlineData("1/8", 307_847_999, Verdict.Fits)]
    [InlineData("1/8", 307_848_000, Verdict.NeedsMeasuring)]
    [InlineData("9", 313_944_000, Verdict.NeedsMeasuring)]
    [InlineData("9", 313_944_001, Verdict.Fits)]
    public void A_chain_wears_its_set_from_its_limit_up_to_what_no_chain_is(string size, long over24, Verdict verdict) =>
        Assert.Equal(verdict, WornSetRelation.AsASet.Judge([PartCondition.Inspected.FitCode, PartCondition.Inspected.FitCode, PartCondition.Inspected.FitCode, over24, ChainSize.Parse(size, null).FitCode]).Verdict);

    [Theory]
    [InlineData("used")]
    [InlineData("inspected")]
    [InlineData("not-known")]
    public void Teeth_that_ran_with_a_worn_chain_are_tried(string teeth)
    {
        long ran = PartCondition.Parse(teeth, null).FitCode;
        Assert.Equal(Verdict.NeedsMeasuring, WornSetRelation.AsASet.Judge([PartCondition.Worn.FitCode, ran, ConditionRelations.NotSaid, 0, ChainSize.Parse("9", null).FitCode]).Verdict);
        Assert.Equal(Verdict.NeedsMeasuring, WornSetRelation.AsASet.Judge([PartCondition.Worn.FitCode, ConditionRelations.NotSaid, ran, 0, ChainSize.Parse("9", null).FitCode]).Verdict);
        Assert.Equal("new-chain-on-used-teeth", WornSetRelation.AsASet.Judge([PartCondition.New.FitCode, ran, ConditionRelations.NotSaid, 0, ChainSize.Parse("9", null).FitCode]).Reason!.Id);
    }

    /// <summary>Both ways round, and one nanometre off a width that a shell has is no width to compare.</summary>
    [Theory]
    [InlineData("BSA-73", 83_000_000, Verdict.DoesNotFit)]
    [InlineData("BSA-73", 82_999_999, Verdict.Fits)]
    [InlineData("BSA-83", 73_000_000, Verdict.NeedsMeasuring)]
    [InlineData("BSA-83", 68_000_000, Verdict.NeedsMeasuring)]
    [InlineData("BSA-68", 73_000_000, Verdict.Fits)]
    [InlineData("BSA-73", 68_000_000, Verdict.Fits)]
    [InlineData("BSA-68", 83_000_000, Verdict.DoesNotFit)]
    public void A_crank_for_a_shell_ten_millimetres_away_is_far(string shell, long width, Verdict verdict) =>
        Assert.Equal(verdict, new CrankForShell().Judge([Shell.Parse(shell, null).FitCode, width]).Verdict);

    [Theory]
    [InlineData(95_000, 95_000, 0, Verdict.Fits)]
    [InlineData(95_001, 95_000, 0, Verdict.Unsafe)]
    [InlineData(95_000, 0, 108_000, Verdict.Fits)]
    [InlineData(95_000, 0, 107_999, Verdict.Unsafe)]
    [InlineData(95_000, 0, 0, Verdict.NeedsMeasuring)]
    public void A_load_is_within_its_limit_to_the_gram(long loaded, long limit, long system, Verdict verdict) =>
        Assert.Equal(verdict, RiderRelations.Carried.Judge([82_000, loaded, 108_000, limit, system]).Verdict);

    [Fact]
    public void A_part_for_the_same_use_is_enough_and_one_below_is_not() =>
        Assert.All(UseCategory.All, ridden => Assert.All(UseCategory.All, made =>
            Assert.Equal(made.FitCode >= ridden.FitCode ? Verdict.Fits : Verdict.Unsafe, RiderRelations.Use.Judge([ridden.FitCode, made.FitCode]).Verdict)));

    /// <summary>Every cell of the hands, against the rule said in words.</summary>
    [Fact]
    public void Every_cell_of_hands_and_hose_is_as_the_rule_says()
    {
        foreach (Hand one in Hand.All)
        {
            foreach (Hand other in Hand.All)
            {
                bool both = one == other && one != Hand.Either;
                bool apart = one != other && one != Hand.Either && other != Hand.Either;
                Assert.Equal(both ? Verdict.DoesNotFit : Verdict.Fits, HandRelations.OneEachSide.Judge([one.FitCode, other.FitCode]).Verdict);
                Assert.Equal(apart ? Verdict.DoesNotFit : Verdict.Fits, HandRelations.OfRider.Judge([one.FitCode, other.FitCode]).Verdict);
                Assert.Equal(both ? Verdict.NeedsMeasuring : Verdict.Fits, HandRelations.RearRun.Judge([one.FitCode, other.FitCode]).Verdict);
                foreach (Hand rider in Hand.All)
                {
                    Assert.Equal(one == Hand.Either && other == rider && rider != Hand.Either ? Verdict.DoesNotFit : Verdict.Fits, HandRelations.Together.Judge([one.FitCode, other.FitCode, rider.FitCode]).Verdict);
                    bool free = one == Hand.Either || rider == Hand.Either || other != Hand.Either;
                    Assert.Equal(free || one == rider ? Verdict.Fits : Verdict.NeedsMeasuring, HandRelations.RearRunOfRider.Judge([one.FitCode, other.FitCode, rider.FitCode]).Verdict);
                }
            }
        }
    }

    [Fact]
    public void Every_cell_of_materials_is_as_the_rule_says()
    {
        foreach (Material material in Material.All)
        {
            bool carbon = material == Material.Carbon;
            Assert.Equal(carbon ? Verdict.Unsafe : Verdict.Fits, MaterialRelations.Preload.Judge([material.FitCode, SteererPreload.StarNut.FitCode, SteererKind.Threadless.FitCode]).Verdict);
            Assert.Equal(Verdict.Fits, MaterialRelations.Preload.Judge([material.FitCode, SteererPreload.Expander.FitCode, SteererKind.Threadless.FitCode]).Verdict);
            Assert.Equal(Verdict.DoesNotFit, MaterialRelations.Preload.Judge([material.FitCode, SteererPreload.Expander.FitCode, SteererKind.Threaded.FitCode]).Verdict);
            Assert.Equal(carbon ? Verdict.Unsafe : Verdict.Fits, MaterialRelations.PostInBinder.Judge([material.FitCode, Lugwork.Seating.SeatBinder.WeldedTabs.FitCode]).Verdict);
            Assert.Equal(Verdict.Fits, MaterialRelations.PostInBinder.Judge([material.FitCode, Lugwork.Seating.SeatBinder.Collar.FitCode]).Verdict);
            Assert.Equal(carbon ? Verdict.NeedsMeasuring : Verdict.Fits, HubBrakeRelations.ArmOnFrame.Judge([BrakeType.Coaster.FitCode, material.FitCode]).Verdict);
            Assert.Equal(Verdict.Fits, HubBrakeRelations.ArmOnFrame.Judge([HubBrakeRelations.NoBrake, material.FitCode]).Verdict);
        }
    }

    /// <summary>To the hundredth of a degree, so that neither a sprocket too few nor the nearer end is taken for the farther one.</summary>
    [Fact]
    public void The_chain_angle_is_told_from_the_farther_end()
    {
        // A rear end of 142 mm has 135 mm between its ends; twelve sprockets end where the study says.
        long hub = HubStandard.Parse("R142-12", null).FitCode;
        Assert.Equal("chain-angle-told", new ChainAngleRelation().Judge([FrontChainline.Parse("off-road-1x-52", null).FitCode, hub, SprocketSpacing.All.First(s => s.Speeds == 12).FitCode, 430_000_000]).Reason!.Id);
        Assert.Equal(Verdict.NeedsMeasuring, new ChainAngleRelation().Judge([0, hub, 1, 430_000_000]).Verdict);
        Assert.Equal("chain-angle-not-known", new ChainAngleRelation().Judge([FrontChainline.Parse("off-road-1x-52", null).FitCode, hub, 0, 430_000_000]).Reason!.Id);
    }
}
