using Lugwork.Workshop;

namespace Lugwork.Tests.Workshop;

/// <summary>Ids that stand in saved records: permanent. A new one is added here; one that is taken out makes records that name it unreadable.</summary>
public sealed class WorkIdTests
{
    private const string Steps = """
        adjust-brakes adjust-gears align-hanger align-steering bed-in-brakes bleed-front-brake bleed-rear-brake check-brake-mounts check-ends check-pivots
        connect-front-brake connect-rear-brake connect-shifters cut-steerer dry-fit-fork final-inspection final-torque first-ride fit-bottom-bracket
        fit-cassette fit-chain fit-chain-guide fit-chainring fit-controls fit-crankset fit-dropper-line fit-fork fit-front-derailleur fit-front-rotor
        fit-front-tube fit-front-tyre fit-front-valve fit-front-wheel fit-grips fit-handlebar fit-hanger fit-headset-cover fit-pedals fit-rear-derailleur
        fit-rear-rotor fit-rear-tube fit-rear-tyre fit-rear-valve fit-rear-wheel fit-saddle fit-seat-collar fit-seatpost fit-shell-adapter fit-shock fit-stem
        hold-front-hub-brake hold-rear-hub-brake inflate-tyres inspect-parts inspect-used-parts lead-belt measure-interfaces mount-front-caliper
        mount-front-rim-brake mount-rear-caliper mount-rear-rim-brake prepare-head-tube prepare-shell press-headset recheck route-lines set-chain-tension
        set-crown-race set-preload set-saddle-height set-sag tape-bar tape-front-rim tape-rear-rim tighten-derailleur
        """;

    private const string Rows = """
        adapter-bolts-m5 axle-nut bar-binder-old bottle-cage bracket-8-spline bracket-cups bracket-eccentric bracket-outboard bracket-outboard-stepped
        bracket-square-taper brake-arm-bolt brake-cable caliper-body-bolts caliper-bolts cassette-lockring crank-10-spline crank-30 crank-8-spline crank-bolt
        crank-pinch-bolts crank-preload-cap crank-square-taper crank-stepped expander-plug flat-mount-bolts front-derailleur-band front-derailleur-braze-on
        front-derailleur-cable hanger-bolts headset-locknut hose-nut lever-clamp pad-linear-pull pad-rim-caliper pedal pulley-bolt quick-release quill-wedge
        rear-derailleur rear-derailleur-cable rim-caliper-front rim-caliper-rear ring-bolts-aluminium ring-bolts-steel rotor-bolts rotor-lockring
        saddle-binder saddle-clamp-nuts saddle-clamp-one-bolt saddle-clamp-two-bolts seat-binder-metal seat-collar-carbon shifter-clamp shock-bolts
        stem-faceplate stem-on-carbon-steerer stem-on-steerer stem-on-steerer-old thru-axle-front thru-axle-rear top-cap universal-hanger-bolt
        """;

    private const string Makers = """
        arm-torque axle-torque binder-torque bracket-torque caliper-torque cassette-torque control-torque cotter-torque crank-torque crown-torque
        derailleur-torque drop-lever-torque dropper-torque expander-torque fixed-lockring-torque front-derailleur-torque grip-torque guide-torque
        hanger-torque locknut-torque pivot-torque rim-brake-torque ring-torque rotor-torque saddle-torque shell-adapter-torque shift-cable-torque
        sprocket-torque stem-torque tension-torque triangle-torque
        """;

    private static IEnumerable<string> Listed(string ids) => ids.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal);

    [Fact]
    public void No_id_of_a_step_is_lost() => Assert.Equal(Listed(Steps), StepTable.All.Select(r => r.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void No_id_of_a_torque_row_is_lost() => Assert.Equal(Listed(Rows), TorqueTable.All.Select(t => t.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void No_id_of_a_torque_that_only_makers_name_is_lost_and_none_is_that_of_a_row()
    {
        Assert.Equal(Listed(Makers), StepTable.MakersTorques.Order(StringComparer.Ordinal));
        Assert.Empty(Listed(Makers).Intersect(Listed(Rows)));
    }
}
