using System.Collections.Immutable;
using Lugwork.Drawing;
using Lugwork.Geometry;
using Lugwork.Workshop;

namespace Lugwork;

/// <summary>The work plan of a build.</summary>
public static class WorkPlans
{
    /// <summary>The steps that this build needs, in order.</summary>
    /// <param name="build">The build, as far as it is put together.</param>
    public static WorkPlan WorkPlan(this Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        FitReport report = build.Check();
        return new(report, WorkOrder.Of(StepTable.Of(report)));
    }

    /// <summary>The same with the points of the frame: hoses and housing get an estimate to buy by where the bar is known, flat or drop, with its width.</summary>
    /// <param name="build">The build, as far as it is put together.</param>
    /// <param name="frame">Its frame as a figure, such as from its chart.</param>
    public static WorkPlan WorkPlan(this Build build, FrameGeometry frame)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(frame);
        FitReport report = build.Check();
        return new(report, WorkOrder.Of(StepTable.Of(report, frame)));
    }
}
