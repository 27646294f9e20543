using System.Globalization;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>Another shock in a frame: travel, and how far in it lets the suspension go. Immutable.</summary>
/// <remarks>
/// Fully in a shock measures eye to eye less stroke. Where the other one is shorter fully in by d, the wheel goes up by about d LR more than the
/// frame is made for, and tyre, frame or shock may meet. Travel T' = s' LR. LR = wheel travel / stroke, "Garage Files: How to Calculate Leverage Ratios", is the mean ratio; beyond the frame's own stroke it is a guess.
/// </remarks>
public sealed class ShockChange
{
    private readonly Outcome _outcome;
    private readonly MeanLeverage _leverage;

    private ShockChange(ShockSize frame, ShockSize shock, MeanLeverage leverage, Outcome outcome)
    {
        Frame = frame;
        Shock = shock;
        (_leverage, _outcome) = (leverage, outcome);
    }

    /// <summary>The size that the frame is made for.</summary>
    public ShockSize Frame { get; }

    /// <summary>The other shock.</summary>
    public ShockSize Shock { get; }

    /// <summary>Mean ratio of the frame, with its own shock.</summary>
    public double Ratio => _leverage.Ratio;

    /// <summary>Travel of the wheel with the other shock, about.</summary>
    public Length WheelTravel => _leverage.TravelFor(Shock.Stroke);

    /// <summary>How much shorter the other shock is when it is fully in; below zero it stops earlier than the frame's own. Null between different mounts, whose lengths are measured from other points.</summary>
    public Length? FurtherIn => Deeper is { } deeper ? Length.FromMillimeters(deeper) : null;

    /// <summary>How much further up the wheel goes at full travel, about; this much of the clearance at bottom-out is gone. Below zero there is more. Null between different mounts.</summary>
    public Length? WheelFurtherUp => Deeper is { } deeper ? Length.FromMillimeters(deeper * Ratio) : null;

    /// <summary>How much the wheel stands lower in the frame with the suspension fully out, about: a longer shock lifts the bottom bracket. Below zero it stands higher. Null between different mounts.</summary>
    public Length? WheelFurtherDown => Frame.Mount == Shock.Mount ? Length.FromMillimeters((Shock.Eye - Frame.Eye) / 100.0 * Ratio) : null;

    /// <summary>The warning that goes with every such sum.</summary>
    public static Caution Caution => Cautions.SuspensionSums;

    private double? Deeper => Frame.Mount != Shock.Mount ? null : (Frame.Eye - Frame.Shaft - Shock.Eye + Shock.Shaft) / 100.0;

    /// <summary>Compares a shock with the one that a frame is made for.</summary>
    /// <param name="frame">The size that the frame is made for.</param>
    /// <param name="wheelTravel">Travel of the wheel with it, 20 to 300 mm, not below its stroke.</param>
    /// <param name="shock">The other shock.</param>
    /// <exception cref="ArgumentOutOfRangeException">The travel is out of range or no number.</exception>
    public static ShockChange Of(ShockSize frame, Length wheelTravel, ShockSize shock)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(shock);
        return new(frame, shock, MeanLeverage.Of(wheelTravel, frame.Stroke), ShockRelations.InFrame.Judge([frame.FitCode, shock.FitCode]));
    }

    /// <summary>The verdict of the joint, with what happens at bottom-out.</summary>
    public SumCheck Check()
    {
        Reason reason = _outcome.Reason!;
        string told = string.Format(CultureInfo.InvariantCulture, reason.Template, Frame.TradeName, Shock.TradeName);
        string note = Deeper > 0 ? string.Create(CultureInfo.InvariantCulture, $" Fully in it is {Deeper:0.##} mm shorter: the wheel goes up about {Deeper * Ratio:0.#} mm further, which the frame may not have room for.")
            : Deeper < 0 ? string.Create(CultureInfo.InvariantCulture, $" Fully in it is {-Deeper:0.##} mm longer: the wheel stops about {-Deeper * Ratio:0.#} mm earlier.")
            : "";
        return new SumCheck("shock-change", _outcome.Verdict, told + note, reason.Mend, reason.Caution ?? Caution, [.. reason.Sources, Sources.LeverageColumn])
            .Comparing(("length", Shock.Eye / 100.0, "mm"), ("frame's length", Frame.Eye / 100.0, "mm"), ("stroke", Shock.Shaft / 100.0, "mm"), ("frame's stroke", Frame.Shaft / 100.0, "mm"), ("further in", Deeper, "mm"));
    }

    /// <summary>The verdict, the reason and the note.</summary>
    public override string ToString() => Check().ToString();
}
