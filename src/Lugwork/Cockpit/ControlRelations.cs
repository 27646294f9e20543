namespace Lugwork.Cockpit;

/// <summary>Brake levers and shifters on a bar.</summary>
internal static class ControlRelations
{
    private static readonly Reason Same = new("control-of-the-bar", "{1} on a bar of {0}.") { Sources = [Sources.LeverSeats, Sources.PostSizesCanada] };

    private static readonly Reason Loose = new("control-too-large", "{1} is too large for a bar of {0}: its band does not hold.", Cautions.BarClampCare)
    {
        Mend = "a control for this bar, or a bar for the control",
        Sources = [Sources.PostSizesCanada],
    };

    private static readonly Reason Tight = new("control-too-small", "{1} does not close round a bar of {0}.", Cautions.BarClampCare)
    {
        Mend = "a control for this bar, or a bar for the control",
        Sources = [Sources.PostSizesCanada],
    };

    private static readonly Reason French = new("control-on-french-bar", "{1} on a bar of {0}: 0.3 mm under a drop bar; try the band before taping.", Cautions.BarClampCare)
    {
        Mend = "a lever with a band of the bar's own size",
        Sources = [Sources.BarAndStemTable],
    };

    /// <summary>Inputs: the bar at the control, the control.</summary>
    public static Relation OnBar { get; } = new Matrix(0, 1, Cell, [], [Sources.LeverSeats, Sources.PostSizesCanada]);

    private static Outcome Cell(long bar, long control)
    {
        GripDiameter grip = GripDiameter.OfFitCode(bar);
        GripDiameter made = ControlClamp.OfFitCode(control).Bar;
        return made == grip ? new(Verdict.Fits, Same)
            : made.Hundredths < grip.Hundredths ? new(Verdict.DoesNotFit, Tight)
            : grip == GripDiameter.Mm23Point5 ? new(Verdict.NeedsMeasuring, French)
            : new(Verdict.DoesNotFit, Loose);
    }
}
