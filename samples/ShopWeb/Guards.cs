using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using ShopWeb.Api;
using ShopWeb.Stock;

namespace ShopWeb;

/// <summary>What stands before every request: headers, sizes, rates.</summary>
internal static class Guards
{
    private const int MostLine = 8_192;
    private const int MostHeaders = 16_384;

    public static void Limit(WebApplicationBuilder builder, ShopOptions options)
    {
        builder.WebHost.ConfigureKestrel(k =>
        {
            k.AddServerHeader = false;
            k.Limits.MaxRequestBodySize = options.MostBytes;
            k.Limits.MaxRequestLineSize = MostLine;
            k.Limits.MaxRequestHeadersTotalSize = MostHeaders;
            k.Limits.MaxRequestHeaderCount = 50;
            k.Limits.MaxConcurrentConnections = 1_000;
            k.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
            k.Limits.KeepAliveTimeout = TimeSpan.FromSeconds(60);
        });
        builder.Services.AddRateLimiter(r =>
        {
            r.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            r.OnRejected = async (rejected, _) =>
            {
                // A second queue that is full is no fault of the one who asks.
                bool tooOften = rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan after);
                rejected.HttpContext.Response.Headers.RetryAfter = Math.Max(1, Math.Ceiling(after.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
                await ShopErrors.Answer(rejected.HttpContext, ShopErrors.Plain(tooOften ? StatusCodes.Status429TooManyRequests : StatusCodes.Status503ServiceUnavailable));
            };

            // The place at the counter comes first: who has to wait for it has not yet used one of the requests of the minute.
            r.GlobalLimiter = PartitionedRateLimiter.CreateChained(
                PartitionedRateLimiter.Create<HttpContext, int>(_ => RateLimitPartition.GetConcurrencyLimiter(
                    0, _ => new ConcurrencyLimiterOptions { PermitLimit = options.AtOnce, QueueLimit = options.MayWait })),
                PartitionedRateLimiter.Create<HttpContext, IPAddress>(http => RateLimitPartition.GetFixedWindowLimiter(
                    Caller(http.Connection.RemoteIpAddress),
                    _ => new FixedWindowRateLimiterOptions { PermitLimit = options.RequestsPerMinute, Window = TimeSpan.FromMinutes(1) })));
        });
        builder.Services.AddRequestTimeouts(t => t.DefaultPolicy = new() { Timeout = options.AnswerWithin, TimeoutStatusCode = StatusCodes.Status503ServiceUnavailable });
    }

    /// <summary>Who counts as one caller: an address of version 4, or the first 64 bits of one of version 6, since whoever has one of these has all of its network.</summary>
    internal static IPAddress Caller(IPAddress? address)
    {
        if (address is null)
        {
            return IPAddress.None;
        }

        if (address.IsIPv4MappedToIPv6 || address.AddressFamily != AddressFamily.InterNetworkV6)
        {
            return address.MapToIPv4();
        }

        byte[] bytes = address.GetAddressBytes();
        bytes.AsSpan(8).Clear();
        return new(bytes);
    }

    /// <summary>Nothing of a page comes from elsewhere, and no page is shown inside another. Set last, so that an answer to an error has them too.</summary>
    public static Task Headers(HttpContext http, RequestDelegate next)
    {
        http.Response.OnStarting(() =>
        {
            IHeaderDictionary headers = http.Response.Headers;
            headers.TryAdd("Content-Security-Policy", "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=()";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            headers.XFrameOptions = "DENY";
            return Task.CompletedTask;
        });
        return next(http);
    }
}

/// <summary>Whether the database answers and holds a stock. Nobody limits who asks, so the database is asked once a second at most.</summary>
internal sealed class StockHealth(IServiceScopeFactory scopes) : IHealthCheck, IDisposable
{
    private static readonly TimeSpan Holds = TimeSpan.FromSeconds(1);
    private readonly SemaphoreSlim _asking = new(1, 1);
    private (long At, HealthCheckResult Result)? _last;

    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        await _asking.WaitAsync(cancellationToken);
        try
        {
            if (_last is not { } last || Stopwatch.GetElapsedTime(last.At) >= Holds)
            {
                _last = last = (Stopwatch.GetTimestamp(), await Ask(cancellationToken));
            }

            return last.Result;
        }
        finally
        {
            _asking.Release();
        }
    }

    public void Dispose() => _asking.Dispose();

    private async Task<HealthCheckResult> Ask(CancellationToken cancellationToken)
    {
        await using AsyncServiceScope scope = scopes.CreateAsyncScope();
        ShopContext shop = scope.ServiceProvider.GetRequiredService<ShopContext>();
        try
        {
            StockState? state = await shop.States.FindAsync([1], cancellationToken);
            return state is null ? HealthCheckResult.Unhealthy("there is no stock") : HealthCheckResult.Healthy();
        }
        catch (Exception e) when (e is System.Data.Common.DbException or TimeoutException)
        {
            return HealthCheckResult.Unhealthy("the database does not answer", e);
        }
    }
}
