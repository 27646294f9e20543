using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Tyres;

namespace Lugwork.Benchmarks.Processes;

/// <summary>A touring bicycle with every slot filled, from values.</summary>
internal static class Bicycles
{
    /// <summary>All of it fits with a 27.2 post; any other is too large or loose.</summary>
    /// <param name="post">Diameter of the seatpost, millimetres.</param>
    public static Build Touring(decimal post)
    {
        Wheel wheel = new()
        {
            Ends = Known<HubEnds>.Of(HubEnds.Swappable),
            RotorFixing = Known<RotorFixing>.Of(RotorFixing.SixBolt),
            BeadSeat = Known<BeadSeat>.Of(BeadSeat.OfFitCode(622)),
            InnerWidth = Millimetres(19),
            RimType = Known<RimType>.Of(RimType.TubelessCrochet),
        };
        Tyre tyre = new() { Size = Known<TyreSize>.Of(TyreSize.Of(37, BeadSeat.OfFitCode(622))), Bead = Known<TyreBead>.Of(TyreBead.Folding) };
        Rotor rotor = new() { Size = Known<RotorSize>.Of(RotorSize.OfFitCode(160)), Fixing = Known<RotorFixing>.Of(RotorFixing.SixBolt) };
        Caliper caliper = new() { Mounting = Known<CaliperFoot>.Of(CaliperFoot.Post) };
        return Build.From(new Frame
        {
            Kind = Known<BicycleKind>.Of(BicycleKind.Touring),
            Material = Known<FrameMaterial>.Of(FrameMaterial.Steel),
            RearEnd = Known<HubStandard>.Of(HubStandard.OfFitCode(29)),
            SeatTubeBore = Known<SeatTubeBore>.Of(SeatTubeBore.OfMillimetres(27.2m)),
            LeastInsertion = Millimetres(80),
            MostInsertion = Millimetres(210),
            RearBrakeMount = Known<BrakeMount>.Of(BrakeMount.Post160),
            LargestRearRotor = Millimetres(180),
        })
            .With(new Fork
            {
                FrontEnd = Known<HubStandard>.Of(HubStandard.OfFitCode(7)),
                FrontBrakeMount = Known<BrakeMount>.Of(BrakeMount.Post160),
                LargestFrontRotor = Millimetres(180),
            })
            .With(wheel with { Hub = Known<HubStandard>.Of(HubStandard.OfFitCode(7)) }, Slot.FrontWheel)
            .With(wheel with { Hub = Known<HubStandard>.Of(HubStandard.OfFitCode(29)), Body = Known<FreehubBody>.Of(FreehubBody.HgMedium) }, Slot.RearWheel)
            .With(tyre, Slot.FrontTyre)
            .With(tyre, Slot.RearTyre)
            .With(new Cassette { Pattern = Known<CassettePattern>.Of(CassettePattern.Hg9) })
            .With(rotor, Slot.FrontRotor)
            .With(rotor, Slot.RearRotor)
            .With(caliper, Slot.FrontBrake)
            .With(caliper, Slot.RearBrake)
            .With(new Seatpost
            {
                Diameter = Known<SeatpostDiameter>.Of(SeatpostDiameter.OfMillimetres(post)),
                Length = Millimetres(350),
                Mark = Millimetres(75),
                Insertion = Millimetres(110),
            });
    }

    private static Known<Dimension> Millimetres(decimal millimetres) => Known<Dimension>.Of(Dimension.OfMillimetres(millimetres));
}
