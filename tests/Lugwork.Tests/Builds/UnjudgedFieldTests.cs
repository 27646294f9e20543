namespace Lugwork.Tests.Builds;

/// <summary>Fields that no joint reads: what lies outside the library in one of them keeps the whole bicycle from fitting, and its maker is asked.</summary>
public sealed class UnjudgedFieldTests
{
    public static TheoryData<string, string> Fields => new()
    {
        { "frame", "kind" }, { "frame", "made" }, { "frame", "cableGuides" },
        { "frontWheel", "body" }, { "frontWheel", "thread" }, { "frontWheel", "hubBrake" }, { "frontWheel", "washers" }, { "frontWheel", "sprocketChainline" }, { "frontWheel", "cassetteChainline" },
        { "frontWheel", "hubHoles" }, { "frontWheel", "rimHoles" },
        { "rearWheel", "hubBrake" }, { "rearWheel", "hubHoles" }, { "rearWheel", "rimHoles" },
        { "frontCaliper", "boltLength" },
        { "seatpost", "length" }, { "seatpost", "made" },
        { "handlebar", "width" }, { "handlebar", "made" },
        { "fork", "made" }, { "stem", "made" }, { "crankset", "made" },
        { "frontBrakeLever", "hoseLength" }, { "rearBrakeLever", "hoseLength" },
        { "rearShifter", "housingLength" }, { "frontShifter", "housingLength" }, { "dropper", "housingLength" },
        { "frontShifter", "actuation" }, { "frontShifter", "spacing" }, { "frontShifter", "withSprockets" },
    };

    /// <summary>A reading that no bicycle has, put in by code: a file with it is refused, so here it is asked about, at both ends of its bounds, and a whole bicycle with it never fits.</summary>
    [Theory]
    [InlineData("crankset", "toeClearance", "0.9", true)]
    [InlineData("crankset", "toeClearance", "1", false)]
    [InlineData("crankset", "toeClearance", "600", false)]
    [InlineData("crankset", "toeClearance", "601", true)]
    [InlineData("crankset", "toeClearance", "none", true)]
    [InlineData("crankset", "measuredChainline", "19", true)]
    [InlineData("crankset", "measuredChainline", "110", false)]
    [InlineData("crankset", "measuredChainline", "111", true)]
    [InlineData("pedals", "groundHeight", "9", true)]
    [InlineData("pedals", "groundHeight", "10", false)]
    [InlineData("pedals", "groundHeight", "400", false)]
    [InlineData("pedals", "groundHeight", "4000", true)]
    [InlineData("rearWheel", "cassetteChainline", "19", true)]
    [InlineData("rearWheel", "cassetteChainline", "20", false)]
    [InlineData("rearWheel", "cassetteChainline", "470", true)]
    [InlineData("seatpost", "binderGap", "none", false)]
    [InlineData("seatpost", "binderGap", "20", false)]
    [InlineData("seatpost", "binderGap", "21", true)]
    public void A_reading_past_its_bounds_that_is_put_in_by_code_is_asked_about(string slot, string field, string value, bool asked)
    {
        Slot of = Slot.All.Single(s => s.Key == slot);
        Build whole = Bench.WholeBicycle();
        Assert.True(PartForms.Of(of).TrySet(whole[of]!, field, value, Evidence.AsValue, out Part part, out _));
        FitReport report = whole.OfFile(part, of).Check();
        Assert.Equal(asked, report.ToMeasure.Any(m => m.What.Slot == of && m.What.Field == field && m.What.How.StartsWith("Measure again", StringComparison.Ordinal)));
        Assert.True(!asked || report.Verdict >= Verdict.NeedsMeasuring);
    }

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_maker_is_asked_about_each_of_them(string slot, string field)
    {
        Slot of = Slot.All.Single(s => s.Key == slot);
        List<SpecProblem> problems = [];
        Part part = PartForms.Of(of).ReadProperties([new(field, "not covered")], "", problems);
        Assert.Empty(problems);
        Build build = part is Frame frame ? Build.From(frame) : Build.From(Frame.Read("material steel")).With(part, of);
        FitReport report = build.Check();
        Assert.Contains(report.ToMeasure, r => r.What.Slot == of && r.What.Field == field && r.What.How.Contains("maker", StringComparison.Ordinal));
        Assert.NotEqual(Verdict.Fits, report.Verdict);
    }
}
