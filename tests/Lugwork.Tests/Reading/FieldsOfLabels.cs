namespace Lugwork.Tests.Reading;

/// <summary>The labels of the corpus are older than some names of slots and fields, and stay as they were written: here is what their field is called now.</summary>
internal static class FieldsOfLabels
{
    private static readonly Dictionary<string, string> Slots = new(StringComparer.Ordinal)
    {
        ["shifter"] = "rearShifter",
        ["frontBrake"] = "frontCaliper",
        ["rearBrake"] = "rearCaliper",
        ["frontTube"] = "frontInnerTube",
        ["rearTube"] = "rearInnerTube",
        ["frontLever"] = "frontBrakeLever",
        ["rearLever"] = "rearBrakeLever",
        ["frontValve"] = "frontTubelessValve",
        ["rearValve"] = "rearTubelessValve",
        ["frontAxle"] = "frontThruAxle",
        ["rearAxle"] = "rearThruAxle",
        ["frontNuts"] = "frontAxleNuts",
        ["rearNuts"] = "rearAxleNuts",
    };

    private static readonly Dictionary<string, string> Fields = new(StringComparer.Ordinal)
    {
        ["frame.rearSlot"] = "rearDropout",
        ["frame.frontMount"] = "frontDerailleurMount",
        ["frame.guideTabs"] = "chainGuideTabs",
        ["frame.forkOfDesign"] = "designAxleToCrown",
        ["frame.frontWheelOf"] = "designFrontBeadSeat",
        ["frame.rearWheelOf"] = "designRearBeadSeat",
        ["crankset.ringLine"] = "measuredChainline",
        ["crankset.toeRoom"] = "toeClearance",
        ["crankset.rings"] = "speeds",
        ["cassette.sprockets"] = "speeds",
        ["rider.system"] = "systemMass",
        ["rider.withLuggage"] = "massWithLuggage",
    };

    public static string Today(string field)
    {
        string[] halves = field.Split('.');
        string slot = Slots.GetValueOrDefault(halves[0], halves[0]);
        string name = Fields.GetValueOrDefault(field) ?? (halves[1] is "sprocketLine" or "cassetteLine" ? halves[1].Replace("Line", "Chainline", StringComparison.Ordinal) : halves[1]);
        return $"{slot}.{name}";
    }
}
