using Lugwork.Hubs;
using Row = (string Case, string Source, string Hub, string Ends, string Into, string Material, Lugwork.Verdict Expected, string Remedy);

namespace Lugwork.PublishedTables;

/// <summary>Hubs in frame and fork ends: published cases, each with its source.</summary>
/// <remarks>
/// Judged otherwise than printed: the fat 135 mm front hub (H51, from memory, "no") needs measuring, because the row's own remedy
/// is to find out which variant the fork follows and the size alone does not say it.
/// Springing a hub into titanium counts with aluminium and carbon: the frame-spacing article lets steel only be re-spaced.
/// </remarks>
public sealed class HubsInEndsChecks
{
    private const string Measuring = "Axle and hub standards, cassette compatibility and rotor mounting; Dandy Horse";
    private const string Derived = "arithmetic on the published widths";
    private const string Boost148 = "Tech Talk: Boost 148 explained; Art's Cyclery";
    private const string Builder148 = "148x12, the future; Waltworks";
    private const string SixMm = "Mountain Hub Spacing: The 6-Millimeter Conundrum; a wheel maker";
    private const string BoostTrade = "Boost Your Potential For Growth; QBP";
    private const string Axle148 = "2016 axle standards part 1: rear 148mm thru axle; Bikerumor";
    private const string AxleGuide = "A guide to mountain bike axle standards; BikeRadar";
    private const string Trail157 = "Our take on 157TRAIL aka Superboost axle widths; Knolly Bikes";
    private const string Super157 = "Super Boost Plus 157 rear axle standard; Enduro MTB";
    private const string New20 = "Really, a 'new' 20x110mm axle standard; BikeRadar";
    private const string EndCapForum = "Rotor alignment and a 100 mm hub with 3.5 mm end caps; CycleChat forum";
    private const string EndCaps = "What are Torque Caps?; NOBL Wheels";
    private const string HubPage = "Hub 'Standards'; Boyd Cycling";
    private const string Spacing = "Bicycle Frame/Hub Spacing; sheldonbrown.com";
    private const string SpreadPost = "Fitting a 130 mm hub in a 126 mm frame; Classic Rendezvous list archive";
    private const string CassetteFaq = "Cassette FAQ; BikeRadar forum";
    private const string BoostRear = "How do I know if I have a Boost rear hub?; celiamania.com";
    private const string Single = "Chainline, single-speed; sheldonbrown.com";
    private const string Wheels = "Information & Advice: Bicycle Wheels; Moruya Bicycles";
    private const string Fat = "Understanding Drivetrain & Rear Tire Capacity; Salsa Cycles";
    private const string Practice = "common practice, no source";
    private const string Memory = "from memory";

