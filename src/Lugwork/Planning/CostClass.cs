namespace Lugwork.Planning;

/// <summary>What a bridge costs beside the parts that it joins, roughly. A class and no figure: prices differ by country and year.</summary>
public enum CostClass
{
    /// <summary>No class is known: it has to be asked for.</summary>
    NotSaid = 0,

    /// <summary>About as much as an inner tube or a cable.</summary>
    Cheap,

    /// <summary>About as much as a chain or a pair of brake pads and cables.</summary>
    Moderate,

    /// <summary>As much as a main part, or work that a shop charges by the hour.</summary>
    Dear,
}
