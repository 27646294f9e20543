using Lugwork.Cockpit;

namespace Lugwork.Tests.Cockpit;

/// <summary>Hands and sides, a cell for every combination of left, right and either: F fits, ? needs measuring, X does not fit.</summary>
public sealed class HandMatrixTests
{
    [Fact]
    public void One_lever_for_each_hand() => Assert.Equal("XFF FXF FFF", Two(HandRelations.OneEachSide));

    [Fact]
    public void The_front_lever_and_the_hand_of_the_rider() => Assert.Equal("FXF XFF FFF", Two(HandRelations.OfRider));

    [Fact]
    public void The_rear_run_and_its_lever() => Assert.Equal("?FF F?F FFF", Two(HandRelations.RearRun));

    [Fact]
    public void Both_levers_and_the_rider() => Assert.Equal("FFF FFF FFF|FFF FFF FFF|XFF FXF FFF", Three(HandRelations.Together));

    [Fact]
    public void The_rear_run_its_lever_and_the_rider() => Assert.Equal("FFF FFF F?F|FFF FFF ?FF|FFF FFF FFF", Three(HandRelations.RearRunOfRider));

    [Fact]
    public void Where_one_is_absent_there_is_nothing_to_compare()
    {
        foreach (Relation relation in new[] { HandRelations.Together, HandRelations.RearRunOfRider })
        {
            for (int absent = 0; absent < 3; absent++)
            {
                long[] values = [Hand.Left.FitCode, Hand.Right.FitCode, Hand.Left.FitCode];
                values[absent] = 0;
                Outcome outcome = relation.Judge(values);
                Assert.Equal((Verdict.DoesNotFit, Reasons.NothingToMate), (outcome.Verdict, outcome.Reason));
            }
        }
    }

    private static string Two(Relation relation) =>
        string.Join(' ', Hands.Select(a => string.Concat(Hands.Select(b => Cell(relation.Judge([a, b]).Verdict)))));

    private static string Three(Relation relation) =>
        string.Join('|', Hands.Select(a => string.Join(' ', Hands.Select(b => string.Concat(Hands.Select(c => Cell(relation.Judge([a, b, c]).Verdict)))))));

    private static long[] Hands => [Hand.Left.FitCode, Hand.Right.FitCode, Hand.Either.FitCode];

    private static char Cell(Verdict verdict) => verdict switch
    {
        Verdict.Fits => 'F',
        Verdict.NeedsMeasuring => '?',
        Verdict.DoesNotFit => 'X',
        _ => '!',
    };
}
