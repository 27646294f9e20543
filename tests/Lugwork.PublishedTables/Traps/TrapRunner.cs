using System.Globalization;
using System.Reflection;
using Lugwork.Brakes;
using Lugwork.Drivetrain;
using Lugwork.Seating;
using Lugwork.Steering;
using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.PublishedTables.Traps;

/// <summary>Runs a case through the library.</summary>
internal static class TrapRunner
{
    private static readonly Assembly Library = typeof(Build).Assembly;

    /// <summary>A joint of a build: its verdict, all that is told about it, and whether it carries a caution.</summary>
    public static (Verdict Verdict, string Told, bool Cautions) Judge(TrapRun run)
    {
        if (run.Relation is { } relation)
        {
            return Relate(relation, run.Values);
        }

        Build build = Build.From(run.Parts.TryGetValue("frame", out string? frame) ? Frame.Read(frame) : new Frame());
        foreach ((string key, string text) in run.Parts.Where(p => p.Key != "frame"))
        {
            Slot slot = Slot.Find(key)!;
            Assert.True(PartForms.Of(slot).TryReadAny(text, out Part part, out var problems), string.Join(" | ", problems));
            build = build.OfFile(part, slot);
        }

        Fit fit = build.Check().Findings.Single(f => f.Joint!.Id == run.Joint);
        IEnumerable<string> told = fit.Remedies.SelectMany(r => new[] { r.What, r.Bridge?.Id ?? "" })
            .Concat(fit.Measurements.Select(m => m.ToString()))
            .Concat(fit.Cautions.Select(c => c.Text));
        return (fit.Verdict, string.Join(" | ", told.Prepend(fit.Sentence)), !fit.Cautions.IsEmpty);
    }

    /// <summary>The keys that a text is read as; none where it is refused.</summary>
    public static string[] Read(string type, string text)
    {
        if (type == nameof(HeadsetPair))
        {
            return [.. HeadsetPair.Read(text).Values.Select(p => p.ToString())];
        }

        if (Slot.Find(type) is { } slot)
        {
            return PartForms.Of(slot).TryReadAny(text, out _, out _) ? [text] : [];
        }

        return Call<string[]>(nameof(Keys), type, text);
    }

    /// <summary>The keys of what readings can be, likeliest first.</summary>
    public static string[] Identify(string type, Dictionary<string, string> readings) => Call<string[]>(nameof(Found), type, readings);

    /// <summary>A sum of the library; a verdict, or a number as text.</summary>
    public static object Figure(string name, string[] values) => name switch
    {
        "press-fit" => PressFit.Check(Exact(values[0]), Exact(values[1])).Verdict,
        "steerer-length" => SteererLength.OfMillimetres(Number(values[0]), Number(values[1]), Number(values[2]), Number(values[3]), Number(values[4]), Number(values[5])).Check(Long(values[6])).Verdict,
        "carbon-spacers" => SteererSpacers.OnCarbon(SteererSize.Parse(values[0], null), Long(values[1]), values.Length > 2 ? Long(values[2]) : null).Verdict,
        "rotor-wear" => RotorThickness.Check(Exact(values[0]), Dimension.OfMillimetres(Number(values[1]))).Verdict,
        "rim-brake-reach" => RimBrakeReach.Parse(values[0], null).Check(Exact(values[1])).Verdict,
        "lockring-on-axle" => Lockring.Parse(values[0], null).OnAxle(Long(values[1])).Verdict,
        "indexing" => Indexing.Estimate(ActuationFamily.Parse(values[0], null), ActuationFamily.Parse(values[1], null), SprocketSpacing.Parse(values[2], null)).Check.Verdict,
        "freewheel-exchange" => Fitting(FreewheelThread.Parse(values[0], null).Interchanges(FreewheelThread.Parse(values[1], null))),
        "smallest-ring" => Fitting(BoltCircle.Read(values[0]).Values.All(c => c.SmallestRing is { } least && Number(values[1]) >= least)),
        "same-circle" => Fitting(BoltCircle.Parse(values[0], null) == BoltCircle.Parse(values[1], null)),
        "same-direct-mount" => Fitting(DirectMountRing.Parse(values[0], null) == DirectMountRing.Parse(values[1], null)),
        "valve-in-hole" => Fitting(ValveHole.Parse(values[1], null).Stems.Contains(ValveStem.Parse(values[0], null))),
        "highest-pressure" => Limits(values[0], values[1], values[2]).Most!.Value.Bars.ToString(CultureInfo.InvariantCulture),
        "pressure" => Limits(values[1], values[2], values[3]).Check(Pressure.FromBars((double)Number(values[0]))).Verdict,
        "outside-diameter" => MountedTyre.OnMeasuringRim(TyreSize.Parse(values[0], null)).OutsideDiameter(SectionHeight.EqualToWidth).Millimeters.ToString(CultureInfo.InvariantCulture),
        "seats-of-label" => string.Join("/", TyreLabel.Parse(values[0], null).Seats.Select(b => b.FitKey)),
        "measuring-rim" => MountedTyre.OnMeasuringRim(TyreSize.Parse(values[0], null)).MeasuredOn.Millimeters.ToString(CultureInfo.InvariantCulture),
        "derailleur-limits" => Capacity(Number(values[0]), Teeth(values[1]), Teeth(values[2])),
        "stub-insertion" => InsertionRule.LeastWithStub(Dimension.OfMillimetres(Number(values[0]))).FitKey,
        _ => throw new ArgumentException($"no figure {name}", nameof(name)),
    };

