namespace Lugwork.PublishedTables;

/// <summary>Used parts: published limits of wear and what is said of crashes, each with its source.</summary>
/// <remarks>The pages disagree on how long bars and stems of light alloy last without a fall, two years or ten: no age is judged, both are told in the caution.</remarks>
public sealed class UsedPartsChecks
{
    private const string ChainLimits = "When to replace a bike chain (quotes tool and component makers); waxtrack.app";
    private const string ChainRuler = "Measuring chain wear; pushbikes.org.uk";
    private const string RotorFaq = "Technical FAQ on rotors; VeloNews";
    private const string WornRotors = "Rear disc below 1.5mm minimum; EMTB Forums";
    private const string RimWear = "Rim wear; wheellab.cc";
    private const string RimForum = "How Do I Check For Rim Wear; cyclechat.net";
    private const string CarbonManual = "Operation Manual, chapter 1: Guide to Safe On-and-Off Road Operation (carbon fiber composite); Gary Fisher";
    private const string CarbonFrame = "Inspection & Crash Damage Of Carbon Frames/Forks (owner's manual supplement); Cannondale";
    private const string AfterFall = "Is this advice still relevant? (quotes a parts catalogue of 2013); thorncyclesforum.co.uk";
    private const string AlloyLife = "Replacement for safety reasons; zedler.de";
    private const string UsedBicycle = "Tips for buying used road bikes, part 2: how to inspect a used bike before you buy; roadbikerider.com";
    private const string AsASet = "What to look for when buying a used road bike; daccordicycles.com";

    private static Fit Judge(string joint, params (string Slot, string Text)[] parts)
    {
        Dictionary<string, string> all = new() { ["frame"] = "" };
        foreach ((string slot, string text) in parts)
        {
            all[slot] = text;
        }

        string json = "{\"parts\": {" + string.Join(", ", all.Select(p => $"\"{p.Key}\": {{{p.Value}}}")) + "}}";
        return BuildFile.Read(json).Check().Findings.Single(f => f.Joint!.Id == joint);
    }

    /// <summary>One page gives bars and stems of light alloy two years, another names up to ten: both are told beside the date, and no age is judged.</summary>
    [Theory]
    [InlineData(AfterFall, "2012")]
    [InlineData(AlloyLife, "2012-05")]
    public void An_age_is_told_with_what_the_pages_say_and_judged_by_none(string source, string made)
    {
        Build build = Build.From(new Frame()).With(new Stem { Material = Known<Material>.Of(Material.Aluminium), Made = Known<DateMade>.Of(DateMade.Parse(made, null)) });
        InspectionPoint point = build.ToInspect().Single();
        Assert.Contains(made, point.What, StringComparison.Ordinal);
        Assert.Contains("two to ten years", point.What, StringComparison.Ordinal);
        Assert.Contains(point.Sources, s => s.Title == source.Split(';')[0]);
        Assert.DoesNotContain(build.Check().Findings, f => f.Joint!.IsOfCondition);
    }

    /// <summary>24 pitches of a new chain are 12 in, 304.8 mm; 1/16 in more is 0.52 %.</summary>
    [Theory]
    [InlineData(ChainRuler, "9", 304.8, Verdict.Fits)]
    [InlineData(ChainLimits, "9", 307.09, Verdict.DoesNotFit)]
    [InlineData(ChainLimits, "10", 307.09, Verdict.DoesNotFit)]
    [InlineData(ChainLimits, "10", 306.4, Verdict.Fits)]
    [InlineData(ChainLimits, "11", 306.4, Verdict.DoesNotFit)]
    [InlineData(ChainLimits, "12", 306.33, Verdict.DoesNotFit)]
    [InlineData(ChainLimits, "1/8", 307.09, Verdict.Fits)]
    [InlineData(ChainLimits, "1/8", 307.9, Verdict.DoesNotFit)]
    public void A_chain_is_worn_out_at_the_printed_elongation(string source, string chain, double over, Verdict verdict)
    {
        Assert.NotEmpty(source);
        Assert.Equal(verdict, Judge("chain-elongation", ("chain", FormattableString.Invariant($"\"size\": \"{chain}\", \"over24Pitches\": {over}"))).Verdict);
    }

