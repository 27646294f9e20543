using System.Text.Json;
using Lugwork.Seating;
using Lugwork.Suspension;
using UnitsNet;

namespace Lugwork.Tests.Fits;

/// <summary>Ends of ranges and texts of the core that no joint comes by.</summary>
public sealed class EdgeTests
{
    [Fact]
    public void A_gram_is_the_least_load()
    {
        Assert.Equal(1, Load.Of(Mass.FromKilograms(0.001)).FitCode);
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.Of(Mass.FromKilograms(0.000999)));
        Assert.Equal(500_000, Load.Of(Mass.FromKilograms(500)).FitCode);
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.Of(Mass.FromKilograms(500.001)));
    }

    [Fact]
    public void An_angle_is_rounded_to_the_microdegree_away_from_zero()
    {
        Assert.Equal(FrameAngle.OfFitCode(69_000_001), FrameAngle.OfDegrees(69.0000005m));
        Assert.Equal(FrameAngle.OfFitCode(69_000_000), FrameAngle.OfDegrees(69.00000049m));
    }

    [Fact]
    public void A_slot_that_not_every_bicycle_has_is_optional()
    {
        Assert.All([Slot.ChainGuide, Slot.FrontDerailleur, Slot.Dropper, Slot.Rider, Slot.RearInnerTube, Slot.HeadsetCover], s => Assert.True(s.IsOptional, s.Name));
        Assert.All([Slot.Frame, Slot.Fork, Slot.Saddle, Slot.RearWheel, Slot.Chain], s => Assert.False(s.IsOptional, s.Name));
    }

    [Fact]
    public void A_long_text_that_is_no_slot_is_cut_behind_sixty_letters()
    {
        FormatException cut = Assert.Throws<FormatException>(() => Slot.Parse(new string('x', 61), null));
        Assert.StartsWith($"'{new string('x', 60)}...' is no slot", cut.Message, StringComparison.Ordinal);
        FormatException whole = Assert.Throws<FormatException>(() => Slot.Parse(new string('x', 60), null));
        Assert.StartsWith($"'{new string('x', 60)}' is no slot", whole.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refusal_lists_the_values_of_its_set()
    {
        FormatException refused = Assert.Throws<FormatException>(() => CrownType.Parse("triple", null));
        Assert.All(CrownType.All, c => Assert.Contains(c.FitKey, refused.Message, StringComparison.Ordinal));
    }

    /// <summary>Of three things that should meet each that is lacking is named, the first too.</summary>
    [Fact]
    public void What_is_lacking_is_named_whichever_input_it_is()
    {
        foreach (Joint joint in JointTable.All.Where(j => j.Inputs.Length > 2 && !j.IsOnlyWhereLooked))
        {
            Assert.All(Enumerable.Range(0, joint.Inputs.Length), lacking =>
            {
                long[] values = [.. joint.Inputs.Select((input, i) => i == lacking ? 0 : input.IsLength ? 100_000_000 : input.Domain[0])];
                if (joint.Relation.Judge(values).Reason == Reasons.NothingToMate)
                {
                    KnownState[] states = [.. values.Select(v => v == 0 ? KnownState.None : KnownState.Value)];
                    Assert.Contains(joint.Inputs[lacking].Called, Wording.TemplateOf(joint, Reasons.NothingToMate, states), StringComparison.Ordinal);
                }
            });
        }
    }

    [Fact]
    public void Json_without_a_writer_is_a_fault_of_the_caller() =>
        Assert.Throws<ArgumentNullException>(() => new InterfaceJsonConverter<SeatpostDiameter>().Write(null!, SeatpostDiameter.Parse("27.2", null), JsonSerializerOptions.Default));
}
