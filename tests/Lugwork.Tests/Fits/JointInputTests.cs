using System.Reflection;

namespace Lugwork.Tests.Fits;

/// <summary>An input that is read another way is the same input in all else.</summary>
public sealed class JointInputTests
{
    /// <summary>Every input of the table, read another way: each member that is no method stays, one that is added later too.</summary>
    [Fact]
    public void An_input_that_counts_where_it_is_known_keeps_every_mark()
    {
        PropertyInfo[] members = [.. typeof(JointInput).GetProperties(BindingFlags.Public | BindingFlags.Instance)];
        JointInput[] inputs = [.. JointTable.All.SelectMany(j => j.Inputs).Distinct()];
        Assert.All(["Slot", "Field", "Called", "Measure", "Domain", "Family", "IsLength", "Unit", "IsMass", "IsAngle", "IsReadWhenBuilt"], n => Assert.Contains(members, m => m.Name == n));
        foreach (JointInput input in inputs)
        {
            JointInput copy = JointInputs.IfKnown(input);
            Assert.All(members, m => Assert.Equal(m.GetValue(input), m.GetValue(copy)));
        }

        // Marks that no input had would be kept by chance.
        Assert.All(members.Where(m => m.PropertyType == typeof(bool)), m => Assert.Equal(2, inputs.Select(i => m.GetValue(i)).Distinct().Count()));
    }

    /// <summary>The rows that hold a limit of their own against what is only known perhaps: a mark, an angle and a reading stay what they are.</summary>
    [Fact]
    public void A_mass_an_angle_and_a_reading_stay_what_they_are()
    {
        Assert.True(JointInputs.IfKnown(JointInputs.HeadAngle).IsAngle);
        Assert.True(JointInputs.IfKnown(JointInputs.RoomForToes).IsReadWhenBuilt);
        Assert.True(JointInputs.IfKnown(JointInputs.SystemLimitOfWheel(Slot.FrontWheel)).IsMass);
        Assert.True(JointInputs.MarkWhereItMatters(Slot.FrontRotor).IsLength);
    }
}
