using Lugwork.Notebooks;

// What notebooks show richly. The attribute stands here and not at the types, so that they know nothing of notebooks.
namespace Lugwork
{
    [TypeFormatterSource(typeof(NotebookForms))]
    public sealed partial class FitReport;

    [TypeFormatterSource(typeof(NotebookForms))]
    public sealed partial class NeedsSheet;
}

namespace Lugwork.Drawing
{
    [TypeFormatterSource(typeof(NotebookForms))]
    public sealed partial class LineDrawing;
}

namespace Lugwork.Drivetrain
{
    [TypeFormatterSource(typeof(NotebookForms))]
    public sealed partial class GearTable;
}

namespace Lugwork.Geometry
{
    [TypeFormatterSource(typeof(NotebookForms))]
    public sealed partial class GeometryDifference;
}

namespace Lugwork.Workshop
{
    [TypeFormatterSource(typeof(NotebookForms))]
    public sealed partial class WorkPlan;
}