    public static TheoryData<string, string, string, string, string, string, Verdict, string> Rear => Data(
        ("H01", Measuring, "R148-12", "swappable", "R141-QR", "aluminium", Verdict.NeedsPart, "141"),
        ("H02", Measuring, "R141-QR", "swappable", "R148-12", "aluminium", Verdict.NeedsPart, "12x148"),
        ("H02, solid axle", Measuring, "R141-QR", "fixed", "R148-12", "aluminium", Verdict.DoesNotFit, ""),
        ("H02, bore not known", Measuring, "R141-QR", "unknown", "R148-12", "aluminium", Verdict.NeedsMeasuring, "12x148"),
        ("H03", Derived, "R141-QR", "swappable", "R135-QR", "steel", Verdict.DoesNotFit, ""),
        ("H04", Axle148, "R135-QR", "swappable", "R141-QR", "steel", Verdict.NeedsMeasuring, "3 mm rotor spacer"),
        ("H05", Boost148, "R135-QR", "swappable", "R142-12", "steel", Verdict.NeedsPart, "12x142"),
        ("H05, bore not known", Builder148, "R135-QR", "unknown", "R142-12", "steel", Verdict.NeedsMeasuring, "12x142"),
        ("H06", Boost148, "R142-12", "swappable", "R135-QR", "carbon", Verdict.NeedsPart, "135"),
        ("H07", SixMm, "R142-12", "swappable", "R148-12", "aluminium", Verdict.NeedsMeasuring, "3 mm rotor spacer"),
        ("H07, one side", BoostTrade, "R142-12", "swappable", "R148-12", "aluminium", Verdict.NeedsMeasuring, "6 mm on one side"),
        ("H08", AxleGuide, "R148-12", "swappable", "R142-12", "steel", Verdict.DoesNotFit, ""),
        ("H10", Trail157, "R150-12", "swappable", "R157-12DH", "aluminium", Verdict.NeedsPart, "12x157"),
        ("H11", Trail157, "R157-12DH", "swappable", "R150-12", "aluminium", Verdict.NeedsPart, "150"),
        ("H12", Super157, "R157-12DH", "swappable", "R157-12W", "carbon", Verdict.Fits, ""),
        ("H13", Super157, "R157-12W", "swappable", "R157-12DH", "carbon", Verdict.Fits, ""),
        ("H15", Derived, "R148-12", "swappable", "R157-12W", "carbon", Verdict.DoesNotFit, ""),
        ("H27", AxleGuide, "R150-12", "swappable", "R135-QR", "steel", Verdict.DoesNotFit, ""),
        ("H28", HubPage, "R135-QR", "fixed", "R142-12", "steel", Verdict.DoesNotFit, ""),
        ("H28, bolted", HubPage, "R135-10", "fixed", "R142-12", "steel", Verdict.DoesNotFit, ""),
        ("H30", SpreadPost, "R130", "fixed", "R126", "steel", Verdict.Fits, ""),
        ("H30, frame not known", Spacing, "R130", "fixed", "R126", "unknown", Verdict.NeedsMeasuring, ""),
        ("H31", Spacing, "R130", "fixed", "R126", "aluminium", Verdict.Unsafe, ""),
        ("H31, carbon", Spacing, "R130", "fixed", "R126", "carbon", Verdict.Unsafe, ""),
        ("H32", Spacing, "R135-QR", "fixed", "R130", "steel", Verdict.NeedsPart, "2.5 mm a side"),
        ("H33", Spacing, "R135-QR", "fixed", "R130", "aluminium", Verdict.Unsafe, ""),
        ("H33, carbon", Spacing, "R135-QR", "fixed", "R130", "carbon", Verdict.Unsafe, ""),
        ("H33, titanium", Spacing, "R135-QR", "fixed", "R130", "titanium", Verdict.Unsafe, ""),
        ("H34", CassetteFaq, "R130", "fixed", "R132.5", "aluminium", Verdict.Fits, ""),
        ("H34, wider hub", CassetteFaq, "R135-QR", "fixed", "R132.5", "aluminium", Verdict.Fits, ""),
        ("H35", BoostRear, "R142-12", "swappable", "R145-flex", "steel", Verdict.Fits, ""),
        ("H35, wider hub", BoostRear, "R148-12", "swappable", "R145-flex", "steel", Verdict.Fits, ""),
        ("H36", Memory, "R142-12", "swappable", "R140-145t", "steel", Verdict.DoesNotFit, ""),
        ("H37", Single, "R120", "fixed", "R130", "steel", Verdict.NeedsMeasuring, "5 mm spacers"),
        ("H38", Wheels, "R126", "fixed", "R130", "steel", Verdict.NeedsPart, "2 mm spacers"),
        ("H40", Derived, "R110-14", "fixed", "R110-3/8", "steel", Verdict.DoesNotFit, ""),
        ("H41", Practice, "R110-3/8", "fixed", "R110-14", "steel", Verdict.NeedsPart, "stepped washers"),
        ("H46", Derived, "R170-QR", "swappable", "R177-12", "aluminium", Verdict.NeedsPart, "12x177"),
        ("H47", Derived, "R190-QR", "swappable", "R197-12", "aluminium", Verdict.NeedsPart, "12x197"),
        ("H48", Derived, "R170-QR", "swappable", "R190-QR", "aluminium", Verdict.DoesNotFit, ""),
        ("H48, thru-axle", Derived, "R177-12", "swappable", "R197-12", "aluminium", Verdict.DoesNotFit, ""),
        ("H49", Fat, "R135-QR", "fixed", "R135-OFF", "steel", Verdict.DoesNotFit, ""));

