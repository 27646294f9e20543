using System.Collections.Immutable;
using A = Lugwork.Hubs.HubAttachment;
using P = Lugwork.Hubs.RotorPlace;

namespace Lugwork.Hubs;

/// <summary>What the tables tell of a hub standard beside its width and axle. Made when it is first asked for: judging does not need it.</summary>
/// <param name="Family">Key of the shell; empty where it is none's or uncertain.</param>
/// <param name="Held">What holds it.</param>
/// <param name="RotorAt">Where the rotor can stand; empty where no source says.</param>
/// <param name="Shift">How much further out the drive side stands than at 135 mm, micrometres; null for front hubs.</param>
/// <param name="Ends">Outside of the end caps, micrometres; 0 where no source says.</param>
/// <param name="EndsSource">Where that comes from.</param>
/// <param name="TellsApart">What parts it from others of its width.</param>
internal sealed record HubDetails(string Family, ImmutableArray<A> Held, ImmutableArray<P> RotorAt, int? Shift = null, int Ends = 0, Source? EndsSource = null, string TellsApart = "")
{
    private static readonly ImmutableArray<P> Unknown = [];

    private static readonly HubDetails[] ByCode = Make();

    public static HubDetails Of(HubStandard standard) => ByCode[standard.FitCode];

    private static HubDetails[] Make()
    {
        HubDetails[] rows = new HubDetails[50];
        rows[1] = new("F70", [A.Nuts, A.QuickRelease], [P.None]);
        rows[2] = new("F74", [A.Nuts, A.QuickRelease], [P.None]);
        rows[3] = new("F9x", [A.Nuts], [P.None], TellsApart: "seen from 90 to 96 mm");
        rows[4] = new("F100", [A.QuickRelease], [P.Front100], TellsApart: "hollow axle with a 5 mm skewer");
        rows[5] = new("F100", [A.ThruBolt], [P.Front100], TellsApart: "a 9 mm bolt through the hub, in the open slots of a QR fork");
        rows[6] = new("F100N", [A.Nuts], [P.None, P.Front100], TellsApart: "solid axle with nuts");
        rows[47] = new("F100N", [A.Nuts], [P.None, P.Front100], TellsApart: "solid 9 mm axle with nuts");
        rows[48] = new("F100N", [A.Nuts], [P.None, P.Front100], TellsApart: "solid 5/16 in axle with nuts");
        rows[49] = new("F100N", [A.Nuts], [P.None, P.Front100], TellsApart: "solid 3/8 in axle with nuts");
        rows[7] = new("F100", [A.ThruAxle], [P.Front100], null, 19_000, Sources.EndCapForum, "closed ends, 12 mm axle, 19 mm end caps");
        rows[8] = new("F100", [A.ThruAxle], [P.Front100], null, 21_000, Sources.EndCapForum, "closed ends, 15 mm axle, 21 mm end caps");
        rows[9] = new("F110B", [A.ThruAxle], [P.FrontBoost], null, 21_000, Sources.EndCapPage, "21 mm end caps");
        rows[10] = new("F110B", [A.ThruAxle], [P.FrontBoost], null, 31_000, Sources.EndCapPage, "31 mm end caps; they enter only a fork with the large recess");
        rows[11] = new("F110-20", [A.ThruAxle], [P.FrontPreBoost], TellsApart: "the rotor stands 5 mm further in than on the Boost hub of this size");
        rows[12] = new("F110B", [A.ThruAxle], [P.FrontBoost], TellsApart: "the rotor stands 5 mm further out than on the hub of before Boost");
        rows[13] = new("F110RB", [A.ThruAxle], [P.FrontRoadBoost], TellsApart: "12 mm axle; the rotor need not stand where the off-road one does");
        rows[14] = new("F135fat", [A.QuickRelease, A.Nuts], [P.FatFrontType, P.FatRearType], TellsApart: "two variants: ask on which side of the middle the fork has its caliper");
        rows[15] = new("F142fat", [A.ThruAxle], Unknown);
        rows[16] = new("F150fat", [A.ThruAxle], Unknown, TellsApart: "a front hub: the rear 150 shares only the number");
        rows[17] = new("", [A.Own], [P.Own]);
        rows[18] = new("R110", [A.Nuts], [P.None], -12_500, TellsApart: "3/8 in axle");
        rows[44] = new("R110", [A.Nuts], [P.None], -12_500, TellsApart: "14 mm axle");
        rows[19] = new("R114", [A.Nuts], [P.None], -10_500);
        rows[20] = new("R116", [A.Bolts], Unknown, -9_500);
        rows[21] = new("R120", [A.Nuts, A.QuickRelease], [P.None], -7_500, TellsApart: "10 mm axle");
        rows[46] = new("R120", [A.Nuts], [P.None], -7_500, TellsApart: "3/8 in axle");
        rows[22] = new("R126", [A.QuickRelease], [P.None], -4_500);
        rows[23] = new("R129", [A.Bolts], Unknown, -3_000, TellsApart: "bolts, for snail cams");
        rows[24] = new("R130", [A.QuickRelease], [P.None], -2_500);
        rows[25] = new("", [A.QuickRelease], [P.None, P.Rear135], -1_250, TellsApart: "a frame meant for 130 and 135 mm hubs");
        rows[26] = new("R135", [A.QuickRelease], [P.Rear135], 0, TellsApart: "hollow axle with a 5 mm skewer, open slots");
        rows[27] = new("R135", [A.ThruBolt], [P.Rear135], 0, TellsApart: "a 10 mm bolt through the hub, open slots");
        rows[28] = new("R135", [A.ThruAxle, A.Bolts], [P.Rear135], 0, TellsApart: "12 mm axle, ends without a recess");
        rows[29] = new("R135", [A.ThruAxle], [P.Rear135], 0, 19_000, Sources.AxleWidths157, "closed ends with a shelf of 3.5 mm a side: the inner gap is 135 mm");
        rows[30] = new("Rtandem", [A.QuickRelease, A.Bolts], Unknown, 5_000, TellsApart: "tandem; 140 and 145 mm are seen");
        rows[31] = new("", [A.ThruAxle], [P.Rear135, P.Rear148], 1_500, 19_000, Sources.Derived, "a frame made to flex 3 mm either way for 142 and 148 mm hubs");
        rows[32] = new("R148", [A.QuickRelease], [P.Rear148], 3_000, TellsApart: "hollow axle with a 5 mm skewer, open slots");
        rows[33] = new("R148", [A.ThruAxle], [P.Rear148], 3_000, 19_000, Sources.Derived, "off-road: the rotor stands 3 mm further out than on a 142 mm hub");
        rows[34] = new("", [A.ThruAxle], [P.RearRoadBoost], 3_000, 19_000, Sources.Derived, "road: the rotor need not stand where the off-road one does");
        rows[35] = new("R150", [A.Bolts, A.ThruAxle], [P.Rear150], 7_500, TellsApart: "12 mm axle, ends without a recess");
        rows[45] = new("R150", [A.Bolts], [P.Rear150], 7_500, TellsApart: "10 mm axle, ends without a recess");
        rows[36] = new("R150", [A.ThruAxle], [P.Rear150], 7_500, 19_000, Sources.AxleWidths157, "flanges of a 150 mm hub, for shells of 83 mm");
        rows[37] = new("R157W", [A.ThruAxle], [P.Rear150], 7_500, 19_000, Sources.AxleWidths157, "flanges further out, for shells of 73 mm");
        rows[38] = new("Rtandem", [A.QuickRelease, A.Bolts], Unknown, 12_500, TellsApart: "tandem");
        rows[39] = new("R135", [A.QuickRelease], [P.RearOffset], 17_500, TellsApart: "the rear end stands 17.5 mm to the drive side: the rim is dished by that");
        rows[40] = new("R170", [A.QuickRelease], Unknown, 17_500);
        rows[41] = new("R170", [A.ThruAxle], Unknown, 17_500, 19_000, Sources.Derived, "closed ends with a shelf of 3.5 mm a side: the inner gap is 170 mm");
        rows[42] = new("R190", [A.QuickRelease], Unknown, 27_500);
        rows[43] = new("R190", [A.ThruAxle], Unknown, 27_500, 19_000, Sources.Derived, "closed ends with a shelf of 3.5 mm a side: the inner gap is 190 mm");
        return rows;
    }
}
