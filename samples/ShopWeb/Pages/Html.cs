using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Encodings.Web;

namespace ShopWeb.Pages;

/// <summary>A piece of a page. Whatever stands in its holes is escaped, unless it is a piece itself.</summary>
internal readonly struct Html
{
    private readonly string? _markup;

    private Html(string markup) => _markup = markup;

    public static Html Of(Markup markup) => new(markup.WithDone());

    public static Html Nothing => default;

    public static Html Join(IEnumerable<Html> pieces) => new(string.Concat(pieces));

    public static Html If(bool wanted, Func<Html> piece) => wanted ? piece() : Nothing;

    public override string ToString() => _markup ?? "";

    /// <summary>What the compiler makes of $"...": literals are markup, holes are not.</summary>
    [InterpolatedStringHandler]
    internal readonly struct Markup(int literalLength, int formattedCount)
    {
        private readonly StringBuilder _text = new(literalLength + (formattedCount * 16));

        public void AppendLiteral(string literal) => _text.Append(literal);

        public void AppendFormatted(string? text) => _text.Append(HtmlEncoder.Default.Encode(text ?? ""));

        public void AppendFormatted(Html piece) => _text.Append(piece);

        public void AppendFormatted(IEnumerable<Html> pieces) => _text.Append(Join(pieces));

        public void AppendFormatted(long number) => AppendFormatted(number, "0");

        public void AppendFormatted(long number, string format) => _text.Append(HtmlEncoder.Default.Encode(number.ToString(format, System.Globalization.CultureInfo.InvariantCulture)));

        public void AppendFormatted(decimal number, string format) => _text.Append(HtmlEncoder.Default.Encode(number.ToString(format, System.Globalization.CultureInfo.InvariantCulture)));

        public string Done() => _text.ToString();
    }
}
