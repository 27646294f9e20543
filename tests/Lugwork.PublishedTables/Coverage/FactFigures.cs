using System.Globalization;
using System.Text.RegularExpressions;

namespace Lugwork.PublishedTables.Coverage;

/// <summary>How printed figures and the library's figures go together.</summary>
internal enum Agreement
{
    /// <summary>Each printed one is the library's and the other way round.</summary>
    Same,

    /// <summary>Each figure of the library is printed; the cell may print more, and where the library holds none there is nothing to compare.</summary>
    Printed,

    /// <summary>Each printed figure is one of the library's.</summary>
    Held,

    /// <summary>Each printed figure lies within the library's.</summary>
    Within,
}

/// <summary>A column of a file of facts and the properties that hold its figures.</summary>
internal sealed partial record FigureColumn(string File, string Column, string Type, Agreement Agreement, params string[] Properties)
{
    /// <summary>What is printed in brackets is another reading, a remark, or an older figure.</summary>
    public bool WithoutBrackets { get; init; }

    /// <summary>The figures that a cell prints, as printed: how many decimals it has says how exact it is. Fractions of an inch, and inches of a cell that may print more, count in millimetres.</summary>
    public decimal[] Printed(string cell)
    {
        string text = InchFraction().Replace(WithoutBrackets ? Brackets().Replace(cell, "") : cell, m => Millimetres(
            (m.Groups[1].Success ? Parsed(m.Groups[1].Value) : 0) + (Parsed(m.Groups[2].Value) / Parsed(m.Groups[3].Value))));
        IEnumerable<decimal> numbers = Number().Matches(text).Select(m => Parsed(m.Value)).Where(n => n != 0);
        return [.. numbers, .. Agreement == Agreement.Printed ? Inches().Matches(text).Select(m => Parsed(Millimetres(Parsed(m.Groups[1].Value)))) : []];
    }

    public bool Agrees(decimal[] printed, decimal[] held) => Agreement switch
    {
        Agreement.Same => printed.All(p => held.Any(h => Is(p, h))) && held.All(h => printed.Any(p => Is(p, h))),
        Agreement.Printed => held.All(h => printed.Any(p => Is(p, h))),
        Agreement.Held => printed.All(p => held.Any(h => Is(p, h))),
        _ => held.Length > 0 && printed.All(p => held.Min() <= p && p <= held.Max()),
    };

    /// <summary>Half a unit of the last printed decimal, whichever way it was rounded.</summary>
    public static bool Is(decimal printed, decimal held) => Math.Abs(printed - held) <= new decimal(5, 0, 0, false, (byte)(printed.Scale + 1));

