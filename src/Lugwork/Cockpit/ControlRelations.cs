namespace Lugwork.Cockpit;

/// <summary>Brake levers and shifters on a bar.</summary>
internal static class ControlRelations
{
    private static readonly Reason Same = new("control-of-the-bar", "{1} on a bar of {0}.") { Sources = [Sources.LeverSeats, Sources.PostSizesCanada] };

    /// <summary>Inputs: the bar at the control, the control.</summary>
    public static Relation OnBar { get; } = new Matrix(0, 1, Cell, [], [Sources.LeverSeats, Sources.PostSizesCanada]);

    private static readonly Reason SameGrip = new("grip-of-the-bar", "Grips for {1} on a bar of {0}.") { Sources = [Sources.PostSizesCanada, Sources.BarAndStemTable] };

    /// <summary>Inputs: the bar where the grips go, the grips.</summary>
    public static Relation GripOnBar { get; } = new Matrix(0, 1, GripCell, [], [Sources.BarAndStemTable, Sources.PostSizesCanada]);

    private static Outcome GripCell(long bar, long grips)
    {
        int larger = GripDiameter.OfFitCode(grips).Hundredths - GripDiameter.OfFitCode(bar).Hundredths;
        return larger == 0 ? new(Verdict.Fits, SameGrip)
            : Math.Abs(larger) <= 30 ? new(Verdict.NeedsMeasuring, Misfits.GripNear)
            : larger > 0 ? new(Verdict.Unsafe, Misfits.GripLoose)
            : new(Verdict.DoesNotFit, Misfits.GripSmall);
    }

    private static Outcome Cell(long bar, long control)
    {
        GripDiameter grip = GripDiameter.OfFitCode(bar);
        GripDiameter made = ControlClamp.OfFitCode(control).Bar;
        return made == grip ? new(Verdict.Fits, Same)
            : made.Hundredths < grip.Hundredths ? new(Verdict.DoesNotFit, Misfits.Tight)
            : grip == GripDiameter.Mm23Point5 ? new(Verdict.NeedsMeasuring, Misfits.French)
            : new(Verdict.DoesNotFit, Misfits.Loose);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason Loose = new("control-too-large", "{1} is too large for a bar of {0}: its band does not hold.", Cautions.BarClampCare)
        {
            Mend = "a control for this bar, or a bar for the control",
            Sources = [Sources.PostSizesCanada],
        };

        public static readonly Reason Tight = new("control-too-small", "{1} does not close round a bar of {0}.", Cautions.BarClampCare)
        {
            Mend = "a control for this bar, or a bar for the control",
            Sources = [Sources.PostSizesCanada],
        };

        public static readonly Reason French = new("control-on-french-bar", "{1} on a bar of {0}: 0.3 mm under a drop bar; try the band before taping.", Cautions.BarClampCare)
        {
            Mend = "a lever with a band of the bar's own size",
            Sources = [Sources.BarAndStemTable],
        };

        public static readonly Reason GripSmall = new("grip-too-small", "Grips for {1} do not go on a bar of {0}.")
        {
            Mend = "grips for this bar, or tape on a drop bar",
            Sources = [Sources.PostSizesCanada, Sources.BarAndStemTable],
        };

        public static readonly Reason GripLoose = new("grip-too-large", "Grips for {1} go on a bar of {0} and turn on it.", Cautions.Grips)
        {
            Mend = "grips for this bar",
            Sources = [Sources.BarAndStemTable, Sources.CommonPractice],
        };

        public static readonly Reason GripNear = new("grip-on-french-bar", "Grips for {1} on a bar of {0}: 0.3 mm apart. Try them by hand, dry.", Cautions.Grips)
        {
            Mend = "grips for this bar",
            Sources = [Sources.BarAndStemTable, Sources.CommonPractice],
        };
    }
}
