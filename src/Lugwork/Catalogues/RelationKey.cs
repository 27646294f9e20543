namespace Lugwork.Catalogues;

/// <summary>The keys by which the two relations name what a part is to a joint.</summary>
internal static class RelationKey
{
    public static string Of(Joint joint, JointInput input, long code) => $"{joint.Id}={input.Show(code)}";

    /// <summary>A figure; the limits say which.</summary>
    public static string Figure(Joint joint) => $"{joint.Id}:figure";

    /// <summary>Nobody has said it.</summary>
    public static string Unsaid(Joint joint) => $"{joint.Id}:unsaid";

    /// <summary>Nobody has said it, and the part is one of which the joint asks for it all the same.</summary>
    public static string Asked(Joint joint) => $"{joint.Id}:asked";

    /// <summary>The part has none of it.</summary>
    public static string None(Joint joint) => $"{joint.Id}:none";

    /// <summary>The frame maker's own, or outside the library.</summary>
    public static string Outside(Joint joint) => $"{joint.Id}:outside";

    /// <summary>A size that no table has: the check decides.</summary>
    public static string Unlisted(Joint joint) => $"{joint.Id}:unlisted";

    /// <summary>No part is this: where a joint takes none, so that it still counts as asked.</summary>
    public static string Nothing(Joint joint) => $"{joint.Id}:nothing";

    /// <summary>What a part is to a joint: a key and a range for everything that it can be.</summary>
    public static IEnumerable<(string Key, long Least, long Most)> Of(Joint joint, int at, Part part)
    {
        JointInput input = joint.Inputs[at];
        Candidates known = input.Read(part);
        bool isStated = !joint.IsOnlyWhereLooked || joint.IsStated(at, part);
        if (known.State == KnownState.Unknown || !isStated)
        {
            return [(joint.IsOnlyWhereLooked && isStated ? Asked(joint) : Unsaid(joint), 0, 0)];
        }

        return known.State switch
        {
            KnownState.None => [(None(joint), 0, 0)],
            KnownState.FrameSpecific or KnownState.NotCovered => [(Outside(joint), 0, 0)],
            _ when input.IsLength => (known.Codes ?? [known.Low]).Select(c => (Figure(joint), c, known.Codes is null ? known.High : c)),
            KnownState.Measured => [(Unlisted(joint), 0, 0)],
            _ => (known.Codes ?? [known.Low]).Select(c => (input.Domain.Contains(c) ? Of(joint, input, c) : Unlisted(joint), 0L, 0L)).Distinct(),
        };
    }
}
