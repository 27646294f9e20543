namespace Lugwork.Tests.Builds;

/// <summary>Each row of the small parts: a build that asks for it, another part that asks for another of it, and one that asks for none.</summary>
public sealed class SmallPartRowTests
{
    /// <summary>Id; the parts that ask; what is said of it; a part beside which it is another; a part beside which it is not needed. A slot without text is emptied.</summary>
    public static TheoryData<string, string, string, string, string> Rows => new()
    {
        { "front-axle", "fork=front 12x100; axle thread M12x1.5; axle length 127", "127 mm under the head", "fork=front 12x100; axle thread M12x1.5; axle length 125", "fork=threadless" },
        { "rear-axle", "frame=rear 12x148; rear axle thread M12x1.0; rear axle length 172", "M12 x 1.0", "frame=rear 12x142; rear axle thread M12x1.5; rear axle length 163", "frame=rear 10x135 QR" },
        { "front-axle-nuts", "frontWheel=rim 622; axle thread M9x1", "two axle nuts", "frontWheel=rim 622; axle thread M10x1", "frontWheel=rim 622" },
        { "rear-axle-nuts", "rearWheel=rim 622; axle thread M10x1", "two axle nuts", "rearWheel=rim 622; axle thread 3/8x26", "rearWheel=rim 622" },
        { "front-skewer", "fork=front F100-QR9 / frontWheel=hub F100-QR9", "skewer", "", "frontWheel=hub F100-12" },
        { "rear-skewer", "frame=rear 10x135 QR / rearWheel=hub R135-QR", "skewer", "rearWheel=hub R130", "rearWheel=hub R142-12" },
        { "headset-spacers", "frame=head tube length 130 / fork=threadless; steerer length 205 / headset=upper stack 10; lower stack 5 / stem=clamp height 40", "at least 22 mm", "stem=clamp height 42", "fork=threaded; steerer length 205" },
        { "headset-cover", "frame=headset cables through", "cover", "", "frame=headset cables outside" },
        { "frame-inserts", "frame=headset cables through / rearBrakeLever=fluid mineral-oil", "inserts", "", "frame=headset cables outside" },
        { "preload", "fork=threadless; steerer material carbon", "expander", "fork=threadless; steerer material aluminium", "fork=threaded" },
        { "crown-race", "headset=crown race none / fork=crown seat 30", "crown race", "fork=crown seat 26.4", "headset=crown race 30" },
        { "front-rotor-bolts", "frontRotor=160; six-bolt", "six rotor bolts", "", "frontRotor=160; center-lock" },
        { "rear-rotor-bolts", "rearRotor=160; six-bolt", "six rotor bolts", "", "rearRotor=160; center-lock" },
        { "front-rotor-lockring", "frontWheel=hub F100-12; center-lock / frontRotor=160; center-lock", "internal notches", "frontWheel=hub F100-15; center-lock", "frontRotor=160; six-bolt" },
        { "rear-rotor-lockring", "rearWheel=hub R142-12; center-lock / rearRotor=160; center-lock", "internal notches", "rearWheel=hub unknown; center-lock", "rearRotor=160; six-bolt" },
        { "front-caliper-bolts", "frontCaliper=post", "two bolts", "frontCaliper=flat", "frontCaliper=flat; bolt length 30" },
        { "rear-caliper-bolts", "frame=rear brake FM-rear-140; rear stay thickness 17 / rearCaliper=flat / rearRotor=140", "about 30 mm", "frame=rear brake FM-rear-140; rear stay thickness 20", "rearCaliper=flat; bolt length 30" },
        { "front-tube", "frontWheel=rim 622; rim type TC / frontTyre=37-622; wired", "inner tube", "frontTyre=40-622; wired", "frontTyre=37-622; tubeless" },
        { "rear-tube", "rearWheel=rim 622; rim type TC / rearTyre=37-622; wired", "inner tube", "rearTyre=40-622; wired", "rearTyre=37-622; tubeless" },
        { "front-valve", "frontWheel=rim 622; rim type TC; rim depth 24 / frontTyre=37-622; tubeless", "39 mm", "frontWheel=rim 622; rim type TC; rim depth 60", "frontWheel=rim 622; rim type C; rim depth 24" },
        { "rear-valve", "rearWheel=rim 622; rim type TC; rim depth 24 / rearTyre=37-622; tubeless", "39 mm", "rearWheel=rim 622; rim type TC; rim depth 60", "rearTyre=37-622; wired" },
        { "front-rim-tape", "frontWheel=rim 622; innerWidth 21 / frontTyre=37-622; wired", "21 mm inside", "frontWheel=rim 622; innerWidth 25", "frontWheel=rim 622; bed hole none" },
        { "rear-rim-tape", "rearWheel=rim 622; innerWidth 21 / rearTyre=37-622; wired", "21 mm inside", "rearWheel=rim 622; innerWidth 25", "rearWheel=rim 622; bed hole none" },
        { "front-sealant", "frontWheel=rim 622; rim type TC / frontTyre=37-622; tubeless", "sealant", "", "frontWheel=rim 622; rim type C" },
        { "rear-sealant", "rearWheel=rim 622; rim type TSS / rearTyre=37-622; tubeless", "sealant", "", "rearTyre=37-622; folding" },
        { "front-tubular-cement", "frontTyre=tubular", "cement", "", "frontTyre=37-622; wired" },
        { "rear-tubular-cement", "rearTyre=tubular", "cement", "", "rearTyre=37-622; wired" },
        { "front-rim-brake-fittings", "frontRimBrake=cantilever", "straddle", "frontRimBrake=direct-pull", "frontRimBrake=road caliper" },
        { "rear-rim-brake-fittings", "rearRimBrake=cantilever", "where the frame has none", "rearRimBrake=direct-pull", "rearRimBrake=road caliper" },
        { "front-brake-cable", "frontBrakeLever=pull short", "brake cable", "frontBrakeLever=hand left", "frontBrakeLever=fluid mineral-oil" },
        { "rear-brake-cable", "rearBrakeLever=pull short", "brake cable", "rearBrakeLever=hand right", "rearBrakeLever=fluid mineral-oil" },
        { "front-hose-ends", "frontBrakeLever=fluid mineral-oil", "mineral oil to bleed", "frontBrakeLever=fluid glycol-ether", "frontBrakeLever=pull short" },
        { "rear-hose-ends", "rearBrakeLever=fluid mineral-oil", "mineral oil to bleed", "rearBrakeLever=pull none", "rearBrakeLever=pull short" },
        { "rear-shift-cable", "rearShifter=cable", "shift cable", "", "rearShifter=wireless" },
        { "front-shift-cable", "frontShifter=cable", "shift cable", "", "frontShifter=wireless" },
        { "dropper-cable", "dropper=routing internal", "for the dropper", "", "dropper=routing wireless" },
        { "cable-guides", "frame=steel; cable guides none / rearBrakeLever=fluid mineral-oil", "clamps or stick-on guides", "frame=steel; cable guides clips", "frame=steel; cable guides full-length" },
        { "quick-link", "chain=11", "joining link", "chain=12", "chain=belt" },
        { "cassette-lockring", "cassette=pattern HG-9", "lockring", "", "cassette=pattern XD" },
        { "sprocket-lockring", "cassette=pattern fixed-sprocket; lockring none", "left-hand", "cassette=pattern fixed-sprocket", "cassette=pattern HG-9" },
        { "bottom-bracket-spacers", "frame=shell BSA 73 / crankset=spindle 24-MTB", "one 2.5 mm", "frame=shell T47 85.5 / crankset=spindle 24-road", "frame=shell BSA 68 / crankset=spindle 24-road" },
        { "bar-tape", "handlebar=grip 23.8", "bar tape", "", "handlebar=grip 22.2" },
        { "grips", "handlebar=grip 22.2", "grips for", "handlebar=31.8", "handlebar=grip 23.8" },
        { "grease", "saddle=7-round", "grease", "", "saddle=" },
        { "carbon-paste", "frame=material carbon", "no grease", "", "frame=material steel" },
        { "threadlock", "frontRotor=160", "threadlock", "", "frontRotor=" },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_row_is_asked_for_lapses_with_its_part_and_goes_with_it(string id, string parts, string says, string another, string none)
    {
        Build build = Put(Build.From(Frame.Read("steel")), parts);
        Assert.Contains(says, build.SmallParts().Single(p => p.Id == id).What, StringComparison.Ordinal);
        Assert.DoesNotContain(Put(build, none).SmallParts(), p => p.Id == id);

        Build there = build.WithSmallPart(id);
        Assert.Equal(build.SmallParts().Select(p => p.Id).Where(p => p != id), there.SmallParts().Select(p => p.Id));
        if (another.Length > 0)
        {
            // Beside another part it is another thing to buy, also out of a file; with the first part back it is there.
            Build changed = Put(there, another);
            Assert.Contains(changed.SmallParts(), p => p.Id == id);
            Assert.Contains(BuildFile.Read(BuildFile.Write(changed)).SmallParts(), p => p.Id == id);
            Assert.DoesNotContain(Put(changed, parts).SmallParts(), p => p.Id == id);
            Assert.DoesNotContain(changed.WithSmallPart(id).SmallParts(), p => p.Id == id);
        }

        // Said where nothing asks for it, it stands for nothing that is asked for later.
        Assert.Contains(Put(Put(build, none).WithSmallPart(id), parts).SmallParts(), p => p.Id == id);
    }

    [Fact]
    public void Every_row_is_shown() => Assert.Equal(SmallPartTable.Rules.Select(r => r.Id).Order(StringComparer.Ordinal), Rows.Select(r => r.Data.Item1).Order(StringComparer.Ordinal));

    /// <summary>A part with its own interfaces in the slot of a row: the row goes, nothing new is asked for, and nothing that was judged is worse.</summary>
    [Theory]
    [InlineData("front-axle", "frontThruAxle=M12x1.5; length 127")]
    [InlineData("rear-axle", "rearThruAxle=M12x1.0; length 172")]
    [InlineData("front-axle-nuts", "frontAxleNuts=M9x1")]
    [InlineData("rear-axle-nuts", "rearAxleNuts=M10x1")]
    [InlineData("headset-cover", "headsetCover=cables through")]
    [InlineData("preload", "preload=expander")]
    [InlineData("front-tube", "frontInnerTube=622")]
    [InlineData("rear-tube", "rearInnerTube=622")]
    [InlineData("front-valve", "frontTubelessValve=length 44")]
    [InlineData("rear-valve", "rearTubelessValve=length 44")]
    [InlineData("front-rim-tape", "frontRimTape=width 21")]
    [InlineData("rear-rim-tape", "rearRimTape=width 21")]
    [InlineData("grips", "grips=22.2")]
    public void A_part_in_the_slot_of_a_row_ends_it(string id, string part)
    {
        Build build = Put(Build.From(Frame.Read("steel")), Rows.Single(r => r.Data.Item1 == id).Data.Item2);
        Build with = Put(build, part);
        Assert.Equal(Listed(build).Where(i => i != id), Listed(with));
        Assert.DoesNotContain(with.Check().Findings, f => f.Verdict > Verdict.NeedsMeasuring);
        Assert.Equal(SmallPartTable.Rules.Single(r => r.Id == id).Slot!.Key, part[..part.IndexOf('=', StringComparison.Ordinal)]);
    }

    /// <summary>Any part asks for grease.</summary>
    private static IEnumerable<string> Listed(Build build) => build.SmallParts().Select(p => p.Id).Where(i => i != "grease");

    [Fact]
    public void Every_slot_of_a_row_is_shown() =>
        Assert.Equal(
            SmallPartTable.Rules.Where(r => r.Slot is not null).Select(r => r.Id).Order(StringComparer.Ordinal),
            typeof(SmallPartRowTests).GetMethod(nameof(A_part_in_the_slot_of_a_row_ends_it))!.GetCustomAttributes(typeof(InlineDataAttribute), false).Select(a => (string)((InlineDataAttribute)a).Data[0]!).Order(StringComparer.Ordinal));

    /// <summary>A bolt that is there is not bought again; one that is wrong is bought in the length that the stay asks for.</summary>
    [Theory]
    [InlineData("17", "flat; bolt length 30", "140", null)]
    [InlineData("17", "flat; bolt length 40", "140", "about 30 mm")]
    [InlineData("17", "flat; bolt length 15", "140", "about 30 mm")]
    [InlineData("17", "flat", "140", "about 30 mm")]
    [InlineData("unknown", "flat", "140", "as long as the stay is thick")]
    [InlineData("17", "flat", "160", "as long as the stay is thick")]
    public void Bolts_of_a_flat_mount_have_the_length_of_the_stay(string stay, string caliper, string rotor, string? says)
    {
        Build build = Put(Build.From(Frame.Read($"rear brake FM-rear-140; rear stay thickness {stay}")), $"rearCaliper={caliper} / rearRotor={rotor}");
        SmallPart? bolts = build.SmallParts().SingleOrDefault(p => p.Id == "rear-caliper-bolts");
        Assert.Equal(says is null, bolts is null);
        Assert.True(says is null || bolts!.What.Contains(says, StringComparison.Ordinal), bolts?.What);
    }

    /// <summary>Between stops a cable runs bare and a hose is clipped; what the frame holds all along or leads inside asks for nothing. Common practice, no source.</summary>
    [Theory]
    [InlineData("none", "rearBrakeLever=pull short", "the rear brake along", true)]
    [InlineData("none", "rearShifter=cable / frontShifter=cable", "the rear derailleur and the front derailleur along", true)]
    [InlineData("none", "rearShifter=wireless", null, false)]
    [InlineData("none", "frontBrakeLever=fluid mineral-oil", null, false)]
    [InlineData("none", "dropper=routing external", "the dropper along", true)]
    [InlineData("none", "dropper=routing internal", null, false)]
    [InlineData("none", "dropper=travel 125", null, false)]
    [InlineData("none; headset cables through", "rearBrakeLever=fluid mineral-oil", null, false)]
    [InlineData("stops", "rearBrakeLever=fluid mineral-oil", "clips for the line of the rear brake", true)]
    [InlineData("stops", "rearBrakeLever=pull short / rearShifter=cable", null, false)]
    [InlineData("stops", "rearBrakeLever=hand right", "if nothing holds it there", false)]
    [InlineData("stops", "dropper=routing external", "the dropper along", true)]
    [InlineData("clips", "rearShifter=cable", "clips for the seats of the frame", true)]
    [InlineData("full-length", "rearBrakeLever=fluid mineral-oil / rearShifter=cable", null, false)]
    [InlineData("inside", "rearBrakeLever=fluid mineral-oil / rearShifter=cable", null, false)]
    [InlineData("unknown", "rearBrakeLever=fluid mineral-oil / rearShifter=cable", null, false)]
    [InlineData("stops | clips", "rearBrakeLever=fluid mineral-oil", "the rear brake", true)]
    [InlineData("stops | full-length", "rearBrakeLever=fluid mineral-oil", "if nothing holds it there", false)]
    [InlineData("clips | full-length", "rearShifter=cable", "if nothing holds it there", false)]
    [InlineData("inside | full-length", "rearShifter=cable", null, false)]
    public void Lines_along_the_frame_ask_for_what_it_does_not_carry(string carried, string parts, string? says, bool sure)
    {
        SmallPart? guides = Put(Build.From(Frame.Read("steel; cable guides " + carried)), parts).SmallParts().SingleOrDefault(p => p.Id == "cable-guides");
        Assert.Equal(says is null, guides is null);
        Assert.True(says is null || guides!.What.Contains(says, StringComparison.Ordinal), guides?.What);
        Assert.Equal(sure, guides is not null && !guides.What.Contains("it is not said", StringComparison.Ordinal));
    }

    /// <summary>What decides is not stated: the line is there, and says so.</summary>
    [Theory]
    [InlineData("frontTyre=37-622", "front-tube", "or, with a tyre marked tubeless")]
    [InlineData("frontTyre=37-622 / frontWheel=rim 622; rim type TC", "front-tube", "or, with a tyre marked tubeless")]
    [InlineData("frontTyre=37-622; bead wired | folding / frontWheel=rim 622; rim type TC", "front-tube", "inner tube")]
    [InlineData("rearTyre=37-622; bead folding | tubeless / rearWheel=rim 622; rim type TC", "rear-tube", "read tyre and rim")]
    [InlineData("chain=size 9 | 10", "quick-link", "joining link for")]
    [InlineData("chain=pitches 114", "quick-link", "it is not said")]
    [InlineData("handlebar=31.8", "grips", "it is not said")]
    [InlineData("fork=material steel", "preload", "it is not said")]
    [InlineData("rearBrakeLever=hand right", "rear-brake-cable", "it is not said")]
    [InlineData("rearBrakeLever=pull none", "rear-hose-ends", "it is not said")]
    public void A_line_says_what_is_not_known(string parts, string id, string says) =>
        Assert.Contains(says, Put(Build.From(Frame.Read("steel")), parts).SmallParts().Single(p => p.Id == id).What, StringComparison.Ordinal);

    /// <summary>What a line hangs on is not said, or is one of several: it is listed as perhaps, and never lost.</summary>
    [Theory]
    [InlineData("dropper=routing unknown; travel 125", "dropper-cable", "unless it is wireless")]
    [InlineData("dropper=routing internal | external", "dropper-cable", "for the dropper, and")]
    [InlineData("dropper=routing internal | wireless", "dropper-cable", "it is not said")]
    [InlineData("frame=steel; dropper entry hole / dropper=travel 125", "frame-inserts", "inserts")]
    [InlineData("rearShifter=housing length unknown; spacing 9", "rear-shift-cable", "it is not said")]
    [InlineData("rearShifter=cable | wireless", "rear-shift-cable", "if it shifts by cable")]
    [InlineData("frontShifter=cable | wireless", "front-shift-cable", "if it shifts by cable")]
    [InlineData("cassette=largest sprocket 34", "cassette-lockring", "it is not said")]
    [InlineData("cassette=pattern HG-9 | XD", "cassette-lockring", "it is not said")]
    [InlineData("frontRotor=160", "front-rotor-bolts", "it is not said")]
    [InlineData("rearRotor=160", "rear-rotor-lockring", "it is not said")]
    [InlineData("frontCaliper=thickest rotor 1.9", "front-caliper-bolts", "it is not said")]
    [InlineData("rearCaliper=post | flat", "rear-caliper-bolts", "it is not said")]
    [InlineData("headset=upper stack 10 / fork=crown seat 30", "crown-race", "it is not said")]
    [InlineData("fork=front 12x100; axle thread M12x1.5 | M12x1.0", "front-axle", "M12 x 1.0 or M12 x 1.5")]
    [InlineData("stem=material carbon | aluminium", "carbon-paste", "it is not said")]
    [InlineData("frontTyre=37-622 / frontWheel=rim 622; rim type TC / frontTubelessValve=length 44 / frontRimTape=width 21", "front-sealant", "sealant")]
    public void A_line_that_hangs_on_what_is_not_said_is_listed_as_perhaps(string parts, string id, string says) =>
        Assert.Contains(says, Put(Build.From(Frame.Read("steel")), parts).SmallParts().Single(p => p.Id == id).What, StringComparison.Ordinal);

    /// <summary>Lines that a field takes with it, and why.</summary>
    private static readonly Dictionary<string, string> TakenAlong = new(StringComparer.Ordinal)
    {
        ["front-axle"] = "the slot is named among the missing ones",
        ["rear-axle"] = "the slot is named among the missing ones",
        ["front-axle-nuts"] = "without a thread nothing says that the axle is solid",
        ["rear-axle-nuts"] = "without a thread nothing says that the axle is solid",
        ["front-skewer"] = "without hub or end nothing says that there is a skewer; the joint of both asks",
        ["rear-skewer"] = "without hub or end nothing says that there is a skewer; the joint of both asks",
        ["headset-spacers"] = "a sum of seven lengths; the check of the steerer asks for the one that is lacking",
        ["headset-cover"] = "most cables go outside; the joint of the cables asks",
        ["cable-guides"] = "most frames carry what holds their lines: of one of which nobody says it nothing is listed",
        ["frame-inserts"] = "most cables go outside; the joint of the cables asks",
        ["front-valve"] = "a tube is listed, with the valve as the other way",
        ["rear-valve"] = "a tube is listed, with the valve as the other way",
        ["front-sealant"] = "a tube is listed, with the sealant as the other way",
        ["rear-sealant"] = "a tube is listed, with the sealant as the other way",
        ["front-tubular-cement"] = "most tyres are clinchers; the joint of tyre and rim asks",
        ["rear-tubular-cement"] = "most tyres are clinchers; the joint of tyre and rim asks",
        ["front-hose-ends"] = "a cable is listed, with the hose as the other way",
        ["rear-hose-ends"] = "a cable is listed, with the hose as the other way",
        ["front-rim-brake-fittings"] = "what a brake of an unknown kind takes is sold with it",
        ["rear-rim-brake-fittings"] = "what a brake of an unknown kind takes is sold with it",
        ["sprocket-lockring"] = "most sprockets are free; the lockring of the cassette is listed as perhaps",
        ["bottom-bracket-spacers"] = "the joint of crank and shell asks",
        ["carbon-paste"] = "carbon is named where it is: paste for every part of which nobody says what it is made of would stand on every list",
        ["bar-tape"] = "grips are listed, with bar tape as the other way",
    };

    [Fact]
    public void A_field_that_is_not_said_takes_no_line_with_it()
    {
        List<string> lost = [];
        foreach ((string id, string parts, string _, string _, string _) in Rows.Select(r => r.Data))
        {
            Build build = Put(Build.From(Frame.Read("steel")), parts);
            foreach (Slot slot in Slot.All.Where(s => build[s] is not null))
            {
                foreach ((string field, string value) in PartForms.Of(slot).Write(build[slot]!).Where(f => f.Key != "name"))
                {
                    if (PartForms.Of(slot).TrySet(build[slot]!, field, "unknown", Evidence.AsValue, out Part less, out _) && !build.With(less, slot).SmallParts().Any(p => p.Id == id))
                    {
                        lost.Add(id);
                    }
                }
            }
        }

        Assert.Equal([], lost.Distinct().Except(TakenAlong.Keys));
        Assert.Equal([], TakenAlong.Keys.Except(lost));
    }

    /// <summary>What is there is not bought again: a hose or a housing of which the length is stated.</summary>
    [Theory]
    [InlineData("frontBrakeLever=fluid mineral-oil; hose length 900", "front-hose-ends", "insert and olive, and")]
    [InlineData("rearBrakeLever=pull short; hose length 1500", "rear-brake-cable", "brake cable, ferrules")]
    [InlineData("rearShifter=cable; housing length 1500", "rear-shift-cable", "shift cable, ferrules")]
    public void A_line_that_is_there_is_not_bought_again(string parts, string id, string says)
    {
        Build build = Put(Build.From(Frame.Read("steel")), parts);
        Assert.StartsWith(says, build.SmallParts().Single(p => p.Id == id).What, StringComparison.Ordinal);

        // Who has the hose with its ends has the ends once it is cut.
        string field = parts.Contains("hose", StringComparison.Ordinal) ? "hoseLength" : "housingLength";
        Slot slot = Slot.Find(parts.Split('=')[0])!;
        Build before = Put(Build.From(Frame.Read("steel")), parts[..parts.LastIndexOf(';')]).WithSmallPart(id);
        Assert.DoesNotContain(before.WithCut(slot, field, "800").SmallParts(), p => p.Id == id);
    }

    /// <summary>A piece that is not there yet is bought, and refuses nothing.</summary>
    [Theory]
    [InlineData("01", "headset-on-crown", "crown-race", "-headset.code", "headset.upperCup=ZS44", "headset.lowerCup=ZS56", "headset.steerer=28.6", "headset.crownRace=none")]
    [InlineData("11", "flat-mount-bolt-in-stay", "rear-caliper-bolts", "rearCaliper.boltLength=none")]
    [InlineData("14", "flat-mount-bolt-in-stay", "rear-caliper-bolts", "rearCaliper.boltLength=none")]
    [InlineData("04", "shock-hardware-in-frame", "shock-hardware-in-frame:shock-hardware-of-frame", "shock.lowerHardware=none")]
    [InlineData("04", "shock-bush-in-eyelet", "shock-bush-in-eyelet:shock-bush-of-eyelet", "shock.bush=none")]
    public void A_piece_that_is_not_there_yet_is_listed(string number, string joint, string id, params string[] changes)
    {
        Build build = WholeBuilds.Load(number, changes);
        Fit fit = WholeBuilds.Of(build, joint);
        Assert.Equal(Verdict.NeedsPart, fit.Verdict);
        Assert.NotEmpty(fit.Remedies);
        Assert.Single(build.SmallParts(), p => p.Id == id);
        Assert.DoesNotContain(build.WithSmallPart(id).SmallParts(), p => p.Id == id);
        Assert.DoesNotContain(build.SmallParts(), p => p.Id != id && p.Id.StartsWith(joint, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("frontTyre=37-622 / frontWheel=rim 622; rim type C", "tubeless")]
    [InlineData("frontTyre=37-622; bead wired | folding / frontWheel=rim 622; rim type TC", "tubeless")]
    public void Where_a_tube_is_the_only_way_no_other_is_offered(string parts, string never) =>
        Assert.DoesNotContain(Put(Build.From(Frame.Read("steel")), parts).SmallParts(), p => p.What.Contains(never, StringComparison.Ordinal));

    private static Build Put(Build build, string parts)
    {
        foreach (string part in parts.Split(" / ", StringSplitOptions.RemoveEmptyEntries))
        {
            int at = part.IndexOf('=', StringComparison.Ordinal);
            Slot slot = Slot.Find(part.AsSpan(0, at))!;
            string text = part[(at + 1)..];
            if (text.Length == 0)
            {
                build = build.Without(slot);
                continue;
            }

            Assert.True(PartForms.Of(slot).TryReadAny(text, out Part read, out var problems), $"{part}: {string.Join(" | ", problems)}");
            build = build.With(read, slot);
        }

        return build;
    }
}
