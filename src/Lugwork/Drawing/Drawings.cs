using System.Collections.Immutable;
using Lugwork.Drivetrain;
using Lugwork.Geometry;

namespace Lugwork.Drawing;

/// <summary>Drawings of a build and of its sums: to scale, with dimensions and a text alternative.</summary>
/// <remarks>
/// What a build does not know is drawn dashed, with a question mark and the name of what to measure, and never with a figure. Forms that no joint reads, such as the wall of a
/// tube, are drawn without figures, and the drawing says so. What does not go together is drawn as it would meet, crossed, with the sentence of the joint. A drawing judges nothing
/// by itself: what it says of fits is what the joints say, and of a gap that was measured what the sum of its room comes to.
/// </remarks>
public static class Drawings
{
    /// <summary>How many offers a chart of price and mass takes at most.</summary>
    public static int MostOffers => 200;

    /// <summary>Head tube, headset and steerer in section.</summary>
    /// <param name="build">A build; what it lacks is drawn as not known.</param>
    public static LineDrawing HeadTube(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return HeadTubeDraft.Of(build);
    }

    /// <summary>The seatpost in the seat tube with its marks.</summary>
    /// <param name="build">A build; what it lacks is drawn as not known.</param>
    public static LineDrawing Seatpost(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return SeatpostDraft.Of(build);
    }

    /// <summary>Bottom bracket, spacers and spindle in the shell, in section.</summary>
    /// <param name="build">A build; what it lacks is drawn as not known.</param>
    public static LineDrawing BottomBracket(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return BracketDraft.Of(build);
    }

    /// <summary>Rear end, hub, sprockets and ring from above, with the line of the chain.</summary>
    /// <param name="build">A build; what it lacks is drawn as not known.</param>
    public static LineDrawing RearHub(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        return HubDraft.Of(build);
    }

    /// <summary>Tyre, rim and frame or fork in section. A gap, or a room below the brake bridge, that was measured is held against <see cref="Tyres.ClearanceRule"/>, and the verdict counts beside those of the joints.</summary>
    /// <param name="build">A build; what it lacks is drawn as not known.</param>
    /// <param name="tyre">The front or the rear tyre.</param>
    /// <param name="betweenMillimetres">Between stays or blades where the tyre is widest, 10 to 250 mm; null where it was not measured.</param>
    /// <param name="offMiddleMillimetres">How far the wheel stands off the middle of that gap, 0 to 20 mm.</param>
    /// <param name="axleToBrakeBridgeMillimetres">From the middle of the axle to brake bridge, crown or mudguard, 50 to 600 mm; null where it was not measured.</param>
    /// <exception cref="ArgumentException">The slot is no tyre's.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range.</exception>
    public static LineDrawing Tyre(Build build, Slot tyre, decimal? betweenMillimetres = null, decimal offMiddleMillimetres = 0, decimal? axleToBrakeBridgeMillimetres = null)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(tyre);
        if (tyre != Slot.FrontTyre && tyre != Slot.RearTyre)
        {
            throw new ArgumentException("the slot of a tyre is expected", nameof(tyre));
        }

