using Lugwork.Brakes;

namespace Lugwork.PublishedTables.WorkedExamples;

/// <summary>How far a caliper moves for another rotor, and one printed slip.</summary>
public sealed class RotorAdapterExamples : WorkedExample
{
    private const string Topic = "rotor-adapter";

    public static TheoryData<string> Ids => IdsOf(Topic);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_move_comes_out(string id)
    {
        WorkedRow row = RowOf(Topic, id);
        RotorChange change = RotorChange.Of(RotorSize.OfFitCode((long)row["from"]), RotorSize.OfFitCode((long)row["to"]));
        Agrees(row, row.Has("as") ? (change.TorqueRatio - 1) * 100 : change.AlongRadius.Millimeters);
    }

    [Fact]
    public void Every_row_is_here() => Holds(Topic, 8);
}
