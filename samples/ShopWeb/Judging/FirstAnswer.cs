using System.Diagnostics;
using System.Globalization;
using Lugwork;
using Microsoft.EntityFrameworkCore;
using ShopWeb.Api;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>
/// Answers once for a frame of the stock before anybody asks, beside the start, which does not wait for it: the first answer of a process
/// reads every spec, makes the tables of the library and has the code compiled, and takes a hundred times as long as the next. Where it
/// fails it says so, and the shop goes on: the first customer waits, as without it.
/// </summary>
internal sealed class FirstAnswer(IServiceScopeFactory scopes, SpecShelf shelf, ILogger<FirstAnswer> log) : BackgroundService
{
    private const int FramesTried = 20;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        Stopwatch watch = Stopwatch.StartNew();
        try
        {
            if (await Prepare(stoppingToken) is { } frame)
            {
                log.LogInformation("the first answers were prepared with frame {Frame} in {Seconds:0.0} s; the shelf holds {Specs} specs", frame, watch.Elapsed.TotalSeconds, shelf.Count);
            }
            else
            {
                log.LogWarning("the first answers were not prepared: no frame of the stock can be read");
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            log.LogInformation("the shop ends before the first answers were prepared");
        }
        catch (Exception e)
        {
            // Whatever it is, the first customer who asks for the same meets it again and is told.
            log.LogError(e, "the first answers could not be prepared; the first customer waits for them");
        }
    }

    /// <summary>Needs, report and a list, each asked as the API asks them and written as it writes them, in a scope of its own: by the number of a frame, and by its text.</summary>
    /// <returns>The frame; null where there is none that can be read.</returns>
    private async Task<long?> Prepare(CancellationToken cancellation)
    {
        (long Id, Part Part)? found = null;
        await In(async services => found = await Frame(services.GetRequiredService<ShopContext>(), cancellation));
        if (found is not { } frame)
        {
            return null;
        }

        foreach (string asked in new[] { frame.Id.ToString(CultureInfo.InvariantCulture), PartText.Write(Slot.Frame, frame.Part) })
        {
            await Answer(stock => ShopApi.Needs(asked, null, stock, cancellation));
            await Answer(stock => ShopApi.Parts(Slot.Seatpost.Key, asked, null, null, null, null, stock, cancellation));
            await Answer(stock => ShopApi.Report(asked, null, stock, cancellation));
        }

        return frame.Id;
    }

    private Task Answer<TResult>(Func<StockReader, Task<TResult>> ask)
        where TResult : IResult =>
        In(async services => await (await ask(services.GetRequiredService<StockReader>())).ExecuteAsync(new DefaultHttpContext { RequestServices = services }));

    private static async Task<(long, Part)?> Frame(ShopContext shop, CancellationToken cancellation)
    {
        var frames = await shop.Articles.AsNoTracking()
            .Join(shop.Specs.Where(s => s.Slot == Slot.Frame.Key), a => a.SpecId, s => s.Id, (a, s) => new { a.Id, Spec = s })
            .OrderBy(f => f.Id).Take(FramesTried).ToListAsync(cancellation);
        return frames.Select(f => f.Spec.Part() is { } part ? (f.Id, part) : ((long, Part)?)null).FirstOrDefault(f => f is not null);
    }

    private async Task In(Func<IServiceProvider, Task> act)
    {
        await using AsyncServiceScope scope = scopes.CreateAsyncScope();
        await act(scope.ServiceProvider);
    }
}
