using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>An adapter is told by the rotor that it is for. IS mounts hold 140 mm behind and 160 mm in front as they are (the tab standard of the trade).</summary>
public sealed class MountAdapterTests
{
    [Theory]
    [InlineData("rear brake IS", "160", "IS rear to post-mount adapter for a 160 mm rotor, with its bolts")]
    [InlineData("rear brake IS", "180", "IS rear to post-mount adapter for a 180 mm rotor, with its bolts")]
    [InlineData("rear brake IS", "203", "IS rear to post-mount adapter for a 203 mm rotor, with its bolts")]
    public void An_adapter_names_its_rotor(string frame, string rotor, string adapter)
    {
        Build build = Build.From(Frame.Read(frame)).With(Caliper.Read("mount post"), Slot.RearCaliper).With(Rotor.Read($"{rotor}; six-bolt"), Slot.RearRotor);
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == "rear-caliper-on-mount");
        Assert.Contains(fit.Remedies, r => r.What == adapter);
        Assert.DoesNotContain(fit.Remedies, r => r.What.StartsWith("IS rear to post-mount adapter", StringComparison.Ordinal) && r.What != adapter);
    }

    [Fact]
    public void A_fork_with_tabs_takes_its_own()
    {
        Build build = Build.From(Frame.Read("seat tube 27.2")).With(Fork.Read("front brake IS")).With(Caliper.Read("mount post"), Slot.FrontCaliper).With(Rotor.Read("180; six-bolt"), Slot.FrontRotor);
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == "front-caliper-on-mount");
        Assert.Contains(fit.Remedies, r => r.What == "IS front to post-mount adapter for a 180 mm rotor, with its bolts");
    }
}
