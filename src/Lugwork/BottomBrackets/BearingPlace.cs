namespace Lugwork.BottomBrackets;

/// <summary>Where the bearings of a bottom bracket sit, seen from the shell.</summary>
public enum BearingPlace
{
    /// <summary>Not told by the name of the shell.</summary>
    Unknown = 0,

    /// <summary>In a cartridge inside the shell, or in cups outside it: both are sold for the shell.</summary>
    InsideOrOutboard,

    /// <summary>Inside the shell, on cups or in a cartridge that screws in.</summary>
    Inside,

    /// <summary>In cups that stand outside the shell on both sides.</summary>
    Outboard,

    /// <summary>In a cup outside the shell on the drive side, inside it on the other.</summary>
    OutboardOnDriveSide,

    /// <summary>Straight in the bore, without cups.</summary>
    InBore,

    /// <summary>In cups that are pressed into the bore.</summary>
    InPressedCups,

    /// <summary>In seats that are moulded into the frame.</summary>
    InMouldedSeats,

    /// <summary>In pressed cups whose ball races stand outside the shell.</summary>
    InCupsOutside,

    /// <summary>Between a pressed cup and a cone on the spindle.</summary>
    CupAndCone,

    /// <summary>In a removable sleeve of the frame's maker.</summary>
    InSleeve,
}
