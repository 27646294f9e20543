namespace Lugwork;

/// <summary>The shape of a source as JSON.</summary>
internal sealed class SourceSheet
{
    public required string Id { get; init; }

    public required string Kind { get; init; }

    public required string Confidence { get; init; }

    public required string Text { get; init; }

    public static SourceSheet Of(Source source) => new() { Id = source.Id, Kind = source.Kind.ToString(), Confidence = source.Confidence.ToString(), Text = source.ToString() };
}

/// <summary>The shape of a warning as JSON.</summary>
internal sealed class CautionSheet
{
    public required string Id { get; init; }

    public required string Text { get; init; }

    public static CautionSheet Of(Caution caution) => new() { Id = caution.Id, Text = caution.Text };
}

/// <summary>The shape of a remedy as JSON; the bridge is the id of its row.</summary>
internal sealed class RemedySheet
{
    public required string Kind { get; init; }

    public string? Bridge { get; init; }

    public required string Text { get; init; }

    public static RemedySheet Of(Remedy remedy) => new() { Kind = remedy.Kind.ToString(), Bridge = remedy.Bridge?.Id, Text = remedy.What };
}

/// <summary>The shape of something to measure or ask as JSON; what it settles is said where it is ranked.</summary>
internal sealed class MeasureSheet
{
    public required string Slot { get; init; }

    public required string Field { get; init; }

    public required string Name { get; init; }

    public required string How { get; init; }

    public int? Settles { get; init; }

    public int? Touches { get; init; }

    public required string Text { get; init; }

    public static MeasureSheet Of(Measurement measurement) => new() { Slot = measurement.Slot.Key, Field = measurement.Field, Name = measurement.Called, How = measurement.How, Text = measurement.ToString() };

    public static MeasureSheet Of(RankedMeasurement ranked) => new()
    {
        Slot = ranked.What.Slot.Key,
        Field = ranked.What.Field,
        Name = ranked.What.Called,
        How = ranked.What.How,
        Settles = ranked.Settles,
        Touches = ranked.Touches,
        Text = ranked.ToString(),
    };
}

/// <summary>The shape of a small part as JSON.</summary>
internal sealed class SmallPartSheet
{
    public required string Id { get; init; }

    public string? Slot { get; init; }

    public required string What { get; init; }

    public required string Because { get; init; }

    public required string Text { get; init; }

    public static SmallPartSheet Of(SmallPart part) => new() { Id = part.Id, Slot = part.Slot?.Key, What = part.What, Because = part.Because, Text = part.ToString() };
}

/// <summary>The shape of what to look at on a part as JSON.</summary>
internal sealed class InspectSheet
{
    public required string Slot { get; init; }

    public required string What { get; init; }

    public required SourceSheet[] Sources { get; init; }

    public required string Text { get; init; }

    public static InspectSheet Of(InspectionPoint point) => new() { Slot = point.Slot.Key, What = point.What, Sources = [.. point.Sources.Select(SourceSheet.Of)], Text = point.ToString() };
}