    private static decimal Parsed(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    private static string Millimetres(decimal inches) => (inches * 25.4m).ToString("0.00", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\([^)]*\)")]
    private static partial Regex Brackets();

    [GeneratedRegex(@"(?:(\d+)[ -])?(\d+)/(\d+) in\b")]
    private static partial Regex InchFraction();

    [GeneratedRegex(@"(\d+(?:\.\d+)?) in\b")]
    private static partial Regex Inches();

    [GeneratedRegex(@"(?<![\d.])-?\d+(\.\d+)?")]
    private static partial Regex Number();
}

/// <summary>The columns whose figures are compared, row by row.</summary>
internal static class FactFigures
{
    public static FigureColumn[] All { get; } =
    [
        Same("hubs-old.csv", "old_mm", "HubStandard", "OverLocknut"),
        Same("hubs-old.csv", "dropout_inner_gap_mm", "HubStandard", "InnerGap"),
        Same("hubs-old.csv", "recess_per_side_mm", "HubStandard", "RecessPerSide"),
        Same("hubs-old.csv", "axle_mm", "HubStandard", "AxleDiameters") with { WithoutBrackets = true },
        Same("hubs-old.csv", "end_cap_od_mm", "HubStandard", "EndCap"),
        Same("hubs-old.csv", "cassette_shift_vs_135_mm", "HubStandard", "DriveSideShift"),
        Printed("hubs-threads.csv", "thread", "FreewheelThread", "Diameter"),
        Printed("hubs-threads.csv", "thread", "HubAxleThread", "Diameter"),
        Held("hubs-thru-axles.csv", "fact", "AxleThread", "NominalDiameter", "Pitch"),
        Same("bb-shells.csv", "widths_mm", "Shell", "Width") with { WithoutBrackets = true },
        Same("bb-shells.csv", "shell_id_min_mm", "ShellFamily", "LeastBore"),
        Same("bb-shells.csv", "shell_id_max_mm", "ShellFamily", "MostBore"),
        Printed("bb-spindles.csv", "diameters_mm", "SpindleSeat", "LeastOutside", "MostOutside"),
        Printed("drivetrain-spindles.csv", "dimensions", "SpindleSeat", "LeastAcrossFlats", "MostAcrossFlats", "Taper"),
        Same("brakes-mounts.csv", "hole_pitch_mm", "BrakeMount", "HoleSpacing") with { WithoutBrackets = true },
        Same("brakes-mounts.csv", "native_or_smallest_rotor_mm", "BrakeMount", "NativeRotorMillimetres", "PlateRotorMillimetres"),
        Printed("brakes-mounts.csv", "geometry_note", "BrakeMount", "AxleToNearHole", "AxleToFarHole"),
        Same("brakes-adapters.csv", "increment_mm", "AdapterIncrement", "Millimetres"),
        Same("brakes-rim.csv", "value_mm", "RimBrakeReach", "Least", "Most"),
        Printed("brakes-rim.csv", "value_mm", "BrakeBoss", "ToAxle"),
        Printed("brakes-rim.csv", "value_mm", "BrakeBolt", "Diameter"),
        Same("brakes-rotor-sizes.csv", "row", "RotorSize", "Diameter"),
        Same("brakes-rotor-thickness.csv", "new_mm", "RotorThickness", "New", "MostNew"),
        Same("brakes-rotor-thickness.csv", "minimum_mm", "RotorThickness", "Least") with { WithoutBrackets = true },
        Printed("brakes-rotor-interface.csv", "description", "RotorFixing", "BoltCircle", "Bolts"),
        Printed("brakes-rotor-interface.csv", "description", "Lockring", "Bore", "Outside"),
        Same("cockpit-bar-clamps.csv", "row", "BarClamp", "Diameter"),
        Same("cockpit-bar-clamps.csv", "grip_mm", "BarClamp", "Grips"),
        Same("cockpit-controls.csv", "clamp_mm", "ControlClamp", "Bar"),
        Same("cockpit-quills.csv", "row", "StemFixing", "Diameter"),
        Same("cockpit-quills.csv", "steerer_od_mm", "StemFixing", "Steerer"),
        Same("cockpit-steerer-spacer-limits.csv", "limit_mm", "SpacerLimit", "MostMillimetres"),
        Same("drivetrain-bcd.csv", "bolts", "BoltCircle", "Arms"),
        Same("drivetrain-bcd.csv", "bcd_mm", "BoltCircle", "Diameter"),
        Same("drivetrain-bcd.csv", "smallest_ring", "BoltCircle", "SmallestRing"),
        Same("drivetrain-bcd.csv", "adjacent_hole_chord_mm", "BoltCircle", "AdjacentHoles"),
        Printed("drivetrain-chain-guides.csv", "dimension", "ChainGuideMount", "Circle", "Tabs", "Plate"),
        Same("drivetrain-chains.csv", "inner_width_mm", "ChainSize", "InnerWidth") with { WithoutBrackets = true },
        Printed("drivetrain-chains.csv", "outer_width_mm", "ChainSize", "LeastOverRivets", "MostOverRivets"),
        Printed("drivetrain-freehubs.csv", "body_length_mm", "FreehubBody", "LeastLength", "MostLength"),
        Same("drivetrain-freehubs.csv", "splines", "FreehubBody", "Splines"),
        Printed("drivetrain-freehubs.csv", "smallest_sprocket", "FreehubBody", "FewestTeeth"),
        Printed("drivetrain-front-chainline.csv", "chainline_mm", "FrontChainline", "Least", "Most"),
        Printed("drivetrain-front-chainline.csv", "rings", "FrontChainline", "LeastRings", "MostRings"),
        Printed("drivetrain-front-chainline.csv", "goes_with_old_mm", "FrontChainline", "RearEndsMillimetres"),
        Printed("drivetrain-front-derailleur-mounts.csv", "dimension", "FrontDerailleurMount", "Tube", "BoltSpacing"),
        Printed("drivetrain-front-derailleur-mounts.csv", "dimension", "FrontCapacity", "Teeth"),
        Printed("drivetrain-pedals-cranks.csv", "value", "QFactorClass", "Least", "Most"),
        Same("drivetrain-sprocket-pitch.csv", "speeds", "SprocketSpacing", "Speeds"),
        Same("drivetrain-sprocket-pitch.csv", "sprocket_mm", "SprocketSpacing", "Sprocket"),
        Same("drivetrain-sprocket-pitch.csv", "spacer_mm", "SprocketSpacing", "Spacer"),
        Same("drivetrain-sprocket-pitch.csv", "pitch_mm", "SprocketSpacing", "LeastPitch", "MostPitch"),
        Same("drivetrain-sprocket-pitch.csv", "computed_total_mm", "SprocketSpacing", "Stack"),
        Same("drivetrain-sprocket-pitch.csv", "first_to_last_centres_mm", "SprocketSpacing", "FirstToLast"),
        Held("drivetrain-actuation.csv", "value", "ActuationFamily", "Ratio", "Pull"),
        Same("headset-bearings.csv", "od_mm", "HeadsetBearing", "OutsideDiameter"),
        Same("headset-bearings.csv", "id_mm", "HeadsetBearing", "InsideDiameter"),
        Same("headset-bearings.csv", "height_mm", "HeadsetBearing", "Height"),
        Same("headset-bearings.csv", "angle_inner_deg", "HeadsetBearing", "InnerAngle"),
        Same("headset-bearings.csv", "angle_outer_deg", "HeadsetBearing", "OuterAngle"),
        Same("headset-codes.csv", "bore_nominal_mm", "HeadTubeBore", "Nominal"),
        Same("headset-codes.csv", "bore_min_mm", "HeadTubeBore", "Least"),
        Same("headset-codes.csv", "bore_max_mm", "HeadTubeBore", "Most"),
        Same("headset-codes.csv", "part_od_mm", "HeadsetCup", "OutsideDiameter"),
        Printed("headset-codes.csv", "stack_typical_mm", "HeadsetCup", "LeastUpperStack", "MostUpperStack", "LeastLowerStack", "MostLowerStack"),
        Same("headset-crown-race-seats.csv", "row", "CrownSeat", "Diameter"),
        Same("headset-crown-race-seats.csv", "row", "CrownRace", "Diameter"),
        Same("headset-steerers.csv", "steerer_od_mm", "SteererShape", "Tops", "Foot"),
        Printed("headset-steerers.csv", "crown_race_seat_mm", "SteererShape", "Seats"),
        Same("seat-bores.csv", "row", "SeatpostDiameter", "Diameter"),
        Same("seat-bores.csv", "row", "SeatTubeBore", "Diameter"),
        Same("seat-clamps.csv", "row", "SeatClampForPost", "Post"),
        Same("seat-clamps.csv", "clamp_or_seat_tube_od_mm", "SeatClampSize", "Diameter"),
        Same("seat-clamps.csv", "clamp_or_seat_tube_od_mm", "SeatClampForPost", "Sizes"),
        Same("seat-dropper-travel.csv", "row", "DropperTravel", "Travel"),
        Printed("seat-insertion-rules.csv", "value", "InsertionRule", "Diameters", "Millimetres"),
        Same("seat-rails.csv", "width_mm", "SaddleRails", "Width"),
        Same("seat-rails.csv", "height_mm", "SaddleRails", "Height"),
        Within("shock-fork-axle-crown.csv", "axle_crown_mm", "ForkClass", "LeastAxleToCrown", "MostAxleToCrown"),
        Same("shock-fork-axle-crown.csv", "travel_mm", "ForkClass", "Travel"),
        Same("shock-fork-offsets.csv", "typical_offset_mm", "ForkOffset", "Typical"),
        Same("shock-fork-offsets.csv", "range_mm", "ForkOffset", "Least", "Most"),
        Printed("shock-hardware.csv", "value", "ShockHardware", "WidthMillimetres", "BoltMillimetres"),
        Same("shock-hardware.csv", "value", "ShockBush", "InsideDiameter"),
        Printed("shock-hardware.csv", "value", "ShockMount", "Width"),
        Same("shock-sizes.csv", "eye_to_eye_mm", "ShockSize", "EyeToEye"),
        Printed("shock-sizes.csv", "stroke_mm", "ShockSize", "Stroke"),
        Same("tyres-rims-nominal-diameters.csv", "row", "BeadSeat", "Diameter"),
        Held("tyres-rims-size-labels.csv", "bead_seat_mm", "TyreLabel", "Seats"),
        Same("tyres-rims-specified-diameters.csv", "nominal_code", "SpecifiedDiameter", "NominalMillimetres"),
        Same("tyres-rims-specified-diameters.csv", "specified_diameter_mm", "SpecifiedDiameter", "Diameter"),
        Same("tyres-rims-specified-diameters.csv", "tolerance_plus_minus_mm", "SpecifiedDiameter", "Tolerance"),
        Same("tyres-rims-specified-diameters.csv", "nominal_code", "BeadedEdgeSeat", "Diameter"),
        Same("tyres-rims-width-ranges.csv", "rim_inner_mm", "TyreWidthRange", "InnerWidth"),
        Same("tyres-rims-width-ranges.csv", "tyre_min_mm", "TyreWidthRange", "Least"),
        Same("tyres-rims-width-ranges.csv", "tyre_max_mm", "TyreWidthRange", "Most"),
        Same("tyres-rims-hookless.csv", "rim_inner_mm", "HooklessMinimum", "InnerWidth"),
        Same("tyres-rims-hookless.csv", "tyre_min_mm", "HooklessMinimum", "LeastTyre"),
        Same("tyres-rims-measuring-rims.csv", "tyre_from_mm", "MeasuringRim", "NarrowestTyre"),
        Same("tyres-rims-measuring-rims.csv", "tyre_to_mm", "MeasuringRim", "WidestTyre"),
        Same("tyres-rims-measuring-rims.csv", "measuring_rim_inner_mm", "MeasuringRim", "InnerWidth"),
        Held("tyres-rims-rules.csv", "value", "RimProfile", "LeastInnerWidth", "WallHeight", "WellDepth", "LeastWellWidth", "Hump"),
        Held("tyres-rims-rules.csv", "value", "ValveStem", "Diameter"),
        Held("tyres-rims-rules.csv", "value", "ValveHole", "Diameter"),
    ];

    private static FigureColumn Same(string file, string column, string type, params string[] properties) => new(file, column, type, Agreement.Same, properties);

    private static FigureColumn Printed(string file, string column, string type, params string[] properties) => new(file, column, type, Agreement.Printed, properties);

    private static FigureColumn Held(string file, string column, string type, params string[] properties) => new(file, column, type, Agreement.Held, properties);

    private static FigureColumn Within(string file, string column, string type, params string[] properties) => new(file, column, type, Agreement.Within, properties);
}
