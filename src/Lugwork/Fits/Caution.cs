namespace Lugwork;

/// <summary>A warning that travels with a verdict. The maker's figures, local codes and licensed practice come before it.</summary>
/// <param name="Id">Stable id: "never-ream-to-suit".</param>
/// <param name="Text">One sentence for the person at the bench.</param>
public sealed record Caution(string Id, string Text)
{
    /// <summary>The text.</summary>
    public override string ToString() => Text;
}
