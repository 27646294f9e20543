namespace Lugwork;

/// <summary>What comes of it when a kind of part fails: by this its condition is judged.</summary>
internal enum PartDuty
{
    /// <summary>It throws the rider or takes a brake away.</summary>
    Safety,

    /// <summary>The same, and light alloy is replaced after a fall: bar, stem, post.</summary>
    Cockpit,

    /// <summary>It wears, and then skips, slips or wears its neighbours.</summary>
    Wear,

    /// <summary>It runs in bearings or bushes and gets play.</summary>
    Bearing,

    /// <summary>It stops working, and nobody falls by it.</summary>
    Other,

    /// <summary>It throws the rider when it breaks, and only skips when its teeth are worn: the crank with its rings.</summary>
    Crank,
}
