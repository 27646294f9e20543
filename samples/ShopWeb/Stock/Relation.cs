using System.Data.Common;
using Lugwork;
using Lugwork.Catalogues;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace ShopWeb.Stock;

/// <summary>The relation part_fit is what one build of the library says of the specs. Where another build runs it is written anew: a joint that is newer than a row would refuse every part.</summary>
internal static class Relation
{
    /// <summary>The build of the library that runs.</summary>
    public static string Library { get; } = typeof(Slot).Module.ModuleVersionId.ToString();

    public static async Task Renew(ShopContext shop, StockState state, IDbContextTransaction transaction, CancellationToken cancellation)
    {
        if (state.Library == Library)
        {
            return;
        }

        List<Spec> specs = await shop.Specs.AsNoTracking().ToListAsync(cancellation);

        // For which slots a part is sold is the shop's word, not the library's: a rear wheel is a wheel, and not sold as a front one.
        ILookup<long, string> places = (await shop.Fits.Where(f => f.Joint == "").Select(f => new { f.SpecId, f.Slot }).ToListAsync(cancellation)).ToLookup(f => f.SpecId, f => f.Slot);
        await shop.Fits.ExecuteDeleteAsync(cancellation);
        DbConnection connection = shop.Database.GetDbConnection();
        await using BulkInsert fits = new(connection, transaction.GetDbTransaction(), "part_fit", nameof(SpecFit.SpecId), nameof(SpecFit.Slot), nameof(SpecFit.Joint), nameof(SpecFit.Key), nameof(SpecFit.LimitMin), nameof(SpecFit.LimitMax));
        foreach (Spec spec in specs)
        {
            if (spec.Part() is not { } part)
            {
                continue;
            }

            foreach (PartFitRow row in part.Places.Where(s => places[spec.Id].Contains(s.Key)).SelectMany(s => FitRelations.OfPart(spec.Id, part, s)))
            {
                await fits.Add(row.PartId, row.SlotKey, row.JointId, row.Key, row.LimitMin, row.LimitMax);
            }
        }

        await fits.Finish();
        state.Library = Library;
        await shop.SaveChangesAsync(cancellation);
        await transaction.CommitAsync(cancellation);
    }
}
