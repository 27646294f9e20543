using System.Collections.Immutable;

namespace ShopWeb.Api;

/// <summary>One thing wrong with what was sent.</summary>
/// <param name="Where">The field, or a path into what was sent.</param>
/// <param name="What">What is wrong, and what was expected.</param>
internal sealed record ShopProblem(string Where, string What);

/// <summary>What was sent cannot be answered; with all that is wrong at once.</summary>
internal sealed class ShopException(int status, string title, ImmutableArray<ShopProblem> problems) : Exception(title)
{
    public int Status => status;

    public ImmutableArray<ShopProblem> Problems => problems;

    public static ShopException Bad(string title, string where, string what) => new(StatusCodes.Status400BadRequest, title, [new(where, what)]);

    public static ShopException Missing(string title) => new(StatusCodes.Status404NotFound, title, []);
}
