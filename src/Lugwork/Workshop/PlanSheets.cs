namespace Lugwork.Workshop;

/// <summary>The shape of a plan as JSON.</summary>
internal sealed class PlanSheet
{
    public required int Format { get; init; }

    public required string Name { get; init; }

    public required string Rule { get; init; }

    public required string Verdict { get; init; }

    public required string VerdictSaid { get; init; }

    public required string NotYetJudged { get; init; }

    public required Dictionary<string, string> Parts { get; init; }

    public required string[] Missing { get; init; }

    public required StepSheet[] Steps { get; init; }

    public required ToolSheet[] Tools { get; init; }

    public required ConsumableSheet[] Consumables { get; init; }

    public required SmallPartSheet[] SmallParts { get; init; }

    public required string[] ForShop { get; init; }

    public required string[] AtHome { get; init; }

    public required LinkSheet[] LongestChain { get; init; }

    public required PointSheet[] Inspection { get; init; }
}

/// <summary>The shape of a step as JSON.</summary>
internal sealed class StepSheet
{
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required string Stage { get; init; }

    public required string[] Does { get; init; }

    public required string[] Slots { get; init; }

    public required Dictionary<string, JointSheet> Joints { get; init; }

    public required LinkSheet[] After { get; init; }

    public required ToolSheet[] Tools { get; init; }

    public required ConsumableSheet[] Consumables { get; init; }

    public required TorqueSheet[] Torques { get; init; }

    public required FigureSheet[] Figures { get; init; }

    public required string[] Checks { get; init; }

    public required CautionSheet[] Cautions { get; init; }

    public required string Skill { get; init; }

    public required string Time { get; init; }

    public required string Class { get; init; }

    public string? Shop { get; init; }

    public bool? ShopIsNeeded { get; init; }
}

/// <summary>The shape of a reason for an order as JSON.</summary>
internal sealed class LinkSheet
{
    public required string Step { get; init; }

    public string? Before { get; init; }

    public required string Because { get; init; }
}

/// <summary>The shape of a torque row as JSON.</summary>
internal sealed class TorqueSheet
{
    public required string Id { get; init; }

    public required string Fastener { get; init; }

    public required RangeSheet[] Ranges { get; init; }

    public required string Agreement { get; init; }

    public required bool IsUnpublished { get; init; }

    public required string Said { get; init; }

    public required string Thread { get; init; }

    public SourceSheet? ThreadSource { get; init; }

    public string? Note { get; init; }
}

/// <summary>The shape of one published torque as JSON.</summary>
internal sealed class RangeSheet
{
    public required decimal Least { get; init; }

    public required decimal Most { get; init; }

    public required string Unit { get; init; }

    public string? Of { get; init; }

    public required string InchPounds { get; init; }

    public required bool IsOfOtherParts { get; init; }

    public required bool IsUnpublished { get; init; }

    public required SourceSheet Source { get; init; }
}

/// <summary>The shape of a figure as JSON.</summary>
internal sealed class FigureSheet
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required string Said { get; init; }

    public double? Value { get; init; }

    public double? Doubt { get; init; }

    public string? Unit { get; init; }

    public string? Words { get; init; }

    public string[]? Lacking { get; init; }

    public SourceSheet[]? Sources { get; init; }
}

/// <summary>The shape of a point of the inspection as JSON.</summary>
internal sealed class PointSheet
{
    public required string Id { get; init; }

    public required string Ask { get; init; }

    public required bool IsPractice { get; init; }

    public required FigureSheet[] Figures { get; init; }

    public required SourceSheet[] Sources { get; init; }
}

/// <summary>The shape of a tool as JSON.</summary>
internal sealed class ToolSheet
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required bool IsOfTheShop { get; init; }

    public SourceSheet? Source { get; init; }
}

/// <summary>The shape of something that is used up as JSON.</summary>
internal sealed class ConsumableSheet
{
    public required string Id { get; init; }

    public required string Name { get; init; }
}

/// <summary>The shape of a joint of a step as JSON.</summary>
internal sealed class JointSheet
{
    public required string Name { get; init; }

    public required string Verdict { get; init; }

    /// <summary>What is open; null where it fits.</summary>
    public string? Says { get; init; }
}
