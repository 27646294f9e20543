using System.Collections.Immutable;
using System.ComponentModel;
using System.Text;
using System.Text.Json;
using Lugwork;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Reading;
using Lugwork.Seating;
using Lugwork.Tyres;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.EntityFrameworkCore;
using ShopWeb.Judging;
using ShopWeb.Stock;

namespace ShopWeb.Api;

/// <summary>What programs ask.</summary>
internal static class ShopApi
{
    public const int MostSheet = 20_000;
    private const int MostFound = 200;
    private const string FrameSays = "The frame: an article number, or its fields in short form, such as \"rear R142-12; seatTube 27.2; shell BSA-68\".";
    private const string PartSays = "A part of the cart, slot and article number: seatpost.23456. May be repeated.";

    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder api = routes.MapGroup("/api").ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status429TooManyRequests);
        api.MapPost("/sheet", Sheet).WithSummary("Reads the spec sheet of a frame.");
        api.MapGet("/needs", Needs).WithSummary("What every slot has to be, and how many articles go with it.");
        api.MapGet("/parts/{slot}", Parts).WithSummary("Articles of a slot that fit a cart, a page of them with reasons.").ProducesProblem(StatusCodes.Status404NotFound);
        api.MapGet("/report", Report).WithSummary("The verdict of a cart, joint by joint.");
        api.MapPost("/check", Check).Accepts<JsonElement>("application/json").WithSummary("The verdict of a build file.");
        #region sizes
        api.MapGet("/seatposts/{diameter}", (SeatpostDiameter diameter, ShopContext shop, CancellationToken cancellation) =>
            Found(shop, new(diameter, null, null, null, null), cancellation)).WithSummary("Seatposts of a diameter.");
        api.MapGet("/tyres/{size}", (TyreSize size, ShopContext shop, CancellationToken cancellation) =>
            Found(shop, new(null, size, null, null, null), cancellation)).WithSummary("Tyres of a size.");
        api.MapGet("/wheels", (HubStandard? hub, FreehubBody? body, ShopContext shop, CancellationToken cancellation) =>
            Found(shop, new(null, null, hub, body, null), cancellation)).WithSummary("Wheels by hub and freehub body.");
        #endregion
        api.MapGet("/frames", (BicycleKind? kind, ShopContext shop, CancellationToken cancellation) =>
            Found(shop, new(null, null, null, null, kind), cancellation, Slot.Frame)).WithSummary("Frames by kind of bicycle.");
        api.MapPost("/search", (SizeSearch search, ShopContext shop, CancellationToken cancellation) => Found(shop, search, cancellation)).WithSummary("Articles by sizes, the cheapest 200.");
    }

    private static Ok<SheetAnswer> Sheet(SheetRequest request)
    {
        if (request.Text is not { Length: > 0 and <= MostSheet })
        {
            throw ShopException.Bad("The sheet cannot be read.", "text", $"1 to {MostSheet} characters");
        }

        SpecSheet sheet = SpecSheet.ReadFrame(request.Text);
        return TypedResults.Ok(new SheetAnswer(PartText.Write(Slot.Frame, sheet.Frame), Told(sheet.Values), Assumed(sheet), Told(sheet.Conflicts), Told(sheet.Doubts), sheet.Leftovers));
    }

    public static async Task<Ok<List<NeedAnswer>>> Needs(
        [Description(FrameSays)] string frame, [Description(PartSays)] string[]? part, StockReader stock, CancellationToken cancellation)
    {
        (Cart cart, ImmutableDictionary<Slot, SlotCounts> counts) = await stock.Read(new(frame, part), count: true, cancellation);
        Refuse(cart.Gone);
        return TypedResults.Ok(cart.ToBuild().Needs()
            .Select(n => new NeedAnswer(n.Slot.Key, n.IsFilled, n.Rows, counts.TryGetValue(n.Slot, out SlotCounts? c) ? Counted(c) : null)).ToList());
    }

    public static async Task<Ok<PartsAnswer>> Parts(
        [Description("Key of the slot: seatpost")] string slot, [Description(FrameSays)] string frame, [Description(PartSays)] string[]? part,
        [Description("Fits (if left out), NeedsPart, NeedsMeasuring or NotJudged")] string? list, [Description("Page, from 1")] int? page, [Description("Rows of a page, 1 to 10,000; 50 if left out")] int? size,
        StockReader stock, CancellationToken cancellation)
    {
        (Slot place, Verdict verdict, int at, int rows) = Lists.Read(slot, list, page, size);
        (Cart cart, SlotList found) = await stock.List(new(frame, part), place, verdict, at, rows, cancellation);
        Refuse(cart.Gone);
        Dictionary<Reasons, int> reasons = new(ReferenceEqualityComparer.Instance);
        List<RowAnswer> listed = [];
        foreach (ListedArticle row in found.Rows)
        {
            reasons.TryAdd(row.Reasons, reasons.Count);
            listed.Add(new(row.Article.Id, row.Article.Name, row.Article.Price, row.Article.Delivery, reasons[row.Reasons]));
        }

        return TypedResults.Ok(new PartsAnswer(found.Version, place.Key, Lists.Word(verdict), at, found.Pages, Counted(found.Counts), listed,
            [.. reasons.OrderBy(r => r.Value).Select(r => new ReasonAnswer(r.Key.Lines, [.. r.Key.Cautions.Select(c => c.Text)]))]));
    }

    public static async Task<ContentHttpResult> Report(
        [Description(FrameSays)] string frame, [Description(PartSays)] string[]? part, StockReader stock, CancellationToken cancellation)
    {
        (Cart cart, _) = await stock.Read(new(frame, part), count: false, cancellation);
        Refuse(cart.Gone);
        return TypedResults.Text(cart.ToBuild().Check().ToJson(), "application/json");
    }

    private static async Task<ContentHttpResult> Check(HttpRequest request, CancellationToken cancellation)
    {
        using StreamReader reader = new(request.Body, new UTF8Encoding(false, throwOnInvalidBytes: true));
        string text;
        try
        {
            text = await reader.ReadToEndAsync(cancellation);
        }
        catch (DecoderFallbackException)
        {
            throw ShopException.Bad("The build file cannot be read.", "$", "UTF-8 is expected");
        }

        return BuildFile.TryRead(text, out Build? build, out ImmutableArray<SpecProblem> problems)
            ? TypedResults.Text(build!.Check().ToJson(), "application/json")
            : throw new ShopException(StatusCodes.Status400BadRequest, "The build file cannot be read.", [.. problems.Take(MostFound).Select(p => new ShopProblem(p.Where, $"{p.Reason}; expected {CartReader.Short(p.Expected)}"))]);
    }

    private static async Task<Ok<List<ArticleAnswer>>> Found(ShopContext shop, SizeSearch search, CancellationToken cancellation, Slot? slot = null)
    {
        IQueryable<Spec> specs = shop.Specs.AsNoTracking();
        specs = slot is null ? specs : specs.Where(s => s.Slot == slot.Key);
        specs = search.Post is null ? specs : specs.Where(s => s.Post == search.Post);
        specs = search.Tyre is null ? specs : specs.Where(s => s.Tyre == search.Tyre);
        specs = search.Hub is null ? specs : specs.Where(s => s.Hub == search.Hub);
        specs = search.Body is null ? specs : specs.Where(s => s.Body == search.Body);
        specs = search.Kind is null ? specs : specs.Where(s => s.Kind == search.Kind);
        var found = await shop.Articles.AsNoTracking().Join(specs, a => a.SpecId, s => s.Id, (a, s) => new { a, s })
            .OrderBy(p => p.a.Cents).ThenBy(p => p.a.Id).Take(MostFound).ToListAsync(cancellation);
        return TypedResults.Ok(found.ConvertAll(p => new ArticleAnswer(p.a.Id, p.a.Name, p.a.Price, p.a.Grams, p.a.Delivery, p.s.Text, p.s.Post, p.s.Tyre, p.s.Hub, p.s.Body, p.s.Kind)));
    }

    private static void Refuse(ImmutableArray<long> gone)
    {
        if (!gone.IsEmpty)
        {
            throw new ShopException(StatusCodes.Status404NotFound, "A part of the cart is no longer on the shelf.", [.. gone.Select(id => new ShopProblem("part", $"article {id} is not there"))]);
        }
    }

    private static List<AssumedAnswer> Assumed(SpecSheet sheet) => [.. sheet.Values.Where(v => !v.Assumed.IsEmpty).Select(v => new AssumedAnswer(v.Field, string.Join("; ", v.Assumed)))];

    private static CountsAnswer Counted(SlotCounts c) => new(c.Fits, c.NeedsPart, c.NeedsMeasuring, c.NotJudged, c.DoNotFit);

    private static List<string> Told<T>(ImmutableArray<T> things) => [.. things.Select(t => t!.ToString()!)];
}
