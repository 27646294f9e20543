namespace Lugwork.BottomBrackets;

/// <summary>What a caliper and a thread gauge find at a shell, by family and shell code.</summary>
internal static class ShellDimensions
{
    /// <summary>Inside of the shell, micrometres; a tapped one over the crests of its thread. 0 where the family has none of its own.</summary>
    public static (int Least, int Most) Bore(ShellFamily family) => family.FitCode switch
    {
        1 or 3 or 4 or 5 => (33_600, 33_900),
        2 => (34_600, 34_900),
        6 or 7 => (45_900, 46_100),
        8 or 9 or 12 => (41_950, 41_980),
        10 or 11 or 13 => (45_950, 46_000),
        14 => (40_950, 41_000),
        15 => (36_970, 37_000),
        16 => (41_150, 41_250),
        17 => (36_970, 37_030),
        18 => (51_300, 51_500),
        19 => (43_000, 43_000),
        20 => (46_000, 46_000),
        22 => (30_000, 30_000),
        _ => default,
    };

    /// <summary>The sizes by which pages call the bore, micrometres: remembered limits never rule out a reading of one of them. 0 where it has no bore of its own.</summary>
    /// <remarks>A shop prints 41 for the Mid shell, others 41.2.</remarks>
    public static (int Least, int Most) PrintedBores(ShellFamily family) => family == ShellFamily.Mid ? (41_000, family.BoreMicrometres) : (family.BoreMicrometres, family.BoreMicrometres);

    /// <summary>Limits of tapped English-size and Italian shells are printed; those of the pressed bores and of T47 are remembered.</summary>
    public static Source? BoreSource(ShellFamily family) => family.FitCode switch
    {
        <= 5 => Sources.ShellThreads,
        18 or 19 => Sources.BracketTable,
        20 => Sources.OsbbGuide,
        22 => Sources.UnthreadedShells,
        21 or 23 => null,
        _ => Sources.Memory,
    };

    /// <summary>Thread of the cups over their crests, micrometres; 0 where none is printed.</summary>
    public static (int Least, int Most) Cups(ShellFamily family) => family.FitCode switch
    {
        1 => (34_600, 34_900),
        2 => (35_600, 35_900),
        _ => default,
    };

    /// <summary>Threads to the inch; 25.4 is a pitch of 1 mm, 0 is no thread.</summary>
    public static decimal ThreadsPerInch(ShellFamily family) => family.FitCode switch
    {
        1 or 2 => 24m,
        5 => 26m,
        3 or 4 or 6 or 7 => 25.4m,
        _ => 0m,
    };

    /// <summary>Widths under which a shell is printed, micrometres.</summary>
    public static (int Least, int Most) Width(Shell shell)
    {
        int width = (int)(shell.WidthNanometres / 1_000);
        return shell.FitCode switch
        {
            23 or 28 => (86_000, width),
            30 => (91_500, width),
            35 => (width, 90_500),
            42 => (67_000, 70_000),
            _ => (width, width),
        };
    }

    public static BearingPlace Bearings(Shell shell) => shell.Family.FitCode switch
    {
        1 or 2 => BearingPlace.InsideOrOutboard,
        3 or 4 or 5 => BearingPlace.Inside,
        6 => shell.WidthNanometres < 80 * Nanometres.PerMillimetre ? BearingPlace.Outboard : BearingPlace.Inside,
        7 => BearingPlace.OutboardOnDriveSide,
        8 or 9 or 12 or 16 or 17 or 22 => BearingPlace.InBore,
        10 or 11 or 13 or 14 or 19 => BearingPlace.InPressedCups,
        15 => BearingPlace.InMouldedSeats,
        18 => BearingPlace.InCupsOutside,
        21 => BearingPlace.CupAndCone,
        23 => BearingPlace.InSleeve,
        _ => BearingPlace.Unknown,
    };
}
