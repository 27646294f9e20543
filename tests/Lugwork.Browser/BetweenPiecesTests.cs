using System.Net;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopWeb;

namespace Lugwork.Browser;

/// <summary>An answer whose time is over between two of its pieces: the writer of JSON gives up without a word there, and the server sends what was written as if it were all.</summary>
public sealed class BetweenPiecesTests
{
    [Fact]
    public async Task What_ends_between_two_pieces_is_broken_off()
    {
        await using WebApplication shop = await Serve(breaksOff: true);
        using HttpClient client = new() { BaseAddress = new(shop.Urls.First()) };
        Exception broken = await Assert.ThrowsAnyAsync<Exception>(() => client.GetStringAsync("/cut"));
        Assert.True(broken is HttpRequestException or IOException, broken.ToString());
        Assert.Equal("[1,2,3]", await client.GetStringAsync("/whole"));
    }

    /// <summary>So it is without the break: what comes ends like an answer, and is none.</summary>
    [Fact]
    public async Task Without_the_break_it_would_pass_for_a_whole_answer()
    {
        await using WebApplication shop = await Serve(breaksOff: false);
        using HttpClient client = new() { BaseAddress = new(shop.Urls.First()) };
        using HttpResponseMessage answer = await client.GetAsync("/cut");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("]", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static async Task<WebApplication> Serve(bool breaksOff)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        WebApplication app = builder.Build();

        // The time of a request is over when this says so, and not when a clock does.
        app.Use((http, next) =>
        {
            http.Items["over"] = new CancellationTokenSource();
            http.RequestAborted = ((CancellationTokenSource)http.Items["over"]!).Token;
            return next(http);
        });
        if (breaksOff)
        {
            app.Use(CutOff.Break);
        }

        app.MapGet("/cut", (HttpContext http) => http.Response.WriteAsJsonAsync(Pieces(http, isCut: true, http.RequestAborted)));
        app.MapGet("/whole", (HttpContext http) => http.Response.WriteAsJsonAsync(Pieces(http, isCut: false, http.RequestAborted)));
        await app.StartAsync();
        return app;
    }

    private static async IAsyncEnumerable<int> Pieces(HttpContext http, bool isCut, [EnumeratorCancellation] CancellationToken over)
    {
        yield return 1;
        yield return 2;
        if (isCut)
        {
            await http.Response.Body.FlushAsync(over);
            await ((CancellationTokenSource)http.Items["over"]!).CancelAsync();
            over.ThrowIfCancellationRequested();
        }

        await Task.CompletedTask;
        yield return 3;
    }
}
