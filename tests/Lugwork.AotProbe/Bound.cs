using System.Text.Json.Serialization;
using Lugwork.Seating;

namespace Lugwork.AotProbe;

/// <summary>An interface value as a program of its own has one in JSON.</summary>
internal sealed record Bound(SeatpostDiameter Post);

[JsonSerializable(typeof(Bound))]
internal sealed partial class BoundJson : JsonSerializerContext;
