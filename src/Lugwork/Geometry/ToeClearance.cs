using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace Lugwork.Geometry;

/// <summary>Room between the pedal and the front tyre, estimated straight ahead in one plane: front centre less front radius less crank.</summary>
/// <remarks>Room = front centre - front radius - crank, mm; 89 mm by "16 CFR 1512.17 Other requirements (ground and toe clearance)", 100 mm by "Test of toe clearance, JIS D 9301:2019 (in Japanese)". The real one is measured from the middle of the pedal forward to the tyre or mudguard, the wheel turned to wherever it is least. The regulation wants 89 mm without toe clips, another test 100 mm.</remarks>
public static class ToeClearance
{
    private const double LeastMillimetres = ClearanceSums.LeastToeMillimetres;
    private const double AmpleMillimetres = ClearanceSums.AmpleToeMillimetres;

    /// <summary>The least by regulation where the foot is not held: 89 mm.</summary>
    public static Length Least => Length.FromMillimeters(LeastMillimetres);

    /// <summary>The least by the other test where the foot is not held: 100 mm.</summary>
    public static Length Ample => Length.FromMillimeters(AmpleMillimetres);

    /// <summary>Where the least comes from; the estimate is arithmetic.</summary>
    public static ImmutableArray<Source> Sources => [Lugwork.Sources.ClearanceRegulation, Lugwork.Sources.ToeClearanceTest];

    /// <summary>The estimate; negative where the shoe reaches past the tyre.</summary>
    /// <param name="frontCentre">From the bottom bracket to the front axle, straight, 250 to 1,300 mm.</param>
    /// <param name="frontRadius">Radius of the front wheel with its tyre, or of the mudguard, 100 to 520 mm.</param>
    /// <param name="crank">Length of the crank, 100 to 250 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static Length Estimate(Length frontCentre, Length frontRadius, Length crank) =>
        Length.FromMillimeters(
            NumberRange.Millimetres(frontCentre, 250, 1_300, nameof(frontCentre))
            - NumberRange.Millimetres(frontRadius, 100, 520, nameof(frontRadius))
            - NumberRange.Millimetres(crank, 100, 250, nameof(crank)));

    /// <summary>Whether the estimate leaves enough to go without measuring.</summary>
    /// <param name="frontCentre">From the bottom bracket to the front axle, straight, 250 to 1,300 mm.</param>
    /// <param name="frontRadius">Radius of the front wheel with its tyre, or of the mudguard, 100 to 520 mm.</param>
    /// <param name="crank">Length of the crank, 100 to 250 mm.</param>
    /// <returns>Fits from 100 mm on; needs measuring below, for only the turned wheel decides.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static SumCheck Check(Length frontCentre, Length frontRadius, Length crank)
    {
        double room = Estimate(frontCentre, frontRadius, crank).Millimeters;
        string told = room < 0 ? "the shoe reaches past the tyre" : room < LeastMillimetres ? "below the 89 mm of the regulation" : room < AmpleMillimetres ? "below the 100 mm of one test" : "at least the 100 mm of one test";
        return new SumCheck("toe-clearance", room < AmpleMillimetres ? Verdict.NeedsMeasuring : Verdict.Fits, string.Create(CultureInfo.InvariantCulture, $"about {room:0.#} mm straight ahead, {told}{(room < AmpleMillimetres ? "; measure with the wheel turned" : "")}"), room < AmpleMillimetres ? "the room by rule, with the wheel turned to both sides" : "", Cautions.GroundAndToe, [Lugwork.Sources.ClearanceRegulation, Lugwork.Sources.ToeClearanceTest])
            .Comparing(("room", room, "mm"), ("least by regulation", LeastMillimetres, "mm"), ("least by one test", AmpleMillimetres, "mm"));
    }
}