    [Theory]
    [InlineData(RotorFaq, "a", 1.8, 1.8, Verdict.Fits)]
    [InlineData(RotorFaq, "a, worn", 1.79, 1.8, Verdict.Unsafe)]
    [InlineData(RotorFaq, "b floating", 1.4, 1.4, Verdict.Fits)]
    [InlineData(RotorFaq, "b floating, worn", 1.39, 1.4, Verdict.Unsafe)]
    [InlineData(RotorFaq, "c", 1.52, 1.52, Verdict.Fits)]
    [InlineData(RotorFaq, "c, worn", 1.5, 1.52, Verdict.Unsafe)]
    [InlineData(WornRotors, "d", 1.5, 1.5, Verdict.Fits)]
    [InlineData(WornRotors, "d, worn", 1.48, 1.5, Verdict.Unsafe)]
    public void A_rotor_may_wear_to_what_is_printed_for_its_family(string source, string family, double thickness, double mark, Verdict verdict)
    {
        Assert.NotEmpty(source + family);
        Assert.Equal(verdict, Judge("front-rotor-wear", ("frontRotor", FormattableString.Invariant($"\"thickness\": {thickness}, \"leastThickness\": {mark}"))).Verdict);
    }

    [Theory]
    [InlineData(RimWear, 1.0, Verdict.Unsafe)]
    [InlineData(RimWear, 1.1, Verdict.Fits)]
    [InlineData(RimForum, 1.0, Verdict.Unsafe)]
    [InlineData(RimForum, 0.7, Verdict.Unsafe)]
    public void A_rim_is_replaced_at_the_printed_wall(string source, double wall, Verdict verdict)
    {
        Assert.NotEmpty(source);
        Assert.Equal(verdict, Judge("rear-rim-wear", ("rearWheel", FormattableString.Invariant($"\"rimWall\": {wall}, \"brakeTrack\": \"aluminium\""))).Verdict);
    }

    [Theory]
    [InlineData(CarbonManual, "frame", "material", "carbon", "crashed", Verdict.Unsafe)]
    [InlineData(CarbonFrame, "fork", "material", "carbon", "crashed", Verdict.Unsafe)]
    [InlineData(CarbonFrame, "frame", "material", "carbon", "damaged", Verdict.Unsafe)]
    [InlineData(CarbonManual, "frame", "material", "steel", "crashed", Verdict.NeedsMeasuring)]
    [InlineData(AfterFall, "handlebar", "material", "aluminium", "crashed", Verdict.Unsafe)]
    [InlineData(AfterFall, "stem", "material", "aluminium", "crashed", Verdict.Unsafe)]
    [InlineData(UsedBicycle, "frame", "material", "aluminium", "used", Verdict.NeedsMeasuring)]
    public void What_the_pages_say_of_a_part_that_was_hit_or_used_is_what_is_judged(string source, string slot, string field, string material, string condition, Verdict verdict)
    {
        Assert.NotEmpty(source);
        Fit fit = Judge($"condition-of-{slot}", (slot, $"\"{field}\": \"{material}\", \"condition\": \"{PartCondition.Parse(condition, null).FitKey}\""));
        Assert.Equal(verdict, fit.Verdict);
        Assert.NotEmpty(fit.Cautions);
    }

    [Fact]
    [PrintedIn(AsASet)]
    public void A_new_chain_does_not_go_on_worn_sprockets_alone()
    {
        Fit fit = Judge("drive-worn-as-a-set", ("chain", "\"condition\": \"new\""), ("cassette", "\"condition\": \"worn\""), ("crankset", "\"condition\": \"inspected\""));
        Assert.Equal(Verdict.DoesNotFit, fit.Verdict);
        Assert.Contains(fit.Remedies, r => r.What.Contains("as a set", StringComparison.Ordinal));
    }
}
