using System.Reflection;

namespace Lugwork.Tests.Fits;

/// <summary>Sizes as shops write them: inch marks, signs for fractions, commas, both times signs, units before and behind.</summary>
public sealed class ShopSpellingTests
{
    [Theory]
    [InlineData("HubAxleThread", "3/8\" x 26", "3/8x26")]
    [InlineData("HubAxleThread", "3/8\u2033 \u00D7 26 tpi", "3/8x26")]
    [InlineData("HubAxleThread", "3/8-24", "3/8x24")]
    [InlineData("HubAxleThread", "3/8 in. x 26 TPI", "3/8x26")]
    [InlineData("HubAxleThread", "10mm x 1mm", "M10x1")]
    [InlineData("HubAxleThread", "M10\u00A0\u00D7\u00A01,0 mm", "M10x1")]
    [InlineData("HubAxleThread", "3/8 inch", "3/8x26|3/8x24")]
    [InlineData("HubStandard", "9x135", "F135-QR|R135-QR")]
    [InlineData("HubStandard", "135 x 9 mm QR", "F135-QR|R135-QR")]
    [InlineData("HubAttachment", "Q/R", "QR")]
    [InlineData("HubAttachment", "Thru Axle", "thru-axle")]
    [InlineData("AxleThread", "M12 x 1,5 mm", "M12x1.5")]
    [InlineData("TyreLabel", "26x1\u00BE", "26 x 1 3/4")]
    [InlineData("TyreLabel", "700C x 25", "700 x 25C")]
    [InlineData("TyreLabel", "650B x 47", "650B")]
    [InlineData("HeadTubeBore", "44mm", "44")]
    [InlineData("HeadTubeBore", "44 mm", "44")]
    [InlineData("SeatClampSize", "35mm", "34.9")]
    [InlineData("TyreSize", "700C x 25", "25-622")]
    [InlineData("BeadSeat", "700C x 25", "622")]
    [InlineData("RimSize", "622 \u00D7 19,5 C", "622x19.5C")]
    [InlineData("RimSize", "700x19", "622x19|647x19|ISO 700x19")]
    [InlineData("RimSize", "19-700", "622x19|647x19|ISO 700x19")]
    [InlineData("RimSize", "700x19C", "622x19|622x19C|647x19C|ISO 700x19C")]
    [InlineData("RimSize", "700x19TC", "622x19TC|647x19TC|ISO 700x19TC")]
    [InlineData("ValveHole", "8,5mm", "8.5")]
    [InlineData("ValveHole", "Presta valve", "6.5")]
    [InlineData("ValveHole", "SV", "6.5|8.5")]
    [InlineData("ValveStem", "SV", "presta|schrader")]
    [InlineData("ValveStem", "Presta-Ventil", "presta")]
    [InlineData("ValveStem", "Dunlop/Woods", "dunlop")]
    [InlineData("HeadsetBearing", "30,15 \u00D7 41 \u00D7 6,5 mm 36\u00B0/45\u00B0", "30.15x41x6.5-36/45")]
    [InlineData("SteererShape", "1\u215B\u20131\u00BD", "tapered-1-1/8-1.5")]
    [InlineData("SteererShape", "1.125\"-1.5\"", "tapered-1-1/8-1.5")]
    [InlineData("SteererShape", "1-1/8 - 1.5 tapered", "tapered-1-1/8-1.5")]
    [InlineData("SteererShape", "1.5\" straight", "straight-1.5")]
    [InlineData("SteererSize", "1\u215B\"", "28.6")]
    [InlineData("SteererSize", "1 inch", "25.4")]
    [InlineData("StemFixing", "7/8\" quill", "quill-22.2")]
    [InlineData("GripDiameter", "7/8\u2033", "22.2")]
    [InlineData("GripDiameter", "\u215E\"", "22.2")]
    [InlineData("GripDiameter", "\u00D822.2", "22.2")]
    [InlineData("ControlClamp", "7/8 inch", "flat-bar-control")]
    [InlineData("BarClamp", "1-1/4\"", "31.8")]
    [InlineData("SeatClampSize", "1 1/4\"", "31.8")]
    [InlineData("Shell", "BSA 1.37\" x 24 tpi 68mm", "BSA-68")]
    [InlineData("PedalThread", "\u00BD\"", "1/2x20")]
    [InlineData("PedalThread", "9/16-20", "9/16x20")]
    [InlineData("PedalThread", "9/16\u2033 x 20 tpi", "9/16x20")]
    [InlineData("FreewheelThread", "1.375\" x 24 tpi", "1.375x24")]
    [InlineData("FreewheelThread", "1.37\" x 24 tpi", "1.375x24|British-1.370x24|track-1.37x24")]
    [InlineData("SprocketClass", "3/32 inch", "3/32-single")]
    [InlineData("ChainSize", "1/2\" x 1/8\"", "1/8")]
    [InlineData("FrontDerailleurMount", "28,6 mm band", "band-28.6")]
    [InlineData("FrontDerailleurMount", "1-1/4\" band", "band-31.8")]
    [InlineData("FrontCapacity", "14T", "double-14")]
    [InlineData("BrakeBolt", "M6", "nutted-6|recessed-6")]
    [InlineData("BrakeBoss", "cantilever bosses 622", "cantilever-622")]
    [InlineData("BrakeType", "dual-pivot caliper", "rim-caliper")]
    [InlineData("BrakeType", "V-brakes", "direct-pull")]
    [InlineData("RotorSize", "8\"", "203|200")]
    [InlineData("DropperTravel", "150 mm travel", "150")]
    [InlineData("ShockBush", "\u00BD\"", "12.7")]
    [InlineData("ShockSize", "7,875\u2033 \u00D7 2,25\u2033", "eyelet-200x57")]
    [InlineData("ShockSize", "205 x 65T", "trunnion-205x65")]
    [InlineData("ForkClass", "29\" x 120 mm", "29-120")]
    [InlineData("CrownType", "triple-clamp", "dual")]
    public void A_usual_spelling_is_read(string type, string text, string keys) => On(nameof(Reads), type, text, keys);

