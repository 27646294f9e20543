namespace Lugwork.Drawing;

/// <summary>Sizes of letters and lines, and the style that goes into every drawing.</summary>
internal static class DraftStyle
{
    public const double TitleSize = 4.4;
    public const double HeadSize = 3.2;
    public const double Size = 2.8;

    /// <summary>From one line of text to the next, in sizes of its letters.</summary>
    public const double Leading = 1.3;

    /// <summary>Above and below the base line, in sizes of the letters: together the box of a line.</summary>
    public const double Ascent = 0.78;
    public const double Descent = 0.24;

    /// <summary>Blue, orange and grey are told apart by people with any kind of colour vision; on paper the pattern and the letter do it.</summary>
    public const string Text =
        ".lw-drawing{color:#16181d}.lw-paper{fill:#fff}"
        + ".lw-t{fill:currentColor;font-family:Arial,Helvetica,'Liberation Sans',sans-serif;paint-order:stroke;stroke:#fff;stroke-width:.7;stroke-linejoin:round}"
        + ".lw-b{font-weight:bold}"
        + ".lw-l{fill:none;stroke:currentColor;stroke-width:.3;stroke-linejoin:round;stroke-linecap:round}"
        + ".lw-heavy{stroke-width:.65}.lw-thin{stroke-width:.15}.lw-axis{stroke-width:.15;stroke-dasharray:4 .8 .6 .8}.lw-open{stroke-dasharray:1.5 1}.lw-guide{stroke-width:.12;stroke-opacity:.45}"
        + ".lw-h{fill:none;stroke:currentColor;stroke-width:.12}.lw-dot{fill:currentColor}"
        + ".lw-fa{fill:#56b4e9;fill-opacity:.42}.lw-fb{fill:#e69f00;fill-opacity:.45}.lw-fc{fill:#8a8f98;fill-opacity:.25}.lw-fx,.lw-fe{fill:#fff}"
        + "@media (prefers-color-scheme:dark){.lw-drawing{color:#eceff4}.lw-paper,.lw-fx,.lw-fe{fill:#14171c}.lw-t{stroke:#14171c}}"
        + "@media print{.lw-drawing{color:#000}.lw-paper,.lw-fx,.lw-fe{fill:#fff}.lw-t{stroke:#fff}}";
}
