using UnitsNet;

namespace Lugwork.Drivetrain;

/// <summary>What the sums are given, checked: a figure out of range, not a number or infinite is refused with its name and range.</summary>
internal static class Given
{
    /// <summary>Fewest teeth that a sum takes.</summary>
    public const int FewestTeeth = 6;

    /// <summary>Most teeth that a sum takes.</summary>
    public const int MostTeeth = 200;

    /// <summary>Pitch of every bicycle chain, millimetres.</summary>
    public const double PitchMillimetres = 12.7;

    public static double Millimetres(Length length, double least, double most, string name) => NumberRange.Millimetres(length, least, most, name);

    public static double Number(double value, double least, double most, string name, string unit = "") => NumberRange.Checked(value, least, most, unit, name);

    public static int Teeth(int teeth, string name) => (int)Number(teeth, FewestTeeth, MostTeeth, name, "teeth");
}
