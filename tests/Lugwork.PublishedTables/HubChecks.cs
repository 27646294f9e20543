namespace Lugwork.PublishedTables;

/// <summary>Wheels in frames and forks, each case typed from the source beside it.</summary>
public sealed class HubChecks
{
    [Theory]
    [InlineData("Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse", "rear 141 QR", "hub Boost 148", Verdict.NeedsPart, "141 mm QR end caps")]
    [InlineData("Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse", "rear Boost 148", "hub 141 QR; ends swappable", Verdict.NeedsPart, "12x148")]
    [InlineData("Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse", "rear Boost 148", "hub 141 QR; ends fixed", Verdict.DoesNotFit, "")]
    [InlineData("Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse", "rear 135 QR", "hub 141 QR; ends swappable", Verdict.DoesNotFit, "wider")]
    [InlineData("2016 axle standards part 1: rear 148mm thru axle; Bikerumor; 2014", "rear 141 QR", "hub 135 QR", Verdict.NeedsMeasuring, "3 mm rotor spacer")]
    [InlineData("Tech Talk: Boost 148 explained; Art's Cyclery text, republished; 2015", "rear 12x142", "hub 135 QR; ends swappable", Verdict.NeedsPart, "12x142")]
    [InlineData("148x12, the future; Waltworks; 2015", "rear 12x142", "hub R135-10; ends swappable", Verdict.NeedsPart, "12x142")]
    [InlineData("Tech Talk: Boost 148 explained; Art's Cyclery text, republished; 2015", "rear 135 QR", "hub 12x142", Verdict.NeedsPart, "135 mm QR end caps")]
    [InlineData("Mountain Hub Spacing: The 6-Millimeter Conundrum; Roval Components", "rear 12x148", "hub 12x142", Verdict.NeedsMeasuring, "3 mm rotor spacer")]
    [InlineData("Boost Your Potential For Growth; QBP; 2015", "rear 12x148", "hub 12x142; ends swappable", Verdict.NeedsMeasuring, "3 mm a side")]
    [InlineData("A guide to mountain bike axle standards; BikeRadar", "rear 12x142", "hub 12x148", Verdict.DoesNotFit, "wider")]
    [InlineData("Our take on 157TRAIL aka Superboost axle widths; Knolly Bikes; 2020", "rear 12x157 DH", "hub R150-12", Verdict.NeedsPart, "12x157")]
    [InlineData("Our take on 157TRAIL aka Superboost axle widths; Knolly Bikes; 2020", "rear R150-12", "hub 12x157 DH", Verdict.NeedsPart, "150")]
    [InlineData("Super Boost Plus 157 rear axle standard; Enduro MTB; 2020", "rear R157-12W", "hub 12x157 DH", Verdict.Fits, "drops in")]
    [InlineData("Super Boost Plus 157 rear axle standard; Enduro MTB; 2020", "rear 12x157 DH", "hub R157-12W", Verdict.Fits, "drops in")]
    [InlineData("derived: 9 mm short, rotor 4.5 mm off; no published kit", "rear R157-12W", "hub 12x148", Verdict.DoesNotFit, "narrower")]
    [InlineData("Hub 'Standards'; Boyd Cycling; 2020", "rear 12x142", "hub 135 QR; ends fixed", Verdict.DoesNotFit, "")]
    [InlineData("Bicycle Frame/Hub Spacing; sheldonbrown.com", "rear 126 QR; material steel", "hub 130 QR", Verdict.Fits, "springs in")]
    [InlineData("Post on fitting a 130 mm hub in a 126 mm frame; Classic Rendezvous list archive; 2004", "rear 126 QR; material steel", "hub R130", Verdict.Fits, "2 mm a side")]
    [InlineData("Bicycle Frame/Hub Spacing; sheldonbrown.com", "rear 126 QR; material aluminium", "hub 130 QR", Verdict.Unsafe, "Never spread")]
    [InlineData("Bicycle Frame/Hub Spacing; sheldonbrown.com", "rear 126 QR; material carbon", "hub 130 QR", Verdict.Unsafe, "Never spread")]
    [InlineData("How 135mm rear hub spacing affects road chainline; Bikerumor; 2012", "rear 130 QR; material steel", "hub 135 QR", Verdict.NeedsPart, "2.5 mm a side")]
    [InlineData("Bicycle Frame/Hub Spacing; sheldonbrown.com", "rear 130 QR; material aluminium", "hub 135 QR", Verdict.Unsafe, "")]
    [InlineData("Cassette FAQ; BikeRadar forum; 2013", "rear R132.5", "hub 130 QR", Verdict.Fits, "by design")]
    [InlineData("Cassette FAQ; BikeRadar forum; 2013", "rear R132.5", "hub 135 QR", Verdict.Fits, "by design")]
    [InlineData("How do I know if I have a Boost rear hub?; celiamania.com", "rear R145-flex", "hub 12x142", Verdict.Fits, "")]
    [InlineData("How do I know if I have a Boost rear hub?; celiamania.com", "rear R145-flex", "hub 12x148", Verdict.Fits, "")]
    [InlineData("from memory: a tandem 145 end is another part", "rear R140-145t", "hub 12x142", Verdict.DoesNotFit, "")]
    [InlineData("Chainline, single-speed; sheldonbrown.com", "rear 130 QR", "hub R120", Verdict.NeedsMeasuring, "5 mm spacers")]
    [InlineData("Information and Advice: Bicycle Wheels (O.L.D. list); Moruya Bicycles", "rear 130 QR", "hub R126", Verdict.NeedsPart, "2 mm spacers")]
    [InlineData("derived: a 14 mm axle does not enter 3/8 in slots", "rear R110-3/8", "hub R110-14", Verdict.DoesNotFit, "")]
    [InlineData("common practice, no source: stepped washers", "rear R110-14", "hub R110-3/8", Verdict.NeedsPart, "stepped washers")]
    [InlineData("Splined sprocket carrier (workshop handbook); Rohloff", "rear 12x177", "hub 170 QR; ends swappable", Verdict.NeedsPart, "12x177")]
    [InlineData("Splined sprocket carrier (workshop handbook); Rohloff", "rear 12x197", "hub 190 QR; ends swappable", Verdict.NeedsPart, "12x197")]
    [InlineData("derived: 20 mm short", "rear 190 QR", "hub 170 QR", Verdict.DoesNotFit, "narrower")]
    [InlineData("Understanding Drivetrain & Rear Tire Capacity; Salsa Cycles; 2012", "rear 135 offset", "hub 135 QR", Verdict.DoesNotFit, "")]
    public void A_rear_wheel_is_judged_as_published(string source, string frame, string wheel, Verdict expected, string says)
    {
        Assert.NotEmpty(source);
        Case.Expect(expected, says, Case.Judge("rear-wheel-in-frame", frame.Contains("material", StringComparison.Ordinal) ? frame : frame + "; material steel", (Slot.RearWheel, Wheel.Read(wheel))));
    }

