using Lugwork.Seating;
using Lugwork.Suspension;
using static Lugwork.PublishedTables.Identified;

namespace Lugwork.PublishedTables;

/// <summary>Forks with two crowns, and what a saddle is held by, as pages print them.</summary>
public sealed class CrownsAndRailsChecks
{
    private const string Manual = "Owner's manual of 2000, upgrading a suspension fork, p. 81; a bicycle maker";
    private const string Names = "Dual crown vs triple crown fork; outdoorspree.com";
    private const string Mounts = "Are mountain bike saddles universal; suspensiontraveler.com";

    [Theory]
    [InlineData("double clamp", Manual)]
    [InlineData("triple clamp", Manual)]
    [InlineData("dual crown", Names)]
    [InlineData("triple crown", Names)]
    [InlineData("double crown", Names)]
    public void A_fork_with_two_crowns_by_its_printed_name_is_unsafe_where_the_frame_was_not_made_for_it(string words, string source)
    {
        Reads<CrownType>(source, "dual", words);
        Outcome outcome = ForkRelations.CrownOnFrame.Judge([CrownType.Single.FitCode, CrownType.Parse(words, null).FitCode]);
        Assert.True(outcome.Verdict == Verdict.Unsafe && outcome.Reason!.Mend.Contains("frame maker", StringComparison.Ordinal), source);
    }

    /// <summary>Four ways to hold a saddle are printed; none goes in the head of another.</summary>
    [Theory]
    [InlineData("7 mm round", "monorail")]
    [InlineData("7 mm round", "pivotal")]
    [InlineData("monorail", "7 mm round")]
    [InlineData("monorail", "pivotal")]
    [InlineData("pivotal", "7 mm round")]
    [InlineData("pivotal", "monorail")]
    [PrintedIn(Mounts)]
    public void A_saddle_of_one_kind_of_rail_is_held_by_no_head_for_another(string head, string rails) =>
        Published.Says(
            Build.From(Frame.Read("seatTube 27.2")).With(Seatpost.Read($"27.2; rail clamp {Published.Key<RailClamp>(head, Mounts)}"), Slot.Seatpost).With(Saddle.Read($"rails {Published.Key<SaddleRails>(rails, Mounts)}"), Slot.Saddle),
            "saddle-on-seatpost", Mounts, Verdict.DoesNotFit);
}
