namespace Lugwork.Workshop;

/// <summary>Part of the work to which a step belongs.</summary>
public enum WorkStage
{
    /// <summary>Looking at frame and parts, and measuring them.</summary>
    Inspection = 0,

    /// <summary>Facing, chasing and straightening of the frame.</summary>
    Preparation,

    /// <summary>Pressed and screwed bearings.</summary>
    Bearings,

    /// <summary>Cables, hoses and wires through or along the frame.</summary>
    Routing,

    /// <summary>Fork, steerer and stem.</summary>
    Steering,

    /// <summary>Rear shock.</summary>
    Suspension,

    /// <summary>Collar, post, dropper and saddle.</summary>
    Seat,

    /// <summary>Tyres, rotors and cassette on the wheels, wheels in the frame.</summary>
    Wheels,

    /// <summary>Handlebar, levers and grips.</summary>
    Cockpit,

    /// <summary>Crank, derailleurs and chain.</summary>
    Drivetrain,

    /// <summary>Calipers, rim brakes, cables and hoses.</summary>
    Brakes,

    /// <summary>Adjusting what is fitted.</summary>
    SettingUp,

    /// <summary>Last torque pass and inspection.</summary>
    FinalChecks,

    /// <summary>First ride and what follows it.</summary>
    Riding,
}

/// <summary>How much practice a step takes. Common practice, no source.</summary>
public enum WorkSkill
{
    /// <summary>Someone who reads the maker's sheet and has the tools.</summary>
    Beginner = 0,

    /// <summary>Someone who has done it before under other eyes.</summary>
    Practised,

    /// <summary>A mechanic of the trade.</summary>
    Mechanic,
}

/// <summary>How long a step takes someone who can do it. Common practice, no source; never a promise.</summary>
public enum WorkTime
{
    /// <summary>Up to a quarter of an hour.</summary>
    QuarterHour = 0,

    /// <summary>A quarter to half an hour.</summary>
    HalfHour,

    /// <summary>Half an hour to an hour.</summary>
    Hour,

    /// <summary>More than an hour.</summary>
    Longer,
}

/// <summary>The classes in words.</summary>
internal static class WorkWords
{
    public static string InWords(this WorkStage stage) => stage switch
    {
        WorkStage.Inspection => "Inspection",
        WorkStage.Preparation => "Preparing the frame",
        WorkStage.Bearings => "Bearings",
        WorkStage.Routing => "Routing",
        WorkStage.Steering => "Fork and stem",
        WorkStage.Suspension => "Rear suspension",
        WorkStage.Seat => "Seat",
        WorkStage.Wheels => "Wheels",
        WorkStage.Cockpit => "Cockpit",
        WorkStage.Drivetrain => "Drivetrain",
        WorkStage.Brakes => "Brakes",
        WorkStage.SettingUp => "Setting up",
        WorkStage.FinalChecks => "Final checks",
        _ => "Riding",
    };

    public static string InWords(this WorkSkill skill) => skill switch
    {
        WorkSkill.Beginner => "for a beginner with the maker's sheet",
        WorkSkill.Practised => "for someone who has done it before",
        _ => "for a mechanic",
    };

    public static string InWords(this WorkTime time) => time switch
    {
        WorkTime.QuarterHour => "up to a quarter of an hour",
        WorkTime.HalfHour => "up to half an hour",
        WorkTime.Hour => "up to an hour",
        _ => "more than an hour",
    };

    /// <summary>Minutes by which chains of steps are compared; only that.</summary>
    public static int Minutes(this WorkTime time) => time switch { WorkTime.QuarterHour => 15, WorkTime.HalfHour => 30, WorkTime.Hour => 60, _ => 90 };
}
