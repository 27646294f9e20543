using System.Collections.Immutable;
using System.Text;
using Lugwork;
using ShopWeb.Stock;

namespace ShopWeb.Judging;

/// <summary>A field of the frame that its sheet did not say in so many words.</summary>
internal sealed record Assumption(string Field, string Value)
{
    public override string ToString() => $"{Field} {Value}";
}

/// <summary>A part in the cart.</summary>
internal sealed record Chosen(Slot Slot, Article Article, Part Part);

/// <summary>A frame and the parts that were chosen for it. It stands in the address of the page, so that nothing is kept of anybody.</summary>
internal sealed class Cart
{
    public required string FrameText { get; init; }

    public required Frame Frame { get; init; }

    /// <summary>The frame's article; null where its sheet was pasted.</summary>
    public required Article? FrameArticle { get; init; }

    public required ImmutableArray<Chosen> Parts { get; init; }

    /// <summary>What of the frame was assumed when its sheet was read. It stands in the address, so that whoever opens it is told.</summary>
    public ImmutableArray<Assumption> Assumed { get; init; } = [];

    /// <summary>Numbers of articles that are no longer there.</summary>
    public ImmutableArray<long> Gone { get; init; } = [];

    public string FrameName => FrameArticle?.Name ?? "your frame";

    public decimal Price => (FrameArticle?.Price ?? 0) + Parts.Sum(p => p.Article.Price);

    /// <summary>What of it weighs in; the frame does where it is one of the shop's.</summary>
    public decimal Kilograms => ((FrameArticle?.Grams ?? 0) + Parts.Sum(p => (decimal)p.Article.Grams)) / 1_000m;

    public Build ToBuild()
    {
        Build build = Build.From(Frame with { Name = FrameName }, FrameName);
        foreach (Chosen chosen in Parts)
        {
            build = build.With(chosen.Part with { Name = chosen.Article.Name }, chosen.Slot);
        }

        return build;
    }

    /// <summary>An address with this cart beside the frame as its sheet says it in so many words; null where nothing of it is left.</summary>
    public string? AddressAsStated(string path)
    {
        string text = string.Join("; ", CartReader.Fields(FrameText).Where(f => !Assumed.Any(a => a.Field == f.Field)));
        return text.Length == 0 ? null : Address(path, text, []);
    }

    /// <summary>An address with this cart: "/build?frame=10001&amp;part=seatpost.23456".</summary>
    public string Address(string path, Slot? without = null, (Slot Slot, long Id)? put = null, params ReadOnlySpan<(string Key, string Value)> more) =>
        Address(path, FrameText, Assumed, without, put, more);

    private string Address(string path, string frame, ImmutableArray<Assumption> assumed, Slot? without = null, (Slot Slot, long Id)? put = null, params ReadOnlySpan<(string Key, string Value)> more)
    {
        StringBuilder address = new(path);
        address.Append("?frame=").Append(Uri.EscapeDataString(frame));
        if (!assumed.IsEmpty)
        {
            address.Append("&assumed=").AppendJoin(',', assumed.Select(a => Uri.EscapeDataString(a.Field)));
        }

        foreach (Chosen chosen in Parts)
        {
            if (chosen.Slot != without && chosen.Slot != put?.Slot)
            {
                address.Append("&part=").Append(chosen.Slot.Key).Append('.').Append(chosen.Article.Id);
            }
        }

        if (put is { } added)
        {
            address.Append("&part=").Append(added.Slot.Key).Append('.').Append(added.Id);
        }

        foreach ((string key, string value) in more)
        {
            address.Append('&').Append(key).Append('=').Append(Uri.EscapeDataString(value));
        }

        return address.ToString();
    }
}
