using Lugwork.Hubs;

namespace Lugwork.Tests.Hubs;

/// <summary>Whether the ends of a hub come off decides whether caps let a thicker axle through: no row forgets to ask.</summary>
public sealed class EndCapTests
{
    [Fact]
    public void Caps_for_a_thicker_axle_ask_whether_the_ends_come_off()
    {
        Bridge[] thicker = [.. HubBridges.Table.Where(b => b.Kind == BridgeKind.EndCaps && b.Result == Verdict.NeedsPart && Thinnest(b.To) > Thickest(b.From) + 0.1)];
        Assert.NotEmpty(thicker);
        Assert.All(thicker, b => Assert.True(b.ConditionInput >= 0 && b.ConditionCode == HubEnds.Swappable.FitCode && b.Otherwise > Verdict.NeedsPart, b.Id));
    }

    [Fact]
    public void A_skewer_and_closed_ends_are_of_one_attachment_each()
    {
        Assert.Equal(5, HubAttachment.QuickRelease.Skewer!.Value.Millimeters);
        Assert.All(HubAttachment.All, a => Assert.Equal(a == HubAttachment.QuickRelease, a.Skewer is not null));
        Assert.All(HubAttachment.All, a => Assert.Equal(a == HubAttachment.ThruAxle, a.HasClosedEnds));
    }

    private static double Thickest(long hub) => HubStandard.OfFitCode(hub).AxleDiameters.Select(d => d.Millimeters).DefaultIfEmpty(100).Max();

    private static double Thinnest(long hub) => HubStandard.OfFitCode(hub).AxleDiameters.Select(d => d.Millimeters).DefaultIfEmpty(0).Min();
}
