namespace Lugwork;

/// <summary>One value that a judgement compared: whose it is, what it is called and what is known of it. Immutable.</summary>
public sealed class ComparedValue
{
    internal ComparedValue(JointInput input, Part part)
    {
        Slot = input.Slot;
        Part = part;
        Field = input.Field;
        Name = input.Called;
        Value = input.ShowKnown(part);
        Evidence = input.Evidence(part);
    }

    /// <summary>The slot of the part.</summary>
    public Slot Slot { get; }

    /// <summary>The part.</summary>
    public Part Part { get; }

    /// <summary>Its field in a build file: "seatTube".</summary>
    public string Field { get; }

    /// <summary>What it is called: "seat tube bore".</summary>
    public string Name { get; }

    /// <summary>What is known of it, as a person reads it: "27.2"; "unknown" where nothing is.</summary>
    public string Value { get; }

    /// <summary>How it is known; null where nothing is.</summary>
    public Evidence? Evidence { get; }

    /// <summary>"seatpost (the old post): seatpost diameter 27.2".</summary>
    public override string ToString() => $"{Slot.Name}{(Part.Name.Length > 0 ? $" ({Part.Name})" : "")}: {Measurement.CalledOn(Slot, Name)} {Value}";
}
