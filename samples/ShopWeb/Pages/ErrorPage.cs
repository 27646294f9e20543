using Microsoft.AspNetCore.Mvc;
using ShopWeb.Api;

namespace ShopWeb.Pages;

/// <summary>A refusal, for people: what is wrong and how to go on.</summary>
internal static class ErrorPage
{
    public static IResult Of(ProblemDetails problem)
    {
        ShopProblem[] all = problem.Extensions.TryGetValue("problems", out object? found) && found is IEnumerable<ShopProblem> problems ? [.. problems] : [];
        return Layout.Page(problem.Title ?? "Something went wrong.", Html.Of(
            $"""
            <div role="alert"><h1>{problem.Title}</h1>
            <p>{problem.Detail}</p>
            {Html.If(all.Length > 0, () => Layout.List(all.Select(p => $"{p.Where}: {p.What}")))}</div>
            <p><a class="button" href="/">Start with a frame</a></p>
            """), problem.Status!.Value);
    }
}
