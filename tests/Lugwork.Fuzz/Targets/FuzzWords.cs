namespace Lugwork.Fuzz;

/// <summary>Words of the trade for spec text: the beginnings of lines, units, and what takes certainty away.</summary>
internal static class FuzzWords
{
    public static IEnumerable<string> OfSheets { get; } =
    [
        "seatpost ", "seat tube ", "bottom bracket ", "head tube ", "rear axle ", "front axle ", "hub ", "freehub ", "brake mount ", "max tyre ", "tyre ", "rim ", "steerer ", "stem clamp ",
        "handlebar ", "saddle rails ", "hanger ", "chainring ", "cassette ", "chain ", "crank ", "spindle ", "pedals ", "rotor ", "shock ", "travel ", "valve ", "material ", "offset ", "length ",
        "Sattelst\u00FCtze ", "Tretlager ", "Steuerrohr ", "tige de selle ", "bo\u00EEtier ", "movimento centrale ", "zadelpen ", "eje trasero ", "tija ", "m\u00E1x. ", "bis zu ",
        " mm", " cm", " in", "\"", " inch", " kg", " speed", "-fach", " tpi", " or ", " oder ", " not ", " ohne ", " max ", " min ", " with adapter ", " instead of ", " was ", " optional ", " approx. ", " front ", " rear ",
        "BSA 68", "T47", "PF30", "BB86", "ZS44/ZS56", "EC34", "IS42", "1-1/8", "1.5 tapered", "12x148 Boost", "12 x 142", "10x135 QR", "15x110", "HG", "XD", "Micro Spline", "6-bolt", "Center Lock", "PM 160", "flat mount 140", "37-622", "700x28C", "29 x 2.4", "27.2", "31.8", "M12x1.5", "9/16", "JIS", "UDH", "7x9",
        "<li>", "</td><td>", "<br/>", "&nbsp;", "| ", "* ", ": ", " = ", "\t",
    ];
}
