using System.Reflection;

namespace Lugwork.Tests.Fits;

/// <summary>An input that is read another way is the same input in all else.</summary>
public sealed class JointInputTests
{
    private static readonly Dictionary<string, object> Odd = new(StringComparer.Ordinal)
    {
        ["Slot"] = Slot.Saddle,
        ["Called"] = "odd name",
        ["Field"] = "oddField",
        ["Read"] = (Func<Part, Candidates>)(_ => default),
        ["IsStated"] = (Func<Part, bool>)(_ => true),
        ["Domain"] = System.Collections.Immutable.ImmutableArray.Create(7L, 9L),
        ["Family"] = 77,
        ["IsLength"] = true,
        ["IsMass"] = true,
        ["IsAngle"] = true,
        ["IsReadWhenBuilt"] = true,
        ["Show"] = (Func<long, string>)(_ => "odd"),
        ["ShowKnown"] = (Func<Part, string>)(_ => "odd"),
        ["Evidence"] = (Func<Part, Evidence?>)(_ => null),
        ["RestsOn"] = (Func<Part, Source?>)(_ => null),
        ["Measure"] = "odd measure",
    };

    private static PropertyInfo[] Members => [.. typeof(JointInput).GetProperties(BindingFlags.Public | BindingFlags.Instance)];

    /// <summary>Each member has a value that no input has by itself, so that one that was left out of a copy shows; a new member has to be put in here.</summary>
    [Fact]
    public void A_copy_keeps_every_member_but_the_two_that_change()
    {
        Assert.Equal(Odd.Keys.Order(StringComparer.Ordinal), Members.Select(m => m.Name).Order(StringComparer.Ordinal));
        JointInput input = (JointInput)System.Runtime.CompilerServices.RuntimeHelpers.GetUninitializedObject(typeof(JointInput));
        foreach (PropertyInfo member in Members)
        {
            Assert.False(Equals(Odd[member.Name], member.GetValue(input)));
            member.SetValue(input, Odd[member.Name]);
        }

        Func<Part, Candidates> read = _ => new(KnownState.None, 0, 0, null);
        Func<Part, bool> stated = _ => false;
        JointInput copy = input.ReadAs(read, stated);
        Assert.Same(read, copy.Read);
        Assert.Same(stated, copy.IsStated);
        Assert.All(Members.Where(m => m.Name is not ("Read" or "IsStated")), m => Assert.Equal(m.GetValue(input), m.GetValue(copy)));
    }

    /// <summary>The rows that hold a limit of their own against what is only known perhaps: a mark, an angle and a reading stay what they are.</summary>
    [Fact]
    public void An_input_that_counts_where_it_is_known_stays_what_it_is()
    {
        Assert.True(JointInputs.IfKnown(JointInputs.HeadAngle).IsAngle);
        Assert.True(JointInputs.IfKnown(JointInputs.RoomForToes).IsReadWhenBuilt);
        Assert.True(JointInputs.IfKnown(JointInputs.SystemLimitOfWheel(Slot.FrontWheel)).IsMass);
    }
}
