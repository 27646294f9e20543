using System.Collections.Immutable;
using System.Globalization;
using Lugwork;
using Microsoft.EntityFrameworkCore;
using ShopWeb.Api;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>A cart as an address says it.</summary>
/// <param name="Frame">Article number or short form.</param>
/// <param name="Parts">Slot and article number of each part.</param>
/// <param name="Assumed">Keys of the fields of the frame that were assumed, with commas between.</param>
internal readonly record struct CartRequest(string? Frame, string[]? Parts, string? Assumed = null);

/// <summary>Reads a cart out of an address. Everything in it is somebody's text, and is read as such.</summary>
internal static class CartReader
{
    public const int MostFrameText = 4_000;
    private const int MostParts = 60;

    /// <exception cref="ShopException">It is no cart; with what is wrong.</exception>
    public static async Task<Cart> Read(ShopContext shop, CartRequest asked, CancellationToken cancellation)
    {
        (string? frame, string[]? parts, string? assumed) = asked;
        if (string.IsNullOrWhiteSpace(frame))
        {
            throw ShopException.Bad("Which frame?", "frame", "an article number of a frame, or its fields such as \"rear R142-12; seatTube 27.2\", is expected");
        }

        List<(Slot Slot, long Id)> wanted = Wanted(parts ?? []);
        bool isNumber = long.TryParse(frame, NumberStyles.None, CultureInfo.InvariantCulture, out long number);
        List<long> ids = [.. wanted.Select(w => w.Id)];
        ids.AddRange(isNumber ? [number] : []);
        Dictionary<long, (Article Article, Spec Spec)> found = ids.Count == 0 ? [] : await shop.Articles.AsNoTracking()
            .Where(a => ids.Contains(a.Id))
            .Join(shop.Specs, a => a.SpecId, s => s.Id, (a, s) => new { a, s })
            .ToDictionaryAsync(p => p.a.Id, p => (p.a, p.s), cancellation);
        Dictionary<long, Part> parted = found.Where(f => f.Value.Spec.Part() is not null).ToDictionary(f => f.Key, f => f.Value.Spec.Part()!);
        if (isNumber && parted.GetValueOrDefault(number) is not Frame)
        {
            throw ShopException.Missing($"There is no frame with the article number {number}.");
        }

        List<Chosen> chosen = [];
        foreach ((Slot slot, long id) in wanted.Where(w => parted.ContainsKey(w.Id)))
        {
            chosen.Add(parted[id].Places.Contains(slot)
                ? new(slot, found[id].Article, parted[id])
                : throw ShopException.Bad("That part does not go there.", "part", $"article {id} is no {slot.Name}"));
        }

        return new Cart
        {
            FrameText = frame,
            Frame = isNumber ? (Frame)parted[number] : Stated(frame),
            FrameArticle = isNumber ? found[number].Article : null,
            Assumed = Assumptions(frame, assumed),
            Parts = [.. chosen.OrderBy(c => Slot.All.IndexOf(c.Slot))],
            Gone = [.. wanted.Where(w => !parted.ContainsKey(w.Id)).Select(w => w.Id)],
        };
    }

    /// <summary>The fields of a short form.</summary>
    public static IEnumerable<Assumption> Fields(string text) => text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        .Select(piece => piece.IndexOf(' ', StringComparison.Ordinal) is > 0 and int blank ? new Assumption(piece[..blank], piece[(blank + 1)..].Trim()) : new(piece, ""));

    private static ImmutableArray<Assumption> Assumptions(string frame, string? assumed)
    {
        if (string.IsNullOrEmpty(assumed))
        {
            return [];
        }

        Assumption[] fields = [.. Fields(frame)];
        return [.. assumed.Split(',').Distinct().Select(key => Array.Find(fields, f => f.Field == key)
            ?? throw ShopException.Bad("What was assumed cannot be read.", "assumed", "keys of fields that the frame has, with commas between, are expected"))];
    }

    private static Frame Stated(string text)
    {
        if (text.Length > MostFrameText)
        {
            throw ShopException.Bad("The frame is too long.", "frame", $"at most {MostFrameText} characters");
        }

        return PartText.TryRead(Slot.Frame, text, out Part frame, out ImmutableArray<SpecProblem> problems)
            ? (Frame)frame
            : throw new ShopException(StatusCodes.Status400BadRequest, "The frame cannot be read.", [.. problems.Select(p => new ShopProblem(p.Where, $"{p.Reason}; expected {Short(p.Expected)}"))]);
    }

    private static List<(Slot Slot, long Id)> Wanted(string[] parts)
    {
        if (parts.Length > MostParts)
        {
            throw ShopException.Bad("The cart is too full.", "part", $"at most {MostParts} parts");
        }

        List<(Slot Slot, long Id)> wanted = [];
        foreach (string text in parts)
        {
            int dot = text.IndexOf('.', StringComparison.Ordinal);
            if (dot < 0 || Slot.Find(text.AsSpan(0, dot)) is not { } slot || slot == Slot.Frame || !long.TryParse(text.AsSpan(dot + 1), NumberStyles.None, CultureInfo.InvariantCulture, out long id))
            {
                throw ShopException.Bad("A part of the cart cannot be read.", "part", "slot and article number are expected, such as seatpost.23456");
            }

            if (wanted.Exists(w => w.Slot == slot))
            {
                throw ShopException.Bad("Two parts for one place.", "part", $"there is one {slot.Name} on a bicycle");
            }

            wanted.Add((slot, id));
        }

        return wanted;
    }

    public static string Short(string expected) => expected.Length > 200 ? expected[..200] + "..." : expected;
}
