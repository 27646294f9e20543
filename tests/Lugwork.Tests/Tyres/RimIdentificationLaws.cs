using Lugwork.Tyres;

namespace Lugwork.Tests.Tyres;

/// <summary>What holds for telling rims and valve holes by measuring.</summary>
public sealed class RimIdentificationLaws
{
    private static readonly decimal[] Errors = [0m, 0.05m, 0.1m, 0.5m, 2m];

    [Fact]
    public void An_exact_diameter_gives_the_seat_first_or_among_its_equals()
    {
        foreach (BeadSeat seat in BeadSeat.All)
        {
            Identification<BeadSeat> found = BeadSeat.Identify(MeasuredLength.OfMillimetres(seat.FitCode, 0));
            Assert.Same(seat, found.Candidates[0].Value);
            Assert.Equal(0, found.Candidates[0].DeviationMillimetres);
            Assert.Same(seat, BeadSeat.Identify(circumference: MeasuredLength.OfMillimetres(seat.FitCode * (decimal)Math.PI, 0)).Candidates[0].Value);
        }
    }

    [Fact]
    public void A_reading_within_its_error_never_drops_the_seat()
    {
        foreach (BeadSeat seat in BeadSeat.All)
        {
            foreach (decimal error in Errors)
            {
                foreach (decimal off in new[] { -error, -error / 2, 0, error / 2, error })
                {
                    MeasuredLength across = MeasuredLength.OfMillimetres(seat.FitCode + off, error);
                    MeasuredLength round = MeasuredLength.OfMillimetres((seat.FitCode * (decimal)Math.PI) + off, error);
                    Assert.Contains(BeadSeat.Identify(across).Candidates, c => c.Value == seat);
                    Assert.Contains(BeadSeat.Identify(across, round).Candidates, c => c.Value == seat);
                }
            }
        }
    }

    [Theory]
    [InlineData("621.45", "622")]
    [InlineData("622.45", "622")]
    [InlineData("621.44", "")]
    [InlineData("622.46", "")]
    [InlineData("558.8", "559")]
    [InlineData("558.79", "")]
    public void A_specified_tolerance_counts_as_the_rims_own(string millimetres, string seats) =>
        Assert.Equal(seats, string.Join(' ', BeadSeat.Identify(MeasuredLength.OfMillimetres(decimal.Parse(millimetres, System.Globalization.CultureInfo.InvariantCulture), 0)).Candidates.Select(c => c.Value)));

    [Fact]
    public void Neighbours_a_millimetre_apart_are_parted_by_tape()
    {
        Identification<BeadSeat> rough = BeadSeat.Identify(MeasuredLength.OfMillimetres(540.4m, 1));
        Assert.Equal(["540", "541"], rough.Candidates.Select(c => c.Value.FitKey));
        Assert.StartsWith("circumference", rough.Next, StringComparison.Ordinal);
        Assert.All(rough.Candidates, c => Assert.Contains("interchange", c.TellsApart, StringComparison.Ordinal));
        Identification<BeadSeat> taped = BeadSeat.Identify(MeasuredLength.OfMillimetres(540.4m, 1), MeasuredLength.OfMillimetres(1699.6m, 1));
        Assert.Same(BeadSeat.OfFitCode(541), Assert.Single(taped.Candidates).Value);
        Assert.Empty(taped.Next);
    }

    [Fact]
    public void A_valve_hole_is_told_within_its_error()
    {
        foreach (ValveHole hole in ValveHole.All)
        {
            foreach (decimal error in Errors)
            {
                foreach (decimal off in new[] { -error, 0, error })
                {
                    MeasuredLength reading = MeasuredLength.OfMillimetres((decimal)hole.Diameter.Millimeters + off, error);
                    Assert.Contains(ValveHole.Identify(reading).Candidates, c => c.Value == hole);
                }
            }

            Assert.Same(hole, ValveHole.Identify(MeasuredLength.OfMillimetres((decimal)hole.Diameter.Millimeters, 0)).Candidates[0].Value);
            Assert.Same(hole, ValveHole.Identify(MeasuredLength.OfMillimetres((decimal)hole.SmallestDrilled.Millimeters, 0)).Candidates[0].Value);
            Assert.All(hole.Stems, s => Assert.Same(hole, s.Hole));
        }

        Assert.Empty(ValveHole.Identify(MeasuredLength.OfMillimetres(7.4m)).Candidates);
        Assert.Throws<ArgumentException>(() => ValveHole.Identify(default));
        Assert.Throws<ArgumentException>(() => BeadSeat.Identify());
    }

    [Fact]
    public void Hooked_bead_rims_are_told_by_the_circumference_that_is_printed()
    {
        foreach (BeadedEdgeSeat seat in BeadedEdgeSeat.All)
        {
            SpecifiedDiameter specified = Assert.Single(seat.Specified);
            MeasuredLength round = MeasuredLength.OfMillimetres((decimal)specified.Circumference!.Value.Millimeters, 0.5m);
            Assert.Same(seat, Assert.Single(BeadedEdgeSeat.Identify(circumference: round).Candidates).Value);
            Assert.Same(seat, BeadedEdgeSeat.Identify(MeasuredLength.OfMillimetres(seat.FitCode, 0)).Candidates[0].Value);
            Assert.False(BeadSeat.TryParse(seat.FitKey, null, out _));
        }
    }
}
