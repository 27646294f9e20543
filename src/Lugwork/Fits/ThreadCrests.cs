namespace Lugwork;

/// <summary>What a caliper finds over the crests of an external thread: less than its name.</summary>
/// <remarks>
/// The usual classes of tolerance, 6g for metric threads and 2A for those in inches, put new crests up to about 0.25 mm below the nominal diameter at these pitches; that is from memory.
/// A wider range never makes a verdict milder: it only adds candidates. A hundredth above the name is allowed for names in inches that are printed rounded.
/// </remarks>
internal static class ThreadCrests
{
    /// <summary>How far real crests lie below the nominal diameter at most; from memory.</summary>
    public const decimal Below = 0.25m;

    private const decimal Rounded = 0.01m;

    /// <summary>What the crests of a thread of this nominal diameter measure, millimetres.</summary>
    public static (decimal Least, decimal Most) Of(decimal nominal) => (nominal - Below, nominal + Rounded);
}
