using System.Data.Common;
using Lugwork;
using Lugwork.Catalogues;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace ShopWeb.Stock;

/// <summary>The invented stock: fifty thousand articles drawn from a seed, written whole or not at all.</summary>
internal static class FirstStock
{
    private const long FirstNumber = 10_001;

    public static IEnumerable<ArticleRow> Rows => [.. FrameRows.All, .. WheelRows.All, .. BodyRows.All];

    /// <summary>Writes it where there is none yet.</summary>
    /// <returns>How many articles were written.</returns>
    public static async Task<int> Fill(ShopContext shop, int seed, CancellationToken cancellation = default)
    {
        await shop.TakeTurn(cancellation);
        try
        {
            await shop.Prepare(cancellation);
            return await Write(shop, seed, cancellation);
        }
        finally
        {
            await shop.EndTurn();
        }
    }

    private static async Task<int> Write(ShopContext shop, int seed, CancellationToken cancellation)
    {
        // Asked inside the transaction: of two processes that start together the second sees what the first wrote.
        await using IDbContextTransaction transaction = await shop.Database.BeginTransactionAsync(cancellation);
        if (await shop.States.SingleOrDefaultAsync(cancellation) is { } state)
        {
            await Relation.Renew(shop, state, transaction, cancellation);
            return 0;
        }

        DbConnection connection = shop.Database.GetDbConnection();
        await using BulkInsert articles = new(connection, transaction.GetDbTransaction(), "article", nameof(Article.Id), nameof(Article.SpecId), nameof(Article.Name), nameof(Article.Cents), nameof(Article.Grams), nameof(Article.Delivery));
        await using SpecWriter specs = new(shop, transaction.GetDbTransaction());
        ArticleDraw draw = new(seed);
        long number = FirstNumber;
        foreach (ArticleRow row in Rows)
        {
            Slot[] slots = [.. row.Slots.Split(' ').Select(key => Slot.Find(key)!)];
            for (int i = 0; i < row.Count; i++)
            {
                (string name, string text) = draw.From(row);
                long spec = await specs.Add(slots, text);
                long cents = ((long)(row.Price * (60 + draw.Below(160))) / 100 * 100) + 90;
                await articles.Add(number, spec, $"{name}, art. {number}", cents, row.Grams * (85 + draw.Below(40)) / 100, 0L);
                number++;
            }
        }

        await articles.Finish();
        await specs.Finish();
        shop.States.Add(new StockState { Id = 1, Seed = seed, Library = Relation.Library });
        await shop.SaveChangesAsync(cancellation);
        await transaction.CommitAsync(cancellation);
        return (int)(number - FirstNumber);
    }
}

/// <summary>Specs and their rows of the relation, each once.</summary>
internal sealed class SpecWriter(ShopContext shop, DbTransaction transaction) : IAsyncDisposable
{
    private static readonly string[] Sizes = [nameof(Spec.Post), nameof(Spec.Tyre), nameof(Spec.Hub), nameof(Spec.Body), nameof(Spec.Kind)];
    private readonly Dictionary<long, string> _written = [];
    private readonly IProperty[] _sizes = [.. Sizes.Select(name => shop.Model.FindEntityType(typeof(Spec))!.FindProperty(name)!)];
    private readonly BulkInsert _specs = new(shop.Database.GetDbConnection(), transaction, "spec", [nameof(Spec.Id), nameof(Spec.Slot), nameof(Spec.Text), .. Sizes]);
    private readonly BulkInsert _fits = new(shop.Database.GetDbConnection(), transaction, "part_fit", nameof(SpecFit.SpecId), nameof(SpecFit.Slot), nameof(SpecFit.Joint), nameof(SpecFit.Key), nameof(SpecFit.LimitMin), nameof(SpecFit.LimitMax));

    public async Task<long> Add(Slot[] slots, string text)
    {
        long id = Spec.NumberOf(slots[0], text);
        if (!_written.TryAdd(id, text))
        {
            return _written[id] == text ? id : throw new InvalidOperationException($"'{text}' and '{_written[id]}' have one number");
        }

        Part part = PartText.Read(slots[0], text);
        Spec spec = Spec.Of(slots[0], text, part);

        await _specs.Add([spec.Id, spec.Slot, spec.Text, .. _sizes.Select(p => Stored(p, spec))]);
        foreach (PartFitRow row in slots.SelectMany(s => FitRelations.OfPart(spec.Id, part, s)))
        {
            await _fits.Add(row.PartId, row.SlotKey, row.JointId, row.Key, row.LimitMin, row.LimitMax);
        }

        return id;
    }

    /// <summary>An interface value in the form that the model gives its column.</summary>
    private static object? Stored(IProperty property, Spec spec) =>
        property.GetGetter().GetClrValue(spec) is { } value ? property.GetTypeMapping().Converter!.ConvertToProvider(value) : null;

    public async Task Finish()
    {
        await _specs.Finish();
        await _fits.Finish();
    }

    public async ValueTask DisposeAsync()
    {
        await _specs.DisposeAsync();
        await _fits.DisposeAsync();
    }
}
