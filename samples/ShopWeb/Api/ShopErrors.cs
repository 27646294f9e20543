using System.Text.Json;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using ShopWeb.Pages;

namespace ShopWeb.Api;

/// <summary>Every refusal: problem details for programs, a page for people.</summary>
internal sealed class ShopErrors(ILogger<ShopErrors> log) : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        ProblemDetails problem = Of(exception);
        if (problem.Status == StatusCodes.Status500InternalServerError)
        {
            log.LogError(exception, "a request could not be answered");
        }

        await Answer(httpContext, problem);
        return true;
    }

    /// <summary>A status without an answer of its own: a path that is not there, a method that it does not take.</summary>
    public static Task Answer(StatusCodeContext status) => Answer(status.HttpContext, Plain(status.HttpContext.Response.StatusCode));

    public static async Task Answer(HttpContext http, ProblemDetails problem)
    {
        http.Response.StatusCode = problem.Status!.Value;
        http.Response.Headers.CacheControl = "no-store";
        IResult answer = http.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase) ? Results.Problem(problem) : ErrorPage.Of(problem);
        await answer.ExecuteAsync(http);
    }

    public static ProblemDetails Plain(int status) => new()
    {
        Status = status,
        Title = status switch
        {
            StatusCodes.Status400BadRequest => "This request cannot be read.",
            StatusCodes.Status404NotFound => "There is no such page.",
            StatusCodes.Status405MethodNotAllowed => "This cannot be done here.",
            StatusCodes.Status413PayloadTooLarge => "This is too large.",
            StatusCodes.Status415UnsupportedMediaType => "This kind of content is not read here.",
            StatusCodes.Status429TooManyRequests => "Too many requests; wait a little.",
            StatusCodes.Status503ServiceUnavailable => "The shop is busy; try again.",
            _ => "Something went wrong.",
        },
    };

    private static ProblemDetails Of(Exception exception)
    {
        switch (exception)
        {
            case ShopException own:
                ProblemDetails told = new() { Status = own.Status, Title = own.Message };
                if (!own.Problems.IsEmpty)
                {
                    told.Extensions["problems"] = own.Problems;
                }

                return told;
            case BadHttpRequestException { InnerException: JsonException json } bad:
                return new() { Status = bad.StatusCode, Title = "The JSON cannot be read.", Extensions = { ["problems"] = new[] { new ShopProblem(json.Path ?? "$", json.Message) } } };
            case BadHttpRequestException bad:
                ProblemDetails plain = Plain(bad.StatusCode);
                plain.Detail = bad.StatusCode == StatusCodes.Status400BadRequest ? bad.Message : null;
                return plain;
            case InvalidDataException:
                return Plain(StatusCodes.Status413PayloadTooLarge);
            default:
                return Plain(StatusCodes.Status500InternalServerError);
        }
    }
}
