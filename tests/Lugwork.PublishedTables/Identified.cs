namespace Lugwork.PublishedTables;

/// <summary>What the library makes of published or measured dimensions.</summary>
internal static class Identified
{
    /// <summary>The likeliest thing is the one that the source names.</summary>
    public static void First<T>(string source, string key, Identification<T> found)
        where T : IInterfaceValue<T> =>
        Assert.True(!found.Candidates.IsEmpty && found.Candidates[0].Value.FitKey == key, $"{source}: it is {key}, found: {Keys(found)}");

    /// <summary>The thing that the source names is among what it can be.</summary>
    public static void Among<T>(string source, string key, Identification<T> found)
        where T : IInterfaceValue<T> =>
        Assert.True(found.Candidates.Any(c => c.Value.FitKey == key), $"{source}: it is {key}, found: {Keys(found)}");

    public static void Reads<T>(string source, string key, string text)
        where T : IInterfaceValue<T>
    {
        TextReading<T> reading = T.Read(text);
        Assert.True(reading.IsClear && reading.Values[0].FitKey == key, $"{source}: {text} is {key}, read: {string.Join(", ", reading.Values.Select(v => v.FitKey))} {reading.Reason}");
    }

    public static MeasuredLength Mm(double millimetres, double error = 0.05) => MeasuredLength.OfMillimetres((decimal)millimetres, (decimal)error);

    private static string Keys<T>(Identification<T> found)
        where T : IInterfaceValue<T> => found.Candidates.IsEmpty ? "nothing" : string.Join(", ", found.Candidates.Select(c => c.Value.FitKey));
}
