namespace Lugwork.Reading;

/// <summary>What came of an answer to a question about a frame. Immutable.</summary>
public sealed class SpecAnswer
{
    internal SpecAnswer(Frame frame, SpecLine line)
    {
        Frame = frame;
        Line = line;
    }

    /// <summary>The frame with the answer taken in; as it was where the answer is not one value.</summary>
    public Frame Frame { get; }

    /// <summary>How the answer was read.</summary>
    public SpecLine Line { get; }
}
