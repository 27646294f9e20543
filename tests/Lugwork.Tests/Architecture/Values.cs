using System.Collections;
using System.Reflection;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tests.Measures;
using Lugwork.Tyres;

namespace Lugwork.Tests.Architecture;

/// <summary>Every public type that text is read into, with values of it: a closed set whole, an open one by samples at and near its ends.</summary>
internal static class Values
{
    /// <summary>A type whose values are in no list needs a row here.</summary>
    private static readonly Dictionary<Type, Func<Random, IEnumerable<object>>> Samples = new()
    {
        [typeof(Dimension)] = random => Lengths(random, 0.000001m, 100_000m).Select(l => (object)Dimension.OfMillimetres(l)),
        [typeof(Load)] = random => new[] { 0.001m, 0.002m, 499.999m, 500m }.Concat(Enumerable.Range(0, 200).Select(_ => random.Next(1, 500_001) / 1000m)).Select(k => (object)Load.OfKilograms(k)),
        [typeof(FrameAngle)] = random => new[] { 0.000001m, 67.5m, 180m }.Concat(Enumerable.Range(0, 200).Select(_ => random.Next(1, 180_000_001) / 1_000_000m)).Select(d => (object)FrameAngle.OfDegrees(d)),
        [typeof(DateMade)] = random => Enumerable.Range(0, 200).Select(i => (object)DateMade.Of(random.Next(1860, 2101), i % 3 == 0 ? null : random.Next(1, 13))),
        [typeof(SeatpostDiameter)] = random => Lengths(random, 18, 40).Select(l => (object)SeatpostDiameter.OfMillimetres(l)),
        [typeof(SeatTubeBore)] = random => Lengths(random, 18, 40).Select(l => (object)SeatTubeBore.OfMillimetres(l)),
        [typeof(TyreSize)] = _ => BeadSeat.All.SelectMany(b => Enumerable.Range(18, 115).Select(w => (object)TyreSize.Of(w, b))),
        [typeof(AxleSize)] = random => Many(() => Writers.Axle(random)),
        [typeof(HeadsetHalf)] = random => Many(() => Writers.Half(random)),
        [typeof(HeadsetPair)] = random => Many(() => Writers.Pair(random)),
    };

    /// <summary>Every type that text is read into and that is written by formats.</summary>
    public static Type[] Types { get; } =
        [.. typeof(Build).Assembly.GetExportedTypes().Where(t => !t.IsAbstract && !t.IsGenericType && Implements(t, typeof(ISpanParsable<>)) && t.IsAssignableTo(typeof(ISpanFormattable))).OrderBy(t => t.FullName, StringComparer.Ordinal)];

    /// <summary>The interface values among them, which have keys and codes.</summary>
    public static Type[] InterfaceTypes { get; } = [.. Types.Where(t => Implements(t, typeof(IInterfaceValue<>)))];

    /// <summary>The closed sets among them.</summary>
    public static Type[] ClosedTypes { get; } = [.. Types.Where(t => t.BaseType is { IsGenericType: true } b && b.GetGenericTypeDefinition() == typeof(Standard<>))];

    public static bool Implements(Type type, Type open) => type.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == open);

    /// <summary>Values of a type: what it lists, and the samples.</summary>
    public static T[] Of<T>()
    {
        List<T> values = [];
        if (Implements(typeof(T), typeof(IInterfaceValue<>)))
        {
            values.AddRange(((IEnumerable)typeof(T).GetProperty("All")!.GetValue(null)!).Cast<T>());
        }

        if (Samples.TryGetValue(typeof(T), out Func<Random, IEnumerable<object>>? samples))
        {
            values.AddRange(samples(new Random(7)).Cast<T>());
        }

        Assert.True(values.Count > 0, $"{typeof(T)} lists no values: give it a row in {nameof(Values)}.{nameof(Samples)}");
        return [.. values.Distinct()];
    }

    /// <summary>Calls a generic check for a type; the failure is the check's own.</summary>
    public static void Check(Type on, string method, string type) =>
        on.GetMethod(method, BindingFlags.NonPublic | BindingFlags.Static)!
            .MakeGenericMethod(Types.Single(t => t.FullName == type))
            .Invoke(null, BindingFlags.DoNotWrapExceptions, null, null, null);

    private static IEnumerable<object> Many<T>(Func<T> draw) => Enumerable.Range(0, 300).Select(_ => (object)draw()!);

    private static IEnumerable<decimal> Lengths(Random random, decimal least, decimal most)
    {
        decimal[] edges = [least, least + 0.000001m, most - 0.000001m, most, 27.2m, 27.25m, 25.4m, 28.575m];
        return edges.Where(e => e >= least && e <= most).Concat(Enumerable.Range(0, 200).Select(i => decimal.Round(least + ((decimal)random.NextDouble() * (Math.Min(most, 500) - least)), i % 7) is var l && l < least ? least : l));
    }
}
