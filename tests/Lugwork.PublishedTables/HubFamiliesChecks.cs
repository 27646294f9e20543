using Lugwork.Hubs;

namespace Lugwork.PublishedTables;

/// <summary>Shells of one family, what holds a hub and where its rotor stands: what pages say, held against the joint of hub and ends.</summary>
public sealed class HubFamiliesChecks
{
    private const string Boost148 = "Tech Talk: Boost 148 explained; Art's Cyclery";
    private const string Trail157 = "Our take on 157TRAIL aka Superboost axle widths; Knolly Bikes";
    private const string Measuring = "Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse";
    private const string AxleGuide = "A guide to mountain bike axle standards; BikeRadar";
    private const string New20 = "Really, a 'new' 20x110mm axle standard; BikeRadar";
    private const string SixMm = "Mountain Hub Spacing: The 6-Millimeter Conundrum; a wheel maker";
    private const string BoostTrade = "Boost Your Potential For Growth; QBP";
    private const string HubPage = "Hub 'Standards'; Boyd Cycling";
    private const string EndCaps = "What are Torque Caps?; NOBL Wheels";
    private const string AxleNut = "Axle nut; wrenchfu.com";
    private const string Trials = "Rear hubs / Front hubs; trial-bikes.com";

    [Theory]
    [InlineData("R135-QR", "R142-12", true, Boost148)]
    [InlineData("R142-12", "R135-QR", true, Boost148)]
    [InlineData("R150-12", "R157-12DH", true, Trail157)]
    [InlineData("R141-QR", "R148-12", true, Measuring)]
    [InlineData("R148-12", "R142-12", false, AxleGuide)]
    [InlineData("R142-12", "R148-12", false, SixMm)]
    public void Ends_alone_turn_a_hub_into_another_of_its_shell_and_of_no_other(string hub, string into, bool one, string source)
    {
        HubFamily shell = HubStandard.Parse(hub, null).Family!;
        Assert.True(one == HubFamily.Parse(shell.FitKey, null).Members.Contains(HubStandard.Parse(into, null)), $"{source}: {hub} and {into} are {(one ? "" : "not ")}of one shell");

        Fit fit = Published.Of(Build.From(Frame.Read($"rear {into}; material aluminium")).With(Wheel.Read($"hub {hub}; ends swappable"), Slot.RearWheel), "rear-wheel-in-frame");
        Assert.True(one == (fit.Verdict == Verdict.NeedsPart), $"{source}: {fit}");
    }

    [Theory]
    [InlineData("F110-20", "F110-15B", "front", New20)]
    [InlineData("F100-15", "F110-15B", "front", BoostTrade)]
    [InlineData("R142-12", "R148-12", "rear", SixMm)]
    public void A_hub_of_another_shell_needs_the_rotor_moved_by_the_step_between_the_places(string hub, string into, string end, string source)
    {
        RotorPlace from = HubStandard.Parse(hub, null).RotorPlaces.Single();
        RotorPlace to = RotorPlace.Parse(HubStandard.Parse(into, null).RotorPlaces.Single().FitKey, null);
        Assert.True(from != to, $"{source}: {hub} and {into} carry the rotor in two places");

        if (from.FromDatum is { } near && to.FromDatum is { } far)
        {
            Build build = end == "rear"
                ? Build.From(Frame.Read($"rear {into}; material aluminium")).With(Wheel.Read($"hub {hub}; ends swappable"), Slot.RearWheel)
                : Build.From(Frame.Read("material aluminium")).With(Fork.Read($"front {into}")).With(Wheel.Read($"hub {hub}; ends swappable"), Slot.FrontWheel);
            double step = far.Millimeters - near.Millimeters;
            Published.Says(build, end == "rear" ? "rear-wheel-in-frame" : "front-wheel-in-fork", source, Verdict.NeedsMeasuring, FormattableString.Invariant($"{step:0.#} mm rotor spacer"));
        }
    }

    [Theory]
    [InlineData("quick release", "F100-QR9", "F100-12", Verdict.DoesNotFit, HubPage)]
    [InlineData("thru-axle", "F110-15B-31", "F110-15B", Verdict.DoesNotFit, EndCaps)]
    [InlineData("through axle", "F110-15B", "F110-15B-31", Verdict.Fits, EndCaps)]
    public void A_hub_held_in_the_printed_way_goes_in_the_printed_ends_or_not(string held, string hub, string into, Verdict expected, string source)
    {
        HubAttachment attachment = HubAttachment.Parse(held, null);
        Assert.True(HubStandard.Parse(hub, null).Attachments.Contains(attachment), $"{source}: {hub} is held by {held}");
        Published.Says(
            Build.From(Frame.Read("material steel")).With(Fork.Read($"front {into}")).With(Wheel.Read($"hub {hub}; ends {(attachment.HasClosedEnds ? "swappable" : "fixed")}"), Slot.FrontWheel),
            "front-wheel-in-fork", source, expected);
    }

    [Theory]
    [InlineData("nuts", "9.5", "R120-3/8", AxleNut)]
    [InlineData("solid axle", "9.5", "R114", AxleNut)]
    [InlineData("bolts", "10", "R116", Trials)]
    public void A_hub_of_old_is_held_as_printed_and_its_axle_is_told(string held, string axle, string hub, string source)
    {
        HubStandard standard = HubStandard.Parse(hub, null);
        Assert.True(standard.Attachments.Contains(HubAttachment.Parse(held, null)) && !HubAttachment.Parse(held, null).HasClosedEnds, source);
        Assert.Contains(standard, HubStandard.Identify(axle: MeasuredLength.OfMillimetres(decimal.Parse(axle, System.Globalization.CultureInfo.InvariantCulture)), isRear: true).Candidates.Select(c => c.Value));
    }
}
