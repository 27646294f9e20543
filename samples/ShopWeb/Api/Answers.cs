using Lugwork;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Tyres;

namespace ShopWeb.Api;

/// <summary>An article, with the sizes that are known of it.</summary>
/// <param name="Number">Article number.</param>
/// <param name="Name">Its name.</param>
/// <param name="Price">Euros.</param>
/// <param name="Grams">What it weighs.</param>
/// <param name="Delivery">The delivery that it came with; 0 for the first stock.</param>
/// <param name="Fields">Its interfaces in short form.</param>
/// <param name="Post">Of a seatpost, its diameter.</param>
/// <param name="Tyre">Of a tyre, its size.</param>
/// <param name="Hub">Of a wheel, its hub.</param>
/// <param name="Body">Of a rear wheel, its freehub body.</param>
/// <param name="Kind">Of a frame, the kind of bicycle.</param>
internal sealed record ArticleAnswer(
    long Number, string Name, decimal Price, int Grams, long Delivery, string Fields, SeatpostDiameter? Post, TyreSize? Tyre, HubStandard? Hub, FreehubBody? Body, BicycleKind? Kind);

/// <summary>Sizes to search by; what is left out does not matter.</summary>
/// <param name="Post">Diameter of a seatpost.</param>
/// <param name="Tyre">Size of a tyre.</param>
/// <param name="Hub">Hub of a wheel.</param>
/// <param name="Body">Freehub body of a wheel.</param>
/// <param name="Kind">Kind of a frame.</param>
internal sealed record SizeSearch(SeatpostDiameter? Post, TyreSize? Tyre, HubStandard? Hub, FreehubBody? Body, BicycleKind? Kind);

/// <summary>What one slot has to be.</summary>
/// <param name="Slot">Key of the slot.</param>
/// <param name="IsFilled">There is a part in it.</param>
/// <param name="Lines">A line for each thing.</param>
/// <param name="Articles">How many articles go with the cart.</param>
internal sealed record NeedAnswer(string Slot, bool IsFilled, IReadOnlyList<string> Lines, CountsAnswer? Articles);

/// <summary>How many articles of a slot have which verdict.</summary>
/// <param name="Fits">They fit as they are.</param>
/// <param name="NeedsPart">They fit with another part or shop work.</param>
/// <param name="NeedsMeasuring">Something has to be measured or asked first.</param>
/// <param name="NotJudged">They meet nothing that is in the cart yet.</param>
/// <param name="DoNotFit">They do not fit, or would not be safe.</param>
internal sealed record CountsAnswer(int Fits, int NeedsPart, int NeedsMeasuring, int NotJudged, int DoNotFit);

/// <summary>A page of the articles of a slot that have one verdict beside the cart, all of one state of the stock.</summary>
/// <param name="Version">The state of the stock.</param>
/// <param name="Slot">Key of the slot.</param>
/// <param name="List">Fits, NeedsPart, NeedsMeasuring or NotJudged, as a report spells verdicts.</param>
/// <param name="Page">From 1.</param>
/// <param name="Pages">How many there are.</param>
/// <param name="Counts">How many articles have which verdict.</param>
/// <param name="Rows">The page, cheapest first.</param>
/// <param name="Reasons">Why, by the number that the rows name: articles that say the same share theirs.</param>
internal sealed record PartsAnswer(long Version, string Slot, string List, int Page, int Pages, CountsAnswer Counts, IReadOnlyList<RowAnswer> Rows, IReadOnlyList<ReasonAnswer> Reasons);

/// <summary>An article of a list.</summary>
/// <param name="Number">Article number.</param>
/// <param name="Name">Its name.</param>
/// <param name="Price">Euros.</param>
/// <param name="Delivery">The delivery that it came with; 0 for the first stock.</param>
/// <param name="Reason">Which of the reasons.</param>
internal sealed record RowAnswer(long Number, string Name, decimal Price, long Delivery, int Reason);

/// <summary>Why parts have their verdict.</summary>
/// <param name="Lines">A line for each thing to say.</param>
/// <param name="Cautions">Warnings that go with it.</param>
internal sealed record ReasonAnswer(IReadOnlyList<string> Lines, IReadOnlyList<string> Cautions);

/// <summary>A spec sheet to read.</summary>
/// <param name="Text">The sheet, as it is printed; at most 20,000 characters.</param>
internal sealed record SheetRequest(string Text);

/// <summary>What a sheet says of a frame.</summary>
/// <param name="Frame">The frame in short form, for the parameter "frame"; empty where nothing was read.</param>
/// <param name="Read">What was read, with the words it came from.</param>
/// <param name="Assumed">What of it was assumed, since the sheet does not say it in so many words: what fits rests on it.</param>
/// <param name="Conflicts">What is said in two ways.</param>
/// <param name="Doubts">What can be several things, or was refused.</param>
/// <param name="Leftovers">Words from which nothing was read.</param>
internal sealed record SheetAnswer(string Frame, IReadOnlyList<string> Read, IReadOnlyList<AssumedAnswer> Assumed, IReadOnlyList<string> Conflicts, IReadOnlyList<string> Doubts, IReadOnlyList<string> Leftovers);

/// <summary>Something that was assumed.</summary>
/// <param name="Field">Key of the field of the frame.</param>
/// <param name="What">What was assumed.</param>
internal sealed record AssumedAnswer(string Field, string What);
