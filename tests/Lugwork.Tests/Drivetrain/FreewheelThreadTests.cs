using Lugwork.Drivetrain;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Threads of freewheels and track sprockets: their text and which go on which.</summary>
public sealed class FreewheelThreadTests
{
    [Theory]
    [InlineData("1.375 x 24", "1.375x24")]
    [InlineData("1.37 x 24", "1.375x24 British-1.370x24 track-1.37x24")]
    [InlineData("1.370\u00D724 tpi", "1.375x24 British-1.370x24 track-1.37x24")]
    [InlineData("1,37\u00A0x\u200924", "1.375x24 British-1.370x24 track-1.37x24")]
    [InlineData("34.7 x 1", "34.7x1")]
    [InlineData("English freewheel", "1.375x24 British-1.370x24")]
    [InlineData("English", "1.375x24 British-1.370x24")]
    [InlineData("British", "British-1.370x24")]
    [InlineData("BSC", "1.375x24")]
    [InlineData("BSA", "1.375x24")]
    [InlineData("1.376 x 24", "")]
    [InlineData("", "")]
    public void One_thread_form_of_two_things_stays_in_doubt(string text, string read) => Assert.Equal(read, string.Join(' ', FreewheelThread.Read(text).Values));

    [Fact]
    public void Only_pairs_that_a_source_names_interchange()
    {
        FreewheelThread iso = FreewheelThread.Iso;
        foreach (FreewheelThread one in FreewheelThread.All)
        {
            foreach (FreewheelThread other in FreewheelThread.All)
            {
                bool named = (one == iso && (other == FreewheelThread.British || other == FreewheelThread.Italian)) || (other == iso && (one == FreewheelThread.British || one == FreewheelThread.Italian));
                Assert.Equal(one == other || named, one.Interchanges(other));
            }
        }

        Assert.Same(FreewheelThread.TrackLockring, Assert.Single(FreewheelThread.All, t => t.IsLeftHand));
    }
}
