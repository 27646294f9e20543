using System.Collections.Immutable;

namespace Lugwork.Hubs;

/// <summary>Hub against frame or fork end; width alone says nothing. What bridges them: <see cref="HubBridges"/>.</summary>
internal static class HubRelations
{
    private static readonly Reason Same = new("same-hub-standard", "A {1} hub in a {0} end.");

    /// <summary>Inputs: frame end, hub, hub ends, frame material.</summary>
    public static Relation InFrame { get; } = new SameKey(
        0, 1, Same, Apart, () => HubBridges.Table,
        HubStandard.Named("F-OWN").FitCode, HubStandard.Named("F091-096").FitCode, HubStandard.Named("F135-QR").FitCode, HubStandard.Named("R140-145t").FitCode)
    {
        Names = [new(HubStandard.Named("F100-N").FitCode, [.. HubStandard.Named("F100-N").Sizes.Select(h => h.FitCode)])],
    };

    private static readonly long Boost15 = HubStandard.Named("F110-15B").FitCode;

    private static readonly long Large15 = HubStandard.Named("F110-15B-31").FitCode;

    private static readonly long Narrow20 = HubStandard.Named("F110-20").FitCode;

    private static Reason Apart(long end, long hub)
    {
        int difference = HubStandard.OfFitCode(hub).OldMicrometres - HubStandard.OfFitCode(end).OldMicrometres;
        return end == Boost15 && hub == Narrow20 ? Misfits.RotorTooFarIn : end == Boost15 && hub == Large15 ? Misfits.LargeCaps : difference > 0 ? Misfits.TooWide : difference < 0 ? Misfits.TooNarrow : Misfits.OtherKind;
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason TooWide = new("hub-too-wide", "A {1} hub is wider than the {0} end; nothing takes width from a hub shell.", Cautions.NeverSpread)
        {
            Mend = "a wheel, or a hub rebuilt into the rim, of the frame's own standard",
        };

        public static readonly Reason TooNarrow = new("hub-too-narrow", "A {1} hub is narrower than the {0} end, and no kit is sold for this pair.")
        {
            Mend = "a wheel, or a hub rebuilt into the rim, of the frame's own standard",
        };

        public static readonly Reason LargeCaps = new("end-caps-too-large", "A {1} hub in a {0} end: the ends do not enter the recess, which is for 21 mm ones.")
        {
            Mend = "21 mm end caps for this hub, if its maker sells them, or a wheel of the fork's own standard",
            Sources = [Sources.EndCapPage],
        };

        public static readonly Reason RotorTooFarIn = new("rotor-too-far-in", "A {1} hub in a {0} end: equal width, but the rotor stands 5 mm too far in, and a sleeve on the axle moves nothing. A sleeve, a 5 mm rotor spacer and a re-dished rim are work for a wheel builder, who has to see the hub first.")
        {
            Mend = "a wheel of the fork's own standard",
            Sources = [Sources.Axle20Article, Sources.Derived],
        };

        public static readonly Reason OtherKind = new("hub-of-another-kind", "A {1} hub and a {0} end differ in axle, rotor place or kind, and nothing bridges them.")
        {
            Mend = "a wheel of the frame's own standard",
        };
    }
}
