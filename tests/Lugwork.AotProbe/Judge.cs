using System.Globalization;
using Lugwork;
using Lugwork.Benchmarks.Processes;

// Only judges one build, with the post of the given diameter, and tells by its exit code whether all of it fits.
Build build = Bicycles.Touring(decimal.Parse(args[0], CultureInfo.InvariantCulture));
Span<Fit> fits = new Fit[JointTable.All.Length];
int count = build.Judge(fits);
Verdict worst = Verdict.Fits;
foreach (Fit fit in fits[..count])
{
    worst = Verdicts.Worse(worst, fit.Verdict);
}

return count > 0 && worst == Verdict.Fits ? 0 : 1;
