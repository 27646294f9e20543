using Lugwork.Drivetrain;
using UnitsNet;

namespace Lugwork.Tests.Drivetrain;

/// <summary>Identifying by measuring: exact dimensions give the value first or among equals, and a reading within its error never drops it.</summary>
public sealed class MeasuringLaws
{
    private static readonly decimal[] Errors = [0m, 0.02m, 0.1m, 0.5m];

    [Fact]
    public void A_bolt_circle_is_found_by_its_holes_with_and_without_counting() => Each(BoltCircle.All, (circle, away, error, exact) =>
    {
        MeasuredLength? holes = Read(circle.AdjacentHoles, away, error);
        foreach (int? arms in new int?[] { null, circle.Arms })
        {
            Found(circle, BoltCircle.Identify(holes, Read(circle.Diameter, -away, error), arms), exact);
            Found(circle, BoltCircle.Identify(diameter: Read(circle.Diameter, away, error), arms: arms), exact);
            if (holes is not null)
            {
                Found(circle, BoltCircle.Identify(holes, arms: arms), exact);
            }
        }

        Assert.DoesNotContain(circle, BoltCircle.Identify(diameter: Read(circle.Diameter, away, error), arms: circle.Arms + 1).Candidates.Select(c => c.Value));
    });

    [Fact]
    public void A_body_is_found_by_its_length_and_splines() => Each(FreehubBody.All.Where(b => b.LeastLength is not null), (body, away, error, exact) =>
    {
        foreach (Length? length in new[] { body.LeastLength, body.MostLength })
        {
            Found(body, FreehubBody.Identify(Read(length, away, error)!.Value), exact);
            Found(body, FreehubBody.Identify(Read(length, away, error)!.Value, body.Splines), exact);
        }
    });

    [Fact]
    public void A_freewheel_thread_is_found_by_its_diameter_and_pitch() => Each(FreewheelThread.All, (thread, away, error, exact) =>
    {
        Found(thread, FreewheelThread.Identify(Read(thread.Diameter, away, error)), exact);
        Found(thread, FreewheelThread.Identify(Read(thread.Diameter, away, error), thread.ThreadsPerInch), exact);
        foreach (double below in new[] { 0.1, 0.2, 0.25 })
        {
            Length crests = thread.Diameter - Length.FromMillimeters(below);
            Found(thread, FreewheelThread.Identify(Read(crests, away, error)), exact);
            Found(thread, FreewheelThread.Identify(Read(crests, away, error), thread.ThreadsPerInch), exact);
        }

        Found(thread, FreewheelThread.Identify(threadsPerInch: thread.ThreadsPerInch + 0.25m), false);
    });

    [Fact]
    public void A_chain_is_found_by_its_widths() => Each(ChainSize.All.Where(c => c.Opens), (chain, away, error, exact) =>
    {
        Found(chain, ChainSize.Identify(innerWidth: Read(chain.InnerWidth!.Value, away, error)), exact);
        foreach (Length? over in new[] { chain.LeastOverRivets, chain.MostOverRivets }.Where(o => o is not null))
        {
            Found(chain, ChainSize.Identify(Read(over, away, error)), exact);
            Found(chain, ChainSize.Identify(Read(over, away, error), Read(chain.InnerWidth!.Value, -away, error)), exact);
        }
    });

    [Fact]
    public void A_front_mount_is_found_by_tube_or_bolts() => Each(FrontDerailleurMount.All.Where(m => m.Tube is not null || m.BoltSpacing is not null), (mount, away, error, exact) =>
        Found(mount, FrontDerailleurMount.Identify(Read(mount.Tube, away, error), Read(mount.BoltSpacing, away, error), mount.BoltStep is { Millimeters: > 0 } ? Read(mount.BoltStep, away, error) : null), exact));

    [Fact]
    public void Guide_tabs_are_found_by_their_circle() => Each(ChainGuideMount.All.Where(m => m.Circle is not null), (mount, away, error, exact) =>
        Found(mount, ChainGuideMount.Identify(Read(mount.Circle, away, error)!.Value), exact));

    [Fact]
    public void A_chainline_is_found_by_its_figure_and_rings() => Each(FrontChainline.All, (line, away, error, exact) =>
    {
        foreach (Length end in new[] { line.Least, line.Most })
        {
            Found(line, FrontChainline.Identify(Read(end, away, error)!.Value), exact);
            Found(line, FrontChainline.Identify(Read(end, away, error)!.Value, line.MostRings), exact);
        }
    });

    private static void Each<T>(IEnumerable<T> values, Action<T, decimal, decimal, bool> check)
    {
        foreach (T value in values)
        {
            foreach (decimal error in Errors)
            {
                check(value, 0, error, true);
                check(value, error, error, false);
                check(value, -error, error, false);
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
        bool uneven = value is BoltCircle { IsEven: false };
        Assert.True(!exact || uneven || own.DeviationMillimetres == 0, $"{value} is off by {own.DeviationMillimetres}");
        Assert.True(!exact || found.Candidates[0].DeviationMillimetres <= own.DeviationMillimetres);
    }

    private static MeasuredLength? Read(Length? length, decimal away, decimal error) =>
        length is { } known ? MeasuredLength.OfMillimetres(decimal.Round((decimal)known.Millimeters, 6) + away, error) : null;
}
