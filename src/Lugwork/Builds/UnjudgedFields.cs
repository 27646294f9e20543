namespace Lugwork;

/// <summary>Fields that no joint reads. What is outside the library in one of them, or contradicts another, still keeps the bicycle from fitting.</summary>
internal static class UnjudgedFields
{
    /// <summary>The makers to ask; nothing is allocated where there is nobody.</summary>
    public static List<Measurement>? Asked(IParts parts)
    {
        List<Measurement>? asked = null;
        if (parts.At(Slot.Frame) is Frame frame)
        {
            Ask(Slot.Frame, "kind", frame.Kind, ref asked);
            Ask(Slot.Frame, "made", frame.Made, ref asked);
            Ask(Slot.Frame, "cableGuides", frame.CableGuides, ref asked);
        }

        if (parts.At(Slot.FrontWheel) is Wheel front)
        {
            Ask(Slot.FrontWheel, "body", front.FreehubBody, ref asked);
            Ask(Slot.FrontWheel, "thread", front.Thread, ref asked);
            Ask(Slot.FrontWheel, "hubBrake", front.HubBrake, ref asked);
            Ask(Slot.FrontWheel, "washers", front.Washers, ref asked);
            Ask(Slot.FrontWheel, "sprocketChainline", front.SprocketChainline, ref asked);
            Ask(Slot.FrontWheel, "cassetteChainline", front.CassetteChainline, ref asked);
            Holes(Slot.FrontWheel, front, ref asked);
        }

        if (parts.At(Slot.RearWheel) is Wheel rear)
        {
            Ask(Slot.RearWheel, "hubBrake", rear.HubBrake, ref asked);
            Holes(Slot.RearWheel, rear, ref asked);
        }

        if (parts.At(Slot.FrontCaliper) is Caliper caliper)
        {
            Ask(Slot.FrontCaliper, "boltLength", caliper.BoltLength, ref asked);
        }

        if (parts.At(Slot.Seatpost) is Seatpost post)
        {
            Ask(Slot.Seatpost, "length", post.Length, ref asked);
            Ask(Slot.Seatpost, "made", post.Made, ref asked);
        }

        if (parts.At(Slot.Handlebar) is Handlebar bar)
        {
            Ask(Slot.Handlebar, "width", bar.Width, ref asked);
            Ask(Slot.Handlebar, "made", bar.Made, ref asked);
        }

        Ages(parts, ref asked);
        Runs(parts, ref asked);
        Mounted(Slot.FrontTyre, parts, ref asked);
        Mounted(Slot.RearTyre, parts, ref asked);
        if (parts.At(Slot.Crankset) is Crankset crank && (crank.ToeClearance.State != KnownState.Unknown || crank.MeasuredChainline.State != KnownState.Unknown))
        {
            Slip(Slot.Crankset, parts, ref asked);
        }

        if (parts.At(Slot.Pedals) is Pedals { GroundHeight.State: not KnownState.Unknown })
        {
            Slip(Slot.Pedals, parts, ref asked);
        }

        if (parts.At(Slot.RearWheel) is Wheel { CassetteChainline.State: not KnownState.Unknown })
        {
            Slip(Slot.RearWheel, parts, ref asked);
        }

        if (parts.At(Slot.Seatpost) is Seatpost { BinderGap.State: not KnownState.Unknown })
        {
            Slip(Slot.Seatpost, parts, ref asked);
        }

        if (parts.At(Slot.FrontShifter) is Shifter shifter)
        {
            Ask(Slot.FrontShifter, "actuation", shifter.Actuation, ref asked);
            Ask(Slot.FrontShifter, "spacing", shifter.Spacing, ref asked);
            Ask(Slot.FrontShifter, "withSprockets", shifter.WithSprockets, ref asked);
        }

        return asked;
    }

    /// <summary>Dates of making, of parts that have no other field here.</summary>
    private static void Ages(IParts parts, ref List<Measurement>? asked)
    {
        if (parts.At(Slot.Fork) is Fork fork)
        {
            Ask(Slot.Fork, "made", fork.Made, ref asked);
        }

        if (parts.At(Slot.Stem) is Stem stem)
        {
            Ask(Slot.Stem, "made", stem.Made, ref asked);
        }

        if (parts.At(Slot.Crankset) is Crankset crank)
        {
            Ask(Slot.Crankset, "made", crank.Made, ref asked);
        }
    }

    /// <summary>Hoses and housings.</summary>
    private static void Runs(IParts parts, ref List<Measurement>? asked)
    {
        if (parts.At(Slot.FrontBrakeLever) is BrakeLever front)
        {
            Ask(Slot.FrontBrakeLever, "hoseLength", front.HoseLength, ref asked);
        }

        if (parts.At(Slot.RearBrakeLever) is BrakeLever rear)
        {
            Ask(Slot.RearBrakeLever, "hoseLength", rear.HoseLength, ref asked);
        }

        if (parts.At(Slot.RearShifter) is Shifter shifter)
        {
            Ask(Slot.RearShifter, "housingLength", shifter.HousingLength, ref asked);
        }

        if (parts.At(Slot.FrontShifter) is Shifter other)
        {
            Ask(Slot.FrontShifter, "housingLength", other.HousingLength, ref asked);
        }

        if (parts.At(Slot.Dropper) is Dropper dropper)
        {
            Ask(Slot.Dropper, "housingLength", dropper.HousingLength, ref asked);
        }
    }

    /// <summary>A wheel whose hub and rim have other numbers of holes is refused when it is read; one made in code is asked about and never fits.</summary>
    private static void Holes(Slot slot, Wheel wheel, ref List<Measurement>? asked)
    {
        Ask(slot, "hubHoles", wheel.HubHoles, ref asked);
        Ask(slot, "rimHoles", wheel.RimHoles, ref asked);
        if (wheel.HolesContradict)
        {
            (asked ??= []).Add(new(slot, "rimHoles", $"{wheel.HubHoles} holes in the hub, {wheel.RimHoles} in the rim", "Count the holes of both: they must be the same, save where the wheel's maker laces two to one."));
        }
    }

    /// <summary>A tyre with a mounted width that no tyre of its label has is refused when it is read; one made in code is asked about and never fits.</summary>
    private static void Mounted(Slot slot, IParts parts, ref List<Measurement>? asked)
    {
        if (parts.At(slot) is Tyre { MountedWidth.State: not KnownState.Unknown } or Tyre { MountedRim.State: not KnownState.Unknown } && ReadingBounds.Contradiction((Tyre)parts.At(slot)!) is { } wrong)
        {
            (asked ??= []).Add(new(slot, wrong.Field, wrong.Reason, "Measure the mounted tyre again, and read its label."));
        }
    }

    /// <summary>A reading that no bicycle has is refused in a file; of a part made in code it is asked about and never fits.</summary>
    private static void Slip(Slot slot, IParts parts, ref List<Measurement>? asked)
    {
        if (ReadingBounds.Contradiction(parts.At(slot)!, slot) is { } wrong)
        {
            (asked ??= []).Add(new(slot, wrong.Field, wrong.Reason, "Measure again, in millimetres."));
        }
    }

    private static void Ask<T>(Slot slot, string field, Known<T> known, ref List<Measurement>? asked)
        where T : IInterfaceValue<T>
    {
        if (known.State.IsOutside())
        {
            (asked ??= []).Add(new(slot, field, $"{T.Called}, {known.Family?.TradeName ?? known.ToString()}", KnownStates.Ask(known.State)));
        }
    }
}
