using System.Text.Json.Serialization;

namespace Lugwork.Workshop;

/// <summary>The shape of a record of work.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed class RecordSheet
{
    public int? Format { get; set; }

    public string? Build { get; set; }

    public EntrySheet?[]? Steps { get; set; }
}

/// <summary>The shape of one entry of a record.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed class EntrySheet
{
    public string? Step { get; set; }

    public bool? Own { get; set; }

    public string? Parts { get; set; }

    public bool Done { get; set; }

    public Dictionary<string, MeasuredSheet>? Measured { get; set; }

    public Dictionary<string, decimal>? TorqueNewtonMetres { get; set; }

    public string? Note { get; set; }
}

/// <summary>The shape of a measured, counted or found figure of a record.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed class MeasuredSheet
{
    public string? Value { get; set; }

    public string? Unit { get; set; }
}