        Within(betweenMillimetres, 10, 250, nameof(betweenMillimetres));
        Within(offMiddleMillimetres, 0, 20, nameof(offMiddleMillimetres));
        Within(axleToBrakeBridgeMillimetres, 50, 600, nameof(axleToBrakeBridgeMillimetres));
        return TyreDraft.Of(build, tyre, betweenMillimetres, offMiddleMillimetres, axleToBrakeBridgeMillimetres);
    }

    /// <summary>Rotor, mount, adapter and caliper from the side of the rotor.</summary>
    /// <param name="build">A build; what it lacks is drawn as not known.</param>
    /// <param name="brake">The front or the rear disc brake.</param>
    /// <exception cref="ArgumentException">The slot is no disc brake's.</exception>
    public static LineDrawing DiscBrake(Build build, Slot brake)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(brake);
        return brake == Slot.FrontCaliper || brake == Slot.RearCaliper ? BrakeDraft.Of(build, brake) : throw new ArgumentException("the slot of a disc brake is expected", nameof(brake));
    }

    /// <summary>A frame from the right, alone or before and after a change, with the figures of both.</summary>
    /// <param name="before">The frame as it is.</param>
    /// <param name="after">The frame after a change; null for the one frame alone.</param>
    public static LineDrawing Geometry(FrameGeometry before, FrameGeometry? after = null)
    {
        ArgumentNullException.ThrowIfNull(before);
        return GeometryDraft.Of(before, after);
    }

    /// <summary>Every gear as a bar, as long as the way of one turn of the cranks.</summary>
    /// <param name="gears">The table.</param>
    public static LineDrawing Gears(GearTable gears)
    {
        ArgumentNullException.ThrowIfNull(gears);
        return GearDraft.Of(gears);
    }

    /// <summary>Price against mass of offers, with a line through those that no other beats in both.</summary>
    /// <param name="offers">1 to 200 offers, each with a name, a price of 0.01 to 10,000,000, and a mass of 0.001 to 1,000 kg.</param>
    /// <param name="currency">The currency of all of them: "EUR".</param>
    /// <exception cref="ArgumentException">There is no offer, there are more than 200, or one has no name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A price or a mass is out of range.</exception>
    public static LineDrawing PriceAndMass(ImmutableArray<(string Name, decimal Price, decimal Kilograms)> offers, string currency)
    {
        ArgumentNullException.ThrowIfNull(currency);
        if (offers.IsDefaultOrEmpty || offers.Length > MostOffers)
        {
            throw new ArgumentException($"1 to {MostOffers} offers are expected", nameof(offers));
        }

        foreach ((string name, decimal price, decimal kilograms) in offers)
        {
            if (name is null)
            {
                throw new ArgumentException("an offer has a name", nameof(offers));
            }

            Within(price, 0.01m, 10_000_000, nameof(offers));
            Within(kilograms, 0.001m, 1_000, nameof(offers));
        }

        return OfferDraft.Of(offers, currency);
    }

    /// <summary>The drawings for which the build has at least one part beside the frame or fork: head tube, seatpost, bottom bracket, rear hub, both tyres, both disc brakes, in this order.</summary>
    /// <param name="build">A build.</param>
    public static ImmutableArray<LineDrawing> All(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        ImmutableArray<LineDrawing>.Builder all = ImmutableArray.CreateBuilder<LineDrawing>();
        Add(HeadTubeDraft.Of, Slot.Headset, Slot.Fork);
        Add(SeatpostDraft.Of, Slot.Seatpost);
        Add(BracketDraft.Of, Slot.BottomBracket, Slot.Crankset);
        Add(HubDraft.Of, Slot.RearWheel);
        Add(b => TyreDraft.Of(b, Slot.FrontTyre, null, 0, null), Slot.FrontTyre);
        Add(b => TyreDraft.Of(b, Slot.RearTyre, null, 0, null), Slot.RearTyre);
        Add(b => BrakeDraft.Of(b, Slot.FrontCaliper), Slot.FrontCaliper, Slot.FrontRotor);
        Add(b => BrakeDraft.Of(b, Slot.RearCaliper), Slot.RearCaliper, Slot.RearRotor);
        return all.ToImmutable();

        void Add(Func<Build, LineDrawing> drawing, params ReadOnlySpan<Slot> slots)
        {
            foreach (Slot slot in slots)
            {
                if (build[slot] is not null)
                {
                    all.Add(drawing(build));
                    return;
                }
            }
        }
    }

    private static void Within(decimal? value, decimal least, decimal most, string name)
    {
        if (value is { } given && (given < least || given > most))
        {
            throw new ArgumentOutOfRangeException(name, given, FormattableString.Invariant($"{least} to {most} is expected"));
        }
    }
}
