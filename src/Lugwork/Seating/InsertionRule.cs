using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Lugwork.Seating;

/// <summary>A rule of how deep a seatpost must sit, or where its mark must stand. Closed set, identity equality. All that apply hold together: the deepest counts.</summary>
/// <remarks>Least = k x diameter + m, mm: two diameters by "16 CFR 1512.15 Requirements for seat", the frame maker's figure by "Operation Manual 2015, pp. 94-95".</remarks>
[JsonConverter(typeof(InterfaceJsonConverter<InsertionRule>))]
[TypeConverter(typeof(InterfaceTypeConverter<InsertionRule>))]
public sealed class InsertionRule : Standard<InsertionRule>, IInterfaceValue<InsertionRule>
{
    private InsertionRule(int code, string key, string name, decimal diameters, decimal millimetres, Source source)
        : base(code, key, name, source)
    {
        Diameters = diameters;
        Millimetres = millimetres;
    }

    /// <summary>The mark stands at least two diameters above the lowest point of the post.</summary>
    public static InsertionRule Mark { get; } = new(1, "mark-two-diameters", "the mark two diameters above the end", 2, 0, Sources.SeatRegulation);

    /// <summary>The post keeps its strength for one diameter below the mark: cutting a post moves the mark.</summary>
    public static InsertionRule StrengthBelowMark { get; } = new(2, "strength-one-diameter", "full strength one diameter below the mark", 1, 0, Sources.SeatRegulation);

    /// <summary>The frame maker's least, whatever the post's mark says; no figure of its own.</summary>
    public static InsertionRule FrameLeast { get; } = new(3, "frame-least", "the frame maker's least", 0, 0, Sources.FrameManual);

    /// <summary>The frame maker's most, from pivots, bends and bolts; no figure of its own.</summary>
    public static InsertionRule FrameMost { get; } = new(4, "frame-most", "the frame maker's most", 0, 0, Sources.FrameManual);

    /// <summary>The end of the post at least 25 mm below the lower edge of the top-tube weld.</summary>
    public static InsertionRule BelowTopTube { get; } = new(5, "below-top-tube", "25 mm below the top-tube weld", 0, 25, Sources.InsertionArticle);

    /// <summary>At least 90 mm in all, together with the one before.</summary>
    public static InsertionRule ShortStub { get; } = new(6, "short-stub", "90 mm in all", 0, 90, Sources.InsertionArticle);

    /// <summary>150 mm where nothing else is known.</summary>
    public static InsertionRule NothingKnown { get; } = new(7, "nothing-known", "150 mm where nothing is known", 0, 150, Sources.InsertionArticle);

    /// <summary>Two and a half diameters, up to three: what the trade does, by no source.</summary>
    public static InsertionRule TradePractice { get; } = new(8, "trade-practice", "2.5 diameters by practice", 2.5m, 0, Sources.CommonPractice);

    /// <summary>Every rule, in the order of the table.</summary>
    public static ImmutableArray<InsertionRule> All { get; } = [Mark, StrengthBelowMark, FrameLeast, FrameMost, BelowTopTube, ShortStub, NothingKnown, TradePractice];

    /// <inheritdoc/>
    public static string Called => "insertion rule";

    /// <summary>How many diameters of the post it asks for; 0 where it is no multiple.</summary>
    public decimal Diameters { get; }

    /// <summary>How many millimetres it asks for, counted as its text says; 0 where it is no length.</summary>
    public decimal Millimetres { get; }

    /// <summary>What the rule asks of a post; null where the frame maker's figure is the rule.</summary>
    /// <param name="post">The post.</param>
    /// <exception cref="ArgumentException">The post is a default.</exception>
    public Length? For(SeatpostDiameter post)
    {
        if (post.FitCode == 0)
        {
            throw new ArgumentException("a default is no post", nameof(post));
        }

        decimal asked = (Diameters * post.Millimetres) + Millimetres;
        return asked == 0 ? null : Length.FromMillimeters((double)asked);
    }

    /// <summary>The least depth in a seat tube with a stub above a level top tube: 25 mm below its weld and 90 mm in all.</summary>
    /// <param name="collarToWeld">From the collar down to the lower edge of the top-tube weld.</param>
    /// <exception cref="ArgumentException">The length is a default.</exception>
    public static Dimension LeastWithStub(Dimension collarToWeld) =>
        collarToWeld.FitCode == 0
            ? throw new ArgumentException("a default is no length", nameof(collarToWeld))
            : Dimension.OfMillimetres(Math.Max(ShortStub.Millimetres, collarToWeld.Millimetres + BelowTopTube.Millimetres));

    /// <inheritdoc/>
    public static InsertionRule OfFitCode(long code) => ByCode(code);

    /// <inheritdoc/>
    public static TextReading<InsertionRule> Read(ReadOnlySpan<char> text) => ByName(text);
}
