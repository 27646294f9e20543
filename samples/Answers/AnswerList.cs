namespace Answers;

/// <summary>Every piece of code that a page shows, by file and region, as the pages name it.</summary>
internal static class AnswerList
{
    public static IReadOnlyDictionary<string, Action> All { get; } = new Dictionary<string, Action>(StringComparer.Ordinal)
    {
        ["TenLines.cs#ten-lines"] = TenLines.Run,
        ["PartOnFrame.cs#post"] = PartOnFrame.Post,
        ["PartOnFrame.cs#why"] = PartOnFrame.Why,
        ["PartOnFrame.cs#typed"] = PartOnFrame.Typed,
        ["PartOnFrame.cs#measure"] = PartOnFrame.Measure,
        ["NeedsOfFrame.cs#slot"] = NeedsOfFrame.OfSlot,
        ["NeedsOfFrame.cs#first"] = NeedsOfFrame.AskFirst,
        ["NeedsOfFrame.cs#small"] = NeedsOfFrame.Small,
        ["SpecSheets.cs#sheet"] = SpecSheets.Sheet,
        ["SpecSheets.cs#next"] = SpecSheets.AskNext,
        ["SpecSheets.cs#line"] = SpecSheets.Line,
        ["BuildFiles.cs#read"] = BuildFiles.ReadFile,
        ["BuildFiles.cs#problems"] = BuildFiles.Problems,
        ["BuildFiles.cs#write"] = BuildFiles.WriteFile,
        ["CarriedOver.cs#moves"] = CarriedOver.Moves,
        ["CarriedOver.cs#cost"] = CarriedOver.Cost,
        ["CatalogueSearch.cs#search"] = CatalogueSearch.Search,
        ["CatalogueSearch.cs#frames"] = CatalogueSearch.FramesFor,
        ["CatalogueSearch.cs#keys"] = CatalogueSearch.Keys,
        ["WorkInOrder.cs#steps"] = WorkInOrder.Steps,
        ["WorkInOrder.cs#step"] = WorkInOrder.OneStep,
        ["WorkInOrder.cs#why"] = WorkInOrder.WhyFirst,
        ["PicturesOfBuilds.cs#post"] = PicturesOfBuilds.Post,
        ["GearsAndGeometry.cs#gears"] = GearsAndGeometry.Gears,
        ["GearsAndGeometry.cs#chain"] = GearsAndGeometry.Chain,
        ["GearsAndGeometry.cs#geometry"] = GearsAndGeometry.LongerFork,
        ["GearsAndGeometry.cs#check"] = GearsAndGeometry.Check,
        ["KnownAndUnknown.cs#known"] = KnownAndUnknown.KnownStates,
        ["KnownAndUnknown.cs#matters"] = KnownAndUnknown.Matters,
        ["KnownAndUnknown.cs#waive"] = KnownAndUnknown.Waive,
        ["ValuesAsText.cs#json"] = ValuesAsText.Json,
        ["ValuesAsText.cs#refused"] = ValuesAsText.Refused,
    };
}
