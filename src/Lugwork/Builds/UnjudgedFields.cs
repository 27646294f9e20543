namespace Lugwork;

/// <summary>Fields that no joint reads. What is outside the library in one of them still keeps the bicycle from fitting.</summary>
internal static class UnjudgedFields
{
    /// <summary>The makers to ask; nothing is allocated where there is nobody.</summary>
    public static List<Measurement>? Asked(IParts parts)
    {
        List<Measurement>? asked = null;
        if (parts.At(Slot.Frame) is Frame frame)
        {
            Ask(Slot.Frame, "kind", frame.Kind, ref asked);
        }

        if (parts.At(Slot.FrontWheel) is Wheel front)
        {
            Ask(Slot.FrontWheel, "body", front.Body, ref asked);
            Ask(Slot.FrontWheel, "thread", front.Thread, ref asked);
        }

        if (parts.At(Slot.Seatpost) is Seatpost post)
        {
            Ask(Slot.Seatpost, "length", post.Length, ref asked);
        }

        if (parts.At(Slot.FrontShifter) is Shifter shifter)
        {
            Ask(Slot.FrontShifter, "actuation", shifter.Actuation, ref asked);
            Ask(Slot.FrontShifter, "spacing", shifter.Spacing, ref asked);
            Ask(Slot.FrontShifter, "withSprockets", shifter.WithSprockets, ref asked);
        }

        return asked;
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
