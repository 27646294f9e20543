namespace Lugwork.Planning;

/// <summary>What becomes of a part of the donor.</summary>
public enum CarryDecision
{
    /// <summary>It stays with the donor: it is refused, clashes with a part that moves, or nothing is there to judge it by.</summary>
    Stays = 0,

    /// <summary>It moves; where its verdict is needs measuring, once it was measured.</summary>
    Moves,

    /// <summary>The new build has a part in its place already, which is kept.</summary>
    Spare,

    /// <summary>The new bicycle asks for no such part.</summary>
    NotAsked,
}
