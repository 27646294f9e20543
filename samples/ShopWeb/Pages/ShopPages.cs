using System.Collections.Immutable;
using Lugwork;
using Lugwork.Drawing;
using Lugwork.Reading;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using ShopWeb.Api;
using ShopWeb.Judging;
using ShopWeb.Stock;

namespace ShopWeb.Pages;

/// <summary>What people look at. Every page is whole as the server sends it; there is no script.</summary>
internal static class ShopPages
{
    private const int ShownFrames = 12;

    private const string Icon = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><circle cx="16" cy="16" r="11" fill="none" stroke="#8a4b08" stroke-width="4"/><circle cx="16" cy="16" r="3" fill="#8a4b08"/></svg>""";

    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder pages = routes.MapGroup("").ExcludeFromDescription();
        pages.MapGet("/", Start);
        // What the form says is read and told, and nothing is changed by it: there is nothing that another site could make a visitor do.
        pages.MapPost("/sheet", Sheet).DisableAntiforgery();
        pages.MapGet("/build", Bench);
        pages.MapGet("/build.json", File);
        pages.MapGet("/parts/{slot}", Parts);
        pages.MapGet("/drawings/{number:int}.svg", Drawing);
        pages.MapGet("/shop.css", (HttpContext http) => Kept(http, Css, "text/css; charset=utf-8"));
        pages.MapGet("/icon.svg", (HttpContext http) => Kept(http, Icon, "image/svg+xml"));
    }

    private static string Css { get; } = Embedded();

    private static async Task<IResult> Start(BicycleKind? kind, ShopContext shop, IOptions<ShopOptions> options, CancellationToken cancellation)
    {
        BicycleKind shown = kind ?? options.Value.FirstKind;
        List<Article> frames = await shop.Articles.AsNoTracking().Join(shop.Specs.Where(s => s.Kind == shown && s.Slot == Slot.Frame.Key), a => a.SpecId, s => s.Id, (a, s) => a)
            .OrderBy(a => a.Cents).ThenBy(a => a.Id).Take(ShownFrames).ToListAsync(cancellation);
        List<BicycleKind> kinds = await shop.Specs.Where(s => s.Kind != null).Select(s => s.Kind!).Distinct().ToListAsync(cancellation);
        return StartPage.Of(frames, shown, [.. kinds.OrderBy(k => k.FitCode)]);
    }

    private static IResult Sheet([FromForm] string? sheet)
    {
        if (sheet is { Length: > ShopApi.MostSheet })
        {
            throw ShopException.Bad("The sheet is too long.", "sheet", $"at most {ShopApi.MostSheet:#,0} characters");
        }

        return SheetPage.Of(sheet ?? "", SpecSheet.ReadFrame(sheet ?? ""));
    }

    private static async Task<IResult> Bench(string? frame, string[]? part, string? assumed, StockReader stock, CancellationToken cancellation)
    {
        (Cart cart, ImmutableDictionary<Slot, SlotCounts> counts) = await stock.Read(new(frame, part, assumed), count: true, cancellation);
        return BuildPage.Of(cart, counts);
    }

    private static async Task<IResult> File(string? frame, string[]? part, string? assumed, StockReader stock, CancellationToken cancellation)
    {
        (Cart cart, _) = await stock.Read(new(frame, part, assumed), count: false, cancellation);
        return Results.Text(BuildFile.Write(cart.ToBuild()), "application/json");
    }

    private static async Task<IResult> Parts(string slot, string? frame, string[]? part, string? assumed, string? list, int? page, int? size, StockReader stock, CancellationToken cancellation)
    {
        (Slot place, Verdict verdict, int at, int rows) = Lists.Read(slot, list, page, size);
        (Cart cart, SlotList found) = await stock.List(new(frame, part, assumed), place, verdict, at, rows, cancellation);
        return PartsPage.Of(cart, found);
    }

    private static async Task<IResult> Drawing(int number, string? frame, string[]? part, string? assumed, HttpContext http, StockReader stock, CancellationToken cancellation)
    {
        (Cart cart, _) = await stock.Read(new(frame, part, assumed), count: false, cancellation);
        ImmutableArray<LineDrawing> drawings = Drawings.All(cart.ToBuild());
        if (number < 0 || number >= drawings.Length)
        {
            throw ShopException.Missing("There is no such drawing.");
        }

        // A drawing brings its own style and nothing else; this holds for the drawing alone, not for the page around it.
        http.Response.Headers.ContentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'";
        return Results.Text(drawings[number].ToSvg(), "image/svg+xml");
    }

    private static IResult Kept(HttpContext http, string text, string type)
    {
        http.Response.Headers.CacheControl = "public, max-age=3600";
        return Results.Text(text, type);
    }

    private static string Embedded()
    {
        using Stream stream = typeof(ShopPages).Assembly.GetManifestResourceStream("shop.css")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
