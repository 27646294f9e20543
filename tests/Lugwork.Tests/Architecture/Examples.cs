using System.Collections;
using System.Collections.Immutable;
using System.Linq.Expressions;
using System.Reflection;
using Lugwork.Catalogues;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Planning;
using Lugwork.Reading;
using Lugwork.Tyres;
using Lugwork.Workshop;
using UnitsNet;

namespace Lugwork.Tests.Architecture;

/// <summary>One value of any type that a public method asks for.</summary>
internal static class Examples
{
    private static readonly Build Bare = Build.From(new Frame());

    private static readonly MountedTyre Mounted = MountedTyre.OnRim(TyreSize.Parse("40-622", null), Length.FromMillimeters(21));

    /// <summary>A type of which no value can be made by its constructor needs a row here.</summary>
    private static readonly Dictionary<Type, Func<object>> Made = new()
    {
        [typeof(string)] = () => "27.2",
        [typeof(object)] = () => new object(),
        [typeof(int)] = () => 1,
        [typeof(Type)] = () => typeof(Build),
        [typeof(Build)] = () => Bare,
        [typeof(Part)] = () => new Fork(),
        [typeof(FitReport)] = () => Bare.Check(),
        [typeof(Joint)] = () => JointTable.All[0],
        [typeof(Slot)] = () => Slot.Fork,
        [typeof(Stream)] = () => new MemoryStream(),
        [typeof(TextReader)] = () => new StringReader(""),
        [typeof(TextWriter)] = () => new StringWriter(),
        [typeof(CatalogueView)] = () => new PartCatalogue().View,
        [typeof(FrameCounts)] = () => new PartCatalogue().View.CountsOfFrames(),
        [typeof(NeedsSheet)] = Bare.Needs,
        [typeof(SpecSheet)] = () => SpecSheet.Read(Slot.Fork, "steerer 28.6"),
        [typeof(WorkPlan)] = () => Bare.WorkPlan(),
        [typeof(WorkRecord)] = () => WorkRecord.For(Bare.WorkPlan()),
        [typeof(BuildChooser)] = () => BuildChooser.Of(new ChoiceRequest { Build = Bare, Offers = [] }),
        [typeof(MountedTyre)] = () => Mounted,
        [typeof(TyreClearance)] = () => TyreClearance.Above(Mounted, Length.FromMillimeters(370)),
        [typeof(RimWidthAdvice)] = () => RimWidthAdvice.For(Length.FromMillimeters(40)),
        [typeof(EffectiveRimDiameter)] = () => EffectiveRimDiameter.OfSpokeEnds(Length.FromMillimeters(600)),
        [typeof(SpokeFlange)] = () => SpokeFlange.Of(Length.FromMillimeters(45), Length.FromMillimeters(35), Length.FromMillimeters(2.6)),
        [typeof(Lugwork.Geometry.FrameGeometry)] = () => Geometry.Frames.Trail.ToGeometry(),
        [typeof(SpokeLacing)] = () => SpokeLacing.Of(32, 3),
        [typeof(RolloutLimit)] = () => RolloutLimit.Of("class", Length.FromMeters(6)),
        [typeof(System.Buffers.IBufferWriter<byte>)] = () => new System.Buffers.ArrayBufferWriter<byte>(),
        [typeof(IFormatProvider)] = () => System.Globalization.CultureInfo.InvariantCulture,
    };

    public static object? Of(Type type)
    {
        if (Made.TryGetValue(type, out Func<object>? made))
        {
            return made();
        }

        if (Nullable.GetUnderlyingType(type) is not null)
        {
            return null;
        }

        if (type.IsArray)
        {
            return Array.CreateInstance(type.GetElementType()!, 0);
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>))
        {
            return type.GetField("Empty")!.GetValue(null);
        }

        if (type.IsValueType)
        {
            return Activator.CreateInstance(type);
        }

        if (type.IsAssignableTo(typeof(Delegate)))
        {
            MethodInfo invoked = type.GetMethod("Invoke")!;
            return Expression.Lambda(type, Expression.Default(invoked.ReturnType), invoked.GetParameters().Select(p => Expression.Parameter(p.ParameterType))).Compile();
        }

        if (type.IsInterface && type.IsGenericType && Array.CreateInstance(type.GetGenericArguments()[0], 0) is { } empty && type.IsInstanceOfType(empty))
        {
            return empty;
        }

        if (type.GetProperty("All", BindingFlags.Public | BindingFlags.Static)?.GetValue(null) is IEnumerable all && all.Cast<object>().FirstOrDefault() is { } first && type.IsInstanceOfType(first))
        {
            return first;
        }

        // A list that is gone through later, and whoever is told how far it is.
        if (type.IsInterface)
        {
            return typeof(Examples).GetMethods(BindingFlags.NonPublic | BindingFlags.Static).Where(m => m.Name == nameof(None) || m.Name == nameof(Deaf))
                .Select(m => m.MakeGenericMethod(type.GetGenericArguments()[0]).Invoke(null, null)).FirstOrDefault(type.IsInstanceOfType);
        }

        if (type.GetProperties(BindingFlags.Public | BindingFlags.Static).FirstOrDefault(p => p.PropertyType == type) is { } known)
        {
            return known.GetValue(null);
        }

        return type.GetConstructor([]) is { } plain ? plain.Invoke([])
            : type.GetConstructors() is [{ } only, ..] ? only.Invoke([.. only.GetParameters().Select(p => Of(p.ParameterType))])
            : throw new InvalidOperationException($"no example of {type}: give it a row in {nameof(Examples)}");
    }

    private static async IAsyncEnumerable<T> None<T>()
    {
        await Task.CompletedTask;
        yield break;
    }

    private static Progress<T> Deaf<T>() => new();
}
