using System.Data.Common;
using Lugwork;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Microsoft.Extensions.Options;

namespace ShopWeb.Stock;

/// <summary>An invented delivery every so often, if it is asked for: the last one is sold out and a new one is there, in one step.</summary>
internal sealed class Deliveries(IServiceScopeFactory scopes, IOptions<ShopOptions> options, ILogger<Deliveries> log) : BackgroundService
{
    /// <summary>Articles of a delivery: posts of one size.</summary>
    public const int Size = 200;
    private const long FirstNumber = 1_000_001;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (options.Value.DeliverEvery <= TimeSpan.Zero)
        {
            return;
        }

        using PeriodicTimer timer = new(options.Value.DeliverEvery);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                await using AsyncServiceScope scope = scopes.CreateAsyncScope();
                await Deliver(scope.ServiceProvider.GetRequiredService<ShopContext>(), stoppingToken);
            }
            catch (DbUpdateConcurrencyException)
            {
                log.LogInformation("another delivery came first; this one waits for its next turn");
            }
            catch (Exception e) when (e is DbException or DbUpdateException)
            {
                log.LogError(e, "a delivery was not written; the stock is as it was");
            }
        }
    }

    private static async Task Deliver(ShopContext shop, CancellationToken cancellation)
    {
        await using IDbContextTransaction transaction = await shop.Database.BeginTransactionAsync(cancellation);
        StockState state = await shop.States.SingleAsync(cancellation);
        long delivery = ++state.Version;
        await shop.SaveChangesAsync(cancellation);
        await shop.Articles.Where(a => a.Delivery > 0).ExecuteDeleteAsync(cancellation);
        DbConnection connection = shop.Database.GetDbConnection();

        string text = $"diameter 27.2; length {300 + (delivery % 8 * 10)}; mark 90; insertion 120; material aluminium";
        Spec spec = Spec.Of(Slot.Seatpost, text, PartText.Read(Slot.Seatpost, text));
        if (!await shop.Specs.AnyAsync(s => s.Id == spec.Id, cancellation))
        {
            await using SpecWriter specs = new(shop, transaction.GetDbTransaction());
            await specs.Add([Slot.Seatpost], text);
            await specs.Finish();
        }

        await using BulkInsert articles = new(connection, transaction.GetDbTransaction(), "article", nameof(Article.Id), nameof(Article.SpecId), nameof(Article.Name), nameof(Article.Cents), nameof(Article.Grams), nameof(Article.Delivery));
        for (int i = 0; i < Size; i++)
        {
            long number = FirstNumber + (delivery * Size) + i;
            await articles.Add(number, spec.Id, $"Seatpost 27.2, delivery {delivery}, art. {number}", 3_990L + i, 280, delivery);
        }

        await articles.Finish();
        await transaction.CommitAsync(cancellation);
    }
}
