using System.ComponentModel.DataAnnotations;
using System.Data.Common;
using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using ShopWeb;
using ShopWeb.Api;
using ShopWeb.Judging;
using ShopWeb.Pages;
using ShopWeb.Stock;

// The settings beside the program count, from whatever folder it is started.
WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
IConfigurationSection section = builder.Configuration.GetSection("Shop");
ShopOptions options = section.Get<ShopOptions>() ?? new();
string connection = builder.Configuration.GetConnectionString("Shop") ?? $"Data Source={Path.Combine(AppContext.BaseDirectory, "shop.db")}";

Guards.Limit(builder, options);
builder.Services.Configure<ShopOptions>(section);
builder.Services.Configure<RouteHandlerOptions>(o => o.ThrowOnBadRequest = true);
builder.Services.AddDbContext<ShopContext>(o => ShopDatabase.Use(o, connection));
builder.Services.AddSingleton<SpecShelf>().AddSingleton<SpecCounts>().AddSingleton<StockHealth>().AddScoped<StockReader>().AddHostedService<Deliveries>().AddHostedService<FirstAnswer>();
builder.Services.AddProblemDetails().AddExceptionHandler<ShopErrors>();
builder.Services.AddHealthChecks().AddCheck<StockHealth>("stock");
builder.Services.AddOpenApi(o => o.AddSchemaTransformer<InterfaceSchemas>());

WebApplication app = builder.Build();
try
{
    Validator.ValidateObject(options, new(options), validateAllProperties: true);
    using IServiceScope scope = app.Services.CreateScope();
    Stopwatch watch = Stopwatch.StartNew();
    if (await FirstStock.Fill(scope.ServiceProvider.GetRequiredService<ShopContext>(), options.Seed) is > 0 and int written)
    {
        app.Logger.LogInformation("{Written} invented articles were written in {Seconds:0.0} s", written, watch.Elapsed.TotalSeconds);
    }
}
catch (Exception e) when (e is ValidationException or ArgumentException or InvalidOperationException or DbException)
{
    await Console.Error.WriteLineAsync($"The shop does not start: {e.Message}");
    return 2;
}

app.Use(Guards.Headers);
app.UseExceptionHandler();
app.UseStatusCodePages(ShopErrors.Answer);
app.UseRateLimiter();
app.UseRequestTimeouts();
app.Use(CutOff.Break);
app.MapHealthChecks("/health").DisableRateLimiting();
app.MapOpenApi();
ShopApi.Map(app);
ShopPages.Map(app);
await app.RunAsync();
return 0;