    public static TheoryData<string, string, string, string, string, string, Verdict, string> Front => Data(
        ("H16", New20, "F110-15B", "swappable", "F110-20", "", Verdict.DoesNotFit, ""),
        ("H17", New20, "F110-20", "swappable", "F110-15B", "", Verdict.DoesNotFit, ""),
        ("H18", New20, "F110-20B", "swappable", "F110-15B", "", Verdict.NeedsPart, "15x110"),
        ("H19", New20, "F110-20B", "swappable", "F110-20", "", Verdict.DoesNotFit, ""),
        ("H20", New20, "F110-20", "swappable", "F110-20B", "", Verdict.NeedsMeasuring, "5 mm rotor spacer"),
        ("H21", BoostTrade, "F100-15", "swappable", "F110-15B", "", Verdict.NeedsMeasuring, "5 mm rotor spacer"),
        ("H22", Derived, "F110-15B", "swappable", "F100-15", "", Verdict.DoesNotFit, ""),
        ("H23", Measuring, "F110-15B", "swappable", "F110-12RB", "", Verdict.NeedsMeasuring, "12 mm end caps"),
        ("H24", EndCapForum, "F100-15", "swappable", "F100-12", "", Verdict.NeedsPart, "19 mm outside"),
        ("H25", EndCaps, "F110-15B-31", "swappable", "F110-15B", "", Verdict.DoesNotFit, ""),
        ("H26", EndCaps, "F110-15B", "swappable", "F110-15B-31", "", Verdict.Fits, ""),
        ("H27", AxleGuide, "F100-15", "swappable", "F100-QR9", "", Verdict.NeedsPart, "100 mm QR"),
        ("H27, 12 mm", AxleGuide, "F100-12", "swappable", "F100-QR9", "", Verdict.NeedsPart, "100 mm QR"),
        ("H27, other family", AxleGuide, "F110-15B", "swappable", "F100-QR9", "", Verdict.DoesNotFit, ""),
        ("H28", HubPage, "F100-QR9", "fixed", "F100-12", "", Verdict.DoesNotFit, ""),
        ("H28, 15 mm", HubPage, "F100-QR9", "fixed", "F100-15", "", Verdict.DoesNotFit, ""),
        ("H50", Derived, "R150-12", "swappable", "F150-15", "", Verdict.DoesNotFit, ""),
        ("H51", Memory, "F135-QR", "fixed", "F135-QR", "", Verdict.NeedsMeasuring, ""));

    [Theory]
    [MemberData(nameof(Rear))]
    public void A_rear_hub_stands_in_its_frame_as_published(string row, string source, string hub, string ends, string into, string material, Verdict expected, string remedy)
    {
        Build build = Build.From(Frame.Read($"rear {into}; material {Published.Key<Material>(material, source)}")).With(Wheel.Read($"hub {hub}; ends {Published.Key<HubEnds>(ends, source)}"), Slot.RearWheel);

        AssertFit(build, "rear-wheel-in-frame", row, source, expected, remedy);
    }

    [Theory]
    [MemberData(nameof(Front))]
    public void A_front_hub_stands_in_its_fork_as_published(string row, string source, string hub, string ends, string into, string material, Verdict expected, string remedy)
    {
        Assert.Empty(material);
        Build build = Build.From(Frame.Read("material steel")).With(Fork.Read($"front {into}")).With(Wheel.Read($"hub {hub}; ends {ends}"), Slot.FrontWheel);

        AssertFit(build, "front-wheel-in-fork", row, source, expected, remedy);
    }

    private static void AssertFit(Build build, string joint, string row, string source, Verdict expected, string remedy)
    {
        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == joint);
        Assert.True(expected == fit.Verdict, $"{row} ({source}): {expected} is published, judged: {fit}");
        Assert.Contains(remedy, string.Join(" | ", fit.Remedies), StringComparison.Ordinal);
    }

    private static TheoryData<string, string, string, string, string, string, Verdict, string> Data(params Row[] rows)
    {
        TheoryData<string, string, string, string, string, string, Verdict, string> data = [];
        foreach (Row row in rows)
        {
            data.Add(row.Case, row.Source, row.Hub, row.Ends, row.Into, row.Material, row.Expected, row.Remedy);
        }

        return data;
    }
}
