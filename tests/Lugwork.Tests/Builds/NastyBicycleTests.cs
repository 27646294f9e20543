namespace Lugwork.Tests.Builds;

/// <summary>
/// Bicycles put together to tempt a check over several parts into a fit: what it would have to know is unknown, is one of two, is of an old part, or stands on the third part of a sum. Written
/// by what a mechanic would say of each, not read off the checks: none of these rows may say "fits".
/// </summary>
public sealed class NastyBicycleTests
{
    [Theory]
    // The last figure of the steerer's stack is not there, or is one of two of which one is too much.
    [InlineData("steerer-reaches-stem", "frame=head tube length 130 / fork=crowns single; steerer length 197 / headset=upper stack 12; lower stack 10 / stem=clamp height 40; spacers below unknown")]
    [InlineData("steerer-reaches-stem", "frame=head tube length 130 / fork=crowns single; steerer length 197 / headset=upper stack 12; lower stack 10 | 12 / stem=clamp height 40; spacers below 10")]
    [InlineData("steerer-reaches-stem", "frame=head tube length 130 | 131 / fork=crowns single; steerer length 197 / headset=upper stack 12; lower stack 10 / stem=clamp height 40; spacers below 10")]
    [InlineData("steerer-reaches-stem", "frame=head tube length 130 / fork=crowns single; steerer length 197 / headset=upper stack 12; lower stack not covered / stem=clamp height 40; spacers below 10")]
    [InlineData("steerer-reaches-stem", "frame=head tube length 130 / fork=travel 63 | 100; steerer length 220 / headset=upper stack 12; lower stack 10 / stem=clamp height 40; spacers below 10")]
    [InlineData("steerer-reaches-stem", "frame=head tube length 130; fork crowns dual / fork=steerer length 220 / headset=upper stack 12; lower stack 10 / stem=clamp height 40; spacers below 10")]
    [InlineData("gap-under-cap", "frame=head tube length 130; fork crowns dual / fork=steerer length 203 / headset=upper stack 12; lower stack 10 / stem=clamp height 40; spacers below 10; spacers above 5")]
    [InlineData("gap-under-cap", "frame=head tube length 130 / fork=crowns single; steerer length 203 / headset=upper stack 12; lower stack 10 / stem=clamp height 40; spacers below 10; spacers above unknown")]
    [InlineData("spacers-on-carbon-steerer", "frame=steel / fork=steerer 28.6; steerer material carbon | aluminium; most spacers none / stem=spacers below 60")]
    [InlineData("spacers-on-carbon-steerer", "frame=steel / fork=steerer 28.6; steerer material unknown; most spacers unknown / stem=spacers below 60")]
    // Old rings with new sprockets: the small ring, the ring itself or the cage is what nobody read.
    [InlineData("derailleur-capacity", "frame=steel / crankset=largest ring 50 / cassette=smallest sprocket 11; largest sprocket 34 / rearDerailleur=capacity 33")]
    [InlineData("derailleur-capacity", "frame=steel / crankset=largest ring 50; smallest ring 34 | 30 / cassette=smallest sprocket 11; largest sprocket 28 / rearDerailleur=capacity 33")]
    [InlineData("derailleur-capacity", "frame=steel / crankset=largest ring 50; smallest ring 34 / cassette=smallest sprocket 11; largest sprocket 28 / rearDerailleur=capacity not covered")]
    [InlineData("derailleur-capacity-with-ring", "frame=steel / crankset=largest ring none / chainring=teeth 40 / cassette=smallest sprocket 11; largest sprocket 34 / rearDerailleur=capacity unknown")]
    [InlineData("derailleur-capacity-with-ring", "frame=steel / crankset=largest ring none / chainring=teeth 40 / cassette=smallest sprocket 11; largest sprocket 34 | 36 / rearDerailleur=capacity 23")]
    [InlineData("chain-reaches-with-ring", "frame=chainstay 440 / crankset=largest ring none / chainring=teeth 40 | 48 / cassette=largest sprocket 34 / rearDerailleur=chain allowance 2 / chain=pitches 112")]
    [InlineData("chain-reaches-with-ring", "frame=chainstay unknown / crankset=largest ring none / chainring=teeth 40 / cassette=largest sprocket 34 / rearDerailleur=chain allowance 2 / chain=pitches 112")]
    [InlineData("ring-on-bare-crank", "frame=steel / crankset=largest ring none")]
    [InlineData("front-difference", "frame=steel / crankset=largest ring 50; smallest ring unknown / frontDerailleur=difference 16")]
    // The third part of a figure of the frame.
    [InlineData("head-angle-with-headset", "frame=fork of the design 500; head angle 67; wheelbase 1150; slackest head angle 66.5 / fork=axle to crown 500 / headset=upper stack 12")]
    [InlineData("head-angle-not-too-slack", "frame=fork of the design 500; head angle 67; slackest head angle 66.5 / fork=axle to crown 520 / headset=lower stack none")]
    [InlineData("standover-with-fork", "frame=standover 800; fork of the design 400 / rider=inseam 810 / fork=axle to crown 400 | 440")]
    [InlineData("saddle-height-least-insertion", "frame=seat tube length 500 / rider=saddle height 740 / seatpost=27.2 x 300; mark 75 / saddle=depth unknown")]
    [InlineData("saddle-height-least-insertion", "frame=seat tube length 500; least insertion 100 / rider=saddle height 740 | 760 / seatpost=27.2 x 295; mark 75 / saddle=depth 45")]
    [InlineData("dropper-at-saddle-height", "frame=seat tube length 500 / rider=saddle height 740 / saddle=depth 45 / dropper=travel 150; stack unknown")]
    [InlineData("pedal-ground-clearance", "frame=bottom bracket drop 80 / crankset=crank length 175; Q factor 150 / rearTyre=23-622 | 40-622 / pedals=height 30; reach 100")]
    [InlineData("rear-adapter-with-rotor", "frame=rear brake PM-160 / rearRotor=size unknown / rearCaliper=post; adapter +20")]
    [InlineData("rear-caliper-on-mount", "frame=rear brake unknown / rearRotor=180 / rearCaliper=post; adapter none")]
    [InlineData("wheels-of-one-size", "frame=steel / frontWheel=rim 622 / rearWheel=rim unknown")]
    [InlineData("chainline", "frame=steel / crankset=chainline off-road-1x-50.25 / rearWheel=hub unknown / cassette=spacing unknown")]
    [InlineData("fork-not-too-short", "frame=shortest fork 380 / fork=axle to crown 375 | 385")]
    public void What_is_not_known_of_the_third_part_fits_nothing(string joint, string parts)
    {
        Build build = Build.From(Frame.Read("steel"));
        foreach (string part in parts.Split(" / "))
        {
            string[] sides = part.Split('=', 2);
            Slot slot = Slot.Find(sides[0])!;
            Assert.True(PartForms.Of(slot).TryReadAny(sides[1], out Part read, out var problems), $"{part}: {string.Join(" | ", problems)}");
            build = build.OfFile(read, slot);
        }

        FitReport report = build.Check();
        Fit[] told = [.. report.Findings.Where(f => f.Joint!.Id == joint)];
        Assert.True(told.Length == 1 && told[0].Verdict > Verdict.NeedsPart, $"{string.Join(", ", told.Select(f => f.Sentence))}: {string.Join(", ", told.Select(f => f.Verdict))}");
    }
}
