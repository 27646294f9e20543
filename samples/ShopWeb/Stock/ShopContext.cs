using Lugwork.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace ShopWeb.Stock;

/// <summary>The shop's database.</summary>
internal sealed class ShopContext(DbContextOptions<ShopContext> options) : DbContext(options)
{
    public DbSet<Article> Articles => Set<Article>();

    public DbSet<Spec> Specs => Set<Spec>();

    public DbSet<SpecFit> Fits => Set<SpecFit>();

    public DbSet<StockState> States => Set<StockState>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) => configurationBuilder.UseLugwork();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<Article>(e =>
        {
            e.ToTable("article");
            e.Property(a => a.Id).ValueGeneratedNever();
            e.Ignore(a => a.Price);
            e.HasIndex(a => a.SpecId);
            e.HasIndex(a => a.Delivery);
        });
        modelBuilder.Entity<Spec>(e =>
        {
            e.ToTable("spec");
            e.Property(s => s.Id).ValueGeneratedNever();
            e.HasIndex(s => s.Post);
            e.HasIndex(s => s.Tyre);
            e.HasIndex(s => s.Hub);
        });
        modelBuilder.Entity<SpecFit>(e =>
        {
            e.ToTable("part_fit");
            e.HasKey(f => new { f.SpecId, f.Slot, f.Joint, f.Key, f.LimitMin });
            e.HasIndex(f => new { f.Joint, f.Slot, f.Key });
        });
        modelBuilder.Entity<StockState>(e =>
        {
            e.ToTable("stock_state");
            e.Property(s => s.Id).ValueGeneratedNever();

            // Of two writers that read the same state the second has to begin anew.
            e.Property(s => s.Version).IsConcurrencyToken();
        });
    }
}
