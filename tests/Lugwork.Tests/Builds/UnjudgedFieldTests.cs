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
