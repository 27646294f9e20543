using System.Collections;
using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace Lugwork.Tests.Fits;

/// <summary>Figures of a sum as quantities, all in metric or all in other units.</summary>
internal sealed class SumInput(double[] figures, bool other = false)
{
    public Length L(int at) => other ? Length.FromMillimeters(figures[at]).ToUnit(at % 2 == 0 ? LengthUnit.Inch : LengthUnit.Foot) : Length.FromMillimeters(figures[at]);

    public Angle A(int at) => other ? Angle.FromDegrees(figures[at]).ToUnit(AngleUnit.Radian) : Angle.FromDegrees(figures[at]);

    public Pressure P(int at) => other ? Pressure.FromBars(figures[at]).ToUnit(PressureUnit.PoundForcePerSquareInch) : Pressure.FromBars(figures[at]);

    public Speed S(int at) => other ? Speed.FromKilometersPerHour(figures[at]).ToUnit(SpeedUnit.MilePerHour) : Speed.FromKilometersPerHour(figures[at]);

    public RotationalSpeed R(int at) => other ? RotationalSpeed.FromRevolutionsPerMinute(figures[at]).ToUnit(RotationalSpeedUnit.RadianPerSecond) : RotationalSpeed.FromRevolutionsPerMinute(figures[at]);

    public Mass K(int at) => other ? Mass.FromKilograms(figures[at]).ToUnit(MassUnit.Gram) : Mass.FromKilograms(figures[at]);

    public Ratio X(int at) => other ? Ratio.FromDecimalFractions(figures[at]).ToUnit(RatioUnit.Percent) : Ratio.FromDecimalFractions(figures[at]);

    public double N(int at) => figures[at];

    /// <summary>A whole number; what is none cannot be handed in at all.</summary>
    public int T(int at) => double.IsNaN(figures[at]) ? throw new ArgumentException("no whole number") : (int)Math.Clamp(figures[at], int.MinValue, int.MaxValue);

    /// <summary>A stored length; 0 is its default.</summary>
    public Dimension D(int at) => figures[at] == 0 ? default : Dimension.Of(L(at));

    /// <summary>A reading without error; 0 is its default.</summary>
    public MeasuredLength M(int at) => figures[at] == 0 ? default : Math.Abs(figures[at]) < 1e20 ? MeasuredLength.OfMillimetres((decimal)figures[at], 0) : throw new ArgumentException("no decimal");

    /// <summary>What came out as numbers and words.</summary>
    public static List<object> Told(object? result)
    {
        List<object> told = [];
        switch (result)
        {
            case null:
                break;
            case SumCheck check:
                told.Add(check.Verdict);
                told.AddRange(check.Figures.Select(f => (object)f.Value));
                break;
            case Length length:
                told.Add(length.Millimeters);
                break;
            case Angle angle:
                told.Add(angle.Degrees);
                break;
            case string words:
                told.Add(words);
                break;
            case IQuantity quantity:
                told.Add((double)quantity.Value);
                break;
            case IEnumerable several:
                told.AddRange(several.Cast<object>().SelectMany(Told));
                break;
            default:
                told.Add(Convert.ToDouble(result, CultureInfo.InvariantCulture));
                break;
        }

        return told;
    }
}
