using Lugwork.BottomBrackets;

namespace Lugwork.Tests.BottomBrackets;

/// <summary>The hand of the drive cup: turned the wrong way it strips the shell.</summary>
public sealed class CupHandTests
{
    [Fact]
    public void English_and_Swiss_drive_cups_are_left_handed_Italian_and_French_are_not()
    {
        Assert.True(ShellFamily.Bsa.IsDriveCupLeftHand);
        Assert.True(ShellFamily.Tpi26.IsDriveCupLeftHand);
        Assert.True(ShellFamily.Swiss.IsDriveCupLeftHand);
        Assert.True(ShellFamily.T47.IsDriveCupLeftHand);
        Assert.False(ShellFamily.Italian.IsDriveCupLeftHand);
        Assert.False(ShellFamily.French.IsDriveCupLeftHand);
    }

    [Fact]
    public void What_has_no_thread_has_no_hand() => Assert.All(ShellFamily.All.Where(f => !f.IsThreaded), f => Assert.False(f.IsDriveCupLeftHand));
}
