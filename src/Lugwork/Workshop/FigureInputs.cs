using Lugwork.Drivetrain;

namespace Lugwork.Workshop;

/// <summary>Reads the inputs of a figure and keeps the names of those that are not known.</summary>
internal sealed class FigureInputs
{
    private readonly List<string> _lacking = [];
    private decimal _doubt;

    /// <summary>Millimetres, the middle of a measured length; 0 and noted where not known, none (unless that means 0) or above the most that the sum takes.</summary>
    public decimal Millimetres(string name, Known<Dimension> known, bool noneIsZero = false, decimal most = 1_000)
    {
        if (known.State == KnownState.None && noneIsZero)
        {
            return 0;
        }

        Candidates read = known.ToCandidates();
        decimal middle = (read.Low + read.High) / 2m / Nanometres.PerMillimetre;
        if (known.State is not (KnownState.Value or KnownState.Measured) || middle > most)
        {
            _lacking.Add(name);
            return 0;
        }

        _doubt += (read.High - read.Low) / 2m / Nanometres.PerMillimetre;
        return middle;
    }

    public int Teeth(string name, Known<ToothCount> known)
    {
        if (known.State == KnownState.Value)
        {
            return (int)known.Value.FitCode;
        }

        _lacking.Add(name);
        return 0;
    }

    /// <summary>The figure, or what it lacks; a sum that refuses the figures lacks ones that can be.</summary>
    public WorkFigure Figure(string id, string name, string unit, Func<double> sum, params Source[] sources)
    {
        if (_lacking.Count > 0)
        {
            return WorkFigure.Lacks(id, name, [.. _lacking]) with { Unit = unit };
        }

        try
        {
            return WorkFigure.Of(id, name, sum(), unit, [.. sources]) with { Doubt = (double)_doubt };
        }
        catch (ArgumentOutOfRangeException)
        {
            return WorkFigure.Lacks(id, name, "figures that go together: those stated do not") with { Unit = unit };
        }
    }
}