    private static PressureLimits Limits(string tyre, string rim, string type) => PressureLimits.Of(Bars(tyre), Bars(rim), RimType.Parse(type, null), Bars("1"));

    private static Pressure? Bars(string text) => text.Length == 0 ? null : Pressure.FromBars((double)Number(text));

    /// <summary>The rows speak of the capacity alone: the other limits are taken as just met.</summary>
    private static Verdict Capacity(decimal capacity, int[] rings, int[] sprockets) => new DerailleurLimits
    {
        TotalCapacity = (int)capacity,
        LargestSprocket = sprockets.Max(),
        SmallestSprocket = sprockets.Min(),
        FrontDifference = rings.Max() - rings.Min(),
    }.Check(rings, sprockets).Verdict;

    private static int[] Teeth(string text) => [.. text.Split('-').Select(t => int.Parse(t, CultureInfo.InvariantCulture))];

    private static Verdict Fitting(bool fits) => fits ? Verdict.Fits : Verdict.DoesNotFit;

    private static (Verdict Verdict, string Told, bool Cautions) Relate(string relation, string[] values)
    {
        string[] name = relation.Split('.');
        Relation judge = (Relation)Library.GetTypes().Single(t => t.Name == name[0]).GetProperty(name[1], BindingFlags.Static | BindingFlags.Public)!.GetValue(null)!;
        long[] codes = [.. values.Select(v => v.Split(": ")).Select(v => Call<long>(nameof(Code), v[0], v[1]))];
        Outcome outcome = judge.Judge(codes);
        Reason reason = outcome.Reason!;
        string sentence = string.Format(CultureInfo.InvariantCulture, reason.Template, [.. values.Select(v => v.Split(": ")[1])]);
        return (outcome.Verdict, $"{sentence} | {reason.Mend} | {reason.Caution?.Text} | {outcome.Bridge?.What} | {outcome.Bridge?.Id}", reason.Caution is not null);
    }

    private static long Code<T>(string text)
        where T : IInterfaceValue<T> => T.Parse(text, null).FitCode;

    private static string[] Keys<T>(string text)
        where T : IInterfaceValue<T> => [.. T.Read(text).Values.Select(v => v.FitKey)];

    private static string[] Found<T>(Dictionary<string, string> readings)
        where T : IInterfaceValue<T>
    {
        MethodInfo identify = typeof(T).GetMethod("Identify")!;
        ParameterInfo[] asked = identify.GetParameters();
        Assert.All(readings.Keys, k => Assert.Contains(asked, a => a.Name == k));
        object?[] given = [.. asked.Select(a => readings.TryGetValue(a.Name!, out string? text) ? a.ParameterType == typeof(MeasuredLength?) ? (object)Measured(text) : Number(text) : null)];
        return [.. ((Identification<T>)identify.Invoke(null, given)!).Candidates.Select(c => c.Value.FitKey)];
    }

    private static TResult Call<TResult>(string method, string type, object given)
    {
        Type value = Library.GetExportedTypes().Single(t => t.Name == type);
        return (TResult)typeof(TrapRunner).GetMethod(method, BindingFlags.Static | BindingFlags.NonPublic)!.MakeGenericMethod(value).Invoke(null, [given])!;
    }

    private static MeasuredLength Measured(string text)
    {
        string[] parts = text.Split(" ± ");
        return MeasuredLength.OfMillimetres(Number(parts[0]), Number(parts[1]));
    }

    private static MeasuredLength Exact(string text) => MeasuredLength.OfMillimetres(Number(text), 0);

    private static UnitsNet.Length Long(string text) => UnitsNet.Length.FromMillimeters((double)Number(text));

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