    /// <summary>An inch mark is never dropped from a whole or decimal number: 26 in is no bar of 26 mm.</summary>
    [Theory]
    [InlineData("BarClamp", "26\"")]
    [InlineData("BarClamp", "35 in")]
    [InlineData("SeatClampSize", "30\u2033")]
    [InlineData("SteererSize", "25\"")]
    [InlineData("CrownSeat", "30\"")]
    [InlineData("SprocketClass", "9\"")]
    [InlineData("ForkOffset", "29 mm")]
    [InlineData("ForkClass", "26 mm x 100 mm")]
    [InlineData("CrankLength", "170 cm")]
    [InlineData("BrakeFluid", "DOT 5")]
    [InlineData("SteererSize", "1 1/8 1 1/8")]
    public void A_size_of_another_unit_or_kind_is_refused(string type, string text) => On(nameof(Reads), type, text, "");

    [Theory]
    [InlineData("ForkOffset", "51 mm")]
    [InlineData("QFactor", "146")]
    [InlineData("RotorThickness", "1,8 mm")]
    public void A_figure_where_a_class_is_expected_is_told_to_be_measured(string type, string text) => On(nameof(Tells), type, text, "measured, not read");

    private static void Reads<T>(string text, string keys)
        where T : IInterfaceValue<T>
    {
        TextReading<T> reading = T.Read(text);
        Assert.Equal(keys, string.Join('|', reading.Values.Select(v => v.FitKey)));
        Assert.Equal(!keys.Contains('|', StringComparison.Ordinal) && keys.Length > 0, reading.IsClear);
        Assert.Equal(reading.IsClear, reading.Reason is null or "");
    }

    private static void Tells<T>(string text, string words)
        where T : IInterfaceValue<T> => Assert.Contains(words, T.Read(text).Reason, StringComparison.Ordinal);

    private static void On(string method, string type, params object[] arguments) =>
        typeof(ShopSpellingTests).GetMethod(method, BindingFlags.NonPublic | BindingFlags.Static)!
            .MakeGenericMethod(typeof(Build).Assembly.GetExportedTypes().Single(t => t.Name == type))
            .Invoke(null, BindingFlags.DoNotWrapExceptions, null, arguments, null);
}
