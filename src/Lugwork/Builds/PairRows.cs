using System.Collections.Immutable;
using Lugwork.Cockpit;
using static Lugwork.JointInputs;

namespace Lugwork;

/// <summary>The rows of front beside rear, of hands, and of the line of the chain. Most stand on figures that few state, and are silent without them.</summary>
internal static class PairRows
{
    public static ImmutableArray<Joint> All { get; } =
    [
        new("chain-angle", "Chain angle when cross-chained", () => DriveLineChecks.Angle, CrankChainline, Hub(Slot.RearWheel), SpacingOfCassette, Chainstay) { Sources = [Sources.ChainAngle], Seen = [0, 1, 2, 3], NeedsAllSeen = true, MostHaveNone = true },
        new("single-chainline", "Chainline of one ring and one sprocket", () => DriveLineChecks.OneSprocket, RingLine, SprocketLine) { Sources = [Sources.OneSprocketLine, Sources.GearHubChainline], Caution = Cautions.ShiftSetUp, Seen = [1], MostHaveNone = true },
        new("front-derailleur-tab", "Front derailleur tab and outer ring", () => DriveLineChecks.Tab, TabRing, LargeRing, FrontMountOfDerailleur) { Sources = [Sources.FrontDerailleurs], Caution = Cautions.ShiftSetUp, Seen = [0], MostHaveNone = true },
        new("crank-for-shell", "Crank and the shell it is made for", () => DriveLineChecks.ShellOfCrank, ShellOfFrame, JointInputs.ShellOfCrank) { Sources = [Sources.SuperBoostPress, Sources.CranksAndBrackets], Caution = Cautions.ShiftSetUp, Seen = [1], MostHaveNone = true },
        new("levers-one-each-side", "Brake levers, one for each hand", () => HandRelations.OneEachSide, HandOf(Slot.FrontBrakeLever), HandOf(Slot.RearBrakeLever)) { Sources = [Sources.BrakeHands], Caution = Cautions.BrakeHands, Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("front-brake-hand", "Front brake and the rider's hand", () => HandRelations.OfRider, HandOf(Slot.FrontBrakeLever), HandOfRider) { Sources = [Sources.BrakeHands, Sources.BrakeHandsByCountry], Caution = Cautions.BrakeHands, Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("brake-hands-together", "Both levers and the rider's hand", () => HandRelations.Together, HandOf(Slot.FrontBrakeLever), HandOf(Slot.RearBrakeLever), HandOfRider) { Sources = [Sources.BrakeHands, Sources.BrakeHandsByCountry], Caution = Cautions.BrakeHands, Seen = [0, 1, 2], NeedsAllSeen = true, MostHaveNone = true },
        new("rear-hose-side", "Side of the rear hose or housing", () => HandRelations.RearRun, RearHoseSide, HandOf(Slot.RearBrakeLever)) { Sources = [Sources.CommonPractice], Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("rear-hose-side-of-rider", "Side of the rear hose and the rider's hand", () => HandRelations.RearRunOfRider, RearHoseSide, HandOf(Slot.RearBrakeLever), HandOfRider) { Sources = [Sources.CommonPractice, Sources.BrakeHands], Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("rotor-fixings-front-and-rear", "Front and rear hub, rotor fixing", () => PairChecks.Fixings, FixingOrNone(Slot.FrontWheel), FixingOrNone(Slot.RearWheel)) { Sources = [Sources.CommonPractice], Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("tyres-front-and-rear", "Front and rear tyre, width", () => PairChecks.Tyres, WidthOf(Slot.FrontTyre), WidthOf(Slot.RearTyre)) { Sources = [Sources.CommonPractice], Seen = [0, 1], NeedsAllSeen = true, MostHaveNone = true },
        new("front-adapters-stacked", "Front brake adapters stacked", () => PairChecks.Stacked, SecondAdapter(Slot.FrontCaliper)) { Sources = [Sources.CommonPractice], Caution = Cautions.BrakeWork, Seen = [0], MostHaveNone = true },
        new("rear-adapters-stacked", "Rear brake adapters stacked", () => PairChecks.Stacked, SecondAdapter(Slot.RearCaliper)) { Sources = [Sources.CommonPractice], Caution = Cautions.BrakeWork, Seen = [0], MostHaveNone = true },
        new("crown-under-down-tube", "Fork crown under the down tube", () => PairChecks.Crown, KnobRise, LowerStack, DownTubeDrop) { Sources = [Sources.DownTubeClearance], Caution = Cautions.GeometryCare, Seen = [0, 2], NeedsAllSeen = true, MostHaveNone = true },
    ];
}