    [Theory]
    [InlineData("Dear bike industry: really, a 'new' 20x110mm axle standard; BikeRadar; 2016", "front F110-20", "hub 15x110", Verdict.DoesNotFit, "")]
    [InlineData("Dear bike industry: really, a 'new' 20x110mm axle standard; BikeRadar; 2016", "front 15x110", "hub F110-20", Verdict.DoesNotFit, "")]
    [InlineData("Dear bike industry: really, a 'new' 20x110mm axle standard; BikeRadar; 2016", "front 15x110", "hub 20x110 Boost", Verdict.NeedsPart, "15x110")]
    [InlineData("Dear bike industry: really, a 'new' 20x110mm axle standard; BikeRadar; 2016", "front F110-20", "hub 20x110 Boost", Verdict.DoesNotFit, "")]
    [InlineData("Dear bike industry: really, a 'new' 20x110mm axle standard; BikeRadar; 2016", "front 20x110 Boost", "hub F110-20", Verdict.NeedsMeasuring, "5 mm rotor spacer")]
    [InlineData("Boost Your Potential For Growth; QBP; 2015", "front 15x110", "hub 15x100", Verdict.NeedsMeasuring, "5 mm a side")]
    [InlineData("derived: 10 mm too wide", "front 15x100", "hub 15x110", Verdict.DoesNotFit, "wider")]
    [InlineData("Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse", "front F110-12RB", "hub 15x110", Verdict.NeedsMeasuring, "not promised")]
    [InlineData("Rotor alignment and a 100 mm hub with 3.5 mm end caps; CycleChat forum; 2020", "front 12x100", "hub 15x100", Verdict.NeedsPart, "19 mm outside")]
    [InlineData("What are Torque Caps?; NOBL Wheels", "front 15x110", "hub F110-15B-31", Verdict.DoesNotFit, "")]
    [InlineData("What are Torque Caps?; NOBL Wheels", "front F110-15B-31", "hub 15x110", Verdict.Fits, "clamps and works")]
    [InlineData("A guide to mountain bike axle standards; BikeRadar", "front 100 QR", "hub 15x100", Verdict.NeedsPart, "100 mm QR end caps")]
    [InlineData("derived: rear downhill and front fat 150 share only a number", "front F150-15", "hub R150-12", Verdict.DoesNotFit, "")]
    public void A_front_wheel_is_judged_as_published(string source, string fork, string wheel, Verdict expected, string says)
    {
        Assert.NotEmpty(source);
        Case.Expect(expected, says, Case.Judge("front-wheel-in-fork", "material steel", (Slot.Fork, Fork.Read(fork)), (Slot.FrontWheel, Wheel.Read(wheel))));
    }
}
