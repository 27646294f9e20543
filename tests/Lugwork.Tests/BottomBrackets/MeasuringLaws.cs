using Lugwork.BottomBrackets;
using UnitsNet;

namespace Lugwork.Tests.BottomBrackets;

/// <summary>Identifying by measuring: exact dimensions give the value first or among equals, and a reading within its error never drops it.</summary>
public sealed class MeasuringLaws
{
    private static readonly decimal[] Errors = [0m, 0.02m, 0.1m, 0.5m];

    [Fact]
    public void A_shell_is_found_by_every_dimension_it_is_printed_with()
    {
        int checks = 0;
        foreach (Shell shell in Shell.All)
        {
            decimal? threads = shell.Family.Pitch is { } pitch ? decimal.Round(25.4m / (decimal)pitch.Millimeters, 3) : null;
            foreach (decimal? bore in shell.Family == ShellFamily.Thompson ? [30m, 33m, 35m, 38m, 40m, 45m] : Ends(shell.Family.LeastBore, shell.Family.MostBore, shell.Family.Bore))
            {
                foreach (decimal? width in Ends(shell.LeastWidth, shell.MostWidth, shell.Width))
                {
                    foreach (decimal error in Errors)
                    {
                        foreach ((decimal? b, decimal? w) in new[] { (bore, width), (null, width), (bore + error, width - error), (bore - error, width + error) })
                        {
                            Found(shell, Shell.Identify(Read(b, error), Read(w, error)), (b == bore || b is null) && w == width);
                            Found(shell, Shell.Identify(Read(b, error), Read(w, error), threads), (b == bore || b is null) && w == width);
                            checks += 2;
                        }
                    }
                }
            }
        }

        Assert.True(checks > 4_000, $"{checks}");
    }

    [Fact]
    public void A_spindle_seat_is_found_by_every_dimension_it_is_printed_with()
    {
        foreach (SpindleSeat seat in SpindleSeat.All.Where(s => s != SpindleSeat.OnePiece))
        {
            foreach (decimal error in Errors)
            {
                foreach (decimal away in new[] { 0m, error, -error })
                {
                    foreach (decimal? outside in Ends(seat.LeastOutside, seat.MostOutside, null))
                    {
                        foreach (decimal? flats in Ends(seat.LeastAcrossFlats, seat.MostAcrossFlats, null))
                        {
                            Found(seat, SpindleSeat.Identify(Read(outside + away, error), Read(Number(seat.OtherSide) - away, error), Read(flats + away, error), Read(Number(seat.SplineLength) + away, error), Read(Number(seat.SplineWidth) - away, error)), away == 0);
                        }
                    }
                }
            }
        }
    }

    [Fact]
    public void A_pedal_thread_is_found_by_its_diameter()
    {
        foreach (PedalThread thread in PedalThread.All)
        {
            foreach (decimal error in Errors)
            {
                Assert.Same(thread, PedalThread.Identify(Read(Number(thread.Diameter), error)!.Value).Candidates[0].Value);
                Found(thread, PedalThread.Identify(Read(Number(thread.Diameter) + error, error)!.Value), false);
                foreach (decimal below in new[] { 0m, 0.1m, 0.2m, 0.25m })
                {
                    Found(thread, PedalThread.Identify(Read(Number(thread.Diameter) - below, error)!.Value), true);
                    Found(thread, PedalThread.Identify(Read(Number(thread.Diameter) - below - error, error)!.Value), false);
                }
            }
        }
    }

    /// <summary>It is there, the list is in order, and where the dimensions are exact nothing ahead of it is further off than it.</summary>
    private static void Found<T>(T value, Identification<T> found, bool exact)
        where T : Standard<T>, IInterfaceValue<T>
    {
        Assert.Equal(found.Candidates.Select(c => c.DeviationMillimetres).Order(), found.Candidates.Select(c => c.DeviationMillimetres));
        Identified<T>? own = found.Candidates.SingleOrDefault(c => c.Value == value);
        Assert.True(own is not null, $"{value} is dropped");
        Assert.True(!exact || own.DeviationMillimetres == 0 || found.Candidates[0].DeviationMillimetres == own.DeviationMillimetres, $"{value} stands behind {found.Candidates[0]}");
    }

    private static decimal?[] Ends(params Length?[] ends) => [.. ends.Where(e => e is not null).Select(Number).Distinct().DefaultIfEmpty(null)];

    private static decimal? Number(Length? length) => length is { } known ? decimal.Round((decimal)known.Millimeters, 6) : null;

    private static MeasuredLength? Read(decimal? millimetres, decimal error) => millimetres is { } known ? MeasuredLength.OfMillimetres(known, error) : null;
}
