using Lugwork.Brakes;

namespace Lugwork.Tests.Brakes;

/// <summary>A cell for every kind of brake, from the road caliper to the cable-worked hydraulic disc: F fits, ? needs measuring, X does not fit, U unsafe.</summary>
public sealed class BrakeMatrixTests
{
    [Theory]
    [InlineData("short", "F?FUFF?FXX?FX?")]
    [InlineData("long", "U?UFUU?UFX?UX?")]
    [InlineData("newer-road", "???U???FXX??X?")]
    public void Under_a_lever(string pull, string cells)
    {
        long code = CablePull.Parse(pull, null).FitCode;
        Assert.Equal(cells, Row(BrakeActionRelations.LeverAndBrake, code));
        Assert.Equal(cells, Row(BrakeActionRelations.LeverOrFluid, code));
    }

    [Fact]
    public void On_bosses() =>
        Assert.All(BrakeBoss.All, b => Assert.Equal(b.IsBelowRim ? "XXFFFXXXXXXXXX" : "XXXXXFFXXXXXXX", Row(BrakeActionRelations.BrakeOnBosses, b.FitCode)));

    private static string Row(Relation relation, long code) => string.Concat(BrakeType.All.OrderBy(t => t.FitCode).Select(t => relation.Judge([code, t.FitCode]).Verdict switch
    {
        Verdict.Fits => 'F',
        Verdict.NeedsMeasuring => '?',
        Verdict.DoesNotFit => 'X',
        Verdict.Unsafe => 'U',
        _ => '!',
    }));
}
