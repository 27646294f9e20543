using Lugwork;
using Lugwork.Reading;

namespace ShopWeb.Pages;

/// <summary>What was read of a sheet, with the words it came from, before anything rests on it.</summary>
internal static class SheetPage
{
    public static IResult Of(string text, SpecSheet sheet)
    {
        string frame = PartText.Write(Slot.Frame, sheet.Frame);
        bool isRead = frame.Length > 0;
        return Layout.Page(isRead ? "What the sheet says" : "Nothing was read", Html.Of(
            $"""
            <h1>{(isRead ? "What the sheet says" : "Nothing was read")}</h1>
            {(isRead ? Read(sheet, frame) : Html.Of($"""<p role="alert">Nothing in the text names a size or a fitting of a frame. Write one thing a line, such as "Seatpost: 27.2 mm".</p>"""))}
            {Apart("Said in two ways", "The frame goes on without these; write the right one below.", sheet.Conflicts.Select(Said))}
            {Apart("In doubt", "The frame goes on without these.", sheet.Doubts.Select(Said))}
            {Apart("Not used", "Nothing was read from these words.", sheet.Leftovers)}
            <section><h2>Change the sheet</h2>{StartPage.SheetForm(text)}</section>
            """), isRead ? StatusCodes.Status200OK : StatusCodes.Status400BadRequest);
    }

    private static Html Read(SpecSheet sheet, string frame) => Html.Of(
        $"""
        <div class="wide" tabindex="0" role="region" aria-label="What was read"><table>
        <thead><tr><th scope="col">Field</th><th scope="col">Value</th><th scope="col">From the words</th></tr></thead>
        <tbody>{sheet.Values.Where(v => v.Slot == Slot.Frame).Select(Row)}</tbody></table></div>
        <p><a class="button" href="{Address(sheet, frame)}">Go on with this frame</a></p>
        """);

    /// <summary>What was assumed goes on with the frame, by the keys of its fields.</summary>
    private static string Address(SpecSheet sheet, string frame)
    {
        string assumed = string.Join(',', sheet.Values.Where(v => v.Slot == Slot.Frame && !v.Assumed.IsEmpty).Select(v => v.Field));
        return $"/build?frame={Uri.EscapeDataString(frame)}{(assumed.Length > 0 ? "&assumed=" + Uri.EscapeDataString(assumed) : "")}";
    }

    private static Html Row(SpecValue value) => Html.Of(
        $"""<tr><th scope="row">{Layout.Capital(Layout.Field(value.Field))}</th><td>{value.Key}{Html.If(!value.Assumed.IsEmpty, () => Html.Of($" <small>assumed: {string.Join("; ", value.Assumed)}</small>"))}</td><td><q>{value.Words}</q></td></tr>""");

    private static string Said(SpecConflict conflict) => $"{Layout.Capital(Layout.Field(conflict.Field))}: {string.Join(" or ", conflict.Values.Select(v => $"{v.Key}, from \u201c{v.Words}\u201d"))}";

    private static string Said(SpecDoubt doubt) =>
        $"{(doubt.Field.Length > 0 ? Layout.Capital(Layout.Field(doubt.Field)) + ": " : "")}{(doubt.Words.Length > 0 ? $"\u201c{doubt.Words}\u201d" : "")}{(doubt.Readings.IsEmpty ? "" : " can be " + string.Join(", ", doubt.Readings))} ({doubt.Reason})";

    private static Html Apart(string heading, string say, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        return Html.If(all.Length > 0, () => Html.Of($"<section><h2>{heading}</h2><p>{say}</p>{Layout.List(all)}</section>"));
    }
}
