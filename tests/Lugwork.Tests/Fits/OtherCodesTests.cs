namespace Lugwork.Tests.Fits;

/// <summary>What can be known of a property as one number, and as codes that were stored.</summary>
public sealed class OtherCodesTests
{
    [Fact]
    public void What_says_the_same_has_one_number_and_all_else_another()
    {
        List<Candidates> values = [default, new(KnownState.None, 0, 0, null)];
        for (long code = 1; code <= 60; code++)
        {
            values.Add(new(KnownState.Value, code, code, null));
            values.Add(new(KnownState.Measured, code, code, null));
            values.Add(new(KnownState.Measured, code, code + 1, null));
            values.Add(new(KnownState.OneOf, 1, 100, [1, 1 + code, 100]));
            values.Add(new(KnownState.FrameSpecific, code, code, null));
            values.Add(new(KnownState.NotCovered, code, code, null));
        }

        OtherCodes others = new();
        Dictionary<string, long> numbers = [];
        for (int turn = 0; turn < 2; turn++)
        {
            foreach (Candidates value in values)
            {
                long number = value.State switch
                {
                    KnownState.Unknown => 0,
                    KnownState.Value => value.Low,
                    _ => others.Of(new(value.State, value.Low, value.High, value.Codes is null ? null : [.. value.Codes])),
                };
                Assert.Equal(Spelt(value), Spelt(others[number]));
                Assert.True(turn == 0 ? numbers.TryAdd(Spelt(value), number) : numbers[Spelt(value)] == number);
            }
        }

        Assert.Distinct(numbers.Values);
        Assert.True(others.Count == 60 * 5, $"{others.Count} were numbered");
    }

    /// <summary>What is stored comes back as it was; a range is stored of a length alone, and what is no knowledge is refused.</summary>
    [Fact]
    public void Stored_codes_are_the_knowledge_or_are_refused()
    {
        foreach (Known<Dimension> known in new[] { default, Known<Dimension>.None, Known<Dimension>.Of(Dimension.OfMillimetres(40)), Known<Dimension>.Measured(40m, 0.5m), Known<Dimension>.OneOf([Dimension.OfMillimetres(40), Dimension.OfMillimetres(41)]), Known<Dimension>.NotCovered })
        {
            Assert.Equal(known, Known<Dimension>.OfCandidates(known.ToCandidates()));
        }

        Assert.Throws<ArgumentException>(() => Known<Material>.OfCandidates(new(KnownState.Measured, Material.All[0].FitCode, Material.All[1].FitCode, null)));
        Assert.Throws<ArgumentException>(() => Known<Dimension>.OfCandidates(new(KnownState.Measured, 0, 5, null)));
        Assert.Throws<ArgumentException>(() => Known<Dimension>.OfCandidates(new(KnownState.Measured, 6, 5, null)));
        Assert.Throws<ArgumentException>(() => Known<Dimension>.OfCandidates(new(KnownState.OneOf, 5, 5, [5])));
    }

    /// <summary>Where nothing in a text is read, the place is its beginning.</summary>
    [Fact]
    public void What_is_refused_as_a_whole_is_refused_from_its_beginning()
    {
        TextReading<Material> reading = Material.Read("no such thing");
        Assert.False(reading.IsClear);
        Assert.Equal(0, reading.Position);
    }

    internal static string Spelt(in Candidates codes) => $"{codes.State} {codes.Low} {codes.High} {string.Join('|', codes.Codes ?? [])}";
}
