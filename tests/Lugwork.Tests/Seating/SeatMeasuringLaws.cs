using Lugwork.Seating;
using Lugwork.Tests.Brakes;

namespace Lugwork.Tests.Seating;

/// <summary>Posts, bores, collars, rails and travels by their dimensions.</summary>
public sealed class SeatMeasuringLaws
{
    [Fact]
    public void A_post_is_told_by_its_diameter_and_its_bore() => Measuring.Holds(
        SeatpostDiameter.All, p => [[p.Millimetres, p.Millimetres]], r => SeatpostDiameter.Identify(r[0], r[1]));

    [Fact]
    public void A_bore_is_told_by_itself_and_by_the_old_post() => Measuring.Holds(
        SeatTubeBore.All, b => [[b.Millimetres, b.Millimetres]], r => SeatTubeBore.Identify(r[0], r[1]));

    [Fact]
    public void One_reading_is_enough_for_a_post_or_a_bore()
    {
        Measuring.Holds(SeatpostDiameter.All, p => [[p.Millimetres]], r => SeatpostDiameter.Identify(r[0]));
        Measuring.Holds(SeatTubeBore.All, b => [[b.Millimetres]], r => SeatTubeBore.Identify(r[0]));
    }

    [Fact]
    public void A_post_made_for_a_slip_fit_is_still_found()
    {
        foreach (SeatpostDiameter post in SeatpostDiameter.All)
        {
            foreach (decimal made in new[] { post.Millimetres, post.Millimetres - 0.05m, post.Millimetres - 0.1m })
            {
                Assert.Contains(post, SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(made, 0)).Candidates.Select(c => c.Value));
                Assert.Contains(post, SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(made - 0.1m)).Candidates.Select(c => c.Value));
            }

            Assert.DoesNotContain(post, SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(post.Millimetres + 0.01m, 0)).Candidates.Select(c => c.Value));
            Assert.DoesNotContain(post, SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(post.Millimetres - 0.11m, 0)).Candidates.Select(c => c.Value));
        }
    }

    [Fact]
    public void Identifying_says_the_same_as_a_measured_value_of_a_part()
    {
        for (decimal reading = 21m; reading <= 35.2m; reading += 0.01m)
        {
            AssertSame(SeatpostDiameter.WithinError(reading, 0.1m).Where(p => SeatpostDiameter.All.Contains(p)), SeatpostDiameter.Identify(MeasuredLength.OfMillimetres(reading)).Candidates.Select(c => c.Value), p => p.FitCode);
            AssertSame(SeatTubeBore.WithinError(reading, 0.1m).Where(b => SeatTubeBore.All.Contains(b)), SeatTubeBore.Identify(MeasuredLength.OfMillimetres(reading)).Candidates.Select(c => c.Value), b => b.FitCode);
        }

        static void AssertSame<T>(IEnumerable<T> within, IEnumerable<T> identified, Func<T, long> code) => Assert.Equal(within.Select(code).Order(), identified.Select(code).Order());
    }

    [Fact]
    public void A_collar_is_told_by_the_tube() => Measuring.Holds(SeatClampSize.All, s => [[Exact(s.Diameter.Millimeters)]], r => SeatClampSize.Identify(r[0]!.Value));

    [Fact]
    public void Rails_are_told_by_width_and_height() => Measuring.Holds(
        SaddleRails.All.Where(r => r.Width is not null),
        s => [[Exact(s.Width!.Value.Millimeters), Exact(s.Height!.Value.Millimeters)]],
        r => SaddleRails.Identify(r[0], r[1]));

    [Fact]
    public void A_travel_is_told_by_itself() => Measuring.Holds(DropperTravel.All, t => [[t.Millimetres]], r => DropperTravel.Identify(r[0]!.Value));

    private static decimal Exact(double millimetres) => (decimal)millimetres;
}
