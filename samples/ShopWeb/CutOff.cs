using Microsoft.AspNetCore.Http;

namespace ShopWeb;

/// <summary>JSON that is cut off between two pieces, when its time is over, would end like a whole answer: the connection is broken off, so that nobody takes it for one.</summary>
internal static class CutOff
{
    public static async Task Break(HttpContext http, RequestDelegate next)
    {
        await next(http);
        if (http.RequestAborted.IsCancellationRequested)
        {
            http.Abort();
        }
    }
}
