namespace Lugwork.Brakes;

/// <summary>What holds a brake.</summary>
public enum BrakePlace
{
    /// <summary>One bolt through the crown of the fork or the bridge of the stays.</summary>
    CentreBolt = 0,

    /// <summary>Two bosses below the rim.</summary>
    BossesBelowRim,

    /// <summary>Two bosses above the rim.</summary>
    BossesAboveRim,

    /// <summary>A disc mount.</summary>
    DiscMount,

    /// <summary>The hub.</summary>
    Hub,
}
