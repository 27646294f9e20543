using Lugwork.BottomBrackets;
using Lugwork.EntityFrameworkCore;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;
using Microsoft.EntityFrameworkCore;

namespace Lugwork.Databases;

/// <summary>A row of a shop whose columns are interface values: open ones, closed sets, plain lengths, text without code, each known or not.</summary>
internal sealed class Article
{
    public int Id { get; set; }

    public SeatpostDiameter Diameter { get; set; }

    public SeatTubeBore? Bore { get; set; }

    public required Shell Shell { get; set; }

    public HubStandard? Hub { get; set; }

    public TyreSize? Tyre { get; set; }

    public HeadsetPair? Headset { get; set; }

    public AxleSize? Axle { get; set; }

    public Dimension? LeastInsertion { get; set; }

    public Load? MostLoad { get; set; }

    public FrameAngle? HeadAngle { get; set; }
}

/// <summary>The shop in either engine and either form.</summary>
internal sealed class ShopModel(Action<DbContextOptionsBuilder> use, StoredAs stored) : DbContext
{
    public DbSet<Article> Articles => Set<Article>();

    public StoredAs Stored => stored;

    protected override void OnConfiguring(DbContextOptionsBuilder optionsBuilder)
    {
        use(optionsBuilder);

        // A model is kept by the type of its context; here its form counts too.
        optionsBuilder.ReplaceService<Microsoft.EntityFrameworkCore.Infrastructure.IModelCacheKeyFactory, FormKeyFactory>();
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) => configurationBuilder.UseLugwork(stored);

    private sealed class FormKeyFactory : Microsoft.EntityFrameworkCore.Infrastructure.IModelCacheKeyFactory
    {
        public object Create(DbContext context, bool designTime) => (context.GetType(), context is ShopModel shop ? shop.Stored : StoredAs.FitKey, designTime);
    }
}
